#include "sheets/sheets.h"

#include "sheets/document.h"
#include "sheets/file_name.h"
#include "sheets/printable.h"
#include "sheets/words.h"

#include <QBuffer>
#include <QDir>
#include <QPageLayout>
#include <QPainter>
#include <QPdfWriter>
#include <QSaveFile>

namespace bastewright {
namespace {

constexpr int kResolution = 720; // ten to the point

QPageLayout layoutFor(Paper paper) {
    const QPageSize size{paper == Paper::a4 ? QPageSize::A4 : QPageSize::Letter};
    return {size, QPageLayout::Portrait, QMarginsF{0, 0, 0, 0}};
}

/// Qt rounds the page's box to whole points (A4: 595 × 842). The true size is written over it,
/// digit for digit, so that no offset in the file moves.
void setExactPageSize(QByteArray& pdf, const sheets::PageFrame& frame) {
    const QByteArray key = "/MediaBox [0 0 ";
    for (auto at = pdf.indexOf(key); at >= 0; at = pdf.indexOf(key, at + 1)) {
        const auto from = at + key.size(), to = pdf.indexOf(']', from);
        const QByteArray exact = QByteArray::number(frame.width, 'f', 6) + ' ' +
                                 QByteArray::number(frame.height, 'f', 6);
        if (to - from == exact.size())
            pdf.replace(from, exact.size(), exact);
    }
}

tl::unexpected<std::string> failure(const QString& text) {
    return tl::make_unexpected(text.toStdString());
}

} // namespace

std::string sheetsFileName(const Session& session, const SheetOptions& options) {
    QString stem =
        sheets::fileStem(session.jobs.empty() ? std::string{} : session.jobs.front().name);
    if (session.jobs.size() > 1)
        stem += QStringLiteral("-and-%1-more").arg(session.jobs.size() - 1);
    return stem.toStdString() + "-" + std::string{bastewright::name(options.paper)} + ".pdf";
}

bool paintSheets(QPagedPaintDevice& device, const Session& session, const Plan& plan,
                 const SheetOptions& options) {
    QPainter painter;
    if (!painter.begin(&device))
        return false;
    // The pages are drawn in points whatever the device's resolution.
    painter.scale(device.logicalDpiX() / 72.0, device.logicalDpiY() / 72.0);
    painter.setRenderHint(QPainter::Antialiasing);
    const auto frame = sheets::PageFrame::of(options.paper);
    const sheets::SheetContext context{session, plan, frame};
    sheets::paintDocument(painter, device, frame, context.sessionName(),
                          sheets::allSections(context, options.lead, options.helpers));
    return painter.end();
}

tl::expected<std::vector<std::string>, std::string> writeSheets(const Session& session,
                                                                const Plan& plan,
                                                                const std::string& folder,
                                                                const SheetOptions& options) {
    using sheets::Text;
    const QString place = QString::fromStdString(folder);
    if (plan.quilts.empty())
        return failure(Text::tr("There is no plan to print yet."));
    if (!QDir{}.mkpath(place))
        return failure(Text::tr("The folder %1 cannot be made.").arg(place));

    QByteArray pdf;
    QBuffer buffer{&pdf};
    buffer.open(QIODevice::WriteOnly);
    {
        QPdfWriter writer{&buffer};
        writer.setResolution(kResolution);
        writer.setPageLayout(layoutFor(options.paper));
        const sheets::SheetContext context{session, plan, sheets::PageFrame::of(options.paper)};
        writer.setTitle(Text::tr("%1: sheets").arg(context.sessionName()));
        writer.setCreator(QStringLiteral("Bastewright"));
        if (!paintSheets(writer, session, plan, options))
            return failure(Text::tr("The pages could not be drawn."));
    }
    setExactPageSize(pdf, sheets::PageFrame::of(options.paper));

    const QString path =
        QDir{place}.filePath(QString::fromStdString(sheetsFileName(session, options)));
    QSaveFile file{path};
    if (!file.open(QIODevice::WriteOnly) || file.write(pdf) != pdf.size() || !file.commit())
        return failure(Text::tr("%1 cannot be written: %2.").arg(path, file.errorString()));
    return std::vector{path.toStdString()};
}

} // namespace bastewright

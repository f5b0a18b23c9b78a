#include "sheets/pdf.h"

#include "sheets/pdf_outline.h"
#include "sheets/print/paint_pages.h"
#include "sheets/print/printing.h"
#include "sheets/words.h"

#include <QBuffer>
#include <QPdfWriter>

namespace bastewright::sheets {
namespace {

constexpr int kResolution = 720; // ten to the point

/// Qt rounds the page's box to whole points (A4: 595 × 842). The true size is written over it,
/// digit for digit, so that no offset in the file moves.
void setExactPageSize(QByteArray& pdf, const PageFrame& frame) {
    const QByteArray key = "/MediaBox [0 0 ";
    for (auto at = pdf.indexOf(key); at >= 0; at = pdf.indexOf(key, at + 1)) {
        const auto from = at + key.size(), to = pdf.indexOf(']', from);
        const QByteArray exact = QByteArray::number(frame.width, 'f', 6) + ' ' +
                                 QByteArray::number(frame.height, 'f', 6);
        if (to - from == exact.size())
            pdf.replace(from, exact.size(), exact);
    }
}

QByteArray inColour(const SheetSet& set, const SheetOptions& options) {
    QByteArray pdf;
    QBuffer buffer{&pdf};
    buffer.open(QIODevice::WriteOnly);
    QPdfWriter writer{&buffer};
    writer.setResolution(kResolution);
    writer.setPageLayout(pageLayout(options.paper));
    writer.setTitle(set.title());
    writer.setCreator(QStringLiteral("Bastewright"));
    return paintPages(writer, set) ? pdf : QByteArray{};
}

tl::expected<QByteArray, QString> drawn(const SheetSet& set, const SheetOptions& options) {
    if (options.colour)
        return inColour(set, options);
    const auto printing = printing::service();
    if (!printing)
        return tl::make_unexpected(QString::fromStdString(printing.error()));
    return (*printing)->greyPdf(set.title(), pageLayout(options.paper), kResolution,
                                [&](QPagedPaintDevice& device) { return paintPages(device, set); });
}

} // namespace

tl::expected<QByteArray, QString> pdfOf(const SheetSet& set, const SheetOptions& options) {
    auto pdf = drawn(set, options);
    if (!pdf)
        return pdf;
    if (pdf->isEmpty())
        return tl::make_unexpected(Text::tr("The pages could not be drawn."));
    setExactPageSize(*pdf, set.frame());
    //: The language these sheets are written in, as a tag after BCP 47
    return withOutline(*pdf, set.outline(), Text::tr("en"));
}

} // namespace bastewright::sheets

#include "sheets/exchange/pass_pictures.h"

#include "sheets/file_name.h"
#include "sheets/pictures/table_picture.h"
#include "sheets/words.h"

#include <QBuffer>
#include <QDir>
#include <QImage>
#include <QPainter>
#include <QSaveFile>
#include <QSvgGenerator>

#include <cmath>

namespace bastewright {
namespace {

constexpr double kWidth = 480, kTallest = 640; // points
constexpr double kPixels = 3;                  // to the point, for PNG: 216 dots to the inch

using sheets::TablePicture;

QByteArray svg(const QuiltPlan& quilt, const Pass& pass, const TablePicture& show, QSizeF size) {
    QByteArray bytes;
    QBuffer buffer{&bytes};
    buffer.open(QIODevice::WriteOnly);
    QSvgGenerator generator;
    generator.setOutputDevice(&buffer);
    generator.setResolution(72);
    generator.setSize(size.toSize());
    generator.setViewBox(QRectF{{0, 0}, size});
    generator.setTitle(sheets::Text::tr("Pass %1").arg(pass.number));
    QPainter painter{&generator};
    drawTable(painter, {{0, 0}, size}, quilt, pass, show);
    painter.end();
    return bytes;
}

QByteArray png(const QuiltPlan& quilt, const Pass& pass, const TablePicture& show, QSizeF size) {
    QImage image{(size * kPixels).toSize(), QImage::Format_RGB32};
    image.fill(Qt::white);
    QPainter painter{&image};
    painter.setRenderHint(QPainter::Antialiasing);
    painter.scale(kPixels, kPixels);
    drawTable(painter, {{0, 0}, size}, quilt, pass, show);
    painter.end();
    QByteArray bytes;
    QBuffer buffer{&bytes};
    buffer.open(QIODevice::WriteOnly);
    image.save(&buffer, "PNG");
    return bytes;
}

} // namespace

tl::expected<std::vector<std::string>, std::string> writePassPictures(const Session& session,
                                                                      const Plan& plan,
                                                                      const std::string& folder,
                                                                      PictureFormat format) {
    const QDir place{QString::fromStdString(folder)};
    if (!place.mkpath(QStringLiteral(".")))
        return tl::make_unexpected(
            sheets::Text::tr("The folder %1 cannot be made.").arg(place.path()).toStdString());
    const TablePicture show{
        .layers = true, .holds = true, .rolls = true, .smoothing = true, .counts = true};
    std::vector<std::string> written;
    for (std::size_t q = 0; q < plan.quilts.size(); ++q) {
        const QuiltPlan& quilt = plan.quilts[q];
        const QString stem =
            sheets::fileStem(q < session.jobs.size() ? session.jobs[q].name : quilt.name);
        for (const auto& pass : quilt.passes) {
            const QSizeF size{kWidth,
                              std::ceil(pictureHeight(quilt, pass, show, kWidth, kTallest))};
            const bool vector = format == PictureFormat::svg;
            QString name = QStringLiteral("%1-pass-%2.%3")
                               .arg(stem)
                               .arg(pass.number)
                               .arg(vector ? QStringLiteral("svg") : QStringLiteral("png"));
            // Two quilts of one name must not overwrite each other.
            if (plan.quilts.size() > 1)
                name.prepend(QStringLiteral("%1-").arg(q + 1));
            QSaveFile file{place.filePath(name)};
            const QByteArray bytes =
                vector ? svg(quilt, pass, show, size) : png(quilt, pass, show, size);
            if (!file.open(QIODevice::WriteOnly) || file.write(bytes) != bytes.size() ||
                !file.flush() || !file.commit())
                return tl::make_unexpected(sheets::Text::tr("%1 cannot be written: %2.")
                                               .arg(file.fileName(), file.errorString())
                                               .toStdString());
            written.push_back(file.fileName().toStdString());
        }
    }
    return written;
}

} // namespace bastewright

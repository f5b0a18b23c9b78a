#include "view/photo/photo_file.h"

#include "job/jpeg_parts.h"

#include <QBuffer>
#include <QCoreApplication>
#include <QFile>
#include <QFileInfo>
#include <QImageReader>
#include <QPainter>

#include <algorithm>
#include <optional>

using namespace bastewright;

namespace photo {
namespace {

constexpr qint64 kMostBytes = 60'000'000;
constexpr qint64 kMillion = 1'000'000;
/// A baseline JPEG is decoded row by row at the size that is wanted; of all others every pixel, or
/// every coefficient, is in memory at once.
constexpr qint64 kMostRowByRow = 200 * kMillion, kMostAtOnce = 25 * kMillion;
constexpr int kMostScans = 60;
constexpr int kLeastSide = 40;

struct Words {
    Q_DECLARE_TR_FUNCTIONS(photo)
};

/// What Qt calls the format; empty where it is none that is read. Told by the first bytes, so that
/// no other decoder ever sees them.
QByteArray formatOf(const QByteArray& bytes) {
    if (bytes.startsWith("\xFF\xD8\xFF"))
        return "jpeg";
    if (bytes.startsWith("\x89PNG\r\n\x1A\n"))
        return "png";
    if (bytes.startsWith("RIFF") && bytes.mid(8, 4) == "WEBP" &&
        QImageReader::supportedImageFormats().contains("webp"))
        return "webp";
    return {};
}

/// True where decoding takes more than is given to it; `parts` are those of a JPEG.
bool isTooMuch(QSize size, bool jpeg, const std::optional<JpegParts>& parts) {
    const qint64 pixels = qint64(size.width()) * size.height();
    if (!jpeg)
        return pixels > kMostAtOnce;
    if (!parts)
        return pixels > kMostRowByRow; // damaged too, but this is what can be said before
    return parts->scans > kMostScans ||
           pixels > (parts->baseline && parts->scans == 1 ? kMostRowByRow : kMostAtOnce);
}

QImage onWhite(const QImage& image) {
    if (!image.hasAlphaChannel())
        return image.convertToFormat(QImage::Format_RGB32);
    QImage out{image.size(), QImage::Format_RGB32};
    out.fill(Qt::white);
    QPainter{&out}.drawImage(0, 0, image);
    return out;
}

tl::unexpected<QString> refused(const QString& why) {
    return tl::make_unexpected(why);
}

tl::expected<QByteArray, QString> contentsOf(const QString& path) {
    const QFileInfo file{path};
    const QString name = file.fileName();
    if (!file.exists())
        return refused(Words::tr("There is no file %1: choose a photo.").arg(name));
    if (!file.isFile())
        return refused(Words::tr("%1 is not a file: choose a photo.").arg(name));
    if (file.size() > kMostBytes)
        return refused(Words::tr("%1 is too large: choose a photo of up to %2 MB.")
                           .arg(name)
                           .arg(kMostBytes / kMillion));
    QFile in{path};
    if (!in.open(QIODevice::ReadOnly))
        return refused(Words::tr("%1 cannot be read: check that you may open it.").arg(name));
    return in.read(kMostBytes + 1);
}

} // namespace

QStringList fileEndings() {
    QStringList out{QStringLiteral("jpg"), QStringLiteral("jpeg"), QStringLiteral("png")};
    if (QImageReader::supportedImageFormats().contains("webp"))
        out << QStringLiteral("webp");
    return out;
}

tl::expected<QImage, QString> read(const QString& path) {
    auto bytes = contentsOf(path);
    if (!bytes)
        return refused(bytes.error());
    const QString name = QFileInfo{path}.fileName();
    const QByteArray format = formatOf(*bytes);
    if (format.isEmpty())
        return refused(Words::tr("%1 is not a photo: choose a JPEG or PNG picture.").arg(name));
    QBuffer buffer{&*bytes};
    buffer.open(QIODevice::ReadOnly);
    QImageReader reader{&buffer, format};
    reader.setAutoTransform(true);
    const QSize size = reader.size();
    const QString damaged = Words::tr("%1 is damaged: choose another photo.").arg(name);
    if (!size.isValid() || size.isEmpty())
        return refused(damaged);
    if (std::min(size.width(), size.height()) < kLeastSide)
        return refused(
            Words::tr("%1 is too small to show a quilt: choose a larger photo.").arg(name));
    const bool jpeg = format == "jpeg";
    const auto parts =
        jpeg ? jpegParts({bytes->constData(), std::size_t(bytes->size())}) : std::nullopt;
    if (isTooMuch(size, jpeg, parts))
        return refused(Words::tr("%1 has too many pixels (%2 × %3): choose a smaller photo.")
                           .arg(name)
                           .arg(size.width())
                           .arg(size.height()));
    if (jpeg && !parts)
        return refused(damaged);
    if (std::max(size.width(), size.height()) > kReadSide)
        reader.setScaledSize(
            size.scaled(kReadSide, kReadSide, Qt::KeepAspectRatio).expandedTo({1, 1}));
    const QImage image = reader.read();
    if (image.isNull())
        return refused(damaged);
    return onWhite(image);
}

} // namespace photo

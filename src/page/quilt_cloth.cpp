#include "page/quilt_cloth.h"

#include "view/paint/cloth.h"

#include <QBuffer>
#include <QImageWriter>

namespace bastewright::page {

const QByteArray& QuiltCloth::jpeg(int quilt, const Top& top) {
    auto& own = drawn_[quilt];
    if (!own.jpeg.isEmpty() && own.top == top)
        return own.jpeg;
    own = {top, {}};
    const Rect area = topRect(top);
    const QSizeF inches{area.width().in(), area.length().in()};
    const QImage image = cloth::pictureOf(
        top, {{0, 0}, inches}, inches.scaled(kSide, kSide, Qt::KeepAspectRatio).toSize());
    QBuffer buffer{&own.jpeg};
    buffer.open(QIODevice::WriteOnly);
    QImageWriter writer{&buffer, "jpeg"};
    writer.setQuality(80);
    writer.write(image.convertToFormat(QImage::Format_RGB32));
    return own.jpeg;
}

} // namespace bastewright::page

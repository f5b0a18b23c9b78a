#include "sheets/pictures/top_photo.h"

#include <QBuffer>
#include <QImageReader>
#include <QPainter>

#include <algorithm>
#include <list>
#include <mutex>

namespace bastewright::sheets {
namespace {

struct KeptPhoto {
    Photo photo;
    QImage colour, paper;
};

/// The photos asked for last, the latest first.
class KeptPhotos {
public:
    KeptPhoto of(const Photo& photo) {
        constexpr std::size_t kMost = 4;
        const std::lock_guard lock{mutex_};
        const auto found = std::ranges::find(kept_, photo, &KeptPhoto::photo);
        if (found != kept_.end()) {
            kept_.splice(kept_.begin(), kept_, found);
        } else {
            kept_.push_front(decoded(photo));
            if (kept_.size() > kMost)
                kept_.pop_back();
        }
        return kept_.front();
    }

private:
    std::mutex mutex_;
    std::list<KeptPhoto> kept_;

    static KeptPhoto decoded(const Photo& photo) {
        QByteArray bytes =
            QByteArray::fromRawData(photo.jpeg().data(), qsizetype(photo.jpeg().size()));
        QBuffer buffer{&bytes};
        buffer.open(QIODevice::ReadOnly);
        QImageReader reader{&buffer, "jpeg"};
        reader.setAutoTransform(false); // it is upright already
        const QSize size{photo.width(), photo.height()};
        if (std::max(size.width(), size.height()) > kPhotoShown)
            reader.setScaledSize(size.scaled(kPhotoShown, kPhotoShown, Qt::KeepAspectRatio));
        KeptPhoto out{photo, reader.read().convertToFormat(QImage::Format_RGB32), {}};
        out.paper = out.colour.convertToFormat(QImage::Format_Grayscale8);
        constexpr int kDarkest = 196; // 4.5 : 1 and more for ink and quiet words
        for (int y = 0; y < out.paper.height(); ++y) {
            uchar* const line = out.paper.scanLine(y);
            for (int x = 0; x < out.paper.width(); ++x)
                line[x] = uchar(kDarkest + line[x] * (255 - kDarkest) / 255);
        }
        return out;
    }
};

KeptPhoto keptPhoto(const Photo& photo) {
    static KeptPhotos all;
    return photo.empty() ? KeptPhoto{} : all.of(photo);
}

} // namespace

QImage photoInColour(const Photo& photo) {
    return keptPhoto(photo).colour;
}

QImage photoOnPaper(const Photo& photo) {
    return keptPhoto(photo).paper;
}

void drawTopPhoto(QPainter& p, const QImage& photo, const Rect& top, const QTransform& toPage,
                  const QRectF& clip) {
    if (photo.isNull() || top.empty())
        return;
    p.save();
    p.setClipRect(clip, Qt::IntersectClip);
    p.setRenderHint(QPainter::SmoothPixmapTransform);
    p.setTransform(toPage, true);
    // The whole of it, clipped: a page description then holds the picture once.
    p.drawImage(QRectF{top.x0.in(), top.y0.in(), top.width().in(), top.length().in()}, photo);
    p.restore();
}

} // namespace bastewright::sheets

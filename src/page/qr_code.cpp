#include "page/qr_code.h"

#include <QPainter>
#include <qrencode.h>

#include <algorithm>
#include <memory>

namespace bastewright::page {

std::vector<std::vector<bool>> qrCode(const QString& text) {
    if (text.isEmpty())
        return {};
    const std::unique_ptr<QRcode, decltype(&QRcode_free)> code{
        QRcode_encodeString8bit(text.toUtf8().constData(), 0, QR_ECLEVEL_M), &QRcode_free};
    if (!code)
        return {};
    const auto width = std::size_t(code->width);
    std::vector<std::vector<bool>> rows(width, std::vector<bool>(width));
    for (std::size_t y = 0; y < width; ++y)
        for (std::size_t x = 0; x < width; ++x)
            rows[y][x] = (code->data[y * width + x] & 1) != 0;
    return rows;
}

} // namespace bastewright::page

QrPicture::QrPicture(QQuickItem* parent)
    : QQuickPaintedItem{parent} {
    connect(this, &QrPicture::changed, this, [this] { update(); });
}

void QrPicture::paint(QPainter* painter) {
    constexpr int kQuiet = 4;
    const auto rows = bastewright::page::qrCode(text_);
    if (rows.empty())
        return;
    const int modules = int(rows.size()) + 2 * kQuiet;
    const int side = int(std::min(width(), height()));
    const int pixel = std::max(1, side / modules);
    const int from = (side - pixel * modules) / 2;
    painter->setRenderHint(QPainter::Antialiasing, false);
    painter->fillRect(QRect{0, 0, side, side}, Qt::white);
    for (int y = 0; y < int(rows.size()); ++y)
        for (int x = 0; x < int(rows.size()); ++x)
            if (rows[std::size_t(y)][std::size_t(x)])
                painter->fillRect(from + (x + kQuiet) * pixel, from + (y + kQuiet) * pixel, pixel,
                                  pixel, Qt::black);
}

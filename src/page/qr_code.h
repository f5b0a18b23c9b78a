#pragma once

#include <QQuickPaintedItem>
#include <QtQmlIntegration>

#include <vector>

namespace bastewright::page {

/// A QR code (ISO/IEC 18004) as rows of dark (true) and light modules, without its quiet zone;
/// empty where the text does not fit. Medium correction: a smear of 15 % does no harm.
std::vector<std::vector<bool>> qrCode(const QString& text);

} // namespace bastewright::page

/// Draws a text as a QR code: black on white on any ground, whole pixels, a quiet zone of four
/// modules as the standard asks.
class QrPicture : public QQuickPaintedItem {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(QString text MEMBER text_ NOTIFY changed)

public:
    explicit QrPicture(QQuickItem* parent = nullptr);
    void paint(QPainter* painter) override;

signals:
    void changed();

private:
    QString text_;
};

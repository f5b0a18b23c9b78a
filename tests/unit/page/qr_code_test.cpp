#include "page/qr_code.h"
#include "unit/view/qt_application.h"

#include <QImage>
#include <QPainter>
#include <QProcess>
#include <QTemporaryDir>
#include <gtest/gtest.h>

namespace {

// Read back by ZBar, which shares nothing with the encoder.
QString readBack(const QImage& picture) {
    const QTemporaryDir folder;
    const QString file = folder.filePath(QStringLiteral("code.png"));
    picture.save(file);
    QProcess zbar;
    zbar.start(QStringLiteral("zbarimg"),
               {QStringLiteral("--quiet"), QStringLiteral("--raw"), file});
    if (!zbar.waitForFinished(20'000))
        return QStringLiteral("zbarimg did not run: ") + zbar.errorString();
    return QString::fromUtf8(zbar.readAllStandardOutput()).trimmed();
}

QImage painted(const QString& text, int side) {
    QrPicture picture;
    picture.setProperty("text", text);
    picture.setSize({qreal(side), qreal(side)});
    QImage image{side, side, QImage::Format_RGB32};
    image.fill(QColor{0x11, 0x17, 0x1c}); // the dark look round it
    QPainter painter{&image};
    picture.paint(&painter);
    painter.end();
    return image;
}

TEST(QrCode, IsReadBackByAnotherProgram) {
    needApplication();
    for (const char* text :
         {"http://192.168.1.20:52470/#K7MX-2PQD", "http://10.0.0.4:52470/#2345-6789",
          "http://[2001:db8:1234:5678:9abc:def0:1234:5678]:52470/#WXYZ-TVRS"})
        for (const int side : {180, 333, 700})
            EXPECT_EQ(readBack(painted(text, side)), text) << "at " << side << " pixels";
}

TEST(QrCode, SurvivesASmear) {
    needApplication();
    const QString text = QStringLiteral("http://192.168.1.20:52470/#K7MX-2PQD");
    QImage image = painted(text, 400);
    QPainter painter{&image};
    painter.fillRect(210, 215, 50, 40, Qt::gray);
    painter.end();
    EXPECT_EQ(readBack(image), text);
}

TEST(QrCode, OfNothingIsNothing) {
    EXPECT_TRUE(bastewright::page::qrCode({}).empty());
    EXPECT_TRUE(bastewright::page::qrCode(QString(10'000, QLatin1Char('x'))).empty())
        << "more than any code holds";
}

} // namespace

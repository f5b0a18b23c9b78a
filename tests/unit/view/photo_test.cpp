#include "job/job_json.h"
#include "sheets/pictures/top_photo.h"
#include "support/random.h"
#include "unit/view/qt_application.h"
#include "view/paint/cloth.h"
#include "view/photo/photo_desk.h"
#include "view/photo/photo_file.h"

#include <QBuffer>
#include <QFile>
#include <QImageWriter>
#include <QPainter>
#include <QTemporaryDir>
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <fstream>

using namespace bastewright;

namespace {

/// A quilt of four blocks: red, green above blue, yellow.
QImage fourBlocks(int width, int height) {
    QImage out{width, height, QImage::Format_RGB32};
    QPainter p{&out};
    p.fillRect(0, 0, width / 2, height / 2, Qt::red);
    p.fillRect(width / 2, 0, width - width / 2, height / 2, Qt::green);
    p.fillRect(0, height / 2, width / 2, height - height / 2, Qt::blue);
    p.fillRect(width / 2, height / 2, width - width / 2, height - height / 2, Qt::yellow);
    return out;
}

bool isNear(QColor a, QColor b) {
    return std::abs(a.red() - b.red()) < 40 && std::abs(a.green() - b.green()) < 40 &&
           std::abs(a.blue() - b.blue()) < 40;
}

void expectFourBlocks(const QImage& image) {
    const auto at = [&](double x, double y) {
        return image.pixelColor(int(x * image.width()), int(y * image.height()));
    };
    for (const double in : {0.05, 0.25, 0.45}) {
        EXPECT_TRUE(isNear(at(in, in), Qt::red)) << in;
        EXPECT_TRUE(isNear(at(1 - in, in), Qt::green)) << in;
        EXPECT_TRUE(isNear(at(in, 1 - in), Qt::blue)) << in;
        EXPECT_TRUE(isNear(at(1 - in, 1 - in), Qt::yellow)) << in;
    }
}

QByteArray coded(const QImage& image, const char* format) {
    QByteArray bytes;
    QBuffer buffer{&bytes};
    buffer.open(QIODevice::WriteOnly);
    QImageWriter{&buffer, format}.write(image);
    return bytes;
}

QByteArray word(int n) {
    return QByteArray{1, char(n >> 8)} + char(n);
}

/// A gray baseline JPEG of one tone, as large as wanted in few bytes: every block is two codes of
/// one bit (ITU-T T.81, annexes B and F).
QByteArray plainJpeg(int width, int height) {
    const qint64 blocks = qint64((width + 7) / 8) * ((height + 7) / 8);
    const auto codes = [](char table) { // one symbol, 0, of one bit
        return QByteArray{"\xFF\xC4"} + word(20) + table + '\x01' + QByteArray(15, '\0') + '\0';
    };
    return QByteArray{"\xFF\xD8\xFF\xDB"} + word(67) + '\0' + QByteArray(64, '\x01') + "\xFF\xC0" +
           word(11) + '\x08' + word(height) + word(width) + QByteArray{"\x01\x01\x11\x00", 4} +
           codes('\x00') + codes('\x10') + "\xFF\xDA" + word(8) +
           QByteArray{"\x01\x01\x00\x00\x3F\x00", 6} +
           QByteArray(qsizetype((2 * blocks + 7) / 8), '\0') + "\xFF\xD9";
}

/// A little-endian TIFF header with the tag of orientation, as cameras put before the picture
/// (CIPA DC-008, 4.6).
QByteArray turnedBy(QByteArray jpeg, char orientation) {
    const QByteArray exif =
        QByteArray{"Exif\0\0II*\0\x08\0\0\0\x01\0\x12\x01\x03\0\x01\0\0\0", 24} + orientation +
        QByteArray(7, '\0');
    return jpeg.insert(2, QByteArray{"\xFF\xE1"} + word(int(exif.size()) + 2) + exif);
}

class PhotoFile : public testing::Test {
protected:
    PhotoFile() { needApplication(); }
    QString file(const QByteArray& bytes, const QString& name = QStringLiteral("top.jpg")) {
        const QString path = folder_.filePath(name);
        QFile out{path};
        EXPECT_TRUE(out.open(QIODevice::WriteOnly));
        out.write(bytes);
        return path;
    }
    std::string refusal(const QByteArray& bytes) {
        const auto read = photo::read(file(bytes));
        return read ? "read" : read.error().toStdString();
    }
    QTemporaryDir folder_;
};

} // namespace

// x' = (ax + by + c) / (gx + hy + 1): the corners and what is inside, by the formula alone.
TEST(Homography, TakesEveryPlaceBackToWhereItWas) {
    const double a = 3.1, b = 0.4, c = 120, d = -0.3, e = 2.7, f = 80, g = 0.0011, h = 0.0007;
    const auto seen = [&](double x, double y) {
        const double w = g * x + h * y + 1;
        return QPointF{(a * x + b * y + c) / w, (d * x + e * y + f) / w};
    };
    constexpr double kWidth = 88, kLength = 112;
    const photo::Corners corners{seen(0, 0), seen(kWidth, 0), seen(kWidth, kLength),
                                 seen(0, kLength)};
    const auto map = photo::homography(corners, {kWidth, kLength});
    ASSERT_TRUE(map);
    for (double x = 0; x <= kWidth; x += 11)
        for (double y = 0; y <= kLength; y += 14) {
            const QPointF back = map->map(seen(x, y));
            EXPECT_NEAR(back.x(), x, 1e-6);
            EXPECT_NEAR(back.y(), y, 1e-6);
        }
}

TEST(Homography, IsNoneForCornersThatCrossOrLieInALine) {
    const QSizeF size{10, 10};
    EXPECT_TRUE(photo::homography({QPointF{0, 0}, {90, 10}, {80, 95}, {-5, 80}}, size));
    EXPECT_FALSE(photo::homography({QPointF{0, 0}, {90, 90}, {90, 0}, {0, 90}}, size));
    EXPECT_FALSE(photo::homography({QPointF{0, 0}, {50, 0}, {100, 0}, {0, 90}}, size));
    EXPECT_FALSE(photo::homography({QPointF{0, 0}, {90, 0}, {20, 20}, {0, 90}}, size));
    EXPECT_FALSE(photo::homography({QPointF{90, 0}, {0, 0}, {0, 90}, {90, 90}}, size));
    EXPECT_FALSE(photo::homography({}, size));
}

TEST(Straightened, ShowsTheQuiltAloneInItsOwnShape) {
    needApplication();
    const photo::Corners corners{QPointF{300, 100}, {900, 160}, {1100, 1000}, {150, 940}};
    QImage taken{1200, 1100, QImage::Format_RGB32};
    taken.fill(Qt::darkGray);
    QTransform seen;
    ASSERT_TRUE(QTransform::quadToQuad(QPolygonF{{{0, 0}, {880, 0}, {880, 1120}, {0, 1120}}},
                                       QPolygonF{{corners[0], corners[1], corners[2], corners[3]}},
                                       seen));
    QPainter p{&taken};
    p.setRenderHint(QPainter::SmoothPixmapTransform);
    p.setTransform(seen);
    p.drawImage(0, 0, fourBlocks(880, 1120));
    p.end();
    const QImage out = photo::straightened(taken, corners, {88, 112});
    EXPECT_EQ(out.height(), photo::kKeptSide);
    EXPECT_NEAR(out.width(), photo::kKeptSide * 88.0 / 112, 1);
    expectFourBlocks(out);
    EXPECT_TRUE(photo::straightened(taken, {}, {88, 112}).isNull());
    // No larger than it is in the picture.
    EXPECT_LE(photo::straightened(fourBlocks(100, 100),
                                  {QPointF{0, 0}, {100, 0}, {100, 100}, {0, 100}}, {40, 40})
                  .width(),
              100);
}

TEST(KeptPhoto, IsWithinItsLimitsWhateverItShows) {
    needApplication();
    Random r{5};
    QImage noise{photo::kKeptSide, photo::kKeptSide, QImage::Format_RGB32};
    for (int y = 0; y < noise.height(); ++y)
        for (int x = 0; x < noise.width(); ++x)
            noise.setPixel(x, y, qRgb(r.count(0, 255), r.count(0, 255), r.count(0, 255)));
    const auto kept = photo::asPhoto(noise);
    ASSERT_TRUE(kept);
    EXPECT_LE(kept->jpeg().size(), limits::kPhotoBytes);
    const auto plain = photo::asPhoto(fourBlocks(300, 400));
    ASSERT_TRUE(plain);
    expectFourBlocks(sheets::photoInColour(*plain));
    EXPECT_FALSE(photo::asPhoto({}));
}

TEST(KeptPhoto, LiesPaleOnPaper) {
    needApplication();
    const auto kept = photo::asPhoto(fourBlocks(300, 400));
    const QImage paper = sheets::photoOnPaper(*kept);
    ASSERT_EQ(paper.size(), QSize(300, 400));
    EXPECT_TRUE(paper.isGrayscale());
    for (int y = 0; y < paper.height(); y += 7)
        for (int x = 0; x < paper.width(); x += 7)
            EXPECT_GE(qGray(paper.pixel(x, y)), 190);
    // Blue is darker than yellow still.
    EXPECT_LT(qGray(paper.pixel(75, 300)) + 20, qGray(paper.pixel(225, 300)));
    EXPECT_TRUE(sheets::photoOnPaper({}).isNull());
}

TEST(Cloth, IsThePhotoWhereThereIsOneElseItsFabrics) {
    needApplication();
    Top top;
    top.width = {Length::inches(30)};
    top.length = {Length::inches(40)};
    const QRectF all{0, 0, 30, 40};
    top.fabrics = {{200, 10, 10}, {240, 240, 240}};
    EXPECT_EQ(cloth::fabricsOf(top).second, QColor(200, 10, 10));
    EXPECT_EQ(cloth::fabricsOf(top).light, QColor(240, 240, 240));
    const QColor plain = cloth::pictureOf(top, all, {60, 80}).pixelColor(30, 41);
    EXPECT_GT(plain.red(), 2 * plain.blue());
    top.photo = *photo::asPhoto(fourBlocks(300, 400));
    expectFourBlocks(cloth::pictureOf(top, all, {60, 80}));
    // A part of it is that part.
    const QImage quarter = cloth::pictureOf(top, {16, 21, 13, 18}, {40, 40});
    EXPECT_TRUE(isNear(quarter.pixelColor(3, 3), Qt::yellow));
    // One that does not decode is as none.
    top.photo = *Photo::ofJpeg(
        std::string_view{plainJpeg(8, 8).replace("\xFF\xDB", "\xFF\xFE").toStdString()});
    EXPECT_TRUE(cloth::pictureOf(top, all, {60, 80}).pixelColor(30, 41).red() > 150);
}

TEST_F(PhotoFile, IsReadUprightAndNoLargerThanNeeded) {
    const auto jpeg = photo::read(file(coded(fourBlocks(3000, 2000), "jpeg")));
    ASSERT_TRUE(jpeg) << jpeg.error().toStdString();
    EXPECT_EQ(jpeg->size(), QSize(1600, 1066));
    expectFourBlocks(*jpeg);
    const auto png = photo::read(file(coded(fourBlocks(300, 200), "png")));
    ASSERT_TRUE(png) << png.error().toStdString();
    EXPECT_EQ(png->size(), QSize(300, 200));
    expectFourBlocks(*png);
    // Orientation 6: the camera was turned, what lies left in the file is the top.
    const QImage lying = fourBlocks(400, 300).transformed(QTransform{}.rotate(-90));
    const auto turned = photo::read(file(turnedBy(coded(lying, "jpeg"), 6)));
    ASSERT_TRUE(turned) << turned.error().toStdString();
    EXPECT_EQ(turned->size(), QSize(400, 300));
    expectFourBlocks(*turned);
}

TEST_F(PhotoFile, IsRefusedInOneSentence) {
    using testing::HasSubstr;
    EXPECT_THAT(photo::read(folder_.filePath("none.jpg")).error().toStdString(),
                "There is no file none.jpg: choose a photo.");
    EXPECT_THAT(photo::read(folder_.path()).error().toStdString(), HasSubstr("is not a file"));
    EXPECT_THAT(refusal(""), HasSubstr("top.jpg is not a photo: choose a JPEG or PNG picture."));
    EXPECT_THAT(refusal("{\"top\": 7}"), HasSubstr("is not a photo"));
    EXPECT_THAT(refusal("<svg xmlns='http://www.w3.org/2000/svg' width='9' height='9'/>"),
                HasSubstr("is not a photo"));
    EXPECT_THAT(refusal("GIF89a"), HasSubstr("is not a photo"));
    EXPECT_THAT(refusal("\xFF\xD8\xFF\xE0"), HasSubstr("is damaged: choose another photo."));
    const QByteArray good = coded(fourBlocks(300, 200), "jpeg");
    EXPECT_THAT(refusal(good.left(good.size() / 2)), HasSubstr("is damaged"));
    EXPECT_THAT(refusal(good.left(good.size() - 1)), HasSubstr("is damaged"));
    const QByteArray png = coded(fourBlocks(300, 200), "png");
    EXPECT_THAT(refusal(png.left(png.size() / 2)), HasSubstr("is damaged"));
    EXPECT_THAT(refusal(coded(fourBlocks(39, 200), "png")), HasSubstr("is too small"));
    EXPECT_THAT(refusal(plainJpeg(65'000, 65'000).left(400)), HasSubstr("65000 × 65000"));
    QByteArray wide = png; // its header says 60000 x 60000 (ISO/IEC 15948, 11.2.2)
    wide.replace(16, 8, QByteArray{"\0\0\xEA\x60\0\0\xEA\x60", 8});
    EXPECT_THAT(refusal(wide), testing::AnyOf(HasSubstr("too many pixels"), HasSubstr("damaged")));
    // Decoders go over the whole picture once a scan.
    QByteArray scans = plainJpeg(2000, 2000);
    const auto scan = scans.indexOf("\xFF\xDA");
    const QByteArray once =
        QByteArray{"\xFF\xDA"} + word(8) + QByteArray{"\x01\x01\x00\x00\x3F\x00", 6} + '\0';
    for (int i = 0; i < 1000; ++i)
        scans.insert(scan, once);
    EXPECT_THAT(refusal(scans), HasSubstr("too many pixels"));
}

namespace {

/// The most memory the process has had since it was last asked to forget, MiB.
double mostMemory() {
    std::ifstream status{"/proc/self/status"};
    for (std::string line; std::getline(status, line);)
        if (line.starts_with("VmHWM:"))
            return std::stod(line.substr(6)) / 1024;
    return 0;
}

} // namespace

TEST_F(PhotoFile, AHugePhotoTakesLittleMemory) {
    const QString huge = file(plainJpeg(14'000, 14'000)); // 196 million pixels in 770 kB
    std::ofstream refs{"/proc/self/clear_refs"};
    refs << 5 << std::flush; // proc(5): forget the peak
    const double before = mostMemory();
    const auto read = photo::read(huge);
    ASSERT_TRUE(read) << read.error().toStdString();
    EXPECT_EQ(read->size(), QSize(1600, 1600));
    if (!refs)
        GTEST_SKIP() << "The kernel does not let a process forget its peak.";
    ASSERT_GT(before, 0);
    EXPECT_LT(mostMemory() - before, 60) << "MiB";
}

TEST_F(PhotoFile, AnyBytesAreReadOrRefused) {
    Random r{17};
    const QByteArray jpeg = coded(fourBlocks(120, 90), "jpeg"),
                     png = coded(fourBlocks(120, 90), "png");
    for (int round = 0; round < 400; ++round) {
        QByteArray bytes = r.chance(50) ? jpeg : png;
        for (int n = r.count(1, 6); n > 0; --n)
            bytes[qsizetype(r.whole(0, bytes.size() - 1))] = char(r.count(0, 255));
        if (r.chance(20))
            bytes.truncate(qsizetype(r.whole(0, bytes.size())));
        const auto read = photo::read(file(bytes));
        if (read) {
            EXPECT_FALSE(read->isNull());
            EXPECT_LE(std::max(read->width(), read->height()), photo::kReadSide);
        } else {
            EXPECT_TRUE(read.error().endsWith(u'.')) << read.error().toStdString();
        }
    }
}

namespace {

class PhotoAtDesk : public PhotoFile {
protected:
    PhotoAtDesk() {
        editor.open(
            *readSessionFile(BASTEWRIGHT_SOURCE "/assets/demo/harbour-lights.json").session);
        desk.setEditor(&editor);
    }
    void openAndWait(const QString& path) {
        desk.open(QUrl::fromLocalFile(path));
        ASSERT_TRUE(desk.busy());
        ASSERT_TRUE(comes([&] { return !desk.busy(); }));
    }
    const Top& top() const { return editor.job().top; }

    JobEditor editor;
    PhotoDesk desk;
};

} // namespace

TEST_F(PhotoAtDesk, IsStraightenedByItsCornersAndCanBeTakenBack) {
    openAndWait(file(coded(fourBlocks(880, 1120), "png")));
    ASSERT_TRUE(desk.picking());
    EXPECT_TRUE(desk.sound());
    const QPointF all[] = {{0, 0}, {1, 0}, {1, 1}, {-3, 9}}; // kept within the picture
    for (int i = 0; i < 4; ++i)
        desk.moveCorner(i, all[i]);
    EXPECT_EQ(desk.corners().last(), QPointF(0, 1));
    desk.take();
    EXPECT_FALSE(desk.picking());
    EXPECT_EQ(desk.problem(), QString{});
    ASSERT_TRUE(desk.hasPhoto());
    expectFourBlocks(sheets::photoInColour(top().photo));
    // It is in the file, and read back.
    const auto again = readSession(writeSession(editor.session()));
    ASSERT_TRUE(again.session);
    EXPECT_EQ(*again.session, editor.session());
    editor.undo();
    EXPECT_FALSE(desk.hasPhoto());
    editor.redo();
    desk.removePhoto();
    EXPECT_FALSE(desk.hasPhoto());
}

TEST_F(PhotoAtDesk, IsTurnedWithItsCorners) {
    openAndWait(file(coded(fourBlocks(400, 300).transformed(QTransform{}.rotate(-90)), "png")));
    desk.moveCorner(0, {0.01, 0.02});
    desk.turn();
    EXPECT_EQ(desk.picture().size(), QSize(400, 300));
    EXPECT_TRUE(desk.sound());
    // What was head left has come to be head right.
    EXPECT_NEAR(desk.corners()[1].x(), 0.98, 1e-9);
    EXPECT_NEAR(desk.corners()[1].y(), 0.01, 1e-9);
    expectFourBlocks(desk.picture());
    const auto before = desk.corners();
    for (int i = 0; i < 4; ++i)
        desk.turn();
    EXPECT_EQ(desk.picture().size(), QSize(400, 300));
    const auto after = desk.corners();
    ASSERT_EQ(after.size(), 4);
    for (int i = 0; i < 4; ++i) {
        EXPECT_NEAR(after[i].x(), before[i].x(), 1e-9) << i;
        EXPECT_NEAR(after[i].y(), before[i].y(), 1e-9) << i;
    }
    expectFourBlocks(desk.picture());
    desk.cancel();
    EXPECT_FALSE(desk.picking());
}

TEST_F(PhotoAtDesk, CornersThatCrossAreNotTaken) {
    openAndWait(file(coded(fourBlocks(300, 300), "png")));
    desk.moveCorner(0, {1, 1});
    EXPECT_FALSE(desk.sound());
    desk.take();
    EXPECT_TRUE(desk.picking());
    EXPECT_FALSE(desk.hasPhoto());
}

TEST_F(PhotoAtDesk, SaysWhatIsWrongAndTheNewestFileCounts) {
    openAndWait(file("no photo"));
    EXPECT_FALSE(desk.picking());
    EXPECT_EQ(desk.problem(),
              QStringLiteral("top.jpg is not a photo: choose a JPEG or PNG picture."));
    desk.open(QUrl{QStringLiteral("https://example.org/quilt.jpg")});
    EXPECT_TRUE(desk.problem().contains(QStringLiteral("not on this device")));
    desk.open(QUrl::fromLocalFile(file("no photo", QStringLiteral("first.jpg"))));
    openAndWait(file(coded(fourBlocks(300, 300), "png"), QStringLiteral("second.png")));
    EXPECT_TRUE(desk.picking());
    EXPECT_EQ(desk.problem(), QString{});
}

TEST_F(PhotoAtDesk, FabricsAreTwoToFour) {
    EXPECT_FALSE(desk.ownFabrics());
    EXPECT_EQ(desk.fabrics().size(), 4);
    EXPECT_FALSE(desk.mayAdd());
    desk.setFabric(0, QStringLiteral("#b5323c"));
    EXPECT_TRUE(desk.ownFabrics());
    EXPECT_EQ(top().fabrics.front(), (Colour{0xb5, 0x32, 0x3c}));
    desk.removeFabric(1);
    desk.removeFabric(1);
    EXPECT_EQ(top().fabrics.size(), 2u);
    EXPECT_FALSE(desk.mayRemove());
    desk.removeFabric(0);
    EXPECT_EQ(top().fabrics.size(), 2u);
    const auto lightest = desk.fabrics().last();
    desk.addFabric();
    EXPECT_EQ(desk.fabrics().last(), lightest);
    desk.setFabric(9, QStringLiteral("#000000"));
    desk.setFabric(0, QStringLiteral("blue"));
    EXPECT_EQ(top().fabrics.front(), (Colour{0xb5, 0x32, 0x3c}));
    desk.useUsualFabrics();
    EXPECT_FALSE(desk.ownFabrics());
    for (const auto& row : desk.swatches()->rows())
        EXPECT_TRUE(parseColour(row.front().toString().toStdString()));
}

#include "promises.h"
#include "sheets/exchange/pass_pictures.h"

#include <QBuffer>
#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QFontDatabase>
#include <QImage>
#include <QPainter>
#include <QPdfWriter>
#include <QSvgRenderer>

#include <array>
#include <thread>

namespace bastewright {
namespace {

TEST(SheetFiles, namedForJobAndPaper) {
    const Written w{fixture::harbourLights(), {.cards = true}};
    EXPECT_EQ(QDir{w.folder.path()}.entryList(QDir::Files | QDir::Hidden),
              (QStringList{"harbour-lights-a4.pdf", "harbour-lights-cards-a4.pdf"}));
    const Written usual{fixture::harbourLights(), {.paper = Paper::letter}};
    EXPECT_EQ(QDir{usual.folder.path()}.entryList(QDir::Files | QDir::Hidden),
              QStringList{"harbour-lights-letter.pdf"});
}

TEST(SheetFiles, namesAreSafeInAnyFileSystem) {
    Session s = fixture::harbourLights();
    const auto name = [&](const char* job) {
        s.jobs[0].name = job;
        return sheetsFileName(s, {.paper = Paper::letter});
    };
    EXPECT_EQ(name("Harbour Lights"), "harbour-lights-letter.pdf");
    EXPECT_EQ(name("../../etc/passwd"), "etc-passwd-letter.pdf");
    EXPECT_EQ(name("A: \"B\" <C>|*?"), "a-b-c-letter.pdf");
    EXPECT_EQ(name(""), "quilt-letter.pdf");
    EXPECT_EQ(name("…"), "quilt-letter.pdf");
    EXPECT_EQ(name("Überwurf für Zoë"), "überwurf-für-zoë-letter.pdf");
    EXPECT_LT(name(std::string(120, 'x').c_str()).size(), 70u);
    s.jobs.resize(3);
    EXPECT_EQ(name("Harbour Lights"), "harbour-lights-and-2-more-letter.pdf");
}

TEST(SheetFiles, theFolderIsMade) {
    const QTemporaryDir dir;
    const Session s = fixture::harbourLights();
    const auto files = writeSheets(s, fixture::planByHand(s), dir.filePath("a/b").toStdString());
    ASSERT_TRUE(files);
    EXPECT_TRUE(QFile::exists(dir.filePath("a/b/harbour-lights-a4.pdf")));
}

TEST(SheetFiles, anOlderFileIsReplacedWhole) {
    const QTemporaryDir dir;
    const QString path = dir.filePath("harbour-lights-a4.pdf");
    QFile old{path};
    ASSERT_TRUE(old.open(QIODevice::WriteOnly));
    old.write(QByteArray(5'000'000, 'x'));
    old.close();
    const Session s = fixture::harbourLights();
    ASSERT_TRUE(writeSheets(s, fixture::planByHand(s), dir.path().toStdString()));
    ASSERT_TRUE(old.open(QIODevice::ReadOnly));
    const QByteArray now = old.readAll();
    EXPECT_TRUE(now.startsWith("%PDF"));
    EXPECT_TRUE(now.trimmed().endsWith("%%EOF"));
    EXPECT_LT(now.size(), 5'000'000);
}

TEST(SheetFiles, whatCannotBeDoneIsOneSentence) {
    const QTemporaryDir dir;
    QFile file{dir.filePath("file")};
    ASSERT_TRUE(file.open(QIODevice::WriteOnly));
    const Session s = fixture::harbourLights();
    const Plan plan = fixture::planByHand(s);
    const auto inFile = writeSheets(s, plan, dir.filePath("file/sub").toStdString());
    ASSERT_FALSE(inFile);
    EXPECT_TRUE(inFile.error().ends_with("cannot be made.")) << inFile.error();

    ASSERT_TRUE(QDir{}.mkpath(dir.filePath("taken/harbour-lights-a4.pdf")));
    const auto overFolder = writeSheets(s, plan, dir.filePath("taken").toStdString());
    ASSERT_FALSE(overFolder);
    EXPECT_NE(overFolder.error().find("cannot be written"), std::string::npos)
        << overFolder.error();

    EXPECT_FALSE(writeSheets(s, Plan{}, dir.path().toStdString()));
}

TEST(SheetFiles, leadOrHelpersAlone) {
    SKIP_WITHOUT_POPPLER();
    const Session s = fixture::harbourLights();
    const auto all = pdf::pageSizes(Written{s}.path).size();
    const auto lead = pdf::pageSizes(Written{s, {.bring = false, .helpers = false}}.path).size();
    const auto bring = pdf::pageSizes(Written{s, {.lead = false, .helpers = false}}.path).size();
    const auto helpers = pdf::pageSizes(Written{s, {.lead = false, .bring = false}}.path).size();
    EXPECT_GT(lead, 0u);
    EXPECT_GT(helpers, 3u);
    EXPECT_EQ(lead + bring + helpers, all);
    const auto bo =
        pdf::pageSizes(Written{s, {.lead = false, .bring = false, .people = {"Bo"}}}.path).size();
    EXPECT_GE(bo, 1u);
    EXPECT_LE(bo, 2u);
}

/// A photo that codes badly, so that a file shows how often it holds it.
Photo grainyPhoto() {
    QImage image{600, 760, QImage::Format_RGB32};
    unsigned grain = 7;
    for (int y = 0; y < image.height(); ++y)
        for (int x = 0; x < image.width(); ++x) {
            grain = grain * 1664525U + 1013904223U;
            image.setPixel(x, y, qRgb(int(grain >> 26) + 90, (x / 60 * 30) % 256, y / 3 % 256));
        }
    QByteArray bytes;
    QBuffer buffer{&bytes};
    buffer.open(QIODevice::WriteOnly);
    image.save(&buffer, "JPEG", 70);
    return Photo::ofJpeg({bytes.constData(), std::size_t(bytes.size())}).value();
}

TEST(SheetFiles, thePhotoLiesUnderThePicturesAndIsHeldOnce) {
    SKIP_WITHOUT_POPPLER();
    const Session bare = fixture::harbourLights();
    Session shown = bare;
    shown.jobs.front().top.photo = grainyPhoto();
    const auto bytes = [](const Session& s, const SheetOptions& options) {
        return QFileInfo{Written{s, options}.path}.size();
    };
    const SheetOptions lead{.bring = false, .helpers = false}, all{};
    const auto once = bytes(shown, lead) - bytes(bare, lead);
    EXPECT_GT(once, 20'000);
    EXPECT_LT(bytes(shown, all) - bytes(bare, all), once * 3 / 2) << "for every helper anew";
    const Written w{shown};
    EXPECT_EQ(pdf::pageSizes(w.path).size(), pdf::pageSizes(Written{bare}.path).size());
    expectGoodForm(w, Paper::a4);
    expectReadable(w);
    expectEverybodysPasses(w);
}

// Every part on request adds pages of its own, and all of them keep the rules of every page.
TEST(SheetFiles, partsOnRequestAreAdded) {
    SKIP_WITHOUT_POPPLER();
    const Session s = fixture::twoQuilts();
    const auto usual = pdf::pageSizes(Written{s}.path).size();
    for (const SheetPart& part : sheetParts()) {
        SheetOptions options;
        options.*part.option = true;
        const Written w{s, options};
        if (part.name != "cards") { // those have a file of their own
            EXPECT_GT(pdf::pageSizes(w.path).size(), usual) << part.name;
        }
        // Rows made by hand have their odd and even marks at the same places, so that the numbers
        // on the ribbons cover each other there.
        if (part.name != "ribbons")
            expectGoodForm(w, Paper::a4);
    }
}

TEST(SheetFiles, paperIsThatOfTheCountry) {
    EXPECT_EQ(usualPaper(QLocale{QStringLiteral("de_DE")}), Paper::a4);
    EXPECT_EQ(usualPaper(QLocale{QStringLiteral("en_GB")}), Paper::a4);
    EXPECT_EQ(usualPaper(QLocale{QStringLiteral("en_US")}), Paper::letter);
    EXPECT_EQ(usualPaper(QLocale{QStringLiteral("fr_CA")}), Paper::letter);
    EXPECT_EQ(usualPaper(QLocale::c()), Paper::a4);
}

// The screen writes sheets off its own thread.
TEST(SheetFiles, mayBeWrittenOnAnyThread) {
    const Session s = fixture::harbourLights();
    const Plan plan = fixture::planByHand(s);
    const QTemporaryDir dir;
    std::vector<std::jthread> threads;
    std::array<bool, 3> good{};
    for (std::size_t i = 0; i < good.size(); ++i)
        threads.emplace_back([&, i] {
            good[i] =
                writeSheets(s, plan, dir.filePath(QString::number(i)).toStdString()).has_value();
        });
    threads.clear();
    EXPECT_EQ(good, (std::array{true, true, true}));
}

// The reader of glyphs must see a missing one, or its silence would prove nothing.
TEST(SheetFiles, aMissingGlyphWouldBeSeen) {
    const QTemporaryDir dir;
    QFont font{QStringLiteral("DejaVu Sans")};
    font.setPixelSize(40);
    font.setStyleStrategy(QFont::NoFontMerging);
    {
        QPdfWriter writer{dir.filePath("m.pdf")};
        QPainter painter{&writer};
        painter.setFont(font);
        painter.drawText(100, 100, QStringLiteral("A\u79CBB"));
    }
    QFile file{dir.filePath("m.pdf")};
    ASSERT_TRUE(file.open(QIODevice::ReadOnly));
    EXPECT_EQ(pdf::missingGlyphs(file.readAll()), 1);
}

TEST(PassPictures, oneForEveryPassAndReadable) {
    const Session s = fixture::twoQuilts();
    const Plan plan = fixture::planByHand(s);
    const auto passes = plan.quilts[0].passes.size() + plan.quilts[1].passes.size();
    const QTemporaryDir dir;
    const auto svg = writePassPictures(s, plan, dir.path().toStdString(), PictureFormat::svg);
    const auto png = writePassPictures(s, plan, dir.path().toStdString(), PictureFormat::png);
    ASSERT_TRUE(svg && png);
    EXPECT_EQ(svg->size(), passes);
    EXPECT_EQ(png->size(), passes);
    for (const auto& path : *svg) {
        QSvgRenderer renderer{QString::fromStdString(path)};
        EXPECT_TRUE(renderer.isValid()) << path;
    }
    for (const auto& path : *png)
        EXPECT_FALSE(QImage{QString::fromStdString(path)}.isNull()) << path;
    EXPECT_EQ(QDir{dir.path()}.entryList(QDir::Files).size(), int(2 * passes));
}

} // namespace
} // namespace bastewright

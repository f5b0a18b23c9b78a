#include "quick/whole_window.h"
#include "sheets/pdf_reader.h"
#include "sheets/print_service.h"

#include <QFile>

#include <algorithm>
#include <map>
#include <set>

/// Printing through the window: on a real print service of the test's own, by taps.
namespace bastewright::app {
namespace {

class PrintingByTaps : public WholeWindow {
protected:
    static void SetUpTestSuite() {
        needWindows();
        if (PrintService::missingTool().isEmpty() && pdf::missingTool().isEmpty()) {
            service = new PrintService;
            arrived = service->addQueue(QStringLiteral("hall"));
            service->addQueue(QStringLiteral("broken"), QStringLiteral("file:///nowhere/x.pdf"));
            service->addQueue(QStringLiteral("refusing"));
            service->command(
                QStringLiteral("cupsreject"),
                {QStringLiteral("-r"), QStringLiteral("closed"), QStringLiteral("refusing")});
        }
    }
    static void TearDownTestSuite() {
        delete service;
        service = nullptr;
    }
    void SetUp() override {
        if (!service)
            GTEST_SKIP() << "SKIPPED: CUPS or Poppler is not installed; nothing was printed.";
        ASSERT_TRUE(service->runs()) << service->log().toStdString();
        WholeWindow::SetUp();
    }
    void TearDown() override {
        if (service)
            WholeWindow::TearDown();
    }

    SheetsWriter& writer() { return *room.workroom->sheets(); }

    void openSheets() {
        room.workroom->openSheets();
        ASSERT_TRUE(until([this] { return writer().printers().size() == 3; }));
        ASSERT_TRUE(until([this] { return find(QStringLiteral("print")) != nullptr; }));
        live(350);
    }
    void tap(const QString& name) {
        ASSERT_TRUE(until([&] {
            const auto* item = find(name);
            return item && item->isEnabled();
        })) << name.toStdString();
        tapItem(*room.window, find(name), name);
    }

    /// The sentence it ends in.
    QString printed(const QString& printer) {
        tap(QStringLiteral("printer-") + printer);
        EXPECT_EQ(writer().printer(), printer);
        tap(QStringLiteral("print"));
        EXPECT_TRUE(until([this] {
            if (const auto* shown = find(QStringLiteral("printProgress")))
                seen = std::max(seen, shown->property("share").toReal());
            return !writer().busy();
        }));
        return writer().message();
    }
    static bool oneSentence(const QString& words) {
        return words.endsWith(u'.') && !words.contains(u'\n');
    }

    static PrintService* service;
    static QString arrived;
    qreal seen = 0; ///< of the progress on the screen
};

PrintService* PrintingByTaps::service = nullptr;
QString PrintingByTaps::arrived;

TEST_F(PrintingByTaps, whatWasChosenReachesThePrinterAndAllPagesArrive) {
    openSheets();
    tap(QStringLiteral("letter"));
    tap(QStringLiteral("inColour"));
    tap(QStringLiteral("bothSides"));
    tap(QStringLiteral("moreCopies"));
    ASSERT_TRUE(writer().preview()->letter() && !writer().preview()->colour() &&
                writer().preview()->bothSides());
    ASSERT_EQ(writer().copies(), 2);
    ASSERT_TRUE(until([this] { return writer().preview()->isDrawn(); })); // as chosen
    const int pages = writer().preview()->pages();
    const QString words = printed(QStringLiteral("hall"));
    EXPECT_FALSE(writer().failed()) << words.toStdString();
    EXPECT_TRUE(oneSentence(words)) << words.toStdString();
    EXPECT_GT(seen, 0) << "progress is shown";

    const auto sizes = pdf::pageSizes(arrived);
    EXPECT_EQ(int(sizes.size()), pages);
    for (const auto& page : sizes)
        EXPECT_NEAR(page.width, 612, 0.5);
    QFile file{arrived};
    ASSERT_TRUE(file.open(QIODevice::ReadOnly));
    EXPECT_EQ(pdf::coloursIn(file.readAll()), 0);
    auto asked = service->jobAttributes(1);
    EXPECT_EQ(asked[QStringLiteral("copies")], "2");
    EXPECT_EQ(asked[QStringLiteral("sides")], "two-sided-long-edge");
    EXPECT_EQ(asked[QStringLiteral("print-color-mode")], "monochrome");
    EXPECT_TRUE(asked[QStringLiteral("media")].contains("Letter", Qt::CaseInsensitive))
        << asked[QStringLiteral("media")].toStdString();
}

// A printer that fails, one that takes nothing, and one that has gone: each is one sentence, and
// the session at the table goes on.
TEST_F(PrintingByTaps, whatGoesWrongIsOneSentenceAndTheSessionGoesOn) {
    room.workroom->goToTable();
    live(200);
    ASSERT_FALSE(room.workroom->live()->canUndo()) << "nothing is done yet";
    openSheets();
    std::map<QString, QString> said;
    for (const QString& printer : {QStringLiteral("broken"), QStringLiteral("refusing")}) {
        said[printer] = printed(printer);
        EXPECT_TRUE(writer().failed()) << printer.toStdString();
    }
    service->stop();
    said[QStringLiteral("hall")] = printed(QStringLiteral("hall"));
    EXPECT_TRUE(writer().failed());
    for (const auto& [printer, words] : said)
        EXPECT_TRUE(oneSentence(words)) << words.toStdString();
    EXPECT_NE(said[QStringLiteral("refusing")].indexOf("closed"), -1);
    EXPECT_EQ(std::set<QString>({said["broken"], said["refusing"], said["hall"]}).size(), 3u);

    tap(QStringLiteral("closeSheets"));
    ASSERT_TRUE(until([this] { return find(QStringLiteral("print")) == nullptr; }));
    tap(QStringLiteral("step"));
    tap(QStringLiteral("yes-cautions"));
    tap(QStringLiteral("stepSheetDone"));
    EXPECT_TRUE(until([this] { return room.workroom->live()->canUndo(); })) << "a step is done";
}

} // namespace
} // namespace bastewright::app

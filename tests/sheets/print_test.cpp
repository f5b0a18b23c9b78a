#include "fixture.h"
#include "language/language.h"
#include "pdf_reader.h"
#include "print_service.h"
#include "sheets/print/print_sheets.h"
#include "sheets/sheet_set.h"

#include <QFile>
#include <gtest/gtest.h>

namespace bastewright {
namespace {

/// Sheets sent to a real print service, and read back where they arrived.
class Printing : public testing::Test {
protected:
    static void SetUpTestSuite() {
        if (PrintService::missingTool().isEmpty())
            service_ = new PrintService;
    }
    static void TearDownTestSuite() {
        delete service_;
        service_ = nullptr;
    }
    void SetUp() override {
        if (const QString tool = PrintService::missingTool(); !tool.isEmpty())
            GTEST_SKIP() << "SKIPPED: " << tool.toStdString()
                         << " is not installed; nothing was printed.";
        if (const QString tool = pdf::missingTool(); !tool.isEmpty())
            GTEST_SKIP() << "SKIPPED: " << tool.toStdString() << " is not installed.";
        ASSERT_TRUE(service_->runs()) << service_->log().toStdString();
    }
    PrintOrder order(const char* printer, Paper paper = Paper::a4) const {
        PrintOrder one;
        one.printer = printer;
        one.sheets.paper = paper;
        return one;
    }
    auto print(const PrintOrder& one,
               std::chrono::milliseconds patience = std::chrono::seconds{15}) const {
        return printSheets(session_, plan_, one, {}, patience);
    }
    static bool oneSentence(const std::string& words) {
        return !words.empty() && words.ends_with('.') && words.find('\n') == std::string::npos;
    }

    static PrintService* service_;
    Session session_ = fixture::harbourLights();
    Plan plan_ = fixture::planByHand(session_);
};

PrintService* Printing::service_ = nullptr;

TEST_F(Printing, everyPageArrives) {
    for (const auto& [paper, name, size] :
         {std::tuple{Paper::a4, "hall-a4", pdf::PageSize{595, 842}},
          std::tuple{Paper::letter, "hall-letter", pdf::PageSize{612, 792}}}) {
        const QString file = service_->addQueue(name);
        ASSERT_FALSE(file.isEmpty());
        const PrintOrder one = order(name, paper);
        const int pages = SheetSet{session_, plan_, one.sheets}.pages();
        int told = 0;
        const auto printed = printSheets(session_, plan_, one, [&](int page, int of) {
            EXPECT_EQ(page, told++);
            EXPECT_EQ(of, pages);
        });
        ASSERT_TRUE(printed) << printed.error() << service_->log().toStdString();
        EXPECT_EQ(printed->state, Printed::State::done) << printed->words;
        EXPECT_GT(printed->job, 0);
        EXPECT_EQ(told, pages);
        const auto arrived = pdf::pageSizes(file);
        ASSERT_EQ(int(arrived.size()), pages) << service_->log().toStdString();
        for (const auto& page : arrived) {
            EXPECT_NEAR(page.width, size.width, 0.5); // Qt rounds to whole points
            EXPECT_NEAR(page.height, size.height, 0.5);
        }
        // Nothing nearer to the paper's edge than 12 mm here either.
        constexpr int kDots = 50, kMargin = int(12 / 25.4 * kDots) - 1;
        for (const QImage& page : pdf::pictures(file, kDots))
            for (int y = 0; y < page.height(); ++y)
                for (const int x : {kMargin, page.width() - 1 - kMargin})
                    ASSERT_GE(qGray(page.pixel(x, y)), 250) << x << ", " << y;
        const auto texts = pdf::pageTexts(file);
        for (const auto& h : session_.setting.helpers)
            EXPECT_TRUE(std::ranges::any_of(texts, [&](const QString& text) {
                return text.contains(QString::fromStdString(h.name)) && text.contains("page 1 of");
            })) << h.name;
    }
}

QString valueOf(const std::map<QString, QString>& all, const char* name) {
    const auto found = all.find(QLatin1String(name));
    if (found != all.end())
        return found->second;
    for (const auto& [key, value] : all) // for whoever reads the failure
        qInfo().noquote() << key << "=" << value;
    return {};
}

TEST_F(Printing, inGreyAndOnBothSides) {
    const QString file = service_->addQueue("hall-grey");
    PrintOrder one = order("hall-grey");
    one.sheets.colour = false;
    one.sheets.bothSides = true;
    one.sheets.lead = one.sheets.bring = false;
    one.copies = 2;
    const auto printed = print(one);
    ASSERT_TRUE(printed) << printed.error();
    const auto asked = service_->jobAttributes(printed->job);
    EXPECT_EQ(valueOf(asked, "copies"), "2");
    EXPECT_EQ(valueOf(asked, "sides"), "two-sided-long-edge");
    EXPECT_EQ(valueOf(asked, "print-color-mode"), "monochrome");
    EXPECT_TRUE(valueOf(asked, "media").contains("A4"));
    QFile bytes{file};
    ASSERT_TRUE(bytes.open(QIODevice::ReadOnly));
    EXPECT_EQ(pdf::coloursIn(bytes.readAll()), 0);
    // Everybody's first page is a front.
    const auto texts = pdf::pageTexts(file);
    for (std::size_t i = 0; i < texts.size(); ++i)
        if (texts[i].contains("page 1 of")) {
            EXPECT_EQ(i % 2, 0u) << texts[i].left(60).toStdString();
        }
}

TEST_F(Printing, thePrintersAreListedWithWhatTheyCan) {
    ASSERT_FALSE(service_->addQueue("hall-list").isEmpty());
    const auto all = printers();
    ASSERT_TRUE(all) << all.error();
    const auto found = std::ranges::find(*all, std::string{"hall-list"}, &Printer::name);
    ASSERT_NE(found, all->end());
    EXPECT_TRUE(found->bothSides);
    EXPECT_TRUE(found->colour);
    EXPECT_NE(found->about.find("Test printer"), std::string::npos);
}

TEST_F(Printing, anUnknownPrinterIsSaid) {
    const auto printed = print(order("attic"));
    ASSERT_FALSE(printed);
    EXPECT_TRUE(oneSentence(printed.error())) << printed.error();
    EXPECT_NE(printed.error().find("attic"), std::string::npos) << printed.error();
}

// What the library that prints says is translated by the program it is opened in.
TEST_F(Printing, anUnknownPrinterIsSaidInGermanToo) {
    language::speak("de");
    const auto printed = print(order("attic"));
    language::speak("en");
    ASSERT_FALSE(printed);
    EXPECT_EQ(printed.error(), "Auf diesem Rechner gibt es keinen Drucker attic.");
}

TEST_F(Printing, oneThatTakesNoJobsIsSaid) {
    ASSERT_FALSE(service_->addQueue("hall-refusing").isEmpty());
    ASSERT_TRUE(service_->command("cupsreject", {"-r", "closed for the winter", "hall-refusing"}));
    const auto printed = print(order("hall-refusing"));
    ASSERT_FALSE(printed);
    EXPECT_TRUE(oneSentence(printed.error())) << printed.error();
    EXPECT_NE(printed.error().find("takes no jobs"), std::string::npos) << printed.error();
    EXPECT_NE(printed.error().find("closed for the winter"), std::string::npos) << printed.error();
}

TEST_F(Printing, oneThatIsStoppedKeepsTheSheetsWaiting) {
    ASSERT_FALSE(service_->addQueue("hall-stopped").isEmpty());
    ASSERT_TRUE(service_->command("cupsdisable", {"-r", "out of paper", "hall-stopped"}));
    const auto printed = print(order("hall-stopped"), std::chrono::seconds{1});
    ASSERT_TRUE(printed) << printed.error();
    EXPECT_EQ(printed->state, Printed::State::waiting);
    EXPECT_NE(printed->words.find("out of paper"), std::string::npos) << printed->words;
}

TEST_F(Printing, oneThatFailsIsSaid) {
    ASSERT_FALSE(service_->addQueue("hall-broken", "file:///nowhere/at/all/x.pdf").isEmpty());
    const auto printed = print(order("hall-broken"));
    ASSERT_FALSE(printed) << printed->words;
    EXPECT_TRUE(oneSentence(printed.error())) << printed.error();
    EXPECT_NE(printed.error().find("hall-broken"), std::string::npos) << printed.error();
}

TEST_F(Printing, badOrdersAreRefused) {
    PrintOrder one = order("hall-a4");
    one.copies = 0;
    EXPECT_NE(print(one).error().find("Copies: 0"), std::string::npos);
    one.copies = kMostCopies + 1;
    EXPECT_NE(print(one).error().find("Copies: 21"), std::string::npos) << print(one).error();
}

// Last: the service goes away.
TEST_F(Printing, zzWithoutTheServiceOneSentence) {
    service_->stop();
    const auto printed = print(order("hall-a4"));
    ASSERT_FALSE(printed);
    EXPECT_TRUE(oneSentence(printed.error())) << printed.error();
    EXPECT_NE(printed.error().find("cannot be reached"), std::string::npos) << printed.error();
}

} // namespace
} // namespace bastewright

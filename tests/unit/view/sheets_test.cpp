#include "qt_application.h"
#include "session/checked_plan.h"
#include "view/paper/sheets_writer.h"

#include <QDir>
#include <QTemporaryDir>
#include <gtest/gtest.h>

using namespace bastewright;

namespace {

PlannedPtr knots() {
    static const PlannedPtr planned = [] {
        Planned one;
        Job job;
        job.name = "Knots";
        job.top.width = {Length::inches(40)};
        job.top.length = {Length::inches(50)};
        one.session.jobs = {job};
        one.session.setting.helpers.resize(2);
        one.session.setting.helpers[0].name = "Ada";
        one.session.setting.helpers[1].name = "Bo";
        one.plan = checkedPlan(one.session);
        return std::make_shared<const Planned>(std::move(one));
    }();
    return planned;
}

class Sheets : public testing::Test {
protected:
    void SetUp() override { needApplication(); }
    QTemporaryDir folder;
};

TEST_F(Sheets, pagesFollowWhatIsChosen) {
    SheetPreview preview;
    preview.show(knots());
    ASSERT_TRUE(comes([&] { return preview.pages() > 0; }));
    const int all = preview.pages();
    preview.setLead(false);
    ASSERT_TRUE(comes([&] { return preview.pages() < all; }));
    preview.setBring(false);
    ASSERT_TRUE(comes([&] { return preview.partText() == "Ada"; }));
    preview.toggle("cards");
    ASSERT_TRUE(comes([&] { return preview.more() == QStringList{"cards"}; }));
    preview.toggle("cards");
    preview.setHelpers(false);
    ASSERT_TRUE(comes([&] { return preview.pages() == 0; }));
    EXPECT_EQ(preview.pageText(), "No sheet is chosen.");
}

TEST_F(Sheets, aPageIsShownAsWideAsWantedAndGreyOnWish) {
    SheetPreview preview;
    preview.setWidth(300);
    preview.show(knots());
    ASSERT_TRUE(comes([&] { return preview.picture().width() == 300; }));
    // The page of a pass has the tints; the lead's is black on white.
    preview.setLead(false);
    preview.setBring(false);
    preview.setHelpers(false);
    preview.toggle("passes");
    ASSERT_TRUE(comes([&] { return preview.pages() > 0 && preview.picture().width() == 300; }));
    EXPECT_TRUE(comes([&] { return !preview.picture().allGray(); }));
    preview.setColour(false);
    EXPECT_TRUE(comes([&] { return preview.picture().allGray(); }));
    preview.setLetter(!preview.letter());
    const qreal tall = preview.tallness();
    EXPECT_TRUE(comes([&] { return std::abs(preview.picture().height() - 300 * tall) < 1.5; }));
}

TEST_F(Sheets, pagesAreTurnedWithinWhatThereIs) {
    SheetPreview preview;
    preview.show(knots());
    ASSERT_TRUE(comes([&] { return preview.pages() > 0; }));
    preview.setPage(-5);
    EXPECT_EQ(preview.page(), 0);
    preview.setPage(10'000);
    EXPECT_EQ(preview.page(), preview.pages() - 1);
    preview.setPage(0);
    preview.stepPart(1);
    EXPECT_TRUE(preview.partText().startsWith("Bring")) << preview.partText().toStdString();
    preview.stepPart(1);
    EXPECT_EQ(preview.partText(), "Ada");
    preview.stepPart(1);
    EXPECT_EQ(preview.partText(), "Bo");
    preview.stepPart(-1);
    EXPECT_EQ(preview.partText(), "Ada");
}

TEST_F(Sheets, filesAreWrittenAndToldInASentence) {
    SheetsWriter writer{folder.path()};
    writer.take(knots());
    writer.save();
    ASSERT_TRUE(comes([&] { return !writer.busy(); }));
    EXPECT_FALSE(writer.failed()) << writer.message().toStdString();
    writer.saveForOthers();
    ASSERT_TRUE(comes([&] { return !writer.busy(); }));
    EXPECT_FALSE(writer.failed()) << writer.message().toStdString();
    const QDir knots{folder.filePath("Knots")};
    EXPECT_EQ(knots.entryList({"*.pdf"}).size(), 1);
    EXPECT_EQ(knots.entryList({"*.csv"}).size(), 3);
    EXPECT_EQ(knots.entryList({"*.ics"}).size(), 1);
    EXPECT_FALSE(knots.entryList({"*.svg"}).isEmpty());
}

TEST_F(Sheets, whatFailsIsOneSentenceAndTheRestGoesOn) {
    QFile file{folder.filePath("file")};
    ASSERT_TRUE(file.open(QIODevice::WriteOnly));
    SheetsWriter writer{folder.filePath("file")};
    writer.take(knots());
    writer.save();
    ASSERT_TRUE(comes([&] { return !writer.busy(); }));
    EXPECT_TRUE(writer.failed());
    EXPECT_TRUE(writer.message().endsWith("cannot be made.")) << writer.message().toStdString();
    writer.forget();
    EXPECT_TRUE(writer.message().isEmpty());
    writer.print(); // without a printer nothing happens
    EXPECT_FALSE(writer.busy() && writer.printer().isEmpty());
}

// A button that cannot be pressed says what is missing.
TEST_F(Sheets, whyNothingCanBePrintedIsSaid) {
    SheetsWriter writer{folder.path()};
    EXPECT_EQ(writer.whyNot(), "There is no plan to print yet.");
    writer.take(knots());
    ASSERT_TRUE(comes([&] { return writer.preview()->pages() > 0; }));
    for (const auto& part :
         {&SheetPreview::setLead, &SheetPreview::setBring, &SheetPreview::setHelpers})
        (writer.preview()->*part)(false);
    ASSERT_TRUE(comes([&] { return writer.preview()->pages() == 0; }));
    EXPECT_EQ(writer.whyNot(), "Choose at least one kind of sheet.");
    writer.preview()->setLead(true);
    ASSERT_TRUE(comes([&] { return writer.preview()->pages() > 0; }));
    EXPECT_EQ(writer.whyNot().isEmpty(), !writer.printer().isEmpty());
}

} // namespace

#include "quick/whole_window.h"
#include "sheets/pdf_reader.h"

#include <QRegularExpression>

#include <set>

/// A session basted with thread and one basted with spray, from the shelf over the plan to the
/// record, by taps alone; judged by what stands on the screen.
namespace bastewright::app {
namespace {

class SewnAndSprayed : public WholeWindow {
protected:
    /// The example that is sewn, opened from the shelf.
    void openExample() {
        room.surroundings->setStill(true);
        tap(QStringLiteral("back"));
        tap(QStringLiteral("showExamples"));
        tap(QStringLiteral("example3"));
        live(200);
        ASSERT_TRUE(until([this] { return planned(); }));
        live(200);
    }

    void tap(const char* name) { tap(QLatin1String(name)); }
    void tap(const QString& name) {
        auto* item = usable(name);
        ASSERT_TRUE(item);
        tapItem(*room.window, item, name);
    }

    /// All that can be read just now, a line for each text.
    QString shown() const {
        QStringList out;
        collect(room.window->contentItem(), out);
        return out.join(QLatin1Char('\n'));
    }
    static void collect(QQuickItem* item, QStringList& out) {
        if (!item->isVisible() || item->opacity() == 0)
            return;
        if (item->inherits("QQuickText"))
            out << item->property("text").toString();
        for (auto* child : item->childItems())
            collect(child, out);
    }

    void says(const char* words) const {
        EXPECT_TRUE(shown().contains(QLatin1String(words))) << words << "\n"
                                                            << shown().toStdString();
    }
    /// No word of a way of basting that is not this one; `never` are such words.
    void saysNothingOf(const QRegularExpression& never, const QString& where) {
        for (const QString& line : shown().split(QLatin1Char('\n')))
            if (line.contains(never))
                strange_.insert(where + QStringLiteral(": ") + line);
    }

    QString textOf(const char* name) const {
        const auto* item = find(QLatin1String(name));
        return item ? item->property("text").toString() : QString{};
    }

    /// From the first step to the last, as a person taps who reads the screen; the calls that were
    /// shown, one after the other.
    QStringList play(const QRegularExpression& never) {
        QStringList calls;
        QStringList left; // zones of this pass, not yet tapped
        QString pass;
        for (int i = 0; i < 200 && !room.workroom->live()->ended(); ++i) {
            const QString call = textOf("call");
            if (!call.isEmpty() && (calls.isEmpty() || calls.last() != call))
                calls << call;
            saysNothingOf(never, call);
            if (auto* held = find(QStringLiteral("holdStep")); held && held->isEnabled()) {
                tap(QStringLiteral("holdStep")); // twice, slowly, for held
                live(200);
                tap(QStringLiteral("holdStep"));
                live(300);
                left.clear();
                continue;
            }
            const auto* step = find(QStringLiteral("step"));
            if (step && step->isEnabled()) {
                const QString asked = textOf("step");
                tap(QStringLiteral("step"));
                live(100);
                for (const char* yes :
                     {"yes-cautions", "yes-palm-glides", "yes-underside", "yes-spare"})
                    if (find(QLatin1String(yes))) {
                        saysNothingOf(never, asked);
                        tap(QLatin1String(yes));
                    }
                if (find(QStringLiteral("stepSheetDone")))
                    tap(QStringLiteral("stepSheetDone"));
                live(200); // sooner would be the same tap
                continue;
            }
            if (left.isEmpty())
                for (const auto& row : room.workroom->board()->zones()->rows())
                    left << row[0].toString();
            if (left.isEmpty() || HasFatalFailure())
                break;
            tap(QStringLiteral("zone-") + left.takeFirst());
        }
        EXPECT_TRUE(room.workroom->live()->ended()) << shown().toStdString();
        return calls;
    }

    /// A tap on a zone before its call is no tick and says why.
    void tapsEarly() {
        const auto zones = room.workroom->board()->zones()->rows();
        ASSERT_FALSE(zones.isEmpty());
        tap(QStringLiteral("zone-") + zones.front()[0].toString());
        live(300);
        EXPECT_TRUE(find(QStringLiteral("saidOtherwise"))) << shown().toStdString();
        EXPECT_DOUBLE_EQ(room.workroom->live()->progress(), 0);
    }

    /// What the menus of the table offer and say.
    void looksIntoTheMenus(const QRegularExpression& never) {
        tap(QStringLiteral("more"));
        live(400);
        saysNothingOf(never, QStringLiteral("menu"));
        EXPECT_FALSE(find(QStringLiteral("countPins")));
        tap(QStringLiteral("whatChanged"));
        live(400);
        saysNothingOf(never, QStringLiteral("changes"));
        EXPECT_FALSE(find(QStringLiteral("pinsChanged")));
        EXPECT_FALSE(find(QStringLiteral("ironMore")));
        tap(QStringLiteral("overnight"));
        live(400);
        saysNothingOf(never, QStringLiteral("night"));
        tap(QStringLiteral("pauseNow"));
        live(400);
        saysNothingOf(never, QStringLiteral("break"));
        tap(QStringLiteral("resume"));
        live(400);
    }

    /// What the ribbon says of a session of so many passes with these calls.
    static QStringList called(int passes, const QStringList& pass) {
        QStringList all{QStringLiteral("Set up")};
        for (int number = 1; number <= passes; ++number)
            all << pass << QStringLiteral("Pass %1 is finished").arg(number)
                << (number < passes ? QStringLiteral("Move") : QStringLiteral("Roll up"));
        return all << QStringLiteral("All is done");
    }

    /// The same saved as a page to print.
    void readsTheRecordsPage(const QRegularExpression& never) {
        if (!pdf::missingTool().isEmpty())
            return;
        tap(QStringLiteral("recordPage"));
        live(300);
        const auto saved = QRegularExpression{QStringLiteral("Saved: (.+[.]pdf)")}.match(shown());
        ASSERT_TRUE(saved.hasMatch()) << shown().toStdString();
        QString text;
        for (const QString& page : pdf::pageTexts(saved.captured(1)))
            text += page;
        EXPECT_TRUE(text.contains(QStringLiteral("Zones"))) << text.toStdString();
        for (const QString& line : text.split(QLatin1Char('\n')))
            if (line.contains(never) || line.contains(QStringLiteral("Opened")))
                strange_.insert(QStringLiteral("the record's page: ") + line);
    }

    void readsTheRecord(const QRegularExpression& never) {
        tap(QStringLiteral("more"));
        live(400);
        tap(QStringLiteral("showRecord"));
        live(500);
        saysNothingOf(never, QStringLiteral("record"));
        const QRegularExpression all{QStringLiteral("(\\d+) of (\\d+) zones done")};
        const auto done = all.match(shown());
        ASSERT_TRUE(done.hasMatch()) << shown().toStdString();
        EXPECT_EQ(done.captured(1), done.captured(2));
        EXPECT_GT(done.captured(1).toInt(), 3);
        readsTheRecordsPage(never);
        tap(QStringLiteral("closeRecord"));
    }

    /// `never`: what is not of this way; `calls`: what the ribbon says, one after the other.
    void playsFromThePlanToTheRecord(const QRegularExpression& never, const QStringList& calls) {
        tap(QStringLiteral("toTable"));
        live(400);
        tapsEarly();
        looksIntoTheMenus(never);
        const QStringList shown = play(never);
        EXPECT_EQ(shown, calls) << shown.join(QStringLiteral(", ")).toStdString();
        readsTheRecord(never);
    }

    void TearDown() override {
        for (const QString& line : strange_)
            ADD_FAILURE() << "not of this way: " << line.toStdString();
        WholeWindow::TearDown();
    }

    std::set<QString> strange_;
};

TEST_F(SewnAndSprayed, ASessionWithThreadFromThePlanToTheRecord) {
    const QRegularExpression never{
        QStringLiteral("\\b([Pp]ins?|[Pp]inned|dots?|[Ff]use|irons?|[Pp]"
                       "ressed|[Ss]pray\\w*|patch(es)?|(?<!Cutters )[Cc]losed?)\\b")};
    openExample();
    says("459 stitches");
    saysNothingOf(never, QStringLiteral("plan"));
    playsFromThePlanToTheRecord(
        never, called(2, {"Lay", "Clamp", "Lay", "Clamp", "Hands off", "Stitch", "Check"}));
}

TEST_F(SewnAndSprayed, ASessionWithSprayFromThePlanToTheRecord) {
    const QRegularExpression never{
        QStringLiteral("\\b([Pp]ins?|[Pp]inned|dots?|[Ff]use|[Pp]ressed|[Ss]titch(es)?|[Tt]hreads?|"
                       "[Nn]eedles?|(?<!Cutters )[Cc]losed? (?!cans)|sewn)\\b")};
    openExample();
    pane("basting");
    tap(QStringLiteral("field-with"));
    live(400);
    tap(QStringLiteral("choice3"));
    live(300);
    ASSERT_TRUE(until(
        [this] { return !room.workroom->plan()->busy() && room.workroom->plan()->isPlanned(); }));
    live(300);
    // Nothing says yet that there is air.
    EXPECT_FALSE(room.workroom->plan()->good());
    pane("findings");
    live(300);
    says("Spray is only for outdoors or for a room with windows and doors open");
    tap(QStringLiteral("cure0"));
    live(300);
    ASSERT_TRUE(until([this] { return planned(); }));
    live(300);
    pane("");
    live(300);
    says(" patches");
    saysNothingOf(never, QStringLiteral("plan"));
    playsFromThePlanToTheRecord(
        never, called(3, {"Lay", "Clamp", "Lay", "Clamp", "Spray", "Hands off", "Wait", "Check"}));
}

} // namespace
} // namespace bastewright::app

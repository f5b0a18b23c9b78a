#include "promises.h"
#include "sheets/crew_key.h"

#include <QFile>
#include <QProcess>
#include <QRegularExpression>

#include <algorithm>

namespace bastewright {
namespace {

/// Lengths in millimetres of the level dark runs of a picture that are at least as long.
std::vector<double> darkRuns(const QImage& picture, int dots, double least) {
    std::vector<double> out;
    const double mm = 25.4 / dots;
    for (int y = 0; y < picture.height(); ++y) {
        int run = 0;
        for (int x = 0; x <= picture.width(); ++x) {
            if (x < picture.width() && qGray(picture.pixel(x, y)) < 128) {
                ++run;
                continue;
            }
            if (run * mm >= least)
                out.push_back(run * mm);
            run = 0;
        }
    }
    return out;
}

class Cards : public testing::TestWithParam<Paper> {
protected:
    void SetUp() override { SKIP_WITHOUT_POPPLER(); }
    SheetOptions options() const {
        return {
            .paper = GetParam(), .lead = false, .bring = false, .helpers = false, .cards = true};
    }
};

TEST_P(Cards, areWellFormed) {
    expectGoodForm(Written{fixture::harbourLights(), options()}, GetParam());
    expectGoodForm(Written{fixture::twoQuilts(), options()}, GetParam());
}

// 100 mm on paper; measured at 400 dots to the inch, a dot being 0.064 mm.
TEST_P(Cards, theCheckLineIsTrue) {
    constexpr int kDots = 400;
    for (const bool colour : {true, false}) {
        SheetOptions chosen = options();
        chosen.colour = colour;
        const Written w{fixture::harbourLights(), chosen};
        const auto pages = pdf::pictures(w.path, kDots, 1);
        ASSERT_EQ(pages.size(), 1u);
        bool found = false;
        for (const double run : darkRuns(pages[0], kDots, 90))
            if (run < 120) { // longer ones are the rule below the running head
                EXPECT_NEAR(run, 100, 0.2);
                found = true;
            }
        EXPECT_TRUE(found);
    }
}

// "head C4 A 24 pins Pass 2": one card for every zone, with the person who places it, its count
// and its pass.
TEST_P(Cards, everyZoneHasOneWithItsPersonAndCount) {
    const Written w{fixture::harbourLights(), options()};
    QString text;
    for (const QString& page : pdf::pageTexts(w.path))
        text += page + QChar::Space;
    const sheets::CrewKey key{w.session.setting.helpers};
    QStringList expected, printed;
    for (const auto& zone : w.plan.quilts[0].zones)
        for (const auto& t : w.plan.tasks)
            if (t.zone == zone.id && t.kind == TaskKind::placeOpen)
                expected << QStringLiteral("%1 %2 %3 pins Pass %4")
                                .arg(QString::fromStdString(zone.id).section('.', 1),
                                     key.letter(t.people.front()))
                                .arg(zone.points.size())
                                .arg(zone.pass);
    static const QRegularExpression card{
        QStringLiteral(R"(head ([A-Z]+\d+ \S+ \d+ pins? Pass \d+))")};
    auto found = card.globalMatch(text);
    while (found.hasNext())
        printed << found.next().captured(1);
    expected.sort();
    printed.sort();
    EXPECT_EQ(printed.join('\n').toStdString(), expected.join('\n').toStdString());
}

INSTANTIATE_TEST_SUITE_P(Papers, Cards, testing::Values(Paper::a4, Paper::letter),
                         [](const auto& one) { return std::string{name(one.param)}; });

/// Page and title of every line of the outline, read by pdftohtml.
std::vector<std::pair<int, QString>> outlineOf(const QString& path) {
    QProcess process;
    process.start(QStringLiteral("pdftohtml"), {"-xml", "-i", "-stdout", path});
    process.waitForFinished(60'000);
    static const QRegularExpression item{QStringLiteral(R"re(<item page="(\d+)">(.*?)</item>)re")};
    std::vector<std::pair<int, QString>> out;
    auto found = item.globalMatch(QString::fromUtf8(process.readAllStandardOutput()));
    while (found.hasNext()) {
        const auto m = found.next();
        out.emplace_back(m.captured(1).toInt(), pdf::normalised(m.captured(2)));
    }
    return out;
}

TEST(Document, anOutlineLeadsToEverybodysFirstPage) {
    SKIP_WITHOUT_POPPLER();
    const Written w{fixture::harbourLights(), {.passes = true}};
    const auto outline = outlineOf(w.path);
    const auto texts = pdf::pageTexts(w.path);
    int owners = 0;
    for (const auto& [page, title] : outline) {
        ASSERT_GE(page, 1);
        ASSERT_LE(std::size_t(page), texts.size());
        const QString& text = texts[std::size_t(page - 1)];
        EXPECT_TRUE(text.contains(title)) << page << ": " << title.toStdString();
        owners += text.startsWith(title) && text.contains("page 1 of");
    }
    // The lead's, what to bring, everybody's, and the passes that were asked for.
    EXPECT_EQ(owners, 3 + int(w.session.setting.helpers.size()));
    // As many lines as there are passes, and more.
    EXPECT_GT(outline.size(), std::size_t(owners) + w.plan.quilts[0].passes.size());
}

TEST(Document, titleAndLanguageAreSet) {
    SKIP_WITHOUT_POPPLER();
    for (const bool colour : {true, false}) {
        const Written w{fixture::harbourLights(), {.colour = colour}};
        EXPECT_EQ(pdf::documentTitle(w.path), "Harbour Lights: sheets");
        QFile file{w.path};
        ASSERT_TRUE(file.open(QIODevice::ReadOnly));
        EXPECT_TRUE(file.readAll().contains("/Lang (en)"));
        expectGoodForm(w, Paper::a4);
    }
}

TEST(Document, inGreyThereIsNoColour) {
    SKIP_WITHOUT_POPPLER();
    const auto colours = [](bool colour) {
        const Written w{fixture::harbourLights(), {.colour = colour}};
        QFile file{w.path};
        return file.open(QIODevice::ReadOnly) ? pdf::coloursIn(file.readAll()) : -1;
    };
    EXPECT_GT(colours(true), 0) << "the reader of colours must see some, or it proves nothing";
    EXPECT_EQ(colours(false), 0);
}

// Sixty characters, emoji, right to left, no space to break at: printed, or replaced where it
// shows.
TEST(Document, noNameIsLost) {
    SKIP_WITHOUT_POPPLER();
    Session s = fixture::harbourLights();
    const QString thread = QString::fromUcs4(U"\U0001F9F5");
    s.setting.helpers.resize(3);
    s.setting.helpers[0].name = (thread + " Nähkreis " + thread + " am Hafen").toStdString();
    s.setting.helpers[1].name = std::string(60, 'm');
    s.setting.helpers[2].name = "\u05d0\u05d1\u05d2 Bo";
    s.jobs[0].name = (thread + " Harbour " + QString{60, 'w'}).left(60).toStdString();
    const Written w{s};
    QString text;
    for (const QString& page : pdf::pageTexts(w.path))
        text += page;
    text.remove(' ');
    const QString shown = text.contains(thread) ? thread : QString{QChar{0x25A1}};
    EXPECT_TRUE(text.contains(shown + "Nähkreis" + shown + "amHafen"));
    EXPECT_TRUE(text.contains(QString{60, 'm'}));
    EXPECT_TRUE(text.contains(QStringLiteral("\u05d0\u05d1\u05d2")));
    expectGoodForm(w, Paper::a4);

    // Beside the reasons for the plan all of them stand whole; on the cards everybody's mark.
    const Written why{s, {.lead = false, .bring = false, .helpers = false, .why = true}};
    QString first = pdf::pageTexts(why.path).front();
    first.remove(' ');
    for (const QString& name : {QString{shown + "Nähkreis" + shown + "amHafen"}, QString{60, 'm'},
                                QStringLiteral("\u05d0\u05d1\u05d2"), shown + "Harbour"})
        EXPECT_TRUE(first.contains(name)) << name.toStdString();
    const Written cards{s, {.lead = false, .bring = false, .helpers = false, .cards = true}};
    QString marks;
    for (const QString& page : pdf::pageTexts(cards.path))
        marks += page;
    const sheets::CrewKey key{s.setting.helpers};
    for (const QString& mark : key.all())
        EXPECT_TRUE(marks.contains(pdf::normalised(mark))) << mark.toStdString();
    expectGoodForm(cards, Paper::a4);
}

} // namespace
} // namespace bastewright

#include "promises.h"

#include "sheets/crew_key.h"

#include <QFile>
#include <QRegularExpression>

#include <algorithm>

namespace bastewright {
namespace {

using pdf::normalised;

// The expected words are put together here from the plan's numbers alone, not by the code under
// test.
QString clockOf(const Session& s, Seconds t) {
    const auto minutes = (s.setting.start.sinceMidnight.count() + t.count() / 60) % (24 * 60);
    return QStringLiteral("%1:%2")
        .arg(minutes / 60, 2, 10, QChar{'0'})
        .arg(minutes % 60, 2, 10, QChar{'0'});
}

std::size_t pointsOf(const QuiltPlan& quilt, const std::string& zone) {
    const auto found = std::ranges::find(quilt.zones, zone, &Zone::id);
    return found == quilt.zones.end() ? 0 : found->points.size();
}

QString workOf(TaskKind kind) {
    switch (kind) {
    case TaskKind::placeOpen:
        return QStringLiteral("place");
    case TaskKind::closePins:
        return QStringLiteral("close");
    case TaskKind::press:
        return QStringLiteral("press");
    case TaskKind::dotLower:
        return QStringLiteral("on the backing");
    case TaskKind::dotUpper:
        return QStringLiteral("on the batting");
    default:
        return {};
    }
}

/// "13:12 C4 place 24"
QString lineOf(const Session& s, const Plan& plan, const Task& t) {
    return QStringLiteral("%1 %2 %3 %4")
        .arg(clockOf(s, t.start), QString::fromStdString(t.zone), workOf(t.kind))
        .arg(pointsOf(plan.quilts[std::size_t(t.job)], t.zone));
}

QStringList plannedLines(const Written& w, const std::string& person) {
    QStringList lines;
    for (const auto& t : w.plan.tasks)
        if (!workOf(t.kind).isEmpty() && std::ranges::count(t.people, person) > 0)
            lines << lineOf(w.session, w.plan, t);
    lines.sort();
    return lines;
}

/// Rows of one zone: "13:12 C4: place 24 pins, open".
QStringList singleLines(const QString& text) {
    static const QRegularExpression row{QStringLiteral(
        R"((\d\d:\d\d) ([A-Z]+\d+): (?:(place|close|press) (\d+)|(\d+) dots? (on the backing|on the batting)))")};
    QStringList lines;
    auto found = row.globalMatch(text);
    while (found.hasNext()) {
        const auto m = found.next();
        const bool verbFirst = !m.captured(3).isEmpty();
        lines << QStringLiteral("%1 %2 %3 %4")
                     .arg(m.captured(1), m.captured(2), verbFirst ? m.captured(3) : m.captured(6),
                          verbFirst ? m.captured(4) : m.captured(5));
    }
    return lines;
}

/// Rows of several: "Place open 13:12 C4: 24 (1) 13:14 C5: 24 (2)", the last figure of each being
/// the number of the place to stand at.
QStringList gatheredLines(const QString& text) {
    static const std::map<QString, QString> works{{"Place open", "place"},
                                                  {"Close pins", "close"},
                                                  {"Press", "press"},
                                                  {"Dot backing", "on the backing"},
                                                  {"Dot batting", "on the batting"}};
    static const QRegularExpression row{QStringLiteral(
        R"((Place open|Close pins|Press|Dot backing|Dot batting)((?: \d\d:\d\d [A-Z]+\d+: \d+(?!\d| dot)(?: \d{1,2}(?![\d:]))?)+))")};
    static const QRegularExpression one{QStringLiteral(R"((\d\d:\d\d) ([A-Z]+\d+): (\d+))")};
    QStringList lines;
    auto rows = row.globalMatch(text);
    while (rows.hasNext()) {
        const auto r = rows.next();
        auto items = one.globalMatch(r.captured(2));
        while (items.hasNext()) {
            const auto m = items.next();
            lines << QStringLiteral("%1 %2 %3 %4")
                         .arg(m.captured(1), m.captured(2), works.at(r.captured(1)), m.captured(3));
        }
    }
    return lines;
}

QStringList printedLines(const QString& text) {
    QStringList lines = singleLines(text) + gatheredLines(text);
    lines.sort();
    return lines;
}

QString nameOf(const Helper& h) {
    return QString::fromStdString(h.name);
}

/// A name as it can be read back: characters no installed font has are printed as hollow squares.
bool holdsName(const QString& text, const Helper& h) {
    const QString name = normalised(nameOf(h)).remove(QChar{' '});
    QString squashed = text;
    squashed.remove(QChar{' '});
    if (squashed.contains(name))
        return true;
    const QString hollow(name.size(), QChar{0x25A1});
    return squashed.contains(hollow);
}

QStringList owners(const Written& w) {
    QStringList out{QStringLiteral("Lead")};
    const sheets::CrewKey key{w.session.setting.helpers};
    for (const auto& h : w.session.setting.helpers)
        out << key.letter(h.name);
    return out;
}

/// Pages by their owner's letter: names may be elided in the running head, letters never are.
std::map<QString, QString> pagesByOwner(const Written& w) {
    std::map<QString, QString> texts;
    std::map<QString, int> pages, of;
    static const QRegularExpression count{QStringLiteral(R"(page (\d+) of (\d+))")};
    const QStringList known = owners(w);
    QString owner;
    for (const QString& page : pdf::pageTexts(w.path)) {
        const auto head = count.match(page);
        EXPECT_TRUE(head.hasMatch()) << page.left(80).toStdString();
        // Sections follow one another in the order of `owners`; a new one begins at page 1.
        if (head.captured(1) == QLatin1String("1")) {
            const auto next = known.indexOf(owner) + 1;
            EXPECT_LT(next, known.size());
            owner = known.value(next);
        }
        EXPECT_TRUE(page.left(head.capturedStart()).contains(normalised(owner)))
            << owner.toStdString() << " / " << page.left(80).toStdString();
        EXPECT_EQ(head.captured(1).toInt(), ++pages[owner]);
        of[owner] = head.captured(2).toInt();
        texts[owner] += page.mid(head.capturedEnd()) + QChar{' '};
    }
    EXPECT_EQ(pages, of) << "every section's last page is the one its heads announce";
    EXPECT_EQ(texts.size(), std::size_t(known.size()));
    return texts;
}

} // namespace

void expectEverybodysTasks(const Written& w) {
    const auto pages = pagesByOwner(w);
    const sheets::CrewKey key{w.session.setting.helpers};
    for (const auto& h : w.session.setting.helpers) {
        const auto found = pages.find(key.letter(h.name));
        ASSERT_NE(found, pages.end()) << h.name;
        const QString& text = found->second;
        EXPECT_TRUE(holdsName(text, h)) << h.name << "\n" << text.left(300).toStdString();
        EXPECT_EQ(printedLines(text).join('\n').toStdString(),
                  plannedLines(w, h.name).join('\n').toStdString())
            << h.name;
        for (const auto& t : w.plan.tasks)
            if (std::ranges::count(t.people, h.name) > 0 && t.zone.empty()) {
                EXPECT_TRUE(text.contains(clockOf(w.session, t.start))) << h.name << " " << t.id;
            }
    }
}

void expectChecklistsWithin(const Written& w, int pages) {
    static const QRegularExpression count{QStringLiteral(R"(page 1 of (\d+))")};
    bool lead = true;
    for (const QString& page : pdf::pageTexts(w.path))
        if (const auto first = count.match(page); first.hasMatch()) {
            if (!lead) {
                EXPECT_LE(first.captured(1).toInt(), pages) << page.left(60).toStdString();
            }
            lead = false;
        }
}

void expectLeadKnowsAll(const Written& w) {
    const auto pages = pagesByOwner(w);
    const QString& text = pages.at(QStringLiteral("Lead"));
    for (std::size_t q = 0; q < w.plan.quilts.size(); ++q) {
        const QuiltPlan& quilt = w.plan.quilts[q];
        for (const auto& zone : quilt.zones)
            EXPECT_TRUE(text.contains(QRegularExpression{
                QStringLiteral("\\b%1\\b").arg(QString::fromStdString(zone.id))}))
                << zone.id;
        for (const auto& pass : quilt.passes) {
            std::size_t points = 0;
            for (const auto& id : pass.zones)
                points += pointsOf(quilt, id);
            const bool dots = w.session.jobs[q].basting.with == Basting::With::dots;
            EXPECT_TRUE(text.contains(QStringLiteral("%1 %2").arg(points).arg(
                dots ? QStringLiteral("dots") : QStringLiteral("pins"))))
                << "pass " << pass.number << ": " << points;
            EXPECT_TRUE(text.contains(
                QStringLiteral("Pass %1 of %2").arg(pass.number).arg(quilt.passes.size())));
        }
    }
    for (const auto& h : w.session.setting.helpers)
        EXPECT_TRUE(holdsName(text, h)) << h.name;
    for (const auto& t :
         w.plan.tasks) // zones done in a row are one step, begun with the first of them
        if (t.zone.empty() && !t.people.empty()) {
            EXPECT_TRUE(text.contains(clockOf(w.session, t.start))) << t.id;
        }
    for (const auto& s : w.plan.supplies)
        EXPECT_TRUE(text.contains(normalised(QString::fromStdString(s.item)))) << s.item;
    for (const auto& f : w.plan.findings)
        EXPECT_TRUE(text.contains(normalised(QString::fromStdString(f.text)))) << f.text;
    EXPECT_TRUE(text.contains(clockOf(w.session, w.plan.finish)));
}

void expectGoodForm(const Written& w, Paper paper) {
    // A4: 210 × 297 mm, ISO 216. Letter: 8 1/2 × 11 in, ANSI Y14.1. In points of 1/72 in; pdfinfo
    // gives six significant digits.
    const pdf::PageSize exact = paper == Paper::a4 ? pdf::PageSize{210 / 25.4 * 72, 297 / 25.4 * 72}
                                                   : pdf::PageSize{8.5 * 72, 11 * 72};
    const auto sizes = pdf::pageSizes(w.path);
    EXPECT_FALSE(sizes.empty());
    for (const auto& s : sizes) {
        EXPECT_NEAR(s.width, exact.width, 0.001);
        EXPECT_NEAR(s.height, exact.height, 0.001);
    }
    const auto fonts = pdf::fonts(w.path);
    EXPECT_FALSE(fonts.empty());
    for (const auto& f : fonts)
        EXPECT_TRUE(f.embedded) << f.name.toStdString();

    QFile file{w.path};
    ASSERT_TRUE(file.open(QIODevice::ReadOnly));
    EXPECT_EQ(pdf::missingGlyphs(file.readAll()), 0);
    EXPECT_FALSE(pdf::documentTitle(w.path).isEmpty());

    constexpr int kDots = 80;
    constexpr int kMargin = int(12 / 25.4 * kDots); // whole pixels inside 12 mm
    int number = 0;
    for (const QImage& page : pdf::pictures(w.path, kDots)) {
        ++number;
        int dark = 0, inside = 0;
        for (int y = 0; y < page.height(); ++y)
            for (int x = 0; x < page.width(); ++x) {
                const bool rim = x < kMargin || y < kMargin || x >= page.width() - kMargin ||
                                 y >= page.height() - kMargin;
                if (qGray(page.pixel(x, y)) < 250)
                    ++(rim ? dark : inside);
            }
        EXPECT_EQ(dark, 0) << "something within 12 mm of the edge of page " << number;
        EXPECT_GT(inside, 100) << "page " << number << " is blank";
    }
    EXPECT_EQ(std::size_t(number), sizes.size());
}

} // namespace bastewright

#include "promises.h"

#include "layout.h"
#include "sheets/crew_key.h"

#include <QFile>
#include <QRegularExpression>

#include <algorithm>
#include <map>
#include <optional>
#include <set>

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

bool isOf(const Task& t, const std::string& person) {
    return std::ranges::count(t.people, person) > 0;
}

/// What people call a zone: its id without the pass.
QString calledOf(const std::string& zone) {
    return QString::fromStdString(zone.substr(zone.find('.') + 1));
}

/// "13:12 quilt 0 pass 2 C4 place 24": a zone's task as the plan has it.
QString lineOf(const Session& s, const Plan& plan, const Task& t) {
    return QStringLiteral("%1 quilt %2 pass %3 %4 %5 %6")
        .arg(clockOf(s, t.start))
        .arg(t.job)
        .arg(t.pass)
        .arg(calledOf(t.zone), workOf(t.kind))
        .arg(pointsOf(plan.quilts[std::size_t(t.job)], t.zone));
}

QStringList plannedLines(const Written& w, const std::string& person) {
    QStringList lines;
    for (const auto& t : w.plan.tasks)
        if (!workOf(t.kind).isEmpty() && isOf(t, person))
            lines << lineOf(w.session, w.plan, t);
    lines.sort();
    return lines;
}

/// Which pass, of which quilt, the rows of a checklist stand under.
class PassHeadings {
public:
    PassHeadings(const Written& w, const QString& text) {
        const auto& quilts = w.plan.quilts;
        const bool several = quilts.size() > 1;
        const bool tables =
            std::ranges::any_of(quilts, [](const QuiltPlan& q) { return q.surface.number != 1; });
        for (std::size_t q = 0; q < quilts.size(); ++q) {
            QString form = QStringLiteral("Pass (\\d+)");
            if (several)
                form =
                    QRegularExpression::escape(normalised(QString::fromStdString(quilts[q].name))) +
                    QStringLiteral(", pass (\\d+)");
            // With several tables the one the quilt lies on is named; captions of pictures may
            // leave it out, and rows stand under none of those.
            if (tables)
                form += QStringLiteral(", table %1").arg(quilts[q].surface.number);
            auto found = QRegularExpression{form}.globalMatch(text);
            while (found.hasNext()) {
                const auto m = found.next();
                const bool inRow = text.mid(m.capturedStart() - 2, 2) == QLatin1String("; ");
                places_[m.capturedStart()] = {
                    QStringLiteral("quilt %1 pass %2").arg(q).arg(m.captured(1)), inRow};
            }
        }
    }
    /// A row that names its own pass at its end, before the next time of day, is of that one.
    QString of(const QString& text, qsizetype from, qsizetype end) const {
        static const QRegularExpression time{QStringLiteral(R"(\d\d:\d\d)")};
        const auto next = time.match(text, end);
        const qsizetype row = next.hasMatch() ? next.capturedStart() : text.size();
        auto above = places_.upper_bound(from);
        if (above != places_.end() && above->second.inRow && above->first < row)
            return above->second.pass;
        while (above != places_.begin()) {
            --above;
            if (!above->second.inRow)
                return above->second.pass;
        }
        return QStringLiteral("under no pass");
    }

private:
    struct Heading {
        QString pass;
        bool inRow = false;
    };
    std::map<qsizetype, Heading> places_;
};

/// Rows of one zone: "13:12 C4: place 24 pins, open".
QStringList singleLines(const QString& text, const PassHeadings& headings) {
    static const QRegularExpression row{QStringLiteral(
        R"((\d\d:\d\d) ([A-Z]+\d+): (?:(place|close|press) (\d+)|(\d+) dots? (on the backing|on the batting)))")};
    QStringList lines;
    auto found = row.globalMatch(text);
    while (found.hasNext()) {
        const auto m = found.next();
        const bool verbFirst = !m.captured(3).isEmpty();
        lines << QStringLiteral("%1 %2 %3 %4 %5")
                     .arg(m.captured(1), headings.of(text, m.capturedStart(), m.capturedEnd()),
                          m.captured(2), verbFirst ? m.captured(3) : m.captured(6),
                          verbFirst ? m.captured(4) : m.captured(5));
    }
    return lines;
}

/// Rows of several: "Place open 13:12 C4: 24 (1) 13:14 C5: 12 (2)", the last figure of each being
/// the number of the place to stand at.
QStringList gatheredLines(const QString& text, const PassHeadings& headings) {
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
            lines << QStringLiteral("%1 %2 %3 %4 %5")
                         .arg(m.captured(1), headings.of(text, r.capturedStart(), r.capturedEnd()),
                              m.captured(2), works.at(r.captured(1)), m.captured(3));
        }
    }
    return lines;
}

QStringList printedLines(const Written& w, const QString& text) {
    const PassHeadings headings{w, text};
    QStringList lines = singleLines(text, headings) + gatheredLines(text, headings);
    lines.sort();
    return lines;
}

/// "13:50 break until 14:05", "14:20 free until 14:31": what the person's breaks and the gaps of
/// eight minutes and more between their tasks come to.
QStringList plannedRests(const Written& w, const Helper& h) {
    QStringList lines;
    const auto add = [&](Seconds from, Seconds until, const char* what) {
        lines << QStringLiteral("%1 %2 until %3")
                     .arg(clockOf(w.session, from), what, clockOf(w.session, until));
    };
    std::set<Seconds> busy; // whole seconds at work or on a break, from the first task to the last
    std::optional<Seconds> first, last;
    for (const auto& t : w.plan.tasks)
        if (isOf(t, h.name)) {
            first = std::min(first.value_or(t.start), t.start);
            last = std::max(last.value_or(t.end), t.end);
            for (Seconds s = t.start; s < t.end; ++s)
                busy.insert(s);
        }
    for (const auto& b : h.breaks) {
        const Seconds from = b.from.sinceMidnight - w.session.setting.start.sinceMidnight;
        const Seconds until = b.until.sinceMidnight - w.session.setting.start.sinceMidnight;
        if (until <= Seconds{} || from >= w.plan.finish)
            continue;
        add(from, until, "break");
        for (Seconds s = from; s < until; ++s)
            busy.insert(s);
    }
    if (first)
        for (Seconds from = *first; from < *last;) {
            if (busy.contains(from)) {
                ++from;
                continue;
            }
            const auto next = busy.lower_bound(from);
            const Seconds until = next == busy.end() ? *last : *next;
            if (until - from >= std::chrono::minutes{8})
                add(from, until, "free");
            from = until;
        }
    lines.sort();
    return lines;
}

QStringList printedRests(const QString& text) {
    static const QRegularExpression row{
        QStringLiteral(R"(\d\d:\d\d (?:break|free) until \d\d:\d\d)")};
    QStringList lines;
    auto found = row.globalMatch(text);
    while (found.hasNext())
        lines << found.next().captured();
    lines.sort();
    return lines;
}

/// Every row's time is no earlier than that of the row above it.
void expectInOrderOfTime(const QString& text, const std::string& person) {
    static const QRegularExpression row{
        QStringLiteral(R"((?<!until )(?<!to )(\d\d:\d\d) (?=break until|free until|[A-Z]))")};
    QString before;
    auto found = row.globalMatch(text);
    while (found.hasNext()) {
        const QString time = found.next().captured(1);
        EXPECT_LE(before, time) << person;
        before = time;
    }
}

/// A task done with others names all of them, and lifting says so.
void expectCompany(const Written& w, const QString& text, const Task& t, const std::string& person,
                   const sheets::CrewKey& key) {
    static const QRegularExpression time{QStringLiteral(R"(\d\d:\d\d)")};
    const QString clock = clockOf(w.session, t.start);
    const bool lift = t.kind == TaskKind::shift || t.kind == TaskKind::turnOver;
    bool named = t.people.size() < 2;
    for (qsizetype at = text.indexOf(clock); at >= 0 && !named; at = text.indexOf(clock, at + 1)) {
        const auto next = time.match(text, at + clock.size());
        const QString row =
            text.mid(at, (next.hasMatch() ? next.capturedStart() : text.size()) - at);
        const auto with = row.indexOf(lift ? QLatin1String("lift with ") : QLatin1String("with "));
        named =
            with >= 0 && std::ranges::all_of(t.people, [&](const std::string& other) {
                const QString mark = QRegularExpression::escape(normalised(key.letter(other)));
                return other == person || row.mid(with).contains(QRegularExpression{
                                              QStringLiteral("(?:^| )%1(?:[ ,;]|$)").arg(mark)});
            });
    }
    EXPECT_TRUE(named) << person << " " << t.id << " at " << clock.toStdString();
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
        EXPECT_EQ(printedLines(w, text).join('\n').toStdString(),
                  plannedLines(w, h.name).join('\n').toStdString())
            << h.name;
        EXPECT_EQ(printedRests(text).join('\n').toStdString(),
                  plannedRests(w, h).join('\n').toStdString())
            << h.name;
        expectInOrderOfTime(text, h.name);
        for (const auto& t : w.plan.tasks)
            if (isOf(t, h.name) && t.zone.empty()) {
                EXPECT_TRUE(text.contains(clockOf(w.session, t.start))) << h.name << " " << t.id;
                expectCompany(w, text, t, h.name, key);
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
            EXPECT_TRUE(text.contains(
                QRegularExpression{QStringLiteral("\\b%1\\b").arg(calledOf(zone.id))}))
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
        EXPECT_TRUE(text.contains(normalised(QString::fromStdString(s.item.english())))) << s.item;
    for (const auto& f : w.plan.findings)
        EXPECT_TRUE(text.contains(normalised(QString::fromStdString(f.text.english())))) << f.text;
    EXPECT_TRUE(text.contains(clockOf(w.session, w.plan.finish)));
}

void expectZonesAsCalled(const Written& w) {
    static const QRegularExpression id{QStringLiteral(R"(\bp\d+\.[A-Z]+\d+)")};
    for (const QString& page : pdf::pageTexts(w.path))
        EXPECT_FALSE(page.contains(id)) << id.match(page).captured().toStdString();
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
    expectWholePages(w.path);
    expectZonesAsCalled(w);
}

} // namespace bastewright

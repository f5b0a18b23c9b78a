#include "promises.h"

#include "layout.h"
#include "measures/length_text.h"
#include "sheets/crew_key.h"

#include <QFile>
#include <QRegularExpression>

#include <algorithm>
#include <cmath>
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

bool isOf(const Task& t, const std::string& person) {
    return std::ranges::count(t.people, person) > 0;
}

bool putsIn(TaskKind kind) {
    return kind == TaskKind::placeOpen || kind == TaskKind::dotLower;
}

/// Setting up and rolling up stand at times of their own.
bool isOfPass(const Task& t) {
    return t.kind != TaskKind::setUp && t.kind != TaskKind::handOver;
}

using Place = std::pair<int, int>; // row and mark

/// One pass of somebody, as the plan has it or as the page says it.
struct PassLine {
    QString begins, count;
    std::set<Place> places;
};
using PassLines = std::map<std::pair<std::size_t, int>, PassLine>; // by quilt and pass

std::string told(const PassLines& lines) {
    std::string out;
    for (const auto& [pass, line] : lines) {
        out += "quilt " + std::to_string(pass.first) + " pass " + std::to_string(pass.second) +
               " at " + line.begins.toStdString() + ": " + line.count.toStdString();
        for (const Place& p : line.places)
            out += " " + std::to_string(p.first) + "/" + std::to_string(p.second);
        out += '\n';
    }
    return out;
}

Seconds beginOf(const Plan& plan, std::size_t quilt, int pass) {
    std::optional<Seconds> first;
    for (const auto& t : plan.tasks)
        if (t.job == int(quilt) && t.pass == pass && isOfPass(t))
            first = std::min(first.value_or(t.start), t.start);
    return first.value_or(Seconds{});
}

/// So many of each: "24 pins", "24 pins and 8 dots".
struct Count {
    std::size_t pins = 0, dots = 0;
    void add(const Written& w, std::size_t quilt, const Zone& zone) {
        const auto with = zone.with.value_or(w.session.jobs[quilt].basting.with);
        (with == Basting::With::dots ? dots : pins) += zone.points.size();
    }
};

QString countOf(const Count& count) {
    QStringList out;
    for (const auto& [n, name] : {std::pair{count.pins, "pin"}, std::pair{count.dots, "dot"}})
        if (n > 0)
            out << QStringLiteral("%1 %2%3").arg(n).arg(name, n == 1 ? "" : "s");
    return out.join(QStringLiteral(" and "));
}

PassLines plannedPasses(const Written& w, const std::string& person) {
    PassLines lines;
    std::map<std::pair<std::size_t, int>, Count> points;
    for (const auto& t : w.plan.tasks) {
        if (!isOf(t, person))
            continue;
        const auto quilt = std::size_t(t.job);
        const std::pair pass{quilt, t.pass};
        PassLine& line = lines[pass];
        line.begins = clockOf(w.session, beginOf(w.plan, quilt, t.pass));
        if (!putsIn(t.kind))
            continue;
        const auto& rows = w.plan.quilts[quilt].rows;
        const auto zone = std::ranges::find(w.plan.quilts[quilt].zones, t.zone, &Zone::id);
        if (zone != w.plan.quilts[quilt].zones.end())
            points[pass].add(w, quilt, *zone);
        if (rows && zone != w.plan.quilts[quilt].zones.end()) {
            const RowMarks marks{*rows};
            for (const auto& p : zone->points)
                if (const auto at = marks.of(p.at))
                    line.places.insert({at->row, at->mark});
        }
    }
    for (auto& [pass, line] : lines)
        line.count = countOf(points[pass]);
    return lines;
}

/// "rows 15–26, marks 3–5 (even rows: 3–4)" spelt out, with the marks these rows have.
std::set<Place> placesIn(const QString& text, const PinRows& rows) {
    std::set<Place> out;
    static const QRegularExpression form{QStringLiteral(
        "rows? (\\d+)(?:–(\\d+))?"
        "(?:, marks? (\\d+)(?:–(\\d+))?| as far as mark (\\d+)| from mark (\\d+) on)?"
        "(?: \\(even rows: (?:mark (\\d+)|from mark (\\d+)|(\\d+)–(\\d+))\\))?")};
    constexpr int kFirst = 1, kLast = 10'000;
    for (auto found = form.globalMatch(text); found.hasNext();) {
        const auto m = found.next();
        const auto number = [&](int group, int without) {
            return m.captured(group).isEmpty() ? without : m.captured(group).toInt();
        };
        const int from = number(3, number(6, kFirst)), to = number(4, number(5, number(3, kLast)));
        const int evenFrom = number(9, number(8, from)), evenTo = number(10, number(7, to));
        for (int row = number(1, 0); row <= number(2, number(1, 0)); ++row) {
            const auto& marks = marksOf(rows, std::size_t(row - 1));
            for (const Length at : rows.lines.at(std::size_t(row - 1)).places) {
                const int mark = int(std::ranges::find(marks, at) - marks.begin()) + 1;
                const bool even = row % 2 == 0;
                if (mark >= (even ? evenFrom : from) && mark <= (even ? evenTo : to))
                    out.insert({row, mark});
            }
        }
    }
    return out;
}

/// What a pass is called on a helper's page.
QString passWords(const Written& w, std::size_t quilt, int pass) {
    const auto& quilts = w.plan.quilts;
    if (quilts.size() < 2)
        return QStringLiteral("Pass %1").arg(pass);
    QString out = QStringLiteral("%1, pass %2")
                      .arg(normalised(QString::fromStdString(quilts[quilt].name)))
                      .arg(pass);
    if (std::ranges::any_of(quilts, [](const QuiltPlan& q) { return q.surface.number != 1; }))
        out += QStringLiteral(", table %1").arg(quilts[quilt].surface.number);
    return out;
}

/// The passes a page says, each from its time to the count behind it.
PassLines printedPasses(const Written& w, const QString& text) {
    PassLines lines;
    static const QRegularExpression next{QStringLiteral(R"(\d\d:\d\d )")};
    static const QRegularExpression count{QStringLiteral(R"((\d+ (?:pin|dot)s?)\s*$)")};
    for (std::size_t q = 0; q < w.plan.quilts.size(); ++q)
        for (const auto& pass : w.plan.quilts[q].passes) {
            const QRegularExpression form{
                QStringLiteral(R"((\d\d:\d\d) %1(?!\d))")
                    .arg(QRegularExpression::escape(passWords(w, q, pass.number)))};
            const auto found = form.match(text);
            if (!found.hasMatch())
                continue;
            const auto after = next.match(text, found.capturedEnd());
            QString row = text.mid(found.capturedEnd(),
                                   (after.hasMatch() ? after.capturedStart() : text.size()) -
                                       found.capturedEnd());
            // Below the last pass stands what to take care of.
            row = row.section(QStringLiteral("The times are about right"), 0, 0).trimmed();
            row.replace(QStringLiteral("– "), QStringLiteral("–")); // a line may end in a dash
            PassLine& line = lines[{q, pass.number}];
            line.begins = found.captured(1);
            line.count = count.match(row).captured(1);
            if (const auto& rows = w.plan.quilts[q].rows)
                line.places = placesIn(row, *rows);
        }
    return lines;
}

/// Times of day that may stand on somebody's page.
std::set<QString> timesOf(const Written& w, const Helper& h) {
    std::set<QString> out;
    for (const auto& [pass, line] : plannedPasses(w, h.name))
        out.insert(line.begins);
    for (const auto& b : w.plan.breaks)
        out.insert(clockOf(w.session, b.start));
    const auto own = [&](const std::optional<ClockTime>& t) {
        if (t)
            out.insert(
                clockOf(w.session, t->sinceMidnight - w.session.setting.start.sinceMidnight));
    };
    own(h.from);
    own(h.until);
    for (const auto& b : h.breaks) {
        own(b.from);
        own(b.until);
    }
    return out;
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
    QStringList out{QStringLiteral("Lead"), QStringLiteral("Bring")};
    for (const auto& h : w.session.setting.helpers)
        out << nameOf(h);
    return out;
}

/// Pages by whose they are. Names may be elided or lack a glyph, so that parts are told by their
/// order: each begins with a page 1.
std::map<QString, QString> pagesByOwner(const Written& w, std::map<QString, int>* many = nullptr) {
    std::map<QString, QString> texts;
    std::map<QString, int> pages, of;
    static const QRegularExpression count{QStringLiteral(R"(page (\d+) of (\d+))")};
    const QStringList known = owners(w);
    QString owner;
    for (const QString& page : pdf::pageTexts(w.path)) {
        const auto foot = count.match(page);
        EXPECT_TRUE(foot.hasMatch()) << page.left(80).toStdString();
        if (foot.captured(1) == QLatin1String("1")) {
            const auto next = known.indexOf(owner) + 1;
            EXPECT_LT(next, known.size());
            owner = known.value(next);
        }
        EXPECT_EQ(foot.captured(1).toInt(), ++pages[owner]);
        of[owner] = foot.captured(2).toInt();
        texts[owner] += page.mid(foot.capturedEnd()) + QChar{' '};
    }
    EXPECT_EQ(pages, of) << "every part's last page is the one its feet announce";
    EXPECT_EQ(texts.size(), std::size_t(known.size()));
    if (many)
        *many = pages;
    return texts;
}

/// The letter of the place somebody has in most passes; without one, their own mark.
QString markOf(const Written& w, const QuiltPlan& quilt, const std::string& person) {
    std::map<std::string, int> passes;
    for (const auto& pass : quilt.passes)
        for (const auto& s : pass.stretches)
            if (s.person == person)
                ++passes[s.place];
    if (passes.empty())
        return normalised(sheets::CrewKey{w.session.setting.helpers}.letter(person));
    return QString::fromStdString(
        std::ranges::max_element(passes, {}, [](const auto& p) { return p.second; })->first);
}

/// "117", "5.25": as the list to bring has a figure without its unit.
bool holdsFigure(const QString& text, double n) {
    const QString whole = QString::number(std::round(n));
    if (std::abs(n - std::round(n)) < 0.005)
        return text.contains(QRegularExpression{QStringLiteral("(?:^|\\D)%1(?:\\D|$)").arg(whole)});
    const QString eighths =
        normalised(QString::fromStdString(format(Length::nearestInches(n), Unit::inch, false)));
    return text.contains(eighths) || text.contains(QString::number(n, 'f', 2));
}

} // namespace

void expectEverybodysPasses(const Written& w) {
    const auto pages = pagesByOwner(w);
    static const QRegularExpression time{QStringLiteral(R"((?<!\d)\d\d:\d\d(?!\d))")};
    for (const auto& h : w.session.setting.helpers) {
        const auto found = pages.find(nameOf(h));
        ASSERT_NE(found, pages.end()) << h.name;
        const QString& text = found->second;
        EXPECT_TRUE(holdsName(text, h)) << h.name << "\n" << text.left(300).toStdString();
        EXPECT_EQ(told(printedPasses(w, text)), told(plannedPasses(w, h.name))) << h.name;
        for (auto all = time.globalMatch(text); all.hasNext();) {
            const QString one = all.next().captured();
            EXPECT_TRUE(timesOf(w, h).contains(one)) << h.name << " " << one.toStdString();
        }
        for (const auto& b : w.plan.breaks)
            if (b.people.empty() || std::ranges::count(b.people, h.name) > 0) {
                EXPECT_TRUE(
                    text.contains(QStringLiteral("%1 Break").arg(clockOf(w.session, b.start))))
                    << h.name;
            }
    }
}

void expectHelpersWithin(const Written& w, int pages) {
    std::map<QString, int> many;
    pagesByOwner(w, &many);
    for (const auto& h : w.session.setting.helpers)
        EXPECT_LE(many[nameOf(h)], pages) << h.name;
}

void expectLeadKnowsAll(const Written& w) {
    const auto pages = pagesByOwner(w);
    const QString& text = pages.at(QStringLiteral("Lead"));
    const QString& list = pages.at(QStringLiteral("Bring"));
    static const QRegularExpression time{QStringLiteral(R"(\d\d:\d\d )")};
    qsizetype cursor = 0;
    for (std::size_t q = 0; q < w.plan.quilts.size(); ++q) {
        const QuiltPlan& quilt = w.plan.quilts[q];
        for (const auto& pass : quilt.passes) {
            // From its time to the next; quilts, and passes of each, follow one another.
            const auto begins =
                QRegularExpression{QStringLiteral("%1 %2 ")
                                       .arg(clockOf(w.session, beginOf(w.plan, q, pass.number)))
                                       .arg(pass.number)}
                    .match(text, cursor);
            EXPECT_TRUE(begins.hasMatch()) << "quilt " << q << " pass " << pass.number;
            cursor = std::max(cursor, begins.capturedEnd());
            const auto next = time.match(text, cursor);
            const QString row =
                text.mid(cursor, (next.hasMatch() ? next.capturedStart() : text.size()) - cursor);
            std::map<std::string, std::size_t> byPerson;
            Count points;
            for (const auto& t : w.plan.tasks)
                if (t.job == int(q) && t.pass == pass.number && putsIn(t.kind)) {
                    byPerson[t.people.front()] += pointsOf(quilt, t.zone);
                    if (const auto zone = std::ranges::find(quilt.zones, t.zone, &Zone::id);
                        zone != quilt.zones.end())
                        points.add(w, q, *zone);
                }
            EXPECT_TRUE(row.contains(countOf(points))) << "pass " << pass.number;
            for (const auto& [person, n] : byPerson) {
                const QString mark = markOf(w, quilt, person);
                // Letters from the right to the left may come out on either side of the figure.
                const bool latin = mark.front().unicode() < 0x250;
                EXPECT_TRUE(row.contains(QRegularExpression{QStringLiteral("%1(?<!\\d)%2(?!\\d)")
                                                                .arg(latin ? mark + ' ' : QString{})
                                                                .arg(n)}))
                    << person << " " << n << " in pass " << pass.number;
            }
        }
    }
    for (const auto& s : w.plan.supplies) {
        EXPECT_TRUE(list.contains(normalised(QString::fromStdString(s.item.english())))) << s.item;
        EXPECT_TRUE(holdsFigure(list, s.need)) << s.item << " " << s.need;
        if (s.buy > 0) {
            EXPECT_TRUE(holdsFigure(list, s.buy)) << s.item << " to get: " << s.buy;
        }
    }
    for (const auto& f : w.plan.findings)
        if (f.level != Finding::Level::note) {
            EXPECT_TRUE(text.contains(normalised(QString::fromStdString(f.text.english()))))
                << f.text;
        }
    for (const auto& b : w.plan.breaks)
        if (w.plan.quilts.size() == 1) {
            EXPECT_TRUE(text.contains(QStringLiteral("%1 Break").arg(clockOf(w.session, b.start))));
        }
    const Seconds finish = w.plan.range.middle > Seconds{} ? w.plan.range.middle : w.plan.finish;
    EXPECT_TRUE(text.contains(clockOf(w.session, finish)));
}

void expectReadable(const Written& w) {
    constexpr double kRounding = 0.6; // as everywhere in pdftohtml.s sizes (layout.cpp)
    static const QRegularExpression own{
        QStringLiteral("(Pass \\d+: |Never before this call|every pin open|^\\d+ (pins|dots)$)")};
    const auto texts = pdf::pageTexts(w.path);
    for (const auto& line : pdf::textLines(w.path)) {
        EXPECT_GE(line.size, 9 - kRounding) << line.text.toStdString();
        const QString& page = texts[std::size_t(line.page)];
        if (page.contains(QStringLiteral("Your passes")) && own.match(line.text).hasMatch()) {
            EXPECT_GE(line.size, 14 - kRounding) << line.text.toStdString();
        }
    }
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
    expectReadable(w);
}

} // namespace bastewright

#include "language/said.h"
#include "sheets/calls.h"
#include "sheets/columns.h"
#include "sheets/ink.h"
#include "sheets/pages/helper_calls.h"
#include "sheets/pages/lead_words.h"
#include "sheets/parts.h"
#include "sheets/pictures/place_picture.h"
#include "sheets/printable.h"
#include "sheets/set_text.h"
#include "sheets/words.h"
#include "ways/way.h"

#include <QPainter>

#include <algorithm>
#include <set>

namespace bastewright::sheets {
namespace {

const TextStyle kText = closeText(type::kCheck), kBoldText = closeText(type::kCheck, true);

/// How closely a helper's sheet is set; its text has one size, whatever has to give way.
struct HelperSetting {
    double picture; ///< most of the height of the picture of places; 0: none
    double thumb;   ///< height of a pass's picture; 0: none
    double padding; ///< above and below a line
    bool words;     ///< what the words of the trade mean
};

/// Where somebody works, quilt by quilt, in the order they come to them.
std::vector<const Part*> firstOfQuilts(const std::vector<Part>& parts) {
    std::vector<const Part*> out;
    std::set<std::size_t> seen;
    for (const Part& part : parts)
        if (seen.insert(part.quilt).second)
            out.push_back(&part);
    return out;
}

/// The letters of all places somebody has, in order.
QStringList placesOf(const SheetContext& c, const Helper& who, const std::vector<Part>& parts) {
    QStringList out;
    for (const Part* part : firstOfQuilts(parts))
        out << c.mark(who.name, part->quilt);
    out.removeDuplicates();
    return out;
}

std::vector<Span> findPlace(const SheetContext& c, const Helper& who,
                            const std::vector<Part>& parts) {
    const QStringList places = placesOf(c, who, parts);
    if (parts.empty())
        return {{Text::tr("The plan has no work for you yet. Ask whoever leads: another pair of "
                          "hands is always wanted when the quilt is moved.")}};
    if (places.size() == 1 && !c.severalTables())
        return {{Text::tr("Find the letter") + QChar::Space},
                {places.front(), true},
                {QChar::Space + Text::tr("at the table: your place in every pass.")}};
    QStringList at;
    for (const Part* part : firstOfQuilts(parts))
        at << (c.severalTables()
                   ? Text::tr("%1 at table %2 for %3")
                         .arg(c.mark(who.name, part->quilt))
                         .arg(c.plan.quilts[part->quilt].surface.number)
                         .arg(c.quiltName(part->quilt))
                   : Text::tr("%1 for %2")
                         .arg(c.mark(who.name, part->quilt), c.quiltName(part->quilt)));
    return {{Text::tr("Your places:") + QChar::Space}, {listed(at) + QLatin1Char('.'), true}};
}

std::vector<Span> firstThing(const SheetContext& c, const std::vector<Part>& parts) {
    if (parts.empty())
        return {};
    std::vector<Span> out;
    for (const Way& way : allWays()) {
        int points = 0;
        for (const Part& part : parts)
            for (const Zone* zone : part.zones)
                if (&wayOf(c.job(part.quilt), *zone) == &way)
                    points += int(zone->points.size());
        if (points == 0 || (!out.empty() && !c.isMixed(parts.front().quilt)))
            continue;
        out.push_back({out.empty() ? Text::tr("First:") + QChar::Space
                                   : QChar::Space + Text::tr("Then:") + QChar::Space,
                       true});
        out.push_back(
            {language::said(way.words.ready(pointCount(points, way.with).toStdString()))});
    }
    if (!out.empty())
        return out;
    return {{Text::tr("First:") + QChar::Space, true},
            {Text::tr("see that the table stands firm and every leg is locked.")}};
}

Block nameBlock(const SheetContext& c, const Helper& who, const std::vector<Part>& parts) {
    constexpr double kRing = 62;
    const double textAt = kRing + 12, hours = 130, room = c.width - textAt;
    const QString letter = placesOf(c, who, parts).value(0, c.crew.letter(who.name));
    const QString name = isolated(who.name);
    int size = type::kName;
    const auto fits = [&](int points) {
        TextStyle style{points};
        style.serif = true;
        return textWidth(name, style) <= room - hours;
    };
    for (const int smaller : {30, 22, 16})
        if (!fits(size))
            size = smaller;
    const auto title = set(name, fits(size) ? room - hours : room, serif(size, Qt::AlignLeft, 3));
    TextStyle right{type::kCheck, true};
    right.align = Qt::AlignRight;
    const auto when = std::make_shared<const TextBlock>(hoursWords(who), hours, right);
    const bool above = !fits(size);
    const auto place = set(findPlace(c, who, parts), room, kText);
    const auto first = set(firstThing(c, parts), room, kText);
    const double top = above ? when->height() : 0;
    const double height =
        std::max(kRing, top + title->height() + place->height() + first->height());
    return {.height = height + 7, .newPage = true, .draw = [=](QPainter& p, QRectF at) {
                badge(p, at.topLeft() + QPointF{kRing / 2, kRing / 2}, kRing, letter, true);
                when->draw(p, {at.right() - hours, at.top() + (above ? 0 : 4)});
                double y = at.top() + top;
                title->draw(p, {at.left() + textAt, y});
                y += title->height();
                place->draw(p, {at.left() + textAt, y});
                first->draw(p, {at.left() + textAt, y + place->height()});
                rule(p, at.bottomLeft(), at.width(), ink::kLine);
            }};
}

/// The side of the quilt somebody stands at.
Side sideOf(const Part& part) {
    if (part.edges.empty())
        return Side::foot;
    return std::ranges::max_element(part.edges, {},
                                    [](const StandingPlace& e) { return e.along.size(); })
        ->side;
}

/// The passes whose pictures stand on somebody's sheet: the first of every quilt, and those in
/// which they set other holds.
std::vector<const Part*> picturedParts(const std::vector<Part>& parts) {
    constexpr std::size_t kMost = 3;
    std::vector<const Part*> out = firstOfQuilts(parts);
    const auto usual = usualHolds(parts);
    std::set<std::pair<std::size_t, std::vector<int>>> seen;
    for (const Part* part : out)
        seen.insert({part->quilt, rounds(part->holds)});
    for (const Part& part : parts)
        if ((usual ? usual->other == &part : !part.holds.empty()) && out.size() < kMost &&
            seen.insert({part.quilt, rounds(part.holds)}).second)
            out.push_back(&part);
    std::ranges::stable_sort(out, {}, [](const Part* part) { return part->start; });
    return out;
}

Block placesBlock(const SheetContext& c, const Helper& who, const std::vector<Part>& parts,
                  double limit) {
    struct One {
        PlacePicture show;
        SetText caption;
    };
    constexpr double kApart = 14;
    const auto pictured = picturedParts(parts);
    auto all = std::make_shared<std::vector<One>>();
    const double each = (c.width - kApart * double(pictured.size() - 1)) / double(pictured.size());
    double height = 0, captions = 0;
    for (const Part* part : pictured) {
        PlacePicture show = c.places(part->quilt, *part->pass);
        show.mine = who.name;
        show.bottom = sideOf(*part);
        show.you = Text::tr("you");
        height = std::max(height, placesHeight(show, each, limit));
        all->push_back({std::move(show), set(c.passName(part->quilt, part->pass->number), each,
                                             quiet(type::kSmall))});
        captions = std::max(captions, all->back().caption->height());
    }
    const auto title = set(Text::tr("From where you stand"), c.width, serif(type::kCheck));
    const bool several = all->size() > 1;
    const double top = title->height() + (several ? captions : 0) + 3;
    return {
        .height = top + height, .before = 6, .draw = [=](QPainter& p, QRectF at) {
            title->draw(p, at.topLeft());
            double x = at.left();
            for (const One& one : *all) {
                if (several)
                    one.caption->draw(p, {x, at.top() + title->height()});
                else
                    one.caption->draw(p, {at.right() - one.caption->naturalWidth(), at.top() + 2});
                drawPlaces(p, {x, at.top() + top, each, height}, one.show);
                x += each + kApart;
            }
        }};
}

/// `nameWidth`: of the sign with the call's name.
Block callRow(const OwnCall& call, double width, double nameWidth, double padding) {
    constexpr double kSign = 22;
    const bool close = call.call == Call::close;
    TextStyle style = serif(type::kLead);
    style.ink = close ? ink::kPaper : ink::kDark;
    const auto name = set(callName(call.call), nameWidth - kSign - 12, style);
    const auto words = set(call.words, width - nameWidth - 8, kText);
    const double height = std::max({kSign, words->height(), name->height()}) + 2 * padding;
    return {.height = height, .draw = [=, sign = signOf(call.call)](QPainter& p, QRectF at) {
                if (close) {
                    p.setPen(Qt::NoPen);
                    p.setBrush(ink::kDark);
                    p.drawRect(QRectF{at.left(), at.top() + 0.5, nameWidth, at.height() - 1});
                }
                const double middle = at.center().y();
                drawSign(p, {at.left() + 4, middle - kSign / 2, kSign, kSign}, sign,
                         close ? ink::kPaper : ink::kDark);
                name->draw(p, {at.left() + kSign + 10, middle - name->height() / 2});
                words->draw(p, {at.left() + nameWidth + 8, middle - words->height() / 2});
                rule(p, at.bottomLeft(), width);
            }};
}

Block headingLine(const QString& words, const QString& below, double width) {
    const auto title = set(words, width, serif(type::kCheck));
    const auto note =
        set(below, std::max(60.0, width - title->naturalWidth() - 14), quiet(type::kSmall));
    return {.height = std::max(title->height(), note->height()) + 3,
            .before = 7,
            .keepWithNext = true,
            .draw = [=](QPainter& p, QRectF at) {
                title->draw(p, at.topLeft());
                note->draw(p, {at.right() - note->naturalWidth(), at.top() + 2});
                rule(p, at.bottomLeft(), at.width(), ink::kLine);
            }};
}

constexpr double kClock = 50;

Block lineBlock(const QString& time, const std::vector<Span>& words, double width, double padding) {
    const auto when = set(time, kClock, kBoldText);
    const auto text = set(words, width - kClock, kText);
    return {.height = text->height() + 2 * padding, .draw = [=](QPainter& p, QRectF at) {
                when->draw(p, at.topLeft() + QPointF{0, padding});
                text->draw(p, at.topLeft() + QPointF{kClock, padding});
                rule(p, at.bottomLeft(), at.width());
            }};
}

Block passLine(const SheetContext& c, const Part& part, bool sayHolds,
               const HelperSetting& setting) {
    constexpr double kBox = 15;
    const QString pins = part.points > 0 ? pointCounts(c.job(part.quilt), part.zones) : QString{};
    const double countWidth = std::max(64.0, textWidth(pins, kText) + 1);
    const QuiltPlan& quilt = c.plan.quilts[part.quilt];
    const Side bottom = sideOf(part);
    const double thumb =
        setting.thumb > 0 ? std::clamp(setting.thumb * thumbShape(quilt, bottom), 26.0, 118.0) : 0;
    const double room = c.width - kClock - countWidth - kBox - 16 - (thumb > 0 ? thumb + 8 : 0);
    std::vector<Span> words{{c.passName(part.quilt, part.pass->number), true}};
    if (part.pass->pulled)
        words.push_back({Text::tr(" (pulled across)")});
    if (!part.rows.isEmpty())
        words.push_back({Text::tr(": %1").arg(part.rows)});
    else if (part.zones.empty())
        words.push_back({Text::tr(": nothing of yours")});
    if (sayHolds && !part.holds.empty())
        words.push_back({Text::tr("; holds %1").arg(numbers(rounds(part.holds)))});
    const auto when = set(clock(c.start(), part.start), kClock, kBoldText);
    const auto text = set(words, room, kText);
    TextStyle right = kText;
    right.align = Qt::AlignRight;
    const auto count = std::make_shared<const TextBlock>(pins, countWidth, right);
    const double height = std::max({text->height(), setting.thumb, kBox}) + 2 * setting.padding;
    const auto show =
        std::make_shared<PassThumb>(PassThumb{&quilt, part.pass, bottom, part.zones, false});
    return {.height = height, .draw = [=, unit = c.unit()](QPainter& p, QRectF at) {
                const double middle = at.center().y();
                when->draw(p, {at.left(), middle - text->height() / 2});
                text->draw(p, {at.left() + kClock, middle - text->height() / 2});
                const double box = at.right() - kBox - 1;
                if (thumb > 0)
                    drawThumb(p,
                              {box - 8 - countWidth - thumb - 4, middle - setting.thumb / 2, thumb,
                               setting.thumb},
                              *show, unit);
                count->draw(p, {box - 8 - countWidth, middle - count->height() / 2});
                tickBox(p, {box, middle - kBox / 2, kBox, kBox});
                rule(p, at.bottomLeft(), at.width());
            }};
}

/// Passes, breaks, coming and going, in order of time.
Flow passList(const SheetContext& c, const Helper& who, const std::vector<Part>& parts,
              const HelperSetting& setting) {
    const bool sayHolds = !usualHolds(parts);
    std::vector<std::pair<std::pair<Seconds, int>, Block>> all;
    Seconds first = c.plan.finish, last{};
    for (const Part& part : parts) {
        all.push_back({{part.start, 2}, passLine(c, part, sayHolds, setting)});
        first = std::min(first, part.start);
        for (const Task* t : part.tasks)
            last = std::max(last, t->end);
    }
    const auto add = [&](Seconds at, int order, const std::vector<Span>& words) {
        all.push_back(
            {{at, order}, lineBlock(clock(c.start(), at), words, c.width, setting.padding)});
    };
    const auto after = [&](ClockTime t) {
        return t.sinceMidnight - c.session.setting.start.sinceMidnight;
    };
    const auto isMine = [&](const PlannedBreak& b) {
        const bool there =
            (!who.from || b.end > after(*who.from)) && (!who.until || b.start < after(*who.until));
        return there && (b.people.empty() || std::ranges::count(b.people, who.name) > 0);
    };
    for (const PlannedBreak& b : c.plan.breaks)
        if (isMine(b) && b.end > Seconds{} && b.start <= std::max(last, c.plan.finish))
            add(b.start, 1, {{Text::tr("Break, %1").arg(span(b.end - b.start)), true}});
    if (who.from && after(*who.from) > Seconds{})
        add(after(*who.from), 0, {{Text::tr("You come: say hello to whoever leads.")}});
    if (who.until &&
        after(*who.until) <= std::max(c.plan.range.late, c.plan.finish) + std::chrono::hours{1})
        add(after(*who.until), 3,
            {{language::said(
                (parts.empty() ? c.ways(0) : c.ways(parts.back().quilt, parts.back().pass->number))
                    .back()
                    ->words.leaving)}});
    std::ranges::stable_sort(all, {}, [](const auto& one) { return one.first; });
    Flow out;
    for (auto& [when, block] : all)
        out.push_back(std::move(block));
    return out;
}

Flow helperFlow(const SheetContext& c, const Helper& who, const std::vector<Part>& parts,
                const HelperSetting& setting) {
    Flow flow{nameBlock(c, who, parts)};
    if (setting.picture > 0)
        flow.push_back(placesBlock(c, who, parts, setting.picture));
    const std::string& lead = c.session.setting.helpers.front().name;
    flow.push_back(headingLine(lead == who.name ? Text::tr("When you call")
                                                : Text::tr("When %1 calls").arg(called(lead)),
                               Text::tr("nobody goes on before the next call"), c.width));
    const auto calls = ownCalls(c, who, parts);
    double nameWidth = 142;
    for (const OwnCall& call : calls)
        nameWidth = std::max(nameWidth, textWidth(callName(call.call), serif(type::kLead)) + 36);
    for (const OwnCall& call : calls)
        flow.push_back(
            callRow(call, c.width, std::min(nameWidth, c.width * 0.36), setting.padding));
    const bool rows = std::ranges::any_of(
        parts, [&](const Part& p) { return !p.zones.empty() && c.plan.quilts[p.quilt].rows; });
    const bool across = std::ranges::any_of(parts, [&](const Part& p) {
        const auto& own = c.plan.quilts[p.quilt].rows;
        return own && own->along == PinRows::Along::width;
    });
    const bool alike = std::ranges::all_of(parts, [&](const Part& p) {
        const auto& own = c.plan.quilts[p.quilt].rows;
        return !own || own->ribbons.odd == own->ribbons.even;
    });
    // Mark 1 of the ribbon is at the edge that the row begins at.
    const QString marks =
        alike ? (across ? Text::tr("marks stand on the ribbon, from the left edge")
                        : Text::tr("marks stand on the ribbon, from the head"))
        : across
            ? Text::tr(
                  "marks stand on the ribbon, from the left edge; black: odd rows, white: even")
            : Text::tr("marks stand on the ribbon, from the head; black: odd rows, white: even");
    flow.push_back(headingLine(Text::tr("Your passes"), rows ? marks : QString{}, c.width));
    flow += passList(c, who, parts, setting);
    const auto add = [&](const QString& words, const TextStyle& style) {
        const auto text = set(words, c.width, style);
        flow.push_back({.height = text->height(),
                        .before = 4,
                        .draw = [text](QPainter& p, QRectF at) { text->draw(p, at.topLeft()); }});
    };
    add(careOf(who, parts), kText);
    if (setting.words)
        add(Text::tr("Top, batting, backing: the three layers, from above. Hang: what reaches over "
                     "the table's edge. Pleat: a fold underneath; whoever finds one says so, and "
                     "nobody goes on before it is out."),
            quiet(type::kSmall));
    return flow;
}

} // namespace

Flow helperPages(const SheetContext& c, const Helper& helper) {
    const auto& parts = c.parts.at(helper.name);
    if (parts.empty())
        return {nameBlock(c, helper, parts)};
    const HelperSetting settings[] = {{230, 34, 3, true}, {210, 28, 2.5, true}, {195, 22, 2, true},
                                      {195, 0, 2, true},  {190, 0, 2, false},   {175, 0, 1, false},
                                      {150, 0, 1, false}, {130, 0, 0.5, false}, {115, 0, 0, false},
                                      {100, 0, 0, false}, {85, 0, 0, false},    {0, 0, 0.5, false}};
    return fewestPages(settings, c.height, [&](const HelperSetting& setting) {
        return helperFlow(c, helper, parts, setting);
    });
}

} // namespace bastewright::sheets

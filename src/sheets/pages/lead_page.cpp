#include "language/said.h"
#include "sheets/calls.h"
#include "sheets/columns.h"
#include "sheets/ink.h"
#include "sheets/pages/lead_afternoon.h"
#include "sheets/pages/lead_calls.h"
#include "sheets/pages/lead_words.h"
#include "sheets/parts.h"
#include "sheets/pictures/place_picture.h"
#include "sheets/pictures/top_photo.h"
#include "sheets/set_text.h"
#include "sheets/words.h"
#include "ways/point_words.h"
#include "ways/way.h"

#include <QPainter>

#include <algorithm>
#include <map>
#include <set>

namespace bastewright::sheets {
namespace {

constexpr double kLeadGutter = 16;

QString quiltAndTable(const SheetContext& c, std::size_t q) {
    const QuiltPlan& quilt = c.plan.quilts[q];
    QStringList words{Text::tr("quilt %1").arg(size(quilt.layers.top, c.unit()))};
    if (quilt.surface.floor)
        words << Text::tr("on the floor");
    else
        words << Text::tr("%1, %2").arg(
            language::said(quilt.surface.name),
            size({quilt.surface.length, quilt.surface.width}, c.unit()));
    if (c.severalTables())
        words << Text::tr("table %1").arg(quilt.surface.number);
    return words.join(Text::tr(" · "));
}

Block leadHead(const SheetContext& c, std::size_t q) {
    const QuiltPlan& quilt = c.plan.quilts[q];
    const double right = 150, left = c.width - right - kLeadGutter;
    const auto& range = c.plan.range;
    const bool known = range.middle > Seconds{};
    TextStyle name = serif(type::kTitle);
    name.maxLines = 2;
    const auto title = set(c.quiltName(q), left, name);
    const auto where = set(quiltAndTable(c, q), left, closeText(type::kSmall));
    std::vector<Span> how{{howMany(c, q) + QChar::Space, true}};
    if (quilt.rows)
        how.push_back({language::said(rowsSentence(*quilt.rows, c.job(q))) + QChar::Space +
                       language::said(wayOf(c.job(q)).words.byRibbons)});
    else if (quilt.blocks)
        how.push_back({language::said(blocksSentence(*quilt.blocks, c.job(q)))});
    const auto pins = set(how, left, closeText(type::kSmall));
    const auto above =
        set(c.severalQuilts() ? Text::tr("all finished about") : Text::tr("finishes about"), right,
            quiet(type::kHead, Qt::AlignRight));
    const auto time = set(clock(c.start(), known ? range.middle : c.plan.finish), right,
                          serif(type::kFinish, Qt::AlignRight));
    const auto between =
        known ? set(Text::tr("between %1 and %2")
                        .arg(clock(c.start(), range.early), clock(c.start(), range.late)),
                    right, quiet(type::kHead, Qt::AlignRight))
              : SetText{};
    const auto about =
        set(Text::tr("every time is about right"), right, quiet(type::kHead, Qt::AlignRight));
    const double leftHeight = title->height() + where->height() + pins->height() + 8;
    const double rightHeight =
        above->height() + time->height() + (between ? between->height() : 0) + about->height();
    return {.height = std::max(leftHeight, rightHeight) + 6,
            .newPage = true,
            .draw =
                [=](QPainter& p, QRectF at) {
                    double y = at.top();
                    for (const auto& text : {title, where, pins}) {
                        text->draw(p, {at.left(), y});
                        y += text->height() + 4;
                    }
                    y = at.top();
                    for (const auto& text : {above, time, between, about})
                        if (text) {
                            text->draw(p, {at.right() - right, y});
                            y += text->height();
                        }
                    rule(p, at.bottomLeft(), at.width(), ink::kLine);
                },
            .bookmark = c.quiltName(q)};
}

/// Who has which letter, and what the signs in the picture mean.
std::vector<Span> letterKey(const SheetContext& c, std::size_t q, const Pass& pass) {
    std::vector<Span> out;
    for (const auto& s : standing(c.plan, q, pass)) {
        if (!out.empty())
            out.push_back({QStringLiteral(" · ")});
        const auto who = std::ranges::find(c.session.setting.helpers, s.person, &Helper::name);
        out.push_back({c.mark(s.person, q) + QChar{0x00A0}, true});
        out.push_back({who != c.session.setting.helpers.end() && who->seated
                           ? Text::tr("%1, sits").arg(called(s.person))
                           : called(s.person)});
    }
    return out;
}

/// Who sets the holds of sides where nobody stands: "Bo (head), Cai (foot)"; a side that is
/// somebody's in one pass and somebody else's in another stands on their own pages only.
QString besideWords(const SheetContext& c, std::size_t q) {
    std::map<Side, std::set<std::string>> setters;
    for (const Helper& who : c.session.setting.helpers)
        for (const Part& part : c.parts.at(who.name))
            for (const HoldPoint& hold : part.holds)
                if (part.quilt == q && !part.standsAt(hold.side))
                    setters[hold.side].insert(who.name);
    QStringList words;
    for (const auto& [side, people] : setters)
        if (people.size() == 1)
            words << Text::tr("%1 (%2)").arg(called(*people.begin()), sideName(side));
    return words.join(Text::tr(", "));
}

/// What the signs of the picture mean, and what the words of the passes say shortly.
QString keyOf(const SheetContext& c, std::size_t q) {
    const QuiltPlan& quilt = c.plan.quilts[q];
    const Pass& pass = quilt.passes.front();
    bool clamps = false, tape = false;
    for (const Hold& hold : pass.holds)
        (hold.kind == Hold::Kind::clamp ? clamps : tape) = true;
    QStringList out;
    if (clamps)
        out << Text::tr("Round corners: a clamp on the edge.");
    if (tape)
        out << Text::tr("Square: %1 of tape, the backing only.")
                   .arg(
                       length(c.unit() == Unit::inch ? Length::inches(6) : Length::millimetres(150),
                              c.unit()));
    if (!out.isEmpty())
        out << Text::tr("One number, one moment; middles first.");
    if (const QString beside = besideWords(c, q); !beside.isEmpty())
        out << Text::tr("Where nobody stands: %1.").arg(beside);
    if (restsOnChairs(quilt))
        out << Text::tr("Chairs carry what would reach the floor, not knees.");
    return out.join(QChar::Space);
}

/// Heading, picture of places and holds, and its key; as wide as asked.
Block placesAndHolds(const SheetContext& c, std::size_t q, double width, double limit) {
    const QuiltPlan& quilt = c.plan.quilts[q];
    const Pass& pass = quilt.passes.front();
    const auto title = set(Text::tr("Places and holds"), width, serif(type::kCheck));
    const auto who = set(letterKey(c, q, pass), width, closeText(type::kHead));
    const auto holds = set(keyOf(c, q), width, quiet(type::kHead));
    const double words = title->height() + who->height() + holds->height() + 10;
    const auto show = std::make_shared<PlacePicture>(c.places(q, pass));
    const double picture = std::max(60.0, placesHeight(*show, width, limit - words));
    return {.height = words + picture, .draw = [=](QPainter& p, QRectF at) {
                title->draw(p, at.topLeft());
                double y = at.top() + title->height() + 4;
                drawPlaces(p, {at.left(), y, width, picture}, *show);
                y += picture + 4;
                who->draw(p, {at.left(), y});
                holds->draw(p, {at.left(), y + who->height() + 2});
            }};
}

Block careBlock(const SheetContext& c) {
    std::vector<Span> words{
        {Text::tr("Hangs %1 less than said: look for a pleat underneath.")
                 .arg(length(kPleat, c.unit())) +
             QChar::Space,
         true},
        {Text::tr("What reaches the floor: fold it up and clip it.") + QChar::Space}};
    for (auto& span : careWords(c))
        words.push_back(std::move(span));
    const auto text = set(words, c.width, closeText(type::kLeast));
    return {.height = text->height(), .before = 6, .draw = [text](QPainter& p, QRectF at) {
                text->draw(p, at.topLeft());
            }};
}

Flow checkFirst(const SheetContext& c) {
    Flow flow;
    for (const auto& f : c.plan.findings)
        if (f.level != Finding::Level::note) {
            std::vector<Span> words{{Text::tr("Check first.") + QChar::Space, true},
                                    {language::said(f.text)}};
            if (!f.cure.empty())
                words.push_back({QChar::Space + language::said(f.cure)});
            flow.push_back(paragraph(words, c.width, type::kHead, 3));
        }
    return flow;
}

/// Rows with the picture beside them.
Block rowsAndPicture(std::vector<Block> rows, double rowWidth, Block right) {
    double height = 0;
    for (const Block& b : rows)
        height += b.height;
    auto left = std::make_shared<std::vector<Block>>(std::move(rows));
    auto picture = std::make_shared<Block>(std::move(right));
    return {.height = std::max(height, picture->height),
            .before = 6,
            .draw = [=](QPainter& p, QRectF at) {
                double y = at.top();
                for (const Block& b : *left) {
                    b.draw(p, {at.left(), y, rowWidth, b.height});
                    y += b.height;
                }
                picture->draw(p, {at.left() + rowWidth + kLeadGutter, at.top(),
                                  at.width() - rowWidth - kLeadGutter, picture->height});
            }};
}

Flow leadFlow(const SheetContext& c, std::size_t q, const LeadSetting& setting) {
    const QuiltPlan& quilt = c.plan.quilts[q];
    Flow flow{leadHead(c, q)};
    if (q == 0)
        flow += checkFirst(c);
    flow += callsOfQuilt(c, q, setting.close);
    const Rect& table = quilt.passes.front().table;
    const double shape = table.width().in() / std::max(table.length().in(), 1e-6);
    const Block foot = careBlock(c);
    const double room = c.height - heightOf(flow) - foot.height - foot.before - 14;
    if (shape < 1.4) {
        // As wide as the picture is when it is as high as there is room, words and rims left out.
        constexpr double kRims = 66, kWords = 110;
        const double column =
            std::clamp(kRims + shape * (room - kWords), setting.close ? 118.0 : 130.0,
                       shape < 0.9 ? 190.0 : 205.0);
        const double rowWidth = c.width - column - kLeadGutter;
        auto rows = afternoon(c, q, rowWidth, setting);
        std::size_t n = 0;
        for (double h = 0; n < rows.size() && h + rows[n].height <= room; ++n)
            h += rows[n].height;
        n = std::max<std::size_t>(n, 1);
        flow.push_back(rowsAndPicture({rows.begin(), rows.begin() + std::ptrdiff_t(n)}, rowWidth,
                                      placesAndHolds(c, q, column, room)));
        flow.insert(flow.end(), rows.begin() + std::ptrdiff_t(n), rows.end());
    } else {
        flow.push_back(placesAndHolds(c, q, c.width, std::min(room * 0.5, 250.0)));
        flow.back().before = 6;
        for (auto& row : afternoon(c, q, c.width, setting))
            flow.push_back(std::move(row));
    }
    flow.push_back(foot);
    return flow;
}

} // namespace

QImage SheetContext::photo(std::size_t quilt) const {
    return photoOnPaper(job(quilt).top.photo);
}

PlacePicture SheetContext::places(std::size_t quilt, const Pass& pass) const {
    PlacePicture show;
    show.quilt = &plan.quilts[quilt];
    show.pass = &pass;
    show.shape = wayOf(job(quilt)).point.shape;
    show.photo = photo(quilt);
    for (auto& s : standing(plan, quilt, pass)) {
        AtTable who;
        who.letter = mark(s.person, quilt);
        who.name = called(s.person);
        who.seated = std::ranges::any_of(session.setting.helpers, [&](const Helper& h) {
            return h.name == s.person && h.seated;
        });
        const auto own = parts.find(s.person);
        for (const Part& part : own == parts.end() ? std::vector<Part>{} : own->second)
            if (part.quilt == quilt && part.pass == &pass) {
                who.zones = part.zones;
                who.holds = part.holds;
            }
        who.stretch = std::move(s);
        show.people.push_back(std::move(who));
    }
    return show;
}

Flow leadPage(const SheetContext& c, std::size_t quilt) {
    if (c.plan.quilts[quilt].passes.empty())
        return {};
    // What has no room gives way: the pictures of the passes, then the room round the calls.
    constexpr LeadSetting kSettings[] = {{88},
                                         {76, false, type::kHead},
                                         {64, false, type::kHead},
                                         {64, true, type::kHead},
                                         {52, true, type::kHead},
                                         {44, true, type::kHead}};
    return fewestPages(kSettings, c.height,
                       [&](const LeadSetting& setting) { return leadFlow(c, quilt, setting); });
}

} // namespace bastewright::sheets

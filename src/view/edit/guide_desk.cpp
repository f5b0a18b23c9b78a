#include "view/edit/guide_desk.h"

#include "view/base/people_palette.h"
#include "view/base/words.h"
#include "view/edit/field_kinds.h"
#include "view/edit/summaries.h"
#include "ways/way.h"

#include <algorithm>
#include <array>
#include <tuple>
#include <utility>

using namespace bastewright;

namespace {

/// Usual sizes of tops (common practice), in the person's own unit.
struct UsualSize {
    const char* what;
    int inchWidth, inchLength, cmWidth, cmLength;
};
constexpr std::array kUsualSizes{
    UsualSize{QT_TRANSLATE_NOOP("GuideDesk", "For a child"), 36, 52, 100, 140},
    UsualSize{QT_TRANSLATE_NOOP("GuideDesk", "For the sofa"), 60, 72, 140, 180},
    UsualSize{QT_TRANSLATE_NOOP("GuideDesk", "Single bed"), 70, 90, 155, 220},
    UsualSize{QT_TRANSLATE_NOOP("GuideDesk", "Double bed"), 84, 96, 200, 220},
    UsualSize{QT_TRANSLATE_NOOP("GuideDesk", "Wide bed"), 100, 108, 240, 260}};

Length usualLength(Unit unit, int inches, int centimetres) {
    return unit == Unit::inch ? Length::inches(inches) : Length::millimetres(centimetres * 10);
}

constexpr int kMostTables = 4; // by one tap
const Length kUsualClip = Length::inches(3);

int tablesOf(const Room& room) {
    int count = 0;
    for (const Table& table : room.tables)
        count += table.count;
    return count;
}

/// One that the section always has.
Field fieldOf(const Fields& all, const char* key) {
    return *fields::find(all, QLatin1String(key));
}

/// The gap between pins; measured by hand it is as wide as the hand.
Field spacingField(const Field& plain, std::size_t quilt) {
    Field field = plain;
    field.take = [take = plain.take, quilt](Session& s, const QString& typed) {
        QString problem = take(s, typed);
        auto& basting = s.jobs[quilt].basting;
        if (problem.isEmpty() && basting.measure)
            basting.measure->length = basting.spacing;
        return problem;
    };
    return field;
}

/// Clips of the usual size, which come to be with their count.
Field clipsField(Unit unit) {
    fields::Label label{
        QStringLiteral("clips"),
        {},
        GuideDesk::tr("Roll clips that hold %1").arg(words::length(kUsualClip, unit))};
    Field field = fields::count(label, [](Session& s) {
        auto& clips = s.setting.stash.clips;
        const auto at = std::ranges::find(clips, kUsualClip, &ClipStock::holds);
        return at == clips.end() ? &clips.emplace_back(ClipStock{kUsualClip, 0}).count : &at->count;
    });
    field.shown = [](const Session& s) {
        const auto& clips = s.setting.stash.clips;
        const auto at = std::ranges::find(clips, kUsualClip, &ClipStock::holds);
        return QString::number(at == clips.end() ? 0 : at->count);
    };
    return field;
}

} // namespace

GuideDesk::GuideDesk(JobEditor* editor, QObject* parent)
    : QObject{parent}
    , editor_{editor}
    , choices_{{"title", "about", "chosen"}}
    , values_{{"key", "label", "kind", "value", "options", "optional"}} {
    connect(editor_, &JobEditor::changed, this, &GuideDesk::refresh);
    connect(editor_, &JobEditor::previewChanged, this, &GuideDesk::shownChanged);
    refresh();
}

void GuideDesk::setPage(Page page) {
    if (page < Size || page > Supplies || page == page_)
        return;
    page_ = page;
    reached_ = std::max(reached_, page);
    refresh();
}

void GuideDesk::begin() {
    page_ = reached_ = Size;
    refresh();
}

QString GuideDesk::question() const {
    switch (page_) {
    case Size:
        return tr("How large is the quilt top?");
    case Quilted:
        return tr("How will it be quilted?");
    case Closely:
        return words::fromCore(wayOf(editor_->job()).words.howClose);
    case Tables:
        return tr("Which tables are there?");
    case People:
        return tr("Who comes to help?");
    case Supplies:
        return tr("What is in the box?");
    }
    return {};
}

QString GuideDesk::help() const {
    switch (page_) {
    case Size:
        return tr("Measure it through the middle, or take the nearest size and measure later.");
    case Quilted:
        return tr("Pins keep out of the way of the needle.");
    case Closely:
        return words::fromCore(wayOf(editor_->job()).words.byFist);
    case Tables:
        return tr("They are pushed together, and the quilt is moved across them.");
    case People:
        return tr("Tap what somebody can do and what not.");
    case Supplies:
        return tr("What is missing stands on the shopping list.");
    }
    return {};
}

QList<GuideDesk::Choice> GuideDesk::sizes() const {
    const auto q = std::size_t(editor_->quilt());
    const Unit unit = editor_->unit();
    const Rect now = topRect(editor_->job().top);
    QList<Choice> out;
    for (const UsualSize& size : kUsualSizes) {
        const Length width = usualLength(unit, size.inchWidth, size.cmWidth);
        const Length length = usualLength(unit, size.inchLength, size.cmLength);
        out << Choice{tr(size.what), words::size({width, length}, unit),
                      now.width() == width && now.length() == length,
                      [q, width, length](Session& s) {
                          s.jobs[q].top.width = {width};
                          s.jobs[q].top.length = {length};
                      }};
    }
    return out;
}

QList<GuideDesk::Choice> GuideDesk::methods() const {
    using Method = Quilting::Method;
    const auto q = std::size_t(editor_->quilt());
    const std::array<std::pair<Method, QString>, 5> all{
        {{Method::inTheDitch, tr("Along the seams, hidden in them")},
         {Method::acrossSeams, tr("One design over the whole top")},
         {Method::freeMotion, tr("Drawn freely with the needle")},
         {Method::singleTacks, tr("Knots or bar tacks, no lines")},
         {Method::undecided, tr("Pins then keep clear of the seams")}}};
    QList<Choice> out;
    for (const auto& [method, about] : all)
        out << Choice{words::method(method), about, editor_->job().quilting.method == method,
                      [q, which = method](Session& s) { s.jobs[q].quilting.method = which; }};
    return out;
}

QList<GuideDesk::Choice> GuideDesk::measures() const {
    const auto q = std::size_t(editor_->quilt());
    const Unit unit = editor_->unit();
    const auto& basting = editor_->job().basting;
    if (wayOf(editor_->job()).point.isPatch()) {
        QList<Choice> out;
        for (const auto& [title, inches, centimetres] :
             {std::tuple{tr("Narrow bands"), 12, 30}, std::tuple{tr("Deep bands"), 18, 45}}) {
            const Length deep = usualLength(unit, inches, centimetres);
            out << Choice{title, words::length(deep, unit), basting.spacing == deep,
                          [q, deep](Session& s) { s.jobs[q].basting.spacing = deep; }};
        }
        return out;
    }
    const QString fist = tr("my fist"), fingers = tr("four fingers");
    const auto byHand = [&](const QString& title, const QString& name, Length length) {
        const std::string core = words::toCore(name);
        const bool chosen = basting.measure && basting.measure->name == core;
        return Choice{title, words::length(chosen ? basting.spacing : length, unit), chosen,
                      [q, core, length](Session& s) {
                          auto& b = s.jobs[q].basting;
                          if (b.measure && b.measure->name == core)
                              return; // as wide as it was measured
                          b.measure = OwnMeasure{core, length};
                          b.spacing = length;
                      }};
    };
    return {byHand(tr("A fist apart"), fist, usualLength(unit, 4, 10)),
            byHand(tr("Four fingers apart"), fingers, usualLength(unit, 3, 8)),
            Choice{tr("By the ruler"), words::length(basting.spacing, unit), !basting.measure,
                   [q](Session& s) { s.jobs[q].basting.measure.reset(); }}};
}

QList<GuideDesk::Choice> GuideDesk::tables() const {
    const Room& room = editor_->session().setting.room;
    const int now = tablesOf(room);
    QList<Choice> out;
    for (int n = 1; n <= kMostTables; ++n)
        out << Choice{n == 1 ? tr("1 table") : tr("%1 tables").arg(n),
                      {},
                      room.tables.size() == 1 && now == n,
                      [n](Session& s) {
                          auto& all = s.setting.room.tables;
                          all.resize(1);
                          all.front().count = n;
                          s.setting.room.together.reset();
                      }};
    out << Choice{tr("The floor"), {}, room.tables.empty(), [](Session& s) {
                      s.setting.room.tables.clear();
                      s.setting.room.walls.clear();
                      s.setting.room.together.reset();
                  }};
    return out;
}

QList<GuideDesk::Choice> GuideDesk::choicesNow() const {
    return page_ == Size      ? sizes()
           : page_ == Quilted ? methods()
           : page_ == Closely ? measures()
           : page_ == Tables  ? tables()
                              : QList<Choice>{};
}

Fields GuideDesk::valuesNow() const {
    const Session& session = editor_->session();
    const int quilt = editor_->quilt();
    Fields out;
    switch (page_) {
    case Size: {
        const Fields all = fields::ofQuilt(session, quilt);
        for (const char* key : {"width0", "length0", "name", "unit"})
            out << fieldOf(all, key);
        break;
    }
    case Closely: {
        const Fields all = fields::ofBasting(session, quilt);
        out << spacingField(fieldOf(all, "spacing"), std::size_t(quilt)) << fieldOf(all, "with");
        break;
    }
    case Tables: {
        const Fields all = fields::ofRoom(session, quilt);
        const bool one = session.setting.room.tables.size() == 1;
        if (one)
            out << fieldOf(all, "table0/length") << fieldOf(all, "table0/width");
        out << fieldOf(all, "name");
        break;
    }
    case Supplies: {
        const Fields all = fields::ofBoxes(session, quilt);
        out << fieldOf(all, "pins") << fieldOf(all, "clamps") << clipsField(editor_->unit())
            << fieldOf(all, "name");
        break;
    }
    case Quilted:
    case People:
        break;
    }
    return out;
}

void GuideDesk::refresh() {
    problem_.clear();
    QList<QVariantList> choices, values;
    for (const Choice& choice : choicesNow())
        choices.push_back({choice.title, choice.about, choice.chosen});
    for (const Field& field : valuesNow())
        values.push_back({field.key, field.label, ::name(field.kind),
                          field.shown(editor_->session()), field.choices, field.optional});
    choices_.setRows(std::move(choices));
    values_.setRows(std::move(values));
    emit changed();
    emit shownChanged();
}

void GuideDesk::choose(int choice) {
    const auto all = choicesNow();
    if (choice < 0 || choice >= all.size())
        return;
    Session next = editor_->session();
    all[choice].act(next);
    problem_ = editor_->apply(all[choice].title, std::move(next));
    if (!problem_.isEmpty())
        emit changed();
}

QString GuideDesk::take(const QString& key, const QString& text) {
    return fields::take(valuesNow(), key, text, *editor_);
}

void GuideDesk::preview(const QString& key, const QString& text) {
    fields::preview(valuesNow(), key, text, *editor_);
}

void GuideDesk::endPreview() {
    editor_->setPreview({});
}

QSizeF GuideDesk::top() const {
    const Rect top = topRect(editor_->jobShown().top);
    return {top.width().in(), top.length().in()};
}

QString GuideDesk::soFar() const {
    const Session& session = editor_->session();
    const Unit unit = editor_->unit();
    const Rect top = topRect(editor_->jobShown().top);
    QStringList parts{words::size({top.width(), top.length()}, unit)};
    if (page_ > Quilted)
        parts << words::method(editor_->job().quilting.method);
    if (page_ >= Tables)
        parts << summaries::room(session.setting.room, unit);
    if (page_ >= People)
        parts << people::names(session.setting.helpers).join(QStringLiteral(", "));
    return parts.join(QStringLiteral(" · "));
}

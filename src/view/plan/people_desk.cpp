#include "view/plan/people_desk.h"

#include "job/job_json.h"
#include "view/base/people_palette.h"
#include "view/base/words.h"
#include "view/edit/summaries.h"
#include "ways/way.h"

#include <algorithm>
#include <cstdlib>

using namespace bastewright;

namespace {

constexpr int kOneHour = 60, kWholeDay = 24 * 60;
constexpr int kShownHours = 4;                  ///< at least
const Length kSeatedReach = Length::inches(25); // 2010 ADA Standards 308.2.2

int minutesOf(ClockTime time) {
    return int(time.sinceMidnight.count());
}

ClockTime timeAt(int minutes) {
    return {std::chrono::minutes{std::clamp(minutes, 0, kWholeDay - 1)}};
}

bool* signOf(Helper& helper, const QString& sign) {
    return sign == QLatin1String("lifts")    ? &helper.lifts
           : sign == QLatin1String("irons")  ? &helper.irons
           : sign == QLatin1String("sits")   ? &helper.seated
           : sign == QLatin1String("pins")   ? &helper.pins
           : sign == QLatin1String("breath") ? &helper.troubleBreathing
                                             : nullptr;
}

} // namespace

PeopleDesk::PeopleDesk(JobEditor* editor, PlanPresenter* plan, QObject* parent)
    : QObject{parent}
    , editor_{editor}
    , plan_{plan}
    , people_{{"letter", "mark", "name", "hours", "from", "until", "lifts", "irons", "sits", "pins",
               "breath"}} {
    const auto anew = [this] {
        problem_.clear();
        refresh();
    };
    connect(editor_, &JobEditor::changed, this, anew);
    connect(plan_, &PlanPresenter::changed, this, &PeopleDesk::refresh);
    refresh();
}

void PeopleDesk::refresh() {
    const Setting& setting = editor_->session().setting;
    const int start = minutesOf(setting.start);
    int first = start, last = start + kShownHours * kOneHour;
    finish_ = -1;
    if (plan_->isPlanned()) {
        finish_ =
            minutesOf(plan_->planned()->session.setting.start) + int(plan_->finish().count() / 60);
        last = std::max(last, finish_ + 1);
    }
    for (const Helper& helper : setting.helpers) {
        if (helper.from) {
            first = std::min(first, minutesOf(*helper.from));
            last = std::max(last, minutesOf(*helper.from) + kOneHour);
        }
        if (helper.until)
            last = std::max(last, minutesOf(*helper.until) + 1);
    }
    dayFrom_ = first / kOneHour * kOneHour;
    dayUntil_ = std::min(kWholeDay, (last + kOneHour - 1) / kOneHour * kOneHour);
    const auto names = people::names(setting.helpers), letters = people::letters(setting.helpers);
    QList<QVariantList> rows;
    for (qsizetype i = 0; i < names.size(); ++i) {
        const Helper& h = setting.helpers[std::size_t(i)];
        const int from = h.from ? minutesOf(*h.from) : start;
        const int until = h.until ? minutesOf(*h.until) : dayUntil_;
        const QString hours = h.until  ? tr("%1–%2").arg(clock(from), clock(until))
                              : h.from ? tr("from %1").arg(clock(from))
                                       : tr("all the time");
        rows.push_back({letters[i], int(i), names[i], hours, from, until, h.lifts, h.irons,
                        h.seated, h.pins, h.troubleBreathing});
    }
    people_.setRows(std::move(rows));
    emit changed();
}

QString PeopleDesk::clock(int minutes) const {
    return words::clock(timeAt(minutes));
}

QString PeopleDesk::nameOf(int person) const {
    const auto& helpers = editor_->session().setting.helpers;
    return person < 0 || std::size_t(person) >= helpers.size()
               ? QString{}
               : words::fromCore(helpers[std::size_t(person)].name);
}

QString PeopleDesk::finishText() const {
    return finish_ < 0 ? QString{} : tr("Finishes about %1").arg(plan_->finishText());
}

bool PeopleDesk::sprays() const {
    return std::ranges::any_of(editor_->session().jobs,
                               [](const Job& j) { return wayOf(j).point.isPatch(); });
}

bool PeopleDesk::full() const {
    return editor_->session().setting.helpers.size() >= limits::kHelpers;
}

bool PeopleDesk::apply(const QString& what, Session next) {
    problem_ = editor_->apply(what, std::move(next));
    if (!problem_.isEmpty())
        emit changed();
    return problem_.isEmpty();
}

void PeopleDesk::flip(int person, const QString& sign) {
    Session next = editor_->session();
    auto& helpers = next.setting.helpers;
    if (person < 0 || std::size_t(person) >= helpers.size())
        return;
    Helper& helper = helpers[std::size_t(person)];
    bool* which = signOf(helper, sign);
    if (!which)
        return;
    *which = !*which;
    // Who sits reaches less far, unless somebody has measured it.
    const Length usual = Helper{}.reach;
    if (which == &helper.seated && helper.reach == (helper.seated ? usual : kSeatedReach))
        helper.reach = helper.seated ? kSeatedReach : usual;
    apply(words::fromCore(helper.name), std::move(next));
}

void PeopleDesk::setHours(int person, int from, int until) {
    Session next = editor_->session();
    auto& helpers = next.setting.helpers;
    if (person < 0 || std::size_t(person) >= helpers.size())
        return;
    Helper& helper = helpers[std::size_t(person)];
    const int start = minutesOf(next.setting.start);
    const auto snapped = [](int minutes) { return (minutes + kStep / 2) / kStep * kStep; };
    // What was not moved stays to the minute.
    if (const int now = helper.from ? minutesOf(*helper.from) : start; now != from) {
        const int at = std::clamp(snapped(from), dayFrom_, dayUntil_ - kStep);
        helper.from = std::abs(at - start) < kStep ? std::nullopt : std::optional{timeAt(at)};
    }
    if (const int now = helper.until ? minutesOf(*helper.until) : dayUntil_; now != until) {
        const int at = std::clamp(snapped(until), dayFrom_ + kStep, dayUntil_);
        helper.until = at >= dayUntil_ ? std::nullopt : std::optional{timeAt(at)};
    }
    apply(tr("Hours of %1").arg(words::fromCore(helper.name)), std::move(next));
}

bool PeopleDesk::add(const QString& names) {
    Session next = editor_->session();
    auto& helpers = next.setting.helpers;
    QStringList wanted;
    for (const QString& name : names.split(QLatin1Char(','), Qt::SkipEmptyParts))
        if (!name.trimmed().isEmpty())
            wanted << name.trimmed();
    if (wanted.isEmpty())
        wanted << summaries::newName(next.setting);
    for (const QString& name : wanted) {
        if (helpers.size() >= limits::kHelpers)
            break;
        Helper helper;
        helper.name = words::toCore(name);
        helpers.push_back(std::move(helper));
    }
    return apply(wanted.join(QStringLiteral(", ")), std::move(next));
}

void PeopleDesk::remove(int person) {
    Session next = editor_->session();
    auto& helpers = next.setting.helpers;
    if (person < 0 || std::size_t(person) >= helpers.size() || helpers.size() < 2)
        return;
    const QString name = words::fromCore(helpers[std::size_t(person)].name);
    helpers.erase(helpers.begin() + person);
    apply(tr("Remove %1").arg(name), std::move(next));
}

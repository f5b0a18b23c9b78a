#include "view/table/change_desk.h"

#include "view/base/people_palette.h"
#include "view/base/words.h"

#include <algorithm>

using namespace bastewright;
using Kind = Change::Kind;

ChangeDesk::ChangeDesk(JobEditor* editor, PlanPresenter* plan, LiveController* live,
                       std::function<std::int64_t()> clock, QObject* parent)
    : QObject{parent}
    , editor_{editor}
    , plan_{plan}
    , live_{live}
    , clock_{std::move(clock)}
    , people_{{"letter", "mark", "name", "before", "after", "differs"}}
    , sides_{{"what", "before", "after"}} {}

ChangeDesk::~ChangeDesk() {
    worker_.request_stop();
}

void ChangeDesk::setAtTable(bool atTable) {
    if (atTable == atTable_)
        return;
    atTable_ = atTable;
    cancel();
}

void ChangeDesk::sayAgain() {
    if (answer_) {
        showPeople();
        showSides();
    }
    emit changed();
}

void ChangeDesk::comes(const QString& person) {
    ask(tr("%1 comes").arg(person), {.kind = Kind::personIn, .person = words::toCore(person)});
}

void ChangeDesk::goes(const QString& person) {
    ask(tr("%1 leaves").arg(person), {.kind = Kind::personOut, .person = words::toCore(person)});
}

void ChangeDesk::swaps(const QString& person, const QString& other) {
    ask(tr("%1 comes for %2").arg(other, person),
        {.kind = Kind::swap, .person = words::toCore(person), .other = words::toCore(other)});
}

void ChangeDesk::leavesAt(const QString& person, const QString& time) {
    Change change{.kind = Change::Kind::hours, .person = words::toCore(person)};
    if (!time.isEmpty()) {
        if (!live_->live())
            return;
        const auto until =
            parseTypedClock(words::toCore(time), live_->live()->session().setting.start);
        if (!until)
            return;
        change.until = *until;
    }
    ask(time.isEmpty() ? tr("%1 stays to the end").arg(person)
                       : tr("%1 leaves at %2").arg(person, time),
        std::move(change));
}

void ChangeDesk::guestComes(const QString& called) {
    if (!live_->live())
        return;
    const auto& helpers = live_->live()->session().setting.helpers;
    QString name = called.simplified();
    if (name.isEmpty())
        name = tr("Guest");
    for (int n = 2; std::find_if(helpers.begin(), helpers.end(),
                                 [&](const Helper& h) {
                                     return words::fromCore(h.name) == name;
                                 }) != helpers.end();
         ++n)
        name = tr("Guest %1").arg(n);
    ask(tr("%1 comes to help").arg(name), {.kind = Kind::guest, .person = words::toCore(name)});
}

void ChangeDesk::irons(int more) {
    ask(more > 0 ? tr("Add an iron") : tr("Take an iron away"),
        {.kind = Kind::irons, .count = more},
        more > 0 ? tr("Irons on circuits of their own where you can; cords off the walkway.")
                 : tr("Let it cool upright, out of the way."));
}

void ChangeDesk::pins(int more) {
    pins_ = more;
    ask(more == 0  ? tr("The pins do not last")
        : more > 0 ? tr("%1 pins more").arg(more)
                   : tr("%1 pins less").arg(-more),
        {.kind = Kind::pins, .count = more});
    ofPins_ = true;
}

void ChangeDesk::helpPins(const QString& title, Change::ForPins how) {
    ask(title, {.kind = Kind::pins, .count = pins_, .forPins = how});
    ofPins_ = helps_ = true;
}

void ChangeDesk::widerRows() {
    helpPins(tr("Wider rows for what is left"), Change::ForPins::widerRows);
}

void ChangeDesk::dotsInstead() {
    helpPins(tr("Fuse dots in some zones"), Change::ForPins::dots);
}

void ChangeDesk::fewerZones() {
    helpPins(tr("Fewer zones today"), Change::ForPins::fewerZones);
}

bool ChangeDesk::pinsShort() const {
    return ofPins_ && answer_ &&
           (answer_->proposal.pinsShort || !answer_->proposal.refused.empty());
}

void ChangeDesk::tables(int more) {
    ask(more > 0 ? tr("One table more") : tr("One table less"),
        {.kind = Kind::tables, .count = more},
        tr("Tables are carried by two, their legs locked before anything lies on them."));
}

void ChangeDesk::abandonPass(int quilt) {
    ask(tr("Leave the rest of this pass out"), {.kind = Kind::abandon, .job = quilt},
        tr("What is left out is not basted: baste it before anybody quilts there."));
}

void ChangeDesk::goOn() {
    ask(tr("Resume"), {.kind = Kind::goOn},
        tr("Look at the holds and palm over the quilt first: fabric moves overnight."));
}

void ChangeDesk::beginsNow() {
    const auto* live = live_->live();
    if (!live)
        return;
    before_ = live->plan();
    sessionBefore_ = live->session();
    caution_.clear();
    begin(tr("Begin at %1").arg(words::timeOfDay(live->state().startedMs)),
          [session = live->session(), plan = live->plan(),
           now = words::clockOf(live->state().startedMs)](std::stop_token stop) {
              Answer answer{proposeStart(session, plan, now, stop), {}};
              if (answer.proposal.refused.empty())
                  answer.acceptance = acceptance(answer.proposal);
              return answer;
          });
}

void ChangeDesk::planAgain() {
    ask(tr("Plan the rest again"), {.kind = Kind::planAgain});
}

void ChangeDesk::handOver(int quilt, const QString& zone, const QString& person) {
    const QString called = words::zone(words::toCore(zone));
    const QString title = person.isEmpty() ? tr("%1 to whoever is best").arg(called)
                                           : tr("%1 to %2").arg(called, person);
    if (atTable_)
        return ask(title, {.kind = Kind::handOver,
                           .person = words::toCore(person),
                           .job = quilt,
                           .zone = words::toCore(zone)});
    if (!plan_->planned() || plan_->busy())
        return;
    before_ = plan_->planned()->plan;
    sessionBefore_ = plan_->planned()->session;
    caution_.clear();
    begin(title, [planned = plan_->planned(), quilt, zone = words::toCore(zone),
                  who = words::toCore(person)](std::stop_token stop) {
        return Answer{proposeHandOver(planned->session, planned->plan, quilt, zone, who, stop), {}};
    });
}

void ChangeDesk::ask(const QString& title, Change change, const QString& caution) {
    const auto* live = live_->live();
    if (!live)
        return;
    before_ = live->plan();
    sessionBefore_ = live->session();
    caution_ = caution;
    change.began = words::clockOf(live->state().startedMs);
    begin(title, [session = live->session(), plan = live->plan(), events = live->events(),
                  state = live->state(), change = std::move(change),
                  now = clock_()](std::stop_token stop) {
        Answer answer{propose(session, plan, events, state, change, now, stop), {}};
        if (answer.proposal.refused.empty())
            answer.acceptance = acceptance(answer.proposal);
        return answer;
    });
}

void ChangeDesk::begin(const QString& title, Question question) {
    title_ = title;
    open_ = true;
    ofPins_ = helps_ = false;
    answer_.reset();
    people_.setRows({});
    sides_.setRows({});
    if (working_) {
        next_ = std::move(question);
        worker_.request_stop();
    } else {
        run(std::move(question));
    }
    emit changed();
}

void ChangeDesk::run(Question question) {
    working_ = true;
    worker_ = std::jthread{[this, question = std::move(question)](std::stop_token stop) {
        auto answer = std::make_shared<Answer>(question(stop));
        QMetaObject::invokeMethod(
            this, [this, answer] { finished(answer); }, Qt::QueuedConnection);
    }};
}

void ChangeDesk::finished(std::shared_ptr<Answer> answer) {
    working_ = false;
    if (next_)
        return run(std::exchange(next_, {}));
    if (!open_)
        return;
    answer_ = std::move(answer);
    showPeople();
    showSides();
    emit changed();
}

// Before and after side by side, where anything differs.
void ChangeDesk::showSides() {
    QList<QVariantList> rows;
    const auto& p = answer_->proposal;
    const auto add = [&rows](const QString& what, auto before, auto after) {
        rows.push_back({what, QString::number(before), QString::number(after)});
    };
    if (p.refused.empty() && p.before != p.after) {
        rows.push_back({tr("Finishes about"), at(p.finishBefore), at(p.finishAfter)});
        add(tr("Passes left"), p.before.passes, p.after.passes);
        add(tr("Zones left"), p.before.zones, p.after.zones);
        if (p.before.pins > 0 || p.after.pins > 0)
            add(tr("Pins to place"), p.before.pins, p.after.pins);
    }
    sides_.setRows(std::move(rows));
}

// Everybody's work from here on, before and after.
void ChangeDesk::showPeople() {
    QList<QVariantList> rows;
    if (answer_->proposal.refused.empty()) {
        const auto& helpers = answer_->proposal.session.setting.helpers;
        const auto names = people::names(helpers);
        const auto letters = people::letters(helpers);
        const auto zones = [this](const Plan& plan, const std::string& who) {
            Seconds work{};
            for (const auto& t : plan.tasks)
                if (std::find(t.people.begin(), t.people.end(), who) != t.people.end() &&
                    !(atTable_ && live_->live()->state().doneTasks.contains(t.id)))
                    work += t.end - t.start;
            return work == Seconds{} ? tr("nothing") : words::span(work);
        };
        for (qsizetype i = 0; i < names.size(); ++i) {
            const auto who = words::toCore(names[i]);
            const QString was = zones(before_, who), is = zones(answer_->proposal.plan, who);
            rows.push_back({letters[i], int(i), names[i], was, is, was != is});
        }
    }
    people_.setRows(std::move(rows));
}

bool ChangeDesk::reportFacts() {
    for (const auto& fact : answer_->proposal.facts)
        if (!live_->report(fact))
            return false;
    return answer_->proposal.note.empty() || live_->note(words::fromCore(answer_->proposal.note));
}

void ChangeDesk::accept() {
    if (!answer_ || !refused().isEmpty())
        return;
    const auto answer = answer_;
    if (atTable_) {
        if (reportFacts())
            live_->report(answer->acceptance);
    } else if (editor_->session() == sessionBefore_) {
        editor_->apply(title_, answer->proposal.session);
    }
    cancel();
    emit accepted();
}

void ChangeDesk::keep() {
    if (!answer_)
        return;
    // What would have helped does not; how many there are stays to be told.
    if (ofPins_ && helps_ && !refused().isEmpty())
        return pins(pins_);
    if (atTable_)
        reportFacts();
    cancel();
}

void ChangeDesk::cancel() {
    open_ = false;
    answer_.reset();
    next_ = {};
    worker_.request_stop();
    emit changed();
}

QString ChangeDesk::refused() const {
    return answer_ ? words::fromCore(answer_->proposal.refused) : QString{};
}

QString ChangeDesk::at(Seconds s) const {
    if (atTable_ && live_->live())
        return words::timeOfDay(live_->live()->state().startedMs + s.count() * 1000);
    return words::clock(sessionBefore_.setting.start, s);
}

QString ChangeDesk::finishText() const {
    if (!answer_ || !refused().isEmpty())
        return {};
    const auto& p = answer_->proposal;
    const QString was = at(p.finishBefore), is = at(p.finishAfter);
    return was == is ? tr("Finishes about %1, as before").arg(is)
                     : tr("Finishes about %1 instead of %2").arg(is, was);
}

QString ChangeDesk::meaning() const {
    QStringList out;
    if (answer_)
        for (const auto& line : answer_->proposal.said)
            out << words::fromCore(line);
    return out.join(QLatin1Char(' '));
}

QStringList ChangeDesk::changes() const {
    constexpr std::size_t kMost = 8;
    QStringList out;
    if (!answer_)
        return out;
    const auto& all = answer_->proposal.changes;
    for (std::size_t i = 0; i < all.size() && i < kMost; ++i)
        out << words::fromCore(all[i]);
    if (all.size() > kMost)
        out << tr("And %1 more changes of hands.").arg(all.size() - kMost);
    if (all.empty() && refused().isEmpty())
        out << tr("Nobody's work changes.");
    return out;
}

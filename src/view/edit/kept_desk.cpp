#include "view/edit/kept_desk.h"

#include "job/job_json.h"
#include "view/base/words.h"
#include "view/edit/summaries.h"

#include <algorithm>
#include <utility>

using namespace bastewright;

namespace {

constexpr const char* kKeepsPeople = "keep-people";

KeptKind kindOf(KeptDesk::Kind kind) {
    return kind == KeptDesk::Room     ? KeptKind::room
           : kind == KeptDesk::Person ? KeptKind::person
                                      : KeptKind::supplies;
}

/// Without what belongs to the day.
Helper lasting(Helper helper) {
    helper.from.reset();
    helper.until.reset();
    helper.breaks.clear();
    helper.side.reset();
    return helper;
}

Room lasting(Room room) {
    room.together.reset();
    return room;
}

/// As it is told beside its name.
template <class Named>
Named nameless(Named thing) {
    thing.name.clear();
    return thing;
}

/// The file in which a thing is kept: a job that holds it alone.
std::string keptText(Setting setting) {
    Session session;
    session.jobs.emplace_back();
    session.jobs.front().top.width = {Length::inches(60)};
    session.jobs.front().top.length = {Length::inches(72)};
    session.setting = std::move(setting);
    return writeSession(session);
}

Helper* named(std::vector<Helper>& helpers, const std::string& name) {
    const auto at = std::ranges::find(helpers, name, &Helper::name);
    return at == helpers.end() ? nullptr : &*at;
}

/// Without this person; who is alone there loses only the name.
void leave(Session& session, const std::string& who) {
    auto& helpers = session.setting.helpers;
    if (helpers.size() > 1)
        std::erase_if(helpers, [&](const Helper& h) { return h.name == who; });
    else if (Helper* alone = named(helpers, who))
        alone->name = words::toCore(KeptDesk::tr("Me"));
    for (auto& job : session.jobs)
        std::erase_if(job.handed, [&](const HandedZone& h) { return h.person == who; });
}

} // namespace

KeptDesk::KeptDesk(Library* library, JobEditor* editor, QObject* parent)
    : QObject{parent}
    , library_{library}
    , editor_{editor}
    , rooms_{{"name", "about", "here"}}
    , people_{{"name", "about", "here"}}
    , boxes_{{"name", "about", "here"}} {
    connect(editor_, &JobEditor::sessionChanged, this, &KeptDesk::follow);
    connect(editor_, &JobEditor::changed, this, &KeptDesk::show);
    const auto keeps = library_->setting(kKeepsPeople);
    keepsPeople_ = !keeps || *keeps != "0";
    refresh();
}

void KeptDesk::say(const QString& problem) {
    if (problem == problem_)
        return;
    problem_ = problem;
    emit problemChanged();
}

void KeptDesk::refresh() {
    for (const Kind kind : {Room, Person, Supplies}) {
        auto& into = kept_[std::size_t(kind)];
        into.clear();
        const auto listed = library_->kept(kindOf(kind));
        if (!listed) {
            say(words::fromCore(listed.error()));
            continue;
        }
        for (const Kept& kept : *listed) {
            auto read = readSession(kept.text);
            if (!read.session || (kind == Person && read.session->setting.helpers.size() != 1))
                continue; // of no use; it stays where it is
            Setting& setting = read.session->setting;
            setting.room.name = setting.stash.name = kept.name;
            if (kind == Person)
                setting.helpers.front().name = kept.name;
            into.push_back({kept.name, std::move(setting)});
        }
    }
    show();
}

void KeptDesk::show() {
    const Setting& now = editor_->session().setting;
    const Unit unit = editor_->unit();
    QList<QVariantList> rooms, people, boxes;
    for (const Thing& thing : all(Room))
        rooms.push_back({words::fromCore(thing.name),
                         summaries::room(nameless(thing.setting.room), unit),
                         now.room.name == thing.name});
    for (const Thing& thing : all(Person))
        people.push_back({words::fromCore(thing.name),
                          summaries::person(thing.setting.helpers.front(), unit),
                          std::ranges::count(now.helpers, thing.name, &Helper::name) > 0});
    for (const Thing& thing : all(Supplies))
        boxes.push_back({words::fromCore(thing.name),
                         summaries::supplies(nameless(thing.setting.stash)),
                         now.stash.name == thing.name});
    const int away = int(
        std::ranges::count_if(people, [](const QVariantList& row) { return !row[2].toBool(); }));
    rooms_.setRows(std::move(rooms));
    people_.setRows(std::move(people));
    boxes_.setRows(std::move(boxes));
    if (std::exchange(away_, away) != away)
        emit awayChanged();
}

bool KeptDesk::isKept(Kind kind, const QString& name) const {
    return std::ranges::count(all(kind), words::toCore(name), &Thing::name) > 0;
}

void KeptDesk::use(Kind kind, const QString& name) {
    const auto at = std::ranges::find(all(kind), words::toCore(name), &Thing::name);
    if (at == all(kind).end())
        return;
    Session next = editor_->session();
    auto& setting = next.setting;
    if (kind == Room) {
        setting.room = at->setting.room;
        for (Helper& helper : setting.helpers)
            helper.side.reset(); // a side of other tables
    } else if (kind == Supplies) {
        setting.stash = at->setting.stash;
    } else if (const Helper* there = named(setting.helpers, at->name)) {
        if (setting.helpers.size() > 1)
            setting.helpers.erase(setting.helpers.begin() + (there - setting.helpers.data()));
    } else {
        setting.helpers.push_back(at->setting.helpers.front());
    }
    say(editor_->apply(name, std::move(next)));
}

bool KeptDesk::keep(Kind kind, const std::string& name, const Setting& from) {
    Setting alone;
    if (kind == Room)
        alone.room = lasting(from.room);
    else if (kind == Supplies)
        alone.stash = from.stash;
    else
        for (const Helper& helper : from.helpers)
            if (helper.name == name)
                alone.helpers = {lasting(helper)};
    if (const auto done = library_->keep(kindOf(kind), name, keptText(std::move(alone))); !done) {
        say(words::fromCore(done.error()));
        return false;
    }
    return true;
}

void KeptDesk::keepPerson(const QString& name) {
    if (keep(Person, words::toCore(name), editor_->session().setting))
        refresh();
}

void KeptDesk::keepEverybody() {
    if (!keepsPeople_)
        return;
    for (const Helper& helper : editor_->session().setting.helpers)
        if (!summaries::isNumbered(words::fromCore(helper.name)))
            keep(Person, helper.name, editor_->session().setting);
    refresh();
}

/// What a person changes in the quilt in hand about something that is kept is kept as well; opening
/// a quilt changes nothing.
void KeptDesk::follow() {
    const Setting now = editor_->session().setting;
    const Setting before = std::exchange(seen_, now);
    if (!editor_->canUndo() && !editor_->canRedo())
        return;
    bool anything = false;
    const auto followed = [&](Kind kind, const std::string& was, const std::string& is) {
        if (is.empty())
            return;
        const bool taken = isKept(kind, words::fromCore(is));
        if (was != is && !was.empty() && isKept(kind, words::fromCore(was)) && !taken)
            library_->renameKept(kindOf(kind), was, is).map_error([this](const Sentence& why) {
                say(words::fromCore(why));
            });
        anything = keep(kind, is, now) || anything;
    };
    if (!(lasting(now.room) == lasting(before.room)))
        followed(Room, before.room.name, now.room.name);
    if (!(now.stash == before.stash))
        followed(Supplies, before.stash.name, now.stash.name);
    for (const Helper& helper : now.helpers) {
        const auto was = std::ranges::find(before.helpers, helper.name, &Helper::name);
        if (was != before.helpers.end() && !(lasting(*was) == lasting(helper)) &&
            isKept(Person, words::fromCore(helper.name)))
            anything = keep(Person, helper.name, now) || anything;
    }
    if (anything)
        refresh();
}

bool KeptDesk::rename(Kind kind, const QString& from, const QString& to) {
    const std::string was = words::toCore(from), is = words::toCore(to.trimmed());
    if (is.empty() || is.size() > limits::kName)
        return false;
    if (const auto done = library_->renameKept(kindOf(kind), was, is); !done) {
        say(words::fromCore(done.error()));
        return false;
    }
    refresh();
    Session next = editor_->session();
    if (kind == Room && next.setting.room.name == was)
        next.setting.room.name = is;
    if (kind == Supplies && next.setting.stash.name == was)
        next.setting.stash.name = is;
    if (Helper* there = kind == Person ? named(next.setting.helpers, was) : nullptr)
        there->name = is;
    say(editor_->apply(tr("Name"), std::move(next)));
    return true;
}

void KeptDesk::forget(Kind kind, const QString& name) {
    const std::string which = words::toCore(name);
    if (const auto done = library_->forgetKept(kindOf(kind), which); !done)
        return say(words::fromCore(done.error()));
    refresh();
    // The quilt in hand goes on with it, but no longer under a name that is kept.
    Session next = editor_->session();
    if (kind == Room && next.setting.room.name == which)
        next.setting.room.name.clear();
    if (kind == Supplies && next.setting.stash.name == which)
        next.setting.stash.name.clear();
    say(editor_->apply(tr("Forget %1").arg(name), std::move(next)));
}

int KeptDesk::forgetEverywhere(const QString& name) {
    const std::string who = words::toCore(name);
    forget(Person, name);
    Session hand = editor_->session();
    leave(hand, who);
    say(editor_->apply(tr("Forget %1").arg(name), std::move(hand)));
    int changed = 0;
    for (const bool removed : {false, true}) {
        const auto jobs = removed ? library_->removedJobs() : library_->jobs();
        if (!jobs) {
            say(words::fromCore(jobs.error()));
            continue;
        }
        for (const JobEntry& entry : *jobs) {
            const auto text = library_->loadJob(entry.id);
            auto read = text ? readSession(*text) : SessionRead{};
            if (!read.session || !named(read.session->setting.helpers, who))
                continue;
            leave(*read.session, who);
            if (const auto done =
                    library_->saveJob(entry.id, entry.name, writeSession(*read.session));
                !done)
                say(words::fromCore(done.error()));
            else
                ++changed;
        }
    }
    emit quiltsChanged();
    return changed;
}

Setting KeptDesk::usual() const {
    Setting setting;
    setting.room.tables = {Table{}};
    if (!all(Room).empty())
        setting.room = all(Room).front().setting.room;
    if (!all(Supplies).empty())
        setting.stash = all(Supplies).front().setting.stash;
    const std::string me = words::toCore(tr("Me"));
    const auto kept = std::ranges::find(all(Person), me, &Thing::name);
    setting.helpers = {kept == all(Person).end() ? Helper{} : kept->setting.helpers.front()};
    setting.helpers.front().name = me;
    return setting;
}

void KeptDesk::setKeepsPeople(bool keeps) {
    if (keeps == keepsPeople_)
        return;
    if (const auto done = library_->setSetting(kKeepsPeople, keeps ? "1" : "0"); !done)
        return say(words::fromCore(done.error()));
    keepsPeople_ = keeps;
    emit keepsPeopleChanged();
}

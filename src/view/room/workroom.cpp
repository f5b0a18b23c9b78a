#include "view/room/workroom.h"

#include "job/job_json.h"
#include "view/base/words.h"

#include <algorithm>

using namespace bastewright;

namespace {
constexpr int kSettleMs = 120; // several quick taps on + make one plan, not ten
}

Workroom::Workroom(Library* library, const Setup& setup, QObject* parent)
    : QObject{parent}
    , library_{library}
    , comfort_{setup.comfortFile, setup.density}
    , shelf_{library}
    , kept_{library, &editor_}
    , guide_{&editor_}
    , crew_{&editor_, &plan_}
    , pass_{&plan_}
    , live_{library, setup.clock}
    , board_{&live_}
    , farBoard_{&live_}
    , step_{&live_, &board_}
    , sheets_{setup.sheetsFolder}
    , record_{library, setup.sheetsFolder}
    , learnt_{library, &editor_}
    , layers_{&plan_, &editor_}
    , lanes_{&plan_, &live_, setup.clock}
    , rehearsal_{&plan_}
    , desk_{&editor_, &plan_, &live_, setup.clock}
    , top_{&editor_}
    , tables_{&editor_, &plan_}
    , ways_{&editor_, &plan_}
    , rows_{&plan_}
    , why_{&plan_}
    , remedies_{&editor_, &plan_}
    , replanner_{setup.plan} {
    connect(&kept_, &KeptDesk::quiltsChanged, &shelf_, &ShelfModel::refresh);
    connect(&kept_, &KeptDesk::problemChanged, this, [this] { say(kept_.problem()); });
    settle_.setSingleShot(true);
    settle_.setInterval(kSettleMs);
    connect(&settle_, &QTimer::timeout, this, &Workroom::replan);
    connect(&editor_, &JobEditor::sessionChanged, this, [this] {
        if (job_ == 0)
            return;
        store();
        plan_.setBusy(true);
        settle_.start();
    });
    connect(&editor_, &JobEditor::changed, this, [this] { plan_.setQuiltIndex(editor_.quilt()); });
    connect(&replanner_, &Replanner::planned, this, &Workroom::planned);
    const auto turnBoards = [this] {
        board_.setTurn(comfort_.turn());
        farBoard_.setTurn(comfort_.turn() + 2);
        farBoard_.setFollowing(comfort_.faceToFace());
    };
    connect(&comfort_, &Comfort::changed, this, turnBoards);
    connect(&comfort_, &Comfort::languageChanged, this, &Workroom::sayAllAgain);
    connect(&board_, &TableBoard::changed, this, [this] { farBoard_.setQuilt(board_.quilt()); });
    turnBoards();
}

Workroom::~Workroom() {
    if (unstored_)
        store();
}

void Workroom::show(Screen screen) {
    screen_ = screen;
    lanes_.setAtTable(screen == Screen::AtTable);
    desk_.setAtTable(screen == Screen::AtTable);
    rehearsal_.setPlaying(false);
    std::string last = "shelf";
    if (screen == Screen::Guide)
        last = "guide " + std::to_string(job_);
    else if (screen == Screen::Planning)
        last = "plan " + std::to_string(job_);
    else if (screen == Screen::AtTable)
        last = "table " + std::to_string(live_.id());
    if (const auto kept = library_->setLastScreen(last); !kept)
        say(words::fromCore(kept.error()));
    emit screenChanged();
}

void Workroom::say(const QString& notice) {
    if (notice == notice_)
        return;
    notice_ = notice;
    emit noticeChanged();
}

/// In another language: everything that holds words makes them anew.
void Workroom::sayAllAgain() {
    shelf_.refresh();
    emit editor_.changed();
    if (plan_.isPlanned())
        plan_.show(plan_.planned());
    live_.refresh();
    desk_.sayAgain();
    emit screenChanged();
}

void Workroom::forgetNotice() {
    say({});
}

void Workroom::returnToLast() {
    const auto last = library_->lastScreen();
    if (!last || !*last)
        return;
    const auto space = (*last)->find(' ');
    const auto kind = (*last)->substr(0, space);
    const auto id = space == std::string::npos
                        ? 0
                        : QString::fromStdString((*last)->substr(space + 1)).toLongLong();
    if (kind == "plan" && id > 0)
        openJob(id);
    if (kind == "guide" && id > 0 && take(id))
        show(Screen::Guide);
    if (kind == "table" && id > 0 && live_.resume(id)) {
        openJob(live_.job());
        show(Screen::AtTable);
    }
}

void Workroom::openJob(qint64 job) {
    if (take(job))
        show(Screen::Planning);
}

/// Takes a job of the library into hand; false, and said, where that does not go.
bool Workroom::take(JobId job) {
    // Opening one puts the other away, and with it a change that the library has not taken.
    if (unstored_) {
        store();
        if (unstored_) {
            const QString why = notice_;
            show(Screen::Planning);
            say(why);
            return false;
        }
    }
    const auto text = library_->loadJob(job);
    if (!text) {
        say(words::fromCore(text.error()));
        return false;
    }
    auto read = readSession(*text);
    if (!read.session) {
        say(read.problems.empty() ? tr("This quilt cannot be read.")
                                  : words::fromCore(read.problems.front().text));
        return false;
    }
    if (job != job_) {
        plan_.clear();
        pass_.setNumber(1);
    }
    job_ = job;
    stored_ = writeSession(*read.session);
    editor_.open(std::move(*read.session));
    learnt_.look();
    return true;
}

void Workroom::beginQuilt() {
    kept_.refresh();
    begun_ = shelf_.addNew(kept_.usual());
    if (begun_ == 0 || !take(begun_))
        return;
    guide_.begin();
    show(Screen::Guide);
}

void Workroom::finishGuide() {
    begun_ = 0;
    if (guide_.reached() >= GuideDesk::People)
        kept_.keepEverybody();
    show(Screen::Planning);
}

void Workroom::leaveGuide() {
    if (begun_ != 0 && begun_ == job_ && !editor_.canUndo() && !editor_.canRedo()) {
        if (const auto gone = library_->removeJob(job_); !gone)
            say(words::fromCore(gone.error()));
    }
    begun_ = 0;
    backToShelf();
}

void Workroom::backToShelf() {
    shelf_.refresh();
    show(Screen::Shelf);
}

void Workroom::backToPlan() {
    if (job_ == 0 || job_ != live_.job())
        openJob(live_.job());
    else
        show(Screen::Planning);
}

SessionId Workroom::runningSession(JobId job) const {
    const auto open = library_->openSessions();
    if (!open)
        return 0;
    const auto at = std::find_if(open->begin(), open->end(),
                                 [job](const SessionEntry& s) { return s.job == job; });
    return at == open->end() ? 0 : at->id;
}

bool Workroom::inSession() const {
    return job_ != 0 && runningSession(job_) != 0;
}

void Workroom::goToTable() {
    const auto running = runningSession(job_);
    if (running != 0) {
        if (live_.id() != running && !live_.resume(running))
            return say(live_.problem());
    } else if (plan_.busy() || !plan_.good()) {
        return say(tr("There is no good plan to start with yet."));
    } else if (!live_.start(job_, *plan_.planned())) {
        return say(live_.problem());
    }
    board_.setQuilt(plan_.quiltIndex());
    show(Screen::AtTable);
}

void Workroom::openSheets() {
    const bool atTable = screen_ == Screen::AtTable;
    if (!atTable && (!plan_.isPlanned() || plan_.busy()))
        return;
    const PlannedPtr planned = atTable ? live_.planned() : plan_.planned();
    if (!planned)
        return;
    sheets_.take(planned);
    emit sheetsWanted();
}

void Workroom::store() {
    std::string text = writeSession(editor_.session());
    if (text == stored_ && !unstored_)
        return; // only opened: the library stays as it is, and so does what was said of it
    const auto saved = library_->saveJob(job_, words::toCore(editor_.title()), text);
    unstored_ = !saved;
    if (saved)
        stored_ = std::move(text);
    say(saved ? QString{} : words::fromCore(saved.error()));
}

void Workroom::replan() {
    replanner_.request(editor_.session());
}

void Workroom::planned(const PlannedPtr& result) {
    // A change since then is already on its way to be planned.
    if (result->session != editor_.session())
        return;
    plan_.show(result);
    plan_.setBusy(false);
    if (plan_.good())
        if (const auto kept = library_->setSetting(plannedKey(job_), "1"); !kept)
            say(words::fromCore(kept.error()));
}

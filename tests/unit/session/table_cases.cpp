#include "unit/session/table_cases.h"

#include "session/checks.h"

#include <algorithm>
#include <functional>
#include <sstream>
#include <stdexcept>
#include <utility>

namespace bastewright::made {
namespace {

using enum TapAnswer::Why;

constexpr const char* kNotBegun = "The session has not begun.";
constexpr const char* kEnded = "The session has ended. Take the ending back to go on with it.";
constexpr const char* kBreak = "It is a break. Resume first.";
constexpr const char* kSetUp = "Not yet: first the setting up (Ada and Bo).";
constexpr const char* kBacking = "Not yet: first the laying of the backing (Ada and Bo).";
constexpr const char* kClamp = "Not yet: first the clamping of the backing (Ada and Bo).";
constexpr const char* kBatting = "Not yet: first the laying of the batting (Ada and Bo).";
constexpr const char* kTop = "Not yet: first the laying of the top (Ada and Bo).";
constexpr const char* kMoveClamps =
    "Not yet: first the moving of the clamps to all three layers (Ada and Bo).";
constexpr const char* kAllPins = "Not yet: first A1, B1 and B2 are pinned open (Ada and Bo).";
constexpr const char* kBsPins = "Not yet: first B1 and B2 are pinned open (Bo).";
constexpr const char* kSmooth = "Not yet: first the smoothing (Bo).";
constexpr const char* kAllClosed = "Not yet: first A1, B1 and B2 are closed (Ada and Bo).";
constexpr const char* kBsClosed = "Not yet: first B1 and B2 are closed (Bo).";
constexpr const char* kCheck = "Not yet: first the check underneath (Ada).";
constexpr const char* kRelease1 = "Not yet: first pass 1 is released.";
constexpr const char* kRelease2 = "Not yet: first pass 2 is released.";
constexpr const char* kMove = "Not yet: first the shift (Ada and Bo).";
constexpr const char* kPass2 = "A1 belongs to pass 2; pass 1 is on the table.";
constexpr const char* kWork = "There is still work open.";
constexpr const char* kA1Done = "A1 is done. Hold it to take its last tick back.";

constexpr Case kCases[] = {
    // Before anything.
    {"not begun", "zone p1.A1", notStarted, kNotBegun},
    {"not begun", "step set-up", notStarted, kNotBegun},
    {"not begun", "release 1", notStarted, kNotBegun},
    {"not begun", "end", notStarted, kNotBegun},
    {"not begun", "phone p1.A1 Ada zone-opened", notStarted, kNotBegun},
    // Things that do not exist.
    {"begun", "zone p1.Z9", unknown, "There is no zone Z9."},
    {"begun", "step fly", unknown, "The plan has no step fly."},
    {"begun", "step open-p1.A1", unknown, "The plan has no step open-p1.A1."},
    {"begun", "release 7", notOnTable, "Pass 7 is not on the table; pass 1 is."},
    // Every call in its order, and nothing before its call.
    {"begun", "step set-up", counts, ""},
    {"begun", "step backing-1", early, kSetUp},
    {"begun", "step clamp-1", early, kSetUp},
    {"begun", "step batting-1", early, kSetUp},
    {"begun", "step top-1", early, kSetUp},
    {"begun", "step reclamp-1", early, kSetUp},
    {"begun", "step smooth-1", early, kSetUp},
    {"begun", "step check-1", early, kSetUp},
    {"begun", "step move-2", early, kSetUp},
    {"begun", "step roll-up", early, kSetUp},
    {"begun", "zone p1.A1", early, kSetUp},
    {"begun", "zone p1.B2", early, kSetUp},
    {"begun", "zone p2.A1", notOnTable, kPass2},
    {"begun", "release 1", early, kSetUp},
    {"begun", "release 2", notOnTable, "Pass 2 is not on the table; pass 1 is."},
    {"begun", "end", early, kWork},
    {"begun", "otherwise end", counts, ""},
    {"begun", "phone p1.A1 Ada zone-opened", early, kSetUp},
    {"set up", "step set-up", done, "The setting up of pass 1 is ticked already."},
    {"set up", "step backing-1", counts, ""},
    {"set up", "step clamp-1", early, kBacking},
    {"set up", "step top-1", early, kBacking},
    {"set up", "zone p1.A1", early, kBacking},
    {"set up", "zone p1.B1", early, kBacking},
    {"set up", "release 1", early, kBacking},
    {"backing laid", "step clamp-1", counts, ""},
    {"backing laid", "step batting-1", early, kClamp},
    {"backing laid", "step reclamp-1", early, kClamp},
    {"backing laid", "zone p1.A1", early, kClamp},
    {"backing laid", "step smooth-1", early, kClamp},
    {"backing held", "step batting-1", counts, ""},
    {"backing held", "step clamp-1", done,
     "The clamping of the backing of pass 1 is ticked already."},
    {"backing held", "step top-1", early, kBatting},
    {"backing held", "zone p1.B2", early, kBatting},
    {"batting laid", "step top-1", counts, ""},
    {"batting laid", "step reclamp-1", early, kTop},
    {"batting laid", "zone p1.A1", early, kTop},
    {"top laid", "step reclamp-1", counts, ""},
    {"top laid", "zone p1.A1", early, kMoveClamps},
    {"top laid", "phone p1.B1 Bo zone-opened", early, kMoveClamps},
    {"top laid", "otherwise zone p1.A1", counts, ""},
    // Pin.
    {"held", "zone p1.A1", counts, ""},
    {"held", "zone p1.B1", counts, ""},
    {"held", "zone p1.B2", counts, ""}, // anybody may begin with any of theirs
    {"held", "zone p2.B1", notOnTable, "B1 belongs to pass 2; pass 1 is on the table."},
    {"held", "step smooth-1", early, kAllPins},
    {"held", "step check-1", early, kAllPins},
    {"held", "step reclamp-1", done,
     "The moving of the clamps to all three layers of pass 1 is ticked already."},
    {"held", "release 1", early, kAllPins},
    {"held", "end", early, kWork},
    {"held", "phone p1.A1 Ada zone-opened", counts, ""},
    {"held", "phone p1.A1 Bo zone-opened", notTheirs,
     "A1 is the work of Ada. Tick it at the table."},
    {"held", "phone p1.A1 Ada zone-closed", done, "A1 is ticked already."},
    {"A1 open", "zone p1.A1", early, kBsPins}, // closing has to wait for everybody
    {"A1 open", "phone p1.A1 Ada zone-opened", done, "A1 is ticked already."},
    {"A1 open", "phone p1.A1 Ada zone-closed", early, kBsPins},
    {"A1 open", "otherwise zone p1.A1", counts, ""},
    {"A1 open", "zone p1.B1", counts, ""},
    {"A1 open", "step smooth-1", early, kBsPins},
    {"A1 open", "step check-1", early, kBsPins},
    {"A1 open", "release 1", early, kBsPins},
    {"A1 taken back", "zone p1.A1", counts, ""},
    {"A1 taken back", "step smooth-1", early, kAllPins},
    {"B2 left", "zone p1.A1", early, "Not yet: first B2 is pinned open (Bo)."},
    {"B2 left", "zone p1.B1", early, "Not yet: first B2 is pinned open (Bo)."},
    {"B2 left", "zone p1.B2", counts, ""},
    {"B2 left", "step smooth-1", early, "Not yet: first B2 is pinned open (Bo)."},
    // Hands off.
    {"all open", "step smooth-1", counts, ""},
    {"all open", "zone p1.A1", early, kSmooth},
    {"all open", "zone p1.B1", early, kSmooth},
    {"all open", "zone p1.B2", early, kSmooth},
    {"all open", "step check-1", early, kSmooth},
    {"all open", "step move-2", early, kSmooth},
    {"all open", "release 1", early, kSmooth},
    {"all open", "phone p1.A1 Ada zone-closed", early, kSmooth},
    // Close.
    {"smoothed", "zone p1.A1", counts, ""},
    {"smoothed", "zone p1.B1", counts, ""},
    {"smoothed", "zone p1.B2", counts, ""},
    {"smoothed", "step smooth-1", done, "The smoothing of pass 1 is ticked already."},
    {"smoothed", "step check-1", early, kAllClosed},
    {"smoothed", "release 1", early, kAllClosed},
    {"smoothed", "phone p1.B1 Bo zone-closed", counts, ""},
    {"smoothed", "phone p1.B1 Ada zone-closed", notTheirs,
     "B1 is the work of Bo. Tick it at the table."},
    {"A1 closed", "zone p1.A1", done, kA1Done},
    {"A1 closed", "phone p1.A1 Ada zone-closed", done, kA1Done},
    {"A1 closed", "zone p1.B2", counts, ""},
    {"A1 closed", "step check-1", early, kBsClosed},
    {"A1 closed", "step move-2", early, kBsClosed},
    {"A1 closed", "release 1", early, kBsClosed},
    // Check.
    {"all closed", "step check-1", counts, ""},
    {"all closed", "zone p1.A1", done, kA1Done},
    {"all closed", "step move-2", early, kCheck},
    {"all closed", "release 1", early, kCheck},
    {"all closed", "end", early, kWork},
    {"not yet", "step check-1", answeredNo,
     "One answer is 'not yet'. Put it right and answer again."},
    {"not yet", "otherwise step check-1", answeredNo,
     "One answer is 'not yet'. Put it right and answer again."},
    {"not yet", "release 1", early, kCheck},
    {"A1 again", "step check-1", early, "Not yet: first A1 is closed (Ada)."},
    {"A1 again", "zone p1.A1", counts, ""},
    {"A1 again", "phone p1.A1 Ada zone-closed", counts, ""},
    {"A1 again", "zone p1.B1", done, "B1 is done. Hold it to take its last tick back."},
    {"A1 again", "release 1", early, "Not yet: first A1 is closed (Ada)."},
    // Release and Move.
    {"checked", "release 1", counts, ""},
    {"checked", "release 2", notOnTable, "Pass 2 is not on the table; pass 1 is."},
    {"checked", "step check-1", done, "The check underneath of pass 1 is ticked already."},
    {"checked", "step move-2", early, kRelease1},
    {"checked", "step backing-2", early, kRelease1},
    {"checked", "step roll-up", early, kRelease1},
    {"checked", "zone p2.A1", notOnTable, kPass2},
    {"checked", "zone p1.A1", done, kA1Done},
    {"checked", "end", early, kWork},
    {"released", "release 1", done, "Pass 1 is released already."},
    {"released", "release 2", early, kMove},
    {"released", "step move-2", counts, ""},
    {"released", "step backing-2", early, kMove},
    {"released", "zone p2.A1", early, kMove},
    {"released", "zone p1.A1", done, kA1Done},
    {"released", "phone p2.B1 Bo zone-opened", early, kMove},
    {"moved", "step backing-2", counts, ""},
    {"moved", "zone p2.A1", early, kBacking},
    {"moved", "zone p2.B1", early, kBacking},
    {"moved", "phone p2.A1 Ada zone-opened", early, kBacking},
    {"moved", "step move-2", done, "The shift of pass 2 is ticked already."},
    {"held again", "zone p2.A1", counts, ""},
    {"held again", "step smooth-2", early,
     "Not yet: first A1 and B1 are pinned open (Ada and Bo)."},
    {"held again", "release 2", early, "Not yet: first A1 and B1 are pinned open (Ada and Bo)."},
    {"held again", "phone p2.A1 Bo zone-opened", notTheirs,
     "A1 is the work of Ada. Tick it at the table."},
    {"all checked", "release 2", counts, ""},
    {"all checked", "step roll-up", early, kRelease2},
    {"all checked", "end", early, kWork},
    {"all released", "step roll-up", counts, ""},
    {"all released", "release 2", done, "Pass 2 is released already."},
    {"all released", "end", early, kWork},
    {"rolled up", "end", counts, ""},
    {"rolled up", "step roll-up", done, "The rolling up of pass 2 is ticked already."},
    {"rolled up", "zone p2.A1", done, kA1Done},
    // After the end.
    {"ended", "zone p2.A1", ended, kEnded},
    {"ended", "step roll-up", ended, kEnded},
    {"ended", "release 2", ended, kEnded},
    {"ended", "end", ended, kEnded},
    {"ended", "phone p2.A1 Ada zone-closed", ended, kEnded},
    {"ended early", "zone p1.A1", ended, kEnded},
    // A break.
    {"break", "zone p1.A1", onBreak, kBreak},
    {"break", "zone p1.B1", onBreak, kBreak},
    {"break", "step smooth-1", onBreak, kBreak},
    {"break", "release 1", onBreak, kBreak},
    {"break", "phone p1.A1 Ada zone-opened", onBreak, kBreak},
    {"break", "otherwise zone p1.A1", onBreak, kBreak},
    {"break", "end", early, kWork},
    {"break", "otherwise end", counts, ""},
    {"resumed", "zone p1.A1", counts, ""},
    {"resumed", "phone p1.A1 Ada zone-opened", counts, ""},
    // What was left out.
    {"left out", "zone p1.B2", leftOut, "B2 was left out with its pass."},
    {"left out", "phone p1.B2 Bo zone-opened", leftOut, "B2 was left out with its pass."},
    {"left out", "zone p1.A1", done, kA1Done},
    {"left out", "step smooth-1", done, "The smoothing of pass 1 is ticked already."},
    {"left out", "step check-1", counts, ""},
    {"left out", "release 1", early, kCheck},
    // People who are away leave their work where it is: the table's tick counts.
    {"Bo away", "zone p1.B1", counts, ""},
    {"Bo away", "step smooth-1", early, kAllPins},
    // Dots, pressed once more from the back.
    {"dots laid", "zone A1", early, "Not yet: first the folding back (Ada and Bo)."},
    {"dots laid", "step fold-back", counts, ""},
    {"dots laid", "step cool", early, "Not yet: first the folding back (Ada and Bo)."},
    {"dots folded", "zone A1", counts, ""},
    {"dots folded", "step fold-forward", early,
     "Not yet: first A1 and B1 are dotted below (Ada and Bo)."},
    {"dots folded", "phone A1 Ada zone-opened", done, "A1 is ticked already."},
    {"dots folded", "phone A1 Ada zone-dotted", counts, ""},
    {"dots A1 below", "zone A1", early, "Not yet: first B1 is dotted below (Bo)."},
    {"dots A1 below", "zone B1", counts, ""},
    {"dots below", "zone A1", early, "Not yet: first the folding forward (Ada and Bo)."},
    {"dots below", "step fold-forward", counts, ""},
    {"dots forward", "zone A1", counts, ""},
    {"dots forward", "step cool", early, "Not yet: first A1 and B1 are dotted above (Ada and Bo)."},
    {"dots above", "zone A1", counts, ""},
    {"dots above", "step cool", early, "Not yet: first A1 and B1 are pressed (Ada)."},
    {"dots above", "phone B1 Bo zone-closed", notTheirs,
     "B1 is the work of Ada. Tick it at the table."},
    {"dots pressed", "step cool", counts, ""},
    {"dots pressed", "step check", early, "Not yet: first the cooling."},
    {"dots pressed", "release 1", early, "Not yet: first the cooling."},
    {"dots cooled", "step check", counts, ""},
    {"dots checked", "release 1", counts, ""},
    {"dots checked", "step turn", early, kRelease1},
    {"dots checked", "zone A1", early, kRelease1},
    {"dots released", "step turn", counts, ""},
    {"dots released", "zone A1", early, "Not yet: first the turning over (Ada and Bo)."},
    {"dots turned", "zone A1", counts, ""},
    {"dots turned", "zone B1", counts, ""},
    {"dots turned", "step cool-back", early, "Not yet: first A1 and B1 are pressed (Ada)."},
    {"dots back pressed", "zone A1", done, kA1Done},
    {"dots back pressed", "step cool-back", counts, ""},
};

using Tell = std::function<void(Reporter&)>;
struct Told {
    const char* name;
    const char* after; ///< the situation it goes on from
    Tell tell;
};

void lay(Reporter& r, const std::string& pass) {
    for (const char* step : {"backing-", "clamp-", "batting-", "top-", "reclamp-"})
        r.step(step + pass);
}

const std::vector<Told>& all() {
    static const std::vector<Told> told{
        {"not begun", "", [](Reporter&) {}},
        {"begun", "", [](Reporter& r) { r.start(); }},
        {"set up", "begun", [](Reporter& r) { r.step("set-up"); }},
        {"backing laid", "set up", [](Reporter& r) { r.step("backing-1"); }},
        {"backing held", "backing laid", [](Reporter& r) { r.step("clamp-1"); }},
        {"batting laid", "backing held", [](Reporter& r) { r.step("batting-1"); }},
        {"top laid", "batting laid", [](Reporter& r) { r.step("top-1"); }},
        {"held", "top laid", [](Reporter& r) { r.step("reclamp-1"); }},
        {"A1 open", "held", [](Reporter& r) { r.open("p1.A1", "Ada"); }},
        {"A1 taken back", "A1 open", [](Reporter& r) { r.undo(r.last()); }},
        {"B2 left", "A1 open", [](Reporter& r) { r.open("p1.B1", "Bo"); }},
        {"all open", "B2 left", [](Reporter& r) { r.open("p1.B2", "Bo"); }},
        {"smoothed", "all open", [](Reporter& r) { r.step("smooth-1"); }},
        {"A1 closed", "smoothed", [](Reporter& r) { r.close("p1.A1", "Ada"); }},
        {"all closed", "A1 closed",
         [](Reporter& r) { r.close("p1.B1", "Bo").close("p1.B2", "Bo"); }},
        {"not yet", "all closed",
         [](Reporter& r) { r.answer("check-1", std::string{name(Check::underside)}, false); }},
        {"A1 again", "all closed",
         [](Reporter& r) { r.tell(happened::ZoneAgain{.zone = "p1.A1"}); }},
        {"checked", "all closed", [](Reporter& r) { r.step("check-1"); }},
        {"released", "checked", [](Reporter& r) { r.release(1); }},
        {"moved", "released", [](Reporter& r) { r.step("move-2"); }},
        {"held again", "moved", [](Reporter& r) { lay(r, "2"); }},
        {"all checked", "held again",
         [](Reporter& r) {
             r.open("p2.A1", "Ada").open("p2.B1", "Bo").step("smooth-2");
             r.close("p2.A1", "Ada").close("p2.B1", "Bo").step("check-2");
         }},
        {"all released", "all checked", [](Reporter& r) { r.release(2); }},
        {"rolled up", "all released", [](Reporter& r) { r.step("roll-up"); }},
        {"ended", "rolled up", [](Reporter& r) { r.tell(happened::Ended{}); }},
        {"ended early", "held", [](Reporter& r) { r.tell(happened::Ended{}); }},
        {"break", "held", [](Reporter& r) { r.tell(happened::Paused{}); }},
        {"resumed", "break", [](Reporter& r) { r.tell(happened::Resumed{}); }},
        {"left out", "held",
         [](Reporter& r) {
             r.open("p1.A1", "Ada").open("p1.B1", "Bo");
             r.close("p1.A1", "Ada").close("p1.B1", "Bo").abandon(1).step("smooth-1");
         }},
        {"Bo away", "held", [](Reporter& r) { r.out("Bo"); }},
        {"dots laid", "", [](Reporter& r) { r.start().step("lay-top"); }},
        {"dots folded", "dots laid", [](Reporter& r) { r.step("fold-back"); }},
        {"dots A1 below", "dots folded", [](Reporter& r) { r.tick(Tick::dotted, "A1", "Ada"); }},
        {"dots below", "dots A1 below", [](Reporter& r) { r.tick(Tick::dotted, "B1", "Bo"); }},
        {"dots forward", "dots below", [](Reporter& r) { r.step("fold-forward"); }},
        {"dots above", "dots forward", [](Reporter& r) { r.open("A1", "Ada").open("B1", "Bo"); }},
        {"dots pressed", "dots above",
         [](Reporter& r) { r.close("A1", "Ada").close("B1", "Ada"); }},
        {"dots cooled", "dots pressed", [](Reporter& r) { r.step("cool"); }},
        {"dots checked", "dots cooled", [](Reporter& r) { r.step("check"); }},
        {"dots released", "dots checked", [](Reporter& r) { r.release(1); }},
        {"dots turned", "dots released", [](Reporter& r) { r.step("turn"); }},
        {"dots back pressed", "dots turned",
         [](Reporter& r) { r.tick(Tick::pressed, "A1", "Ada").tick(Tick::pressed, "B1", "Ada"); }},
    };
    return told;
}

void tell(const std::string& name, Reporter& reporter) {
    const auto at = std::ranges::find_if(all(), [&name](const Told& t) { return t.name == name; });
    if (at == all().end())
        throw std::invalid_argument("no situation called " + name);
    if (*at->after)
        tell(at->after, reporter);
    at->tell(reporter);
}

} // namespace

std::span<const Case> cases() {
    return kCases;
}

Situation situation(const std::string& name) {
    Situation out{.session = smallSession(), .plan = {}, .events = {}};
    const bool dots = name.starts_with("dots");
    out.plan = dots ? dottedPlan(true) : calledPlan();
    if (dots)
        out.session.jobs.front().basting.with = Basting::With::dots;
    Reporter reporter;
    tell(name, reporter);
    out.events = reporter.events();
    return out;
}

Situation renamed(Situation situation, const std::string& prefix) {
    for (auto& event : situation.events) {
        event.id = prefix + event.id;
        if (auto* undone = std::get_if<happened::Undone>(&event.what))
            undone->target = prefix + undone->target;
    }
    return situation;
}

std::vector<std::string> situations() {
    std::vector<std::string> out;
    for (const auto& t : all())
        out.emplace_back(t.name);
    return out;
}

Tap tapOf(const std::string& words) {
    std::istringstream in{words};
    Tap tap;
    std::string what;
    in >> what;
    if (what == "otherwise") {
        tap.otherwise = true;
        in >> what;
    }
    if (what == "zone") {
        in >> tap.zone;
    } else if (what == "phone") {
        std::string kind;
        in >> tap.zone >> tap.person >> kind;
        const auto known = whatNamed(kind);
        const auto* tick = known ? std::get_if<happened::ZoneTick>(&*known) : nullptr;
        if (!tick)
            throw std::invalid_argument("no tick called " + kind);
        tap.meant = tick->kind;
    } else if (what == "step") {
        tap.what = Tap::What::step;
        in >> tap.task;
    } else if (what == "release") {
        tap.what = Tap::What::release;
        in >> tap.pass;
    } else if (what == "end") {
        tap.what = Tap::What::end;
    } else {
        throw std::invalid_argument("no tap called " + words);
    }
    return tap;
}

} // namespace bastewright::made

#include "unit/checker/good_tasks.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace bastewright::testing {
namespace {

using enum TaskKind;

/// Writes tasks one after another, some side by side.
class Clock {
public:
    Clock(std::vector<Task>& out, const std::vector<Zone>& zones, int job, Seconds start,
          std::vector<std::string> after)
        : out_{out}
        , zones_{zones}
        , job_{job}
        , now_{start}
        , before_{std::move(after)} {}

    void together(TaskKind kind, int pass, double seconds, int people = 2) {
        const Seconds takes{static_cast<std::int64_t>(std::ceil(seconds - 1e-9))};
        Task t = task(kind, pass, {}, takes);
        if (people > 0)
            t.people.emplace_back(kAda);
        if (people > 1)
            t.people.emplace_back(kBo);
        add({t});
    }
    /// A row of zones: Ada does the left one, Bo the right one, a point in so many seconds.
    void row(TaskKind kind, int pass, int number, Side side, double each) {
        const auto takes = [&](const std::string& id) {
            const auto at = std::ranges::find(zones_, id, &Zone::id);
            return Seconds{
                15 + static_cast<std::int64_t>(std::ceil(each * double(at->points.size()) - 1e-9))};
        };
        const std::string one = zoneId(pass, "A", number), other = zoneId(pass, "B", number);
        Task left = task(kind, pass, one, takes(one)),
             right = task(kind, pass, other, takes(other));
        left.people = {std::string{kAda}};
        right.people = {std::string{kBo}};
        left.places = {{side, {0_in, 24_in}}};
        right.places = {{side, {24_in, 48_in}}};
        add({left, right});
    }
    Seconds now() const { return now_; }

private:
    Task task(TaskKind kind, int pass, const std::string& zone, Seconds takes) {
        Task t;
        t.id = std::to_string(job_ + 1) + "." + std::to_string(pass) + " " +
               std::string{name(kind)} + (zone.empty() ? "" : " " + zone);
        if (std::ranges::find(out_, t.id, &Task::id) != out_.end())
            t.id += " again";
        t.kind = kind;
        t.job = job_;
        t.pass = pass;
        t.zone = zone;
        t.start = now_;
        t.end = now_ + takes;
        return t;
    }
    /// What a call waits for is all of the call before.
    void add(std::vector<Task> tasks) {
        if (const std::pair call{tasks.front().kind, tasks.front().pass}; call != call_) {
            if (!ids_.empty())
                before_ = std::exchange(ids_, {});
            call_ = call;
        }
        for (Task& t : tasks) {
            t.after = before_;
            ids_.push_back(t.id);
            now_ = std::max(now_, t.end);
            out_.push_back(std::move(t));
        }
    }

    std::vector<Task>& out_;
    const std::vector<Zone>& zones_;
    int job_;
    Seconds now_;
    std::vector<std::string> before_, ids_;
    std::pair<TaskKind, int> call_{};
};

struct Work {
    int pass;
    std::vector<int> rows;
    Side side; ///< where both stand
};

/// Square feet of a pass's new area.
double squareFeet(const std::vector<Zone>& zones, int pass) {
    double out = 0;
    for (const Zone& z : zones)
        out += z.pass == pass ? areaSquareInches(z.area) / 144 : 0;
    return out;
}

/// As many as their setting up takes both of them seconds: 2 s each.
double pointsIn(const std::vector<Zone>& zones) {
    double out = 0;
    for (const Zone& z : zones)
        out += double(z.points.size());
    return out;
}

} // namespace

Seconds goodTasks(std::vector<Task>& out, const std::vector<Zone>& all, int job, Basting::With with,
                  bool thick, Seconds start, const std::vector<std::string>& after) {
    Clock clock{out, all, job, start, after};
    const std::vector<Work> passes{
        {1, {2, 3}, Side::head}, {2, {4}, Side::head}, {3, {1}, Side::head}};
    for (const Work& w : passes) {
        const double area = squareFeet(all, w.pass);
        if (w.pass == 1)
            clock.together(setUp, 1, (after.empty() ? 900 : 300) + pointsIn(all));
        else
            clock.together(shift, w.pass, 180 + 2 * (w.pass == 2 ? 8 : 16));
        const double layer = ((w.pass == 1 ? 420 : 180) + 4 * area) / 3;
        clock.together(layBacking, w.pass, layer);
        clock.together(clamp, w.pass, 260); // rolling against a wall in it
        clock.together(layBatting, w.pass, layer);
        clock.together(layTop, w.pass, layer);
        clock.together(reclamp, w.pass, 160, 1);
        const auto rows = [&](TaskKind kind, double each) {
            for (const int r : w.rows)
                clock.row(kind, w.pass, r, w.side, each);
        };
        if (with == Basting::With::pins) {
            rows(placeOpen, 5.5);
            clock.together(smooth, w.pass, 90);
            rows(closePins, 5.5);
        } else if (with == Basting::With::thread) {
            clock.together(smooth, w.pass, 90);
            rows(stitch, 22); // common practice's totals within a factor of two
        } else if (with == Basting::With::spray) {
            rows(spray, 60); // from memory: a queen in 30 to 45 min
            clock.together(smooth, w.pass, 90);
            clock.together(settle, w.pass, 180, 0);
        } else {
            clock.together(foldBack, w.pass, 60 + area);
            rows(dotLower, 6);
            clock.together(foldForward, w.pass, 60 + area);
            rows(dotUpper, 6);
            rows(press, 8);
            clock.together(cool, w.pass, 120, 0);
        }
        clock.together(checkUnderside, w.pass, 120, 1);
    }
    if (thick) {
        clock.together(turnOver, 3, 180);
        for (const Work& w : passes)
            for (const int r : w.rows)
                clock.row(press, w.pass, r, w.side, 8);
        clock.together(cool, 3, 120, 0);
    }
    clock.together(handOver, 3, 300, 1);
    return clock.now();
}

void goodSupplies(Plan& plan, int quilts, Basting::With with, int surfaces) {
    using Kind = Supply::Kind;
    plan.supplies.clear();
    const auto put = [&](Kind kind, const char* item, double need, double have,
                         const char* unit = "", std::optional<Length> size = {}) {
        if (need > 0)
            plan.supplies.push_back(
                {kind, item, need, have, std::max(0.0, need - have), unit, {}, size});
    };
    const bool pins = with == Basting::With::pins, dots = with == Basting::With::dots;
    const bool thread = with == Basting::With::thread, spray = with == Basting::With::spray;
    const double points = pointsIn(plan.quilts.front().zones) * quilts;
    const Length clip = plan.quilts.front().machineRolls.front().clipHolds;
    put(Kind::pins, "pins", pins ? std::ceil(points * 1.1) : 0, 200 * quilts);
    put(Kind::fuseSquares, "fuse squares", dots ? std::ceil(2 * points * 1.1) : 0, 0, "", 0.75_in);
    put(Kind::irons, "iron", dots ? 1 : 0, 2);
    put(Kind::heatSafePads, "heat-safe pads", dots ? surfaces : 0, 0);
    // 3 in a stitch and half as much again, in yards.
    put(Kind::thread, "basting thread", thread ? std::ceil(points * 4.5 / 36) : 0, 0, "yd");
    put(Kind::needles, "long needles", thread ? 2 : 0, 0);
    // 13 square feet each, of the 150 that a can does; table and floor.
    put(Kind::sprayCans, "basting spray", spray ? 1 : 0, 0, "can");
    put(Kind::covers, "old sheets", spray ? 2 * surfaces : 0, 0);
    put(Kind::clips, "clips", 8 * quilts, 8, "", clip);
    put(Kind::clamps, "clamps", 8 * surfaces, 12);
    put(Kind::centreMarks, "center marks", 4 * surfaces, 0);
    double tape = 0;
    for (const QuiltPlan& q : plan.quilts)
        for (const Pass& p : q.passes)
            for (const Hold& h : p.holds)
                tape += h.length.in();
    put(Kind::tape, "tape", tape, 300, "in");
    put(Kind::closingTools, "closing tools", pins ? 2 : 0, 0);
    put(Kind::fabric, "backing: blue", 2.75 * quilts, 0, "yd");
    put(Kind::leftovers, "leftover batting pieces", 2 * quilts, 2 * quilts);
    put(Kind::joiningStrip, "joining strip", 44 * quilts, 0, "in");
}

} // namespace bastewright::testing

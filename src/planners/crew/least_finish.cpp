#include "planners/crew/least_finish.h"

#include "plan/trade_times.h"
#include "planners/crew/quilt_table.h"
#include "planners/crew/rests.h"
#include "planners/crew/slowest.h"
#include "planners/crew/step_times.h"
#include "planners/surface/helper_order.h"
#include "planners/surface/reachable.h"

#include <algorithm>
#include <cmath>

namespace bastewright {
namespace {

using namespace crew;
using namespace trade_times;

class LeastFinish {
public:
    LeastFinish(const Session& session, std::size_t job, const QuiltPlan& quilt,
                std::span<const PlacedPoint> points)
        : session_{session}
        , quilt_{quilt}
        , ways_{&wayOf(session.jobs[job])}
        , points_{pointsByPass(quilt, points)}
        , all_{pacesOf([](const Helper&) { return true; })}
        , layers_{pacesOf(lays)}
        , walkers_{pacesOf(walks)}
        , below_{pacesOf(looksBelow)}
        , comfortable_{easyReach(session.setting.helpers)} {
        std::vector<double> some;
        for (const double pace : all_) {
            some.push_back(pace);
            rates_.push_back(mostWorkInASecond(some));
        }
        if (const Way* instead = standInOf(session.jobs[job], session))
            ways_.push_back(instead);
    }

    Seconds seconds() const {
        std::size_t count = 0;
        for (const auto& some : points_)
            count += some.size();
        double sum = setUpSeconds(all_, count, true) + together(kHandOver, first(walkers_, 1));
        for (std::size_t k = 0; k < quilt_.passes.size(); ++k)
            sum += pass(k);
        return Seconds{static_cast<std::int64_t>(std::floor(withBreaks(sum)))};
    }

private:
    using Paces = std::span<const double>;

    /// Quickest first; where nobody may, anybody.
    std::vector<double> pacesOf(bool (*may)(const Helper&)) const {
        std::vector<double> out, others;
        for (const Helper& h : session_.setting.helpers)
            (may(h) ? out : others).push_back(soundPace(h.pace));
        if (out.empty())
            out = others.empty() ? std::vector{1.0} : others;
        std::ranges::sort(out, std::greater{});
        return out;
    }
    static Paces first(const std::vector<double>& paces, std::size_t n) {
        return Paces{paces}.first(std::min(n, paces.size()));
    }

    /// By as many of these as are quickest together.
    template <class Takes>
    static double least(const std::vector<double>& paces, Takes takes) {
        double best = takes(first(paces, 1));
        for (std::size_t n = 2; n <= paces.size(); ++n)
            best = std::min(best, takes(first(paces, n)));
        return best;
    }

    double pass(std::size_t index) const {
        const Pass& p = quilt_.passes[index];
        double sum = together(kUnderside, first(below_, 1));
        if (index > 0)
            sum += least(layers_, [&](Paces who) { return shiftSeconds(p, who); });
        if (!p.pulled) {
            std::size_t hands = 0;
            sum += 3 * least(layers_, [&](Paces who) { return laySeconds(p, index == 0, who); }) +
                   holdSeconds(holdsOf(p), all_, hands) + holdSeconds(clampsOf(p), all_, hands);
        }
        if (points_[index].empty())
            return sum;
        // Whichever is the quicker: what stands in where pins run short may be.
        double quickest = 0;
        for (const Way* way : ways_) {
            const double takes = steps(*way, index);
            quickest = way == ways_.front() ? takes : std::min(quickest, takes);
        }
        return sum + quickest;
    }

    double steps(const Way& way, std::size_t index) const {
        const Pass& p = quilt_.passes[index];
        const double work = pointsToWork(index);
        double sum = 0;
        for (const WayStep& step : way.steps) {
            const auto takes = [&](Paces who) { return stepSeconds(step, p, who); };
            switch (step.by) {
            case WayStep::By::zones:
                sum += call(step.seconds * work);
                break;
            case WayStep::By::irons:
                break;
            case WayStep::By::palm:
                sum += least(walkers_, takes);
                break;
            case WayStep::By::fold:
                sum += least(layers_, takes);
                break;
            case WayStep::By::nobody:
                sum += kCool;
                break;
            }
        }
        return sum;
    }

    /// Half as much again where even who gets farthest has to lean.
    double pointsToWork(std::size_t index) const {
        const auto& points = points_[index];
        if (quilt_.surface.floor)
            return double(points.size());
        const Rect deep =
            outOfReach(quilt_.passes[index].table, quilt_.surface.closed, comfortable_);
        const auto leaning = std::ranges::count_if(
            points, [&](const PlacedPoint& p) { return !deep.empty() && deep.contains(p.at); });
        return double(points.size()) + (kLeaningFactor - 1) * double(leaning);
    }

    /// Everybody who takes part steps up to a zone once at least.
    double call(double work) const {
        double best = 0, sum = 0;
        for (std::size_t n = 0; n < all_.size(); ++n) {
            sum += all_[n];
            const double t = (work + kStepUpToZone * sum) / rates_[n];
            best = n == 0 ? t : std::min(best, t);
        }
        return best;
    }

    double withBreaks(double work) const {
        const Setting& s = session_.setting;
        const bool told = !s.breaks.empty() || std::ranges::any_of(s.helpers, [](const Helper& h) {
            return !h.breaks.empty();
        });
        return s.proposeBreaks && !told ? work + leastRests(0, work, kBreakAtLast) : work;
    }

    const Session& session_;
    const QuiltPlan& quilt_;
    std::vector<const Way*> ways_;                 ///< that its passes may be basted in
    std::vector<std::vector<PlacedPoint>> points_; ///< by pass
    std::vector<double> all_, layers_, walkers_, below_;
    std::vector<double> rates_; ///< of the quickest one, two, …
    Length comfortable_;
};

} // namespace

Seconds leastFinish(const Session& session, std::size_t job, const QuiltPlan& quilt,
                    std::span<const PlacedPoint> points) {
    return LeastFinish{session, job, quilt, points}.seconds();
}

} // namespace bastewright

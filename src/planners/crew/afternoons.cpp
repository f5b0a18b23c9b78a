#include "planners/crew/afternoons.h"

#include "plan/call.h"
#include "plan/trade_times.h"
#include "planners/crew/random.h"
#include "planners/crew/slowest.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <tuple>
#include <unordered_map>

namespace bastewright::crew {
namespace {

using namespace trade_times;

constexpr std::size_t kAfternoons = 1'000, kFewest = 200, kDraws = 600'000;

/// Normal deviates in pairs (Box and Muller 1958).
class Normal {
public:
    explicit Normal(std::uint64_t seed)
        : random_{seed} {}
    double operator()() {
        if (spare_) {
            const double out = *spare_;
            spare_.reset();
            return out;
        }
        const double r = std::sqrt(-2 * std::log(1 - random_.unit()));
        const double angle = 2 * std::numbers::pi * random_.unit();
        spare_ = r * std::sin(angle);
        return r * std::cos(angle);
    }
    double unit() { return random_.unit(); }

private:
    Random random_;
    std::optional<double> spare_;
};

/// A task, or a break that occupies its people.
struct Stint {
    double seconds = 0, spent = 0;
    double start = 0; ///< as planned
    TaskKind kind = TaskKind::placeOpen;
    bool isBreak = false, ofZone = false, apart = false;
    std::vector<std::size_t> people{}, after{};
};

class Afternoons {
public:
    Afternoons(std::span<const Task> tasks, std::span<const PlannedBreak> breaks,
               const AfternoonFrom& from)
        : from_{from} {
        for (const Hand& h : from.hands)
            indexOf(h.helper.name);
        std::unordered_map<std::string_view, std::size_t> ids;
        std::size_t nextBreak = 0;
        const auto breaksUntil = [&](Seconds start) {
            for (; nextBreak < breaks.size() && breaks[nextBreak].start <= start; ++nextBreak)
                addBreak(breaks[nextBreak]);
        };
        for (const Task* task : inOneOrder(tasks)) {
            const Task& t = *task;
            breaksUntil(t.start);
            ids.emplace(t.id, stints_.size());
            Stint p{.seconds = double((t.end - t.start).count()),
                    .start = double(t.start.count()),
                    .kind = t.kind,
                    .ofZone = isOfZone(t.kind)};
            if (const auto at = from.inHand.find(t.id); at != from.inHand.end())
                p.spent = double(at->second.count());
            for (const auto& who : t.people)
                p.people.push_back(indexOf(who));
            for (const auto& id : t.after)
                if (const auto at = ids.find(id); at != ids.end())
                    p.after.push_back(at->second);
            // Everybody at their own part: the plan has the middle of the slowest already.
            p.apart =
                (t.kind == TaskKind::clamp || t.kind == TaskKind::reclamp) && t.people.size() > 1;
            if (p.apart)
                p.seconds /=
                    middleOfSlowest(std::vector<double>(t.people.size(), 1.0), spreadOfWork());
            stints_.push_back(std::move(p));
        }
        ends_.resize(stints_.size());
        free_.resize(names_.size());
        slow_.resize(names_.size());
    }

    double once(Normal& normal) {
        const double now = double(from_.now.count());
        const double open = from_.common.spread * normal();
        const double common = from_.common.middle + open;
        for (std::size_t p = 0; p < names_.size(); ++p) {
            const PaceDoubt& d = doubts_[p];
            slow_[p] =
                std::exp(from_.common.middle + d.ofCommon * open + d.middle + d.spread * normal());
            free_[p] = std::max(now, p < from_.hands.size() ? double(from_.hands[p].from) : now);
        }
        const double all = std::exp(common);
        double last = now;
        for (std::size_t k = 0; k < stints_.size(); ++k) {
            const Stint& p = stints_[k];
            double start = now;
            for (const std::size_t b : p.after)
                start = std::max(start, ends_[b]);
            for (const std::size_t who : p.people)
                start = std::max(start, free_[who]);
            if (!p.isBreak)
                start = afterOwnBreaks(p, start);
            ends_[k] = start + length(p, all, normal);
            for (const std::size_t who : p.people)
                free_[who] = ends_[k];
            if (!p.isBreak)
                last = std::max(last, ends_[k]);
        }
        return last;
    }

private:
    /// By start, then by who does it: names of zones have no part in what chance does to them.
    std::vector<const Task*> inOneOrder(std::span<const Task> tasks) {
        std::vector<std::tuple<Seconds, std::size_t, int, const Task*>> out;
        for (const Task& t : tasks)
            out.emplace_back(t.start, t.people.empty() ? 0 : indexOf(t.people.front()), t.job, &t);
        std::ranges::stable_sort(out, {}, [](const auto& t) {
            return std::tuple{std::get<0>(t), std::get<1>(t), std::get<2>(t)};
        });
        std::vector<const Task*> in;
        for (const auto& t : out)
            in.push_back(std::get<3>(t));
        return in;
    }

    std::size_t indexOf(std::string_view name) {
        const auto [at, isNew] = index_.try_emplace(std::string{name}, names_.size());
        if (isNew) {
            names_.emplace_back(name);
            const auto known = from_.people.find(at->first);
            doubts_.push_back(known == from_.people.end() ? PaceDoubt{0, kOfPeople, 1}
                                                          : known->second);
        }
        return at->second;
    }

    void addBreak(const PlannedBreak& b) {
        if (b.end <= from_.now)
            return;
        Stint p{.seconds = double((b.end - std::max(b.start, from_.now)).count()),
                .start = double(b.start.count()),
                .isBreak = true};
        if (b.people
                .empty()) { // all who are there then: nobody waits for who comes later or is gone
            for (std::size_t who = 0; who < from_.hands.size(); ++who)
                if (from_.hands[who].from < b.end.count() &&
                    b.start.count() < from_.hands[who].until)
                    p.people.push_back(who);
        } else {
            for (const auto& who : b.people)
                p.people.push_back(indexOf(who));
        }
        stints_.push_back(std::move(p));
    }

    /// Nobody begins in a break of their own.
    double afterOwnBreaks(const Stint& p, double start) const {
        for (const std::size_t who : p.people)
            if (who < from_.hands.size())
                for (const auto& [from, until] : from_.hands[who].away)
                    if (start >= from && start < until)
                        start = until;
        return start;
    }

    double length(const Stint& p, double all, Normal& normal) const {
        if (p.isBreak || p.people.empty())
            return p.isBreak ? p.seconds : std::max(p.seconds - p.spent, 0.0);
        double out = 0;
        if (p.apart || p.ofZone) {
            for (const std::size_t who : p.people)
                out = std::max(out, p.seconds * slow_[who] * std::exp(kOfWork * normal()));
        } else {
            out = p.seconds * all * std::exp(kOfTeam * normal());
            if (p.kind == TaskKind::smooth && normal.unit() < kSmoothAgain)
                out *= 2;
        }
        return std::max(out - p.spent, out / 10);
    }

    const AfternoonFrom& from_;
    std::vector<Stint> stints_;
    std::vector<std::string> names_;
    std::vector<PaceDoubt> doubts_;
    std::unordered_map<std::string, std::size_t> index_;
    std::vector<double> ends_, free_, slow_;
};

Seconds whole(double seconds) {
    return Seconds{std::llround(seconds)};
}

} // namespace

AfternoonFrom afternoonOf(const std::vector<Hand>& hands, Seconds now) {
    return {.now = now, .hands = hands, .people = {}, .common = {0, kInCommon, 1}, .inHand = {}};
}

FinishRange finishRange(std::span<const Task> tasks, std::span<const PlannedBreak> breaks,
                        const AfternoonFrom& from) {
    if (tasks.empty())
        return {from.now, from.now, from.now};
    Afternoons afternoons{tasks, breaks, from};
    Normal normal{20'240'229};
    std::vector<double> ends(std::clamp(kDraws / tasks.size(), kFewest, kAfternoons));
    for (double& e : ends)
        e = afternoons.once(normal);
    std::ranges::sort(ends);
    const auto at = [&](double share) {
        return ends[static_cast<std::size_t>(share * double(ends.size() - 1) + 0.5)];
    };
    return {whole(at(0.05)), whole(at(0.5)), whole(at(0.95))};
}

} // namespace bastewright::crew

#include "planners/crew/sweep.h"

#include "planners/crew/bound.h"
#include "planners/crew/parts.h"
#include "planners/crew/random.h"

#include <algorithm>
#include <cstdlib>
#include <numeric>

namespace bastewright::crew {
namespace {

std::size_t ix(int i) {
    return static_cast<std::size_t>(i);
}

class Sweeps {
public:
    Sweeps(const Problem& whole, const Schedule& first, const SearchOptions& options,
           std::stop_token stop)
        : whole_(whole)
        , options_(options)
        , stop_(std::move(stop))
        , random_(options.seed)
        , best_(first)
        , left_(static_cast<double>(options.schedules) * static_cast<double>(whole.size())) {
        for (const auto& strand : strandsOf(whole)) {
            auto& sections = strands_.emplace_back();
            for (auto& part : sectionsOf(whole, strand))
                sections.push_back(extract(whole, std::move(part)));
        }
    }

    Schedule run() {
        learn(best_);
        const bool several = strands_.size() > 1;
        for (int k = 0, stale = 0; left_ > 0 && !done() && stale < kStale; ++k) {
            const double weight = !several ? 0 : k < 4 ? 0.25 * (1 << k) : 2.5 * random_.unit();
            effort_ = several ? 8 : 8 << std::min(k, 4);
            const bool improved = sweep(weight, k);
            // One surface has only its sections to vary.
            stale = improved || several ? 0 : stale + 1;
        }
        return best_;
    }

private:
    static constexpr int kStale = 4;

    bool done() const {
        return stop_.stop_requested() || (best_.overtime == 0 && best_.finish <= options_.bound);
    }

    /// What still lies ahead of each section, from a schedule of the whole.
    void learn(const Schedule& s) {
        ahead_.assign(strands_.size(), {});
        for (std::size_t k = 0; k < strands_.size(); ++k) {
            int last = 0;
            for (const Extract& e : strands_[k])
                for (const int i : e.activities)
                    last = std::max(last, s.end[ix(i)]);
            for (const Extract& e : strands_[k]) {
                int begin = kNever;
                for (const int i : e.activities)
                    begin = std::min(begin, s.start[ix(i)]);
                ahead_[k].push_back(last - begin);
            }
        }
    }

    bool sweep(double weight, int round) {
        Schedule s;
        const std::size_t n = whole_.activities.size();
        s.start.assign(n, 0);
        s.end.assign(n, 0);
        s.crew.assign(n, {});
        s.strip.assign(n, -1);
        s.place.assign(n, 0);
        booked_ = whole_.booked;
        std::vector<std::size_t> next(strands_.size(), 0);
        std::vector<int> ready(strands_.size(), 0);
        std::vector<double> jitter(strands_.size(), 0);
        if (round >= 4)
            for (double& j : jitter)
                j = 600 * random_.unit();
        for (;;) {
            std::size_t at = strands_.size();
            double atKey = 0;
            for (std::size_t k = 0; k < strands_.size(); ++k) {
                if (next[k] == strands_[k].size())
                    continue;
                const double key = ready[k] - weight * (ready[k] + ahead_[k][next[k]]) + jitter[k];
                if (at == strands_.size() || key < atKey) {
                    at = k;
                    atKey = key;
                }
            }
            if (at == strands_.size())
                break;
            ready[at] = place(strands_[at][next[at]], ready[at], s);
            ++next[at];
        }
        finish(s);
        if (!better(s, best_))
            return false;
        best_ = std::move(s);
        learn(best_);
        return true;
    }

    /// Searches one section from when it is ready on; returns when it has ended.
    int place(Extract& section, int ready, Schedule& s) {
        Problem& p = section.problem;
        for (std::size_t h = 0; h < p.people.size(); ++h) {
            p.people[h] = whole_.people[h];
            p.people[h].from = std::max(p.people[h].from, ready);
        }
        p.booked.clear();
        for (const Booking& b : booked_)
            if (b.end > ready)
                p.booked.push_back(b);
        p.from = ready;
        Schedule plan = construct(p);
        left_ -= p.size();
        if (p.size() > 2) {
            const int bound = lowerBound(p, {.branches = 2'000});
            const int schedules = effort_ * std::min(25, p.size());
            Found found =
                search(p, plan, {.schedules = schedules, .bound = bound, .seed = ++seed_}, stop_);
            plan = std::move(found.schedule);
            left_ -= static_cast<double>(found.built) * p.size();
        }
        int end = ready;
        for (std::size_t k = 0; k < plan.start.size(); ++k) {
            const auto i = ix(section.activities[k]);
            s.start[i] = plan.start[k];
            s.end[i] = plan.end[k];
            s.crew[i] = plan.crew[k];
            s.strip[i] = plan.strip[k] < 0 ? -1 : section.strips[ix(plan.strip[k])];
            s.place[i] = plan.place[k];
            end = std::max(end, plan.end[k]);
            for (const int h : plan.crew[k])
                booked_.push_back({h, {}, plan.start[k], plan.end[k]});
            if (!p.activities[k].demand.empty())
                booked_.push_back({-1, p.activities[k].demand, plan.start[k], plan.end[k]});
        }
        return end;
    }

    void finish(Schedule& s) const {
        std::vector<int> over(whole_.people.size(), 0);
        for (std::size_t i = 0; i < s.start.size(); ++i) {
            s.finish = std::max(s.finish, s.end[i]);
            for (const int p : s.crew[i])
                over[ix(p)] = std::max(over[ix(p)], s.end[i] - whole_.people[ix(p)].until);
        }
        s.overtime = std::accumulate(over.begin(), over.end(), 0);
    }

    const Problem& whole_;
    const SearchOptions options_;
    std::stop_token stop_;
    Random random_;
    std::vector<std::vector<Extract>> strands_; ///< the sections of each
    std::vector<std::vector<int>> ahead_; ///< seconds from each section's begin to its strand's end
    std::vector<Booking> booked_;
    Schedule best_;
    double left_;    ///< activities that may still be placed
    int effort_ = 8; ///< schedules for each activity of a section, up to 25 of them
    std::uint64_t seed_ = 0;
};

} // namespace

Schedule searchBySweeps(const Problem& problem, const Schedule& first, const SearchOptions& options,
                        std::stop_token stop) {
    return Sweeps{problem, first, options, std::move(stop)}.run();
}

} // namespace bastewright::crew

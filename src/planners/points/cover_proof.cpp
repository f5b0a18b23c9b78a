#include "planners/points/cover_proof.h"

#include "planners/points/holes.h"

#include <bit>
#include <cmath>
#include <set>

namespace bastewright::points {
namespace {

using Bits = std::vector<std::uint64_t>;

std::size_t index(int i) {
    return static_cast<std::size_t>(i);
}
void set(Bits& bits, int i) {
    if (bits.size() <= index(i) / 64)
        bits.resize(index(i) / 64 + 1, 0);
    bits[index(i) / 64] |= std::uint64_t{1} << (i % 64);
}
int common(const Bits& a, const Bits& b) {
    int n = 0;
    for (std::size_t k = 0; k < std::min(a.size(), b.size()); ++k)
        n += std::popcount(a[k] & b[k]);
    return n;
}
void remove(Bits& from, const Bits& what) {
    for (std::size_t k = 0; k < std::min(from.size(), what.size()); ++k)
        from[k] &= ~what[k];
}
template <class F>
void each(const Bits& bits, F&& f) {
    for (std::size_t k = 0; k < bits.size(); ++k)
        for (std::uint64_t word = bits[k]; word != 0; word &= word - 1)
            f(static_cast<int>(64 * k) + std::countr_zero(word));
}

class Prover {
public:
    Prover(const CoverTask& task, long nodes, std::stop_token stop)
        : task_{task}
        , limit_{nodes}
        , stop_{std::move(stop)} {
        for (std::size_t c = 0; c < task.orbits.size(); ++c)
            if (!breaksGap(task.orbits[c], task.orbits[c], true) &&
                !breaksGap(task.orbits[c], task.fixed, false))
                used_.push_back(static_cast<int>(c));
        rows_.resize(used_.size());
        clash_.resize(used_.size());
        for (std::size_t a = 0; a < used_.size(); ++a) {
            set(all_, static_cast<int>(a));
            for (std::size_t b = 0; b < a; ++b)
                if (breaksGap(places(static_cast<int>(a)), places(static_cast<int>(b)), false)) {
                    set(clash_[a], static_cast<int>(b));
                    set(clash_[b], static_cast<int>(a));
                }
        }
        for (const Field& f : task.fields)
            raster(f);
    }

    CoverProof run() {
        CoverProof out;
        int most = 1, everything = 0;
        for (int c = 0; c < std::ssize(used_); ++c)
            everything += cost(c);
        // What all candidates together do not cover, none do.
        for (; most < task_.below && most <= everything; ++most) {
            most_ = most;
            cut_ = done_ = false;
            nodes_ = 0;
            search(0, all_);
            out.nodes += nodes_;
            if (best_ > 0 || cut_)
                break;
        }
        out.bound = most;
        out.cost = best_;
        out.choice = choice_;
        out.ended = !cut_;
        return out;
    }

private:
    int cost(int c) const {
        return task_.costs.empty() ? 1 : task_.costs[index(used_[index(c)])];
    }
    const Spots& places(int c) const { return task_.orbits[index(used_[index(c)])]; }

    bool breaksGap(const Spots& a, const Spots& b, bool same) const {
        for (std::size_t i = 0; i < a.size(); ++i)
            for (std::size_t k = same ? i + 1 : 0; k < b.size(); ++k)
                if (distanceSquared(a[i], b[k]) < squared(task_.gap - 1e-7))
                    return true;
        return false;
    }

    bool covers(const Spots& places, Spot w) const {
        return std::any_of(places.begin(), places.end(), [&](Spot p) {
            return distanceSquared(p, w) <= squared(task_.radius - 2e-6);
        });
    }

    /// Witnesses that the same candidates cover (images of each other) count once.
    void require(Spot w) {
        if (covers(task_.fixed, w))
            return;
        Bits by;
        for (int c = 0; c < std::ssize(used_); ++c)
            if (covers(places(c), w))
                set(by, c);
        if (!known_.insert(by).second)
            return;
        const int row = static_cast<int>(coverers_.size());
        set(open_, row);
        each(by, [&](int c) { set(rows_[index(c)], row); });
        coverers_.push_back(std::move(by));
    }

    void raster(const Field& f) {
        const double pitch = task_.radius / 4;
        const auto steps = [&](double length) {
            return std::max(1, static_cast<int>(std::ceil(length / pitch)));
        };
        const int nx = steps(f.width()), ny = steps(f.length());
        for (int j = 0; j <= ny; ++j)
            for (int i = 0; i <= nx; ++i)
                require({f.x0 + f.width() * i / nx, f.y0 + f.length() * j / ny});
    }

    /// Adds what the present choice leaves open; true where that is nothing.
    bool judge() {
        Spots all = task_.fixed;
        for (const int c : chosen_)
            all.insert(all.end(), places(c).begin(), places(c).end());
        bool covered = true;
        for (const Field& f : task_.fields)
            for (const Spot w : holes(all, f, task_.radius)) {
                require(w);
                covered = false;
            }
        return covered;
    }

    void found(int spent) {
        std::vector<int> choice;
        for (const int c : chosen_)
            choice.push_back(used_[index(c)]);
        std::sort(choice.begin(), choice.end());
        if (best_ == 0)
            choice_ = choice;
        best_ = spent;
        done_ = !task_.onFound || !task_.onFound(choice, spent);
    }

    void search(int spent, Bits free) {
        if (cut_ || done_)
            return;
        if (++nodes_ > limit_ || ((nodes_ & 255) == 0 && stop_.stop_requested())) {
            cut_ = true;
            return;
        }
        Bits open;
        for (bool judged = false;;) {
            open = open_;
            for (const int c : chosen_)
                remove(open, rows_[index(c)]);
            if (std::any_of(open.begin(), open.end(), [](auto w) { return w != 0; }))
                break;
            // What was missed but cannot be told apart from a witness is lost to numbers only.
            if (judged || judge()) {
                if (!judged)
                    found(spent);
                return;
            }
            judged = true;
        }
        const int budget = most_ - spent;
        // At the rate of the best candidate, what may still be spent must cover what is open.
        const int left = common(open, open);
        double rate = 0;
        std::vector<int> gain(used_.size(), 0);
        each(free, [&](int c) {
            if (cost(c) > budget)
                return;
            gain[index(c)] = common(rows_[index(c)], open);
            rate = std::max(rate, static_cast<double>(gain[index(c)]) / cost(c));
        });
        if (left > rate * budget + 1e-9)
            return;
        int fewest = std::numeric_limits<int>::max(), at = -1;
        each(open, [&](int w) {
            if (const int n = common(coverers_[index(w)], free); n < fewest) {
                fewest = n;
                at = w;
            }
        });
        std::vector<int> branches;
        each(coverers_[index(at)], [&](int c) {
            if (gain[index(c)] > 0 && (free[index(c) / 64] >> (c % 64) & 1) != 0)
                branches.push_back(c);
        });
        std::stable_sort(branches.begin(), branches.end(), [&](int a, int b) {
            return gain[index(a)] * cost(b) > gain[index(b)] * cost(a);
        });
        for (const int c : branches) {
            if (left - gain[index(c)] > rate * (budget - cost(c)) + 1e-9)
                continue;
            free[index(c) / 64] &= ~(std::uint64_t{1} << (c % 64));
            Bits next = free;
            remove(next, clash_[index(c)]);
            chosen_.push_back(c);
            search(spent + cost(c), std::move(next));
            chosen_.pop_back();
        }
    }

    const CoverTask& task_;
    long limit_, nodes_ = 0;
    std::stop_token stop_;
    std::vector<int> used_; ///< candidates that keep the gap by themselves
    std::vector<Bits> rows_, coverers_, clash_;
    std::set<Bits> known_;
    Bits all_, open_;
    std::vector<int> chosen_, choice_;
    int most_ = 0, best_ = 0;
    bool cut_ = false, done_ = false;
};

} // namespace

CoverProof prove(const CoverTask& task, long nodes, std::stop_token stop) {
    return Prover{task, nodes, std::move(stop)}.run();
}

} // namespace bastewright::points

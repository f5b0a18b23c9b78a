#include "planners/passes/cover_weighing.h"

#include <algorithm>
#include <random>
#include <set>

namespace bastewright {
namespace {

class Weighing {
public:
    explicit Weighing(const CoverNeeds& needs)
        : needs_{needs}
        , weight_(needs.count(), 1)
        , times_(needs.count(), 0)
        , place_(needs.count(), 0)
        , who_(needs.count(), 0)
        , needsOf_(needs.windows())
        , score_(needs.windows(), 0)
        , moved_(needs.windows(), 0)
        , in_(needs.windows(), 0) {
        eachNeed(needs.all(), [&](std::size_t need) {
            open(need);
            for (const std::size_t i : needs_.by(need)) {
                score_[i] += 1;
                needsOf_[i].push_back(need);
            }
        });
    }

    void run(std::size_t count, const CoverSearch& limits,
             const std::function<bool(const std::vector<Window>&)>& offer) {
        std::set<std::vector<Window>> found;
        while (!open_.empty())
            add(mostWanted(needs_.by(open_.front()), none()));
        for (int step = 1; step <= limits.steps; ++step) {
            if (limits.stop.stop_requested())
                break;
            while (size_ > count)
                take(leastMissed(none()));
            if (open_.empty()) {
                if (const auto [at, isNew] = found.insert(windows()); isNew && !offer(*at))
                    break;
                take(anyChosen());
            }
            std::size_t gone = none();
            if (size_ == count) {
                gone = leastMissed(last_);
                if (gone == none())
                    break;
                take(gone);
                moved_[gone] = step;
            }
            if (open_.empty())
                continue; // fewer do as well
            const std::size_t need = open_[engine_() % open_.size()];
            last_ = mostWanted(needs_.by(need), gone);
            if (last_ == none())
                last_ = gone; // only it can
            add(last_);
            moved_[last_] = step;
            for (const std::size_t n : open_) {
                ++weight_[n];
                for (const std::size_t i : needs_.by(n))
                    ++score_[i];
            }
        }
    }

private:
    std::size_t none() const { return needs_.windows(); }

    void open(std::size_t need) {
        place_[need] = open_.size();
        open_.push_back(need);
    }
    void close(std::size_t need) {
        open_[place_[need]] = open_.back();
        place_[open_.back()] = place_[need];
        open_.pop_back();
    }
    /// `score_` of a window that is chosen is what would be left open without it, of another what
    /// it would close.
    void add(std::size_t window) {
        for (const std::size_t need : needsOf_[window]) {
            if (times_[need] == 0) {
                close(need);
                for (const std::size_t i : needs_.by(need))
                    score_[i] -= i == window ? 0 : weight_[need];
            } else if (times_[need] == 1) {
                score_[who_[need]] -= weight_[need];
            }
            ++times_[need];
            who_[need] += window;
        }
        in_[window] = 1;
        ++size_;
    }
    void take(std::size_t window) {
        in_[window] = 0;
        --size_;
        for (const std::size_t need : needsOf_[window]) {
            who_[need] -= window;
            if (--times_[need] == 0) {
                open(need);
                for (const std::size_t i : needs_.by(need))
                    score_[i] += i == window ? 0 : weight_[need];
            } else if (times_[need] == 1) {
                score_[who_[need]] += weight_[need];
            }
        }
    }

    std::size_t mostWanted(const std::vector<std::size_t>& of, std::size_t but) const {
        std::size_t best = none();
        for (const std::size_t i : of)
            if (in_[i] == 0 && i != but &&
                (best == none() || score_[i] > score_[best] ||
                 (score_[i] == score_[best] && moved_[i] < moved_[best])))
                best = i;
        return best;
    }
    std::size_t leastMissed(std::size_t but) const {
        std::size_t best = none();
        for (std::size_t i = 0; i < in_.size(); ++i)
            if (in_[i] == 1 && i != but &&
                (best == none() || score_[i] < score_[best] ||
                 (score_[i] == score_[best] && moved_[i] < moved_[best])))
                best = i;
        return best;
    }
    std::size_t anyChosen() {
        std::size_t k = engine_() % size_;
        for (std::size_t i = 0;; ++i)
            if (in_[i] == 1 && k-- == 0)
                return i;
    }
    std::vector<Window> windows() const {
        std::vector<Window> out;
        for (std::size_t i = 0; i < in_.size(); ++i)
            if (in_[i] == 1)
                out.push_back(needs_.window(i));
        std::ranges::sort(out);
        return out;
    }

    const CoverNeeds& needs_;
    std::vector<int> weight_, times_;
    std::vector<std::size_t> place_; ///< of an open need in `open_`
    std::vector<std::size_t> who_;   ///< sum of the indices of the chosen windows that cover a need
    std::vector<std::vector<std::size_t>> needsOf_; ///< by window
    std::vector<std::size_t> open_;                 ///< needs that no chosen window covers
    std::vector<int> score_, moved_;
    std::vector<char> in_;
    std::size_t size_ = 0; ///< windows chosen
    std::size_t last_ = ~std::size_t{0};
    std::mt19937 engine_{1}; // NOLINT: the same search every time
};

} // namespace

void coversByWeighing(const CoverNeeds& needs, std::size_t count, const CoverSearch& limits,
                      const std::function<bool(const std::vector<Window>&)>& take) {
    if (needs.sound() && needs.coverable() && count > 0)
        Weighing{needs}.run(count, limits, take);
}

} // namespace bastewright

#include "planners/points/cover_search.h"

#include <array>
#include <cassert>
#include <cmath>
#include <utility>

namespace bastewright::points {

CoverSearch::CoverSearch(const Field& field, double radius, double gap)
    : field_{field}
    , radius_{radius - 2 * 1e-6}
    , gap_{gap - 1e-7}
    , candidateBuckets_{field, radius / 2}
    , witnessBuckets_{field, radius / 2}
    , chosenBuckets_{field, radius} {}

int CoverSearch::addCandidate(std::span<const Spot> places, int cost) {
    for (std::size_t i = 0; i < places.size(); ++i)
        for (std::size_t k = i + 1; k < places.size(); ++k)
            if (distanceSquared(places[i], places[k]) < gap_ * gap_)
                return -1;
    const int id = size();
    Info info;
    info.firstPlace = static_cast<int>(places_.size());
    info.places = static_cast<int>(places.size());
    info.cost = cost;
    int score = 0, blocked = 0;
    covers_.emplace_back();
    for (const Spot p : places) {
        places_.push_back(p);
        if (begun_) // those chosen before do not know it
            candidateBuckets_.eachNear(p, gap_, [&](int c, Spot) {
                if (c != id && !tooNear_[at(c)].empty() && tooNear_[at(c)].back() != id) {
                    tooNear_[at(c)].push_back(id);
                    blocked += info_[at(c)].chosen ? 1 : 0;
                }
            });
        candidateBuckets_.add(id, p);
        witnessBuckets_.eachNear(p, radius_, [&](int w, Spot) {
            auto& of = coverers_[at(w)];
            if (of.last() == id)
                return;
            of.add(id);
            covers_.back().push_back(w);
            if (witnesses_[at(w)].covers == 0)
                score += witnesses_[at(w)].weight;
        });
    }
    info_.push_back(info);
    if (score_.size() < info_.size())
        score_.resize(score_.size() + 4);
    score_[at(id)] = score;
    blocked_.push_back(blocked);
    tooNear_.emplace_back();
    seen_.push_back(0);
    chosenIndex_.push_back(-1);
    return id;
}

bool CoverSearch::addWitness(Spot spot) {
    const int w = static_cast<int>(witnesses_.size());
    Coverers by;
    std::uint64_t sum = 0;
    ++looked_;
    candidateBuckets_.eachNear(spot, radius_, [&](int id, Spot) {
        if (std::exchange(seen_[at(id)], looked_) == looked_)
            return;
        by.add(id);
        sum += Dice{static_cast<std::uint64_t>(id)}.roll();
    });
    if (by.count == 0)
        return false;
    const auto alike = known_.equal_range(sum);
    for (auto it = alike.first; it != alike.second; ++it)
        if (const auto& other = coverers_[at(it->second)];
            other.count == by.count && other.all([&](int c) { return seen_[at(c)] == looked_; }))
            return true; // as another: where candidates are orbits, its image
    known_.emplace(sum, w);
    by.sort();
    Witness witness;
    by.each([&](int c) {
        covers_[at(c)].push_back(w);
        if (info_[at(c)].chosen)
            ++witness.covers, witness.exclusive ^= c;
    });
    coverers_.push_back(std::move(by));
    witnesses_.push_back(witness);
    witnessBuckets_.add(w, spot);
    if (witness.covers == 0) {
        open(w);
        raise(w, witness.weight);
    } else if (witness.covers == 1) {
        score_[at(witness.exclusive)] += witness.weight;
    }
    return true;
}

std::span<const Spot> CoverSearch::places(int candidate) const {
    const Info& i = info_[at(candidate)];
    return std::span{places_}.subspan(at(i.firstPlace), at(i.places));
}

/// Itself among them, so that a candidate without others near it is not looked at again.
void CoverSearch::findTooNear(int candidate) {
    begun_ = true;
    auto& near = tooNear_[at(candidate)];
    ++looked_;
    for (const Spot p : places(candidate))
        candidateBuckets_.eachNear(p, gap_, [&](int c, Spot) {
            if (std::exchange(seen_[at(c)], looked_) != looked_)
                near.push_back(c);
        });
}

void CoverSearch::raise(int witness, int by) {
    using Lanes = std::array<int, 4>;
    static constexpr auto kLanes = [] {
        std::array<Lanes, 16> all{};
        for (std::size_t which = 0; which < all.size(); ++which)
            for (std::size_t i = 0; i < 4; ++i)
                all[which][i] = (which >> i & 1) != 0 ? -1 : 0;
        return all;
    }();
    // Copied out and in whole, so that the compiler makes one instruction of four.
    for (const Coverers::Four four : coverers_[at(witness)].fours) {
        int* const where = &score_[at(four.first)];
        Lanes scores;
        std::copy_n(where, 4, scores.begin());
        for (std::size_t i = 0; i < 4; ++i)
            scores[i] += by & kLanes[four.which][i];
        std::copy_n(scores.begin(), 4, where);
    }
}

void CoverSearch::open(int witness) {
    witnesses_[at(witness)].openIndex = static_cast<int>(open_.size());
    open_.push_back(witness);
}

void CoverSearch::close(int witness) {
    const int index = witnesses_[at(witness)].openIndex;
    open_[at(index)] = open_.back();
    witnesses_[at(open_.back())].openIndex = index;
    open_.pop_back();
    witnesses_[at(witness)].openIndex = -1;
}

void CoverSearch::choose(int candidate) {
    Info& info = info_[at(candidate)];
    assert(!info.chosen);
    info.chosen = true;
    info.changed = clock_;
    chosenIndex_[at(candidate)] = static_cast<int>(chosen_.size());
    chosen_.push_back(candidate);
    if (movable(candidate))
        active_.push_back(candidate);
    cost_ += info.cost;
    for (const Spot p : places(candidate))
        chosenBuckets_.add(candidate, p);
    if (tooNear_[at(candidate)].empty())
        findTooNear(candidate);
    for (const int c : tooNear_[at(candidate)])
        ++blocked_[at(c)];
    --blocked_[at(candidate)];
    int alone = 0;
    for (const int w : covers_[at(candidate)]) {
        Witness& witness = witnesses_[at(w)];
        if (witness.covers == 0) {
            close(w);
            raise(w, -witness.weight);
            alone += witness.weight;
        } else if (witness.covers == 1) {
            score_[at(witness.exclusive)] -= witness.weight;
        }
        ++witness.covers;
        witness.exclusive ^= candidate;
    }
    score_[at(candidate)] = alone;
}

void CoverSearch::drop(int candidate) {
    Info& info = info_[at(candidate)];
    assert(info.chosen);
    info.chosen = false;
    info.changed = clock_;
    const int index = chosenIndex_[at(candidate)];
    chosen_[at(index)] = chosen_.back();
    chosenIndex_[at(chosen_.back())] = index;
    chosen_.pop_back();
    chosenIndex_[at(candidate)] = -1;
    if (const auto it = std::find(active_.begin(), active_.end(), candidate); it != active_.end()) {
        *it = active_.back();
        active_.pop_back();
    }
    cost_ -= info.cost;
    for (const Spot p : places(candidate))
        chosenBuckets_.remove(candidate, p);
    for (const int c : tooNear_[at(candidate)])
        --blocked_[at(c)];
    ++blocked_[at(candidate)];
    int gain = 0;
    for (const int w : covers_[at(candidate)]) {
        Witness& witness = witnesses_[at(w)];
        --witness.covers;
        witness.exclusive ^= candidate;
        if (witness.covers == 0) {
            open(w);
            raise(w, witness.weight);
            gain += witness.weight;
        } else if (witness.covers == 1) {
            score_[at(witness.exclusive)] += witness.weight;
        }
    }
    score_[at(candidate)] = gain;
}

void CoverSearch::keep(int candidate) {
    if (!chosen(candidate))
        choose(candidate);
    info_[at(candidate)].kept = true;
}

bool CoverSearch::movable(int candidate) const {
    if (info_[at(candidate)].kept)
        return false;
    const auto own = places(candidate);
    return !window_ ||
           std::all_of(own.begin(), own.end(), [&](Spot p) { return window_->contains(p); });
}

std::vector<int> CoverSearch::choice() const {
    std::vector<int> out = chosen_;
    std::sort(out.begin(), out.end());
    return out;
}

void CoverSearch::restore(const std::vector<int>& wanted) {
    for (const int c : choice())
        if (!std::binary_search(wanted.begin(), wanted.end(), c))
            drop(c);
    for (const int c : wanted)
        if (!chosen(c))
            choose(c);
}

int CoverSearch::leastLoss(long now, int tabu) const {
    int best = -1;
    double bestLoss = 0;
    for (const int c : active_) {
        const Info& i = info_[at(c)];
        if (c == tabu || i.changed >= now)
            continue;
        const double loss = static_cast<double>(score_[at(c)]) / i.cost;
        if (best < 0 || loss < bestLoss ||
            (loss == bestLoss && (i.changed < info_[at(best)].changed ||
                                  (i.changed == info_[at(best)].changed && c < best)))) {
            best = c;
            bestLoss = loss;
        }
    }
    return best;
}

int CoverSearch::bestFor(int witness, int room) const {
    int best = -1;
    std::int64_t bestScore = 0, bestCost = 1;
    coverers_[at(witness)].each([&](int c) {
        const Info& i = info_[at(c)];
        const std::int64_t gain = score_[at(c)] * bestCost, needed = bestScore * i.cost;
        if (i.cost > room || gain < needed)
            return;
        if (best >= 0 && gain == needed && i.changed >= info_[at(best)].changed)
            return;
        if (!movable(c) || clashes(c))
            return;
        best = c;
        bestScore = score_[at(c)];
        bestCost = i.cost;
    });
    return best;
}

/// Nothing fits between the points around: those nearest to the most useful
/// candidate make way.
bool CoverSearch::makeWay(int witness, int room) {
    int best = -1;
    coverers_[at(witness)].each([&](int c) {
        if (cost(c) <= room && movable(c) && (best < 0 || score_[at(c)] > score_[at(best)]))
            best = c;
    });
    if (best < 0)
        return false;
    std::vector<int> clash;
    for (const Spot p : places(best))
        chosenBuckets_.eachNear(p, gap_, [&](int id, Spot) { clash.push_back(id); });
    std::sort(clash.begin(), clash.end());
    clash.erase(std::unique(clash.begin(), clash.end()), clash.end());
    if (std::any_of(clash.begin(), clash.end(), [&](int c) { return !movable(c); }))
        return false;
    for (const int c : clash)
        drop(c);
    choose(best);
    return true;
}

void CoverSearch::complete() {
    constexpr int kAny = std::numeric_limits<int>::max();
    for (int way = 0; !open_.empty();) {
        const int w = open_.back();
        if (const int best = bestFor(w, kAny); best >= 0)
            choose(best);
        else if (++way > 20 || !makeWay(w, kAny))
            return;
    }
}

void CoverSearch::dropSpare() {
    for (const int c : choice())
        if (!info_[at(c)].kept && score_[at(c)] <= 0)
            drop(c);
}

CoverSearch::Result CoverSearch::search(const Limits& limits, Dice& dice, const Judge& judge,
                                        std::stop_token stop) {
    Result best;
    int bound = limits.below; // only cheaper is of use
    window_ = limits.window;
    active_.clear();
    for (const int c : chosen_)
        if (movable(c))
            active_.push_back(c);
    complete();
    bool ended = false;
    const auto record = [&] {
        if (!open_.empty() || !judge(*this))
            return;
        if (cost_ < best.cost) {
            best = {true, cost_, choice()};
            bound = std::min(bound, limits.keepEqual ? cost_ + 1 : cost_);
        }
        if (limits.onFound)
            ended = !limits.onFound(choice(), cost_);
    };
    int tabu = -1;
    for (int step = 0; step < limits.steps && !ended; ++step) {
        if ((step & 15) == 0 && stop.stop_requested())
            break;
        ++clock_;
        while (open_.empty() && !ended) {
            if (cost_ < bound)
                record();
            if (!open_.empty())
                break;
            if (best.found && best.cost <= limits.enough)
                break;
            const int loss = leastLoss(std::numeric_limits<long>::max(), -1);
            if (loss < 0)
                break;
            drop(loss);
        }
        if (open_.empty())
            break;
        if (const int loss = leastLoss(clock_, tabu); loss >= 0)
            drop(loss);
        tabu = -1;
        while (!open_.empty()) {
            const int w = open_[dice.below(open_.size())];
            const int room = bound == std::numeric_limits<int>::max() ? bound : bound - 1 - cost_;
            const int add = bestFor(w, room);
            if (add < 0) {
                makeWay(w, room);
                break;
            }
            choose(add);
            tabu = add;
        }
        for (const int w : open_) {
            Witness& witness = witnesses_[at(w)];
            witness.weight += 1;
            raise(w, 1);
        }
    }
    if (open_.empty() && cost_ < best.cost)
        record();
    if (best.found)
        restore(best.choice);
    return best;
}

} // namespace bastewright::points

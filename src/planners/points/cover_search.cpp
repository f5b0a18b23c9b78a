#include "planners/points/cover_search.h"

#include <cassert>
#include <cmath>

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
    double score = 0;
    covers_.emplace_back();
    for (const Spot p : places) {
        places_.push_back(p);
        candidateBuckets_.add(id, p);
        witnessBuckets_.eachNear(p, radius_, [&](int w, Spot) {
            auto& of = coverers_[at(w)];
            if (!of.empty() && of.back() == id)
                return;
            of.push_back(id);
            covers_.back().push_back(w);
            if (witnesses_[at(w)].covers == 0)
                score += witnesses_[at(w)].weight;
        });
    }
    info_.push_back(info);
    score_.push_back(score);
    chosenIndex_.push_back(-1);
    return id;
}

bool CoverSearch::addWitness(Spot spot) {
    const int w = static_cast<int>(witnesses_.size());
    std::vector<int> by;
    candidateBuckets_.eachNear(spot, radius_, [&](int id, Spot) { by.push_back(id); });
    if (by.empty())
        return false;
    std::sort(by.begin(), by.end());
    by.erase(std::unique(by.begin(), by.end()), by.end());
    if (!known_.insert(by).second)
        return true; // as another: where candidates are orbits, its image
    Witness witness;
    witness.at = spot;
    for (const int c : by) {
        covers_[at(c)].push_back(w);
        if (info_[at(c)].chosen)
            ++witness.covers, witness.exclusive ^= c;
    }
    witnesses_.push_back(witness);
    witnessBuckets_.add(w, spot);
    if (witness.covers == 0) {
        open(w);
        for (const int c : by)
            score_[at(c)] += witness.weight;
    } else if (witness.covers == 1) {
        score_[at(witness.exclusive)] += witness.weight;
    }
    coverers_.push_back(std::move(by));
    return true;
}

std::span<const Spot> CoverSearch::places(int candidate) const {
    const Info& i = info_[at(candidate)];
    return std::span{places_}.subspan(at(i.firstPlace), at(i.places));
}

bool CoverSearch::clashes(int candidate) const {
    for (const Spot p : places(candidate))
        if (chosenBuckets_.anyNear(p, gap_, [&](int id, Spot) { return id != candidate; }))
            return true;
    return false;
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
    double alone = 0;
    for (const int w : covers_[at(candidate)]) {
        Witness& witness = witnesses_[at(w)];
        if (witness.covers == 0) {
            close(w);
            for (const int c : coverers_[at(w)])
                score_[at(c)] -= witness.weight;
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
    double gain = 0;
    for (const int w : covers_[at(candidate)]) {
        Witness& witness = witnesses_[at(w)];
        --witness.covers;
        witness.exclusive ^= candidate;
        if (witness.covers == 0) {
            open(w);
            for (const int c : coverers_[at(w)])
                score_[at(c)] += witness.weight;
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
        const double loss = score_[at(c)] / i.cost;
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
    double bestGain = 0;
    for (const int c : coverers_[at(witness)]) {
        const Info& i = info_[at(c)];
        const double gain = score_[at(c)] / i.cost;
        if (i.cost > room || gain < bestGain)
            continue;
        if (best >= 0 && gain == bestGain && i.changed >= info_[at(best)].changed)
            continue;
        if (!movable(c) || clashes(c))
            continue;
        best = c;
        bestGain = gain;
    }
    return best;
}

/// Nothing fits between the points around: those nearest to the most useful
/// candidate make way.
bool CoverSearch::makeWay(int witness, int room) {
    int best = -1;
    for (const int c : coverers_[at(witness)])
        if (cost(c) <= room && movable(c) &&
            (best < 0 || score_[at(c)] > score_[at(best)]))
            best = c;
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
            for (const int c : coverers_[at(w)])
                score_[at(c)] += 1;
        }
    }
    if (open_.empty() && cost_ < best.cost)
        record();
    if (best.found)
        restore(best.choice);
    return best;
}

} // namespace bastewright::points

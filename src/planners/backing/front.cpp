#include "planners/backing/front.h"

#include <algorithm>

namespace bastewright::backing {
namespace {

bool dominates(const Layout& a, const Layout& b) {
    const auto outside = [](const Layout& l) { return l.column && l.column->outside; };
    return a.cost <= b.cost && a.seams <= b.seams && a.waste <= b.waste && outside(a) <= outside(b);
}

/// True where both take the same lengths and piece the same strip, only cut a little differently.
bool alike(const Layout& a, const Layout& b) {
    const auto blocks = [](const Layout& l) { return l.column ? l.column->blocks() : 0; };
    return a.along == b.along && a.lengths == b.lengths && a.splitBolt == b.splitBolt &&
           blocks(a) == blocks(b);
}

bool precedes(const Choice& a, const Choice& b) {
    if (a.layout.score != b.layout.score)
        return a.layout.score < b.layout.score;
    if (a.keepsAway != b.keepsAway)
        return a.keepsAway;
    return better(a.layout, b.layout);
}

class FrontSink : public LayoutSink {
public:
    FrontSink(const Problem& problem, const std::vector<Bolt>& bolts)
        : problem_{problem}
        , bolts_{bolts}
        , seamCost_{problem.seamCost()} {}

    bool hopeless(double cost, int seams) const override {
        return problem_.rules.fabrics.size() > 1 && second_ &&
               second_->layout.score < cost + seams * seamCost_ &&
               std::ranges::any_of(choices_, [&](const Choice& c) {
                   return c.keepsAway && c.layout.cost < cost && c.layout.seams <= seams;
               });
    }

    bool offer(const Layout& l) override {
        const bool beaten = std::ranges::any_of(choices_, [&](const Choice& c) {
            return c.keepsAway && dominates(c.layout, l) && better(c.layout, l);
        });
        if (beaten && second_ && better(second_->layout, l))
            return true;
        Choice c{l, {}, true};
        auto arrangement = arrange(problem_, bolts_, l, true);
        if (!arrangement && !problem_.keepAway.empty()) {
            c.keepsAway = false;
            arrangement = arrange(problem_, bolts_, l, false);
        }
        if (!arrangement)
            return false;
        c.arrangement = std::move(*arrangement);
        rank(c);
        if (beaten)
            return true;
        std::erase_if(choices_, [&](const Choice& o) {
            return dominates(c.layout, o.layout) && (c.keepsAway || !o.keepsAway);
        });
        choices_.push_back(std::move(c));
        return true;
    }

    Front finished() {
        std::ranges::stable_sort(choices_, precedes);
        Front out{std::move(choices_), {}};
        if (second_)
            out.runnerUp = std::move(second_->layout);
        return out;
    }

private:
    /// Keeps the best two that differ.
    void rank(const Choice& c) {
        if (!first_ || precedes(c, *first_)) {
            if (first_ && !alike(first_->layout, c.layout))
                second_ = std::move(first_);
            first_ = c;
        } else if (!alike(first_->layout, c.layout) && (!second_ || precedes(c, *second_))) {
            second_ = c;
        }
    }

    const Problem& problem_;
    const std::vector<Bolt>& bolts_;
    const double seamCost_;
    std::vector<Choice> choices_;
    std::optional<Choice> first_, second_;
};

/// Where the problem offers a column of cloth that is not listed, only layouts with one.
class BestSink : public LayoutSink {
public:
    BestSink(const Problem& problem, const std::vector<Bolt>& bolts, double limit)
        : problem_{problem}
        , bolts_{bolts}
        , limit_{limit}
        , seamCost_{problem.seamCost()} {}

    bool hopeless(double cost, int seams) const override {
        const double score = cost + seams * seamCost_;
        return score >= limit_ || (best && score > best->score);
    }
    bool offer(const Layout& l) override {
        if (best && !better(l, *best))
            return true;
        if (problem_.unlisted && !(l.column && l.column->fabric < 0))
            return arrange(problem_, bolts_, l, false).has_value();
        if (auto a = arrange(problem_, bolts_, l, false)) {
            best = l;
            arrangement = std::move(*a);
            return true;
        }
        return false;
    }

    std::optional<Layout> best;
    Arrangement arrangement;

private:
    const Problem& problem_;
    const std::vector<Bolt>& bolts_;
    const double limit_, seamCost_;
};

} // namespace

Front frontOf(const Problem& problem, const std::vector<Bolt>& bolts) {
    FrontSink sink{problem, bolts};
    visitLayouts(problem, bolts, sink);
    return sink.finished();
}

std::optional<Layout> bestOf(const Problem& problem, double limit) {
    const auto bolts = boltsOf(problem.rules);
    BestSink sink{problem, bolts, limit};
    visitLayouts(problem, bolts, sink);
    return std::move(sink.best);
}

std::optional<Choice> withUnlisted(const Problem& problem, const std::vector<Bolt>& bolts,
                                   double limit) {
    if (limit <= 0 || !problem.rules.column || problem.rules.repeat > Length{})
        return std::nullopt;
    Problem p = problem;
    p.unlisted = true;
    BestSink sink{p, bolts, limit};
    visitLayouts(p, bolts, sink);
    if (!sink.best)
        return std::nullopt;
    return Choice{std::move(*sink.best), std::move(sink.arrangement), true};
}

} // namespace bastewright::backing

#include "planners/points/block_figure.h"

#include "planners/points/holes.h"

#include <algorithm>
#include <bitset>
#include <cmath>

namespace bastewright::points {
namespace {

constexpr double kMostSpacings = 4; ///< three kinds of places cannot hold a larger block
constexpr std::size_t kWitnesses = 2048;
using Witnesses = std::bitset<kWitnesses>;

struct Part {
    Spots points; ///< from the block's middle
    Witnesses holds;
    int perStrip = 0;
    bool post = false;
    int count() const { return int(points.size()); }
};

class FigureSearch {
public:
    FigureSearch(const Rules& rules, const BlockCell& cell)
        : rules_{rules}
        , cell_{cell}
        , sample_{cell.middle(cell.columns / 2, cell.rows / 2)} {
        // The triangle between middle, side and corner of the cell stands for all of it. These
        // places only sort out; what they do not refute is judged as a whole.
        const double half = cell.pitch() / 2, step = std::max(rules.spacing / 16, half / 60);
        for (double x = 0; x <= half + 1e-9; x += step)
            for (double y = 0; y <= x + 1e-9 && witnesses_.size() < kWitnesses; y += step)
                witnesses_.push_back({x, y});
        for (std::size_t i = 0; i < witnesses_.size(); ++i)
            all_.set(i);
        addOrbits();
        addSashing();
    }

    std::optional<BlockFigure> run(int below) {
        below_ = below;
        for (const Part& sashing : sashing_)
            for (std::size_t a = 0; a < orbits_.size(); ++a) {
                if (clash(orbits_[a], sashing))
                    continue;
                look(sashing, {&orbits_[a]});
                for (std::size_t b = a + 1; b < orbits_.size(); ++b) {
                    if (sashing.count() + orbits_[a].count() + orbits_[b].count() > most() ||
                        clash(orbits_[b], sashing) || near_[a][b])
                        continue;
                    look(sashing, {&orbits_[a], &orbits_[b]});
                    for (std::size_t c = b + 1; c < orbits_.size(); ++c)
                        if (sashing.count() + orbits_[a].count() + orbits_[b].count() +
                                    orbits_[c].count() <=
                                most() &&
                            !near_[a][c] && !near_[b][c])
                            look(sashing, {&orbits_[a], &orbits_[b], &orbits_[c]});
                }
            }
        return best_;
    }

private:
    int most() const { return best_ ? best_->count : below_ - 1; }

    double apart(Spot a, Spot b) const {
        const double p = cell_.pitch();
        const auto away = [&](double d) {
            d = std::fmod(std::abs(d), p);
            return std::min(d, p - d);
        };
        return std::hypot(away(a.x - b.x), away(a.y - b.y));
    }
    bool tooNear(const Spots& a, const Spots& b) const {
        for (std::size_t i = 0; i < a.size(); ++i)
            for (std::size_t k = &a == &b ? i + 1 : 0; k < b.size(); ++k)
                if (apart(a[i], b[k]) < rules_.gap - 1e-7)
                    return true;
        return false;
    }
    bool clash(const Part& a, const Part& b) const { return tooNear(a.points, b.points); }

    bool allowed(const Spots& points) const {
        return std::ranges::all_of(
            points, [&](Spot p) { return rules_.pin.angleAt(sample_ + p).has_value(); });
    }
    Witnesses heldBy(const Spots& points) const {
        Witnesses out;
        for (std::size_t i = 0; i < witnesses_.size(); ++i)
            out[i] = std::ranges::any_of(points, [&](Spot p) {
                return apart(p, witnesses_[i]) <= rules_.radius - kCoverSlack;
            });
        return out;
    }
    void addOrbits() {
        const double coarse =
            rules_.fine * std::max(1.0, std::round(rules_.spacing / 8 / rules_.fine));
        const double fine = coarse / 2, half = cell_.block / 2;
        const auto add = [&](Spot of) {
            Part part{imagesOf(of), {}};
            if (!allowed(part.points) || tooNear(part.points, part.points))
                return;
            part.holds = heldBy(part.points);
            orbits_.push_back(std::move(part));
        };
        for (double a = 0; a <= half + 1e-9; a += fine) {
            add({a, a});
            if (a > 0)
                add({a, 0});
        }
        for (double a = coarse; a <= half + 1e-9; a += coarse)
            for (double b = coarse; b < a - 1e-9; b += coarse)
                add({a, b});
        near_.assign(orbits_.size(), std::vector<char>(orbits_.size(), 0));
        for (std::size_t a = 0; a < orbits_.size(); ++a)
            for (std::size_t b = a + 1; b < orbits_.size(); ++b)
                near_[a][b] = clash(orbits_[a], orbits_[b]) ? 1 : 0;
    }
    void addSashing() {
        sashing_.push_back({});
        if (cell_.sashing <= 0)
            return;
        for (int perStrip = 0; perStrip <= 3; ++perStrip)
            for (const bool post : {false, true}) {
                BlockFigure f;
                f.perStrip = perStrip;
                f.post = post;
                Part part{pointsOf(f, cell_), {}, perStrip, post};
                if (part.points.empty() || !allowed(part.points) ||
                    tooNear(part.points, part.points))
                    continue;
                part.holds = heldBy(part.points);
                sashing_.push_back(std::move(part));
            }
    }

    void look(const Part& sashing, std::initializer_list<const Part*> orbits) {
        Witnesses held = sashing.holds;
        int count = sashing.count();
        for (const Part* o : orbits) {
            held |= o->holds;
            count += o->count();
        }
        const bool fewer = count < most() || !best_;
        const bool same = best_ && count == best_->count && orbits.size() <= best_->orbits.size();
        if (count > most() || !(fewer || same) || held != all_)
            return;
        Spots points = sashing.points;
        BlockFigure figure{{}, sashing.perStrip, sashing.post, count};
        for (const Part* o : orbits) {
            points.insert(points.end(), o->points.begin(), o->points.end());
            figure.orbits.push_back(o->points.front());
        }
        const Spots all = onEndlessBlocks(points);
        const bool plainer = fewer || orbits.size() < best_->orbits.size();
        // Of two alike the one that holds with less reach.
        const double atLeast = plainer ? 0 : slack_ + rules_.spacing / 400;
        const Field quarter{0, 0, cell_.pitch() / 2, cell_.pitch() / 2};
        if (!covered(all, quarter, rules_.radius - atLeast))
            return;
        best_ = std::move(figure);
        slack_ = rules_.radius - coveringRadius(all, quarter);
    }

    /// The points that reach the quarter of a cell beside its middle.
    Spots onEndlessBlocks(const Spots& points) const {
        const double p = cell_.pitch();
        const int around = 1 + int(rules_.radius / p);
        Spots all;
        for (int i = -around; i <= around; ++i)
            for (int j = -around; j <= around; ++j)
                for (const Spot s : points)
                    if (const Spot at{s.x + i * p, s.y + j * p};
                        Field{0, 0, p / 2, p / 2}.contains(at, rules_.radius))
                        all.push_back(at);
        return all;
    }

    const Rules& rules_;
    const BlockCell& cell_;
    Spot sample_; ///< middle of a block whose seams stand for all
    Spots witnesses_;
    Witnesses all_;
    std::vector<Part> orbits_, sashing_;
    std::vector<std::vector<char>> near_; ///< of two orbits, the lower number first
    std::optional<BlockFigure> best_;
    double slack_ = 0;
    int below_ = 0;
};

} // namespace

std::optional<BlockCell> blockCellOf(const Job& job) {
    if (!job.top.grid)
        return {};
    const BlockGrid& g = *job.top.grid;
    if (g.blockHeight() != g.block || g.columns < 2 || g.rows < 2)
        return {};
    const Point first = g.firstBlock(topRect(job.top));
    return BlockCell{{first.x.in(), first.y.in()}, g.block.in(), g.sashing.in(), g.columns, g.rows};
}

Spots imagesOf(Spot p) {
    Spots out;
    for (const Spot q : {p, Spot{p.y, p.x}})
        for (const double sx : {1.0, -1.0})
            for (const double sy : {1.0, -1.0}) {
                const Spot image{sx * q.x + 0.0, sy * q.y + 0.0};
                if (std::ranges::find(out, image) == out.end())
                    out.push_back(image);
            }
    return out;
}

Spots pointsOf(const BlockFigure& figure, const BlockCell& cell) {
    Spots out;
    for (const Spot o : figure.orbits)
        for (const Spot s : imagesOf(o))
            out.push_back(s);
    const double beside = cell.pitch() / 2;
    for (int i = 0; i < figure.perStrip; ++i) {
        const double along = cell.block * ((i + 0.5) / figure.perStrip - 0.5);
        out.push_back({beside, along});
        out.push_back({along, beside});
    }
    if (figure.post)
        out.push_back({beside, beside});
    return out;
}

std::optional<BlockFigure> leastFigure(const Rules& rules, const BlockCell& cell, int below) {
    if (cell.pitch() > kMostSpacings * rules.spacing)
        return {};
    return FigureSearch{rules, cell}.run(below);
}

} // namespace bastewright::points

#include "planners/crew/pass_zones.h"

#include <algorithm>

namespace bastewright::crew {
namespace {

struct Piece {
    Rect area;
    std::vector<PlacedPoint> points;
};

bool beside(const Rect& a, const Rect& b) {
    const bool sameRows = a.y0 == b.y0 && a.y1 == b.y1 && (a.x1 == b.x0 || b.x1 == a.x0);
    const bool sameColumns = a.x0 == b.x0 && a.x1 == b.x1 && (a.y1 == b.y0 || b.y1 == a.y0);
    return sameRows || sameColumns;
}

Rect joined(const Rect& a, const Rect& b) {
    return {std::min(a.x0, b.x0), std::min(a.y0, b.y0), std::max(a.x1, b.x1), std::max(a.y1, b.y1)};
}

void join(std::vector<Piece>& pieces) {
    for (std::size_t i = 0; i < pieces.size(); ++i)
        for (std::size_t j = i + 1; j < pieces.size();) {
            if (!beside(pieces[i].area, pieces[j].area)) {
                ++j;
                continue;
            }
            pieces[i].area = joined(pieces[i].area, pieces[j].area);
            pieces[i].points.insert(pieces[i].points.end(), pieces[j].points.begin(),
                                    pieces[j].points.end());
            std::ranges::sort(pieces[i].points, {}, [](const PlacedPoint& p) {
                return std::pair{p.at.y, p.at.x};
            });
            pieces.erase(pieces.begin() + static_cast<std::ptrdiff_t>(j));
            j = i + 1;
        }
}

/// A few points more to lean for are no reason to cut unevenly; nothing is cut more often than
/// this.
constexpr int kLeaningIsOne = 6, kDeepest = 12;

class Zoning {
public:
    Zoning(const Ground& g, const std::vector<Post>& posts)
        : g_{g}
        , posts_{posts} {}

    std::vector<OwnedZone> ofPost(int k, const std::vector<Rect>& parts,
                                  std::vector<char>& taken) const {
        std::vector<Piece> pieces;
        for (const Rect& part : parts)
            for (const Rect& fresh : g_.fresh.parts)
                if (const Rect area = intersection(part, fresh); !area.empty())
                    pieces.push_back({area, {}});
        for (std::size_t i = 0; i < g_.points.size(); ++i) {
            const auto in = std::ranges::find_if(
                pieces, [&](const Piece& p) { return p.area.contains(g_.points[i].at); });
            if (taken[i] != 0 || in == pieces.end())
                continue;
            taken[i] = 1;
            in->points.push_back(g_.points[i]);
        }
        join(pieces);
        std::vector<OwnedZone> out;
        for (Piece& p : pieces)
            toSides(k, std::move(p), out, 0);
        return out;
    }

private:
    const Post& post(int k) const { return posts_[static_cast<std::size_t>(k)]; }

    /// Cuts a piece until each part can be worked from one side.
    void toSides(int k, Piece piece, std::vector<OwnedZone>& out, int depth) const {
        const Post& who = post(k);
        OwnedZone zone;
        zone.post = k;
        if (piece.points.empty()) {
            zone.zone.area = piece.area;
            zone.place = who.edges.empty() ? StandingPlace{} : who.edges.front();
            out.push_back(std::move(zone));
            return;
        }
        const auto place = bestPlace(*who.helper, g_.table, who.edges, piece.points, g_.limited);
        if (place)
            return inTurns(k, std::move(piece), *place, out);
        auto halves = depth < kDeepest ? cutForSides(who, piece) : std::nullopt;
        if (!halves) {
            zone.zone.area = piece.area;
            zone.reached = false;
            zone.place = who.edges.empty() ? StandingPlace{}
                                           : inFront(g_.table, who.edges.front(), piece.points);
            zone.zone.points = std::move(piece.points);
            out.push_back(std::move(zone));
            return;
        }
        toSides(k, std::move(halves->first), out, depth + 1);
        toSides(k, std::move(halves->second), out, depth + 1);
    }

    static std::pair<Piece, Piece> cutAt(const Piece& p, bool acrossX, Length line) {
        std::pair<Piece, Piece> out{{p.area, {}}, {p.area, {}}};
        (acrossX ? out.first.area.x1 : out.first.area.y1) = line;
        (acrossX ? out.second.area.x0 : out.second.area.y0) = line;
        for (const PlacedPoint& q : p.points)
            ((acrossX ? q.at.x : q.at.y) < line ? out.first : out.second).points.push_back(q);
        return out;
    }

    /// How many points somebody leans for; nothing where no side will do for all of them.
    std::optional<int> leaningFor(const Post& who, const Piece& p) const {
        const auto at = bestPlace(*who.helper, g_.table, who.edges, p.points, g_.limited);
        return at ? leanings(*who.helper, g_.table, *at, p.points, g_.limited) : std::nullopt;
    }

    std::optional<std::pair<Piece, Piece>> cutForSides(const Post& who, const Piece& p) const {
        std::optional<std::pair<Piece, Piece>> best;
        std::tuple<int, int, std::size_t, bool> bestIs{};
        for (const bool acrossX : {true, false})
            for (const Length line : acrossX ? g_.xs : g_.ys) {
                const Interval extent = acrossX ? p.area.x() : p.area.y();
                if (line <= extent.lo || line >= extent.hi)
                    continue;
                auto halves = cutAt(p, acrossX, line);
                const auto one = leaningFor(who, halves.first);
                const auto other = leaningFor(who, halves.second);
                // Of those that work the one that asks for least leaning, then the most even.
                const std::tuple is{
                    (one ? 1 : 0) + (other ? 1 : 0),
                    one && other ? -((*one + *other) / kLeaningIsOne) : 0,
                    std::min(halves.first.points.size(), halves.second.points.size()), acrossX};
                if (!best || is > bestIs) {
                    best = std::move(halves);
                    bestIs = is;
                }
            }
        return best;
    }

    /// A long run is ticked in several turns along the side.
    void inTurns(int k, Piece piece, StandingPlace place, std::vector<OwnedZone>& out) const {
        const auto n = static_cast<int>(piece.points.size());
        int turns = (n + g_.mostInZone - 1) / g_.mostInZone;
        const bool acrossX = isAcross(place.side);
        while (turns > 1) {
            const auto& lines = acrossX ? g_.xs : g_.ys;
            const Interval extent = acrossX ? piece.area.x() : piece.area.y();
            std::optional<Length> best;
            int bestOff = 0;
            for (const Length line : lines) {
                if (line <= extent.lo || line >= extent.hi)
                    continue;
                int before = 0;
                for (const PlacedPoint& q : piece.points)
                    before += (acrossX ? q.at.x : q.at.y) < line ? 1 : 0;
                const int off = std::abs(before - static_cast<int>(piece.points.size()) / turns);
                if (before > 0 && (!best || off < bestOff)) {
                    best = line;
                    bestOff = off;
                }
            }
            if (!best)
                break;
            auto [first, rest] = cutAt(piece, acrossX, *best);
            add(k, std::move(first), place.side, out);
            piece = std::move(rest);
            --turns;
        }
        add(k, std::move(piece), place.side, out);
    }

    void add(int k, Piece piece, Side side, std::vector<OwnedZone>& out) const {
        const Post& who = post(k);
        OwnedZone zone;
        zone.post = k;
        zone.zone.area = piece.area;
        for (const StandingPlace& e : who.edges)
            if (e.side == side)
                zone.place = inFront(g_.table, e, piece.points);
        zone.zone.points = std::move(piece.points);
        out.push_back(std::move(zone));
    }

    const Ground& g_;
    const std::vector<Post>& posts_;
};

/// People of one side next to one another, none in another's place, each with their room.
void apart(const Ground& g, const std::vector<Post>& posts, Side side,
           std::vector<OwnedZone>& zones) {
    struct Span {
        int post;
        Interval need;
        bool seated = false; ///< `need` is where they sit
    };
    std::vector<Span> spans;
    for (const OwnedZone& z : zones) {
        if (z.place.side != side || z.zone.points.empty())
            continue;
        const auto at = std::ranges::find(spans, z.post, &Span::post);
        if (at == spans.end()) {
            const Post& who = posts[static_cast<std::size_t>(z.post)];
            spans.push_back({z.post, who.helper->seated ? who.edges.front().along : z.place.along,
                             who.helper->seated});
        } else if (!at->seated)
            at->need = {std::min(at->need.lo, z.place.along.lo),
                        std::max(at->need.hi, z.place.along.hi)};
    }
    if (spans.size() < 2)
        return;
    std::ranges::sort(spans, {}, [](const Span& s) { return std::pair{s.need.middle(), s.post}; });
    const Interval whole = sideOf(g.table, side);
    const Length room = roomAt(g.table, side);
    // Boundaries between neighbours that overlap: midway, then each moved so that all have room.
    std::vector<Length> lines{whole.lo};
    for (std::size_t k = 1; k < spans.size(); ++k) {
        const Interval a = spans[k - 1].need, b = spans[k].need;
        lines.push_back(spans[k - 1].seated ? a.hi
                        : spans[k].seated   ? b.lo
                                            : a.hi + (b.lo - a.hi) / 2);
    }
    const auto fixed = [&](std::size_t k) { return spans[k - 1].seated || spans[k].seated; };
    lines.push_back(whole.hi);
    for (std::size_t k = 1; k + 1 < lines.size(); ++k)
        if (!fixed(k))
            lines[k] = std::max(lines[k], lines[k - 1] + room);
    for (std::size_t k = lines.size() - 2; k > 0; --k)
        if (!fixed(k))
            lines[k] = std::min(lines[k], lines[k + 1] - room);
    for (OwnedZone& z : zones) {
        if (z.place.side != side || z.zone.points.empty())
            continue;
        const auto k =
            static_cast<std::size_t>(std::ranges::find(spans, z.post, &Span::post) - spans.begin());
        const StandingPlace own{
            side, spans[k].seated ? spans[k].need
                                  : Interval{lines[k], std::max(lines[k + 1], lines[k] + room)}};
        z.place = inFront(g.table, own, z.zone.points);
    }
}

/// Along the way in one go, beginning where it is nearer to the quilt's middle. Round the table the
/// way is cut in its longest stretch without a zone.
void inOrder(const Ground& g, Point middle, std::vector<OwnedZone>& zones) {
    const Length round = 2 * (g.table.width() + g.table.length());
    std::vector<Length> places;
    for (const OwnedZone& z : zones)
        if (!z.zone.points.empty())
            places.push_back(wayOf(g.table, z.place));
    const Length first = firstOnTheWay(std::move(places), round);
    const auto off = [&](const OwnedZone& z) {
        const Length d = wayOf(g.table, z.place) - first;
        return d < Length{} ? d + round : d;
    };
    const auto away = [&](const OwnedZone& z) {
        const Point m = z.zone.area.middle();
        return std::max(abs(m.x - middle.x), abs(m.y - middle.y));
    };
    std::ranges::stable_sort(zones, {}, [&](const OwnedZone& z) {
        return std::tuple{z.zone.points.empty(), off(z), away(z)};
    });
    const auto end =
        std::ranges::find_if(zones, [](const OwnedZone& z) { return z.zone.points.empty(); });
    if (end - zones.begin() > 1 && away(*std::prev(end)) < away(zones.front()))
        std::reverse(zones.begin(), end);
}

} // namespace

Length wayOf(const Rect& t, const StandingPlace& at) {
    const Length m = at.along.middle();
    switch (at.side) {
    case Side::head:
        return m - t.x0;
    case Side::right:
        return t.width() + (m - t.y0);
    case Side::foot:
        return t.width() + t.length() + (t.x1 - m);
    case Side::left:
        break;
    }
    return 2 * t.width() + t.length() + (t.y1 - m);
}

Length firstOnTheWay(std::vector<Length> places, Length round) {
    std::ranges::sort(places);
    Length first, widest;
    for (std::size_t k = 0; k < places.size(); ++k) {
        const Length before = k == 0 ? places.back() - round : places[k - 1];
        if (k == 0 || places[k] - before > widest) {
            widest = places[k] - before;
            first = places[k];
        }
    }
    return first;
}

bool liesBetween(const Rect& table, std::span<const StandingPlace> stretch,
                 const StandingPlace& other) {
    if (stretch.size() < 2)
        return false;
    const Length round = 2 * (table.width() + table.length());
    // Every part from its beginning on, and how far the last of them reaches from there.
    const auto ahead = [&](Length from, Length to) {
        return to < from ? to + round - from : to - from;
    };
    const auto begin = [&](const StandingPlace& p) {
        const Length at = wayOf(table, p) - p.along.size() / 2;
        return at < Length{} ? at + round : at;
    };
    Length least = round, first;
    for (const StandingPlace& p : stretch) {
        Length size;
        for (const StandingPlace& q : stretch)
            size = std::max(size, ahead(begin(p), begin(q)) + q.along.size());
        if (size < least) {
            least = size;
            first = begin(p);
        }
    }
    return ahead(first, wayOf(table, other)) < least;
}

std::vector<StandingPlace> together(std::vector<StandingPlace> places) {
    std::vector<StandingPlace> out;
    for (const StandingPlace& p : places) {
        const auto at = std::ranges::find(out, p.side, &StandingPlace::side);
        if (at == out.end())
            out.push_back(p);
        else
            at->along = {std::min(at->along.lo, p.along.lo), std::max(at->along.hi, p.along.hi)};
    }
    return out;
}

PassZones zonesOf(const Ground& ground, const std::vector<Post>& posts, const Sharing& sharing,
                  int pass, const std::vector<std::string>& letters,
                  const std::map<std::string, int>& turns, Point quiltMiddle) {
    PassZones out;
    const Zoning zoning{ground, posts};
    std::vector<char> taken(ground.points.size(), 0);
    std::vector<std::vector<OwnedZone>> byPost(posts.size());
    for (std::size_t k = 0; k < posts.size(); ++k)
        for (OwnedZone& z : zoning.ofPost(static_cast<int>(k), sharing.parts[k], taken))
            out.zones.push_back(std::move(z));
    for (const Side side : kSides)
        apart(ground, posts, side, out.zones);
    for (OwnedZone& z : out.zones) {
        const auto leaning = leanings(*posts[static_cast<std::size_t>(z.post)].helper, ground.table,
                                      z.place, z.zone.points, ground.limited);
        z.leaning = leaning.value_or(0);
        z.reached = z.reached && leaning;
        if (!z.reached)
            out.conflicts += static_cast<int>(z.zone.points.size());
        byPost[static_cast<std::size_t>(z.post)].push_back(std::move(z));
    }
    out.zones.clear();
    for (std::size_t k = 0; k < posts.size(); ++k) {
        inOrder(ground, quiltMiddle, byPost[k]);
        const auto had = turns.find(letters[k]);
        int turn = had == turns.end() ? 0 : had->second;
        for (OwnedZone& z : byPost[k]) {
            z.zone.pass = pass;
            z.zone.id = zoneId(pass, letters[k], ++turn);
            out.zones.push_back(std::move(z));
        }
    }
    // Who stands in somebody else's place after all, or has no room.
    std::vector<std::vector<StandingPlace>> edges(posts.size());
    for (const OwnedZone& z : out.zones)
        if (!z.zone.points.empty()) {
            edges[static_cast<std::size_t>(z.post)].push_back(z.place);
            out.overlaps += z.place.along.size() < roomAt(ground.table, z.place.side) ||
                                    !sideOf(ground.table, z.place.side).contains(z.place.along)
                                ? 1
                                : 0;
        }
    for (std::size_t i = 0; i < edges.size(); ++i) {
        edges[i] = together(std::move(edges[i]));
        for (std::size_t j = 0; j < i; ++j)
            for (const StandingPlace& a : edges[i])
                for (const StandingPlace& b : edges[j])
                    out.overlaps += a.side == b.side && a.along.overlaps(b.along) ? 1 : 0;
    }
    out.conflicts += out.overlaps;
    for (const auto& stretch : edges)
        for (const auto& others : edges)
            if (&others != &stretch)
                out.conflicts +=
                    static_cast<int>(std::ranges::count_if(others, [&](const StandingPlace& o) {
                        return liesBetween(ground.table, stretch, o);
                    }));
    return out;
}

} // namespace bastewright::crew

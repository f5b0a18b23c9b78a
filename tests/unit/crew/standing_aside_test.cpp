#include "planners/crew/quilt_table.h"
#include "unit/crew/made_session.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <set>

// Somebody who would be in others' way in one pass has no zones in that one only.
namespace bastewright {
namespace {

/// Three passes, of which the last bastes little: a strip as wide, or as long, as this, at the
/// head-left corner of its field.
struct Narrow {
    const char* what;
    int people;
    int freshWidth, freshLength; ///< inches
    int table;                   ///< see made::Shape
    std::vector<Side> closed;
    bool seated; ///< the first of them
    int lastWidth, lastLength;
    std::vector<std::size_t> sharing; ///< people with zones, by pass
};

const std::vector<Narrow> kNarrow{
    {"three at the corner of a room",
     3,
     44,
     24,
     0,
     {Side::head, Side::left},
     false,
     11,
     24,
     {3, 3, 2}},
    {"four at two short sides", 4, 44, 44, 0, {Side::left, Side::right}, false, 11, 44, {4, 4, 3}},
    {"four at two sides of a larger table",
     4,
     44,
     44,
     6,
     {Side::left, Side::right},
     false,
     11,
     44,
     {4, 4, 3}},
    {"four, one sits, at a wall", 4, 44, 36, 6, {Side::head}, true, 44, 8, {4, 4, 3}},
};

made::Afternoon afternoonOf(const Narrow& c) {
    made::Afternoon a;
    a.session.setting.helpers = made::helpers(c.people);
    a.session.setting.helpers.front().seated = c.seated;
    made::addQuilt(a, {.across = 1,
                       .down = 3,
                       .freshWidth = c.freshWidth,
                       .freshLength = c.freshLength,
                       .closed = c.closed,
                       .table = c.table});
    Pass& last = a.quilts.front().passes.back();
    const Rect field = last.fresh.bounds();
    last.fresh = Rect{field.x0, field.y0, field.x0 + Length::inches(c.lastWidth),
                      field.y0 + Length::inches(c.lastLength)};
    // The rest of that field is no part of this quilt.
    std::erase_if(a.points.front(), [&](const PlacedPoint& p) {
        return field.contains(p.at) && !last.fresh.contains(p.at);
    });
    return a;
}

/// Who has zones in each pass, of all who are there; more hands than `people` have none to do.
class Shares {
public:
    Shares(const made::Afternoon& a, std::size_t people)
        : hands_{crew::handsOf(a.session.setting.helpers, a.session.setting.start)}
        , points_{crew::pointsByPass(a.quilts.front(), a.points.front())}
        , table_{a.session,
                 0,
                 a.quilts.front(),
                 points_,
                 {3, crew::BastedPass{&wayOf(a.session.jobs.front())}},
                 hands_,
                 sharings_} {
        std::vector<int> all;
        for (std::size_t k = 0; k < hands_.size() && all.size() < people; ++k)
            if (hands_[k].helper.pins)
                all.push_back(static_cast<int>(k));
        for (std::size_t pass = 0; pass < 3; ++pass)
            crews_.push_back(table_.share(pass, all, letters_));
    }

    const std::vector<crew::PassCrew>& crews() const { return crews_; }
    std::vector<std::size_t> sizes() const {
        std::vector<std::size_t> out;
        for (const crew::PassCrew& c : crews_)
            out.push_back(c.people.size());
        return out;
    }
    int inTheWay() const {
        int n = 0;
        for (const crew::PassCrew& c : crews_)
            n += c.conflicts + c.overlaps;
        return n;
    }
    std::size_t points(std::size_t pass) const { return points_[pass].size(); }
    const Helper& helper(int hand) const { return hands_[static_cast<std::size_t>(hand)].helper; }

private:
    std::vector<crew::Hand> hands_;
    std::vector<std::vector<PlacedPoint>> points_;
    crew::SharingMemory sharings_;
    crew::QuiltTable table_;
    crew::Letters letters_;
    std::vector<crew::PassCrew> crews_;
};

TEST(StandingAside, IsForOnePassAndNobodyIsInAnybodysWay) {
    for (const Narrow& c : kNarrow) {
        SCOPED_TRACE(c.what);
        const made::Afternoon a = afternoonOf(c);
        const Shares shares{a, a.session.setting.helpers.size()};
        EXPECT_EQ(shares.sizes(), c.sharing);
        EXPECT_EQ(shares.inTheWay(), 0);
        for (std::size_t pass = 0; pass < 3; ++pass) {
            std::size_t points = 0;
            for (const crew::OwnedZone& z : shares.crews()[pass].zones) {
                EXPECT_TRUE(z.reached);
                EXPECT_GE(z.post, 0);
                points += z.zone.points.size();
            }
            EXPECT_EQ(points, shares.points(pass)) << pass;
        }
    }
}

// A fifth who only leads makes it more than few: then nobody stands aside for one pass, and
// somebody would be in others' way or has no zones at all.
TEST(StandingAside, IsWhatKeepsThemApart) {
    for (const Narrow& c : kNarrow) {
        SCOPED_TRACE(c.what);
        made::Afternoon a = afternoonOf(c);
        while (a.session.setting.helpers.size() < 5) {
            a.session.setting.helpers.push_back(
                made::helper("Leader " + std::to_string(a.session.setting.helpers.size())));
            a.session.setting.helpers.back().pins = false;
        }
        const Shares shares{a, static_cast<std::size_t>(c.people)};
        const auto sizes = shares.sizes();
        EXPECT_EQ(std::set(sizes.begin(), sizes.end()).size(), 1u);
        EXPECT_TRUE(shares.inTheWay() > 0 || sizes.front() < static_cast<std::size_t>(c.people))
            << shares.inTheWay() << ", " << sizes.front();
    }
}

// They do what else there is to do, and it is over no later than if they had no zones at all.
TEST(StandingAside, IsNoLaterThanHavingNoZonesAtAll) {
    for (const Narrow& c : kNarrow) {
        SCOPED_TRACE(c.what);
        made::Afternoon a = afternoonOf(c);
        const Shares shares{a, a.session.setting.helpers.size()};
        std::set<int> all, last;
        for (const int hand : shares.crews().front().people)
            all.insert(hand);
        for (const int hand : shares.crews().back().people)
            last.insert(hand);
        const auto aside =
            std::ranges::find_if(all, [&](int hand) { return !last.contains(hand); });
        ASSERT_NE(aside, all.end());
        const std::string who = shares.helper(*aside).name;
        const CrewPlan plan = made::plan(a, {.range = false, .bound = false});
        std::set<int> works, helps;
        for (const Task& t : plan.tasks)
            if (std::ranges::find(t.people, who) != t.people.end())
                (t.zone.empty() ? helps : works).insert(t.pass);
        EXPECT_EQ(works, (std::set{1, 2}));
        EXPECT_TRUE(helps.contains(3));
        for (Helper& h : a.session.setting.helpers)
            h.pins = h.pins && h.name != who;
        EXPECT_LE(plan.finish, made::plan(a, {.range = false, .bound = false}).finish);
    }
}

} // namespace
} // namespace bastewright

#include "plan/plan_json.h"
#include "unit/checker/good_plan.h"
#include "unit/checker/random.h"

#include <gmock/gmock.h>
#include <nlohmann/json.hpp>

namespace bastewright::testing {
namespace {

/// Whatever a file may hold: small, large, negative.
class Garbage {
public:
    explicit Garbage(std::uint64_t seed)
        : random_{seed} {}

    Length length() {
        const std::int64_t kilometre = 1'000'000'000'000;
        return random_.chance(50) ? Length::inches(random_.whole(-60, 60))
                                  : Length::nanometres(random_.whole(-kilometre, kilometre));
    }
    Interval interval() { return {length(), length()}; }
    Rect rect() { return {length(), length(), length(), length()}; }
    int number() { return int(random_.whole(-3, 9)); }
    Seconds seconds() { return Seconds{random_.whole(-1'000'000, 1'000'000)}; }
    std::string word() {
        return std::vector<std::string>{"", "p1.A2", "B9", "Ada", "Cai", "1.1 smooth", "wide"}.at(
            std::size_t(random_.whole(0, 6)));
    }
    template <class T>
    T& one(std::vector<T>& all) {
        if (all.empty())
            all.emplace_back();
        return all.at(std::size_t(random_.whole(0, std::ssize(all) - 1)));
    }

    void spoil(Good& g) {
        QuiltPlan& q = one(g.plan.quilts);
        Pass& p = one(q.passes);
        Zone& z = one(q.zones);
        Task& t = one(g.plan.tasks);
        switch (random_.whole(0, 24)) {
        case 0:
            p.table = rect();
            break;
        case 1:
            p.fresh = rect();
            break;
        case 2:
            p.field = rect();
            break;
        case 3:
            p.number = number();
            break;
        case 4:
            one(p.zones) = word();
            break;
        case 5:
            one(p.holds).positions = {length(), length()};
            break;
        case 6:
            one(p.holds).count = number();
            break;
        case 7:
            one(p.rolls).rolled = length();
            break;
        case 8:
            z.area = rect();
            break;
        case 9:
            one(z.points) = {{length(), length()}, number() * 100};
            break;
        case 10:
            z.pass = number();
            break;
        case 11:
            z.id = word();
            break;
        case 12:
            z.points.clear();
            break;
        case 13:
            t.job = number();
            break;
        case 14:
            t.pass = number();
            break;
        case 15:
            t.zone = word();
            break;
        case 16:
            t.start = seconds();
            break;
        case 17:
            t.end = seconds();
            break;
        case 18:
            one(t.people) = word();
            break;
        case 19:
            one(t.places).along = interval();
            break;
        case 20:
            t.kind = static_cast<TaskKind>(random_.whole(0, 16));
            break;
        case 21:
            q.layers.backing = {length(), length()};
            break;
        case 22:
            q.surface.tables = {rect()};
            break;
        case 23:
            if (q.backing)
                one(q.backing->cuts).onCloth = rect(), one(q.backing->panels).area = rect();
            break;
        case 24:
            if (q.batting)
                one(q.batting->pieces).area = rect(),
                one(q.batting->joins).to = {length(), length()};
            break;
        }
    }

private:
    Random random_;
};

TEST(Checker, SaysSomethingOfAnyGarbageAndNeverFails) {
    for (std::uint64_t seed = 1; seed <= 400; ++seed) {
        SCOPED_TRACE("seed " + std::to_string(seed));
        Good good = seed % 4 == 0   ? goodPlan()
                    : seed % 4 == 1 ? goodPlan(Basting::With::dots, 13_mm)
                    : seed % 4 == 2 ? goodPlan(Basting::With::thread)
                                    : goodPlan(Basting::With::spray);
        Garbage garbage{seed};
        for (std::uint64_t i = 0; i < 1 + seed % 20; ++i)
            garbage.spoil(good);
        const Findings once = checkPlan(good.session, good.plan);
        EXPECT_EQ(once, checkPlan(good.session, good.plan));
        const auto file = nlohmann::json::parse(writePlan(good.plan));
        for (const Finding& f : once) {
            const nlohmann::json::json_pointer place{f.field};
            EXPECT_TRUE(file.contains(place) || file.contains(place.parent_pointer()))
                << f.field << ": " << f.text;
        }
        if (seed % 20 == 19) {
            EXPECT_FALSE(once.empty());
        }
    }
}

TEST(Checker, OfAnEmptyPlanSaysThatTheQuiltIsMissing) {
    const Good good = goodPlan();
    const Findings findings = checkPlan(good.session, Plan{});
    ASSERT_FALSE(findings.empty());
    EXPECT_EQ(findings.front().subject, "plan.quilts");
}

TEST(Checker, AsksNothingOfWhatThePlanSaysIsNotThere) {
    Good good = goodPlan();
    good.plan = Plan{};
    good.plan.quilts.emplace_back();
    good.plan.quilts.front().name = good.job().name;
    good.plan.quilts.front().layers = {{48_in, 40_in}, {}, {}};
    good.plan.findings = {{Finding::Kind::layerShort, Finding::Level::stop, "/batting/width",
                           "None fits.", "Buy one.", "batting"},
                          {Finding::Kind::layerShort, Finding::Level::stop, "/backing/width",
                           "Short.", "Buy more.", "backing"}};
    for (Finding& f : good.plan.findings)
        f.quilt = 0;
    EXPECT_EQ(broken(good), std::set<std::string>{});
}

TEST(Checker, AStopOfOneQuiltDoesNotExcuseAnother) {
    Good good = goodPair();
    good.zone("p1.A3").points.pop_back();
    const Finding wrong{Finding::Kind::input, Finding::Level::stop, "/top", "Wrong.", "Cure."};
    good.plan.findings = {ofQuilt(wrong, 1, true)};
    EXPECT_TRUE(broken(good).contains("points.coverage"));
    good.plan.findings = {ofQuilt(wrong, 0, true)};
    EXPECT_FALSE(broken(good).contains("points.coverage"));
}

TEST(Checker, ListsAFewAndCountsTheRest) {
    Good good = goodPlan();
    for (Zone& z : good.quilt().zones)
        for (PlacedPoint& p : z.points)
            p.angle = 180;
    std::vector<std::string> texts;
    for (const Finding& f : checkPlan(good.session, good.plan))
        if (f.subject == "points.angle")
            texts.push_back(f.text.english());
    ASSERT_EQ(texts.size(), 6u);
    EXPECT_EQ(texts.back(), "There are 149 more of this kind, not listed.");
}

} // namespace
} // namespace bastewright::testing

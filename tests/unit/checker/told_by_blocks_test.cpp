#include "checker/rules/rules.h"

#include <gtest/gtest.h>

#include <functional>

namespace bastewright::check {
namespace {

/// Two by two blocks of 10 in with 2 in of sashing and 1 in of border: 24 x 24 in, five dots in
/// every block, one in every strip and on the post, three along the head, one more at the foot.
struct Made {
    Session session;
    Plan plan;

    Made() {
        Job& job = session.jobs.emplace_back();
        job.name = "Tide Table";
        job.top.width = job.top.length = {24_in};
        job.top.grid = BlockGrid{.columns = 2,
                                 .rows = 2,
                                 .block = 10_in,
                                 .sashing = 2_in,
                                 .border = 1_in,
                                 .innerX = {},
                                 .innerY = {}};
        job.basting.with = Basting::With::dots;
        QuiltPlan& quilt = plan.quilts.emplace_back();
        quilt.blocks = PinBlocks{
            .block = 10_in,
            .inBlock = {{2_in, 2_in}, {8_in, 2_in}, {5_in, 5_in}, {2_in, 8_in}, {8_in, 8_in}},
            .perStrip = 1,
            .posts = true,
            .edges = {{Side::head, 1_in, {6_in, 12_in, 18_in}}},
            .leftOut = {},
            .singles = {{12_in, 23_in}}};
        Zone& zone = quilt.zones.emplace_back();
        for (const Length x : {1_in, 13_in})
            for (const Length y : {1_in, 13_in})
                for (const Point& p : quilt.blocks->inBlock)
                    zone.points.push_back({{x + p.x, y + p.y}, 0});
        for (const Point& p : {Point{12_in, 6_in}, Point{12_in, 18_in}, Point{6_in, 12_in},
                               Point{18_in, 12_in}, Point{12_in, 12_in}, Point{6_in, 1_in},
                               Point{12_in, 1_in}, Point{18_in, 1_in}, Point{12_in, 23_in}})
            zone.points.push_back({p, 0});
    }

    PinBlocks& blocks() { return *plan.quilts.front().blocks; }
    std::vector<PlacedPoint>& points() { return plan.quilts.front().zones.front().points; }

    Findings complaints() const {
        Findings out;
        Report report{"points.blocks", out};
        const PlanView view{session, plan};
        pointsBlocks(view.quilts.front(), report);
        report.close();
        return out;
    }
};

TEST(ToldByBlocks, EveryPointIsLaidFromTheFigure) {
    const Made made;
    EXPECT_TRUE(made.complaints().empty()) << made.complaints().front().text;
}

TEST(ToldByBlocks, WhatIsLeftOutIsNotLaid) {
    Made made;
    made.blocks().leftOut = {{12_in, 12_in}};
    std::erase_if(made.points(), [](const PlacedPoint& p) { return p.at == Point{12_in, 12_in}; });
    EXPECT_TRUE(made.complaints().empty());
}

TEST(ToldByBlocks, SpoiledPlansAreFoundOut) {
    const std::vector<std::pair<const char*, std::function<void(Made&)>>> spoiled{
        {"a point that no block has",
         [](Made& m) {
             m.points().push_back({{4_in, 4_in}, 0});
         }},
        {"a point of a block is missing", [](Made& m) { m.points().erase(m.points().begin()); }},
        {"a point twice", [](Made& m) { m.points().push_back(m.points().front()); }},
        {"a point beside its place", [](Made& m) { m.points()[7].at.x += 0.125_in; }},
        {"a figure that is another from the side",
         [](Made& m) {
             m.blocks().inBlock.front() = {2_in, 3_in};
         }},
        {"no posts", [](Made& m) { m.blocks().posts = false; }},
        {"two in every strip", [](Made& m) { m.blocks().perStrip = 2; }},
        {"a line nearer to the edge", [](Made& m) { m.blocks().edges.front().in = 0.75_in; }},
        {"a line along another side", [](Made& m) { m.blocks().edges.front().side = Side::left; }},
        {"a single point elsewhere", [](Made& m) { m.blocks().singles.front().x += 1_in; }},
        {"left out, and laid",
         [](Made& m) {
             m.blocks().leftOut = {{12_in, 12_in}};
         }},
        {"left out where nothing is",
         [](Made& m) {
             m.blocks().leftOut = {{4_in, 4_in}};
         }},
        {"another block", [](Made& m) { m.blocks().block = 9_in; }},
        {"oblong blocks", [](Made& m) { m.session.jobs.front().top.grid->blockLength = 11_in; }},
        {"no blocks", [](Made& m) { m.session.jobs.front().top.grid.reset(); }},
    };
    for (const auto& [what, spoil] : spoiled) {
        Made made;
        spoil(made);
        EXPECT_FALSE(made.complaints().empty()) << what;
    }
}

} // namespace
} // namespace bastewright::check

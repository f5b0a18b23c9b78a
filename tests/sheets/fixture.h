#pragma once

#include "plan/plan.h"

#include <string>

/// Sessions and plans made by hand, by a rule simple enough to see through, so that the sheets can
/// be tested without any planner.
namespace bastewright::fixture {

/// A session of assets/demo by its name; throws where it cannot be read.
Session demo(const std::string& name);

/// Our scenario: Harbour Lights, two tables 30 × 72 side by side, four people.
Session harbourLights();

/// Nine people with names of 60 characters and of several scripts, a quilt of 120 × 120 in.
Session manyPeople();

/// The same people and names, and three quilts of 120 × 130 in.
Session threeLargeQuilts();

/// Two quilts after one another, one of them with dots.
Session twoQuilts();

/// A plan of the session: fields in rows, zones of at most 24 in, points every 4 in, tasks in turn.
Plan planByHand(const Session& session);

} // namespace bastewright::fixture

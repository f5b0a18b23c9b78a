#pragma once

#include "checker/checker.h"

#include <set>
#include <string>
#include <vector>

namespace bastewright::testing {

/// A session with its plan, both made by hand.
struct Good {
    Session session;
    Plan plan;

    Job& job() { return session.jobs.front(); }
    QuiltPlan& quilt() { return plan.quilts.front(); }
    Pass& pass(int number) { return quilt().passes.at(static_cast<std::size_t>(number - 1)); }
    Zone& zone(const std::string& id);
    Task& task(const std::string& id);
    void remove(const std::string& id); ///< a task
    void forget(const std::string& id); ///< what a task comes after, and which come after it
    /// Works out anew what follows from the layers' sizes and the places of the tables: fields,
    /// overhangs, spares, holds, rolls and shifts.
    void lay();
    void lay(int number, Length tableHead); ///< the same, with the table of a pass elsewhere
    /// Puts the tasks back in order of start and id and sets the finish, after a time was changed.
    void reorder();
};

/// A quilt of 48 × 40 in with a grid of seams on one table of 72 × 30 in, in three passes: the
/// middle first, then the foot, then the head. Ada and Bo work it with 154 pins, or as many dots.
Good goodPlan(Basting::With with = Basting::With::pins, Length batting = Length::millimetres(3));

/// The tables stand against a wall at the foot: what goes on past it lies rolled on the edge.
void wallAtFoot(Good& good);

/// A roll of so much quilt along the whole backing, with the clips that hold it.
Roll goodRoll(Side side, Length rolled, Length batting);

/// Two such quilts, one after the other on the same table.
Good goodPair();

/// Two such quilts with dots and thick batting, each on a table of its own, one after the other.
Good goodTwoTables();

/// The names of the rules that the checker finds broken, once each.
std::set<std::string> broken(const Good& good);

} // namespace bastewright::testing

#pragma once

#include <algorithm>
#include <cstdint>
#include <limits>
#include <span>
#include <vector>

/// The abstract scheduling problem behind a session: activities with precedence, people who can do
/// some of them at their own speed and within their hours, shared tools, and standing room along
/// edges. Resource-constrained project scheduling (Kolisch and Sprecher 1997) with multi-skilled
/// people; knows nothing of quilts. Times are whole seconds (or any unit) from zero.
namespace bastewright::crew {

inline constexpr int kNever = std::numeric_limits<int>::max() / 4;

struct Person {
    int from = 0, until = kNever;
};

/// Somewhere along a strip where a person may stand: the near end of the interval lies in lo..hi,
/// and best at `want`.
struct Spot {
    int strip = 0;
    std::int64_t lo = 0, hi = 0, want = 0;
};

/// An edge along which people stand side by side, each taking `room` of it.
struct Strip {
    std::int64_t room = 0;
    std::int64_t lo = 0, hi = 0; ///< its extent
    /// Where it lies on the way round a table, for how far people walk: the table, the length of
    /// that way, where `lo` is on it, and which way the strip runs.
    int table = 0;
    std::int64_t round = 0, at = 0;
    bool against = false;
};

/// How many find room side by side; at least one.
constexpr std::int64_t peopleAt(const Strip& strip) {
    return std::max<std::int64_t>(1, (strip.hi - strip.lo) / strip.room);
}

/// Place on the way round the table of the middle of an interval that begins at `place`.
std::int64_t onTheWay(const Strip& strip, std::int64_t place);

/// Between two tables people walk about as far as along a room (120 in, common practice).
inline constexpr std::int64_t kToAnotherTable = 3'048'000'000;

/// How far it is from one place to another.
std::int64_t walk(const Strip& a, std::int64_t placeA, const Strip& b, std::int64_t placeB);

/// One person who may do an activity, the time it takes them, and where they can stand for it.
struct Mode {
    int person = 0;
    int seconds = 0;
    int firstSpot = 0, endSpot = 0; ///< into Problem::spots; equal where no place is needed
};

struct Activity {
    int seconds = 0;           ///< used only where team is 0
    int team = 0;              ///< how many people it takes at once; the slowest sets the time
    std::vector<Mode> modes{}; ///< who may; fastest first
    std::vector<int> demand{}; ///< of each tool; empty for none
    std::vector<int> after{};  ///< activities that must have ended
    int apart = -1;            ///< an activity that somebody else has to do
};

/// Time for which somebody, or some tools, are spoken for by other work.
struct Booking {
    int person = -1; ///< -1: only tools
    std::vector<int> demand{};
    int start = 0, end = 0;
};

struct Problem {
    std::vector<Activity> activities;
    std::vector<Person> people;
    std::vector<int> tools; ///< how many of each
    std::vector<Strip> strips;
    std::vector<Spot> spots;
    std::vector<Booking> booked;
    int from = 0; ///< nothing begins before this

    int size() const { return static_cast<int>(activities.size()); }
    const Activity& at(int i) const { return activities[static_cast<std::size_t>(i)]; }
};

/// Least time an activity can take.
int shortest(const Activity& a);

/// Activities that follow each.
std::vector<std::vector<int>> followers(const Problem& problem);

/// Same problem with time running backwards from `horizon`: hours and bookings too. Hours that have
/// no beginning have no end, so that a schedule longer than the horizon is possible.
Problem mirrored(const Problem& problem, int horizon);

/// Turns only the hours and bookings of a problem into `back`, made by `mirrored`, for another
/// horizon.
void mirrorHours(const Problem& problem, int horizon, Problem& back);

/// True where people's time is not all the same: then turning a schedule round is not a schedule.
bool hasHours(const Problem& problem);

/// Longest way from the end of each activity to the end of everything, taking every activity at its
/// shortest and, before each activity, at least the work of all it waits for shared by so many
/// hands.
std::vector<double> tails(const Problem& problem, double hands);

/// All activities so that each comes after those it waits for; of those ready, the largest key
/// first, then the lowest index.
std::vector<int> orderByKey(const Problem& problem, const std::vector<std::vector<int>>& next,
                            std::span<const double> key);

/// Who starts what, when, and stands where.
struct Schedule {
    std::vector<int> start, end;
    std::vector<std::vector<int>> crew; ///< people of each activity
    std::vector<int> strip;             ///< -1 where no place is taken
    std::vector<std::int64_t> place;    ///< near end of the interval on the strip
    int finish = 0;
    int overtime = 0; ///< sum over people of how long they are kept beyond their hours
};

/// True where a is the better: less beyond people's hours, then the earlier finish.
inline bool better(const Schedule& a, const Schedule& b) {
    return a.overtime != b.overtime ? a.overtime < b.overtime : a.finish < b.finish;
}

} // namespace bastewright::crew

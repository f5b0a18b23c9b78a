#pragma once

#include <span>
#include <vector>

/// How long several people side by side take, when nobody goes on before the last of them is
/// through (docs/computation/crew.md, "Time is a range").
namespace bastewright::crew {

/// The middle (median) of the slowest of several people's times, where each time scatters round its
/// own middle as the exponential of a normal deviate of standard deviation `spread`, independently.
/// Of one person it is the time itself; of two, four and eight equal times and the trade's spread
/// 1.17, 1.34 and 1.50 times that. Times of 0 are people with nothing to do. Good to a millionth.
double middleOfSlowest(std::span<const double> middles, double spread);

/// The spread of one person's piece of work: people among one another, and one piece from the next.
double spreadOfWork();

/// The most work, in seconds at pace 1, that people of these paces can be given so that the middle
/// of the slowest is one second, with the trade's spread. Never too little (by less than 1 in 100
/// too much): for bounds.
double mostWorkInASecond(std::span<const double> paces);

/// The pace of somebody who steps up to another zone for every so much of their work: `steppingUp`
/// seconds, at any pace, for each second of it at pace 1.
constexpr double withSteppingUp(double pace, double steppingUp) {
    return pace / (1 + steppingUp * pace);
}

/// The same for many teams of a few kinds of people, each of one pace; hardly less tight and far
/// quicker.
class MostWork {
public:
    explicit MostWork(std::span<const double> paces);
    /// Of so many of each kind.
    double inASecond(std::span<const int> people) const;

private:
    std::vector<double> price_;
    std::vector<std::vector<double>> worth_; ///< by price and kind
};

} // namespace bastewright::crew

#pragma once

#include "planners/crew/problem.h"

namespace bastewright::crew {

/// A finished schedule from which single activities can be taken and given to other people, at the
/// same or another time, as long as nothing else has to move and the finish stays.
class HandingOut {
public:
    /// Changes `schedule` in place; both outlive this.
    HandingOut(const Problem& problem, Schedule& schedule);

    /// Takes an activity from its people. Remembered until `forget`.
    void take(int activity);

    /// Gives a taken activity to these people from `start` on, at the free place with the shortest
    /// walk from what they do before and to what they do after. False, and nothing given, where
    /// they are not free or may not, where it would not fit between what it waits for and what
    /// waits for it, or where it needs tools beyond `toolsUntil`.
    bool give(int activity, std::vector<int> crew, int start, int toolsUntil);

    /// Everything taken since `forget` goes back to where it was.
    void takeBack();
    void forget() { was_.clear(); }

    int load(int person) const { return load_[static_cast<std::size_t>(person)]; }
    /// How far a person walks between places.
    std::int64_t walkOf(int person) const;

private:
    struct Was {
        int activity, start, end, strip;
        std::int64_t place;
        std::vector<int> crew;
    };

    int length(int i) const;
    bool given(int i) const;
    void lift(int i);
    void put(int i);
    bool has(int i, int person) const;
    bool freeAt(int person, int start, int end) const;
    bool findPlace(int i, const Mode& mode);
    std::int64_t between(int a, int b) const;

    const Problem& problem_;
    Schedule& s_;
    std::vector<std::vector<int>> next_;
    std::vector<std::vector<int>> own_;    ///< activities by person, by start
    std::vector<std::vector<int>> stands_; ///< activities by strip
    std::vector<int> load_;
    std::vector<Was> was_;
    std::vector<std::int64_t> others_; ///< places taken beside the one looked for
};

} // namespace bastewright::crew

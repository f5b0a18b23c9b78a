#pragma once

#include "planners/crew/crew.h"
#include "planners/crew/sharing_memory.h"
#include "planners/points/points.h"
#include "planners/whole/sharing.h"

#include <map>
#include <stop_token>

namespace bastewright {

/// What ways are chosen for.
struct WayQuestion {
    /// Without handed zones, whose names are those of the way chosen without them.
    const Session& session;
    const Session& asked; ///< with them
    const std::vector<LayerSizes>& layers;
    const std::vector<PointsPlan>& points;
    std::vector<LayoutMemory>& memories;
    std::stop_token stop;
    bool outcome; ///< only how it ends is asked for: by the same choice, nothing is told
};

/// Ways laid out in full with the crew planner, one after another, the best of them kept: the
/// fewest stops, as was asked for, the earliest finish.
class WayTrials {
public:
    using Picks = std::vector<std::size_t>; ///< the choice taken for each quilt

    struct Trial {
        Picks picks;
        std::vector<QuiltPlan> quilts;
        CrewPlan crew;
        bool all = false; ///< with all sharings
    };
    /// What is known of a way of the only quilt.
    struct LaidOut {
        Seconds finish;
        std::size_t stops;
        Sentence why; ///< it does not work
    };

    WayTrials(const WayQuestion& question, std::vector<Shared> shared);

    const WayQuestion& question() const { return question_; }
    std::size_t quilts() const { return shared_.size(); }
    std::size_t people() const;
    const std::vector<PassChoice>& choices(std::size_t quilt) const {
        return shared_[quilt].choices;
    }
    PassRequest requestOf(std::size_t quilt) const;

    /// How every quilt lies, by the first of its choices or nowhere.
    std::vector<QuiltPlan> lying() const;

    /// The first choices, with all sharings; what follows is compared with them.
    void begin();
    const Trial& best() const { return best_; }
    std::size_t bestStops() const { return stops(best_.crew); }
    Seconds bestFinish() const { return best_.crew.finish; }
    const std::map<std::size_t, LaidOut>& laidOut() const { return laidOut_; }

    /// Evens out a choice (see makeEven), as it is before it is laid out.
    const PassChoice& evenedOut(std::size_t quilt, std::size_t choice);
    /// The best with another choice for one quilt; gives its stops.
    std::size_t tryChoice(std::size_t quilt, std::size_t choice);
    /// The same with a choice that is forgotten where it is not better.
    std::size_t tryNew(std::size_t quilt, PassChoice&& choice);
    /// Another version of a way of the only quilt, kept if it ends half a minute sooner.
    void tryVersion(std::size_t choice, PassChoice&& other);
    /// No version of a way of the only quilt ends before this.
    Seconds leastFinishOf(const PassChoice& choice) const;

    /// So much has been laid out that only what is needed is any more; `works`: some way does.
    bool spent(bool works) const;

    /// Plans the crew of the best once more as it is told: with handed zones, all sharings, its
    /// range and its bound. Where only the outcome is asked for, without range and bound, and only
    /// where it can differ.
    void finish();
    std::vector<Shared>& shared() { return shared_; }
    Trial takeBest() && { return std::move(best_); }

private:
    /// `sharings`: as in CrewOptions.
    Trial layOut(Picks picks, bool sharings);
    void note(const Trial& trial);
    bool isBetter(const Trial& trial) const;
    static std::size_t stops(const CrewPlan& crew);

    const WayQuestion& question_;
    std::vector<Shared> shared_;
    std::vector<std::vector<PlacedPoint>> places_; ///< of each of `shared_`
    crew::SharingMemory sharings_;
    std::size_t work_ = 0; ///< spent on laying out
    Trial best_;
    std::map<std::size_t, LaidOut> laidOut_; ///< of the only quilt, by choice
};

} // namespace bastewright

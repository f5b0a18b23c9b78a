#pragma once

#include "planners/whole/help.h"
#include "session/private/other_passes.h"

#include <optional>
#include <stop_token>
#include <vector>

namespace bastewright {

/// A quilt that goes on otherwise: all its passes, those that stay among them.
struct Moved {
    int job = 0;
    QuiltPlan quilt;
};

/// Other passes for what is left of some quilts, and everybody's work with them. What is basted
/// stays; a pass on the table, once anything of it is done, is finished where it lies.
class RestPlanning {
public:
    RestPlanning(const Session& session, const Plan& plan, const LiveState& state,
                 const ReplanOptions& options, std::stop_token stop);

    /// Passes of a quilt, from the first, that stay as they are.
    int kept(int job) const { return kept_[static_cast<std::size_t>(job)]; }
    bool isNothingKept() const;
    bool isOver(int job) const; ///< nothing of the quilt is left to be planned otherwise

    /// The quilt's passes with these points on these tables, or on the floor where there are none;
    /// nothing where none serves.
    std::optional<QuiltPlan> lay(int job, const std::vector<PlacedPoint>& points,
                                 const std::vector<Table>& tables) const;

    /// Where no pass is kept: all of the quilts with these points, which are those of the session.
    OtherPasses anew(std::vector<PointsPlan> found) const;

    /// Everybody's work; a pass that is begun first, as it lies. `points` are those of all quilts,
    /// `found` what was found about the quilts where it is not what was found before.
    OtherPasses withPeople(std::vector<Moved> moved,
                           const std::vector<std::vector<PlacedPoint>>& points,
                           const Findings* found = nullptr) const;

private:
    /// Of what is not kept some zones are left out, by their names; other passes have other zones.
    bool hasLeftOut(int job) const;
    std::optional<QuiltPlan> layAnew(int job, const std::vector<PlacedPoint>& points,
                                     const std::vector<Table>& tables) const;

    const Session& session_;
    const Plan& plan_;
    const LiveState& state_;
    const ReplanOptions& options_;
    std::stop_token stop_;
    std::vector<int> kept_; ///< by quilt
};

OtherPasses noOtherPasses(Sentence why);
Sentence noTableServes();

} // namespace bastewright

#pragma once

#include "planners/batting/join_search.h"

#include <memory>
#include <optional>
#include <vector>

namespace bastewright::batting {

struct Sized;
enum class Share;

struct JoinLayout {
    struct Piece {
        int item = 0;
        bool turned = false;
        Rect area;
    };
    std::vector<Piece> pieces;
    std::vector<Segment> joins; ///< in the order they are made
    Length joined;              ///< total length of the joins
    int corners = 0;            ///< places where four corners (nearly) meet
    int alongSeams = 0;         ///< joins along a backing seam
};

/// Common practice: joins that meet another from both sides are staggered.
inline constexpr Length kStagger = Length::inches(1);
/// Common practice: joins lie off the backing's seams.
inline constexpr Length kOffSeams = Length::inches(2);

/// What a join eats: half of the overlap on the one side of it, the rest on the other.
struct Overlap {
    Length before,
        after; ///< of the part on the left (or at the head), and on the right (at the foot)
    explicit Overlap(Length whole)
        : before{whole / 2}
        , after{whole - whole / 2} {}
};

/// Lays a tree out to exactly `finished`, whose joins eat `overlap`. The tree was found for pieces
/// and target each less one overlap a direction. No piece shows less than 3 in where it need not.
class TreeLayouts {
public:
    TreeLayouts(const JoinTree& tree, Size finished, Length overlap,
                const std::vector<Segment>& backingSeams);
    ~TreeLayouts();
    TreeLayouts(TreeLayouts&&) noexcept;
    TreeLayouts& operator=(TreeLayouts&&) noexcept;

    /// With the shortest joins this tree allows.
    JoinLayout plain() const;

    /// The best in which no four corners meet: number 0 as short as can be, others with what is to
    /// spare shared otherwise. Where there is none, nothing is to spare, and every order was tried:
    /// `provenNone`.
    static constexpr int kOtherShares = 12;
    struct Staggered {
        std::optional<JoinLayout> best;
        bool provenNone = false;
    };
    Staggered staggered(int number) const;

    /// Parts in any order.
    JoinLayout shuffled(std::uint64_t number) const;

private:
    struct Whole;
    Sized sizedAs(const std::vector<Share>& shares) const;
    JoinLayout laid(const Sized& sized) const;

    std::unique_ptr<Whole> whole_;
    Size finished_;
    Length overlap_;
    const std::vector<Segment>* backingSeams_;
};

} // namespace bastewright::batting

#pragma once

#include <optional>
#include <string_view>

namespace bastewright {

/// The paper sheets are made for. A4 is 210 × 297 mm (ISO 216), Letter 8 1/2 × 11 in (ANSI Y14.1).
enum class Paper { a4, letter };

constexpr std::string_view name(Paper p) {
    return p == Paper::a4 ? "a4" : "letter";
}

constexpr std::optional<Paper> paper(std::string_view text) {
    if (text == "a4")
        return Paper::a4;
    if (text == "letter")
        return Paper::letter;
    return {};
}

namespace sheets {

/// Everything on a page is in points, 72 to the inch, from the page's upper left corner.
struct PageFrame {
    double width = 0, height = 0;

    static constexpr PageFrame of(Paper p) {
        return p == Paper::a4 ? PageFrame{595.276, 841.890} : PageFrame{612, 792};
    }

    /// Nothing is ever drawn nearer to the paper's edge: most printers leave 3 to 6 mm blank, and a
    /// sheet is held and clipped there.
    static constexpr double kMargin = 12 / 25.4 * 72;

    // The frame of text stands a little inside the margin, so that strokes and overhanging letters
    // stay out of it too.
    static constexpr double kSide = kMargin + 5;
    static constexpr double kFoot = 20; ///< height of the running foot with the white above it

    constexpr double left() const { return kSide; }
    constexpr double top() const { return kSide; }
    constexpr double foot() const { return height - kSide - kFoot; }
    constexpr double contentWidth() const { return width - 2 * kSide; }
    constexpr double contentHeight() const { return foot() - top(); }
};

} // namespace sheets
} // namespace bastewright

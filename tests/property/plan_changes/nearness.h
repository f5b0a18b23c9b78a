#pragma once

#include <span>
#include <string>
#include <string_view>

namespace bastewright::testing {

/// How near to a changed field of a plan's file a place is that somebody names.
enum class Near {
    onPath,  ///< the field, something in it, or what it stands in: an element, a list, a part
    element, ///< another field of the same element of a list, or of the same part of the quilt
    list,    ///< another element of the same list
    quilt,   ///< another part of the same quilt
    elsewhere
};
inline constexpr std::size_t kNear = static_cast<std::size_t>(Near::elsewhere) + 1;

std::string_view name(Near near);

/// Both are JSON pointers into the same file.
Near nearness(const std::string& field, const std::string& place);

/// A field of which a change may be named no nearer than that, and why; of any other it is named in
/// its element, or in its part of the quilt, at least.
struct Afar {
    std::string_view path;
    Near near;
    std::string_view why;
};

std::span<const Afar> namedAfar();

/// True where a change of a field with that path may be named there and no nearer.
bool mayBeNamed(std::string_view path, Near near);

} // namespace bastewright::testing

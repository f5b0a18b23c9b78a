#pragma once

#include <optional>
#include <string_view>

namespace bastewright {

/// What the segments of a JPEG say of it (ITU-T T.81, annex B), without decoding it: by these it is
/// known what decoding takes.
struct JpegParts {
    int width, height; ///< pixels, at least 1
    int components;    ///< 1 to 4
    int scans;         ///< decoders go over the whole picture once for each
    bool baseline;     ///< else extended sequential or progressive, whose coefficients are all kept
};

/// Walks from SOI to EOI; what follows is not looked at. Nothing where the segments do not follow
/// each other to an end, or are of a kind decoders seldom know. Linear in the bytes.
std::optional<JpegParts> jpegParts(std::string_view bytes);

} // namespace bastewright

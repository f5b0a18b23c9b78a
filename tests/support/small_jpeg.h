#pragma once

#include <string>

namespace bastewright {

/// The segments of a baseline JPEG of this size, one component, without a picture that could be
/// decoded (ITU-T T.81, annex B); the comment makes it as long as wanted.
inline std::string smallJpeg(int width, int height, const std::string& comment = {}) {
    const auto word = [](std::size_t n) {
        return std::string{char(n >> 8 & 0xFF), char(n & 0xFF)};
    };
    return std::string{"\xFF\xD8"} + "\xFF\xFE" + word(comment.size() + 2) + comment + "\xFF\xC0" +
           word(11) + '\x08' + word(std::size_t(height)) + word(std::size_t(width)) +
           std::string{"\x01\x01\x11\x00", 4} + "\xFF\xDA" + word(8) +
           std::string{"\x01\x01\x00\x00\x3F\x00", 6} + std::string{"\x12\xFF\x00\x34", 4} +
           "\xFF\xD9";
}

} // namespace bastewright

#include "job/photo.h"

#include "job/jpeg_parts.h"

#include <algorithm>
#include <cstdint>

namespace bastewright {
namespace {

constexpr std::string_view kAlphabet =
    "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789+/";

/// Nothing where the text is not base64, or says more than `most` bytes.
std::optional<std::string> fromBase64(std::string_view text, std::size_t most) {
    if (text.size() % 4 != 0 || text.size() / 4 * 3 > most + 2)
        return {};
    const std::size_t padding = text.ends_with("==") ? 2 : text.ends_with('=') ? 1 : 0;
    std::string out;
    out.reserve(text.size() / 4 * 3);
    for (std::size_t i = 0; i < text.size(); i += 4) {
        std::uint32_t bits = 0;
        const bool last = i + 4 == text.size();
        for (std::size_t k = 0; k < 4; ++k) {
            const bool padded = last && k >= 4 - padding;
            const auto digit = padded ? 0 : kAlphabet.find(text[i + k]);
            if (digit == std::string_view::npos)
                return {};
            bits = bits << 6 | std::uint32_t(digit);
        }
        for (std::size_t k = 0; k < (last ? 3 - padding : 3); ++k)
            out += char(bits >> (16 - 8 * k) & 0xFF);
    }
    return out.size() <= most ? std::optional{std::move(out)} : std::nullopt;
}

} // namespace

std::optional<Photo> Photo::ofJpeg(std::string_view bytes) {
    if (bytes.size() > limits::kPhotoBytes)
        return {};
    const auto parts = jpegParts(bytes);
    if (!parts || !parts->baseline || parts->scans > parts->components ||
        std::max(parts->width, parts->height) > limits::kPhotoSide)
        return {};
    Photo out;
    out.held_ = std::make_shared<const Held>(Held{std::string{bytes}, parts->width, parts->height});
    return out;
}

std::optional<Photo> Photo::ofBase64(std::string_view text) {
    const auto bytes = fromBase64(text, limits::kPhotoBytes);
    return bytes ? ofJpeg(*bytes) : std::nullopt;
}

std::string Photo::base64() const {
    const auto bytes = jpeg();
    std::string out;
    out.reserve((bytes.size() + 2) / 3 * 4);
    for (std::size_t i = 0; i < bytes.size(); i += 3) {
        const auto there = std::min<std::size_t>(3, bytes.size() - i);
        std::uint32_t bits = 0;
        for (std::size_t k = 0; k < 3; ++k)
            bits = bits << 8 | (k < there ? std::uint8_t(bytes[i + k]) : 0U);
        for (std::size_t k = 0; k < 4; ++k)
            out += k <= there ? kAlphabet[bits >> (18 - 6 * k) & 63] : '=';
    }
    return out;
}

} // namespace bastewright

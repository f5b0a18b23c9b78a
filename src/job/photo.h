#pragma once

#include <compare>
#include <cstddef>
#include <memory>
#include <optional>
#include <string>
#include <string_view>

namespace bastewright {

namespace limits {
inline constexpr std::size_t kPhotoBytes = 200'000; ///< of the JPEG
inline constexpr int kPhotoSide = 1600;             ///< pixels
} // namespace limits

/// A photo of a top, straightened: its corners are those of the top, head up. Copies share what
/// they hold. A photo that is there is a baseline JPEG (ITU-T T.81) within the limits whose parts
/// follow each other to its end, so that decoding it takes bounded memory and time; whether it
/// shows anything is not looked at.
class Photo {
public:
    /// No photo.
    Photo() = default;
    /// Of a file's bytes; nothing where they are not as said above. Linear in them.
    static std::optional<Photo> ofJpeg(std::string_view bytes);
    /// Of the same as base64 text (RFC 4648, section 4: padded, without line breaks).
    static std::optional<Photo> ofBase64(std::string_view text);

    bool empty() const { return !held_; }
    /// Pixels; 0 where there is none.
    int width() const { return held_ ? held_->width : 0; }
    int height() const { return held_ ? held_->height : 0; }
    /// The file's bytes; empty where there is none.
    std::string_view jpeg() const { return held_ ? std::string_view{held_->jpeg} : ""; }
    std::string base64() const;

    bool operator==(const Photo& o) const { return held_ == o.held_ || jpeg() == o.jpeg(); }
    std::strong_ordering operator<=>(const Photo& o) const {
        return held_ == o.held_ ? std::strong_ordering::equal : jpeg() <=> o.jpeg();
    }

private:
    struct Held {
        std::string jpeg;
        int width, height;
    };
    std::shared_ptr<const Held> held_;
};

} // namespace bastewright

#include "job/jpeg_parts.h"

#include <cstddef>
#include <cstdint>

namespace bastewright {
namespace {

class Segments {
public:
    explicit Segments(std::string_view bytes)
        : bytes_{bytes} {}

    std::optional<JpegParts> walk() {
        if (byte() != 0xFF || byte() != kStartOfImage)
            return {};
        for (;;) {
            const int marker = nextMarker();
            if (marker == kEndOfImage)
                return found_.scans > 0 ? std::optional{found_} : std::nullopt;
            if (marker < 0 || !takeSegment(marker))
                return {};
        }
    }

private:
    static constexpr int kStartOfImage = 0xD8, kEndOfImage = 0xD9, kStartOfScan = 0xDA,
                         kBaseline = 0xC0, kProgressive = 0xC2, kLastOfFrames = 0xCF,
                         kTablesOfCodes = 0xC4, kRestart0 = 0xD0, kRestart7 = 0xD7;

    std::string_view bytes_;
    std::size_t at_ = 0;
    JpegParts found_{};

    /// The next byte; -1 at the end.
    int byte() { return at_ < bytes_.size() ? std::uint8_t(bytes_[at_++]) : -1; }
    int word() {
        const int high = byte(), low = byte();
        return low < 0 ? -1 : high * 256 + low;
    }
    int nextMarker() {
        if (byte() != 0xFF)
            return -1;
        int marker = 0xFF;
        while (marker == 0xFF) // fill bytes
            marker = byte();
        return marker;
    }

    bool takeSegment(int marker) {
        if (marker < kBaseline || (marker >= kRestart0 && marker < kEndOfImage))
            return false; // markers without a length, and reserved ones
        const std::size_t from = at_;
        const int length = word();
        if (length < 2 || from + std::size_t(length) > bytes_.size())
            return false;
        if (marker <= kProgressive && !takeFrame(marker, length))
            return false;
        if (marker > kProgressive && marker <= kLastOfFrames && marker != kTablesOfCodes)
            return false; // lossless, hierarchical, arithmetic
        at_ = from + std::size_t(length);
        if (marker != kStartOfScan)
            return true;
        skipCoded();
        ++found_.scans;
        return found_.components > 0;
    }

    bool takeFrame(int marker, int length) {
        if (found_.components > 0 || length < 8)
            return false;
        const int precision = byte();
        found_.height = word();
        found_.width = word();
        found_.components = byte();
        found_.baseline = marker == kBaseline;
        return precision == 8 && found_.width > 0 && found_.height > 0 && found_.components >= 1 &&
               found_.components <= 4;
    }

    /// Entropy-coded data ends at a marker that is no restart; FF 00 is a coded FF.
    void skipCoded() {
        for (; at_ + 1 < bytes_.size(); ++at_) {
            const int next = std::uint8_t(bytes_[at_ + 1]);
            if (std::uint8_t(bytes_[at_]) == 0xFF && next != 0 &&
                (next < kRestart0 || next > kRestart7))
                return;
        }
    }
};

} // namespace

std::optional<JpegParts> jpegParts(std::string_view bytes) {
    return Segments{bytes}.walk();
}

} // namespace bastewright

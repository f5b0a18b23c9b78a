#include "job/photo.h"

#include <algorithm>
#include <cstdint>

namespace bastewright {
namespace {

struct Frame {
    int width, height;
};

/// The segments of a JPEG, from SOI to EOI (ITU-T T.81, annex B). One frame of baseline DCT and as
/// many scans as it has components are accepted: decoders work on the whole picture once a scan.
class Segments {
public:
    explicit Segments(std::string_view bytes)
        : bytes_{bytes} {}

    std::optional<Frame> frame() {
        if (byte() != 0xFF || byte() != kStartOfImage)
            return {};
        for (;;) {
            const int marker = nextMarker();
            if (marker == kEndOfImage)
                return scans_ > 0 ? frame_ : std::nullopt;
            if (marker < 0 || !takeSegment(marker))
                return {};
        }
    }

private:
    static constexpr int kStartOfImage = 0xD8, kEndOfImage = 0xD9, kStartOfScan = 0xDA,
                         kBaseline = 0xC0, kLastOfFrames = 0xCF, kTablesOfCodes = 0xC4,
                         kArithmetic = 0xCC, kRestart0 = 0xD0, kRestart7 = 0xD7;

    std::string_view bytes_;
    std::size_t at_ = 0;
    std::optional<Frame> frame_;
    int components_ = 0, scans_ = 0;

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
        if (marker == kBaseline && !takeFrame(length))
            return false;
        if (marker > kBaseline && marker <= kLastOfFrames && marker != kTablesOfCodes &&
            marker != kArithmetic)
            return false; // progressive, lossless, arithmetic
        at_ = from + std::size_t(length);
        if (marker != kStartOfScan)
            return true;
        skipCoded();
        return frame_ && ++scans_ <= components_;
    }

    bool takeFrame(int length) {
        if (frame_ || length < 8)
            return false;
        const int precision = byte(), height = word(), width = word();
        components_ = byte();
        frame_ = Frame{width, height};
        return precision == 8 && width > 0 && width <= limits::kPhotoSide && height > 0 &&
               height <= limits::kPhotoSide && components_ >= 1 && components_ <= 4;
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
    const auto frame = Segments{bytes}.frame();
    if (!frame)
        return {};
    Photo out;
    out.held_ = std::make_shared<const Held>(Held{std::string{bytes}, frame->width, frame->height});
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

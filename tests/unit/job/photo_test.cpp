#include "job/colour.h"
#include "job/photo.h"
#include "support/random.h"
#include "support/small_jpeg.h"

#include <gtest/gtest.h>

namespace bastewright {
namespace {

TEST(Photo, TellsItsSizeAndGivesItsBytesBack) {
    const std::string jpeg = smallJpeg(700, 900, "of Harbour Lights");
    const auto photo = Photo::ofJpeg(jpeg);
    ASSERT_TRUE(photo);
    EXPECT_FALSE(photo->empty());
    EXPECT_EQ(photo->width(), 700);
    EXPECT_EQ(photo->height(), 900);
    EXPECT_EQ(photo->jpeg(), jpeg);
    EXPECT_EQ(Photo::ofBase64(photo->base64()), photo);
    EXPECT_TRUE(Photo{}.empty());
    EXPECT_NE(Photo{}, *photo);
}

// The test vectors of RFC 4648, section 10, within a comment: every length of padding.
TEST(Photo, IsWrittenAsBase64) {
    for (const std::string tail : {"", "f", "fo", "foo", "foob", "fooba", "foobar"}) {
        const auto photo = Photo::ofJpeg(smallJpeg(8, 8, tail));
        ASSERT_TRUE(photo);
        const std::string text = photo->base64();
        EXPECT_EQ(text.size() % 4, 0u);
        EXPECT_EQ(text.substr(0, 4), "/9j/"); // FF D8 FF
        const auto again = Photo::ofBase64(text);
        ASSERT_TRUE(again) << text;
        EXPECT_EQ(again->jpeg(), photo->jpeg());
    }
}

TEST(Photo, IsRefusedWhereItIsNotOne) {
    const std::string good = smallJpeg(8, 8);
    EXPECT_FALSE(Photo::ofJpeg(""));
    EXPECT_FALSE(Photo::ofJpeg("GIF89a"));
    EXPECT_FALSE(Photo::ofBase64(""));
    EXPECT_FALSE(Photo::ofBase64("/9j"));
    EXPECT_FALSE(Photo::ofBase64("/9j/ /9j"));
    EXPECT_FALSE(Photo::ofBase64("===="));
    for (std::size_t n = 0; n < good.size(); ++n)
        EXPECT_FALSE(Photo::ofJpeg(good.substr(0, n))) << "cut off after " << n << " bytes";
    EXPECT_TRUE(Photo::ofJpeg(good + "trailing bytes are no harm"));
}

TEST(Photo, IsRefusedWhereItTakesTooMuch) {
    EXPECT_TRUE(Photo::ofJpeg(smallJpeg(limits::kPhotoSide, limits::kPhotoSide)));
    EXPECT_FALSE(Photo::ofJpeg(smallJpeg(limits::kPhotoSide + 1, 8)));
    EXPECT_FALSE(Photo::ofJpeg(smallJpeg(8, 65'535)));
    EXPECT_FALSE(Photo::ofJpeg(smallJpeg(0, 8)));
    std::string long_ = smallJpeg(8, 8);
    while (long_.size() <= limits::kPhotoBytes) // further comments
        long_.insert(2, std::string{"\xFF\xFE\xFF\xFF"} + std::string(65'533, 'x'));
    EXPECT_FALSE(Photo::ofJpeg(long_));
    // A picture of many scans takes the time of as many pictures.
    const std::string good = smallJpeg(8, 8);
    const auto scan = good.find("\xFF\xDA");
    std::string scans = good;
    scans.insert(scan, good.substr(scan, good.size() - 2 - scan));
    EXPECT_FALSE(Photo::ofJpeg(scans));
    std::string progressive = good;
    progressive[good.find("\xFF\xC0") + 1] = '\xC2';
    EXPECT_FALSE(Photo::ofJpeg(progressive));
}

TEST(Photo, AnyBytesAreReadOrRefused) {
    Random r{11};
    for (int round = 0; round < 3000; ++round) {
        std::string bytes = smallJpeg(r.count(1, 2000), r.count(1, 2000), "comment");
        for (int n = r.count(1, 4); n > 0; --n)
            bytes[std::size_t(r.whole(0, std::ssize(bytes) - 1))] = char(r.count(0, 255));
        if (const auto photo = Photo::ofJpeg(bytes)) {
            EXPECT_LE(photo->width(), limits::kPhotoSide);
            EXPECT_LE(photo->height(), limits::kPhotoSide);
            EXPECT_EQ(Photo::ofBase64(photo->base64()), photo);
        }
    }
}

TEST(Colour, IsReadAndWritten) {
    EXPECT_EQ(parseColour("#27365c"), (Colour{0x27, 0x36, 0x5c}));
    EXPECT_EQ(parseColour("#FFfF00"), (Colour{255, 255, 0}));
    EXPECT_EQ(format(Colour{0x0a, 0, 0xff}), "#0a00ff");
    for (const char* text : {"", "#", "27365c", "#27365", "#27365cc", "#27365g", "#2736 c", "blue"})
        EXPECT_FALSE(parseColour(text)) << text;
}

} // namespace
} // namespace bastewright

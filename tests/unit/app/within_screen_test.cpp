#include "app/within_screen.h"

#include <gtest/gtest.h>

namespace bastewright::app {
namespace {

TEST(WithinScreen, AWindowIsAsLargeAsWantedWhereItFits) {
    EXPECT_EQ(fitting({1280, 800}, {1920, 1080}, {}), QSize(1280, 800));
    EXPECT_EQ(fitting({1280, 800}, {1920, 1080}, {4, 30, 4, 4}), QSize(1280, 800));
}

TEST(WithinScreen, AWindowAndItsFrameFitASmallScreen) {
    EXPECT_EQ(fitting({1280, 800}, {1024, 600}, {}), QSize(1024, 600));
    EXPECT_EQ(fitting({1280, 800}, {1024, 560}, {4, 30, 4, 4}), QSize(1016, 526));
    EXPECT_EQ(fitting({1280, 800}, {1280, 800}, {0, 28, 0, 0}), QSize(1280, 772));
    EXPECT_EQ(fitting({1280, 800}, {800, 1280}, {}), QSize(800, 800));
}

} // namespace
} // namespace bastewright::app

#include "plan/plan_json.h"
#include "support/patience.h"
#include "support/random.h"
#include "unit/plan/random_plan.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <chrono>

namespace bastewright {
namespace {

using testing::HasSubstr;

/// Refuses within a few seconds and with few findings, whatever it is given.
Findings refused(const std::string& text) {
    const auto begin = std::chrono::steady_clock::now();
    const PlanRead read = readPlan(text);
    EXPECT_LT(std::chrono::steady_clock::now() - begin, slowness() * std::chrono::seconds{30});
    EXPECT_FALSE(read.plan);
    EXPECT_FALSE(read.problems.empty());
    EXPECT_LE(read.problems.size(), 301u);
    return read.problems;
}

std::string repeated(std::string_view text, std::size_t times) {
    std::string out;
    out.reserve(text.size() * times);
    while (times-- > 0)
        out += text;
    return out;
}

TEST(HostilePlan, NotJsonNotUtf8NotAPlan) {
    for (const char* text : {"", "{", "[]", "null", "1", "\"plan\"", "{\"a\":\xff}", "{}", "\x00"})
        refused(text);
}

TEST(HostilePlan, Depth) {
    EXPECT_THAT(refused(repeated("[", 3'000'000)).front().text, HasSubstr("32 deep"));
    EXPECT_THAT(refused(R"({"zones": )" + repeated(R"({"a":)", 1'000'000)).front().text,
                HasSubstr("32 deep"));
}

TEST(HostilePlan, Size) {
    EXPECT_THAT(refused(std::string(33'000'000, ' ')).front().text,
                HasSubstr("bytes are accepted"));
    EXPECT_THAT(refused(R"({"zones": [)" + repeated("[],", 5'000'000)).front().text,
                HasSubstr("more than 3000000 values"));
}

TEST(HostilePlan, Floods) {
    const std::string start = R"({"format": "bastewright-plan", "version": 1, "unit": "in", )";
    EXPECT_THAT(refused(start + R"("quilts": [)" + repeated("{},", 500'000) + "{}]}").front().text,
                HasSubstr("500001 entries; up to 20"));
    EXPECT_THAT(refused(start + R"("zones": [)" + repeated("{},", 9'000) + "{}]}").back().text,
                HasSubstr("further problems"));
    EXPECT_THAT(refused(start + R"("tasks": [)" + repeated("7,", 99'000) + "7]}").back().text,
                HasSubstr("further problems"));
}

TEST(HostilePlan, DamageNeverThrows) {
    const std::string text = writePlan(randomPlan(5));
    Random random{20'261'125};
    for (int i = 0; i < 3000; ++i) {
        std::string damaged = text;
        for (int n = random.count(1, 4); n > 0; --n)
            damaged[static_cast<std::size_t>(random.whole(0, std::ssize(text) - 1))] =
                static_cast<char>(random.whole(0, 255));
        const PlanRead read = readPlan(damaged);
        ASSERT_EQ(read.plan.has_value(), !anyStop(read.problems));
    }
}

} // namespace
} // namespace bastewright

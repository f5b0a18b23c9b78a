#include "job/job_json.h"
#include "support/told.h"
#include "unit/job/random_session.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace bastewright {
namespace {

TEST(RoundTrip, WhatIsWrittenReadsBackEqual) {
    for (std::uint64_t seed = 1; seed <= 2000; ++seed) {
        const Session session = randomSession(seed);
        const std::string text = writeSession(session);
        const SessionRead read = readSession(text);
        ASSERT_TRUE(read.session) << "seed " << seed << "\n" << told(read.problems) << text;
        ASSERT_EQ(*read.session, session) << "seed " << seed << "\n" << text;
        ASSERT_EQ(writeSession(*read.session), text) << "seed " << seed;
    }
}

TEST(RoundTrip, AQuiltInAnotherUnitKeepsItsLengths) {
    for (std::uint64_t seed = 1; seed <= 200; ++seed) {
        Session session = randomSession(seed);
        for (Job& job : session.jobs)
            job.unit = job.unit == Unit::inch ? Unit::centimetre : Unit::inch;
        const SessionRead read = readSession(writeSession(session));
        ASSERT_TRUE(read.session) << "seed " << seed << "\n" << told(read.problems);
        ASSERT_EQ(*read.session, session) << "seed " << seed;
    }
}

TEST(RoundTrip, NumbersAreWrittenPlainlyAndTheRestInMillimetres) {
    Session session = randomSession(1);
    session.severalQuilts = false;
    session.jobs.resize(1);
    Job& job = session.jobs.front();
    job.unit = Unit::inch;
    job.basting.spacing = Length::inch64ths(4 * 64 + 1);
    job.basting.pinLength = Length::millimetres(27);
    job.basting.clear = Length::nanometres(8'466'667); // a third of an inch, to the nanometre
    job.basting.edge = 1_in;
    const std::string text = writeSession(session);
    EXPECT_NE(text.find(R"("spacing": 4.015625)"), std::string::npos) << text;
    EXPECT_NE(text.find(R"("pin_length": "27 mm")"), std::string::npos) << text;
    EXPECT_NE(text.find(R"("clear": "8.466667 mm")"), std::string::npos) << text;
    EXPECT_NE(text.find(R"("edge": 1)"), std::string::npos) << text;
}

TEST(RoundTrip, CutOrDamagedTextNeverThrowsAndNeverReadsAsSomethingElse) {
    const std::string text = writeSession(randomSession(7));
    for (std::size_t n = 0; n + 2 < text.size(); n += 3) {
        const SessionRead read = readSession(std::string_view{text}.substr(0, n));
        ASSERT_FALSE(read.session) << n;
        ASSERT_EQ(read.problems.size(), 1u) << n;
    }
    for (std::size_t n = 0; n < text.size(); n += 3)
        for (const char with : {'"', '}', '9', '\0', '\xff', '-'}) {
            std::string damaged = text;
            damaged[n] = with;
            const SessionRead read = readSession(damaged);
            ASSERT_EQ(read.session.has_value(), !anyStop(read.problems));
        }
}

} // namespace
} // namespace bastewright

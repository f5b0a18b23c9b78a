#include "job/field_facts.h"
#include "job/job_json.h"
#include "job/session_checks.h"
#include "support/told.h"
#include "unit/job/field_spoiler.h"
#include "unit/job/random_session.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <set>

namespace bastewright {
namespace {

void walk(FieldSpoiler& spoiler, Session& session) {
    for (Job& job : session.jobs)
        quilt_fields::ofQuilt(spoiler, job);
    setting_fields::ofSetting(spoiler, session.setting);
}

Finding firstStop(const Findings& problems) {
    const auto found = std::ranges::find(problems, Finding::Level::stop, &Finding::level);
    return found == problems.end() ? Finding{} : *found;
}

TEST(FieldTable, ValuesInMemoryAreHeldToWhatFilesAreHeldTo) {
    for (std::uint64_t seed = 1; seed <= 3; ++seed) {
        const Session sound = randomSession(seed);
        ASSERT_FALSE(anyStop(problemsOf(sound))) << "seed " << seed << told(problemsOf(sound));
        FieldSpoiler counter{-1, false};
        Session counted = sound;
        walk(counter, counted);
        ASSERT_GT(counter.count(), 100);
        for (int which = 0; which < counter.count(); ++which)
            for (const bool above : {false, true}) {
                Session session = sound;
                FieldSpoiler spoiler{which, above};
                walk(spoiler, session);
                if (session == sound)
                    continue; // an empty list stays one
                const Findings inMemory = problemsOf(session);
                const SessionRead inFile = readSession(writeSession(session));
                ASSERT_EQ(anyStop(inMemory), !inFile.session)
                    << "seed " << seed << ", value " << which << told(inMemory)
                    << told(inFile.problems);
            }
    }
}

TEST(FieldTable, AProblemIsAtTheSamePlaceInMemoryAsInFiles) {
    Session session = randomSession(3);
    session.setting.helpers[0].reach = Length::inches(61);
    const auto inMemory = problemsOf(session);
    EXPECT_EQ(firstStop(inMemory).field,
              firstStop(readSession(writeSession(session)).problems).field);
    EXPECT_EQ(firstStop(inMemory).field, "/helpers/0/reach");
}

TEST(FieldTable, AProblemInMemoryNamesTheFieldTheValueAndWhatToEnter) {
    Session session = randomSession(3);
    session.jobs.front().unit = Unit::inch;
    session.setting.helpers[0].reach = Length::inches(61);
    EXPECT_EQ(firstStop(problemsOf(session)).text.english(),
              "Reach: enter 6 in to 60 in, not 61 in.");
}

TEST(FieldTable, EachPathStandsOnce) {
    std::set<std::string> paths;
    for (const FieldFact& fact : fieldFacts())
        EXPECT_TRUE(paths.insert(fact.path).second) << fact.path;
    EXPECT_GT(paths.size(), 100u);
}

TEST(FieldTable, TellsWhatIsAcceptedAndTheDefault) {
    const FieldFact& spacing = fieldFact("basting/spacing");
    EXPECT_EQ(spacing.label, "Spacing");
    EXPECT_EQ(spacing.accepted, "1 in to 12 in");
    EXPECT_EQ(spacing.byDefault, "4 in");
    EXPECT_FALSE(spacing.required);
    EXPECT_EQ(fieldFact("helpers/pace").accepted, "0.1–5");
    EXPECT_TRUE(fieldFact("helpers/name").required);
    EXPECT_EQ(fieldFact("batting/thickness").accepted, "0.1 mm to 50 mm");
    EXPECT_EQ(fieldFact("stash/tape").accepted, "up to 1000 yd");
}

} // namespace
} // namespace bastewright

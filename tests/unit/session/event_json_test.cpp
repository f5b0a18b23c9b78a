#include "job/job_json.h"
#include "plan/plan_json.h"
#include "session/event_json.h"
#include "unit/session/table_plan.h"

#include <gmock/gmock.h>
#include <nlohmann/json.hpp>

#include <limits>
#include <set>

namespace bastewright {
namespace {

using ::testing::HasSubstr;

TEST(EventJson, WhatIsWrittenReadsBackEqual) {
    constexpr auto kLeast = std::numeric_limits<std::int64_t>::min();
    const What all[]{happened::ZoneTick{Tick::closed, 2, "C4", "Zoë \"Zo\" O'Neill\n", kLeast},
                     happened::Step{2, 3, "Bo", "q1.p1.C4.close-pins", 60},
                     happened::Note{std::string{"a\0b", 3}}, happened::LeftOut{2, 3, "C4"},
                     happened::Undone{"tablet-1/3"}};
    for (const What& what : all) {
        const Event e{"tablet-1/17", std::numeric_limits<std::int64_t>::max(), what};
        const auto back = readEvent(writeEvent(e));
        ASSERT_TRUE(back.has_value()) << back.error();
        EXPECT_EQ(*back, e);
    }
}

TEST(EventJson, EveryKindIsWrittenAsItAlwaysWas) {
    std::set<std::size_t> kinds;
    for (
        const char* text : {
            R"({"id":"a","kind":"session-started","at":1800000000000})",
            R"({"id":"a","kind":"step-done","at":1,"job":2,"pass":3,"person":"Zoë","task":"t1","count":60})",
            R"({"id":"a","kind":"step-done","task":"t1"})",
            R"({"id":"a","kind":"check-answered","at":1,"job":2,"task":"t1","text":"spare","count":1})",
            R"({"id":"a","kind":"check-answered","task":"t1","text":"spare"})",
            R"({"id":"a","kind":"zone-dotted","zone":"p1.A1"})",
            R"({"id":"a","kind":"zone-opened","at":1,"job":2,"zone":"p1.A1","person":"Ada","count":-9223372036854775808})",
            R"({"id":"a","kind":"zone-closed","at":1,"zone":"p1.A1","person":"Ada"})",
            R"({"id":"a","kind":"zone-pressed","at":9223372036854775807,"zone":"p1.A1"})",
            R"({"id":"a","kind":"zone-again","at":1,"job":2,"zone":"p1.A1"})",
            R"({"id":"a","kind":"undone","target":"tablet-1/3"})",
            R"({"id":"a","kind":"pass-abandoned","job":2,"pass":3})",
            R"({"id":"a","kind":"pass-abandoned","job":2,"pass":3,"zone":"p3.B1"})",
            R"({"id":"a","kind":"pass-released","job":2,"pass":3})",
            R"({"id":"a","kind":"person-in","at":1,"person":"Cai"})",
            R"({"id":"a","kind":"person-out","at":1,"person":"Cai"})",
            R"({"id":"a","kind":"pins-found","at":1,"count":-5})",
            R"({"id":"a","kind":"pins-back","at":1,"count":5})",
            R"({"id":"a","kind":"pins-in-box","at":1,"count":5})",
            R"({"id":"a","kind":"pins-in-box","at":1})",
            R"({"id":"a","kind":"pins-counted","at":1})",
            R"({"id":"a","kind":"note","at":1,"text":"a\u0000b\n\"c\""})",
            R"({"id":"a","kind":"note"})",
            R"({"id":"a","kind":"paused","at":1})",
            R"({"id":"a","kind":"resumed","at":1})",
            R"({"id":"a","kind":"session-ended","at":1})",
        }) {
        const auto read = readEvent(text);
        ASSERT_TRUE(read.has_value()) << read.error();
        EXPECT_EQ(writeEvent(*read), text);
        kinds.insert(read->what.index());
    }
    // New settings, new plans and what of them cannot be read have tests of their own below.
    EXPECT_EQ(kinds.size() + 3, std::variant_size_v<What>);
}

TEST(EventJson, WhatIsNoKindHasNoMeaning) {
    EXPECT_FALSE(whatNamed("zone-lost"));
    EXPECT_FALSE(whatNamed(""));
    EXPECT_EQ(name(Tick::pressed), "zone-pressed");
}

TEST(EventJson, WhatIsAtItsDefaultIsLeftOut) {
    EXPECT_EQ(writeEvent({"x", 0, happened::Note{}}), R"({"id":"x","kind":"note"})");
}

TEST(EventJson, AnErrorNamesTheFieldTheValueAndWhatIsAccepted) {
    const std::pair<const char*, const char*> rows[]{
        {"", "not a JSON object"},
        {"[]", "not a JSON object"},
        {R"({"kind":"note"})", "no id"},
        {R"({"id":"a"})", R"(kind is "")"},
        {R"({"id":"a","kind":"zone-lost"})", R"(kind is "zone-lost")"},
        {R"({"id":1,"kind":"note"})", "id is 1; it must be text"},
        {R"({"id":"a","kind":"pass-released","job":"1"})",
         R"(job is "1"; it must be a whole number)"},
        {R"({"id":"a","kind":"pass-released","job":1.5})", "job is 1.5"},
        {R"({"id":"a","kind":"pass-released","job":4294967296})", "job is 4294967296"},
        {R"({"id":"a","kind":"pins-back","count":18446744073709551615})",
         "count is 1844674407370955161"},
    };
    for (const auto& [text, expected] : rows) {
        const auto read = readEvent(text);
        ASSERT_FALSE(read.has_value()) << text;
        EXPECT_THAT(read.error(), HasSubstr(expected)) << text;
    }
}

TEST(EventJson, MembersOfALaterVersionAreIgnored) {
    EXPECT_TRUE(readEvent(R"({"id":"a","kind":"note","mood":"good"})").has_value());
}

TEST(EventJson, TextThatIsNotUtf8IsStillWritten) {
    EXPECT_TRUE(readEvent(writeEvent({"x", 0, happened::Note{"\xff"}})).has_value());
}

Event newPlan() {
    return {"x", 0,
            happened::NewPlan{std::make_shared<const Plan>(made::pinnedPlan()),
                              std::make_shared<const Session>(made::smallSession())}};
}

TEST(EventJson, APlanAndASessionAreObjectsAndReadBackEqual) {
    const auto text = writeEvent(newPlan());
    EXPECT_EQ(text.find('\n'), std::string::npos);
    const auto json = nlohmann::json::parse(text);
    EXPECT_EQ(json["plan"]["format"], "bastewright-plan");
    EXPECT_TRUE(json["session"].is_object());
    EXPECT_FALSE(json.contains("text"));
    EXPECT_EQ(readEvent(text).value(), newPlan());

    const Event setting{
        "x", 0, happened::NewSetting{std::make_shared<const Session>(made::smallSession())}};
    EXPECT_TRUE(nlohmann::json::parse(writeEvent(setting))["session"].is_object());
    EXPECT_EQ(readEvent(writeEvent(setting)).value(), setting);
}

TEST(EventJson, WhatOlderLibrariesHoldAsTextIsRead) {
    const auto plan = writePlan(made::pinnedPlan()), session = writeSession(made::smallSession());
    const auto event = [](const char* kind, const std::string& text) {
        return readEvent(nlohmann::json{{"id", "x"}, {"kind", kind}, {"text", text}}.dump())
            .value();
    };
    EXPECT_EQ(event("replanned", nlohmann::json{{"plan", plan}, {"session", session}}.dump()),
              newPlan());
    const auto alone = event("replanned", plan);
    EXPECT_EQ(*std::get<happened::NewPlan>(alone.what).plan, made::pinnedPlan());
    EXPECT_EQ(std::get<happened::NewPlan>(alone.what).session, nullptr);
    EXPECT_EQ(*std::get<happened::NewSetting>(event("setting-changed", session).what).session,
              made::smallSession());
}

TEST(EventJson, WhatCannotBeReadIsKeptAsItIs) {
    for (const char* members : {R"("plan":{"format":"other"})", R"("text":"{")",
                                R"("session":{},"plan":{"format":"bastewright-plan"})"}) {
        const auto text = std::string{R"({"id":"x","kind":"replanned",)"} + members + "}";
        const auto read = readEvent(text).value();
        EXPECT_THAT(std::get<happened::Unread>(read.what).why.english(),
                    HasSubstr("cannot be read"));
        EXPECT_EQ(nlohmann::json::parse(writeEvent(read)), nlohmann::json::parse(text));
    }
}

} // namespace
} // namespace bastewright

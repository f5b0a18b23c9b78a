#include "job/job_json.h"
#include "plan/plan_json.h"
#include "session/event_json.h"
#include "unit/session/table_plan.h"

#include <gmock/gmock.h>
#include <nlohmann/json.hpp>

#include <limits>

namespace bastewright {
namespace {

using ::testing::HasSubstr;

TEST(EventJson, WhatIsWrittenReadsBackEqual) {
    Event e{.id = "tablet-1/17",
            .kind = EventKind::zoneClosed,
            .atMs = std::numeric_limits<std::int64_t>::max(),
            .job = 2,
            .pass = 3,
            .zone = "C4",
            .person = "Zoë \"Zo\" O'Neill\n",
            .task = "q1.p1.C4.close-pins",
            .target = "tablet-1/3",
            .text = std::string{"a\0b", 3},
            .count = std::numeric_limits<std::int64_t>::min()};
    const auto back = readEvent(writeEvent(e));
    ASSERT_TRUE(back.has_value()) << back.error();
    EXPECT_EQ(*back, e);
}

TEST(EventJson, EveryKindHasANameOfItsOwn) {
    for (int k = 0; k <= static_cast<int>(EventKind::sessionEnded); ++k) {
        const auto kind = static_cast<EventKind>(k);
        EXPECT_FALSE(name(kind).empty()) << k;
        EXPECT_EQ(eventKind(name(kind)), kind);
    }
    EXPECT_FALSE(eventKind("zone-lost"));
}

TEST(EventJson, WhatIsAtItsDefaultIsLeftOut) {
    Event e;
    e.id = "x";
    EXPECT_EQ(writeEvent(e), R"({"id":"x","kind":"note"})");
}

TEST(EventJson, AnErrorNamesTheFieldTheValueAndWhatIsAccepted) {
    const std::pair<const char*, const char*> rows[]{
        {"", "not a JSON object"},
        {"[]", "not a JSON object"},
        {R"({"kind":"note"})", "no id"},
        {R"({"id":"a"})", R"(kind is "")"},
        {R"({"id":"a","kind":"zone-lost"})", R"(kind is "zone-lost")"},
        {R"({"id":1,"kind":"note"})", "id is 1; it must be text"},
        {R"({"id":"a","kind":"note","job":"1"})", R"(job is "1"; it must be a whole number)"},
        {R"({"id":"a","kind":"note","job":1.5})", "job is 1.5"},
        {R"({"id":"a","kind":"note","job":4294967296})", "job is 4294967296"},
        {R"({"id":"a","kind":"note","count":18446744073709551615})",
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
    Event e;
    e.id = "x";
    e.text = "\xff";
    EXPECT_TRUE(readEvent(writeEvent(e)).has_value());
}

Event newPlan() {
    Event e;
    e.id = "x";
    e.kind = EventKind::replanned;
    e.carried = NewPlan{std::make_shared<const Plan>(made::pinnedPlan()),
                        std::make_shared<const Session>(made::smallSession())};
    return e;
}

TEST(EventJson, APlanAndASessionAreObjectsAndReadBackEqual) {
    const auto text = writeEvent(newPlan());
    EXPECT_EQ(text.find('\n'), std::string::npos);
    const auto json = nlohmann::json::parse(text);
    EXPECT_EQ(json["plan"]["format"], "bastewright-plan");
    EXPECT_TRUE(json["session"].is_object());
    EXPECT_FALSE(json.contains("text"));
    EXPECT_EQ(readEvent(text).value(), newPlan());

    Event setting;
    setting.id = "x";
    setting.kind = EventKind::settingChanged;
    setting.carried = std::make_shared<const Session>(made::smallSession());
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
    EXPECT_EQ(*std::get<NewPlan>(alone.carried).plan, made::pinnedPlan());
    EXPECT_EQ(std::get<NewPlan>(alone.carried).session, nullptr);
    EXPECT_EQ(*std::get<std::shared_ptr<const Session>>(event("setting-changed", session).carried),
              made::smallSession());
}

TEST(EventJson, WhatCannotBeReadIsKeptAsItIs) {
    for (const char* members : {R"("plan":{"format":"other"})", R"("text":"{")",
                                R"("session":{},"plan":{"format":"bastewright-plan"})"}) {
        const auto text = std::string{R"({"id":"x","kind":"replanned",)"} + members + "}";
        const auto read = readEvent(text).value();
        EXPECT_THAT(std::get<UnreadPlan>(read.carried).why.english(), HasSubstr("cannot be read"));
        EXPECT_EQ(nlohmann::json::parse(writeEvent(read)), nlohmann::json::parse(text));
    }
}

} // namespace
} // namespace bastewright

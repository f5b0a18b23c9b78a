#include "job/job_json.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

namespace bastewright {
namespace {

using testing::HasSubstr;

TEST(UnknownFields, AreWarnedAboutOnceAndWrittenBackAtTheirPlace) {
    const std::string text = R"({
        "top": {"width": 60, "length": 72, "pressed": true, "grid": {"columns": 5, "rows": 6, "hue": [1, 2.5]}},
        "notes": {"a": null, "b/c": "d"},
        "helpers": [{"name": "Ada"}, {"name": "Bo", "tea": "green"}],
        "room": {"tables": [{"count": 2, "wobbly": "yes"}], "heating": 1e2}})";
    const SessionRead read = readSession(text);
    ASSERT_TRUE(read.session);
    std::vector<std::string> fields;
    for (const auto& f : read.problems)
        if (f.field != "/top/grid") {
            EXPECT_EQ(f.level, Finding::Level::warn);
            EXPECT_THAT(f.text, HasSubstr("it is kept but has no effect"));
            fields.push_back(f.field);
        }
    EXPECT_EQ(fields,
              (std::vector<std::string>{"/top/pressed", "/top/grid/hue", "/notes", "/helpers/1/tea",
                                        "/room/tables/0/wobbly", "/room/heating"}));
    // Those of the quilt are kept with the quilt, those of the setting with the session.
    EXPECT_EQ(read.session->jobs[0].unknown.size(), 3u);
    EXPECT_EQ(read.session->unknown.size(), 3u);
    const auto in = nlohmann::json::parse(text);
    const auto out = nlohmann::json::parse(writeSession(*read.session));
    for (const auto& f : fields) {
        const nlohmann::json::json_pointer at{f};
        EXPECT_EQ(out.at(at), in.at(at)) << f;
    }
}

TEST(UnknownFields, MoveWithTheQuiltIntoASession) {
    Session session =
        *readSession(R"({"top": {"width": 60, "length": 72, "pressed": true}})").session;
    session.jobs.push_back(session.jobs.front());
    session.severalQuilts = true;
    const auto out = nlohmann::json::parse(writeSession(session));
    EXPECT_EQ(out["jobs"][0]["top"]["pressed"], true);
    EXPECT_EQ(out["jobs"][1]["top"]["pressed"], true);
    EXPECT_EQ(readSession(writeSession(session)).session, session);
}

TEST(UnknownFields, OfThingsThatAreGoneAreDropped) {
    Session session =
        *readSession(
             R"({"top": {"width": 60, "length": 72}, "helpers": [{"name": "Ada", "tea": 1}]})")
             .session;
    session.setting.helpers.clear();
    EXPECT_THAT(writeSession(session), testing::Not(HasSubstr("tea")));
}

TEST(UnknownFields, ASettingInsideASessionsQuiltIsKeptButHasNoEffect) {
    const SessionRead read = readSession(R"({"jobs": [{"top": {"width": 60, "length": 72},
        "room": {"irons": 7}, "helpers": "nobody", "stash": 3}], "room": {"irons": 1}})");
    ASSERT_TRUE(read.session);
    EXPECT_EQ(read.problems.size(), 3u);
    EXPECT_EQ(read.session->setting.room.irons, 1);
    const auto out = nlohmann::json::parse(writeSession(*read.session));
    EXPECT_EQ(out["jobs"][0]["room"]["irons"], 7);
    EXPECT_EQ(out["jobs"][0]["helpers"], "nobody");
    EXPECT_EQ(out["room"]["irons"], 1);
}

} // namespace
} // namespace bastewright

#include "job/job_json.h"
#include "job/json_text.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace bastewright {
namespace {

using testing::HasSubstr;

std::string onlyProblem(const std::string& text) {
    const SessionRead read = readSession(text);
    EXPECT_FALSE(read.session);
    EXPECT_EQ(read.problems.size(), 1u);
    return read.problems.empty() ? "" : read.problems.front().text.english();
}

TEST(JsonText, SaysWhereTextStopsBeingJson) {
    EXPECT_THAT(onlyProblem("{\n  \"top\": {\n    \"width\" 60\n}}"),
                HasSubstr("not JSON: at line 3, column 14"));
    EXPECT_THAT(onlyProblem("{\"é\": 1,}"), HasSubstr("line 1, column 9"));
    EXPECT_THAT(onlyProblem("hello"), HasSubstr("not JSON: at line 1"));
    EXPECT_THAT(onlyProblem("{\"top\": {}"), HasSubstr("not complete JSON: it ends at line 1"));
    EXPECT_THAT(onlyProblem("{\"top\": {\"width\": NaN}}"), HasSubstr("not JSON"));
    EXPECT_THAT(onlyProblem("{\"top\": {\"width\": 012}}"), HasSubstr("not JSON"));
    EXPECT_THAT(onlyProblem("{\"top\": 1} {}"), HasSubstr("not JSON: at line 1, column 12"));
    EXPECT_THAT(onlyProblem("{'top': 1}"), HasSubstr("not JSON"));
    EXPECT_THAT(onlyProblem(""), HasSubstr("empty"));
    EXPECT_THAT(onlyProblem(" \n\t"), HasSubstr("empty"));
}

TEST(JsonText, SaysWhatIsNotAnObject) {
    EXPECT_THAT(onlyProblem("[]"), HasSubstr("is an empty list; a basting plan"));
    EXPECT_THAT(onlyProblem("null"), HasSubstr("is null"));
    EXPECT_THAT(onlyProblem("3"), HasSubstr("is 3"));
}

TEST(JsonText, RefusesWhatIsNotUtf8) {
    for (const char* bad : {"\xff\xfe{\0}", "{\"name\": \"\xe9t\xe9\"}", "{\"name\": \"\xc0\xaf\"}",
                            "{\"name\": \"\xed\xa0\x80\"}", "{\"name\": \"\xf4\x90\x80\x80\"}",
                            "{\"name\": \"\xe2\x82"})
        EXPECT_THAT(onlyProblem(bad), HasSubstr("not UTF-8")) << bad;
    EXPECT_THAT(onlyProblem("{\n\"aé\": \"\xff\"}"), HasSubstr("line 2, column 8"));
}

TEST(JsonText, TakesAByteOrderMark) {
    EXPECT_TRUE(
        readSession("\xef\xbb\xbf{\"top\": {\"width\": 60, \"length\": 72}}").session.has_value());
}

TEST(JsonText, RefusesNumbersBeyondADouble) {
    EXPECT_THAT(onlyProblem("{\"top\": {\"width\": 1e999}}"), HasSubstr("1e999"));
    EXPECT_THAT(onlyProblem("{\"top\": {\"width\": -1e999}}"), HasSubstr("too large"));
}

TEST(JsonText, RefusesAFieldGivenTwice) {
    const SessionRead read = readSession(R"({"top": {"width": 60, "length": 72, "width": 50}})");
    ASSERT_EQ(read.problems.size(), 1u);
    EXPECT_EQ(read.problems.front().field, "/top/width");
    EXPECT_THAT(read.problems.front().text, HasSubstr("top: width is given twice"));
}

TEST(JsonText, RefusesAFloodOfFieldsGivenTwice) {
    std::string text = "{";
    for (int i = 0; i < 400'000; ++i)
        text += "\"a\":1,";
    const SessionRead read = readSession(text);
    EXPECT_FALSE(read.session);
    EXPECT_EQ(read.problems.size(), 100u);
}

TEST(JsonText, ShortensBetweenCharacters) {
    EXPECT_EQ(shortened("abc", 3), "abc");
    EXPECT_EQ(shortened("abcd", 3), "abc...");
    EXPECT_EQ(shortened("abéd", 3), "ab...");
    EXPECT_EQ(shortened("🧵🧵", 3), "...");
}

TEST(JsonText, RefusesDeepNesting) {
    for (const std::size_t depth : {33u, 1'000'000u}) {
        std::string text = R"({"top": )" + std::string(depth, '[');
        EXPECT_THAT(onlyProblem(text), HasSubstr("more than 32 deep"));
    }
    std::string objects;
    for (int i = 0; i < 100'000; ++i)
        objects += R"({"a":)";
    EXPECT_THAT(onlyProblem(objects), HasSubstr("more than 32 deep"));
}

TEST(JsonText, RefusesFloodsOfFieldsAndValuesAndBytes) {
    std::string fields = "{";
    for (int i = 0; i < 300'000; ++i)
        fields.append("\"").append(std::to_string(i)).append("\":0,");
    EXPECT_THAT(onlyProblem(fields), HasSubstr("more than 500 fields"));
    std::string values = R"({"top": [)";
    for (int i = 0; i < 1'100'000; ++i)
        values += "1,";
    EXPECT_THAT(onlyProblem(values), HasSubstr("more than 1000000 values"));
    EXPECT_THAT(onlyProblem(std::string(limits::kFileBytes + 1, ' ')),
                HasSubstr("8000001 bytes; up to 8000000"));
}

TEST(JsonText, KeepsShortThingsOnALine) {
    const Json value = {{"a", {1, 2, 3}},
                        {"b", {{"c", "d"}}},
                        {"long", std::vector<int>(60, 7)},
                        {"none", Json::array()}};
    const std::string text = printJson(value);
    EXPECT_THAT(text,
                HasSubstr("  \"a\": [1, 2, 3],\n  \"b\": {\"c\": \"d\"},\n  \"long\": [\n    7,"));
    EXPECT_EQ(Json::parse(text), value);
    std::size_t start = 0;
    for (std::size_t end; (end = text.find('\n', start)) != std::string::npos; start = end + 1)
        EXPECT_LE(end - start, 101u);
}

TEST(JsonText, PointersReadAsWords) {
    EXPECT_EQ(placeInWords(""), "The file");
    EXPECT_EQ(placeInWords("/name"), "name");
    EXPECT_EQ(placeInWords("/helpers/2/reach"), "helpers no. 3: reach");
    EXPECT_EQ(placeInWords("/jobs/0/top/width/1"), "jobs no. 1, top: width no. 2");
    EXPECT_EQ(pointerTo("/a", "b/c~d"), "/a/b~1c~0d");
    EXPECT_EQ(placeInWords(pointerTo("/a", "b/c~d")), "a: b/c~d");
}

} // namespace
} // namespace bastewright

#include "job/job_json.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <string>
#include <vector>

namespace bastewright {
namespace {

using testing::HasSubstr;

using Level = Finding::Level;

/// A job with a good top and one more field.
std::string with(const std::string& field) {
    return R"({"top": {"width": 60, "length": 72}, )" + field + "}";
}
std::string top(const std::string& fields) {
    return R"({"top": {)" + fields + "}}";
}
std::string helpers(const std::string& list) {
    return with(R"("helpers": [)" + list + "]");
}
std::string grid(const std::string& fields) {
    return top(R"("width": 88, "length": 96, "grid": {)" + fields + "}");
}

struct Row {
    std::string text;
    Level level;
    const char* field;
    const char* says; ///< part of the sentence: the value and what is accepted
};

void check(const Row& row) {
    const SessionRead read = readSession(row.text);
    SCOPED_TRACE(row.text.substr(0, 200));
    ASSERT_EQ(read.problems.size(), 1u)
        << (read.problems.empty() ? "no finding" : read.problems[1].text.english());
    const Finding& f = read.problems.front();
    EXPECT_EQ(f.level, row.level);
    EXPECT_EQ(f.field, row.field);
    EXPECT_THAT(f.text, HasSubstr(row.says));
    EXPECT_THAT(f.text.english(), testing::EndsWith("."));
    EXPECT_EQ(read.session.has_value(), row.level != Level::stop);
}

TEST(BadInput, TheTop) {
    for (const Row& row : std::vector<Row>{
             {"{}", Level::stop, "/top", "top is missing; it is needed"},
             {R"({"name": "Tide"})", Level::stop, "/top", "missing"},
             {R"({"top": 7})", Level::stop, "/top", "top is 7; an object in {} is accepted"},
             {top(R"("length": 72)"), Level::stop, "/top/width", "top: width is missing"},
             {top(R"("width": 60)"), Level::stop, "/top/length", "length is missing"},
             {top(R"("width": -3, "length": 72)"), Level::stop, "/top/width",
              "width is -3; a length from 6 in to 240 in is accepted"},
             {top(R"("width": 0, "length": 72)"), Level::stop, "/top/width", "is 0; a length from"},
             {top(R"("width": 4000, "length": 72)"), Level::stop, "/top/width", "to 240 in"},
             {top(R"("width": "12 1/0 in", "length": 72)"), Level::stop, "/top/width",
              R"(is "12 1/0 in": a fraction's lower number must be 1 to 1000)"},
             {top(R"("width": "wide", "length": 72)"), Level::stop, "/top/width",
              "'wide' is not a number; a length such as"},
             {top(R"("width": true, "length": 72)"), Level::stop, "/top/width",
              "is true; a length"},
             {top(R"("width": null, "length": 72)"), Level::stop, "/top/width",
              "is null; a length"},
             {top(R"("width": {}, "length": 72)"), Level::stop, "/top/width", "is an object"},
             {top(R"("width": [], "length": 72)"), Level::stop, "/top/width",
              "is an empty list; one reading or a list of up to 9"},
             {top(R"("width": [60, "x"], "length": 72)"), Level::stop, "/top/width/1",
              "width no. 2 is \"x\""},
             {top(R"("width": [60,60,60,60,60,60,60,60,60,60], "length": 72)"), Level::stop,
              "/top/width", "has 10 entries; up to 9"},
             {top(R"("width": 1e300, "length": 72)"), Level::stop, "/top/width", "1 km"},
             {top(R"("width": [60, 60.75], "length": 72)"), Level::warn, "/top/width",
              "differ by 3/4 in; up to 1/2 in"},
             {top(R"("width": 60, "length": [72, 71])"), Level::warn, "/top/length",
              "differ by 1 in"},
             {top(R"("width": 60, "length": 72, "diagonals": [94])"), Level::stop, "/top/diagonals",
              "has 1 reading; none or both"},
             {top(R"("width": 60, "length": 72, "diagonals": [93.5, 94.25])"), Level::warn,
              "/top/diagonals", "differ by 3/4 in"},
             {top(R"("width": 60, "length": 72, "diagonals": [39, 39])"), Level::warn,
              "/top/diagonals", "measure again"},
             {top(R"("width": 60, "length": 72, "fabrics": "blue")"), Level::stop, "/top/fabrics",
              R"(fabrics is "blue"; a list in [] is accepted)"},
             {top(R"("width": 60, "length": 72, "fabrics": ["#ffffff"])"), Level::stop,
              "/top/fabrics", "has 1 entry; none, or 2 and more, are accepted"},
             {top(R"("width": 60, "length": 72, "fabrics": ["#ffffff", "blue"])"), Level::stop,
              "/top/fabrics/1", "fabrics no. 2 is \"blue\"; a color as \"#rrggbb\""},
             {top(R"("width": 60, "length": 72, "fabrics": ["#ffffff", 7])"), Level::stop,
              "/top/fabrics/1", "is 7; a color"},
             {top(R"("width": 60, "length": 72,
                     "fabrics": ["#fff111", "#fff112", "#fff113", "#fff114", "#fff115"])"),
              Level::stop, "/top/fabrics", "has 5 entries; up to 4"},
             {top(R"("width": 60, "length": 72, "photo": "/9j/4AAQ")"), Level::stop, "/top/photo",
              "photo is \"/9j/4AAQ\"; a baseline JPEG of up to 200000 bytes and up to 1600 pixels "
              "a side"},
             {top(R"("width": 60, "length": 72, "photo": ["/9j/4AAQ"])"), Level::stop, "/top/photo",
              "photo is a list; a baseline JPEG"},
             {top(R"("width": 60, "length": 72, "seams": [{"from": [0, 0]}])"), Level::stop,
              "/top/seams/0/to", "seams no. 1: to is missing"},
             {top(R"("width": 60, "length": 72, "seams": [{"from": [0], "to": [9, 9]}])"),
              Level::stop, "/top/seams/0/from", "a place as [x, y] is accepted"},
             {top(R"("width": 60, "length": 72, "seams": [{"from": [0, 0], "to": [0, 0]}])"),
              Level::stop, "/top/seams/0", "seams no. 1 runs from (0, 0) to itself"},
             {top(R"("width": 60, "length": 72, "seams": [{"from": [0, 9], "to": [70, 9]}])"),
              Level::stop, "/top/seams/0",
              "runs from (0, 9) to (70, 9); places on the top, or up to 1 in beyond it"},
         })
        check(row);
}

TEST(BadInput, TheGrid) {
    for (const Row& row : std::vector<Row>{
             {grid(R"("columns": 0)"), Level::stop, "/top/grid/columns",
              "columns is 0; a whole number from 1 to 100"},
             {grid(R"("columns": 7.5)"), Level::stop, "/top/grid/columns",
              "is 7.5; a whole number"},
             {grid(R"("rows": 9000000000000000000000)"), Level::stop, "/top/grid/rows",
              "a whole number"},
             {grid(R"("columns": 7, "rows": 9, "block": -10)"), Level::stop, "/top/grid/block",
              "block is -10"},
             // 89 in of grid without borders on 88 in of top
             {grid(R"("columns": 89, "rows": 96, "block": 1)"), Level::stop, "/top/grid",
              "cannot be right: the blocks alone need 89 in across, and the top measures 88 in"},
             // one inch less is shared out
             {grid(R"("columns": 87, "rows": 96, "block": 1)"), Level::warn, "/top/grid",
              "87 in across and the top measures 88 in, so the borders at left and right come out "
              "1/2 in wide, not 0 in"},
             // borders of 1/2 in can give up one inch between them
             {grid(R"("columns": 88, "rows": 95, "block": 1, "border": 0.5)"), Level::warn,
              "/top/grid",
              "89 in across and the top measures 88 in, so the borders at left and right "
              "come out 0 in wide, not 1/2 in"},
             {grid(R"("columns": 8, "rows": 8, "block": 11, "block_length": 12,
                      "inner": {"x": [11]})"),
              Level::stop, "/top/grid", "inner seam at x = 11 in; less than the block's 11 in"},
             {grid(R"("columns": 40, "rows": 44, "block": 2, "sashing": 0.125, "border": 1.5,
                      "inner": {"x": [0.5, 1, 1.5], "y": [1]})"),
              Level::stop, "/top/grid", "makes 7040 seams inside its blocks; up to 4000"},
             {top(R"("grid": {"columns": 100, "rows": 10, "block": 12, "border": 1})"), Level::stop,
              "/top/grid", "a width of 1202 in; 6 in to 240 in"},
         }) {
        SCOPED_TRACE(row.says);
        const SessionRead read = readSession(row.text);
        ASSERT_FALSE(read.problems.empty());
        EXPECT_EQ(read.problems.front().level, row.level);
        EXPECT_EQ(read.problems.front().field, row.field);
        EXPECT_THAT(read.problems.front().text, HasSubstr(row.says));
    }
}

TEST(BadInput, WordsNumbersAndFlags) {
    for (const Row& row : std::vector<Row>{
             {with(R"("quilting": {"method": "diagonal"})"), Level::stop, "/quilting/method",
              R"("diagonal"; "in-the-ditch", "across-seams", "single-tacks", "free-motion" or )"
              R"("undecided" is accepted)"},
             {with(R"("quilting": {"method": 3})"), Level::stop, "/quilting/method", "is 3;"},
             {with(R"("basting": {"with": "glue"})"), Level::stop, "/basting/with",
              R"("glue"; "pins", "dots", "thread" or "spray" is accepted)"},
             {with(R"("basting": {"with": "spray", "spacing": 4})"), Level::stop,
              "/basting/spacing", "from 10 in to 18 in"},
             {with(R"("basting": {"with": "pins", "spacing": 18})"), Level::stop,
              "/basting/spacing", "from 1 in to 12 in"},
             {with(R"("basting": {"start": "Best"})"), Level::stop, "/basting/start",
              R"("centred", "fewest-shifts", "best", "one-end" or "beside-middle")"},
             {with(R"("basting": {"spacing": 0})"), Level::stop, "/basting/spacing",
              "from 1 in to 12 in"},
             {with(R"("basting": {"pin_length": 4})"), Level::stop, "/basting/pin_length",
              "from 1/2 in to 3 in"},
             {with(R"("basting": {"clear": -0.1})"), Level::stop, "/basting/clear",
              "from 0 in to 2 in"},
             {with(R"("basting": {"edge": 7})"), Level::stop, "/basting/edge", "from 0 in to 6 in"},
             {with(R"("batting": {"thickness": 3})"), Level::stop, "/batting/thickness", "is 3;"},
             {with(R"("batting": {"gsm": "heavy"})"), Level::stop, "/batting/gsm",
              R"("heavy"; a number from 10 to 2000)"},
             {with(R"("batting": {"overage": 25})"), Level::stop, "/batting/overage",
              "from 0 in to 24 in"},
             {with(R"("batting": {"meltable": "no"})"), Level::stop, "/batting/meltable",
              "true or false"},
             {with(R"("batting": {"pieces": [{"width": 60}]})"), Level::stop,
              "/batting/pieces/0/length", "is missing"},
             {with(R"("batting": {"pieces": [{"width": 60, "length": 72, "count": 30},
                                            {"width": 60, "length": 72, "count": 30}]})"),
              Level::stop, "/batting/pieces", "are 60 in all; up to 40"},
             {with(R"("batting": {"pieces": [{"name": "A", "width": 60, "length": 72},
                                            {"name": "A", "width": 60, "length": 72}]})"),
              Level::warn, "/batting/pieces/1/name", "\"A\" again"},
             {with(R"("backing": {"shrink_percent": 50})"), Level::stop, "/backing/shrink_percent",
              "a number from 0 to 20"},
             {with(R"("backing": {"fabrics": [{"usable_width": "2 in"}]})"), Level::stop,
              "/backing/fabrics/0/usable_width", "fabrics no. 1: usable_width is \"2 in\""},
             {with(R"("machine": {"throat": "tall"})"), Level::stop, "/machine/throat", "'tall'"},
             {with(R"("name": 12)"), Level::stop, "/name", "text of up to 120 bytes"},
             {with("\"name\": \"" + std::string(121, 'a') + "\""), Level::stop, "/name",
              "with 121 bytes"},
             {with(R"("name": "a\nb")"), Level::stop, "/name", "control characters"},
             {with(R"("unit": "feet")"), Level::stop, "/unit", R"("in", "cm" or "mm")"},
             {with(R"("start": "25:00")"), Level::stop, "/start", "00:00 to 23:59"},
             {with(R"("start": 13)"), Level::stop, "/start", "is 13; a time of day"},
         })
        check(row);
}

TEST(BadInput, TheRoomAndThePeople) {
    std::string many;
    for (int i = 0; i < 41; ++i)
        many += (i ? ", " : "") + std::string{R"({"name": "H)"} + std::to_string(i) + "\"}";
    for (const Row& row : std::vector<Row>{
             {with(R"("room": {"tables": [{"count": 4000000}]})"), Level::stop,
              "/room/tables/0/count",
              "tables no. 1: count is 4000000; a whole number from 0 to 12"},
             {with(R"("room": {"tables": [{"count": 9}, {"count": 9}]})"), Level::stop,
              "/room/tables", "are 18 in all; up to 12"},
             {with(R"("room": {"tables": [{"length": 0}]})"), Level::stop, "/room/tables/0/length",
              "from 12 in to 240 in"},
             {with(R"("room": {"tables": {"length": 72}})"), Level::stop, "/room/tables",
              "is an object; a list in [] is accepted"},
             {with(R"("room": {"walls": ["north"]})"), Level::stop, "/room/walls/0",
              R"("head", "foot", "left" or "right")"},
             {with(R"("room": {"walls": ["head", "head"]})"), Level::stop, "/room/walls/1",
              "again; each word is accepted once"},
             {with(R"("room": {"irons": -1})"), Level::stop, "/room/irons", "irons is -1"},
             {with(R"("stash": {"pins": 2.5})"), Level::stop, "/stash/pins", "a whole number"},
             {with(R"("stash": {"clips": [{"count": 2}]})"), Level::stop, "/stash/clips/0/holds",
              "is missing"},
             {helpers(R"({"name": "Ada"}, {"name": "Ada"})"), Level::stop, "/helpers/1/name",
              R"(helpers no. 2: name is "Ada" again; a different name each)"},
             {helpers(R"({"reach": 27})"), Level::stop, "/helpers/0/name", "name is missing"},
             {helpers(R"({"name": "  "})"), Level::stop, "/helpers/0/name", "is blank"},
             {helpers(R"("Ada")"), Level::stop, "/helpers/0",
              "helpers no. 1 is \"Ada\"; an object"},
             {helpers(R"({"name": "Ada", "reach": 70})"), Level::stop, "/helpers/0/reach",
              "from 6 in to 60 in"},
             {helpers(R"({"name": "Ada", "pace": 0})"), Level::stop, "/helpers/0/pace",
              "a number from 0.1 to 5"},
             {helpers(R"({"name": "Ada", "from": "16:00", "until": "13:00"})"), Level::stop,
              "/helpers/0/until", "until is 13:00 while from is 16:00; a later time"},
             {helpers(R"({"name": "Ada", "from": "14:00", "until": "14:00"})"), Level::stop,
              "/helpers/0/until", "a later time"},
             {helpers(R"({"name": "Ada", "until": "12:00"})"), Level::warn, "/helpers/0/until",
              "the work starts at 13:00; Ada is never there"},
             {helpers(many), Level::stop, "/helpers", "has 41 entries; up to 40"},
         })
        check(row);
}

TEST(BadInput, FormatsAndSessions) {
    const std::string quilt = R"({"top": {"width": 60, "length": 72}})";
    std::string many = quilt;
    for (int i = 0; i < 20; ++i)
        many += ", " + quilt;
    for (
        const Row& row : std::vector<Row>{
            {with(R"("format": "bastewright-plan")"), Level::stop, "/format",
             R"("bastewright-job" or "bastewright-session" is accepted)"},
            {with(R"("format": 1)"), Level::stop, "/format", "is 1;"},
            {with(R"("version": 2)"), Level::stop, "/version", "version is 2; 1 is accepted"},
            {with(R"("version": "1")"), Level::stop, "/version", "1 is accepted"},
            {R"({"jobs": []})", Level::stop, "/jobs", "an empty list; 1 to 20 quilts"},
            {R"({"format": "bastewright-session"})", Level::stop, "/jobs", "jobs is missing"},
            {R"({"jobs": [)" + many + "]}", Level::stop, "/jobs", "has 21 entries; up to 20"},
            {R"({"jobs": [)" + quilt + R"(, {"top": {"width": 60}}]})", Level::stop,
             "/jobs/1/top/length", "jobs no. 2, top: length is missing"},
            {R"({"jobs": [{"top": {"width": 60, "length": 72}, "start": "9:00"}]})", Level::warn,
             "/jobs/0/start", "a session has one start for all its quilts"},
            {R"({"jobs": [{"format": "bastewright-session", "top": {"width": 60, "length": 72}}]})",
             Level::stop, "/jobs/0/format", R"("bastewright-job" is accepted)"},
        })
        check(row);
}

TEST(BadInput, EveryProblemIsToldInTheOrderOfTheFile) {
    const SessionRead read = readSession(R"({
        "helpers": [{"name": "Ada", "pace": 9}, {"reach": 1}],
        "basting": {"with": "glue"},
        "top": {"length": "long", "width": -3}})");
    std::vector<std::string> fields;
    for (const auto& f : read.problems)
        fields.push_back(f.field);
    EXPECT_EQ(fields,
              (std::vector<std::string>{"/helpers/0/pace", "/helpers/1/reach", "/helpers/1/name",
                                        "/basting/with", "/top/length", "/top/width"}));
    EXPECT_FALSE(read.session);
}

TEST(BadInput, AFloodOfProblemsIsCountedNotListed) {
    std::string seams;
    for (int i = 0; i < 2000; ++i)
        seams += std::string{i ? "," : ""} + "7";
    const SessionRead read =
        readSession(top(R"("width": 60, "length": 72, "seams": [)" + seams + "]"));
    EXPECT_EQ(read.problems.size(), 301u);
    EXPECT_THAT(read.problems.back().text, HasSubstr("1700 further problems"));
}

} // namespace
} // namespace bastewright

#include "fixture.h"
#include "sheets/exchange/csv.h"

#include <QProcess>
#include <QStandardPaths>
#include <gtest/gtest.h>

#include <algorithm>
#include <string>
#include <vector>

namespace bastewright {
namespace {

// RFC 4180, section 2: rules 5 to 7 with their examples.
TEST(Csv, quotesOnlyWhereTheRuleAsks) {
    EXPECT_EQ(csvField("aaa"), "aaa");
    EXPECT_EQ(csvField("b\r\nbb"), "\"b\r\nbb\"");
    EXPECT_EQ(csvField("b\"bb"), "\"b\"\"bb\"");
    EXPECT_EQ(csvField("a,b"), "\"a,b\"");
}

// OWASP, "CSV Injection": cells that begin with = + - @, a tab or a return are taken for formulas.
TEST(Csv, namesAreNeverFormulas) {
    for (const char* name : {"=1+1", "+1", "-1", "@SUM(A1)", "\tx", "\rx"})
        EXPECT_EQ(csvText(name), std::string{"'"} + name);
    for (const char* name : {"", "Ada", "1 = 1", "A+", "'=x", "é"})
        EXPECT_EQ(csvText(name), name);
    Session session;
    session.setting.helpers.emplace_back().name = "=HYPERLINK(\"x\",\"y\")";
    EXPECT_NE(crewCsv(session, Unit::inch).find("\"'=HYPERLINK(\"\"x\"\",\"\"y\"\")\","),
              std::string::npos);
}

TEST(Csv, linesEndInCrLfAndTheFirstNamesTheColumns) {
    Plan plan;
    plan.supplies = {{Supply::Kind::pins, "pins, 1 in", 678, 400, 278, ""}};
    EXPECT_EQ(bringCsv(plan), "item,need,have,buy,unit\r\n\"pins, 1 in\",678,400,278,\r\n");
}

/// Reads the text with another program's reader and gives back fields between bars.
QString readBack(const std::string& csv) {
    QProcess reader;
    reader.start(QStringLiteral("python3"),
                 {QStringLiteral("-c"),
                  QStringLiteral("import csv,io,sys\n"
                                 "text=sys.stdin.buffer.read().decode()\n"
                                 "for row in csv.reader(io.StringIO(text,newline='')):\n"
                                 "    sys.stdout.buffer.write(('|'.join(row)+'\\n').encode())")});
    reader.write(csv.c_str(), qint64(csv.size()));
    reader.closeWriteChannel();
    reader.waitForFinished();
    return QString::fromUtf8(reader.readAllStandardOutput());
}

TEST(Csv, anotherReaderGetsTheSameTasks) {
    if (QStandardPaths::findExecutable(QStringLiteral("python3")).isEmpty())
        GTEST_SKIP() << "SKIPPED: python3 is not installed, so no second reader checks the lists.";
    Session session = fixture::harbourLights();
    session.setting.helpers[1].name = "Bo \"Bobbin\", the quick";
    const Plan plan = fixture::planByHand(session);
    QStringList expected{QStringLiteral("person|start|end|quilt|pass|task|zone|points")};
    for (const auto& t : plan.tasks)
        for (const auto& person : t.people) {
            std::string points;
            for (const auto& z : plan.quilts[0].zones)
                if (z.id == t.zone)
                    points = std::to_string(z.points.size());
            // A zone as people call it: the pass has a column of its own.
            const std::string called = t.zone.substr(t.zone.find('.') + 1);
            const auto clock = [](Seconds s) { return format(after({std::chrono::hours{13}}, s)); };
            expected << QString::fromStdString(person + "|" + clock(t.start) + "|" + clock(t.end) +
                                               "|Harbour Lights|" + std::to_string(t.pass) + "|" +
                                               std::string{name(t.kind)} + "|" + called + "|" +
                                               points);
        }
    const QStringList got = readBack(tasksCsv(session, plan)).split('\n', Qt::SkipEmptyParts);
    EXPECT_EQ(got, expected);
}

TEST(Csv, everyHelperIsInTheCrewList) {
    Session session = fixture::harbourLights();
    session.setting.helpers[1].troubleBreathing = true;
    const std::string csv = crewCsv(session, Unit::inch);
    EXPECT_TRUE(csv.starts_with(
        "name,from,until,reach,unit,pace,closes,irons,lifts,seated,trouble_breathing\r\n"))
        << csv;
    EXPECT_NE(csv.find("Bo,,,27,in,1,yes,yes,yes,no,yes\r\n"), std::string::npos) << csv;
    EXPECT_NE(csv.find("Cai,,15:00,27,in,1,yes,yes,yes,no,no\r\n"), std::string::npos) << csv;
    EXPECT_NE(csv.find("Dot,,,25,in,1,yes,yes,yes,yes,no\r\n"), std::string::npos) << csv;
}

// A break stands where it begins among the tasks, one line for each whose it is.
TEST(Csv, breaksStandAmongTheTasks) {
    const Session session = fixture::harbourLights();
    Plan plan = fixture::planByHand(session);
    const Seconds second = plan.tasks.at(1).start;
    plan.breaks = {{second, second + Seconds{600}, true, {}},
                   {plan.finish, plan.finish + Seconds{300}, false, {"Bo"}}};
    const std::string text = tasksCsv(session, plan);
    std::vector<std::string> lines;
    for (std::size_t from = 0; from < text.size(); from = text.find("\r\n", from) + 2)
        lines.push_back(text.substr(from, text.find("\r\n", from) - from));
    const auto breaks = std::ranges::count_if(
        lines, [](const std::string& l) { return l.ends_with(",,,break,,"); });
    EXPECT_EQ(breaks, 5);
    EXPECT_TRUE(lines.back().starts_with("Bo,")) << lines.back();
    const std::size_t before = 1 + plan.tasks[0].people.size(); // the heading, the first task
    EXPECT_TRUE(lines.at(before).ends_with(",,,break,,")) << lines.at(before);
}

} // namespace
} // namespace bastewright

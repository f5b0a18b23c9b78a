#include "plan/plan_json.h"

#include <gtest/gtest.h>

#include <fstream>
#include <sstream>

namespace bastewright {
namespace {

/// The blocks of JSON in a Markdown file.
std::vector<std::string> examples(const std::string& path) {
    std::ifstream in{path};
    std::stringstream all;
    all << in.rdbuf();
    const std::string text = all.str(), open = "```json\n";
    std::vector<std::string> out;
    for (std::size_t at = 0; (at = text.find(open, at)) != std::string::npos;) {
        at += open.size();
        const auto end = text.find("```", at);
        out.push_back(text.substr(at, end - at));
        at = end + 3;
    }
    return out;
}

TEST(FormatsDocument, ExamplesReadWithoutAnyFinding) {
    const auto blocks = examples(BASTEWRIGHT_SOURCE "/docs/formats.md");
    ASSERT_EQ(blocks.size(), 3u);
    const SessionRead job = readSession(blocks[0]), session = readSession(blocks[1]);
    EXPECT_TRUE(job.session && !job.session->severalQuilts);
    EXPECT_TRUE(session.session && session.session->severalQuilts);
    const PlanRead plan = readPlan(blocks[2]);
    EXPECT_TRUE(plan.plan);
    for (const auto* findings : {&job.problems, &session.problems, &plan.problems})
        for (const auto& f : *findings)
            ADD_FAILURE() << f.field << ": " << f.text;
}

} // namespace
} // namespace bastewright

#include "unit/store/shelf.h"

#include <gmock/gmock.h>

namespace bastewright {
namespace {

using made::Folder;
using made::must;
using made::opened;
using ::testing::ElementsAre;
using ::testing::HasSubstr;
using ::testing::IsEmpty;

std::vector<std::string> names(const std::vector<JobEntry>& jobs) {
    std::vector<std::string> out;
    for (const auto& j : jobs)
        out.push_back(j.name);
    return out;
}

TEST(Jobs, ANewLibraryIsEmptyAndMakesItsFolder) {
    Folder f;
    auto [library, findings] = opened(f.file("deep/deeper/library.sqlite"));
    EXPECT_THAT(findings, IsEmpty());
    EXPECT_THAT(library.jobs().value(), IsEmpty());
    EXPECT_THAT(library.openSessions().value(), IsEmpty());
}

TEST(Jobs, AreKeptAcrossOpenings) {
    Folder f;
    JobId id = 0;
    using namespace std::string_literals;
    const auto text = "{\"name\":\"Zo\xc3\xab\"}\n\0 with a zero byte"s;
    {
        auto [library, _] = opened(f.file());
        id = library.addJob("Zoë's quilt", text).value();
    }
    auto [library, _] = opened(f.file());
    EXPECT_EQ(library.loadJob(id).value(), text);
    EXPECT_THAT(names(library.jobs().value()), ElementsAre("Zoë's quilt"));
}

TEST(Jobs, AreListedLatestChangedFirst) {
    Folder f;
    auto [library, _] = opened(f.file());
    const auto a = library.addJob("a", "1").value();
    library.addJob("b", "2").value();
    must(library.saveJob(a, "a again", "3"));
    EXPECT_THAT(names(library.jobs().value()), ElementsAre("a again", "b"));
    EXPECT_EQ(library.loadJob(a).value(), "3");
    EXPECT_LT(library.jobs().value()[0].createdMs, library.jobs().value()[1].createdMs);
}

TEST(Jobs, RemovedOnesComeBack) {
    Folder f;
    auto [library, _] = opened(f.file());
    const auto a = library.addJob("a", "1").value();
    must(library.removeJob(a));
    EXPECT_THAT(library.jobs().value(), IsEmpty());
    EXPECT_THAT(names(library.removedJobs().value()), ElementsAre("a"));
    EXPECT_EQ(library.loadJob(a).value(), "1");
    must(library.restoreJob(a));
    EXPECT_THAT(names(library.jobs().value()), ElementsAre("a"));
    EXPECT_THAT(library.removedJobs().value(), IsEmpty());
}

TEST(Jobs, AreFoundByWhatTheyHold) {
    Folder f;
    auto [library, _] = opened(f.file());
    EXPECT_EQ(library.jobWith("1").value(), std::nullopt);
    const auto a = library.addJob("a", "1").value();
    EXPECT_EQ(library.jobWith("1").value(), a);
    const auto b = library.addJob("b", "1").value();
    EXPECT_EQ(library.jobWith("1").value(), b) << "the latest changed";
    must(library.removeJob(b));
    EXPECT_EQ(library.jobWith("1").value(), a);
    must(library.saveJob(a, "a", "2"));
    EXPECT_EQ(library.jobWith("1").value(), std::nullopt);
}

TEST(Jobs, ThatAreNotThereAreRefusedInASentence) {
    Folder f;
    auto [library, _] = opened(f.file());
    for (const auto& error : {library.loadJob(7).error(), library.saveJob(7, "", "").error(),
                              library.removeJob(7).error(), library.restoreJob(7).error(),
                              library.startSession(7, {}).error()})
        EXPECT_THAT(error, HasSubstr("no quilt number 7"));
}

TEST(Settings, AreKeptAndReplaced) {
    Folder f;
    {
        auto [library, _] = opened(f.file());
        EXPECT_EQ(library.setting("distance").value(), std::nullopt);
        must(library.setSetting("distance", "60"));
        must(library.setSetting("distance", "70"));
        must(library.setSetting("empty", ""));
        EXPECT_EQ(library.lastScreen().value(), std::nullopt);
        must(library.setLastScreen("plan/3"));
    }
    auto [library, _] = opened(f.file());
    EXPECT_EQ(library.setting("distance").value(), "70");
    EXPECT_EQ(library.setting("empty").value(), "");
    EXPECT_EQ(library.lastScreen().value(), "plan/3");
}

} // namespace
} // namespace bastewright

#include "job/job_json.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <filesystem>
#include <fstream>
#include <sys/stat.h>
#include <unistd.h>

namespace bastewright {
namespace {

namespace fs = std::filesystem;
using testing::HasSubstr;

class SessionFile : public testing::Test {
protected:
    void SetUp() override {
        folder_ = fs::path{testing::TempDir()} /
                  ("bastewright-files-" + std::to_string(::getpid()) + "-" +
                   testing::UnitTest::GetInstance()->current_test_info()->name());
        fs::create_directories(folder_);
    }
    void TearDown() override { fs::remove_all(folder_); }

    static std::string onlyProblem(const fs::path& path) {
        const SessionRead read = readSessionFile(path.string());
        EXPECT_FALSE(read.session);
        EXPECT_EQ(read.problems.size(), 1u);
        return read.problems.empty() ? "" : read.problems.front().text.english();
    }

    fs::path folder_;
};

TEST_F(SessionFile, ReadsTheDemosWithoutAnyFinding) {
    for (const char* demo :
         {"harbour-lights", "leftover-batting", "winter-afternoon", "winter-thread"}) {
        std::string path = BASTEWRIGHT_SOURCE "/assets/demo/";
        path.append(demo).append(".json");
        const SessionRead read = readSessionFile(path);
        EXPECT_TRUE(read.session) << demo;
        for (const auto& f : read.problems)
            ADD_FAILURE() << demo << " " << f.field << ": " << f.text;
    }
}

TEST_F(SessionFile, HarbourLightsIsAsTheHallKnowsIt) {
    const auto s = *readSessionFile(BASTEWRIGHT_SOURCE "/assets/demo/harbour-lights.json").session;
    const Top& top = s.jobs.front().top;
    EXPECT_EQ(top.grid->width(), 88_in);
    EXPECT_EQ(top.grid->length(), 112_in);
    EXPECT_EQ(topRect(top), (Rect{{}, {}, 88_in, 112_in}));
    EXPECT_EQ(s.setting.helpers.size(), 4u);
    EXPECT_TRUE(s.setting.helpers.back().seated);
}

TEST_F(SessionFile, AMissingFileIsNamed) {
    EXPECT_THAT(onlyProblem(folder_ / "none.json"), HasSubstr("There is no file"));
    EXPECT_THAT(onlyProblem(folder_ / "none.json"), HasSubstr("none.json"));
    EXPECT_THAT(onlyProblem(""), HasSubstr("There is no file"));
}

TEST_F(SessionFile, AFolderIsNamed) {
    EXPECT_THAT(onlyProblem(folder_), HasSubstr("is a folder"));
}

TEST_F(SessionFile, APipeIsNotWaitedFor) {
    const auto pipe = folder_ / "pipe";
    ASSERT_EQ(::mkfifo(pipe.c_str(), 0600), 0);
    EXPECT_THAT(onlyProblem(pipe), HasSubstr("not an ordinary file"));
}

TEST_F(SessionFile, AHugeFileIsRefusedUnread) {
    const auto path = folder_ / "huge.json";
    std::ofstream{path} << "{}";
    fs::resize_file(path, 100'000'000); // sparse
    EXPECT_THAT(onlyProblem(path), HasSubstr("100000000 bytes; up to 8000000"));
}

TEST_F(SessionFile, AnUnreadableFileIsNamed) {
    const auto path = folder_ / "locked.json";
    std::ofstream{path} << "{}";
    fs::permissions(path, fs::perms::none);
    if (std::ifstream{path})
        GTEST_SKIP() << "this user may read every file";
    EXPECT_THAT(onlyProblem(path), HasSubstr("cannot be read"));
}

TEST_F(SessionFile, AnEmptyFileIsNamed) {
    const auto path = folder_ / "empty.json";
    std::ofstream{path};
    EXPECT_THAT(onlyProblem(path), HasSubstr("empty"));
}

} // namespace
} // namespace bastewright

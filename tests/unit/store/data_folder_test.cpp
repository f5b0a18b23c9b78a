#include "store/data_folder.h"

#include <gtest/gtest.h>

#include <map>

namespace bastewright {
namespace {

Environment with(std::map<std::string, std::string> variables) {
    return [variables](const std::string& name) -> std::optional<std::string> {
        const auto it = variables.find(name);
        return it == variables.end() ? std::nullopt : std::optional{it->second};
    };
}

// XDG Base Directory Specification 0.8: "$XDG_DATA_HOME defines the base directory relative to
// which user-specific data files should be stored. If $XDG_DATA_HOME is either not set or empty, a
// default equal to $HOME/.local/share should be used. … All paths set in these environment
// variables must be absolute. If an implementation encounters a relative path … it should consider
// the path invalid and ignore it."
TEST(DataFolder, FollowsTheXdgSpecification) {
    const std::pair<std::map<std::string, std::string>, const char*> rows[]{
        {{{"HOME", "/home/ada"}}, "/home/ada/.local/share/bastewright"},
        {{{"HOME", "/home/ada"}, {"XDG_DATA_HOME", "/data"}}, "/data/bastewright"},
        {{{"HOME", "/home/ada"}, {"XDG_DATA_HOME", ""}}, "/home/ada/.local/share/bastewright"},
        {{{"HOME", "/home/ada"}, {"XDG_DATA_HOME", "data"}}, "/home/ada/.local/share/bastewright"},
        {{{"XDG_DATA_HOME", "/data/"}}, "/data/bastewright"},
        {{{"HOME", "/"}}, "/.local/share/bastewright"},
    };
    for (const auto& [variables, folder] : rows) {
        EXPECT_EQ(dataFolder(with(variables)).value(), folder);
        EXPECT_EQ(libraryPath(with(variables)).value(), std::string{folder} + "/library.sqlite");
    }
}

TEST(DataFolder, WithoutAHomeSaysWhatToSet) {
    for (const auto& nothing : {with({}), with({{"HOME", "home"}})}) {
        ASSERT_FALSE(dataFolder(nothing).has_value());
        EXPECT_NE(dataFolder(nothing).error().english().find("XDG_DATA_HOME"), std::string::npos);
        EXPECT_FALSE(libraryPath(nothing).has_value());
    }
}

} // namespace
} // namespace bastewright

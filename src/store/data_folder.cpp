#include "store/data_folder.h"

#include <cstdlib>

namespace bastewright {

Environment processEnvironment() {
    return [](const std::string& variable) -> std::optional<std::string> {
        const char* value = std::getenv(variable.c_str());
        return value ? std::optional<std::string>{value} : std::nullopt;
    };
}

tl::expected<std::string, Sentence> dataFolder(const Environment& environment) {
    const auto absolute = [&environment](const char* variable) -> std::optional<std::string> {
        auto value = environment(variable);
        if (!value || !value->starts_with('/'))
            return {};
        while (value->size() > 1 && value->ends_with('/'))
            value->pop_back();
        return value;
    };
    const auto under = [](const std::string& folder, const std::string& rest) {
        return (folder == "/" ? "" : folder) + rest;
    };
    if (const auto data = absolute("XDG_DATA_HOME"))
        return under(*data, "/bastewright");
    if (const auto home = absolute("HOME"))
        return under(*home, "/.local/share/bastewright");
    return tl::unexpected(
        core::says("There is no folder for the library: neither XDG_DATA_HOME nor HOME holds an "
                   "absolute path. Set one of them."));
}

tl::expected<std::string, Sentence> libraryPath(const Environment& environment) {
    return dataFolder(environment).map([](const std::string& folder) {
        return folder + "/library.sqlite";
    });
}

} // namespace bastewright

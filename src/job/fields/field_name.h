#pragma once

#include <string_view>

namespace bastewright {

/// What a field of a job or session file is called and what it means. All words are English.
struct FieldName {
    std::string_view key;    ///< in files
    std::string_view label;  ///< on screens, where the catalogue of translations has it
    std::string_view help;   ///< what it means, for whoever writes files; empty: as the label says
    std::string_view source; ///< why its default is what it is; `docs/computation/defaults.md`

    // NOLINTNEXTLINE: where nothing more is to be said, a key alone names a field
    constexpr FieldName(const char* inFiles, std::string_view onScreens = {},
                        std::string_view meaning = {}, std::string_view whyDefault = {})
        : key{inFiles}
        , label{onScreens}
        , help{meaning}
        , source{whyDefault} {}
    constexpr operator std::string_view() const { return key; } // NOLINT: files know keys alone
};

} // namespace bastewright

namespace core {

/// Marks the label of a field for the catalogue of translations, as `says` does for sentences.
constexpr std::string_view label(std::string_view english) {
    return english;
}

} // namespace core

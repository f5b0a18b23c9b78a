#pragma once

#include "job/finding.h"

#include <cstddef>
#include <cstdint>
#include <cstdlib>
#include <iostream>
#include <string>
#include <string_view>

/// What a fuzz target holds the readers to. A broken promise ends the program, so that libFuzzer
/// keeps the input and the replay of the corpus fails.
namespace bastewright::fuzz {

inline void promise(bool kept, const char* what, std::string_view detail = {}) {
    if (kept)
        return;
    std::cerr << "Broken promise: " << what << '\n' << detail << std::endl;
    std::abort();
}

inline void promisePrintable(std::string_view text) {
    for (const char c : text)
        promise((c < 0 || c >= ' ') && c != '\x7f', "what people read is one printable line", text);
}

/// A refusal is one line for people that ends as a sentence does, and not a page long.
inline void promiseSentence(std::string_view text) {
    constexpr std::size_t kPage = 2000;
    promise(!text.empty() && text.size() <= kPage, "a refusal is not empty and no page", text);
    promise(text.ends_with('.'), "a refusal ends as a sentence", text);
    promisePrintable(text);
}

inline void promiseSentences(const Findings& findings) {
    promise(findings.size() <= 400, "findings stay few enough to read");
    for (const auto& finding : findings)
        promiseSentence(finding.text.english());
}

inline std::string_view textOf(const std::uint8_t* data, std::size_t size) {
    return {reinterpret_cast<const char*>(data), size};
}

} // namespace bastewright::fuzz

/// libFuzzer's entry; the replay calls it too.
extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size);

#include "fuzz/promise.h"

#include <algorithm>
#include <chrono>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <sys/resource.h>
#include <vector>

/// replay FOLDER: runs one fuzz target over its corpus, without libFuzzer. Fails where a promise is
/// broken, the corpus is missing, an input takes longer than it should or memory grows too large.
int main(int argc, char** argv) {
    namespace fs = std::filesystem;
    using std::chrono::steady_clock;
    constexpr std::chrono::seconds kLongest{5};
    constexpr long kMostKilobytes = 512 * 1024;
    std::vector<fs::path> files;
    if (argc == 2 && fs::is_directory(argv[1]))
        std::ranges::copy(fs::directory_iterator{argv[1]}, std::back_inserter(files));
    if (files.size() < 5) {
        std::fprintf(stderr, "replay FOLDER: a folder with at least five inputs is needed\n");
        return 2;
    }
    std::ranges::sort(files);
    for (const auto& file : files) {
        std::ifstream in{file, std::ios::binary};
        const std::string text{std::istreambuf_iterator<char>{in}, {}};
        std::fprintf(stderr, "%s\n", file.filename().c_str());
        const auto begun = steady_clock::now();
        LLVMFuzzerTestOneInput(reinterpret_cast<const std::uint8_t*>(text.data()), text.size());
        if (steady_clock::now() - begun > kLongest) {
            std::fprintf(stderr, "takes too long\n");
            return 1;
        }
    }
    rusage used{};
    ::getrusage(RUSAGE_SELF, &used);
    if (used.ru_maxrss > kMostKilobytes) {
        std::fprintf(stderr, "used %ld kB, more than %ld\n", used.ru_maxrss, kMostKilobytes);
        return 1;
    }
    std::fprintf(stderr, "%zu inputs, every promise kept, %ld kB at most\n", files.size(),
                 used.ru_maxrss);
    return 0;
}

// From the start of the process to the first frame of the window, which shows three quilts with
// photos, with nothing of the program in the page cache and with all of it; memory with the demo
// and a photo planned; and the longest turns of the screen's thread while a large session is
// planned. Drawn in software. Exit status 1 where one is
// above what it may be. `bench_start [TIMES]`.
//
// This process has nothing of Qt, so that it keeps no page of it: bench_start_window beside it is
// the program's window.
//
// Cold: the pages of the program, of every library it maps, and of Qt's plugins and modules and the
// fonts are given back to the system before each start (posix_fadvise). Pages that another running
// process has mapped too stay; how much stayed is printed.
#include <algorithm>
#include <cstdio>
#include <cstdlib>
#include <fcntl.h>
#include <filesystem>
#include <set>
#include <sstream>
#include <string>
#include <sys/mman.h>
#include <time.h>
#include <unistd.h>
#include <vector>

namespace {

namespace fs = std::filesystem;

constexpr double kColdMs = 700, kWarmMs = 350, kMemoryMiB = 200, kTurnMs = 100;

/// What the window in a process of its own printed.
std::string run(const std::string& arguments) {
    const std::string window = fs::read_symlink("/proc/self/exe").string() + "_window ";
    std::string said;
    if (FILE* child = popen((window + arguments).c_str(), "r")) {
        char part[256];
        while (std::fgets(part, sizeof part, child))
            said += part;
        pclose(child);
    }
    return said;
}

/// Milliseconds of the clock that all processes of a machine share.
double sharedMilliseconds() {
    timespec t{};
    clock_gettime(CLOCK_MONOTONIC, &t);
    return double(t.tv_sec) * 1e3 + double(t.tv_nsec) / 1e6;
}

double firstFrame(const std::string& library) {
    const double begun = sharedMilliseconds();
    return std::atof(run("first-frame " + library).c_str()) - begun;
}

/// Every file a start reads: what the window maps, and what Qt looks for beside that.
std::set<fs::path> filesOfAStart() {
    std::set<fs::path> files;
    std::istringstream maps{run("maps")};
    for (std::string line; std::getline(maps, line);)
        if (const auto at = line.find('/'); at != std::string::npos && fs::exists(line.substr(at)))
            files.insert(line.substr(at));
    for (const char* folder :
         {"/usr/lib/x86_64-linux-gnu/qt6/plugins", "/usr/lib/x86_64-linux-gnu/qt6/qml",
          "/usr/share/fonts", "/var/cache/fontconfig"}) {
        std::error_code none;
        for (const auto& entry : fs::recursive_directory_iterator{folder, none})
            if (entry.is_regular_file(none))
                files.insert(entry.path());
    }
    return files;
}

/// Gives back the pages of a file; how many MiB of it are in memory after that.
double giveBack(const fs::path& path) {
    const int file = open(path.c_str(), O_RDONLY | O_CLOEXEC);
    if (file < 0)
        return 0;
    posix_fadvise(file, 0, 0, POSIX_FADV_DONTNEED);
    const auto size = std::size_t(lseek(file, 0, SEEK_END));
    double stays = 0;
    if (size > 0) {
        void* map = mmap(nullptr, size, PROT_READ, MAP_SHARED, file, 0);
        if (map != MAP_FAILED) {
            const auto page = std::size_t(sysconf(_SC_PAGESIZE));
            std::vector<unsigned char> in((size + page - 1) / page);
            if (mincore(map, size, in.data()) == 0)
                stays = double(std::count_if(in.begin(), in.end(), [](auto c) { return c & 1; })) *
                        double(page) / (1024 * 1024);
            munmap(map, size);
        }
    }
    close(file);
    return stays;
}

bool told(const char* what, double is, double most, const char* unit) {
    std::printf("%-52s %7.1f %s (at most %.0f)%s\n", what, is, unit, most,
                is <= most ? "" : "  TOO MUCH");
    return is <= most;
}

double median(std::vector<double> all) {
    std::ranges::sort(all);
    return all[all.size() / 2];
}

bool starts(int times) {
    const auto files = filesOfAStart();
    std::string folder = fs::temp_directory_path() / "bench_start_XXXXXX";
    if (!mkdtemp(folder.data()))
        return false;
    const std::string library = folder + "/library.sqlite";
    run("prepare " + library);
    std::vector<double> cold, warm;
    double stays = 0;
    for (int i = 0; i < times; ++i) {
        stays = 0;
        for (const auto& file : files)
            stays += giveBack(file);
        cold.push_back(firstFrame(library));
        warm.push_back(firstFrame(library));
    }
    fs::remove_all(folder);
    std::printf("cold: of %zu files %.0f MiB stayed in memory\n", files.size(), stays);
    const bool good = told("first frame, cold (median)", median(cold), kColdMs, "ms");
    return told("first frame, warm (median)", median(warm), kWarmMs, "ms") && good;
}

bool planning() {
    double rss = 0, own = 0, shared = 0, scratch = 0, people = 0, table = 0, after = 0;
    if (std::sscanf(run("planning").c_str(), "%lf %lf %lf %lf %lf %lf %lf", &rss, &own, &shared,
                    &scratch, &people, &table, &after) != 7)
        return false;
    std::printf("memory with the demo planned: %.1f MiB of its own, %.1f of files\n", own, shared);
    bool good = told("resident with the demo planned", rss, kMemoryMiB, "MiB");
    good = told("resident with 120 x 120 in for nine people planned", after, kMemoryMiB, "MiB") &&
           good;
    good =
        told("longest turn, 120 x 120 in for nine, from the start", scratch, kTurnMs, "ms") && good;
    good = told("longest turn, somebody no longer lifts", people, kTurnMs, "ms") && good;
    return told("longest turn, a table more", table, kTurnMs, "ms") && good;
}

} // namespace

int main(int argc, char** argv) {
    setenv("QT_QPA_PLATFORM", "offscreen", 0);
    setenv("QT_QUICK_BACKEND", "software", 0);
    const bool quick = starts(argc > 1 ? std::max(1, std::atoi(argv[1])) : 5);
    return planning() && quick ? 0 : 1;
}

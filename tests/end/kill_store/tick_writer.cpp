#include "store/library.h"

#include <cstring>
#include <string>
#include <unistd.h>

/// tick_writer LIBRARY PREFIX [COUNT]: opens the library, goes on with its running session (or
/// starts one), appends ticks PREFIX-1, PREFIX-2, … and writes each id and a newline to standard
/// output once it is acknowledged, "!" and the sentence where one is refused. Ends after COUNT, or
/// never.
namespace {

using namespace bastewright;

// One write for one line, so that a line is either there or not.
void say(const std::string& line) {
    const auto text = line + "\n";
    [[maybe_unused]] const auto written = ::write(STDOUT_FILENO, text.data(), text.size());
}

int fail(const std::string& sentence) {
    say("!" + sentence);
    return 1;
}

} // namespace

int main(int argc, char** argv) {
    if (argc < 3)
        return fail("tick_writer LIBRARY PREFIX [COUNT]");
    const std::string prefix = argv[2];
    const long count = argc > 3 ? std::stol(argv[3]) : -1;
    auto opened = Library::open(argv[1], {.nowMs = {}, .busyMs = 20'000});
    if (!opened)
        return fail(opened.error().english());
    for (const auto& finding : opened->findings)
        say("?" + finding.text.english());
    auto& library = opened->library;
    auto running = library.openSessions();
    if (!running)
        return fail(running.error().english());
    SessionId session = 0;
    if (running->empty()) {
        const auto job = library.addJob("Harbour Lights", "{}");
        if (!job)
            return fail(job.error().english());
        const auto started = library.startSession(*job, {"{}", "{}"});
        if (!started)
            return fail(started.error().english());
        session = *started;
    } else {
        session = running->back().id;
    }
    say("open");
    for (long n = 1; count < 0 || n <= count; ++n) {
        const std::string person(static_cast<std::size_t>(n % 200), 'x'); // pages fill unevenly
        const Event tick{prefix + "-" + std::to_string(n), 0,
                         happened::ZoneTick{Tick::opened, 0, "C4", person}};
        const auto stored = library.append(session, tick);
        if (!stored)
            return fail(stored.error().english());
        say(tick.id);
    }
    return 0;
}

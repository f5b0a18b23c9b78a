#include "fixture.h"
#include "job/job_json.h"
#include "language/language.h"
#include "planners/whole/whole.h"
#include "sheets/sheets.h"

#include <QFileInfo>
#include <QGuiApplication>
#include <QTemporaryDir>

#include <algorithm>
#include <cstdio>
#include <ctime>

/// Processor time and size of whole sets of sheets, beside what they may take: one second and five
/// megabytes for nine people, three quilts and twenty passes, made by hand and by the planner. Job
/// files named after it are planned and printed too; `--keep FOLDER` keeps what is written, then
/// `--language CODE` writes it in another. Exit status 1 where a set is slower or larger, or the
/// large one has fewer than twenty passes.
namespace {

using namespace bastewright;
using namespace bastewright::literals;

constexpr double kSeconds = 1, kMegabytes = 5;
constexpr std::size_t kPasses = 20;

double processorSeconds() {
    std::timespec t{};
    clock_gettime(CLOCK_PROCESS_CPUTIME_ID, &t);
    return double(t.tv_sec) + double(t.tv_nsec) * 1e-9;
}

bool measure(const char* what, const Session& session, const Plan& plan, const std::string& folder,
             std::size_t least = 0) {
    std::size_t passes = 0;
    for (const auto& q : plan.quilts)
        passes += q.passes.size();
    bool within = passes >= least;
    for (const Paper paper : {Paper::a4, Paper::letter}) {
        const double from = processorSeconds();
        const auto files = writeSheets(session, plan, folder, {.paper = paper});
        const double seconds = processorSeconds() - from;
        if (!files) {
            std::printf("%s: %s\n", what, files.error().c_str());
            return false;
        }
        double megabytes = 0;
        for (const auto& file : *files)
            megabytes += double(QFileInfo{QString::fromStdString(file)}.size()) / 1e6;
        within = within && seconds <= kSeconds && megabytes <= kMegabytes;
        std::printf("%-24s %2zu people %2zu quilts %3zu passes %-6s %6.2f s (limit %.0f)  %6.2f MB "
                    "(limit %.0f)\n",
                    what, session.setting.helpers.size(), plan.quilts.size(), passes,
                    name(paper).data(), seconds, kSeconds, megabytes, kMegabytes);
    }
    return within;
}

} // namespace

int main(int argc, char** argv) {
    qputenv("QT_QPA_PLATFORM", "offscreen");
    const QGuiApplication application{argc, argv};
    const QTemporaryDir temporary;
    std::string folder = temporary.path().toStdString();
    std::vector<std::string> jobs(argv + 1, argv + argc);
    const auto option = [&](const char* name) -> std::string {
        if (jobs.size() < 2 || jobs[0] != name)
            return {};
        const std::string value = jobs[1];
        jobs.erase(jobs.begin(), jobs.begin() + 2);
        return value;
    };
    if (const std::string keep = option("--keep"); !keep.empty())
        folder = keep;
    if (const std::string code = option("--language"); !code.empty())
        language::speak(QString::fromStdString(code));
    Session large = fixture::threeLargeQuilts();
    for (Job& job : large.jobs)
        job.top.length = {150_in};
    bool within = measure("by hand", large, fixture::planByHand(large), folder, kPasses);
    within = measure("planned", large, planWhole(large), folder, kPasses) && within;
    for (const auto& job : jobs) {
        const auto read = readSessionFile(job);
        if (!read.session) {
            std::printf("%s cannot be read\n", job.c_str());
            return 2;
        }
        within = measure(QFileInfo{QString::fromStdString(job)}.baseName().toUtf8().constData(),
                         *read.session, planWhole(*read.session), folder) &&
                 within;
    }
    return within ? 0 : 1;
}

#include "sheets/print/print_sheets.h"

#include "sheets/failure.h"
#include "sheets/print/paint_pages.h"
#include "sheets/words.h"

#include <QPagedPaintDevice>

#include <algorithm>
#include <optional>
#include <thread>

namespace bastewright {
namespace {

using printing::JobState;
using sheets::failure;
using sheets::Text;
using Clock = std::chrono::steady_clock;

constexpr std::chrono::milliseconds kAskAgain{150};

QString nameOf(const PrintOrder& order) {
    return QString::fromStdString(order.printer);
}

/// ": out of paper", or nothing.
QString because(const std::string& reason) {
    return reason.empty() ? QString{} : Text::tr(": %1").arg(QString::fromStdString(reason));
}

int newestJob(printing::Service& service, const std::string& printer) {
    int newest = 0;
    for (const auto& job : service.jobs(printer))
        newest = std::max(newest, job.id);
    return newest;
}

/// The job that came after another; nothing where none did.
std::optional<printing::PrintJob> jobAfter(printing::Service& service, const std::string& printer,
                                           int before) {
    std::optional<printing::PrintJob> found;
    for (const auto& job : service.jobs(printer))
        if (job.id > before && (!found || job.id < found->id))
            found = job;
    return found;
}

/// Sends the pages; empty where all went well.
QString send(printing::Service& service, const SheetSet& set, const PrintOrder& order,
             const std::function<void(int, int)>& progress) {
    printing::Submission what;
    what.printer = nameOf(order);
    what.title = set.title();
    what.paper = sheets::pageLayout(order.sheets.paper).pageSize();
    what.copies = order.copies;
    what.bothSides = order.sheets.bothSides;
    what.colour = order.sheets.colour;
    return service.send(what, [&](QPagedPaintDevice& device) {
        return sheets::paintPages(device, set, [&](int page) {
            if (progress)
                progress(page, set.pages());
        });
    });
}

Printed outcome(printing::Service& service, const PrintOrder& order, const printing::PrintJob& job,
                int pages) {
    Printed out;
    out.job = job.id;
    out.pages = pages;
    if (job.state == JobState::done) {
        out.state = Printed::State::done;
        out.words = Text::tr("%1 printed %2 pages.").arg(nameOf(order)).arg(pages).toStdString();
        return out;
    }
    const auto queue = service.state(order.printer);
    const bool held = queue && queue->stopped;
    out.state = job.state == JobState::printing && !held ? Printed::State::printing
                                                         : Printed::State::waiting;
    out.words = (held ? Text::tr("%1 is stopped%2. The sheets wait there as job %3.")
                            .arg(nameOf(order), because(queue->reason))
                            .arg(job.id)
                 : out.state == Printed::State::printing
                     ? Text::tr("%1 is printing %2 pages.").arg(nameOf(order)).arg(pages)
                     : Text::tr("%1 has the sheets as job %2; they wait their turn.")
                           .arg(nameOf(order))
                           .arg(job.id))
                    .toStdString();
    return out;
}

} // namespace

tl::expected<std::vector<Printer>, std::string> printers() {
    const auto opened = printing::service();
    if (!opened)
        return tl::make_unexpected(opened.error());
    auto out = (*opened)->printers();
    std::ranges::stable_sort(out, std::ranges::greater{}, &Printer::usual);
    return out;
}

tl::expected<Printed, std::string>
printSheets(const Session& session, const Plan& plan, const PrintOrder& order,
            const std::function<void(int page, int pages)>& progress,
            std::chrono::milliseconds patience) {
    if (plan.quilts.empty())
        return failure(Text::tr("There is no plan to print yet."));
    if (order.copies < 1 || order.copies > kMostCopies)
        return failure(
            Text::tr("Copies: %1 is not accepted; 1 to %2 is.").arg(order.copies).arg(kMostCopies));
    const auto opened = printing::service();
    if (!opened)
        return tl::make_unexpected(opened.error());
    printing::Service& service = **opened;
    const auto queue = service.state(order.printer);
    if (!queue)
        return tl::make_unexpected(queue.error());
    if (!queue->accepting)
        return failure(Text::tr("%1 takes no jobs%2.").arg(nameOf(order), because(queue->reason)));
    const SheetSet set{session, plan, order.sheets};
    if (set.pages() == 0)
        return failure(Text::tr("No sheet is chosen."));
    const int before = newestJob(service, order.printer);
    if (const QString problem = send(service, set, order, progress); !problem.isEmpty())
        return failure(problem);

    const auto until = Clock::now() + patience;
    std::optional<printing::PrintJob> job;
    do {
        job = jobAfter(service, order.printer, before);
        if (job && (job->state == JobState::done || job->state == JobState::failed))
            break;
        std::this_thread::sleep_for(kAskAgain);
    } while (Clock::now() < until);
    if (!job)
        return failure(Text::tr("%1 did not take the sheets.").arg(nameOf(order)));
    if (job->state == JobState::failed) {
        const auto now = service.state(order.printer);
        return failure(Text::tr("%1 gave up on the sheets, job %2%3.")
                           .arg(nameOf(order))
                           .arg(job->id)
                           .arg(because(now ? now->reason : std::string{})));
    }
    return outcome(service, order, *job, set.pages());
}

} // namespace bastewright

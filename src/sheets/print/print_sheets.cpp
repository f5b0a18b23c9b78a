#include "sheets/print/print_sheets.h"

#include "sheets/print/paint_pages.h"
#include "sheets/print/print_queue.h"
#include "sheets/words.h"

#include <QPrintEngine>
#include <QPrinter>
#include <QPrinterInfo>

#include <algorithm>
#include <optional>
#include <thread>

namespace bastewright {
namespace {

using print_queue::JobState;
using sheets::Text;
using Clock = std::chrono::steady_clock;

// Options for the queue by their IPP names, of Qt's engine for CUPS; its own headers keep the key
// to themselves.
constexpr auto kQueueOptions = QPrintEngine::PrintEnginePropertyKey(0xfe00);
constexpr std::chrono::milliseconds kAskAgain{150};

tl::unexpected<std::string> failure(const QString& sentence) {
    return tl::make_unexpected(sentence.toStdString());
}

QString nameOf(const PrintOrder& order) {
    return QString::fromStdString(order.printer);
}

/// ": out of paper", or nothing.
QString because(const std::string& reason) {
    return reason.empty() ? QString{} : Text::tr(": %1").arg(QString::fromStdString(reason));
}

int newestJob(const std::string& printer) {
    int newest = 0;
    for (const auto& job : print_queue::jobs(printer))
        newest = std::max(newest, job.id);
    return newest;
}

/// The job that came after another; nothing where none did.
std::optional<print_queue::PrintJob> jobAfter(const std::string& printer, int before) {
    std::optional<print_queue::PrintJob> found;
    for (const auto& job : print_queue::jobs(printer))
        if (job.id > before && (!found || job.id < found->id))
            found = job;
    return found;
}

/// Sends the pages; empty where all went well.
QString send(const SheetSet& set, const PrintOrder& order,
             const std::function<void(int, int)>& progress) {
    QPrinter printer;
    printer.setPrinterName(nameOf(order));
    // With a queue it does not know Qt would silently write a PDF instead.
    if (printer.printerName() != nameOf(order) || printer.outputFormat() != QPrinter::NativeFormat)
        return Text::tr("The printer %1 cannot be used from this program.").arg(nameOf(order));
    printer.setDocName(set.title());
    printer.setCreator(QStringLiteral("Bastewright"));
    const QPageSize paper = sheets::pageLayout(order.sheets.paper).pageSize();
    // A whole layout is refused by printers that cannot print to the edge; the pages keep their own
    // margins.
    printer.setPageSize(paper);
    printer.setPageOrientation(QPageLayout::Portrait);
    printer.setFullPage(true);
    // A size the printer does not know is dropped in silence.
    if (!printer.pageLayout().pageSize().isEquivalentTo(paper))
        return Text::tr("%1 has no paper of the size %2.").arg(nameOf(order), paper.name());
    printer.setCopyCount(order.copies);
    printer.setDuplex(order.sheets.bothSides ? QPrinter::DuplexLongSide : QPrinter::DuplexNone);
    printer.setColorMode(order.sheets.colour ? QPrinter::Color : QPrinter::GrayScale);
    if (!order.sheets.colour) // Qt draws in grey and leaves the printer its coloured inks
        printer.printEngine()->setProperty(
            kQueueOptions,
            QStringList{QStringLiteral("print-color-mode"), QStringLiteral("monochrome")});
    const bool painted = sheets::paintPages(printer, set, [&](int page) {
        if (progress)
            progress(page, set.pages());
    });
    return painted ? QString{} : Text::tr("The pages could not be sent to %1.").arg(nameOf(order));
}

Printed outcome(const PrintOrder& order, const print_queue::PrintJob& job, int pages) {
    Printed out;
    out.job = job.id;
    out.pages = pages;
    if (job.state == JobState::done) {
        out.state = Printed::State::done;
        out.words = Text::tr("%1 printed %2 pages.").arg(nameOf(order)).arg(pages).toStdString();
        return out;
    }
    const auto queue = print_queue::state(order.printer);
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

std::vector<Printer> printers() {
    std::vector<Printer> out;
    const auto all = QPrinterInfo::availablePrinters();
    for (const auto& info : all) {
        QStringList about;
        for (const QString& words : {info.makeAndModel(), info.location()})
            if (!words.isEmpty())
                about << words;
        const auto duplex = info.supportedDuplexModes();
        out.push_back(
            {info.printerName().toStdString(), about.join(QStringLiteral(", ")).toStdString(),
             info.isDefault(),
             duplex.contains(QPrinter::DuplexLongSide) || duplex.contains(QPrinter::DuplexAuto),
             info.supportedColorModes().contains(QPrinter::Color)});
    }
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
    const auto queue = print_queue::state(order.printer);
    if (!queue)
        return tl::make_unexpected(queue.error());
    if (!queue->accepting)
        return failure(Text::tr("%1 takes no jobs%2.").arg(nameOf(order), because(queue->reason)));
    const SheetSet set{session, plan, order.sheets};
    if (set.pages() == 0)
        return failure(Text::tr("No sheet is chosen."));
    const int before = newestJob(order.printer);
    if (const QString problem = send(set, order, progress); !problem.isEmpty())
        return failure(problem);

    const auto until = Clock::now() + patience;
    std::optional<print_queue::PrintJob> job;
    do {
        job = jobAfter(order.printer, before);
        if (job && (job->state == JobState::done || job->state == JobState::failed))
            break;
        std::this_thread::sleep_for(kAskAgain);
    } while (Clock::now() < until);
    if (!job)
        return failure(Text::tr("%1 did not take the sheets.").arg(nameOf(order)));
    if (job->state == JobState::failed) {
        const auto now = print_queue::state(order.printer);
        return failure(Text::tr("%1 gave up on the sheets, job %2%3.")
                           .arg(nameOf(order))
                           .arg(job->id)
                           .arg(because(now ? now->reason : std::string{})));
    }
    return outcome(order, *job, set.pages());
}

} // namespace bastewright

#pragma once

#include <QByteArray>
#include <QObject>
#include <QPageLayout>
#include <QPageSize>
#include <QString>
#include <tl/expected.hpp>

#include <functional>
#include <string>
#include <vector>

class QPagedPaintDevice;

/// What the program asks of Qt's printing and of printers. It is a library of its own
/// (src/printing), opened when printing is first asked for: Qt's printing and CUPS bring with them
/// some fifteen libraries that a start would otherwise read.
namespace bastewright {

/// A printer this computer knows.
struct Printer {
    std::string name;
    std::string about; ///< its maker's words and where it stands; may be empty
    bool usual = false;
    bool bothSides = false, colour = false; ///< what it can do
};

namespace printing {

struct QueueState {
    bool accepting = true; ///< takes jobs
    bool stopped = false;  ///< takes them and keeps them waiting
    std::string reason;    ///< in the printer's own words; may be empty
};

enum class JobState { waiting, printing, done, failed };

struct PrintJob {
    int id = 0;
    std::string title;
    JobState state = JobState::waiting;
};

/// One set of pages as it is sent.
struct Submission {
    QString printer, title;
    QPageSize paper; ///< upright
    int copies = 1;
    bool bothSides = false, colour = true;
};

/// Any thread. All calls block, for some seconds where the print service does not answer.
class Service {
public:
    virtual ~Service() = default;

    /// Needs a QGuiApplication.
    virtual std::vector<Printer> printers() = 0;

    /// The error is one sentence: the service cannot be reached, or knows no such printer.
    virtual tl::expected<QueueState, std::string> state(const std::string& printer) = 0;

    /// This person's jobs on the queue, finished ones too. Empty where the service does not answer.
    virtual std::vector<PrintJob> jobs(const std::string& printer) = 0;

    /// Has `paint` paint the pages on a device that is set so, and sends them; empty where all went
    /// well, else one sentence. Needs a QGuiApplication.
    virtual QString send(const Submission& what,
                         const std::function<bool(QPagedPaintDevice&)>& paint) = 0;

    /// The pages as a PDF in greys, which only Qt's printer makes of colours; empty where they
    /// could not be drawn. Needs a QGuiApplication.
    virtual QByteArray greyPdf(const QString& title, const QPageLayout& layout, int dotsPerInch,
                               const std::function<bool(QPagedPaintDevice&)>& paint) = 0;
};

/// The service, its library opened at the first call; the error is one sentence: the library is
/// missing, or cannot be opened. Any thread.
tl::expected<Service*, std::string> service();

/// The same of this library's file.
tl::expected<Service*, std::string> serviceIn(const QString& library);

} // namespace printing
} // namespace bastewright

// The number changes with anything above: a library of another version is not taken.
#define BASTEWRIGHT_PRINTING "bastewright.printing.Service/1"
Q_DECLARE_INTERFACE(bastewright::printing::Service, BASTEWRIGHT_PRINTING)

#include "view/paper/sheets_writer.h"

#include "sheets/exchange/export.h"
#include "sheets/print/print_sheets.h"
#include "view/base/file_name.h"
#include "view/base/words.h"

#include <QDateTime>
#include <QDir>

#include <algorithm>

using namespace bastewright;

SheetsWriter::SheetsWriter(QString folder, QObject* parent)
    : QObject{parent}
    , folder_{std::move(folder)} {
    connect(this, &SheetsWriter::changed, this, &SheetsWriter::whyNotChanged);
    connect(this, &SheetsWriter::printersChanged, this, &SheetsWriter::whyNotChanged);
    connect(&preview_, &SheetPreview::changed, this, &SheetsWriter::whyNotChanged);
}

SheetsWriter::~SheetsWriter() {
    for (auto* thread : {&worker_, &looker_})
        if (thread->joinable())
            thread->join();
}

void SheetsWriter::take(const PlannedPtr& planned) {
    preview_.show(planned);
    lookForPrinters();
}

void SheetsWriter::work(const QString& saying, std::function<Outcome()> what) {
    if (busy_ || !preview_.planned())
        return;
    busy_ = true;
    failed_ = false;
    progress_ = 0;
    message_ = saying;
    emit changed();
    worker_ = std::jthread{[this, what = std::move(what)] {
        QMetaObject::invokeMethod(
            this,
            [this, outcome = what()] {
                busy_ = false;
                failed_ = outcome.failed;
                message_ = outcome.words;
                emit changed();
            },
            Qt::QueuedConnection);
    }};
}

QString SheetsWriter::target() const {
    return QDir{folder_}.filePath(
        fileName(words::fromCore(preview_.planned()->session.jobs.front().name)));
}

void SheetsWriter::save() {
    if (!preview_.planned())
        return;
    work(
        tr("Writing the sheets …"),
        [planned = preview_.planned(), options = preview_.options(), into = target()]() -> Outcome {
            const auto files =
                writeSheets(planned->session, planned->plan, words::toCore(into), options);
            if (!files)
                return {words::fromCore(files.error()), true};
            return {files->size() == 1 ? tr("Written: %1").arg(words::fromCore(files->front()))
                                       : tr("The sheets and the cards are in %1").arg(into)};
        });
}

void SheetsWriter::saveForOthers() {
    if (!preview_.planned())
        return;
    using namespace std::chrono;
    const QDateTime now = QDateTime::currentDateTime();
    const year_month_day day = year{now.date().year()} / now.date().month() / now.date().day();
    const sys_seconds at{seconds{now.toSecsSinceEpoch()}};
    work(tr("Writing the files …"),
         [planned = preview_.planned(), into = target(), day, at]() -> Outcome {
             const auto files =
                 writeExchange(planned->session, planned->plan, words::toCore(into), day, at);
             if (!files)
                 return {words::fromCore(files.error()), true};
             return {tr("Plan, lists, calendar and pictures: %1 files in %2")
                         .arg(files->size())
                         .arg(into)};
         });
}

void SheetsWriter::print() {
    if (!preview_.planned() || printer_.isEmpty())
        return;
    PrintOrder order;
    order.printer = words::toCore(printer_);
    order.copies = copies_;
    order.sheets = preview_.options();
    work(tr("Sending the sheets to %1 …").arg(printer_),
         [this, planned = preview_.planned(), order]() -> Outcome {
             const auto told = [this](int page, int pages) {
                 QMetaObject::invokeMethod(
                     this,
                     [this, page, pages] {
                         progress_ = qreal(page + 1) / pages;
                         emit changed();
                     },
                     Qt::QueuedConnection);
             };
             const auto printed = printSheets(planned->session, planned->plan, order, told);
             if (!printed)
                 return {words::fromCore(printed.error()), true};
             return {words::fromCore(printed->words), printed->state == Printed::State::waiting};
         });
}

void SheetsWriter::forget() {
    message_.clear();
    failed_ = false;
    emit changed();
}

void SheetsWriter::setPrinter(const QString& name) {
    if (name == printer_ || !printers_.contains(name))
        return;
    printer_ = name;
    emit printersChanged();
}

QString SheetsWriter::printerText() const {
    if (looking_ && printers_.isEmpty())
        return tr("Looking for printers …");
    if (!noPrinting_.isEmpty())
        return noPrinting_;
    const auto at = printers_.indexOf(printer_);
    return at < 0 ? tr("This computer knows no printer. Save the sheets and print them elsewhere.")
                  : about_.value(at);
}

QString SheetsWriter::whyNot() const {
    if (busy_)
        return tr("Wait until these sheets are done.");
    if (preview_.pages() == 0)
        return preview_.planned() ? tr("Choose at least one kind of sheet.")
                                  : tr("There is no plan to print yet.");
    if (printer_.isEmpty())
        return looking_
                   ? tr("Looking for printers …")
                   : tr("No printer is known. Save the sheets as PDF and print them elsewhere.");
    return {};
}

void SheetsWriter::setCopies(int copies) {
    copies = std::clamp(copies, 1, kMostCopies);
    if (copies == copies_)
        return;
    copies_ = copies;
    emit changed();
}

void SheetsWriter::lookForPrinters() {
    if (looking_)
        return;
    looking_ = true;
    emit printersChanged();
    looker_ = std::jthread{[this] {
        QMetaObject::invokeMethod(
            this, [this, all = bastewright::printers()] { found(all); }, Qt::QueuedConnection);
    }};
}

void SheetsWriter::found(const tl::expected<std::vector<Printer>, std::string>& all) {
    looking_ = false;
    noPrinting_ = all ? QString{} : words::fromCore(all.error());
    printers_.clear();
    about_.clear();
    for (const auto& one : all.value_or(std::vector<Printer>{})) {
        printers_ << words::fromCore(one.name);
        about_ << words::fromCore(one.about);
    }
    if (!printers_.contains(printer_))
        printer_ = printers_.value(0);
    emit printersChanged();
}

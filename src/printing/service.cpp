#include "printing/cups_queue.h"
#include "sheets/words.h"

#include <QFile>
#include <QPrintEngine>
#include <QPrinter>
#include <QPrinterInfo>
#include <QTemporaryDir>

namespace bastewright::printing {
namespace {

using sheets::Text;

// Options for the queue by their IPP names, of Qt's engine for CUPS; its own headers keep the key
// to themselves.
constexpr auto kQueueOptions = QPrintEngine::PrintEnginePropertyKey(0xfe00);

std::vector<Printer> known() {
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
    return out;
}

QString sent(const Submission& what, const std::function<bool(QPagedPaintDevice&)>& paint) {
    QPrinter printer;
    printer.setPrinterName(what.printer);
    // With a queue it does not know Qt would silently write a PDF instead.
    if (printer.printerName() != what.printer || printer.outputFormat() != QPrinter::NativeFormat)
        return Text::tr("The printer %1 cannot be used from this program.").arg(what.printer);
    printer.setDocName(what.title);
    printer.setCreator(QStringLiteral("Bastewright"));
    // A whole layout is refused by printers that cannot print to the edge; the pages keep their own
    // margins.
    printer.setPageSize(what.paper);
    printer.setPageOrientation(QPageLayout::Portrait);
    printer.setFullPage(true);
    // A size the printer does not know is dropped in silence.
    if (!printer.pageLayout().pageSize().isEquivalentTo(what.paper))
        return Text::tr("%1 has no paper of the size %2.").arg(what.printer, what.paper.name());
    printer.setCopyCount(what.copies);
    printer.setDuplex(what.bothSides ? QPrinter::DuplexLongSide : QPrinter::DuplexNone);
    printer.setColorMode(what.colour ? QPrinter::Color : QPrinter::GrayScale);
    if (!what.colour) // Qt draws in grey and leaves the printer its coloured inks
        printer.printEngine()->setProperty(
            kQueueOptions,
            QStringList{QStringLiteral("print-color-mode"), QStringLiteral("monochrome")});
    return paint(printer) ? QString{}
                          : Text::tr("The pages could not be sent to %1.").arg(what.printer);
}

QByteArray inGreys(const QString& title, const QPageLayout& layout, int dotsPerInch,
                   const std::function<bool(QPagedPaintDevice&)>& paint) {
    const QTemporaryDir folder; // it writes to a file only
    QFile file{folder.filePath(QStringLiteral("sheets.pdf"))};
    {
        QPrinter printer;
        printer.setOutputFormat(QPrinter::PdfFormat);
        printer.setOutputFileName(file.fileName());
        printer.setResolution(dotsPerInch);
        printer.setPageLayout(layout);
        printer.setColorMode(QPrinter::GrayScale);
        printer.setDocName(title);
        printer.setCreator(QStringLiteral("Bastewright"));
        if (!paint(printer))
            return {};
    }
    return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray{};
}

} // namespace

/// What the program finds in this library.
class CupsService : public QObject, public Service {
    Q_OBJECT
    Q_PLUGIN_METADATA(IID BASTEWRIGHT_PRINTING)
    Q_INTERFACES(bastewright::printing::Service)

public:
    std::vector<Printer> printers() override { return known(); }
    tl::expected<QueueState, std::string> state(const std::string& printer) override {
        return queueState(printer);
    }
    std::vector<PrintJob> jobs(const std::string& printer) override { return queueJobs(printer); }
    QString send(const Submission& what,
                 const std::function<bool(QPagedPaintDevice&)>& paint) override {
        return sent(what, paint);
    }
    QByteArray greyPdf(const QString& title, const QPageLayout& layout, int dotsPerInch,
                       const std::function<bool(QPagedPaintDevice&)>& paint) override {
        return inGreys(title, layout, dotsPerInch, paint);
    }
};

} // namespace bastewright::printing

#include "service.moc"

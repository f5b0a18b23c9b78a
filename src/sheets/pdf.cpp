#include "sheets/pdf.h"

#include "sheets/pdf_outline.h"
#include "sheets/print/paint_pages.h"
#include "sheets/words.h"

#include <QBuffer>
#include <QPdfWriter>
#include <QPrinter>
#include <QTemporaryDir>

namespace bastewright::sheets {
namespace {

constexpr int kResolution = 720; // ten to the point

/// Qt rounds the page's box to whole points (A4: 595 × 842). The true size is written over it,
/// digit for digit, so that no offset in the file moves.
void setExactPageSize(QByteArray& pdf, const PageFrame& frame) {
    const QByteArray key = "/MediaBox [0 0 ";
    for (auto at = pdf.indexOf(key); at >= 0; at = pdf.indexOf(key, at + 1)) {
        const auto from = at + key.size(), to = pdf.indexOf(']', from);
        const QByteArray exact = QByteArray::number(frame.width, 'f', 6) + ' ' +
                                 QByteArray::number(frame.height, 'f', 6);
        if (to - from == exact.size())
            pdf.replace(from, exact.size(), exact);
    }
}

QByteArray inColour(const SheetSet& set, const SheetOptions& options) {
    QByteArray pdf;
    QBuffer buffer{&pdf};
    buffer.open(QIODevice::WriteOnly);
    QPdfWriter writer{&buffer};
    writer.setResolution(kResolution);
    writer.setPageLayout(pageLayout(options.paper));
    writer.setTitle(set.title());
    writer.setCreator(QStringLiteral("Bastewright"));
    return paintPages(writer, set) ? pdf : QByteArray{};
}

/// Only Qt's printer turns colours into greys, and it writes to a file.
QByteArray inGrey(const SheetSet& set, const SheetOptions& options) {
    const QTemporaryDir folder;
    QFile file{folder.filePath(QStringLiteral("sheets.pdf"))};
    {
        QPrinter printer;
        printer.setOutputFormat(QPrinter::PdfFormat);
        printer.setOutputFileName(file.fileName());
        printer.setResolution(kResolution);
        printer.setPageLayout(pageLayout(options.paper));
        printer.setColorMode(QPrinter::GrayScale);
        printer.setDocName(set.title());
        printer.setCreator(QStringLiteral("Bastewright"));
        if (!paintPages(printer, set))
            return {};
    }
    return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray{};
}

} // namespace

QByteArray pdfOf(const SheetSet& set, const SheetOptions& options) {
    QByteArray pdf = options.colour ? inColour(set, options) : inGrey(set, options);
    if (pdf.isEmpty())
        return {};
    setExactPageSize(pdf, set.frame());
    //: The language these sheets are written in, as a tag after BCP 47
    return withOutline(pdf, set.outline(), Text::tr("en"));
}

} // namespace bastewright::sheets

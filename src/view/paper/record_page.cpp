#include "view/paper/record_page.h"

#include "sheets/columns.h"
#include "sheets/print/paint_pages.h"
#include "sheets/printable.h"
#include "view/base/words.h"
#include "view/paper/record_words.h"

#include <QBuffer>
#include <QCoreApplication>
#include <QPainter>
#include <QPdfWriter>
#include <QSaveFile>

using namespace bastewright;
using namespace bastewright::sheets;

namespace {

struct RecordText {
    Q_DECLARE_TR_FUNCTIONS(Record)
};

constexpr int kResolution = 720; // ten to the point

Flow people(const Record& record, double width) {
    // Thread and spray have one step of zones, which is their last.
    const bool opened =
        std::ranges::any_of(record.people, [](const auto& p) { return p.zonesOpened > 0; });
    std::vector<Column> columns{{RecordText::tr("Who"), -1}, {RecordText::tr("At the table"), 90}};
    if (opened)
        columns.push_back({RecordText::tr("Opened"), 60, true});
    columns.push_back({opened ? RecordText::tr("Closed") : RecordText::tr("Zones"), 60, true});
    columns.push_back({RecordText::tr("Speed"), 170});
    std::vector<std::vector<Cell>> rows;
    for (const auto& p : record.people) {
        std::vector<Cell> row{Cell{isolated(p.name), true}, Cell{words::span(p.here)}};
        if (opened)
            row.push_back(Cell{QString::number(p.zonesOpened)});
        row.push_back(Cell{QString::number(p.zonesClosed)});
        row.push_back(Cell{record_words::pace(p)});
        rows.push_back(std::move(row));
    }
    return table(columns, rows, width);
}

Flow calls(const Record& record, double width) {
    std::vector<std::vector<Cell>> rows;
    for (const auto& c : record.calls)
        rows.push_back({Cell{RecordText::tr("Pass %1").arg(c.pass)},
                        Cell{words::call(c.call), true}, Cell{words::span(c.took)},
                        Cell{c.planned > Seconds{} ? words::span(c.planned) : QString{}}});
    return table({{RecordText::tr("Pass"), 80},
                  {RecordText::tr("Call"), -1},
                  {RecordText::tr("Took"), 100},
                  {RecordText::tr("Planned"), 100}},
                 rows, width);
}

Flow pages(const Record& record, const QString& name, double width) {
    Flow flow{title(RecordText::tr("What was done"), printable(name), width)};
    for (const auto& line : record_words::summary(record))
        flow.push_back(paragraph(line, width));
    flow.push_back(heading(RecordText::tr("Who"), width));
    flow += people(record, width);
    if (!record.notes.empty()) {
        flow.push_back(heading(RecordText::tr("Notes"), width));
        for (const auto& note : record.notes)
            flow.push_back(paragraph(
                RecordText::tr("%1  %2").arg(words::timeOfDay(note.atMs), isolated(note.text)),
                width));
    }
    flow.push_back(heading(RecordText::tr("Calls"), width));
    flow += calls(record, width);
    flow.push_back(heading(RecordText::tr("One thing after another"), width));
    for (const auto& line : record.lines)
        if (const QString said = record_words::line(line); !said.isEmpty())
            flow.push_back(paragraph(
                RecordText::tr("%1  %2").arg(words::timeOfDay(line.atMs), printable(said)), width,
                type::kSmall, 1));
    return flow;
}

QByteArray draw(const Record& record, const QString& name, Paper paper) {
    const auto frame = PageFrame::of(paper);
    QByteArray pdf;
    QBuffer buffer{&pdf};
    buffer.open(QIODevice::WriteOnly);
    QPdfWriter writer{&buffer};
    writer.setResolution(kResolution);
    writer.setPageLayout(pageLayout(paper));
    writer.setTitle(RecordText::tr("%1: what was done").arg(name));
    writer.setCreator(QStringLiteral("Bastewright"));
    QPainter painter;
    if (!painter.begin(&writer))
        return {};
    painter.scale(kResolution / 72.0, kResolution / 72.0);
    bool first = true;
    for (const auto& page :
         paginate(pages(record, name, frame.contentWidth()), frame.contentHeight())) {
        if (!std::exchange(first, false))
            writer.newPage();
        for (const auto& placed : page)
            if (placed.block.draw)
                placed.block.draw(painter, {frame.left(), frame.top() + placed.y,
                                            frame.contentWidth(), placed.block.height});
    }
    painter.end();
    return pdf;
}

} // namespace

QString writeRecordPage(const Record& record, const QString& title, const QString& path,
                        Paper paper) {
    const QByteArray pdf = draw(record, title, paper);
    if (pdf.isEmpty())
        return RecordText::tr("The pages could not be drawn.");
    QSaveFile file{path};
    if (!file.open(QIODevice::WriteOnly) || file.write(pdf) != pdf.size() || !file.commit())
        return RecordText::tr("%1 could not be written: %2").arg(path, file.errorString());
    return {};
}

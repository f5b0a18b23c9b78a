#pragma once

#include "sheets/flow.h"
#include "sheets/text_block.h"

#include <QStringList>

#include <utility>
#include <vector>

/// The blocks pages are composed of.
namespace bastewright::sheets {

/// The title of a page, with a quiet line below it.
Block title(const QString& text, const QString& below, double width);

/// A heading within a page; stays with what follows.
Block heading(const QString& text, double width, int size = type::kLead);

Block paragraph(const std::vector<Span>& spans, double width, int size = type::kBody,
                double before = 4);
Block paragraph(const QString& text, double width, int size = type::kBody, double before = 4);

/// White space that goes with nothing.
Block gap(double height);

/// Two columns: a quiet name and its value, one row each.
Flow facts(const std::vector<std::pair<QString, QString>>& rows, double width, double nameWidth,
           int size = type::kBody);

/// One cell of a table.
struct Cell {
    enum class Kind {
        text,
        tick,  ///< a box to tick
        write, ///< a field to write in
        people ///< letters in rings
    };
    Cell(QString t = {}, bool bold = false)
        : spans{{std::move(t), bold}} {}
    Cell(std::vector<Span> s)
        : spans{std::move(s)} {}
    static Cell tick() { return ofKind(Kind::tick); }
    static Cell write() { return ofKind(Kind::write); }
    static Cell people(QStringList letters) {
        Cell c = ofKind(Kind::people);
        c.letters = std::move(letters);
        return c;
    }

    Kind kind = Kind::text;
    std::vector<Span> spans;
    QStringList letters;

private:
    static Cell ofKind(Kind k) {
        Cell c;
        c.kind = k;
        return c;
    }
};

struct Column {
    QString title;
    double width = 0; ///< points; 0: as wide as its content; negative: that share of what is left
    bool right = false;
};

/// For `TableStyle::together`: not divided at all.
inline constexpr int kAllRows = 1000;

struct TableStyle {
    int size = type::kBody;
    double rowPadding = 3; ///< above and below the text
    bool headings = true;
    int together = 1; ///< rows that stay with the headings, where they fit on a page
};

/// A table with thin rules below its rows. A row may have one cell more than there are columns: its
/// text stands below the others, from the second column to the right edge. Headings stay with the
/// first row and are repeated on every page the table runs over to.
Flow table(const std::vector<Column>& columns, const std::vector<std::vector<Cell>>& rows,
           double width, const TableStyle& style = {});

} // namespace bastewright::sheets

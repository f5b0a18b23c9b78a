#include "sheets/columns.h"

#include "sheets/ink.h"

#include <QPainter>

#include <algorithm>

namespace bastewright::sheets {
namespace {

constexpr double kGutter = 10;

Block textBlock(const std::shared_ptr<const TextBlock>& text, double before = 0) {
    return {.height = text->height(), .before = before, .draw = [text](QPainter& p, QRectF at) {
                text->draw(p, at.topLeft());
            }};
}

double badgeSize(int type) {
    return type * 1.35;
}

double naturalWidth(const Cell& cell, int size) {
    switch (cell.kind) {
    case Cell::Kind::tick:
        return size + 2;
    case Cell::Kind::write:
        return 60;
    case Cell::Kind::people:
        return double(cell.letters.size()) * (badgeSize(size) + 2);
    case Cell::Kind::text:
        break;
    }
    double w = 0;
    for (const auto& s : cell.spans)
        w += textWidth(s.text, {size, s.bold});
    return w + 0.5;
}

/// A cell measured in its column.
class SetCell {
public:
    SetCell(const Cell& cell, double width, bool right, const TableStyle& style)
        : cell_{cell}
        , width_{width}
        , size_{style.size} {
        if (cell.kind != Cell::Kind::text)
            return;
        TextStyle text{style.size};
        text.align = right ? Qt::AlignRight : Qt::AlignLeft;
        text_ = std::make_shared<TextBlock>(cell.spans, width, text);
    }

    double height() const {
        if (text_)
            return text_->height();
        if (cell_.kind != Cell::Kind::people)
            return size_ * 1.3;
        return double(badgeRows()) * (badgeSize(size_) + 2) - 1;
    }

    void draw(QPainter& p, QPointF at) const {
        const double line = size_ * 1.3;
        switch (cell_.kind) {
        case Cell::Kind::text:
            text_->draw(p, at);
            break;
        case Cell::Kind::tick:
            tickBox(p, {at.x() + 0.5, at.y() + (line - size_) / 2, double(size_), double(size_)});
            break;
        case Cell::Kind::write:
            p.setPen(QPen{ink::kRule, ink::kThin});
            p.setBrush(ink::kPaper);
            p.drawRoundedRect(QRectF{at, QSizeF{width_, line}}, 2, 2);
            break;
        case Cell::Kind::people:
            drawPeople(p, at);
            break;
        }
    }

private:
    int perRow() const { return std::max(1, int(width_ / (badgeSize(size_) + 2))); }
    int badgeRows() const {
        return std::max(1, (int(cell_.letters.size()) + perRow() - 1) / perRow());
    }
    void drawPeople(QPainter& p, QPointF at) const {
        const double d = badgeSize(size_);
        for (int i = 0; i < int(cell_.letters.size()); ++i) {
            const int column = i % perRow(), row = i / perRow();
            badge(p, at + QPointF{0.5 + d / 2 + column * (d + 2), d / 2 + row * (d + 2)}, d,
                  cell_.letters[i]);
        }
    }

    Cell cell_;
    double width_;
    int size_;
    std::shared_ptr<const TextBlock> text_;
};

std::vector<double> widths(const std::vector<Column>& columns,
                           const std::vector<std::vector<Cell>>& rows, double width, int size) {
    std::vector<double> w(columns.size());
    double left = width - kGutter * double(columns.size() - 1), shares = 0;
    for (std::size_t c = 0; c < columns.size(); ++c) {
        w[c] = std::max(0.0, columns[c].width);
        if (columns[c].width < 0)
            shares -= columns[c].width;
        if (columns[c].width == 0) {
            w[c] = naturalWidth({columns[c].title, true}, type::kHead);
            for (const auto& row : rows)
                w[c] = std::max(w[c], naturalWidth(row[c], size));
            w[c] = std::min(w[c], width * 0.4);
        }
        left -= w[c];
    }
    for (std::size_t c = 0; c < columns.size(); ++c)
        if (columns[c].width < 0)
            w[c] = std::max(20.0, left * -columns[c].width / shares);
    return w;
}

Block headings(const std::vector<Column>& columns, const std::vector<double>& w, double width) {
    auto cells = std::make_shared<std::vector<TextBlock>>();
    double height = 0;
    for (std::size_t c = 0; c < columns.size(); ++c) {
        TextStyle style{type::kHead, true};
        style.align = columns[c].right ? Qt::AlignRight : Qt::AlignLeft;
        style.ink = ink::kQuiet;
        cells->emplace_back(columns[c].title, w[c], style);
        height = std::max(height, cells->back().height());
    }
    return {.height = height + 4,
            .before = 4,
            .keepWithNext = true,
            .draw = [cells, w, height, width](QPainter& p, QRectF at) {
                double x = at.x();
                for (std::size_t c = 0; c < w.size(); ++c) {
                    const auto& cell = (*cells)[c];
                    cell.draw(p, {x, at.y() + height - cell.height()});
                    x += w[c] + kGutter;
                }
                rule(p, {at.x(), at.y() + height + 2}, width, ink::kLine);
            }};
}

Block row(const std::vector<Column>& columns, const std::vector<Cell>& cells,
          const std::vector<double>& w, double width, const TableStyle& style) {
    auto set = std::make_shared<std::vector<SetCell>>();
    double height = 0;
    for (std::size_t c = 0; c < w.size(); ++c) {
        set->emplace_back(cells[c], w[c], columns[c].right, style);
        height = std::max(height, set->back().height());
    }
    const double indent = w[0] + kGutter, below = height;
    if (cells.size() > w.size()) {
        set->emplace_back(cells[w.size()], width - indent, false, style);
        height += set->back().height();
    }
    const double pad = style.rowPadding;
    return {.height = height + 2 * pad, .draw = [=](QPainter& p, QRectF at) {
                double x = at.x();
                for (std::size_t c = 0; c < w.size(); ++c) {
                    (*set)[c].draw(p, {x, at.y() + pad});
                    x += w[c] + kGutter;
                }
                if (set->size() > w.size())
                    set->back().draw(p, {at.x() + indent, at.y() + pad + below});
                rule(p, {at.x(), at.bottom()}, width);
            }};
}

} // namespace

Block title(const QString& text, const QString& below, double width) {
    auto head = std::make_shared<TextBlock>(text, width, TextStyle{type::kTitle, true});
    TextStyle quiet{type::kBody};
    quiet.ink = ink::kQuiet;
    auto sub = std::make_shared<TextBlock>(below, width, quiet);
    const double subHeight = below.isEmpty() ? 0 : sub->height();
    return {.height = head->height() + subHeight + 6,
            .keepWithNext = true,
            .draw =
                [head, sub, subHeight](QPainter& p, QRectF at) {
                    head->draw(p, at.topLeft());
                    if (subHeight > 0)
                        sub->draw(p, at.topLeft() + QPointF{0, head->height()});
                },
            .bookmark = text};
}

Block heading(const QString& text, double width, int size) {
    auto block = textBlock(std::make_shared<TextBlock>(text, width, TextStyle{size, true}), 16);
    block.keepWithNext = true;
    return block;
}

Block paragraph(const std::vector<Span>& spans, double width, int size, double before) {
    return textBlock(std::make_shared<TextBlock>(spans, width, TextStyle{size}), before);
}

Block paragraph(const QString& text, double width, int size, double before) {
    return paragraph(std::vector<Span>{{text}}, width, size, before);
}

Block gap(double height) {
    return {.before = height, .draw = [](QPainter&, QRectF) {}};
}

Flow facts(const std::vector<std::pair<QString, QString>>& rows, double width, double nameWidth,
           int size) {
    Flow flow;
    for (const auto& [name, value] : rows) {
        TextStyle quiet{size};
        quiet.ink = ink::kQuiet;
        auto left = std::make_shared<TextBlock>(name, nameWidth - kGutter, quiet);
        auto right = std::make_shared<TextBlock>(value, width - nameWidth, TextStyle{size});
        flow.push_back({.height = std::max(left->height(), right->height()),
                        .before = 2,
                        .draw = [left, right, nameWidth](QPainter& p, QRectF at) {
                            left->draw(p, at.topLeft());
                            right->draw(p, at.topLeft() + QPointF{nameWidth, 0});
                        }});
    }
    return flow;
}

Flow table(const std::vector<Column>& columns, const std::vector<std::vector<Cell>>& rows,
           double width, const TableStyle& style) {
    Flow flow;
    const auto w = widths(columns, rows, width, style.size);
    const auto head = std::make_shared<Block>(headings(columns, w, width));
    if (style.headings)
        flow.push_back(*head);
    for (const auto& cells : rows) {
        flow.push_back(row(columns, cells, w, width, style));
        if (style.headings)
            flow.back().repeat = head;
        const auto index = &cells - rows.data();
        flow.back().keepWithNext = index + 1 < style.together && &cells != &rows.back();
    }
    return flow;
}

} // namespace bastewright::sheets

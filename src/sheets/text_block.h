#pragma once

#include "sheets/type.h"

#include <QColor>
#include <QPointF>
#include <QString>
#include <QTextLayout>

#include <memory>
#include <vector>

class QPainter;

namespace bastewright::sheets {

/// A stretch of text in one weight.
struct Span {
    QString text;
    bool bold = false;
};

struct TextStyle {
    int size = type::kBody;
    bool bold = false;
    Qt::Alignment align = Qt::AlignLeft;
    int maxLines = 0; ///< 0: as many as it takes; else the last line ends in an ellipsis
    QColor ink = QColor{0x1a, 0x1a, 0x1a};
    bool close = false; ///< lines a fifth of the size apart, whatever the font asks for
    bool serif = false; ///< the face of titles, always bold
};

/// Text set in a column of a given width: wrapped at words, inside a word only where it is wider
/// than the column, never cut. Everything passes through `printable`.
class TextBlock {
public:
    TextBlock(const QString& text, double width, const TextStyle& style = {});
    TextBlock(const std::vector<Span>& spans, double width, const TextStyle& style = {});

    double height() const { return height_; }
    double naturalWidth() const { return naturalWidth_; } ///< of the widest line
    int lines() const { return layout_->lineCount(); }
    /// From the block's top to the first line's baseline.
    double baseline() const;

    void draw(QPainter& painter, QPointF topLeft) const;

private:
    void lay(const std::vector<Span>& spans);

    std::unique_ptr<QTextLayout> layout_;
    double width_ = 0, height_ = 0, naturalWidth_ = 0;
    TextStyle style_;
};

/// Width of the text on one line.
double textWidth(const QString& text, const TextStyle& style);

} // namespace bastewright::sheets

#pragma once

#include "sheets/ink.h"
#include "sheets/text_block.h"

#include <QStringList>

#include <memory>
#include <vector>

/// Text that is set once and drawn when its place is known, and the few styles of the sheets.
namespace bastewright::sheets {

using SetText = std::shared_ptr<const TextBlock>;

inline SetText set(const std::vector<Span>& spans, double width, const TextStyle& style) {
    return std::make_shared<const TextBlock>(spans, width, style);
}

inline SetText set(const QString& text, double width, const TextStyle& style) {
    return set(std::vector<Span>{{text}}, width, style);
}

/// Lines a fifth of their size apart.
inline TextStyle closeText(int size, bool bold = false) {
    TextStyle style{size, bold};
    style.close = true;
    return style;
}

/// What only explains.
inline TextStyle quiet(int size, Qt::Alignment align = Qt::AlignLeft) {
    TextStyle style = closeText(size);
    style.ink = ink::kQuiet;
    style.align = align;
    return style;
}

/// Titles, names and large figures.
inline TextStyle serif(int size, Qt::Alignment align = Qt::AlignLeft, int maxLines = 0) {
    TextStyle style{size};
    style.serif = true;
    style.close = true;
    style.align = align;
    style.maxLines = maxLines;
    return style;
}

/// The largest size, from `most` down to `least`, at which no word of these is wider than `width`.
inline int sizeForWords(const QStringList& texts, double width, int most, int least) {
    int size = most;
    const auto fits = [&](const QString& text) {
        for (const QString& word : text.split(QChar::Space))
            if (textWidth(word, serif(size)) > width)
                return false;
        return true;
    };
    for (const QString& text : texts)
        while (size > least && !fits(text))
            --size;
    return size;
}

} // namespace bastewright::sheets

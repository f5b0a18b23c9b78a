#include "sheets/printable.h"

#include "sheets/type.h"

#include <QGlyphRun>
#include <QTextBoundaryFinder>
#include <QTextLayout>

#include <algorithm>

namespace bastewright::sheets {
namespace {

constexpr QChar kHollow{0x25A1};
constexpr QChar kIsolate{0x2068}, kEndIsolate{0x2069};

// Glyph 0 of every font is the mark for 'no such glyph' (OpenType, glyf table: .notdef).
bool lacksGlyph(const QString& text) {
    QTextLayout layout{text, font(type::kBody)};
    layout.beginLayout();
    layout.createLine();
    layout.endLayout();
    const auto runs = layout.glyphRuns();
    return std::ranges::any_of(runs, [](const QGlyphRun& run) {
        const auto glyphs = run.glyphIndexes();
        return glyphs.contains(0);
    });
}

QString withoutControls(const QString& text) {
    QString out;
    out.reserve(text.size());
    for (qsizetype i = 0; i < text.size(); ++i) {
        const QChar c = text[i];
        const bool lone = c.isSurrogate() && !(c.isHighSurrogate() && i + 1 < text.size() &&
                                               text[i + 1].isLowSurrogate());
        if (lone) {
            out += kHollow;
        } else if (c.isSurrogate()) {
            out += c;
            out += text[++i];
        } else if (c.category() == QChar::Other_Control || c.category() == QChar::Separator_Line ||
                   c.category() == QChar::Separator_Paragraph) {
            out += QChar::Space;
        } else {
            out += c;
        }
    }
    return out;
}

} // namespace

QString printable(const QString& text) {
    QString clean = withoutControls(text);
    if (!lacksGlyph(clean))
        return clean;
    QString out;
    QTextBoundaryFinder finder{QTextBoundaryFinder::Grapheme, clean};
    qsizetype from = 0;
    while (finder.toNextBoundary() >= 0) {
        const QString cluster = clean.mid(from, finder.position() - from);
        out += lacksGlyph(cluster) ? QString{kHollow} : cluster;
        from = finder.position();
    }
    return out;
}

QString isolated(const std::string& utf8) {
    const QString clean = printable(QString::fromStdString(utf8));
    const bool plain = std::ranges::none_of(clean, [](QChar c) {
        const auto d = c.direction();
        return d == QChar::DirR || d == QChar::DirAL || d == QChar::DirAN || c.isSurrogate();
    });
    return plain ? clean : kIsolate + clean + kEndIsolate;
}

} // namespace bastewright::sheets

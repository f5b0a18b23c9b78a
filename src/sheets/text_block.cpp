#include "sheets/text_block.h"

#include "sheets/printable.h"

#include <QGuiApplication>
#include <QPainter>

#include <algorithm>
#include <map>

namespace bastewright::sheets {
namespace {
constexpr double kLeading = 1.3, kClose = 1.2; // line pitch over type size
constexpr double kUnbounded = 1e6;
constexpr QChar kEllipsis{0x2026};

std::vector<Span> printableSpans(const std::vector<Span>& spans) {
    std::vector<Span> out;
    for (const auto& s : spans)
        out.push_back({printable(s.text), s.bold});
    return out;
}

/// A stretch of one script.
struct Run {
    qsizetype from = 0, length = 0;
    bool hasBold = true;
};

bool boldOf(QChar::Script script, const QString& letters) {
    thread_local std::map<QChar::Script, bool> known;
    const auto found = known.find(script);
    if (found == known.end())
        return known[script] = hasBold(letters);
    return found->second;
}

std::vector<Run> scriptRuns(const QString& text) {
    std::vector<Run> out;
    QChar::Script now = QChar::Script_Common;
    for (qsizetype i = 0; i < text.size();) {
        const bool pair = text[i].isHighSurrogate() && i + 1 < text.size();
        const qsizetype n = pair ? 2 : 1;
        const QChar::Script script =
            pair ? QChar::script(QChar::surrogateToUcs4(text[i], text[i + 1])) : text[i].script();
        const bool neutral = script == QChar::Script_Common || script == QChar::Script_Inherited ||
                             script == QChar::Script_Unknown;
        if (out.empty() || (!neutral && script != now)) {
            if (!neutral)
                now = script;
            const bool latin = neutral || script == QChar::Script_Latin;
            out.push_back({i, 0, latin || boldOf(script, text.mid(i, n))});
        }
        out.back().length += n;
        i += n;
    }
    return out;
}

/// The first `keep` characters and an ellipsis.
std::vector<Span> shortened(const std::vector<Span>& spans, qsizetype keep) {
    std::vector<Span> out;
    for (const auto& s : spans) {
        out.push_back({s.text.left(keep), s.bold});
        keep -= out.back().text.size();
        if (keep == 0)
            break;
    }
    QString& tail = out.back().text;
    while (tail.endsWith(QChar::Space) || (!tail.isEmpty() && tail.back().isHighSurrogate()))
        tail.chop(1);
    tail += kEllipsis;
    return out;
}
} // namespace

TextBlock::TextBlock(const QString& text, double width, const TextStyle& style)
    : TextBlock{std::vector<Span>{{text}}, width, style} {}

TextBlock::TextBlock(const std::vector<Span>& spans, double width, const TextStyle& style)
    : width_{std::max(width, 1.0)}
    , style_{style} {
    const auto whole = printableSpans(spans);
    lay(whole);
    if (style_.maxLines <= 0 || lines() <= style_.maxLines)
        return;
    // The ellipsis may not fit where the text just did: give up one character at a time.
    for (int keep = layout_->lineAt(style_.maxLines).textStart(); keep >= 0; --keep) {
        lay(shortened(whole, keep));
        if (lines() <= style_.maxLines)
            return;
    }
}

void TextBlock::lay(const std::vector<Span>& spans) {
    QString text;
    QList<QTextLayout::FormatRange> formats;
    const bool bold = style_.bold || style_.serif;
    for (const auto& s : spans) {
        for (const Run& run : scriptRuns(s.text))
            if (const bool wanted = (s.bold || bold) && run.hasBold; wanted != bold) {
                QTextLayout::FormatRange range;
                range.start = int(text.size() + run.from);
                range.length = int(run.length);
                range.format.setFontWeight(wanted ? QFont::Bold : QFont::Normal);
                formats << range;
            }
        text += s.text;
    }
    layout_ = std::make_unique<QTextLayout>(text, style_.serif ? titleFont(style_.size)
                                                               : font(style_.size, style_.bold));
    layout_->setFormats(formats);
    QTextOption option{style_.align};
    option.setWrapMode(QTextOption::WrapAtWordBoundaryOrAnywhere);
    option.setTextDirection(QGuiApplication::layoutDirection());
    option.setUseDesignMetrics(true);
    layout_->setTextOption(option);

    layout_->beginLayout();
    double y = 0;
    naturalWidth_ = 0;
    for (QTextLine line = layout_->createLine(); line.isValid(); line = layout_->createLine()) {
        line.setLineWidth(width_);
        const double pitch =
            style_.close ? kClose * style_.size : std::max(line.height(), kLeading * style_.size);
        line.setPosition({0, y + (pitch - line.height()) / 2});
        naturalWidth_ = std::max(naturalWidth_, line.naturalTextWidth());
        y += pitch;
    }
    layout_->endLayout();
    height_ = y;
}

double TextBlock::baseline() const {
    const QTextLine first = layout_->lineAt(0);
    return first.isValid() ? first.y() + first.ascent() : 0;
}

void TextBlock::draw(QPainter& painter, QPointF topLeft) const {
    painter.setPen(style_.ink);
    layout_->draw(&painter, topLeft);
}

double textWidth(const QString& text, const TextStyle& style) {
    TextStyle line{style.size, style.bold};
    line.serif = style.serif;
    return TextBlock{text, kUnbounded, line}.naturalWidth();
}

} // namespace bastewright::sheets

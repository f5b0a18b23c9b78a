#include "sheets/crew_key.h"

#include "language/said.h"
#include "sheets/printable.h"
#include "sheets/words.h"

#include <QTextBoundaryFinder>

#include <algorithm>

namespace bastewright::sheets {
namespace {
constexpr int kShortName = 16;
constexpr int kLongestMark = 3;

/// The first `n` characters as a reader counts them, the first one a capital.
QString beginning(const QString& name, int n) {
    QTextBoundaryFinder finder{QTextBoundaryFinder::Grapheme, name};
    qsizetype first = 0;
    for (int i = 0; i < n && finder.toNextBoundary() >= 0; ++i)
        if (i == 0)
            first = finder.position();
    const qsizetype end = finder.position() < 0 ? name.size() : finder.position();
    return name.left(first).toUpper() + name.mid(first, end - first);
}
} // namespace

CrewKey::CrewKey(const std::vector<Helper>& helpers) {
    for (const auto& h : helpers) {
        const QString name = QString::fromStdString(h.name).trimmed();
        QString mark = QString::number(names_.size() + 1);
        for (int n = 1; n <= kLongestMark && !name.isEmpty(); ++n)
            if (const QString candidate = beginning(name, n);
                !letters_.contains(candidate) && printable(candidate) == candidate) {
                mark = candidate;
                break;
            }
        names_.push_back(h.name);
        letters_ << mark;
    }
}

QString CrewKey::letter(const std::string& name) const {
    const auto found = std::ranges::find(names_, name);
    return found == names_.end() ? QStringLiteral("?") : letters_[found - names_.begin()];
}

QStringList CrewKey::letters(const std::vector<std::string>& names) const {
    QStringList out;
    for (const auto& n : names)
        out << letter(n);
    return out;
}

QString CrewKey::spoken(const std::vector<std::string>& names) const {
    QStringList out;
    for (const auto& n : names)
        out << isolated(letter(n).toStdString()) + QChar{0x00A0} + shortName(n);
    return listed(out);
}

QString shortName(const std::string& name) {
    QString word = QString::fromStdString(name).simplified().section(QChar::Space, 0, 0);
    if (word.size() > kShortName) {
        QTextBoundaryFinder finder{QTextBoundaryFinder::Grapheme, word};
        finder.setPosition(kShortName - 1);
        if (!finder.isAtBoundary())
            finder.toPreviousBoundary();
        word = word.left(finder.position()) + QChar{0x2026};
    }
    return isolated(word.toStdString());
}

namespace {

QString presenceWords(const Helper& helper) {
    const auto time = language::clock;
    if (helper.from && helper.until)
        return Text::tr("%1 to %2").arg(time(*helper.from), time(*helper.until));
    if (helper.from)
        return Text::tr("from %1").arg(time(*helper.from));
    if (helper.until)
        return Text::tr("until %1").arg(time(*helper.until));
    return Text::tr("the whole time");
}

} // namespace

QString hoursWords(const Helper& helper) {
    QString words = presenceWords(helper);
    for (const Break& rest : helper.breaks)
        words = Text::tr("%1, break %2 to %3")
                    .arg(words, language::clock(rest.from), language::clock(rest.until));
    return words;
}

} // namespace bastewright::sheets

#include "sheets/words.h"

#include "language/said.h"
#include "ways/way.h"

#include <QStringList>

#include <algorithm>

namespace bastewright::sheets {
namespace {
constexpr QChar kNoBreak{0x00A0};

QString joined(QString text) {
    return text.replace(QChar::Space, kNoBreak);
}
} // namespace

QString length(Length l, Unit unit) {
    return joined(language::figure(QString::fromStdString(format(l, unit))));
}

QString halves(Length l, Unit unit, bool withUnit) {
    const Length step = unit == Unit::inch ? Length::inch64ths(32) : Length::millimetres(10);
    const auto n = (2 * l.nm() + step.nm()) / (2 * step.nm());
    return joined(language::figure(QString::fromStdString(format(step * n, unit, withUnit))));
}

QString weight(double kilograms, Unit unit) {
    return joined(language::figure(QString::fromStdString(formatWeight(kilograms, unit))));
}

QString size(Size s, Unit unit) {
    return joined(Text::tr("%1 × %2").arg(
        language::figure(QString::fromStdString(format(s.width, unit, false))),
        language::figure(QString::fromStdString(format(s.length, unit)))));
}

QString clock(ClockTime start, Seconds s) {
    return language::clock(after(start, s));
}

QString span(Seconds s) {
    return joined(language::said(core::said(s)));
}

QString sideName(Side s) {
    return language::said(core::side(s));
}

QString pointCount(int n, Basting::With with) {
    return joined(language::said(wayOf(with).words.count(n)));
}

QString pointCounts(const Job& job, const std::vector<const Zone*>& zones) {
    std::vector<const Way*> ways;
    for (const Zone* zone : zones)
        addWay(ways, job, *zone);
    QStringList words;
    for (auto way = ways.rbegin(); way != ways.rend(); ++way) {
        int n = 0;
        for (const Zone* zone : zones)
            n += &wayOf(job, *zone) == *way ? int(zone->points.size()) : 0;
        words << pointCount(n, (*way)->with);
    }
    return words.isEmpty() ? pointCount(0, job.basting.with) : listed(words);
}

QString pointCounts(const Job& job, const QuiltPlan& quilt, std::optional<int> pass) {
    std::vector<const Zone*> zones;
    for (const Zone& zone : quilt.zones)
        if (!pass || zone.pass == *pass)
            zones.push_back(&zone);
    return pointCounts(job, zones);
}

QString shiftWords(Vec shift, Unit unit) {
    struct Way {
        Length by;
        Side towards;
    };
    std::vector<Way> ways;
    if (shift.dx != Length{})
        ways.push_back({abs(shift.dx), shift.dx < Length{} ? Side::left : Side::right});
    if (shift.dy != Length{})
        ways.push_back({abs(shift.dy), shift.dy < Length{} ? Side::head : Side::foot});
    std::ranges::stable_sort(ways, std::ranges::greater{}, &Way::by);
    QStringList words;
    for (const auto& w : ways)
        words << Text::tr("%1 toward the %2").arg(length(w.by, unit), sideName(w.towards));
    return words.isEmpty() ? Text::tr("no shift") : listed(words);
}

namespace {
QStringList lettersAt(const std::vector<Stretch>& standing, Side side) {
    QStringList letters;
    for (const auto& s : standing)
        for (const auto& e : s.edges)
            if (e.side == side && !s.place.empty())
                letters << QString::fromStdString(s.place);
    letters.removeDuplicates();
    letters.sort();
    return letters;
}
} // namespace

QString tableSide(const std::vector<Stretch>& standing, Side side) {
    const QStringList letters = lettersAt(standing, side);
    return letters.isEmpty() ? Text::tr("the %1").arg(sideName(side)) : listed(letters);
}

QString tableSideBrief(const std::vector<Stretch>& standing, Side side) {
    const QStringList letters = lettersAt(standing, side);
    return letters.isEmpty() ? sideName(side) : letters.join(Text::tr(", "));
}

QString startName(Basting::Start start) {
    switch (start) {
    case Basting::Start::centred:
        return Text::tr("centered");
    case Basting::Start::besideMiddle:
        return Text::tr("beside the middle");
    case Basting::Start::best:
        return Text::tr("best");
    case Basting::Start::oneEnd:
        return Text::tr("from one end");
    }
    return {};
}

QString levelName(Finding::Level level) {
    switch (level) {
    case Finding::Level::stop:
        return Text::tr("Stop");
    case Finding::Level::warn:
        return Text::tr("Take care");
    case Finding::Level::note:
        return Text::tr("Note");
    }
    return {};
}

QString listed(const QStringList& words) {
    if (words.size() < 2)
        return words.join(QString{});
    return Text::tr("%1 and %2")
        .arg(words.mid(0, words.size() - 1).join(Text::tr(", ")), words.back());
}

QString sidesList(const std::vector<Side>& sides) {
    if (sides.size() == kSides.size())
        return Text::tr("all four sides");
    QStringList words;
    for (const Side s : sides)
        words << sideName(s);
    return listed(words);
}

QString zoneList(const std::vector<std::string>& ids) {
    QStringList words;
    for (const auto& id : ids)
        words << QString::fromUtf8(zoneName(id));
    return words.join(Text::tr(", "));
}

} // namespace bastewright::sheets

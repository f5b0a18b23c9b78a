#include "sheets/row_words.h"

#include "sheets/words.h"

#include <algorithm>
#include <map>
#include <set>

namespace bastewright::sheets {
namespace {

/// "8–9, 12": runs of numbers that follow one another.
QString runs(const std::set<int>& numbers) {
    QStringList out;
    for (auto at = numbers.begin(); at != numbers.end();) {
        const int first = *at;
        int last = first;
        while (++at != numbers.end() && *at == last + 1)
            ++last;
        out << (first == last ? QString::number(first) : Text::tr("%1–%2").arg(first).arg(last));
    }
    return out.join(Text::tr(", "));
}

/// "rows 15–26, marks 6–7 (even rows 5–7)": odd and even rows that lie among one
/// another, with marks of their own. Empty for others.
QString oddAndEven(const std::set<int>& one, const std::set<int>& oneMarks,
                   const std::set<int>& other, const std::set<int>& otherMarks) {
    const auto oneParity = [](const std::set<int>& rows) {
        return std::ranges::all_of(rows, [&](int n) { return n % 2 == *rows.begin() % 2; });
    };
    const int first = std::min(*one.begin(), *other.begin()),
              last = std::max(*one.rbegin(), *other.rbegin());
    if (!oneParity(one) || !oneParity(other) || *one.begin() % 2 == *other.begin() % 2 ||
        last - first + 1 != int(one.size() + other.size()) || last - first < 2)
        return {};
    const bool oddFirst = *one.begin() % 2 == 1;
    return Text::tr("rows %1–%2, marks %3 (even rows %4)")
        .arg(first)
        .arg(last)
        .arg(runs(oddFirst ? oneMarks : otherMarks), runs(oddFirst ? otherMarks : oneMarks));
}

/// "row 3, mark 5", "rows 14–26, marks 8–9".
QString together(const std::set<int>& rows, const std::set<int>& marks) {
    const QString which = rows.size() == 1 ? Text::tr("row %1") : Text::tr("rows %1");
    const QString where = marks.size() == 1 ? Text::tr("mark %1") : Text::tr("marks %1");
    return Text::tr("%1, %2").arg(which.arg(runs(rows)), where.arg(runs(marks)));
}

} // namespace

QString rowWords(const QuiltPlan& quilt, const std::vector<const Zone*>& zones) {
    if (!quilt.rows)
        return {};
    const RowMarks marks{*quilt.rows};
    std::map<int, std::set<int>> byRow;
    for (const Zone* zone : zones)
        for (const PlacedPoint& point : zone->points)
            if (const auto at = marks.of(point.at))
                byRow[at->row].insert(at->mark);
    // Rows with the same marks are said together, in the order of their first row.
    std::vector<std::pair<std::set<int>, std::set<int>>> groups;
    for (const auto& [row, own] : byRow) {
        const auto same =
            std::ranges::find_if(groups, [&](const auto& g) { return g.second == own; });
        if (same == groups.end())
            groups.push_back({{row}, own});
        else
            same->first.insert(row);
    }
    if (groups.size() == 2)
        if (const QString both =
                oddAndEven(groups[0].first, groups[0].second, groups[1].first, groups[1].second);
            !both.isEmpty())
            return both;
    QStringList out;
    for (const auto& [rows, own] : groups)
        out << together(rows, own);
    return out.join(Text::tr("; "));
}

} // namespace bastewright::sheets

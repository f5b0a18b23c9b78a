#include "view/table/lane_stretches.h"

#include "view/base/words.h"

#include <QStringList>

#include <algorithm>
#include <optional>
#include <utility>

using namespace bastewright;

namespace {

/// "A" and 6 of "A6"; nothing where it is called otherwise.
std::optional<std::pair<QString, int>> placeAndTurn(const QString& zone) {
    qsizetype at = 0;
    while (at < zone.size() && !zone[at].isDigit())
        ++at;
    bool isNumber = false;
    const int turn = QStringView{zone}.mid(at).toInt(&isNumber);
    return isNumber ? std::optional{std::pair{zone.left(at), turn}} : std::nullopt;
}

} // namespace

Seconds LaneStretch::end() const {
    Seconds out{};
    for (const auto* piece : pieces)
        out = std::max(out, piece->task->end);
    return out;
}

QString LaneStretch::zones() const {
    QStringList runs;
    QString first, last;
    const auto finish = [&] {
        if (!first.isEmpty())
            runs << (first == last ? first : QStringLiteral("%1–%2").arg(first, last));
    };
    for (const auto* piece : pieces) {
        const QString zone = words::zone(piece->task->zone);
        if (zone.isEmpty() || zone == last)
            continue;
        const auto before = placeAndTurn(last), now = placeAndTurn(zone);
        if (!before || !now || before->first != now->first || now->second != before->second + 1) {
            finish();
            first = zone;
        }
        last = zone;
    }
    finish();
    return runs.join(QStringLiteral(", "));
}

std::vector<LaneStretch> stretchesOf(const std::vector<LanesBoard::Block>& blocks,
                                     LaneGrain grain) {
    std::vector<const LanesBoard::Block*> inOrder;
    for (const auto& block : blocks)
        inOrder.push_back(&block);
    std::ranges::stable_sort(inOrder, {}, [](const LanesBoard::Block* b) {
        return std::pair{b->lane, b->task->start};
    });
    std::vector<LaneStretch> out;
    for (const auto* block : inOrder) {
        const Task& task = *block->task;
        const Call call = callOf(task.kind);
        const bool wholePass =
            grain == LaneGrain::passes && call != Call::setUp && call != Call::rollUp;
        const bool goesOn = !out.empty() && out.back().lane() == block->lane &&
                            (wholePass ? out.back().wholePass : out.back().call == call) &&
                            out.back().pieces.front()->task->job == task.job &&
                            out.back().pieces.front()->task->pass == task.pass;
        if (!goesOn)
            out.push_back({{}, call, wholePass});
        out.back().pieces.push_back(block);
    }
    return out;
}

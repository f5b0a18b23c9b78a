#include "planners/backing/cloth.h"

#include <cmath>

namespace bastewright::backing {
namespace {

Length roundedUp(Length l, Length step) {
    return step * ceilDiv(l, step);
}

Length saleStep(Unit unit) {
    return unit == Unit::inch ? Length::inch64ths(288) : Length::millimetres(50);
}

} // namespace

Length washed(Length asBought, double shrinkPercent) {
    if (shrinkPercent <= 0)
        return asBought;
    return Length::nanometres(
        std::int64_t(std::floor(double(asBought.nm()) * (1.0 - shrinkPercent / 100.0))));
}

std::vector<Bolt> boltsOf(const Backing& rules) {
    std::vector<Bolt> out;
    const auto add = [&](int fabric, bool bought) {
        const Fabric& f = rules.fabrics[std::size_t(fabric)];
        const Length length = washed(f.onHand, rules.shrinkPercent);
        if (bought ? f.buyable : length > Length{})
            out.push_back({fabric, bought, washed(f.usableWidth, rules.shrinkPercent), length});
    };
    for (const bool bought : {false, true})
        for (int i = 0; i < int(rules.fabrics.size()); ++i)
            add(i, bought);
    return out;
}

Length toBuy(Length cut, const Backing& rules, Unit unit) {
    if (cut <= Length{})
        return Length{};
    Length raw = cut;
    if (rules.shrinkPercent > 0) {
        raw = Length::nanometres(
            std::int64_t(std::ceil(double(raw.nm()) / (1.0 - rules.shrinkPercent / 100.0))));
        // Washing rounds down, so make sure of the last nanometre.
        while (washed(raw, rules.shrinkPercent) < cut)
            raw += Length::nanometres(1);
    }
    return roundedUp(raw, saleStep(unit));
}

Length lengthStart(int i, Length height, const Backing& rules) {
    const Length each = height + rules.squaring;
    return rules.squaring + i * (rules.repeat > Length{} ? roundedUp(each, rules.repeat) : each);
}

Length clothFor(int lengths, Length height, const Backing& rules) {
    return lengths == 0 ? Length{} : lengthStart(lengths - 1, height, rules) + height;
}

int lengthsFrom(Length bolt, Length height, const Backing& rules) {
    const Length one = clothFor(1, height, rules);
    if (bolt < one)
        return 0;
    return 1 + int((bolt - one).nm() / (clothFor(2, height, rules) - one).nm());
}

double priceOf(Length bought, double price, Unit unit) {
    return price * (unit == Unit::inch ? bought.in() / 36.0 : bought.mm() / 1000.0);
}

} // namespace bastewright::backing

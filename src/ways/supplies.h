#pragma once

#include "plan/plan.h"
#include "ways/way.h"

/// Making and counting supplies.
namespace bastewright {

/// Pins or dots to bring for so many: a tenth more than counted, rounded up. Common practice.
std::int64_t withSpare(std::int64_t count);

/// Adds what is needed, with what of it has to be bought; nothing where none is needed.
void addSupply(std::vector<Supply>& to, Supply::Kind kind, Sentence item, double need, double have,
               Sentence unit = {}, std::optional<Length> size = {});

/// Cloth and thread are sold in yards or metres.
Length clothUnit(Unit unit);
std::string clothSymbol(Unit unit);

std::int64_t pointsOf(const QuiltPlan& quilt);
std::int64_t pointsOf(std::span<const BastedQuilt> quilts);

} // namespace bastewright

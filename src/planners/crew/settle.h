#pragma once

#include "planners/crew/problem.h"

#include <stop_token>

namespace bastewright::crew {

struct SettleOptions {
    int looks = 150'000;  ///< changes that may be tried
    bool zonesToo = true; ///< false: who works at which place stays as it is
};

/// Hands the work of a finished schedule out again without moving its finish: first so that
/// everybody works about the same share of their own hours, then so that people walk less between
/// the places of one task and the next. Nobody who is within their hours is kept beyond them.
/// Deterministic.
void settle(const Problem& problem, Schedule& schedule, const SettleOptions& options = {},
            std::stop_token stop = {});

/// Busiest over least busy, each as a share of the hours they are there until the finish; people
/// who may do nothing are left out. 1 is even.
double spread(const Problem& problem, const Schedule& schedule);

/// How far everybody walks together between places, in the strips' unit.
std::int64_t walked(const Problem& problem, const Schedule& schedule);

} // namespace bastewright::crew

#pragma once

#include "plan/plan.h"

namespace bastewright {

/// Calls fn(sentence) for everything in a plan that people read as words.
template <class P, class Fn>
void forEachSentence(P& plan, Fn fn) {
    for (auto& quilt : plan.quilts) {
        fn(quilt.surface.name);
        if (quilt.backing) {
            fn(quilt.backing->leastBought);
            fn(quilt.backing->runnerUp);
            fn(quilt.backing->nearestMiss);
            for (auto& way : quilt.backing->alternatives) {
                fn(way.text);
                fn(way.wanted);
            }
            for (auto& thing : quilt.backing->toBring)
                fn(thing);
        }
        if (quilt.batting) {
            for (auto& piece : quilt.batting->leftOver)
                fn(piece);
            fn(quilt.batting->joinCost);
            for (auto& way : quilt.batting->alternatives)
                fn(way.text);
            for (auto& thing : quilt.batting->toBring)
                fn(thing);
        }
        for (auto& way : quilt.alternatives) {
            fn(way.surface);
            fn(way.why);
        }
    }
    for (auto& supply : plan.supplies) {
        fn(supply.item);
        fn(supply.unit);
        fn(supply.note);
    }
    for (auto& help : plan.help)
        fn(help.change);
    for (auto& finding : plan.findings) {
        fn(finding.text);
        fn(finding.cure);
    }
}

} // namespace bastewright

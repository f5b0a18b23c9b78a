#include "session/private/words.h"
#include "ways/way.h"

namespace bastewright {

Sentence spoken(TaskKind kind) {
    switch (kind) {
    case TaskKind::setUp:
        return core::says("the setting up");
    case TaskKind::clamp:
        return core::says("the clamping of the backing");
    case TaskKind::layBacking:
        return core::says("the laying of the backing");
    case TaskKind::layBatting:
        return core::says("the laying of the batting");
    case TaskKind::layTop:
        return core::says("the laying of the top");
    case TaskKind::reclamp:
        return core::says("the moving of the clamps to all three layers");
    case TaskKind::smooth:
        return core::says("the smoothing");
    case TaskKind::checkUnderside:
        return core::says("the check underneath");
    case TaskKind::shift:
        return core::says("the shift");
    case TaskKind::foldBack:
        return core::says("the folding back");
    case TaskKind::foldForward:
        return core::says("the folding forward");
    case TaskKind::cool:
        return core::says("the cooling");
    case TaskKind::settle:
        return core::says("the waiting");
    case TaskKind::turnOver:
        return core::says("the turning over");
    case TaskKind::handOver:
        return core::says("the rolling up");
    default:
        return zoneStepWords(kind).noun;
    }
}

Sentence spokenFirst(TaskKind kind) {
    switch (kind) {
    case TaskKind::setUp:
        return core::says("The setting up");
    case TaskKind::clamp:
        return core::says("The clamping of the backing");
    case TaskKind::layBacking:
        return core::says("The laying of the backing");
    case TaskKind::layBatting:
        return core::says("The laying of the batting");
    case TaskKind::layTop:
        return core::says("The laying of the top");
    case TaskKind::reclamp:
        return core::says("The moving of the clamps to all three layers");
    case TaskKind::smooth:
        return core::says("The smoothing");
    case TaskKind::checkUnderside:
        return core::says("The check underneath");
    case TaskKind::shift:
        return core::says("The shift");
    case TaskKind::foldBack:
        return core::says("The folding back");
    case TaskKind::foldForward:
        return core::says("The folding forward");
    case TaskKind::cool:
        return core::says("The cooling");
    case TaskKind::settle:
        return core::says("The waiting");
    case TaskKind::turnOver:
        return core::says("The turning over");
    case TaskKind::handOver:
        return core::says("The rolling up");
    default:
        return zoneStepWords(kind).nounFirst;
    }
}

} // namespace bastewright

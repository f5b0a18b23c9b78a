#include "session/private/words.h"

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
    case TaskKind::placeOpen:
        return core::says("the placing of the pins");
    case TaskKind::smooth:
        return core::says("the smoothing");
    case TaskKind::closePins:
        return core::says("the closing of the pins");
    case TaskKind::checkUnderside:
        return core::says("the check of the underside");
    case TaskKind::shift:
        return core::says("the shift");
    case TaskKind::foldBack:
        return core::says("the folding back");
    case TaskKind::dotLower:
        return core::says("the dotting of the lower face");
    case TaskKind::foldForward:
        return core::says("the folding forward");
    case TaskKind::dotUpper:
        return core::says("the dotting of the upper face");
    case TaskKind::press:
        return core::says("the pressing");
    case TaskKind::cool:
        return core::says("the cooling");
    case TaskKind::turnOver:
        return core::says("the turning over");
    case TaskKind::handOver:
        return core::says("the rolling up");
    }
    return {};
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
    case TaskKind::placeOpen:
        return core::says("The placing of the pins");
    case TaskKind::smooth:
        return core::says("The smoothing");
    case TaskKind::closePins:
        return core::says("The closing of the pins");
    case TaskKind::checkUnderside:
        return core::says("The check of the underside");
    case TaskKind::shift:
        return core::says("The shift");
    case TaskKind::foldBack:
        return core::says("The folding back");
    case TaskKind::dotLower:
        return core::says("The dotting of the lower face");
    case TaskKind::foldForward:
        return core::says("The folding forward");
    case TaskKind::dotUpper:
        return core::says("The dotting of the upper face");
    case TaskKind::press:
        return core::says("The pressing");
    case TaskKind::cool:
        return core::says("The cooling");
    case TaskKind::turnOver:
        return core::says("The turning over");
    case TaskKind::handOver:
        return core::says("The rolling up");
    }
    return {};
}

} // namespace bastewright

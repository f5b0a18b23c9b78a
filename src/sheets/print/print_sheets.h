#pragma once

#include "sheets/print/printing.h"
#include "sheets/sheets.h"

#include <chrono>
#include <functional>

namespace bastewright {

/// The usual one first; the error is one sentence: printing cannot be opened. Blocks while the
/// print service is asked.
tl::expected<std::vector<Printer>, std::string> printers();

inline constexpr int kMostCopies = 20;

struct PrintOrder {
    std::string printer;
    int copies = 1; ///< 1 to kMostCopies
    SheetOptions sheets;
};

/// What became of an order.
struct Printed {
    enum class State { done, printing, waiting };
    State state = State::waiting;
    int job = 0; ///< the print service's number
    int pages = 0;
    std::string words; ///< one sentence
};

/// Prints the sheets on a printer of this computer, and asks the print service what became of them,
/// for as long as `patience`. `progress` is told the page, from 0, and how many there are. The
/// error is one sentence: printing cannot be opened, an unknown printer, one that takes no jobs or
/// has not the paper, a service that cannot be reached, a job that was refused or failed. Any
/// thread; blocks. Needs a QGuiApplication.
tl::expected<Printed, std::string>
printSheets(const Session& session, const Plan& plan, const PrintOrder& order,
            const std::function<void(int page, int pages)>& progress = {},
            std::chrono::milliseconds patience = std::chrono::seconds{20});

} // namespace bastewright

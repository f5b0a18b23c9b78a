#include "fuzz/promise.h"
#include "measures/length_text.h"

#include <array>
#include <cstdlib>

using namespace bastewright;
using namespace bastewright::fuzz;

namespace {

// What people are shown is rounded, and reads back as what is shown.
void shownReadsBack(Length length, Unit unit) {
    const auto shown = format(length, unit);
    const auto again = parseLength(shown, unit);
    promise(again.has_value(), "a printed length is read", shown);
    const std::int64_t step = unit == Unit::inch         ? Length::inch64ths(8).nm()
                              : unit == Unit::centimetre ? 1'000'000
                                                         : 100'000;
    promise(std::llabs(again->nm() - length.nm()) <= (step + 1) / 2,
            "printing rounds to the nearest", shown);
    promise(format(*again, unit) == shown, "printing what was printed changes nothing", shown);
}

} // namespace

/// The first byte chooses the unit of bare numbers, the rest is typed.
extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    if (size == 0)
        return 0;
    const Unit bare = std::array{Unit::inch, Unit::centimetre, Unit::millimetre}[data[0] % 3];
    const auto read = parseLength(textOf(data + 1, size - 1), bare);
    if (!read) {
        promise(!read.error().empty() && read.error().size() < 300, "a refusal is one clause",
                read.error());
        promisePrintable(read.error());
        return 0;
    }
    promise(size <= 65, "long text is refused");
    promise(std::llabs(read->nm()) <= 1'000'000'000'000, "no length is beyond 1 km");
    for (const Unit unit : {Unit::inch, Unit::centimetre, Unit::millimetre}) {
        const auto back = lengthOf(inUnit(*read, unit), unit);
        promise(back.has_value() && *back == *read, "a number of units reads back equal");
        if (std::llabs(read->nm()) < 999'999'000'000) // printing may round up beyond the limit
            shownReadsBack(*read, unit);
    }
    return 0;
}

#include "fuzz/promise.h"
#include "plan/plan_json.h"

using namespace bastewright;
using namespace bastewright::fuzz;

/// A plan file.
extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    const auto read = readPlan(textOf(data, size));
    promiseSentences(read.problems);
    if (!read.plan) {
        promise(anyStop(read.problems), "who refuses says why");
        return 0;
    }
    promise(!anyStop(read.problems), "what has a stop is not accepted");
    const auto text = writePlan(*read.plan);
    const auto again = readPlan(text);
    promise(again.plan.has_value(), "what is written is accepted", text);
    promise(*again.plan == *read.plan, "what is written reads back equal", text);
    promise(writePlan(*again.plan) == text, "writing again gives the same bytes", text);
    return 0;
}

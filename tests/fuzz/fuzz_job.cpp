#include "fuzz/promise.h"
#include "job/job_json.h"

using namespace bastewright;
using namespace bastewright::fuzz;

/// A job or session file.
extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    const auto read = readSession(textOf(data, size));
    promiseSentences(read.problems);
    if (!read.session) {
        promise(anyStop(read.problems), "who refuses says why");
        return 0;
    }
    promise(!anyStop(read.problems), "what has a stop is not accepted");
    promise(!read.session->jobs.empty() && read.session->jobs.size() <= limits::kQuilts,
            "a session has quilts, and not too many");
    const auto text = writeSession(*read.session);
    const auto again = readSession(text);
    promise(again.session.has_value(), "what is written is accepted", text);
    promise(*again.session == *read.session, "what is written reads back equal", text);
    promise(writeSession(*again.session) == text, "writing again gives the same bytes", text);
    return 0;
}

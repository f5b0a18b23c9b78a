#include "fuzz/promise.h"
#include "session/event_json.h"

using namespace bastewright;
using namespace bastewright::fuzz;

/// One event as it stands in the library.
extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    const auto event = readEvent(textOf(data, size));
    if (!event) {
        promiseSentence(event.error());
        return 0;
    }
    promise(!event->id.empty(), "every event has an id");
    const auto text = writeEvent(*event);
    promise(text.find('\n') == std::string::npos, "an event is one line", text);
    const auto again = readEvent(text);
    promise(again.has_value(), "what is written is accepted", text);
    promise(*again == *event, "what is written reads back equal", text);
    promise(writeEvent(*again) == text, "writing again gives the same bytes", text);
    return 0;
}

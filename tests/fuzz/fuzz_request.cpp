#include "fuzz/promise.h"
#include "page/http_request.h"

#include <algorithm>
#include <vector>

using namespace bastewright::fuzz;
using bastewright::page::HttpReader;
using bastewright::page::HttpRequest;

namespace {

struct Taken {
    std::vector<HttpRequest> requests;
    int refusal = 0;
};

void promiseWithin(const HttpRequest& r) {
    promise(r.method == "GET" || r.method == "POST", "no other methods", r.method);
    promise(r.path.starts_with('/') && r.path.find('?') == r.path.npos, "a path is a path", r.path);
    promise(!r.field("host").empty(), "a request names its host");
    promise(r.body.size() <= HttpReader::kMostBody && (r.body.empty() || r.method == "POST"),
            "bodies are small, and a GET has none");
    promise(r.fields.size() <= HttpReader::kMostFields, "fields are few");
    std::size_t bytes = r.path.size() + r.query.size();
    for (const auto& [name, value] : r.fields) {
        bytes += name.size() + value.size();
        promise(name.find_first_of(" :\t\r\n") == name.npos, "names are tokens", name);
        promise(value.find_first_of("\r\n") == value.npos, "values are one line", value);
    }
    promise(bytes <= HttpReader::kMostHead + 2 * HttpReader::kMostFields, "heads are small");
}

Taken takeAll(std::string_view bytes, std::size_t atOnce) {
    Taken out;
    HttpReader reader;
    while (!bytes.empty() && reader.refusal() == 0) {
        reader.feed(bytes.substr(0, atOnce));
        bytes.remove_prefix(std::min(atOnce, bytes.size()));
        while (auto request = reader.take()) {
            promiseWithin(*request);
            out.requests.push_back(std::move(*request));
        }
    }
    out.refusal = reader.refusal();
    promise(out.refusal == 0 || (out.refusal >= 400 && out.refusal < 600), "refusals are errors");
    return out;
}

} // namespace

/// Whatever arrives on one connection. The first byte says in what pieces.
extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    if (size == 0)
        return 0;
    const auto bytes = textOf(data + 1, size - 1);
    const auto inPieces = takeAll(bytes, data[0] % 64 == 0 ? 1024 : data[0] % 64);
    const auto byByte = takeAll(bytes, 1);
    // How the network cuts the bytes must not matter.
    promise(inPieces.refusal == byByte.refusal, "pieces and single bytes are refused alike");
    promise(inPieces.requests.size() == byByte.requests.size(),
            "pieces and single bytes read alike");
    for (std::size_t i = 0; i < byByte.requests.size(); ++i) {
        const auto &a = inPieces.requests[i], &b = byByte.requests[i];
        promise(a.path == b.path && a.fields == b.fields && a.body == b.body,
                "pieces and single bytes read alike", b.path);
    }
    return 0;
}

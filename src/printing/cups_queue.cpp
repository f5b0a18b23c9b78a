#include "printing/cups_queue.h"

#include "sheets/words.h"

#include <cups/cups.h>
#include <memory>

namespace bastewright::printing {
namespace {

using sheets::Text;

constexpr int kPatienceMs = 5000;

struct Close {
    void operator()(http_t* http) const { httpClose(http); }
    void operator()(ipp_t* ipp) const { ippDelete(ipp); }
};

std::unique_ptr<http_t, Close> connection() {
    return std::unique_ptr<http_t, Close>{httpConnect2(cupsServer(), ippPort(), nullptr, AF_UNSPEC,
                                                       cupsEncryption(), 1, kPatienceMs, nullptr)};
}

std::string sentence(const QString& words) {
    return words.toStdString();
}

QString quoted(const std::string& printer) {
    return QString::fromStdString(printer);
}

/// Words of all values but "none".
std::string textOf(ipp_t* answer, const char* name, ipp_tag_t tag) {
    std::string out;
    ipp_attribute_t* attribute = ippFindAttribute(answer, name, tag);
    for (int i = 0; attribute && i < ippGetCount(attribute); ++i) {
        const char* text = ippGetString(attribute, i, nullptr);
        if (!text || std::string{text} == "none")
            continue;
        if (!out.empty())
            out += ", ";
        out += text;
    }
    return out;
}

JobState stateOf(ipp_jstate_t state) {
    switch (state) {
    case IPP_JSTATE_COMPLETED:
        return JobState::done;
    case IPP_JSTATE_ABORTED:
    case IPP_JSTATE_CANCELED:
    case IPP_JSTATE_STOPPED: // nobody takes it up again by itself
        return JobState::failed;
    case IPP_JSTATE_PROCESSING:
        return JobState::printing;
    default:
        return JobState::waiting;
    }
}

} // namespace

tl::expected<QueueState, std::string> queueState(const std::string& printer) {
    const auto http = connection();
    if (!http)
        return tl::make_unexpected(
            sentence(Text::tr("The print service of this computer cannot be reached.")));
    char uri[HTTP_MAX_URI];
    httpAssembleURIf(HTTP_URI_CODING_ALL, uri, sizeof uri, "ipp", nullptr, "localhost", ippPort(),
                     "/printers/%s", printer.c_str());
    ipp_t* request = ippNewRequest(IPP_OP_GET_PRINTER_ATTRIBUTES);
    ippAddString(request, IPP_TAG_OPERATION, IPP_TAG_URI, "printer-uri", nullptr, uri);
    // The request goes with the answer.
    const std::unique_ptr<ipp_t, Close> answer{cupsDoRequest(http.get(), request, "/")};
    if (!answer || ippGetStatusCode(answer.get()) == IPP_STATUS_ERROR_NOT_FOUND)
        return tl::make_unexpected(sentence(
            Text::tr("No printer called %1 is known on this computer.").arg(quoted(printer))));
    if (ippGetStatusCode(answer.get()) > IPP_STATUS_OK_EVENTS_COMPLETE)
        return tl::make_unexpected(sentence(Text::tr("The print service says of %1: %2.")
                                                .arg(quoted(printer), cupsLastErrorString())));
    QueueState out;
    if (auto* accepting =
            ippFindAttribute(answer.get(), "printer-is-accepting-jobs", IPP_TAG_BOOLEAN))
        out.accepting = ippGetBoolean(accepting, 0) != 0;
    if (auto* value = ippFindAttribute(answer.get(), "printer-state", IPP_TAG_ENUM))
        out.stopped = ippGetInteger(value, 0) == IPP_PSTATE_STOPPED;
    out.reason = textOf(answer.get(), "printer-state-message", IPP_TAG_TEXT);
    if (out.reason.empty())
        out.reason = textOf(answer.get(), "printer-state-reasons", IPP_TAG_KEYWORD);
    return out;
}

std::vector<PrintJob> queueJobs(const std::string& printer) {
    const auto http = connection();
    if (!http)
        return {};
    cups_job_t* all = nullptr;
    constexpr int kMine = 1;
    const int count = cupsGetJobs2(http.get(), &all, printer.c_str(), kMine, CUPS_WHICHJOBS_ALL);
    std::vector<PrintJob> out;
    for (int i = 0; i < count; ++i)
        out.push_back({all[i].id, all[i].title ? all[i].title : "", stateOf(all[i].state)});
    cupsFreeJobs(count, all);
    return out;
}

} // namespace bastewright::printing

#pragma once

#include "sheets/print/printing.h"

/// What CUPS says of a queue and of the jobs in it, over IPP (RFC 8011). Qt submits a job and
/// reports success even where the queue refuses it or the service is away; only the service itself
/// knows. All calls block, for some seconds where the service does not answer.
namespace bastewright::printing {

tl::expected<QueueState, std::string> queueState(const std::string& printer);

std::vector<PrintJob> queueJobs(const std::string& printer);

} // namespace bastewright::printing

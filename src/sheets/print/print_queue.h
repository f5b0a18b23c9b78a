#pragma once

#include <tl/expected.hpp>

#include <string>
#include <vector>

/// What CUPS says of a queue and of the jobs in it, over IPP (RFC 8011). Qt submits a job and
/// reports success even where the queue refuses it or the service is away; only the service itself
/// knows. All calls block, for some seconds where the service does not answer.
namespace bastewright::print_queue {

struct State {
    bool accepting = true; ///< takes jobs
    bool stopped = false;  ///< takes them and keeps them waiting
    std::string reason;    ///< in the printer's own words; may be empty
};

/// The queue's state; the error is one sentence: the service cannot be reached, or knows no such
/// printer.
tl::expected<State, std::string> state(const std::string& printer);

enum class JobState { waiting, printing, done, failed };

struct PrintJob {
    int id = 0;
    std::string title;
    JobState state = JobState::waiting;
};

/// This person's jobs on the queue, finished ones too. Empty where the service does not answer.
std::vector<PrintJob> jobs(const std::string& printer);

} // namespace bastewright::print_queue

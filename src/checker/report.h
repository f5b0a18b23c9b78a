#pragma once

#include "job/finding.h"

#include <string>
#include <string_view>

namespace bastewright::check {

/// Where a rule writes its violations. The first few are kept as sentences, the rest are counted,
/// so that a plan that is wrong everywhere still gives a list a person can read.
class Report {
public:
    static constexpr int kShown = 5;

    Report(std::string_view rule, Findings& out, int shown = kShown)
        : rule_{rule}
        , out_{out}
        , shown_{shown} {}
    void add(std::string text);
    /// Adds 'and so many more' where some were only counted.
    void close();

private:
    void write(std::string text);

    std::string rule_;
    Findings& out_;
    int shown_;
    int count_ = 0;
};

} // namespace bastewright::check

#pragma once

#include "checker/pointer.h"
#include "job/finding.h"

#include <string>
#include <string_view>

namespace bastewright::check {

/// Where a rule writes its violations: each with the place in the plan's file that it is about, the
/// element or the field that is at fault, the list where it is about several or about what is
/// missing. The first few are kept as sentences, the rest are counted, so that a plan that is wrong
/// everywhere still gives a list a person can read.
class Report {
public:
    static constexpr int kShown = 5;

    Report(std::string_view rule, Findings& out, int shown = kShown)
        : rule_{rule}
        , out_{out}
        , shown_{shown} {}
    void add(const Pointer& where, std::string text);
    /// Adds 'and so many more' where some were only counted, with the least part of the file in
    /// which all of those stand.
    void close();

private:
    void write(const Pointer& where, std::string text);

    std::string rule_;
    Findings& out_;
    int shown_;
    int count_ = 0;
    Pointer counted_; ///< where those stand that were only counted
};

} // namespace bastewright::check

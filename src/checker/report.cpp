#include "checker/report.h"

namespace bastewright::check {

void Report::add(std::string text) {
    if (++count_ <= kShown)
        out_.push_back({Finding::Level::stop, rule_, std::move(text), {}});
}

void Report::close() {
    if (count_ > kShown)
        out_.push_back(
            {Finding::Level::stop,
             rule_,
             "There are " + std::to_string(count_ - kShown) + " more of this kind, not listed.",
             {}});
    count_ = 0;
}

} // namespace bastewright::check

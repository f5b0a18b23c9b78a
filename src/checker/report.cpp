#include "checker/report.h"

namespace bastewright::check {

void Report::add(std::string text) {
    if (++count_ <= shown_)
        write(std::move(text));
}

void Report::write(std::string text) {
    out_.push_back({Finding::Kind::rule, Finding::Level::stop, rule_, std::move(text), {}, rule_});
}

void Report::close() {
    if (count_ > shown_)
        write("There are " + std::to_string(count_ - shown_) + " more of this kind, not listed.");
    count_ = 0;
}

} // namespace bastewright::check

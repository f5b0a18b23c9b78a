#include "checker/report.h"

namespace bastewright::check {

void Report::add(const Pointer& where, std::string text) {
    if (++count_ <= shown_)
        write(where, std::move(text));
    else
        counted_ = count_ == shown_ + 1 ? where : common(counted_, where);
}

void Report::write(const Pointer& where, std::string text) {
    out_.push_back(
        {Finding::Kind::rule, Finding::Level::stop, where.text(), std::move(text), {}, rule_});
}

void Report::close() {
    if (count_ > shown_)
        write(counted_,
              "There are " + std::to_string(count_ - shown_) + " more of this kind, not listed.");
    count_ = 0;
}

} // namespace bastewright::check

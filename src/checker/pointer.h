#pragma once

#include <concepts>
#include <functional>
#include <string>
#include <string_view>
#include <vector>

namespace bastewright::check {

/// Where something stands in a plan's file: a JSON pointer (RFC 6901). The keys are those of
/// docs/formats.md, none of which needs escaping. What is missing is named by where it should be.
class Pointer {
public:
    Pointer() = default; ///< the whole file

    /// What stands under a key, or under keys with '/' between them.
    Pointer operator/(std::string_view keys) const {
        return Pointer{text_ + '/' + std::string{keys}};
    }
    Pointer operator/(std::integral auto index) const {
        return Pointer{text_ + '/' + std::to_string(index)};
    }
    /// An element of the list that stands under a key; the list itself where it is none of it.
    template <class T>
    Pointer in(std::string_view key, const std::vector<T>& list, const T& element) const {
        const T* first = list.data();
        const std::less<const T*> before;
        const bool among = !before(&element, first) && before(&element, first + list.size());
        return among ? *this / key / (&element - first) : *this / key;
    }
    const std::string& text() const { return text_; }

    /// The least part of the file in which both stand.
    friend Pointer common(const Pointer& a, const Pointer& b);

private:
    explicit Pointer(std::string text)
        : text_{std::move(text)} {}
    std::string text_;
};

} // namespace bastewright::check

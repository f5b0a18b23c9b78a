#pragma once

#include <algorithm>
#include <array>
#include <string_view>

namespace bastewright {

/// Accepted values, ends included.
template <class T>
struct Within {
    T lo, hi;
    constexpr bool has(T value) const { return value >= lo && value <= hi; }
};

/// A word of a file and what it stands for.
template <class E>
struct Word {
    std::string_view text;
    E value;
};
template <class Text, class E>
Word(Text, E) -> Word<E>; // clang 14 does not find it by itself

template <class E, std::size_t N>
std::array<std::string_view, N> textsOf(const std::array<Word<E>, N>& words) {
    std::array<std::string_view, N> out;
    std::ranges::transform(words, out.begin(), &Word<E>::text);
    return out;
}

} // namespace bastewright

#pragma once

#include <cstddef>
#include <type_traits>
#include <utility>

namespace bastewright {

/// Stands for a value of any type while counting.
struct AnyValue {
    template <class T>
    operator T() const; // NOLINT: implicit on purpose, never called
};

template <class T, std::size_t... I>
constexpr bool takesFields(std::index_sequence<I...>) {
    return requires {
        T{(static_cast<void>(I), AnyValue{})...};
    };
}

/// How many fields a struct without constructors has.
template <class T, std::size_t N = 0>
constexpr std::size_t fieldCount() {
    static_assert(std::is_aggregate_v<T>);
    if constexpr (takesFields<T>(std::make_index_sequence<N + 1>{}))
        return fieldCount<T, N + 1>();
    else
        return N;
}

} // namespace bastewright

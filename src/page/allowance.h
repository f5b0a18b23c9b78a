#pragma once

#include <cstddef>
#include <cstdint>
#include <map>
#include <string>

namespace bastewright::page {

/// So much at once and so much in time, for each address: a bucket that fills again. Knows at most
/// `kMostAddresses`; when there are more, the one longest unheard of is forgotten.
class Allowance {
public:
    static constexpr std::size_t kMostAddresses = 256;

    /// `atOnce` from a full bucket, then one for every `everyMs` milliseconds.
    Allowance(double atOnce, double everyMs)
        : most_{atOnce}
        , everyMs_{everyMs} {}

    /// Takes one; false where none is left. `nowMs` is any clock that does not run backwards.
    bool take(const std::string& address, std::int64_t nowMs);
    /// True where one could be taken.
    bool has(const std::string& address, std::int64_t nowMs);
    std::size_t addresses() const { return buckets_.size(); }

private:
    struct Bucket {
        double left = 0;
        std::int64_t atMs = 0;
    };
    Bucket& filled(const std::string& address, std::int64_t nowMs);

    double most_, everyMs_;
    std::map<std::string, Bucket> buckets_;
};

} // namespace bastewright::page

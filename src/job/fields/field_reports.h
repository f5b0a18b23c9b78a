#pragma once

#include "job/fields/within.h"
#include "job/json_text.h"
#include "measures/length_text.h"

#include <string>
#include <string_view>
#include <utility>

namespace bastewright {

/// Control characters would break sheets and lists.
bool isPrintable(std::string_view text);

/// A number without needless digits.
std::string plainNumber(double value);

/// Nothing, or spaces only.
bool isBlank(std::string_view text);

/// Collects findings; beyond `kMost` it only counts them.
class Problems {
public:
    static constexpr std::size_t kMost = 300;
    void add(Finding finding);
    std::size_t stops() const { return stops_; }
    const Findings& all() const { return findings_; }
    /// Everything collected, in the order of the file.
    Findings inOrder(const Json& root) &&;

private:
    Findings findings_;
    std::size_t further_ = 0, stops_ = 0;
};

/// Says what is wrong with the fields of one object, whether they are read from a file or are
/// values in memory. A clause is the rest of a sentence that begins with the field's name.
class FieldReports {
public:
    FieldReports(std::string pointer, Problems& problems)
        : pointer_{std::move(pointer)}
        , problems_{&problems}
        , stopsBefore_{problems.stops()} {}
    virtual ~FieldReports() = default;

    Unit unit() const { return unit_; }
    void setUnit(Unit unit) { unit_ = unit; }
    /// True where nothing was refused since this was made.
    bool sound() const { return problems_->stops() == stopsBefore_; }

    void stop(std::string_view key, const Sentence& clause) {
        const auto at = pointerTo(pointer_, key);
        stopAt(at, about(at, clause));
    }
    /// About one entry of the list at `key`.
    void stop(std::string_view key, std::size_t entry, const Sentence& clause) {
        const auto at = pointerTo(pointerTo(pointer_, key), std::to_string(entry));
        stopAt(at, about(at, clause));
    }
    /// True where a list is not too long; else says so.
    bool atMost(std::string_view key, std::size_t entries, std::size_t most);
    /// Says so where there is one diagonal only.
    void expectNoneOrBoth(std::string_view key, std::size_t diagonals);
    /// Says so where there are some, but fewer than `fewest`.
    void expectNoneOr(std::string_view key, std::size_t entries, std::size_t fewest);
    void warn(std::string_view key, const Sentence& clause) {
        const auto at = pointerTo(pointer_, key);
        problems_->add({Finding::Kind::input, Finding::Level::warn, at, about(at, clause), ""});
    }

protected:
    FieldReports(const FieldReports&) = default;
    FieldReports& operator=(const FieldReports&) = default;

    /// How the field at a pointer is named in front of a clause.
    virtual Sentence named(const std::string& at) const = 0;
    Sentence about(const std::string& at, const Sentence& clause) const {
        return core::says("%1 %2", named(at), clause);
    }
    void stopAt(const std::string& at, Sentence sentence) {
        problems_->add({Finding::Kind::input, Finding::Level::stop, at, std::move(sentence), ""});
    }

    std::string pointer_;
    Problems* problems_;
    std::size_t stopsBefore_;
    Unit unit_ = Unit::inch;
};

} // namespace bastewright

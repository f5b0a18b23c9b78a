#include "plan/as_written.h"

#include "job/json_text.h"
#include "measures/length_text.h"
#include "plan/plan_fields.h"
#include "plan/plan_json.h"
#include "plan/sentences.h"

#include <algorithm>
#include <map>

namespace bastewright {
namespace {

constexpr int kDifferencesShown = 10;

/// Compares two values of a file, the first as it was read, the second as it would be written.
class Differences {
public:
    void compare(const Json& read, const Json& written, const std::string& at) {
        if (read.is_object() && written.is_object()) {
            for (const auto& [key, value] : written.items())
                if (!read.contains(key))
                    add(pointerTo(at, key),
                        core::says("is missing in the file; the plan has %1.", quoted(value)));
                else
                    compare(read.at(key), value, pointerTo(at, key));
            return; // what the plan does not know was said when it was read
        }
        if (read.is_array() && written.is_array() && read.size() == written.size()) {
            for (std::size_t i = 0; i < read.size(); ++i)
                compare(read[i], written[i], pointerTo(at, std::to_string(i)));
            return;
        }
        if (read == written)
            return;
        if (read.is_array() && written.is_array())
            add(at, core::says("has %1 elements in the file; the plan has %2.", read.size(),
                               written.size()));
        else
            add(at,
                core::says("is %1 in the file; the plan has %2.", quoted(read), quoted(written)));
    }

    void add(const std::string& at, const Sentence& what) {
        if (++count_ <= kDifferencesShown)
            out_.push_back({Finding::Kind::input,
                            Finding::Level::warn,
                            at,
                            core::says("%1 %2", placeInWords(at), what),
                            {}});
    }

    Findings all() && {
        if (count_ > kDifferencesShown)
            out_.push_back({Finding::Kind::input,
                            Finding::Level::warn,
                            "",
                            core::says("%1 more places of the file differ from the plan.",
                                       count_ - kDifferencesShown),
                            {}});
        return std::move(out_);
    }

private:
    Findings out_;
    int count_ = 0;
};

/// Where a text stands first in a file, but for the sentences themselves; empty where it does not.
std::string placeOf(const Json& value, const std::string& text, const std::string& at) {
    if (value.is_string())
        return value == text ? at : "";
    for (const auto& [key, inner] : value.items())
        if (value.is_structured() && !(at.empty() && key == "sentences"))
            if (std::string found = placeOf(inner, text, pointerTo(at, key)); !found.empty())
                return found;
    return {};
}

/// A text whose sentence is not in the file was changed by hand. Units are no words, nor is the
/// length of pins.
void unsaid(const Plan& plan, const Json& file, Differences& out) {
    Plan words = plan;
    for (Supply& s : words.supplies)
        if (s.unit.kind() == Sentence::Kind::name &&
            (s.kind != Supply::Kind::pins || parseLength(s.unit.text(), plan.unit)))
            s.unit = {};
    forEachSentence(words, [&](const Sentence& s) {
        if (s.kind() == Sentence::Kind::name && !s.empty())
            out.add(placeOf(file, s.text(), ""),
                    core::says("is '%1', which no sentence of the file says.",
                               shortened(s.text(), 80)));
    });
}

bool isAmong(const Sentence& s, const Sentences& all) {
    return std::ranges::find(all, s) != all.end();
}

/// What supplies are counted in, and which sentence for the shop goes with them.
void ofSupplies(const Plan& plan, Differences& out) {
    using enum Supply::Kind;
    Sentences cloth, filling, seen;
    for (const QuiltPlan& q : plan.quilts) {
        if (q.backing)
            cloth.insert(cloth.end(), q.backing->toBring.begin(), q.backing->toBring.end());
        if (q.batting)
            filling.insert(filling.end(), q.batting->toBring.begin(), q.batting->toBring.end());
    }
    for (std::size_t i = 0; i < plan.supplies.size(); ++i) {
        const Supply& s = plan.supplies[i];
        const std::string at = "/supplies/" + std::to_string(i);
        const std::string unit = s.unit.english();
        const bool sold = s.kind == fabric || s.kind == battingRoll;
        const bool measured = s.kind == tape || s.kind == joiningStrip;
        if (sold || s.kind == thread ? unit != "yd" && unit != "m"
            : s.kind == sprayCans    ? unit != (s.need == 1 ? "can" : "cans")
            : measured ? unit != symbol(Unit::inch) && unit != symbol(Unit::centimetre) &&
                             unit != symbol(Unit::millimetre)
                       : s.kind != pins && s.kind != other && !unit.empty())
            out.add(at + "/unit", core::says("is '%1', which this is not counted in.", unit));
        if (s.note.empty()) {
            if (plan.quilts.size() == 1 && s.buy > 0 && (sold || s.kind == battingPack) &&
                !(s.kind == fabric ? cloth : filling).empty())
                out.add(at + "/note", core::says("is empty, though this is bought."));
            continue;
        }
        const bool batting = s.kind == battingPack || s.kind == battingRoll;
        if (!isAmong(s.note, batting ? filling : cloth) || isAmong(s.note, seen) ||
            (!batting && s.kind != fabric))
            out.add(at + "/note", core::says("is not the sentence for what is bought."));
        seen.push_back(s.note);
    }
}

/// Tables of one size are called the same wherever they are named.
void ofTables(const Plan& plan, Differences& out) {
    for (std::size_t quilt = 0; quilt < plan.quilts.size(); ++quilt) {
        const QuiltPlan& q = plan.quilts[quilt];
        const std::string of = plan.quilts.size() == 1 ? "" : "/quilts/" + std::to_string(quilt);
        std::map<std::pair<Length, Length>, Sentence> names;
        if (!q.passes.empty())
            names[{q.surface.length, q.surface.width}] = q.surface.name;
        for (std::size_t i = 0; i < q.alternatives.size(); ++i) {
            const Alternative& a = q.alternatives[i];
            if (const auto [at, isNew] =
                    names.emplace(std::pair{a.surfaceLength, a.surfaceWidth}, a.surface);
                at->second != a.surface)
                out.add(of + "/alternatives/" + std::to_string(i) + "/surface",
                        core::says("is '%1'; tables of that size are called '%2' elsewhere.",
                                   a.surface, at->second));
        }
    }
}

/// Findings of two kinds never read the same, and none is there twice.
void twoKinds(const Plan& plan, Differences& out) {
    std::map<std::string, Finding::Kind> kinds;
    for (std::size_t i = 0; i < plan.findings.size(); ++i) {
        const Finding& f = plan.findings[i];
        const auto [at, isNew] = kinds.emplace(f.text.english(), f.kind);
        if (std::count(plan.findings.begin(), plan.findings.end(), f) > 1)
            out.add("/findings/" + std::to_string(i), core::says("is there twice."));
        if (!isNew && at->second != f.kind)
            out.add("/findings/" + std::to_string(i) + "/text",
                    core::says("is that of a finding of another kind."));
    }
}

} // namespace

Findings unlikeWritten(std::string_view file, const Plan& plan) {
    Findings parsing;
    const auto read =
        parseJson(file, {.bytes = kMostPlanBytes, .values = plan_limits::kValues}, parsing);
    Differences out;
    if (!read)
        return parsing;
    out.compare(*read, parseOwnJson(writePlan(plan)).value(), "");
    unsaid(plan, *read, out);
    twoKinds(plan, out);
    ofSupplies(plan, out);
    ofTables(plan, out);
    return std::move(out).all();
}

} // namespace bastewright

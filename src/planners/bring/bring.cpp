#include "planners/bring/bring.h"

#include "ways/supplies.h"

#include <algorithm>
#include <cmath>

namespace bastewright {
namespace {

/// The clip a roll takes: one on hand, or the least size in half inches that would hold it.
Length clipFor(const Roll& roll) {
    constexpr Length kStep = Length::inch64ths(32);
    return roll.clipHolds > Length{} ? roll.clipHolds : ceilDiv(roll.diameter, kStep) * kStep;
}

void add(Clips& clips, const std::vector<Roll>& rolls) {
    for (const Roll& roll : rolls)
        if (!roll.folded && roll.clips > 0)
            clips[clipFor(roll)] += roll.clips;
}

void raise(Clips& clips, const Clips& to) {
    for (const auto& [holds, count] : to)
        clips[holds] = std::max(clips[holds], count);
}

/// The clips of one surface: its quilts lie on it one after another.
struct ClipsOn {
    Clips most; ///< at any time
    Clips stay; ///< on the quilts that are rolled for the machine already

    void lay(const QuiltPlan& quilt) {
        for (const Pass& pass : quilt.passes) {
            Clips now = stay;
            add(now, pass.rolls);
            raise(most, now);
        }
        add(stay, quilt.machineRolls);
        raise(most, stay);
    }
};

/// Most in any pass of a quilt.
std::int64_t clampsOf(const QuiltPlan& quilt) {
    std::int64_t most = 0;
    for (const Pass& pass : quilt.passes) {
        std::int64_t clamps = 0;
        for (const Hold& hold : pass.holds)
            if (hold.kind == Hold::Kind::clamp)
                clamps += hold.count;
        most = std::max(most, clamps);
    }
    return most;
}

class Supplies {
public:
    Supplies(const Session& session, const std::vector<QuiltPlan>& quilts)
        : session_{session}
        , quilts_{quilts}
        , unit_{session.jobs.empty() ? Unit::inch : session.jobs.front().unit} {}

    std::vector<Supply> list() && {
        ofWays(&Way::materials);
        surfaces();
        tape();
        ofWays(&Way::tools);
        backing();
        batting();
        return std::move(out_);
    }

private:
    const Session& session_;
    const std::vector<QuiltPlan>& quilts_;
    Unit unit_;
    std::vector<Supply> out_;

    const Stash& stash() const { return session_.setting.stash; }

    void put(Supply::Kind kind, Sentence item, double need, double have, Sentence unit = {},
             std::optional<Length> size = {}) {
        addSupply(out_, kind, std::move(item), need, have, std::move(unit), size);
    }
    void putCount(Supply::Kind kind, Sentence item, std::int64_t need, std::int64_t have,
                  std::optional<Length> size = {}) {
        put(kind, std::move(item), double(need), double(have), {}, size);
    }
    void putLength(Supply::Kind kind, Sentence item, Length need, Length have) {
        const Length one = unit_ == Unit::inch         ? Length::inches(1)
                           : unit_ == Unit::centimetre ? Length::millimetres(10)
                                                       : Length::millimetres(1);
        put(kind, std::move(item), double(ceilDiv(need, one)), std::floor(ratio(have, one)),
            std::string{symbol(unit_)});
    }

    /// What each way takes for the quilts, or the zones of them, that are basted so.
    void ofWays(decltype(Way::materials) Way::*takes) {
        for (const Way& way : allWays()) {
            std::vector<BastedQuilt> quilts;
            for (std::size_t i = 0; i < quilts_.size(); ++i)
                if (const Job& job = session_.jobs[i];
                    std::ranges::count(waysOf(job, quilts_[i].zones), &way) > 0)
                    quilts.push_back({&job, &quilts_[i], pointsOf(job, quilts_[i].zones, way)});
            if (!quilts.empty())
                std::ranges::move((way.*takes)(session_, quilts), std::back_inserter(out_));
        }
    }

    void surfaces() {
        std::map<int, std::int64_t> surfaces; // clamps by surface
        for (const QuiltPlan& quilt : quilts_) {
            std::int64_t& most = surfaces[quilt.surface.number];
            most = std::max(most, clampsOf(quilt));
        }
        std::int64_t clamps = 0;
        for (const auto& [number, most] : surfaces)
            clamps += most;
        for (const auto& [holds, count] : clipsAtOnce(quilts_)) {
            std::int64_t have = 0;
            for (const ClipStock& clips : stash().clips)
                if (clips.holds == holds)
                    have += clips.count;
            putCount(Supply::Kind::clips,
                     core::says("clips that hold %1", core::length(holds, unit_)), count, have,
                     holds);
        }
        putCount(Supply::Kind::clamps, core::says("clamps"), clamps, stash().clamps);
        // One at the middle of each side of each surface, felt through the layers.
        putCount(Supply::Kind::centreMarks, core::says("center marks"), 4 * std::ssize(surfaces),
                 0);
    }

    /// Tape is not reusable.
    void tape() {
        Length need;
        for (const QuiltPlan& quilt : quilts_)
            for (const Pass& pass : quilt.passes)
                for (const Hold& hold : pass.holds)
                    if (hold.kind == Hold::Kind::tape)
                        need += hold.length;
        putLength(Supply::Kind::tape, core::says("tape"), need, stash().tape);
    }

    /// Cloth on hand and bought cloth count as one length (`ClothCut::onHand`). What is bought is
    /// rounded up as it is sold, so that need is what will be there.
    void backing() {
        struct Cloth {
            Length need, have;
            Sentences notes{};
        };
        std::map<std::string, Cloth> cloths;
        for (std::size_t i = 0; i < quilts_.size(); ++i) {
            if (!quilts_[i].backing)
                continue;
            const BackingPlan& plan = *quilts_[i].backing;
            std::map<std::string, Cloth> ofQuilt;
            for (const ClothCut& cut : plan.cuts)
                ofQuilt[cut.fabric].need = std::max(ofQuilt[cut.fabric].need, cut.onCloth.y1);
            for (const Fabric& fabric : session_.jobs[i].backing.fabrics)
                if (const auto used = ofQuilt.find(fabric.name); used != ofQuilt.end())
                    used->second.have = fabric.onHand;
            for (const BackingPurchase& purchase : plan.buy)
                if (purchase.length > Length{})
                    ofQuilt[purchase.fabric].need = ofQuilt[purchase.fabric].have + purchase.length;
            // A sentence for each fabric, in the order they are listed.
            auto said = plan.toBring.begin();
            const auto take = [&](const std::string& fabric) {
                if (ofQuilt.contains(fabric) && said != plan.toBring.end())
                    cloths[fabric].notes.push_back(*said++);
            };
            for (const Fabric& fabric : session_.jobs[i].backing.fabrics)
                take(fabric.name);
            if (session_.jobs[i].backing.fabrics.empty() && !ofQuilt.empty())
                take(ofQuilt.begin()->first);
            for (const auto& [fabric, cloth] : ofQuilt) {
                cloths[fabric].need += cloth.need;
                cloths[fabric].have += std::min(cloth.have, cloth.need);
            }
        }
        for (auto& [fabric, cloth] : cloths) {
            put(Supply::Kind::fabric,
                fabric.empty() ? core::says("backing: fabric") : core::says("backing: %1", fabric),
                inCloth(cloth.need), inCloth(cloth.have), clothSymbol(unit_));
            if (cloth.notes.size() == 1) // of several quilts the sum is enough
                note(std::move(cloth.notes.front()));
        }
    }

    /// In yards or metres, to a thousandth.
    double inCloth(Length l) const { return std::round(ratio(l, clothUnit(unit_)) * 1000) / 1000; }

    /// What to say in the shop of the thing put last.
    void note(Sentence text) {
        if (!out_.empty() && out_.back().buy > 0)
            out_.back().note = std::move(text);
    }

    void batting() {
        struct Packs {
            std::int64_t need = 0, have = 0;
            Sentence note;
        };
        std::map<std::string, Packs> packs;
        struct Roll {
            Length need, have;
            Sentences notes;
        };
        std::map<Length, Roll> rolls; // by usable width
        Length strip;
        std::int64_t pieces = 0;
        for (std::size_t i = 0; i < quilts_.size(); ++i) {
            if (!quilts_[i].batting)
                continue;
            const BattingPlan& plan = *quilts_[i].batting;
            // What has been measured lies there already.
            const bool there = session_.jobs[i].batting.width.has_value();
            for (const BattingPurchase& b : plan.buy) {
                if (b.pack.empty()) {
                    Roll& roll = rolls[b.width];
                    roll.need += b.length;
                    roll.have += there ? b.length : Length{};
                    roll.notes.insert(roll.notes.end(), plan.toBring.begin(), plan.toBring.end());
                } else {
                    Packs& these = packs[b.pack];
                    ++these.need;
                    these.have += there ? 1 : 0;
                    if (!plan.toBring.empty())
                        these.note = plan.toBring.front();
                }
            }
            pieces += std::ranges::count(plan.pieces, -1, &BattingPiecePlaced::bought);
            strip += plan.strip;
        }
        for (auto& [pack, these] : packs) {
            putCount(Supply::Kind::battingPack, core::says("batting: %1", pack), these.need,
                     these.have);
            note(std::move(these.note));
        }
        for (auto& [width, roll] : rolls) {
            put(Supply::Kind::battingRoll,
                core::says("batting off the roll, %1 wide", core::length(width, unit_)),
                inCloth(roll.need), inCloth(roll.have), clothSymbol(unit_), width);
            if (roll.notes.size() == 1) // of several quilts the sum is enough
                note(std::move(roll.notes.front()));
        }
        putCount(Supply::Kind::leftovers, core::says("leftover batting pieces"), pieces, pieces);
        putLength(Supply::Kind::joiningStrip, core::says("joining strip"), strip, Length{});
    }
};

} // namespace

Clips clipsAtOnce(const std::vector<QuiltPlan>& quilts) {
    std::map<int, ClipsOn> surfaces;
    for (const QuiltPlan& quilt : quilts)
        surfaces[quilt.surface.number].lay(quilt);
    Clips all;
    for (const auto& [number, surface] : surfaces)
        for (const auto& [holds, count] : surface.most)
            all[holds] += count;
    return all;
}

std::vector<Supply> planSupplies(const Session& session, const std::vector<QuiltPlan>& quilts) {
    return Supplies{session, quilts}.list();
}

} // namespace bastewright

#include "planners/bring/bring.h"

#include <algorithm>
#include <cmath>

namespace bastewright {
namespace {

std::int64_t pointsOf(const QuiltPlan& quilt) {
    std::int64_t count = 0;
    for (const Zone& zone : quilt.zones)
        count += std::ssize(zone.points);
    return count;
}

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

/// What else one surface takes.
struct SurfaceNeeds {
    std::int64_t clamps = 0; ///< most in any pass
    std::size_t tables = 0;  ///< on which dots are pressed
};

void addQuilt(SurfaceNeeds& surface, const QuiltPlan& quilt, bool dots) {
    for (const Pass& pass : quilt.passes) {
        std::int64_t clamps = 0;
        for (const Hold& hold : pass.holds)
            if (hold.kind == Hold::Kind::clamp)
                clamps += hold.count;
        surface.clamps = std::max(surface.clamps, clamps);
    }
    if (dots)
        surface.tables = std::max({surface.tables, quilt.surface.tables.size(), std::size_t{1}});
}

class Supplies {
public:
    Supplies(const Session& session, const std::vector<QuiltPlan>& quilts)
        : session_{session}
        , quilts_{quilts}
        , unit_{session.jobs.empty() ? Unit::inch : session.jobs.front().unit} {}

    std::vector<Supply> list() && {
        pins();
        dots();
        surfaces();
        tape();
        tools();
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
    bool with(std::size_t quilt, Basting::With what) const {
        return session_.jobs[quilt].basting.with == what;
    }

    void put(Supply::Kind kind, Sentence item, double need, double have, Sentence unit = {},
             std::optional<Length> size = {}) {
        if (need <= 0)
            return;
        // Cloth is counted in thousandths: the difference is again one.
        const double buy = std::round(std::max(0.0, need - have) * 1000) / 1000;
        out_.push_back({kind, std::move(item), need, have, buy, std::move(unit), {}, size});
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

    /// Pins stay in each quilt until it is quilted, so those of all quilts are needed at once. The
    /// box on hand is not sorted by length; the unit says how many of which.
    void pins() {
        std::map<Length, std::int64_t> byLength;
        std::int64_t all = 0;
        for (std::size_t i = 0; i < quilts_.size(); ++i)
            if (with(i, Basting::With::pins) && pointsOf(quilts_[i]) > 0) {
                byLength[session_.jobs[i].basting.pinLength] += pointsOf(quilts_[i]);
                all += pointsOf(quilts_[i]);
            }
        Sentences lengths;
        for (const auto& [length, count] : byLength)
            lengths.push_back(byLength.size() > 1 ? core::says("%1 of %2", withSpare(count),
                                                               core::length(length, unit_))
                                                  : core::length(length, unit_));
        put(Supply::Kind::pins, core::says("pins"), double(withSpare(all)), stash().pins,
            core::commaList(lengths));
    }

    /// A square at both faces of the batting for every dot.
    void dots() {
        constexpr Length kSquare = Length::inch64ths(48);
        std::int64_t places = 0;
        for (std::size_t i = 0; i < quilts_.size(); ++i)
            if (with(i, Basting::With::dots))
                places += pointsOf(quilts_[i]);
        putCount(Supply::Kind::fuseSquares,
                 core::says("fuse squares, %1", core::length(kSquare, unit_)),
                 withSpare(2 * places), 0, kSquare);
        if (places > 0)
            putCount(Supply::Kind::irons, core::says("irons"), 1, session_.setting.room.irons);
    }

    void surfaces() {
        std::map<int, SurfaceNeeds> surfaces;
        for (std::size_t i = 0; i < quilts_.size(); ++i)
            addQuilt(surfaces[quilts_[i].surface.number], quilts_[i], with(i, Basting::With::dots));
        SurfaceNeeds all;
        for (const auto& [number, surface] : surfaces) {
            all.clamps += surface.clamps;
            all.tables += surface.tables;
        }
        putCount(Supply::Kind::heatSafePads, core::says("heat-safe pads"),
                 static_cast<std::int64_t>(all.tables), 0);
        for (const auto& [holds, count] : clipsAtOnce(quilts_)) {
            std::int64_t have = 0;
            for (const ClipStock& clips : stash().clips)
                if (clips.holds == holds)
                    have += clips.count;
            putCount(Supply::Kind::clips,
                     core::says("clips that hold %1", core::length(holds, unit_)), count, have,
                     holds);
        }
        putCount(Supply::Kind::clamps, core::says("clamps"), all.clamps, stash().clamps);
        // One at the middle of each side of each surface, felt through the layers.
        putCount(Supply::Kind::centreMarks, core::says("centre marks"), 4 * std::ssize(surfaces),
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

    void tools() {
        std::int64_t closers = 0;
        for (const Helper& helper : session_.setting.helpers)
            closers += helper.closes ? 1 : 0;
        bool pinned = false;
        for (std::size_t i = 0; i < quilts_.size(); ++i)
            pinned = pinned || (with(i, Basting::With::pins) && pointsOf(quilts_[i]) > 0);
        putCount(Supply::Kind::closingTools, core::says("closing tools"), pinned ? closers : 0, 0);
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
                inCloth(cloth.need), inCloth(cloth.have), clothUnit());
            if (cloth.notes.size() == 1) // of several quilts the sum is enough
                note(std::move(cloth.notes.front()));
        }
    }

    /// In yards or metres, to a thousandth.
    double inCloth(Length l) const {
        const Length one = unit_ == Unit::inch ? Length::inches(36) : Length::millimetres(1000);
        return std::round(ratio(l, one) * 1000) / 1000;
    }
    std::string clothUnit() const { return unit_ == Unit::inch ? "yd" : "m"; }

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
                inCloth(roll.need), inCloth(roll.have), clothUnit(), width);
            if (roll.notes.size() == 1) // of several quilts the sum is enough
                note(std::move(roll.notes.front()));
        }
        putCount(Supply::Kind::leftovers, core::says("leftover batting pieces"), pieces, pieces);
        putLength(Supply::Kind::joiningStrip, core::says("joining strip"), strip, Length{});
    }
};

} // namespace

std::int64_t withSpare(std::int64_t count) {
    return count + (count + 9) / 10;
}

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

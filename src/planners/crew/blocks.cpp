#include "planners/crew/blocks.h"

#include "planners/crew/rests.h"
#include "planners/crew/table_teams.h"

#include <algorithm>
#include <array>

namespace bastewright::crew {
namespace {

/// How much longer passes take than is thought, and how many seconds that counts for.
constexpr double kFirstScale = 1.02, kAsMuch = 3'000;

/// The passes of one table that are left, in their order.
struct Course {
    int surface = 1;
    std::vector<std::size_t> blocks;
    std::size_t next = 0;
    int ready = 0, rested = 0;      ///< end of its last pass, of its people's last break
    double worked = 0, thought = 0; ///< seconds of its passes so far, and as they were thought
    /// What passes take here for each second that is thought: 3 % more to begin with.
    double scale() const { return (worked + kFirstScale * kAsMuch) / (thought + kAsMuch); }
    bool through() const { return next == blocks.size(); }
};

/// Who a pass is thought to be worked by, for how long it may take.
constexpr std::array kFewPeople{1.0, 1.0};

class HandingOut {
public:
    HandingOut(const Given& given, std::vector<QuiltTable>& tables, std::vector<Block> blocks,
               const Works& works, const std::stop_token& stop, std::uint64_t seed)
        : given_{given}
        , hands_{given.hands}
        , quilts_{tables}
        , blocks_{std::move(blocks)}
        , works_{works}
        , stop_{stop}
        , seed_{seed}
        , now_{static_cast<int>(given.situation.now.count())} {
        for (std::size_t k = 0; k < blocks_.size(); ++k) {
            const Block& b = blocks_[k];
            work_.push_back(passWork(given_, quilts_[static_cast<std::size_t>(b.job)], b,
                                     opensTheTable(given_, b)));
            auto at = std::ranges::find(courses_, b.surface, &Course::surface);
            if (at == courses_.end())
                at = courses_.insert(
                    at, {.surface = b.surface, .blocks = {}, .ready = now_, .rested = lastRest()});
            at->blocks.push_back(k);
        }
        for (const Hand& h : hands_)
            people_.push_back({kNoTable, std::max(now_, h.from), lastRest()});
        belongs_.assign(hands_.size(), kNoTable);
        busy_ = belongs_;
        takeBegun();
    }

    std::vector<Block> run() {
        for (;;) {
            std::size_t k = courses_.size();
            for (std::size_t j = 0; j < courses_.size(); ++j)
                if (!courses_[j].through() &&
                    (k == courses_.size() || comesBefore(courses_[j], courses_[k])))
                    k = j;
            if (k == courses_.size())
                break;
            begin(k);
        }
        return std::move(out_);
    }

private:
    const Hand& hand(int p) const { return hands_[static_cast<std::size_t>(p)]; }
    double pace(int p) const { return hand(p).helper.pace; }
    Whereabouts& at(int p) { return people_[static_cast<std::size_t>(p)]; }
    const Whereabouts& at(int p) const { return people_[static_cast<std::size_t>(p)]; }
    int count() const { return static_cast<int>(hands_.size()); }
    int lastRest() const { return static_cast<int>(given_.situation.lastRest.count()); }
    /// Has something in hand at another table.
    bool isBusyElsewhere(int p, std::size_t k) const {
        const int busy = busy_[static_cast<std::size_t>(p)];
        return busy != kNoTable && busy != static_cast<int>(k);
    }

    /// Where something is in hand those who have it are not to be had elsewhere.
    bool comesBefore(const Course& a, const Course& b) const {
        const auto rank = [this](const Course& c) {
            const auto k = static_cast<int>(&c - courses_.data());
            const bool inHand = c.next == 0 && std::ranges::find(busy_, k) != busy_.end();
            return std::pair{c.ready, inHand ? 0 : 1};
        };
        return rank(a) < rank(b);
    }

    /// Who works at a pass already begun stays with it; who has something in hand, for all of it.
    void takeBegun() {
        const Situation& s = given_.situation;
        if (s.before == nullptr)
            return;
        for (std::size_t k = 0; k < courses_.size(); ++k) {
            const Block& b = blocks_[courses_[k].blocks.front()];
            const int number = given_.quilts[static_cast<std::size_t>(b.job)].passes[b.pass].number;
            const auto ofPass = [&](const Task& t) { return t.job == b.job && t.pass == number; };
            const bool begun = std::ranges::any_of(s.before->tasks, [&](const Task& t) {
                return ofPass(t) && (s.done.contains(t.id) || s.inHand.contains(t.id));
            });
            for (const Task& t : s.before->tasks)
                for (int p = 0; begun && ofPass(t) && p < count(); ++p)
                    if (std::ranges::find(t.people, hand(p).helper.name) != t.people.end() &&
                        hand(p).from <= now_ && at(p).table == kNoTable)
                        at(p).table = belongs_[static_cast<std::size_t>(p)] = static_cast<int>(k);
            for (const Task& t : s.before->tasks)
                for (int p = 0; ofPass(t) && s.inHand.contains(t.id) && p < count(); ++p)
                    if (std::ranges::find(t.people, hand(p).helper.name) != t.people.end() &&
                        hand(p).from <= now_)
                        busy_[static_cast<std::size_t>(p)] = static_cast<int>(k);
        }
    }

    TableLeft leftAt(const Course& c, int now) const {
        TableLeft out{.ready = std::max(c.ready, now), .scale = c.scale()};
        out.rested = given_.session.setting.proposeBreaks ? c.rested : 0;
        for (std::size_t k = c.next; k < c.blocks.size(); ++k)
            addTo(out.work, work_[c.blocks[k]]);
        if (c.through())
            return out;
        const Block& next = blocks_[c.blocks[c.next]];
        out.passes = static_cast<int>(c.blocks.size() - c.next);
        const double pass = aboutSeconds(work_[c.blocks[c.next]], kFewPeople);
        out.pass = static_cast<int>(pass);
        double all = 0;
        for (const PassWork& w : out.work)
            all += aboutSeconds(w, kFewPeople);
        out.next = pass / all;
        const auto job = static_cast<std::size_t>(next.job);
        out.lifters = next.pass > 0 ? given_.quilts[job].passes[next.pass].liftPeople : 1;
        out.way = quilts_[job].basted(next.pass).way;
        return out;
    }

    /// Passes of one kind are one work: what they take adds up.
    static void addTo(std::vector<PassWork>& all, const PassWork& w) {
        const auto same = std::ranges::find_if(all, [&](const PassWork& o) {
            return o.room == w.room && o.irons == w.irons && o.steppingUp == w.steppingUp &&
                   (o.lifters == w.lifters || w.shift == 0 || o.shift == 0);
        });
        if (same == all.end())
            all.push_back(w);
        else
            same->add(w);
    }

    /// Chooses who is at a table for its next pass, and works it.
    void begin(std::size_t k) {
        const int t = courses_[k].ready;
        std::vector<TableLeft> left;
        for (const Course& c : courses_)
            left.push_back(leftAt(c, t));
        auto hands = hands_;
        for (int p = 0; p < count(); ++p)
            if (hand(p).until <= t) { // gone for good
                hands[static_cast<std::size_t>(p)].from = kAlways;
                belongs_[static_cast<std::size_t>(p)] = at(p).table = kNoTable;
            }
        if (out_.empty() || !stop_.stop_requested())
            belongs_ = teamsFor(hands, left, people_, std::move(belongs_), seed_);
        for (int p = 0; p < count(); ++p)
            if (const int busy = busy_[static_cast<std::size_t>(p)]; busy != kNoTable)
                belongs_[static_cast<std::size_t>(p)] = busy;
        std::vector<int> team, coming, free, later, gone;
        for (int p = 0; p < count(); ++p) {
            if (hand(p).from >= kAlways)
                continue;
            if (std::max(at(p).free, hand(p).from) >= hand(p).until)
                gone.push_back(p);
            else if (at(p).free <= t && hand(p).from > t && hand(p).from < t + left[k].pass &&
                     belongs_[static_cast<std::size_t>(p)] == static_cast<int>(k))
                coming.push_back(p); // perhaps before the first pin
            else if (at(p).free > t || hand(p).from > t || isBusyElsewhere(p, k))
                later.push_back(p);
            else if (belongs_[static_cast<std::size_t>(p)] == static_cast<int>(k))
                team.push_back(p);
            else
                free.push_back(p);
        }
        complete(left[k], team, {free, coming, later, gone});
        std::erase_if(coming, [&](int p) { return std::ranges::find(team, p) != team.end(); });
        work(k, std::move(team), coming);
    }

    /// Whom the pass cannot do without: of those who are free, else whoever is through first, else
    /// somebody who would have left.
    void complete(const TableLeft& left, std::vector<int>& team,
                  const std::array<std::vector<int>, 4>& others) const {
        for (const auto& who : others)
            for (;;) {
                int best = -1;
                std::tuple<int, int, double> bestIs{};
                for (const int p : who) {
                    if (std::ranges::find(team, p) != team.end())
                        continue;
                    auto more = team;
                    more.push_back(p);
                    const std::tuple is{lacking(hands_, left, more),
                                        std::max(at(p).free, hand(p).from), -pace(p)};
                    if (best < 0 || is < bestIs) {
                        best = p;
                        bestIs = is;
                    }
                }
                if (best < 0 ||
                    (std::get<0>(bestIs) >= lacking(hands_, left, team) && !team.empty()))
                    break;
                team.push_back(best);
            }
        if (team.empty()) // beyond everybody's hours
            for (int p = 0; p < count(); ++p)
                if (hand(p).from < kAlways)
                    team.push_back(p);
    }

    /// Who is `coming` is not waited for.
    void work(std::size_t k, std::vector<int> team, const std::vector<int>& coming) {
        Course& course = courses_[k];
        std::ranges::replace(busy_, static_cast<int>(k), kNoTable); // with this pass it is done
        for (int p = 0; p < count(); ++p)
            if (at(p).table == static_cast<int>(k))
                at(p).table = kNoTable;
        int start = course.ready;
        std::vector<double> paces;
        for (const int p : team) {
            start = std::max({start, at(p).free, std::min(hand(p).from, kAlways)});
            at(p).table = static_cast<int>(k);
            paces.push_back(pace(p));
        }
        for (const int p : coming) {
            at(p).table = static_cast<int>(k);
            team.push_back(p);
        }
        std::ranges::sort(paces, std::greater{});
        if (paces.empty()) // nobody is there: as long as one would take
            paces.push_back(1);
        const std::size_t index = course.blocks[course.next++];
        std::vector<int> ahead;
        for (std::size_t b = course.next; b < course.blocks.size(); ++b)
            ahead.push_back(
                static_cast<int>(course.scale() * aboutSeconds(work_[course.blocks[b]], paces)));
        Block block = blocks_[index];
        block.team = std::move(team);
        std::ranges::sort(block.team);
        const Worked worked = works_(block, start, ahead);
        course.ready = worked.end;
        course.worked += worked.seconds;
        course.thought += aboutSeconds(work_[index], paces);
        course.rested = worked.lastRest;
        for (const int p : block.team) {
            const bool waited = start - std::max(at(p).free, hand(p).from) >= kBreakLasts;
            at(p).rested =
                std::max({at(p).rested, hand(p).from, waited ? start : 0, course.rested});
            at(p).free = course.ready;
            if (course.through())
                at(p).table = kNoTable;
        }
        out_.push_back(std::move(block));
    }

    const Given& given_;
    const std::vector<Hand>& hands_;
    std::vector<QuiltTable>& quilts_;
    std::vector<Block> blocks_;
    const Works& works_;
    const std::stop_token& stop_;
    std::uint64_t seed_;
    int now_;
    std::vector<PassWork> work_; ///< by block
    std::vector<Course> courses_;
    std::vector<Whereabouts> people_;
    std::vector<int> belongs_; ///< to which table, by hand
    std::vector<int> busy_;    ///< at which table they have something in hand, by hand
    std::vector<Block> out_;
};

} // namespace

std::vector<Block> handOut(const Given& given, std::vector<QuiltTable>& tables,
                           std::vector<Block> blocks, const Works& works,
                           const std::stop_token& stop, std::uint64_t seed) {
    return HandingOut{given, tables, std::move(blocks), works, stop, seed}.run();
}

} // namespace bastewright::crew

#pragma once

#include "job/fields/field_name.h"
#include "job/fields/field_reports.h"
#include "job/job.h"
#include "job/job_json.h"

#include <set>

/// The table of all fields of room, people, hour and supplies; see `quilt_fields.h`. Private to
/// this folder.
namespace bastewright::setting_fields {

inline constexpr Within<int> kOnHand{0, limits::kOnHand};

template <class Fields, class R>
void roomFields(Fields& f, R& room) {
    [[maybe_unused]] int tables = 0;
    f.list(
        FieldName{"tables", core::label("Tables"), "12 in all. None: the floor."}, room.tables,
        limits::kTables, [&](Fields& t, auto& table) {
            t.length(FieldName{"length", core::label("Length"), "", "CP: folding table, 6 ft"},
                     table.length, {12_in, 240_in});
            t.length(FieldName{"width", core::label("Width"), "", "CP"}, table.width,
                     {12_in, 120_in});
            t.count(FieldName{"count", core::label("How many")}, table.count, {0, limits::kTables});
            t.text(FieldName{"group", core::label("Stands"),
                             "Tables of different groups are not pushed together."},
                   table.group);
            tables += table.count;
        });
    if constexpr (Fields::kChecks)
        if (tables > limits::kTables)
            f.stop("tables",
                   core::says("are %1 in all; up to %2 are accepted.", tables, limits::kTables));
    f.text(FieldName{"name", core::label("Name of the room"),
                     "Under which the program keeps it for other quilts."},
           room.name);
    f.words(FieldName{"walls", core::label("Walls"),
                      "Sides nobody can stand at, as the pushed-together tables are drawn: longer "
                      "side left to right, head the far long side."},
            room.walls, kSideWords);
    f.length(FieldName{"inset", core::label("Leave this much of the table’s edge free"),
                       "Rim of the table that no pin is placed over.", "CP"},
             room.inset, {Length{}, 12_in});
    f.length(FieldName{"wall_gap", core::label("Tables stand this far from the wall"),
                       "From 12 in on the quilt hangs down there, though nobody stands there."},
             room.wallGap, {Length{}, 240_in});
    f.count(FieldName{"irons", core::label("Irons")}, room.irons, {0, limits::kIrons});
    f.flag(FieldName{"ventilated", core::label("Outdoors, or windows and doors are open"),
                     "Well ventilated: only there may basting be sprayed.", "the careful choice"},
           room.ventilated);
    f.count(FieldName{"surfaces", core::label("Groups of tables in use at once (0: automatic)"),
                      "How many separate surfaces to make of the tables; 0: as many as serve."},
            room.surfaces, {0, limits::kTables});
    f.object(FieldName{"together", core::label("Tables pushed together"),
                       "The rectangle that tables are to be pushed together to; nothing: whatever "
                       "is quickest. The width is no longer than the length."},
             room.together, [](Fields& t, auto& together) {
                 constexpr Within<Length> kSide{12_in, 1440_in};
                 t.require({"length", "width"});
                 t.length("length", together.length, kSide);
                 t.length("width", together.width, kSide);
                 if constexpr (Fields::kChecks)
                     if (t.sound() && together.length < together.width)
                         t.stop("width", core::says("is %1 while length is %2; up to the length is "
                                                    "accepted.",
                                                    core::length(together.width, t.unit()),
                                                    core::length(together.length, t.unit())));
             });
}

template <class Fields>
void stopUntilTooEarly(Fields& f, ClockTime from, ClockTime until) {
    f.stop("until", core::says("is %1 while from is %2; a later time of the same day is accepted.",
                               until, from));
}

template <class Fields, class B>
void breakFields(Fields& f, B& rest) {
    f.require({"from", "until"});
    f.clock(FieldName{"from", core::label("Break from")}, rest.from);
    f.clock(FieldName{"until", core::label("Break until"), "Later than from."}, rest.until);
    if constexpr (Fields::kChecks)
        if (f.sound() && f.has("from") && f.has("until") && rest.until <= rest.from)
            stopUntilTooEarly(f, rest.from, rest.until);
}

template <class Fields, class H>
void helperFields(Fields& h, H& helper) {
    h.require({"name"});
    h.name(FieldName{"name", core::label("Name")}, helper.name);
    h.length(FieldName{"reach", core::label("Reach"), "",
                       "CP: 24–30; 25 seated (2010 ADA Standards 308.2.2, obstructed forward "
                       "reach)"},
             helper.reach, {6_in, 60_in});
    h.length(FieldName{"lean", core::label("Leans farther by"),
                       "So much farther by leaning over the table. Who sits does not lean.",
                       "CP: over a table of 59 in one just gets to the middle"},
             helper.lean, {Length{}, 24_in});
    h.number(FieldName{"pace", core::label("Speed (1 is usual)"),
                       "2 is twice as fast as the trade's figures.", "the trade's times"},
             helper.pace, {limits::kSlowestPace, limits::kFastestPace});
    h.clock(FieldName{"from", core::label("Comes at")}, helper.from);
    h.clock(FieldName{"until", core::label("Leaves at"), "Later than from."}, helper.until);
    h.list(FieldName{"breaks", core::label("Breaks"),
                     "Nothing is planned for them between the two times."},
           helper.breaks, limits::kBreaks, [](Fields& b, auto& rest) { breakFields(b, rest); });
    h.flag(FieldName{"irons", core::label("Can iron")}, helper.irons);
    h.flag(FieldName{"lifts", core::label("Can lift")}, helper.lifts);
    h.flag(FieldName{"closes", core::label("Can close pins")}, helper.closes);
    h.flag(FieldName{"pins", core::label("Can pin"),
                     "False: leads, walks round and checks, but has no zones."},
           helper.pins);
    h.flag(FieldName{"bends", core::label("Can look underneath")}, helper.bends);
    h.flag(FieldName{"seated", core::label("Works sitting")}, helper.seated);
    h.flag(FieldName{"trouble_breathing", core::label("Has trouble breathing"),
                     "Basting is not sprayed where they are."},
           helper.troubleBreathing);
    h.word(FieldName{"side", core::label("Works at"),
                     "Keeps to this side of the pushed-together tables while working zones, drawn "
                     "as for walls; nothing: goes wherever there is work."},
           helper.side, kSideWords);
}

/// What only the whole list says: each name once, and hours that meet the session's.
template <class Fields>
void checkHelper(Fields& f, const Helper& helper, ClockTime start, std::set<std::string>& names) {
    if (f.has("name") && !isBlank(helper.name) && !names.insert(helper.name).second)
        f.stop("name",
               core::says("is \"%1\" again; a different name each is accepted.", helper.name));
    if (helper.until && helper.from && *helper.until <= *helper.from)
        stopUntilTooEarly(f, *helper.from, *helper.until);
    else if (helper.until && *helper.until <= start)
        f.warn("until", core::says("is %1 while the work starts at %2; %3 is never there.",
                                   *helper.until, start, helper.name));
}

template <class Fields, class S>
void stashFields(Fields& s, S& stash) {
    s.count(FieldName{"pins", core::label("Pins")}, stash.pins, kOnHand);
    s.count(FieldName{"clamps", core::label("Clamps")}, stash.clamps, kOnHand);
    s.list(FieldName{"clips", core::label("Roll clips")}, stash.clips, 20,
           [&](Fields& c, auto& clip) {
               c.require({"holds"});
               c.length(FieldName{"holds", core::label("Hold a roll of"),
                                  "Diameter of the roll it holds."},
                        clip.holds, {Length::inch64ths(16), 24_in});
               c.count(FieldName{"count", core::label("How many")}, clip.count, kOnHand);
           });
    s.length(FieldName{"tape", core::label("Tape")}, stash.tape, {Length{}, 1000_yd});
    s.text(FieldName{"name", core::label("Name of the box"),
                     "Under which the program keeps these supplies for other quilts."},
           stash.name);
}

template <class Fields, class S>
void ofSetting(Fields& f, S& setting) {
    f.object("room", [&](Fields& r) { roomFields(r, setting.room); });
    f.clock(FieldName{"start", core::label("The session starts at")}, setting.start);
    [[maybe_unused]] std::set<std::string> names;
    f.list(FieldName{"helpers", core::label("People"),
                     "Names differ. Without this field one person, \"You\"."},
           setting.helpers, limits::kHelpers, [&](Fields& h, auto& helper) {
               helperFields(h, helper);
               if constexpr (Fields::kChecks)
                   checkHelper(h, helper, setting.start, names);
           });
    f.list(FieldName{"breaks", core::label("Breaks"),
                     "Everybody's: nothing is planned between the two times."},
           setting.breaks, limits::kBreaks, [](Fields& b, auto& rest) { breakFields(b, rest); });
    f.flag(FieldName{"propose_breaks", core::label("Plan breaks"),
                     "A break is planned where the work would go on for too long.",
                     "CP: after 75–90 minutes of work"},
           setting.proposeBreaks);
    f.object(FieldName{"stash", core::label("Supplies")},
             [&](Fields& s) { stashFields(s, setting.stash); });
}

} // namespace bastewright::setting_fields

#include "property/plan_changes/tally.h"

#include "property/plan_changes/loose.h"

#include <array>
#include <sstream>

namespace bastewright::testing {

std::string table(const Tally& tally, bool all) {
    std::ostringstream out;
    int fields = 0, tries = 0, open = 0, missed = 0;
    std::array<int, kNear> near{};
    for (const auto& [path, field] : tally) {
        ++fields;
        int here = 0;
        std::ostringstream line;
        for (std::size_t i = 0; i < kChanges; ++i) {
            tries += field.tried[i];
            here += field.unnoticed[i];
            if (field.tried[i] > 0)
                line << " " << name(static_cast<Change>(i)) << " " << field.unnoticed[i] << "/"
                     << field.tried[i];
        }
        missed += here;
        open += here > 0 ? 1 : 0;
        for (std::size_t i = 0; i < kNear; ++i)
            near[i] += field.near[i];
        if (all && field.farthest > Near::element) {
            line << "   named";
            for (std::size_t i = 0; i < kNear; ++i)
                line << " " << field.near[i];
            line << " (" << field.afar << ")";
        }
        if (all || here > 0) {
            out << path << ":" << line.str();
            for (const std::string& rule : field.rules)
                out << " " << rule;
            out << (here > 0 ? "   e.g. " + field.example : "") << "\n";
        }
    }
    out << fields << " fields, " << tries << " changes, " << missed << " unnoticed in " << open
        << " fields; named";
    for (std::size_t i = 0; i < kNear; ++i)
        out << (i > 0 ? ", " : " ") << near[i] << " " << name(static_cast<Near>(i));
    out << "\n";
    return out.str();
}

std::string fieldsPage(const std::vector<SchemaField>& fields, const Tally& tally, int sessions) {
    constexpr std::array kHow{"estimate", "in no order", "free"};
    std::array<int, kHow.size()> how{};
    for (const Loose& l : looseFields())
        ++how[static_cast<std::size_t>(l.how)];
    int tries = 0, missed = 0;
    std::array<int, kNear> near{};
    for (const auto& [path, field] : tally) {
        for (std::size_t c = 0; c < kChanges; ++c) {
            tries += field.tried[c];
            missed += field.unnoticed[c];
        }
        for (std::size_t i = 0; i < kNear; ++i)
            near[i] += field.near[i];
    }
    std::ostringstream out;
    out << "# Fields of a plan, and what holds them\n\n"
           "Written by `tests/property/plan_changes` from the schema: in the plans of "
        << sessions
        << " sessions every field was changed in turn (a number by a little and a lot, a "
        << "word or text for another, letters added, neighbours of a list exchanged, an element "
           "left "
           "out or there twice, the field left out). Of "
        << tries << " changes " << missed << " went unnoticed, all of those listed here. Of "
        << fields.size() << " fields " << how[0] << " are estimates held to a relation, " << how[1]
        << " lists without an order of their own, " << how[2]
        << " free; all others are held exactly. *file*: reading or comparing the file noticed "
           "it.\n\n"
           "Whoever noticed a change named a place: of the changes that were noticed";
    for (std::size_t i = 0; i < kNear; ++i)
        out << (i > 0 ? ", " : " ") << near[i] << " " << name(static_cast<Near>(i));
    out << ". The path of a field is the field, what is in it, and the elements and lists it "
           "stands "
           "in. Where the place may be farther away than the element, or the part of the quilt, "
           "that "
           "the field is in, the last column says why.\n\n"
           "| field | noticed by | may go unnoticed | may be named afar |\n|---|---|---|---|\n";
    for (const SchemaField& field : fields) {
        out << "| " << field.path << " | ";
        const auto at = tally.find(field.path);
        std::string rules;
        if (at != tally.end())
            for (const std::string& rule : at->second.rules)
                rules += (rules.empty() ? "" : ", ") + rule;
        out << rules << " | ";
        for (const Loose& l : looseFields())
            if (l.path == field.path)
                out << kHow[static_cast<std::size_t>(l.how)] << " (" << l.changes << "): " << l.why;
        out << " | ";
        for (const Afar& a : namedAfar())
            if (a.path == field.path)
                out << name(a.near) << ": " << a.why;
        out << " |\n";
    }
    return out.str();
}

} // namespace bastewright::testing

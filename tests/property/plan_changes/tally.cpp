#include "property/plan_changes/tally.h"

#include <sstream>

namespace bastewright::testing {

std::string table(const Tally& tally, bool all) {
    std::ostringstream out;
    int fields = 0, tries = 0, open = 0, missed = 0;
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
        if (all || here > 0) {
            out << path << ":" << line.str();
            for (const std::string& rule : field.rules)
                out << " " << rule;
            out << (here > 0 ? "   e.g. " + field.example : "") << "\n";
        }
    }
    out << fields << " fields, " << tries << " changes, " << missed << " unnoticed in " << open
        << " fields\n";
    return out.str();
}

} // namespace bastewright::testing

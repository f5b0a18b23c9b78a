#pragma once

#include "job/job.h"

#include <QString>
#include <QStringList>

#include <string>
#include <vector>

namespace bastewright::sheets {

/// Every helper's mark, the same as on the screen: the first letter of the name, two or three where
/// names begin alike (Ada A, Bo B, Ben Be, Beth Bet), a number where those are taken too or no font
/// has them. It stands for the person in pictures and tables, whatever length or script the name
/// has.
class CrewKey {
public:
    explicit CrewKey(const std::vector<Helper>& helpers);

    /// "?" for a name that is not in the session.
    QString letter(const std::string& name) const;
    QStringList letters(const std::vector<std::string>& names) const;
    /// All marks, in the order of the helpers.
    const QStringList& all() const { return letters_; }

    /// "B Bo, C Cai": letter and the name's first word, as one speaks of people at the table.
    QString spoken(const std::vector<std::string>& names) const;

private:
    std::vector<std::string> names_;
    QStringList letters_;
};

/// The name's first word, at most 16 characters, ready to stand in a sentence.
QString shortName(const std::string& name);

/// "13:00 to 15:00", "from 14:00", "the whole time, break 14:30 to 14:45".
QString hoursWords(const Helper& helper);

} // namespace bastewright::sheets

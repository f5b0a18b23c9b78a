#pragma once

#include "view/field.h"
#include "view/words.h"

/// Makers of fields by kind. `Get` gives a pointer (or std::optional) inside the session to read
/// and write, so that each field is one line where sections list theirs.
namespace fields {

struct Label {
    QString key, group, text;
};

template <class T>
using At = std::function<T*(bastewright::Session&)>;

Field text(Label label, At<std::string> at);
Field length(Label label, bastewright::Unit unit, At<bastewright::Length> at);
Field optionalLength(Label label, bastewright::Unit unit,
                     At<std::optional<bastewright::Length>> at);
Field count(Label label, At<int> at, int least, int most);
Field number(Label label, At<double> at);
Field time(Label label, At<bastewright::ClockTime> at);
Field optionalTime(Label label, At<std::optional<bastewright::ClockTime>> at);
Field toggle(Label label, At<bool> at);
/// `get` and `set` translate between the session and the index of a choice.
Field choice(Label label, QStringList choices, std::function<int(const bastewright::Session&)> get,
             std::function<void(bastewright::Session&, int)> set);
Field action(Label label, std::function<void(bastewright::Session&)> act);
Field removal(Label label, std::function<void(bastewright::Session&)> act);

} // namespace fields

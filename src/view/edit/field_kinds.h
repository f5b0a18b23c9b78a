#pragma once

#include "view/base/words.h"
#include "view/edit/field.h"

#include <QCoreApplication>

#include <string_view>

/// Makers of fields by kind. `Get` gives a pointer (or std::optional) inside the session to read
/// and write, so that each field is one line where sections list theirs.
namespace fields {

/// A field's words in the person's language.
inline QString tr(const char* text) {
    return QCoreApplication::translate("fields", text);
}

/// What the table of fields calls a field, in the person's language; `path` as in `fieldFacts()`.
QString labelOf(std::string_view path);

struct Label {
    QString key, group, text;
};

template <class T>
using At = std::function<T*(bastewright::Session&)>;

Field text(const Label& label, const At<std::string>& at);
Field length(const Label& label, bastewright::Unit unit, const At<bastewright::Length>& at);
Field optionalLength(const Label& label, bastewright::Unit unit,
                     const At<std::optional<bastewright::Length>>& at);
/// A length of cloth as it is bought: shown in yards or metres, which a bare number is, too.
Field cloth(const Label& label, bastewright::Unit unit, const At<bastewright::Length>& at);
Field count(const Label& label, const At<int>& at);
Field number(const Label& label, const At<double>& at);
/// A time of the session, later than its start; or what `begins` it, which has nothing before it
/// that a bare "1:30" could go by.
Field time(const Label& label, const At<bastewright::ClockTime>& at, bool begins = false);
Field optionalTime(const Label& label, const At<std::optional<bastewright::ClockTime>>& at);
Field toggle(const Label& label, const At<bool>& at);
/// `get` and `set` translate between the session and the index of a choice.
Field choice(const Label& label, const QStringList& choices,
             const std::function<int(const bastewright::Session&)>& get,
             const std::function<void(bastewright::Session&, int)>& set);
Field action(const Label& label, const std::function<void(bastewright::Session&)>& act);
Field removal(const Label& label, const std::function<void(bastewright::Session&)>& act);

} // namespace fields

#pragma once

#include "job/job.h"

#include <QList>
#include <QString>
#include <QStringList>

#include <functional>

/// One thing a person can change about a session, as the screen shows it: a large tile with a label
/// and its value, or a button that adds (kind action) or takes away (kind removal) something.
struct Field {
    enum class Kind { text, length, count, number, time, choice, toggle, action, removal };

    QString key;   ///< unique in its section, stable while nothing is added or removed
    QString group; ///< heading above the tile; fields of one group are neighbours
    QString label;
    Kind kind = Kind::text;
    QStringList choices;   ///< for kind choice, in order
    bool optional = false; ///< may be emptied
    std::function<QString(const bastewright::Session&)> shown;
    /// Puts the text into the session; returns one sentence where it is not understood, else empty.
    std::function<QString(bastewright::Session&, const QString&)> take;
};
using Fields = QList<Field>;

QString name(Field::Kind kind);

class JobEditor;

namespace fields {

/// The one with this key; null where there is none.
const Field* find(const Fields& all, const QString& key);
/// Changes what the editor has in hand by the text for the field with this key. Returns one
/// sentence where it does not fit, else empty; without such a field nothing happens.
QString take(const Fields& all, const QString& key, const QString& text, JobEditor& editor);
/// Shows it on the pictures, where it fits; nothing is changed.
void preview(const Fields& all, const QString& key, const QString& text, JobEditor& editor);

/// The fields of a section for the session as it is now. `quilt` is the index of the quilt in hand.
Fields ofQuilt(const bastewright::Session& session, int quilt);
Fields ofBasting(const bastewright::Session& session, int quilt);
Fields ofLayers(const bastewright::Session& session, int quilt);
Fields ofRoom(const bastewright::Session& session, int quilt);
Fields ofPeople(const bastewright::Session& session, int quilt);
Fields ofBoxes(const bastewright::Session& session, int quilt);

} // namespace fields

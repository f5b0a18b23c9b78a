#pragma once

#include "view/plan/plan_presenter.h"

#include <QList>
#include <QPair>
#include <QString>

/// Why a figure of the plan is what it is, as text for people.
struct Why {
    QString title{}, value{};
    QString plain{}; ///< the reason in one sentence that a child understands
    QString rule{};  ///< how it is worked out
    QList<QPair<QString, QString>> inputs{}; ///< what from: name and value
    QString bound{};                         ///< what is proven of it; may be empty
    QString reason{};                        ///< why the trade does it so
    QString source{};                        ///< of the rule
};

namespace why {

/// The names of all figures that open, in the order they are listed.
const QStringList& figures();

/// Nothing (an empty title) where the plan has no such figure.
Why of(const QString& figure, const PlannedQuilt& quilt);

/// The figure that a row of what to bring is about; empty for none.
QString ofSupply(bastewright::Supply::Kind kind);

} // namespace why

#pragma once

#include "plan/plan.h"

#include <QString>
#include <QVariantList>

/// The words and rows in which the layers are told; the roles are named in layers_presenter.cpp.
namespace rows {

QVariantList ofBackingWay(const bastewright::BackingAlternative& way, bastewright::Unit unit,
                          bool mayTake);

QVariantList ofBattingWay(const bastewright::BattingAlternative& way);

/// One for each layer, the same in every pass: its overage, what squaring and creep leave of it,
/// and whether that is fine, a warning or a stop. `quilt` tells its findings from other quilts'.
QList<QVariantList> ofSpare(const bastewright::Job& job, const bastewright::QuiltPlan& plan,
                            const bastewright::Findings& findings, int quilt);

/// What is bought or joined, what the joins cost, what is cut first and what is left over.
QString battingWords(const bastewright::Job& job, const bastewright::QuiltPlan& plan);

/// Sizes of the three layers, and where they come from.
QString sizesWords(const bastewright::Job& job, const bastewright::QuiltPlan& plan);

} // namespace rows

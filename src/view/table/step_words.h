#pragma once

#include "plan/plan.h"
#include "session/checks.h"

#include <QStringList>
#include <QVariantList>

/// What the table view says of a step of a whole pass, beyond its name.
namespace step_words {

/// What is done, in working order: rolls and clips, holds with their places along the side,
/// direction of smoothing, who lifts; of setting up the cautions.
QStringList lines(bastewright::TaskKind kind, const bastewright::Job& job,
                  const bastewright::QuiltPlan& quilt, const bastewright::Pass& pass,
                  bastewright::Unit unit);

/// True for steps at which the four sides are compared with the plan.
bool compares(bastewright::TaskKind kind);

/// Side by side: its name, how far the backing hangs over the table's edge ("lies" where it ends on
/// the table), backing and batting beyond the top.
QList<QVariantList> sides(const bastewright::SurfacePlan& surface, const bastewright::Pass& pass,
                          bastewright::Unit unit);

QString question(bastewright::Check check, bastewright::Unit unit);
/// What to do where the answer is no.
QString cure(bastewright::Check check);

} // namespace step_words

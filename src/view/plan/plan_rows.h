#pragma once

#include "view/base/planned.h"

#include <QVariantList>

/// The rows of the planning screen's lists; the roles are named in plan_presenter.cpp.
namespace rows {

/// A sentence of this namespace in the person's language.
QString tr(const char* text);

QList<QVariantList> ofAlternatives(const Planned& planned, std::size_t quilt);
QList<QVariantList> ofSupplies(const Planned& planned);
QList<QVariantList> ofPeople(const Planned& planned);
QList<QVariantList> ofHelp(const Planned& planned);
/// One for each pass of a quilt: number, title, zones, points, minutes, from, until.
QList<QVariantList> ofPasses(const Planned& planned, std::size_t quilt);

} // namespace rows

#pragma once

#include "view/base/planned.h"

#include <QString>

#include <vector>

/// A change of the session that cures a finding.
struct Cure {
    QString label; ///< what it does, as a command
    bastewright::Session next;
};

/// Changes that the program can make, the smallest first; empty where only a person can help.
std::vector<Cure> curesOf(const bastewright::Finding& finding, const Planned& planned);

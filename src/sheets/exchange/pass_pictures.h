#pragma once

#include "plan/plan.h"

#include <tl/expected.hpp>

#include <string>
#include <vector>

namespace bastewright {

enum class PictureFormat { svg, png };

/// Writes the picture of every pass, as it stands on the lead's sheet, into `folder` (made where it
/// is missing): "harbour-lights-pass-1.svg". Returns the paths; the error is one sentence. Needs a
/// QGuiApplication.
tl::expected<std::vector<std::string>, std::string> writePassPictures(const Session& session,
                                                                      const Plan& plan,
                                                                      const std::string& folder,
                                                                      PictureFormat format);

} // namespace bastewright

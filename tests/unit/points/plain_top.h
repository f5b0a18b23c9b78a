#pragma once

#include "job/job.h"

namespace bastewright {

/// A top without seams, to be basted so.
inline Job plainTop(Length width, Length length, Length spacing,
                    Basting::With with = Basting::With::pins) {
    Job job;
    job.top.width = {width};
    job.top.length = {length};
    job.basting.spacing = spacing;
    job.basting.with = with;
    return job;
}

} // namespace bastewright

#include "job/session_checks.h"

#include "job/fields/field_checker.h"
#include "job/fields/quilt_fields.h"
#include "job/fields/setting_fields.h"

namespace bastewright {

Findings problemsOf(const Session& session) {
    Problems problems;
    FieldChecker root{"", problems};
    const auto quilt = [](FieldChecker& f, const Job& job) { quilt_fields::ofQuilt(f, job); };
    if (!session.jobs.empty())
        root.setUnit(session.jobs.front().unit);
    if (session.severalQuilts || session.jobs.size() != 1)
        root.list(FieldName{"jobs", core::label("Quilts")}, session.jobs, limits::kQuilts, quilt);
    else
        quilt(root, session.jobs.front());
    if (session.jobs.empty())
        root.stop("jobs",
                  core::says("is an empty list; 1 to %1 quilts are accepted.", limits::kQuilts));
    setting_fields::ofSetting(root, session.setting);
    return problems.all();
}

} // namespace bastewright

#include "view/paper/learnt_paces.h"

#include "job/job_json.h"
#include "plan/plan_json.h"
#include "session/record.h"
#include "view/base/words.h"

#include <QStringList>

#include <algorithm>
#include <cmath>

using namespace bastewright;

namespace {

constexpr int kSessions = 5;      ///< of the latest; people change
constexpr double kWorthIt = 0.07; ///< less than that is chance

double rounded(double pace) {
    return std::clamp(std::round(pace * 20) / 20, limits::kSlowestPace, limits::kFastestPace);
}

} // namespace

LearntPaces::LearntPaces(Library* library, JobEditor* editor, QObject* parent)
    : QObject{parent}
    , library_{library}
    , editor_{editor} {
    connect(editor_, &JobEditor::changed, this, &LearntPaces::tell);
}

void LearntPaces::look() {
    learnt_.clear();
    int left = kSessions;
    if (const auto all = library_->sessions())
        for (const auto& entry : *all) {
            if (!entry.ended || left-- == 0)
                continue;
            const auto from = library_->sessionStart(entry.id);
            const auto events = library_->events(entry.id);
            if (!from || !events)
                continue;
            const auto session = readSession(from->session);
            const auto plan = readPlan(from->plan);
            if (!session.session || !plan.plan)
                continue;
            for (const auto& person : recordOf(*session.session, *plan.plan, *events).people)
                if (person.speed)
                    learnt_.emplace(person.name, *person.speed); // the latest first
        }
    tell();
}

void LearntPaces::tell() {
    QStringList who;
    for (const auto& helper : editor_->session().setting.helpers) {
        const auto at = learnt_.find(helper.name);
        if (at == learnt_.end() || std::abs(std::log(rounded(at->second) / helper.pace)) < kWorthIt)
            continue;
        const QString name = words::fromCore(helper.name);
        who << (at->second > helper.pace ? tr("%1 quicker").arg(name) : tr("%1 slower").arg(name));
    }
    const QString text =
        who.isEmpty() ? QString{}
                      : tr("Learnt at the last session: %1.").arg(who.join(QStringLiteral(", ")));
    if (text == text_)
        return;
    text_ = text;
    emit changed();
}

void LearntPaces::use() {
    Session session = editor_->session();
    for (auto& helper : session.setting.helpers)
        if (const auto at = learnt_.find(helper.name); at != learnt_.end())
            helper.pace = rounded(at->second);
    editor_->apply(tr("Learnt speeds"), std::move(session));
    tell();
}

void LearntPaces::putAway() {
    learnt_.clear();
    tell();
}

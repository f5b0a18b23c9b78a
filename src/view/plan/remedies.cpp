#include "view/plan/remedies.h"

#include "view/base/words.h"

#include <algorithm>
#include <functional>

using namespace bastewright;

namespace {

/// What the button of a cure says; empty where there are fewer.
QString says(const std::vector<Remedy>& cures, std::size_t which) {
    return which < cures.size() ? words::fromCore(cures[which].words) : QString{};
}

} // namespace

Remedies::Remedies(JobEditor* editor, PlanPresenter* plan, QObject* parent)
    : QObject{parent}
    , editor_{editor}
    , plan_{plan}
    , rows_{{"level", "text", "cure", "first", "second"}} {
    connect(plan_, &PlanPresenter::changed, this, &Remedies::refresh);
    connect(editor_, &JobEditor::sessionChanged, this, [this] {
        // A further change, or an undo, ends the trial.
        if (trying() && editor_->session() != triedSession_)
            keep();
    });
}

void Remedies::refresh() {
    QList<QVariantList> rows;
    cures_.clear();
    serious_ = false;
    worst_.clear();
    worstFirst_.clear();
    worstSecond_.clear();
    if (const auto& planned = plan_->planned()) {
        auto findings = planned->plan.findings;
        std::ranges::stable_sort(findings, std::greater{}, &Finding::level);
        for (const Finding& f : findings) {
            cures_.push_back(remediesFor(f, planned->session, planned->plan));
            const auto& cures = cures_.back();
            rows.push_back({words::fromCore(name(f.level)), words::fromCore(f.text),
                            words::fromCore(f.cure), says(cures, 0), says(cures, 1)});
        }
        // Tips can wait until they are looked for.
        if (!findings.empty() && findings.front().level > Finding::Level::note) {
            serious_ = true;
            worst_ = words::fromCore(findings.front().text);
            worstFirst_ = says(cures_.front(), 0);
            worstSecond_ = says(cures_.front(), 1);
        }
        if (trying() && planned->session == triedSession_)
            after_ = figures();
    }
    rows_.setRows(std::move(rows));
    emit findingsChanged();
    emit changed();
}

QString Remedies::figures() const {
    if (!plan_->good())
        return plan_->findingsText();
    return tr("%1, %2, %3. %4.")
        .arg(plan_->spanText(), plan_->passesText(), plan_->pointsText(), plan_->findingsText());
}

void Remedies::cure(int finding, int which) {
    if (finding < 0 || std::size_t(finding) >= cures_.size() || which < 0)
        return;
    const auto& cures = cures_[std::size_t(finding)];
    // The plan the cures were made for is the one on the screen.
    if (std::size_t(which) < cures.size() && !plan_->busy()) {
        const Remedy cure = cures[std::size_t(which)];
        begin(words::fromCore(cure.words), cure.applied(plan_->planned()->session));
    }
}

void Remedies::tryHelp(int help) {
    const auto& planned = plan_->planned();
    if (!planned || help < 0 || std::size_t(help) >= planned->plan.help.size() || plan_->busy())
        return;
    const Help& chosen = planned->plan.help[std::size_t(help)];
    if (const auto remedy = remedyOf(chosen.kind, editor_->session()))
        begin(words::fromCore(chosen.change), remedy->applied(editor_->session()));
}

void Remedies::begin(const QString& what, Session next) {
    tried_ = what;
    before_ = figures();
    after_.clear();
    triedSession_ = next;
    if (const QString problem = editor_->apply(what, std::move(next)); !problem.isEmpty())
        after_ = problem;
    emit changed();
}

void Remedies::keep() {
    tried_.clear();
    emit changed();
}

void Remedies::takeBack() {
    if (trying() && editor_->session() == triedSession_)
        editor_->undo();
    keep();
}

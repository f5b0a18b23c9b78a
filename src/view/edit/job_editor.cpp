#include "view/edit/job_editor.h"

#include "job/session_checks.h"
#include "view/base/words.h"

using namespace bastewright;

namespace {

Session emptySession() {
    Session session;
    session.jobs.emplace_back();
    session.jobs.front().top.width = {Length::inches(60)};
    session.jobs.front().top.length = {Length::inches(72)};
    return session;
}

} // namespace

JobEditor::JobEditor(QObject* parent)
    : QObject{parent} {
    steps_.push_back({emptySession(), {}});
}

void JobEditor::open(Session session) {
    Q_ASSERT(!session.jobs.empty());
    steps_.clear();
    steps_.push_back({std::move(session), {}});
    at_ = 0;
    preview_.reset();
    quilt_ = 0;
    emit changed();
    emit sessionChanged();
}

QString JobEditor::problemOf(const Session& session) {
    for (const auto& problem : problemsOf(session))
        if (problem.level == Finding::Level::stop)
            return words::fromCore(problem.text);
    return {};
}

QString JobEditor::apply(const QString& what, Session next) {
    if (next == session())
        return {};
    if (QString problem = problemOf(next); !problem.isEmpty())
        return problem;
    steps_.resize(at_ + 1);
    steps_.push_back({std::move(next), what});
    step(at_ + 1);
    return {};
}

void JobEditor::setPreview(std::optional<Session> preview) {
    if (preview == preview_)
        return;
    preview_ = std::move(preview);
    emit previewChanged();
}

const Job& JobEditor::jobShown() const {
    return preview_ ? preview_->jobs[std::size_t(quilt_)] : job();
}

void JobEditor::undo() {
    if (canUndo())
        step(at_ - 1);
}

void JobEditor::redo() {
    if (canRedo())
        step(at_ + 1);
}

void JobEditor::step(std::size_t to) {
    at_ = to;
    preview_.reset();
    quilt_ = std::min(quilt_, int(session().jobs.size()) - 1);
    emit changed();
    emit sessionChanged();
}

QString JobEditor::title() const {
    const auto names = quilts();
    return names.join(QStringLiteral(" · "));
}

void JobEditor::setQuilt(int index) {
    if (index == quilt_ || index < 0 || std::size_t(index) >= session().jobs.size())
        return;
    quilt_ = index;
    emit changed();
}

QStringList JobEditor::quilts() const {
    QStringList names;
    for (const auto& job : session().jobs)
        names << (job.name.empty() ? tr("Quilt without a name") : words::fromCore(job.name));
    return names;
}

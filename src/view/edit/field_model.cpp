#include "view/edit/field_model.h"

#include "view/base/people_palette.h"
#include "view/base/words.h"
#include "view/edit/summaries.h"
#include "ways/way.h"

using namespace bastewright;

namespace {

QString quiltSummary(const Job& job) {
    const Rect top = topRect(job.top);
    const QString size = words::size({top.width(), top.length()}, job.unit);
    return job.top.grid ? FieldModel::tr("%1, %2 × %3 blocks")
                              .arg(size)
                              .arg(job.top.grid->columns)
                              .arg(job.top.grid->rows)
                        : size;
}

QString bastingSummary(const Job& job) {
    const QString spacing = words::length(job.basting.spacing, job.unit);
    return words::fromCore(wayOf(job).words.every(words::toCore(spacing)));
}

QString layersSummary(const Job& job) {
    return FieldModel::tr("overage: batting %1, backing %2")
        .arg(words::length(job.batting.overage, job.unit),
             words::length(job.backing.overage, job.unit));
}

QString peopleSummary(const Setting& setting) {
    const auto& helpers = setting.helpers;
    if (helpers.size() > 4)
        return FieldModel::tr("%1 people").arg(helpers.size());
    return helpers.empty() ? FieldModel::tr("nobody yet")
                           : people::names(helpers).join(QStringLiteral(", "));
}

QString summaryOf(FieldModel::Section section, const JobEditor& editor) {
    const auto& setting = editor.session().setting;
    switch (section) {
    case FieldModel::Section::Quilt:
        return quiltSummary(editor.job());
    case FieldModel::Section::Basting:
        return bastingSummary(editor.job());
    case FieldModel::Section::Layers:
        return layersSummary(editor.job());
    case FieldModel::Section::Room:
        return summaries::room(setting.room, editor.unit());
    case FieldModel::Section::People:
        return peopleSummary(setting);
    case FieldModel::Section::Boxes:
        return summaries::supplies(setting.stash);
    }
    return {};
}

/// What a view keeps a delegate for; where it differs the list is laid anew.
bool samePlaces(const Fields& a, const Fields& b) {
    return std::equal(a.begin(), a.end(), b.begin(), b.end(), [](const Field& x, const Field& y) {
        return x.key == y.key && x.kind == y.kind && x.group == y.group;
    });
}

} // namespace

void FieldModel::setEditor(JobEditor* editor) {
    if (editor == editor_)
        return;
    if (editor_)
        editor_->disconnect(this);
    editor_ = editor;
    if (editor_)
        connect(editor_, &JobEditor::changed, this, &FieldModel::rebuild);
    rebuild();
    emit editorChanged();
}

void FieldModel::setSection(Section section) {
    if (section == section_)
        return;
    section_ = section;
    rebuild();
    emit sectionChanged();
}

void FieldModel::setOnly(const QString& only) {
    if (only == only_)
        return;
    only_ = only;
    rebuild();
    emit onlyChanged();
}

Fields FieldModel::made() const {
    Fields all = ofSection();
    erase_if(all, [this](const Field& field) { return !field.key.startsWith(only_); });
    return all;
}

Fields FieldModel::ofSection() const {
    if (!editor_)
        return {};
    const auto& session = editor_->session();
    const int quilt = editor_->quilt();
    switch (section_) {
    case Section::Quilt:
        return fields::ofQuilt(session, quilt);
    case Section::Basting:
        return fields::ofBasting(session, quilt);
    case Section::Layers:
        return fields::ofLayers(session, quilt);
    case Section::Room:
        return fields::ofRoom(session, quilt);
    case Section::People:
        return fields::ofPeople(session, quilt);
    case Section::Boxes:
        return fields::ofBoxes(session, quilt);
    }
    return {};
}

void FieldModel::rebuild() {
    if (const QString now = editor_ ? summaryOf(section_, *editor_) : QString{}; now != summary_) {
        summary_ = now;
        emit summaryChanged();
    }
    auto next = made();
    QStringList shown;
    for (const auto& field : next)
        shown << field.shown(editor_->session());
    if (samePlaces(fields_, next)) {
        fields_ = std::move(next);
        shown_ = std::move(shown);
        if (!fields_.isEmpty())
            emit dataChanged(index(0), index(int(fields_.size()) - 1));
        return;
    }
    beginResetModel();
    fields_ = std::move(next);
    shown_ = std::move(shown);
    endResetModel();
}

QString FieldModel::take(const QString& key, const QString& text) {
    return editor_ ? fields::take(fields_, key, text, *editor_) : QString{};
}

void FieldModel::preview(const QString& key, const QString& text) {
    if (editor_)
        fields::preview(fields_, key, text, *editor_);
}

void FieldModel::endPreview() {
    if (editor_)
        editor_->setPreview({});
}

QString FieldModel::groupAt(int row) const {
    return row >= 0 && row < fields_.size() ? fields_[row].group : QString{};
}

int FieldModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : int(fields_.size());
}

QVariant FieldModel::data(const QModelIndex& index, int role) const {
    if (!checkIndex(index, CheckIndexOption::IndexIsValid))
        return {};
    const auto& field = fields_[index.row()];
    switch (role) {
    case KeyRole:
        return field.key;
    case GroupRole:
        return field.group;
    case LabelRole:
        return field.label;
    case KindRole:
        return name(field.kind);
    case ValueRole:
        return shown_[index.row()];
    case ChoicesRole:
        return field.choices;
    case OptionalRole:
        return field.optional;
    default:
        return {};
    }
}

QHash<int, QByteArray> FieldModel::roleNames() const {
    return {{KeyRole, "key"},          {GroupRole, "group"}, {LabelRole, "label"},
            {KindRole, "kind"},        {ValueRole, "value"}, {ChoicesRole, "choices"},
            {OptionalRole, "optional"}};
}

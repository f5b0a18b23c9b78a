#pragma once

#include "view/edit/field.h"
#include "view/edit/job_editor.h"

#include <QAbstractListModel>
#include <QtQmlIntegration>

/// The fields of one section of the session, for large tiles that are tapped to change them.
class FieldModel : public QAbstractListModel {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(JobEditor* editor READ editor WRITE setEditor NOTIFY editorChanged REQUIRED)
    Q_PROPERTY(Section section READ section WRITE setSection NOTIFY sectionChanged REQUIRED)
    /// Only the fields whose keys begin so; all where it is empty.
    Q_PROPERTY(QString only READ only WRITE setOnly NOTIFY onlyChanged)
    /// The section in half a line, for the tile that opens it.
    Q_PROPERTY(QString summary READ summary NOTIFY summaryChanged)

public:
    enum class Section { Quilt, Basting, Layers, Room, People, Boxes };
    Q_ENUM(Section)
    enum Role {
        KeyRole = Qt::UserRole,
        GroupRole,
        LabelRole,
        KindRole,
        ValueRole,
        ChoicesRole,
        OptionalRole
    };

    using QAbstractListModel::QAbstractListModel;

    JobEditor* editor() const { return editor_; }
    void setEditor(JobEditor* editor);
    Section section() const { return section_; }
    void setSection(Section section);

    QString only() const { return only_; }
    void setOnly(const QString& only);

    QString summary() const { return summary_; }

    /// Changes the field with this key; for choices and toggles the text is the index. Returns one
    /// sentence where the text does not fit, else empty.
    Q_INVOKABLE QString take(const QString& key, const QString& text);

    /// Shows in pictures what the field would make of this text; what does not fit shows nothing
    /// new.
    Q_INVOKABLE void preview(const QString& key, const QString& text);
    Q_INVOKABLE void endPreview();

    /// The heading of a row, so that a view knows where a new one begins.
    Q_INVOKABLE QString groupAt(int row) const;

    int rowCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;
    QHash<int, QByteArray> roleNames() const override;

signals:
    void editorChanged();
    void sectionChanged();
    void onlyChanged();
    void summaryChanged();

private:
    void rebuild();
    Fields made() const;
    Fields ofSection() const;

    JobEditor* editor_ = nullptr;
    Section section_ = Section::Quilt;
    Fields fields_;
    QStringList shown_;
    QString summary_, only_;
};

#pragma once

#include "job/job.h"

#include <QObject>
#include <QtQmlIntegration>

#include <optional>
#include <vector>

/// The session that is being planned, and every change made to it since it was opened, so that each
/// can be undone and redone. Knows no field by name: `FieldModel` does.
class JobEditor : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the workroom")
    Q_PROPERTY(QString title READ title NOTIFY changed)
    Q_PROPERTY(int quilt READ quilt WRITE setQuilt NOTIFY changed)
    Q_PROPERTY(QStringList quilts READ quilts NOTIFY changed)
    Q_PROPERTY(bool metric READ metric NOTIFY changed)
    Q_PROPERTY(bool canUndo READ canUndo NOTIFY changed)
    Q_PROPERTY(bool canRedo READ canRedo NOTIFY changed)
    Q_PROPERTY(QString undoText READ undoText NOTIFY changed)
    Q_PROPERTY(QString redoText READ redoText NOTIFY changed)

public:
    explicit JobEditor(QObject* parent = nullptr);

    /// Begins anew with a session; forgets what could be undone.
    void open(bastewright::Session session);
    const bastewright::Session& session() const { return steps_[at_].session; }
    const bastewright::Job& job() const { return session().jobs[std::size_t(quilt_)]; }
    bastewright::Unit unit() const { return job().unit; }

    /// What is wrong with the values of a session, in one sentence; empty where nothing is.
    static QString problemOf(const bastewright::Session& session);

    /// Makes `next` the session; `what` names the change for Undo. A session with a value that is
    /// not accepted is refused, and the reason is returned as one sentence; else empty.
    QString apply(const QString& what, bastewright::Session next);

    /// What the session would be with what is being typed, for pictures; nothing: as it is. Any
    /// change of the session ends it.
    void setPreview(std::optional<bastewright::Session> preview);
    /// The quilt in hand as it would be with what is being typed.
    const bastewright::Job& jobShown() const;

    Q_INVOKABLE void undo();
    Q_INVOKABLE void redo();

    QString title() const;
    int quilt() const { return quilt_; }
    void setQuilt(int index);
    QStringList quilts() const;
    bool metric() const { return unit() != bastewright::Unit::inch; }
    bool canUndo() const { return at_ > 0; }
    bool canRedo() const { return at_ + 1 < steps_.size(); }
    QString undoText() const { return canUndo() ? steps_[at_].what : QString{}; }
    QString redoText() const { return canRedo() ? steps_[at_ + 1].what : QString{}; }

signals:
    void changed();        ///< anything shown differs
    void sessionChanged(); ///< the session itself differs: plan again, store
    void previewChanged();

private:
    void step(std::size_t to);

    struct Step {
        bastewright::Session session;
        QString what;
    };
    std::vector<Step> steps_;
    std::optional<bastewright::Session> preview_;
    std::size_t at_ = 0;
    int quilt_ = 0;
};

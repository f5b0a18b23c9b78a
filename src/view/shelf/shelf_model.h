#pragma once

#include "store/library.h"
#include "view/paint/quilt_face.h"

#include <QAbstractListModel>
#include <QUrl>
#include <QtQmlIntegration>

/// The jobs kept in the library, as cards.
class ShelfModel : public QAbstractListModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the workroom")
    Q_PROPERTY(int count READ count NOTIFY countChanged)
    Q_PROPERTY(QString problem READ problem NOTIFY problemChanged)
    Q_PROPERTY(QString removed READ removed NOTIFY removedChanged)
    Q_PROPERTY(QStringList examples READ examples CONSTANT)
    /// Of each example how large it is, or of how many quilts, and what it is basted with.
    Q_PROPERTY(QStringList examplesAbout READ examplesAbout NOTIFY refreshed)

public:
    enum Role { JobRole = Qt::UserRole, TitleRole, SizeRole, StateRole, StateTextRole, FaceRole };

    explicit ShelfModel(bastewright::Library* library, QObject* parent = nullptr);

    /// Reads the library again: after a change elsewhere.
    void refresh();

    /// Each returns the id of the job it made, or 0 with `problem` set. A new quilt begins with
    /// this setting.
    qint64 addNew(const bastewright::Setting& setting);
    /// The one that is there already, as long as nobody has changed it.
    Q_INVOKABLE qint64 addExample(int index);
    Q_INVOKABLE qint64 copy(qint64 job);
    /// The same; or the id of the job that holds just what the file does.
    Q_INVOKABLE qint64 openFile(const QUrl& file);
    Q_INVOKABLE void remove(qint64 job);
    Q_INVOKABLE void undoRemove();
    Q_INVOKABLE void forgetRemoved();
    Q_INVOKABLE bool saveFile(qint64 job, const QUrl& file);
    /// Saves into a folder under the quilt's name, beside what is there; the file's path, or empty
    /// with `problem` set.
    Q_INVOKABLE QString saveInto(qint64 job, const QUrl& folder);
    /// Hands the job as a file to the program that the device opens such files with.
    Q_INVOKABLE bool openElsewhere(qint64 job);
    Q_INVOKABLE void forgetProblem();

    int count() const { return int(cards_.size()); }
    QString problem() const { return problem_; }
    /// Name of the job that was removed last and can come back; empty for none.
    QString removed() const { return removedName_; }
    QStringList examples() const;
    QStringList examplesAbout() const;

    int rowCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;
    QHash<int, QByteArray> roleNames() const override;

signals:
    void countChanged();
    void problemChanged();
    void removedChanged();
    void refreshed(); ///< perhaps in another language

private:
    struct Card {
        bastewright::JobId id = 0;
        QString title, size, state;
        QuiltFace face;
        bool operator==(const Card&) const = default;
    };
    qint64 add(const std::string& text, const QString& whence);
    qint64 heldOrAdded(const bastewright::Session& session, const QString& whence);
    void say(const QString& problem);
    Card cardOf(const bastewright::JobEntry& entry, const QString& state) const;

    bastewright::Library* library_;
    QList<Card> cards_;
    QString problem_, removedName_;
    bastewright::JobId removed_ = 0;
};

/// The key under which the library keeps that a job has had a good plan.
std::string plannedKey(bastewright::JobId job);

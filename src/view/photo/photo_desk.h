#pragma once

#include "view/base/table_rows.h"
#include "view/edit/job_editor.h"
#include "view/photo/straighten.h"

#include <QImage>
#include <QObject>
#include <QUrl>
#include <QtQmlIntegration>

#include <thread>

/// What the quilt in hand looks like: a photo of its top, from a file and straightened by its four
/// corners, or a few fabrics.
class PhotoDesk : public QObject {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(JobEditor* editor READ editor WRITE setEditor NOTIFY changed REQUIRED)
    Q_PROPERTY(bool hasPhoto READ hasPhoto NOTIFY changed)
    /// A file is being read.
    Q_PROPERTY(bool busy READ busy NOTIFY changed)
    /// A photo lies there and its corners are being told.
    Q_PROPERTY(bool picking READ picking NOTIFY changed)
    /// Head left, head right, foot right, foot left; from (0, 0) to (1, 1).
    Q_PROPERTY(QList<QPointF> corners READ corners NOTIFY cornersChanged)
    /// The corners enclose a quilt.
    Q_PROPERTY(bool sound READ sound NOTIFY cornersChanged)
    Q_PROPERTY(QString problem READ problem NOTIFY changed)
    /// For a dialog of files.
    Q_PROPERTY(QStringList nameFilters READ nameFilters CONSTANT)
    /// The fabrics told of the top, "#rrggbb"; the usual ones where none are.
    Q_PROPERTY(QStringList fabrics READ fabrics NOTIFY changed)
    Q_PROPERTY(bool ownFabrics READ ownFabrics NOTIFY changed)
    Q_PROPERTY(bool mayAdd READ mayAdd NOTIFY changed)
    Q_PROPERTY(bool mayRemove READ mayRemove NOTIFY changed)
    /// Good colours of fabric to pick: colour, name.
    Q_PROPERTY(TableRows* swatches READ swatches CONSTANT)

public:
    explicit PhotoDesk(QObject* parent = nullptr);
    ~PhotoDesk() override;

    /// Reads a photo on another thread; then `picking`, or `problem`.
    Q_INVOKABLE void open(const QUrl& file);
    /// The same with a photo that is read already.
    void show(const QImage& picture);
    Q_INVOKABLE void moveCorner(int corner, QPointF to);
    /// A quarter turn clockwise: the quilt's head comes up.
    Q_INVOKABLE void turn();
    /// The photo becomes the quilt's.
    Q_INVOKABLE void take();
    Q_INVOKABLE void cancel();
    Q_INVOKABLE void removePhoto();
    Q_INVOKABLE void forgetProblem();

    Q_INVOKABLE void setFabric(int index, const QString& colour);
    Q_INVOKABLE void addFabric();
    Q_INVOKABLE void removeFabric(int index);
    Q_INVOKABLE void useUsualFabrics();

    JobEditor* editor() const { return editor_; }
    void setEditor(JobEditor* editor);
    bool hasPhoto() const { return editor_ && !editor_->job().top.photo.empty(); }
    bool busy() const { return busy_; }
    bool picking() const { return !picture_.isNull(); }
    QImage picture() const { return picture_; }
    QList<QPointF> corners() const { return {corners_.begin(), corners_.end()}; }
    bool sound() const { return photo::areCorners(inPixels()); }
    QString problem() const { return problem_; }
    static QStringList nameFilters();
    QStringList fabrics() const;
    bool ownFabrics() const { return editor_ && !editor_->job().top.fabrics.empty(); }
    bool mayAdd() const;
    bool mayRemove() const;
    TableRows* swatches() { return &swatches_; }

signals:
    void changed();
    void pictureChanged();
    void cornersChanged();

private:
    photo::Corners inPixels() const;
    void say(const QString& problem);
    void apply(const QString& what, const std::function<void(bastewright::Top&)>& change);
    void applyFabrics(const QStringList& colours);

    JobEditor* editor_ = nullptr;
    bool busy_ = false;
    int asked_ = 0; ///< how many files were asked for: the newest counts
    QImage picture_;
    photo::Corners corners_;
    QString problem_;
    TableRows swatches_;
    std::jthread reading_;
};

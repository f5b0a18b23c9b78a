#pragma once

#include "planners/surface/arrangement.h"
#include "view/edit/job_editor.h"
#include "view/plan/plan_presenter.h"

#include <QObject>
#include <QRectF>
#include <QtQmlIntegration>

#include <optional>
#include <vector>

/// The tables to scale as they stand, and who keeps to which side of them; moved by a finger.
///
/// Measures are inches of the drawn room: the tables pushed together lie with their longer side
/// left to right, the others in a row below. What is moved becomes a change of the session: which
/// rectangle the tables are pushed together to, walls, tables, the sides people keep to.
class RoomBoard : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the workroom")
    /// atX, atY, wide, deep, apart, size
    Q_PROPERTY(TableRows* tables READ tables CONSTANT)
    /// letter, mark, name, side (as in `Side`; -1: wherever there is work), and the how many-th of
    /// how many at that side
    Q_PROPERTY(TableRows* people READ people CONSTANT)
    Q_PROPERTY(QRectF extent READ extent NOTIFY changed)
    /// The narrowest side of a table, or of the way between those together and the others, inches.
    Q_PROPERTY(qreal narrowest READ narrowest NOTIFY changed)
    Q_PROPERTY(QRectF surface READ surface NOTIFY changed)
    /// The quilt as it lies in the first pass; empty without a plan.
    Q_PROPERTY(QRectF quilt READ quilt NOTIFY changed)
    Q_PROPERTY(QString title READ title NOTIFY changed)
    Q_PROPERTY(QString problem READ problem NOTIFY changed)
    Q_PROPERTY(bool onFloor READ onFloor NOTIFY changed)
    /// The person has said how the tables stand or how the quilt lies.
    Q_PROPERTY(bool asked READ asked NOTIFY changed)
    /// The same tables make another rectangle.
    Q_PROPERTY(bool turns READ turns NOTIFY changed)
    /// Bit n: the side of that number is a wall.
    Q_PROPERTY(int walls READ walls NOTIFY changed)

public:
    enum Side { Head, Foot, Left, Right };
    Q_ENUM(Side)

    RoomBoard(JobEditor* editor, PlanPresenter* plan, QObject* parent = nullptr);

    /// A table was let go with its head-left corner here. Near those pushed together it joins them,
    /// away from them it leaves them; the tables then stand as the rectangle nearest to that.
    Q_INVOKABLE void drop(int table, qreal x, qreal y);
    Q_INVOKABLE void toggleWall(int side);
    Q_INVOKABLE void addTable();
    Q_INVOKABLE void removeTable(int table);
    /// One more of the same kind.
    Q_INVOKABLE void addLike(int table);
    /// Away from those pushed together, and back to them, as by hand.
    Q_INVOKABLE void pullApart(int table);
    Q_INVOKABLE void pushTo(int table);
    /// The next rectangle of the same tables.
    Q_INVOKABLE void turnTables();
    Q_INVOKABLE void turnQuilt();
    Q_INVOKABLE void asIsQuickest();
    /// -1: wherever there is work.
    Q_INVOKABLE void keepTo(int person, int side);
    Q_INVOKABLE QString sideName(int side) const;

    TableRows* tables() { return &rows_; }
    TableRows* people() { return &people_; }
    QRectF extent() const { return extent_; }
    qreal narrowest() const { return narrowest_; }
    QRectF surface() const { return surface_; }
    QRectF quilt() const { return quilt_; }
    QString title() const { return title_; }
    QString problem() const { return problem_; }
    bool onFloor() const { return room().tables.empty(); }
    bool asked() const;
    bool turns() const { return sameTables().size() > 1; }
    int walls() const;

signals:
    void changed();

private:
    struct Standing {
        QRectF place;
        std::size_t kind = 0; ///< in the room's list
        bool apart = false;
    };
    const bastewright::Room& room() const { return editor_->session().setting.room; }
    void refresh();
    void layOut(const bastewright::Arrangement& chosen);
    void showPeople();
    const bastewright::Arrangement* standing() const;
    std::vector<const bastewright::Arrangement*> sameTables() const;
    void pushTogether(const std::vector<int>& kinds, QSizeF wanted);
    void apply(const QString& what, bastewright::Session next);
    void say(const QString& problem);

    JobEditor* editor_;
    PlanPresenter* plan_;
    bastewright::Room seen_;
    std::vector<bastewright::Arrangement> all_; ///< of the tables in `seen_`
    std::vector<Standing> standing_;
    TableRows rows_, people_;
    QRectF extent_, surface_, quilt_;
    qreal narrowest_ = 1;
    QString title_, problem_;
};

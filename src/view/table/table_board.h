#pragma once

#include "view/table/live_controller.h"

/// The pass on the table as tiles and steps: what is tapped during a session.
class TableBoard : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the workroom")
    Q_PROPERTY(int quilt READ quilt WRITE setQuilt NOTIFY changed)
    Q_PROPERTY(QStringList quilts READ quilts NOTIFY changed)
    Q_PROPERTY(int pass READ pass NOTIFY changed)
    Q_PROPERTY(QString passText READ passText NOTIFY changed)
    Q_PROPERTY(int columns READ columns NOTIFY changed)
    Q_PROPERTY(int rows READ rowsOfTiles NOTIFY changed)
    /// Quarter turns of the table as drawn, clockwise; 0 has its far long side at the top.
    Q_PROPERTY(int turn READ turn WRITE setTurn NOTIFY changed)
    /// What is written at the top, right, bottom and left: where the quilt's head and foot are.
    Q_PROPERTY(QStringList edges READ edges NOTIFY changed)
    /// At which of the same four places nobody can stand.
    Q_PROPERTY(QList<bool> walls READ walls NOTIFY changed)
    Q_PROPERTY(TableRows* zones READ zones CONSTANT)
    Q_PROPERTY(QString step READ step NOTIFY changed)
    Q_PROPERTY(QString stepText READ stepText NOTIFY changed)
    Q_PROPERTY(QString stepWho READ stepWho NOTIFY changed)
    Q_PROPERTY(QString caution READ caution NOTIFY changed)
    Q_PROPERTY(bool stepReady READ stepReady NOTIFY changed)
    /// The pass on the table is good and another follows: time to shift.
    Q_PROPERTY(bool shiftNow READ shiftNow NOTIFY changed)
    Q_PROPERTY(bool finished READ finished NOTIFY changed)

public:
    explicit TableBoard(LiveController* live, QObject* parent = nullptr);

    /// A board that nobody sees need not follow; it follows unless told otherwise.
    void setFollowing(bool on);

    int quilt() const { return quilt_; }
    void setQuilt(int quilt);
    QStringList quilts() const;
    int pass() const;
    QString passText() const;
    int columns() const { return columns_; }
    int rowsOfTiles() const { return rows_; }
    int turn() const { return turn_; }
    void setTurn(int turn);
    QStringList edges() const;
    QList<bool> walls() const;
    TableRows* zones() { return &zones_; }

    /// Id of the step to do next; "release" for letting the pass go, "end" for the ending.
    QString step() const { return step_; }
    QString stepText() const { return stepText_; }
    QString stepWho() const { return stepWho_; }
    QString caution() const { return caution_; }
    bool stepReady() const { return stepReady_; }
    bool shiftNow() const;
    /// Everything of this quilt is done.
    bool finished() const { return finished_; }

    /// Reads the session again; happens by itself when it changes.
    void refresh();
    /// Does the step shown.
    Q_INVOKABLE void doStep();

signals:
    void changed();

private:
    /// Quarter turns of the quilt as drawn: 0 has its head at the top.
    int quarter() const;
    /// The quilt's side at a place: 0 top, 1 right, 2 bottom, 3 left.
    bastewright::Side sideAt(int place) const;
    void layTiles();
    void findStep();

    LiveController* live_;
    int quilt_ = 0, turn_ = 0, columns_ = 1, rows_ = 1;
    TableRows zones_;
    QString step_, stepText_, stepWho_, caution_;
    bool stepReady_ = false, finished_ = false, following_ = true;
};

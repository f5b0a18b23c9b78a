#pragma once

#include "view/paint/quilt_face.h"
#include "view/table/live_controller.h"

#include <QHash>

#include <array>

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
    /// The top, and by how many quarter turns, clockwise, it lies from head up.
    Q_PROPERTY(QuiltFace face READ face NOTIFY changed)
    Q_PROPERTY(int quarter READ quarter NOTIFY changed)
    /// The call in force and the one after it; empty where there is none.
    Q_PROPERTY(QString call READ call NOTIFY changed)
    Q_PROPERTY(QString nextCall READ nextCall NOTIFY changed)
    /// The calls of the pass that are not behind, each with its number: `call`, `name`.
    Q_PROPERTY(TableRows* callsAhead READ callsAhead CONSTANT)
    Q_PROPERTY(QString step READ step NOTIFY changed)
    Q_PROPERTY(QString stepText READ stepText NOTIFY changed)
    Q_PROPERTY(QString stepWho READ stepWho NOTIFY changed)
    Q_PROPERTY(QString caution READ caution NOTIFY changed)
    Q_PROPERTY(bool stepReady READ stepReady NOTIFY changed)
    /// One of its questions was answered 'not yet' and may be answered again.
    Q_PROPERTY(bool stepAsksAgain READ stepAsksAgain NOTIFY changed)
    /// The pass on the table is finished and another follows: time to move the quilt.
    Q_PROPERTY(bool shiftNow READ shiftNow NOTIFY changed)
    /// What comes cannot be taken for a mere tick (the release of a pass, the end): it is held.
    Q_PROPERTY(bool stepHeld READ stepHeld NOTIFY changed)
    Q_PROPERTY(bool finished READ finished NOTIFY changed)
    /// All is done and pins came out of the box: they are counted back.
    Q_PROPERTY(bool pinsToCount READ pinsToCount NOTIFY changed)

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
    QuiltFace face() const { return face_; }
    int quarter() const;

    /// Id of the step to do next; "release" for letting the pass go, "end" for the ending.
    QString step() const { return step_; }
    QString stepText() const { return stepText_; }
    QString stepWho() const { return stepWho_; }
    QString caution() const { return caution_; }
    bool stepReady() const { return stepReady_; }
    bool shiftNow() const;
    bool stepAsksAgain() const { return stepAsksAgain_; }
    bool stepHeld() const { return stepHeld_; }
    QString call() const { return call_; }
    QString nextCall() const { return nextCall_; }
    TableRows* callsAhead() { return &callsAhead_; }
    /// Everything of this quilt is done.
    bool finished() const { return finished_; }
    bool pinsToCount() const;

    /// Reads the session again; happens by itself when it changes.
    void refresh();
    /// Does the step shown.
    Q_INVOKABLE void doStep();

signals:
    void changed();

private:
    const bastewright::QuiltPlan* plan() const;
    /// Where a zone's pins go: made once for each plan, so that tiles that stay are not drawn anew.
    const QVariantList& placesOf(const bastewright::Zone& zone);
    void layTiles(const bastewright::Turns& turns);
    void findStep(const bastewright::Turns& turns);
    void findCall(const bastewright::Turns& turns);

    LiveController* live_;
    int quilt_ = 0, turn_ = 0, columns_ = 1, rows_ = 1;
    std::array<bastewright::Side, 4> around_{};
    QuiltFace face_;
    PlannedPtr placed_; ///< the plan `places_` are of
    QHash<QString, QVariantList> places_;
    TableRows zones_, callsAhead_;
    QString step_, stepText_, stepWho_, caution_, call_, nextCall_;
    bool stepReady_ = false, stepHeld_ = false, stepAsksAgain_ = false, finished_ = false,
         following_ = true;
};

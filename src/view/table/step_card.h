#pragma once

#include "view/base/planned.h"
#include "view/table/table_board.h"

/// The next step of the pass in full: what is done, how the quilt lies before and after, how it is
/// held, what to compare, and what has to be answered before the pass is let go.
class StepCard : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the workroom")
    /// There is more to say of the step than its name.
    Q_PROPERTY(bool known READ known NOTIFY changed)
    Q_PROPERTY(QString title READ title NOTIFY changed)
    Q_PROPERTY(QString how READ how NOTIFY changed)
    Q_PROPERTY(QString caution READ caution NOTIFY changed)
    /// What is done, in working order, a sentence each.
    Q_PROPERTY(QStringList lines READ lines NOTIFY changed)
    /// The quilt moves on the table: it is worth seeing before and after.
    Q_PROPERTY(bool moves READ moves NOTIFY changed)
    Q_PROPERTY(PlannedQuilt quilt READ quilt NOTIFY changed)
    Q_PROPERTY(int pass READ pass NOTIFY changed)
    /// What to compare: side, backing over the edge of the table, backing and batting beyond the
    /// top.
    Q_PROPERTY(TableRows* sides READ sides CONSTANT)
    /// The holds of the step as they lie on the table, in working order: `x0`, `y0` (0 … 1 across
    /// and down the table as it is drawn), `round` (from 1; those of one round are set together),
    /// `tape`, `second` (every second one along its side: it may stand farther out).
    Q_PROPERTY(TableRows* holds READ holds CONSTANT)
    /// How near two neighbours along one side are, as a share of that side: of the sides drawn
    /// above and below the table, and of those left and right; 1 where none has a neighbour.
    Q_PROPERTY(qreal nextAcross READ nextAcross NOTIFY changed)
    Q_PROPERTY(qreal nextDown READ nextDown NOTIFY changed)
    /// The rounds there are, ascending; a number that only other passes or steps have is left out.
    Q_PROPERTY(QList<int> rounds READ rounds NOTIFY changed)
    /// What is asked: check, question, cure, answer ("", "yes", "no").
    Q_PROPERTY(TableRows* checks READ checks CONSTANT)
    /// Zones that a 'not yet' may be about: those of the pass that are closed, where the check is
    /// answered so.
    Q_PROPERTY(QStringList toRedo READ toRedo NOTIFY changed)
    /// Something asked is not answered yes yet.
    Q_PROPERTY(bool asks READ asks NOTIFY changed)

public:
    StepCard(LiveController* live, TableBoard* board, QObject* parent = nullptr);

    bool known() const { return known_; }
    QString title() const { return title_; }
    QString how() const { return how_; }
    QString caution() const { return caution_; }
    QStringList lines() const { return lines_; }
    bool moves() const { return moves_; }
    PlannedQuilt quilt() const;
    int pass() const { return pass_; }
    TableRows* sides() { return &sides_; }
    TableRows* holds() { return &holds_; }
    qreal nextAcross() const { return nextAcross_; }
    qreal nextDown() const { return nextDown_; }
    QList<int> rounds() const;
    TableRows* checks() { return &checks_; }
    QStringList toRedo() const { return toRedo_; }
    bool asks() const { return asks_; }

    /// Reports an answer to one of the checks.
    Q_INVOKABLE void answer(const QString& check, bool yes);
    /// The zone has to be closed once more.
    Q_INVOKABLE void redo(const QString& zone);

signals:
    void changed();

private:
    void refresh();
    void describe(const bastewright::Task& task, const bastewright::QuiltPlan& plan,
                  const bastewright::Job& job);
    void ask(const bastewright::Task& task);
    QList<QVariantList> holdsOf(const bastewright::Task& task, const bastewright::Pass& pass) const;
    void lookAlongSides(QList<QVariantList>& holds);

    LiveController* live_;
    TableBoard* board_;
    QString title_, how_, caution_;
    QStringList lines_, toRedo_;
    bool known_ = false, moves_ = false, asks_ = false;
    int pass_ = 1;
    qreal nextAcross_ = 1, nextDown_ = 1;
    TableRows sides_, holds_, checks_;
};

#pragma once

#include "view/plan/plan_presenter.h"
#include "view/table/live_controller.h"

#include <memory>

/// Everybody's work over time, as lanes: of the plan in hand, or at the table of the running
/// session. Holds which piece of work is looked at, and says what, where and why it is.
class LanesBoard : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the workroom")
    Q_PROPERTY(int lanes READ lanes NOTIFY changed)
    Q_PROPERTY(qreal span READ span NOTIFY changed) ///< seconds
    Q_PROPERTY(qreal now READ now NOTIFY changed)   ///< seconds; the start before a session
    Q_PROPERTY(QString chosen READ chosen WRITE setChosen NOTIFY chosenChanged)
    Q_PROPERTY(QString title READ title NOTIFY chosenChanged)
    Q_PROPERTY(QString what READ what NOTIFY chosenChanged)
    Q_PROPERTY(QString zone READ zone NOTIFY chosenChanged) ///< that can be handed over, else ""
    Q_PROPERTY(int quilt READ quilt NOTIFY chosenChanged)
    Q_PROPERTY(bool handed READ handed NOTIFY chosenChanged)
    Q_PROPERTY(TableRows* takers READ takers CONSTANT)

public:
    /// One task in one lane.
    struct Block {
        const bastewright::Task* task = nullptr;
        int lane = 0;
        bool done = false;
    };

    LanesBoard(PlanPresenter* plan, LiveController* live, std::function<std::int64_t()> clock,
               QObject* parent = nullptr);

    void setAtTable(bool atTable);
    int lanes() const { return int(names_.size()); }
    qreal span() const;
    qreal now() const;
    QString chosen() const { return chosen_; }
    void setChosen(const QString& task);
    QString title() const;
    QString what() const;
    QString zone() const;
    int quilt() const;
    bool handed() const;
    TableRows* takers() { return &takers_; }

    /// The next piece of work of the same lane, or of the lane below or above; for keys.
    Q_INVOKABLE void step(int along, int down);

    /// Looks at the first work of a zone that is left; false where there is none.
    Q_INVOKABLE bool chooseZone(int quilt, const QString& zone);

    // For the picture.
    const std::vector<Block>& blocks() const { return blocks_; }
    const QStringList& names() const { return names_; }
    const QStringList& letters() const { return letters_; }
    /// Seconds from the start between which somebody is there.
    std::pair<qreal, qreal> hours(int lane) const;
    bool live() const { return atTable_; }
    QString clockAt(qreal seconds) const;
    /// Minutes past the full hour at the session's start, for the marks of time.
    int startMinute() const;

signals:
    void changed();
    void chosenChanged();

private:
    void refresh();
    const bastewright::Task* task() const;

    PlanPresenter* plan_;
    LiveController* live_;
    std::function<std::int64_t()> clock_;
    bool atTable_ = false;
    PlannedPtr shown_; ///< held: what the running session has in force may be replaced
    std::vector<Block> blocks_;
    QStringList names_, letters_;
    QString chosen_;
    TableRows takers_;
};

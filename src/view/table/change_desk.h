#pragma once

#include "session/change.h"
#include "view/edit/job_editor.h"
#include "view/plan/plan_presenter.h"
#include "view/table/live_controller.h"

#include <functional>
#include <memory>
#include <thread>

/// Something has changed, or somebody would like something else: what it would mean for the plan,
/// shown before anything is taken. Plans on a thread of its own; the newest question wins.
class ChangeDesk : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the workroom")
    /// A question is open: being planned (`busy`), refused, or answered.
    Q_PROPERTY(bool open READ isOpen NOTIFY changed)
    Q_PROPERTY(bool busy READ busy NOTIFY changed)
    Q_PROPERTY(QString title READ title NOTIFY changed)
    Q_PROPERTY(QString refused READ refused NOTIFY changed)
    Q_PROPERTY(QString finishText READ finishText NOTIFY changed)
    Q_PROPERTY(QString meaning READ meaning NOTIFY changed)
    Q_PROPERTY(QStringList changes READ changes NOTIFY changed)
    Q_PROPERTY(QString caution READ caution NOTIFY changed)
    /// True where something has happened whichever plan is kept.
    Q_PROPERTY(bool happened READ happened NOTIFY changed)
    Q_PROPERTY(TableRows* people READ people CONSTANT)
    /// What is left by the old plan and by the new one: `what`, `before`, `after`.
    Q_PROPERTY(TableRows* sides READ sides CONSTANT)
    /// The pins do not last: what helps may be asked for (`widerRows`, `dotsInstead`,
    /// `fewerZones`).
    Q_PROPERTY(bool pinsShort READ pinsShort NOTIFY changed)

public:
    ChangeDesk(JobEditor* editor, PlanPresenter* plan, LiveController* live,
               std::function<std::int64_t()> clock, QObject* parent = nullptr);
    ~ChangeDesk() override;

    /// At the table the running session is asked about, else the plan in hand.
    void setAtTable(bool atTable);
    /// In another language.
    void sayAgain();

    Q_INVOKABLE void comes(const QString& person);
    Q_INVOKABLE void goes(const QString& person);
    Q_INVOKABLE void swaps(const QString& person, const QString& other);
    /// A guest of this name; "Guest" where it is empty.
    Q_INVOKABLE void guestComes(const QString& called = {});
    /// Somebody has to leave at this time ("15:30"); empty: they stay to the end.
    Q_INVOKABLE void leavesAt(const QString& person, const QString& time);
    Q_INVOKABLE void irons(int more);
    Q_INVOKABLE void pins(int more);
    /// The same change of pins, and what is done about it.
    Q_INVOKABLE void widerRows();
    Q_INVOKABLE void dotsInstead();
    Q_INVOKABLE void fewerZones();
    Q_INVOKABLE void tables(int more);
    Q_INVOKABLE void abandonPass(int quilt);
    Q_INVOKABLE void goOn();
    /// The session begins later than planned: everything from now, with everybody's hours as they
    /// are.
    Q_INVOKABLE void beginsNow();
    Q_INVOKABLE void planAgain();
    /// An empty person gives the zone back to whoever is best.
    Q_INVOKABLE void handOver(int quilt, const QString& zone, const QString& person);

    /// Takes the new plan, with what has happened.
    Q_INVOKABLE void accept();
    /// Keeps the old plan; what has happened is reported all the same.
    Q_INVOKABLE void keep();
    /// Nothing has happened.
    Q_INVOKABLE void cancel();

    bool isOpen() const { return open_; }
    bool busy() const { return open_ && !answer_; }
    QString title() const { return title_; }
    QString refused() const;
    QString finishText() const;
    QString meaning() const;
    QStringList changes() const;
    QString caution() const { return caution_; }
    bool happened() const { return answer_ && !answer_->proposal.facts.empty(); }
    TableRows* people() { return &people_; }
    TableRows* sides() { return &sides_; }
    bool pinsShort() const;

signals:
    void changed();
    void accepted();

private:
    struct Answer {
        bastewright::Proposal proposal;
        bastewright::What acceptance;
    };
    using Question = std::function<Answer(std::stop_token)>;

    void ask(const QString& title, bastewright::Change change, const QString& caution = {});
    void begin(const QString& title, Question question);
    void run(Question question);
    void finished(std::shared_ptr<Answer> answer);
    bool reportFacts();
    void showPeople();
    void showSides();
    void helpPins(const QString& title, bastewright::Change::ForPins how);
    QString at(bastewright::Seconds s) const;

    JobEditor* editor_;
    PlanPresenter* plan_;
    LiveController* live_;
    std::function<std::int64_t()> clock_;
    TableRows people_, sides_;
    int pins_ = 0;                        ///< how many more, of the last change of pins
    bool ofPins_ = false, helps_ = false; ///< the question is about pins; what helps is asked
    QString title_, caution_;
    bool open_ = false, atTable_ = false, working_ = false;
    std::shared_ptr<Answer> answer_;
    bastewright::Plan before_;
    bastewright::Session sessionBefore_;
    Question next_;
    std::jthread worker_;
};

#pragma once

#include "store/library.h"
#include "view/base/comfort.h"
#include "view/edit/guide_desk.h"
#include "view/edit/job_editor.h"
#include "view/edit/kept_desk.h"
#include "view/edit/top_desk.h"
#include "view/paper/learnt_paces.h"
#include "view/paper/record_book.h"
#include "view/paper/sheets_writer.h"
#include "view/plan/layers_presenter.h"
#include "view/plan/pass_presenter.h"
#include "view/plan/people_desk.h"
#include "view/plan/plan_presenter.h"
#include "view/plan/rehearsal.h"
#include "view/plan/remedies.h"
#include "view/plan/replanner.h"
#include "view/plan/room_board.h"
#include "view/plan/rows_desk.h"
#include "view/plan/way_desk.h"
#include "view/plan/why_desk.h"
#include "view/shelf/shelf_model.h"
#include "view/table/change_desk.h"
#include "view/table/lanes_board.h"
#include "view/table/live_controller.h"
#include "view/table/step_card.h"
#include "view/table/table_board.h"

#include <QObject>
#include <QTimer>
#include <QtQmlIntegration>

/// Puts the parts of the application together and holds what none of them does: which screen is
/// open, which job is in hand, and that a change is stored and planned.
class Workroom : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the application")
    Q_PROPERTY(Screen screen READ screen NOTIFY screenChanged)
    Q_PROPERTY(QString notice READ notice NOTIFY noticeChanged)
    Q_PROPERTY(bool inSession READ inSession NOTIFY screenChanged)
    Q_PROPERTY(ShelfModel* shelf READ shelf CONSTANT)
    Q_PROPERTY(JobEditor* editor READ editor CONSTANT)
    Q_PROPERTY(KeptDesk* kept READ kept CONSTANT)
    Q_PROPERTY(GuideDesk* guide READ guide CONSTANT)
    Q_PROPERTY(PeopleDesk* crew READ crew CONSTANT)
    Q_PROPERTY(PlanPresenter* plan READ plan CONSTANT)
    Q_PROPERTY(PassPresenter* pass READ pass CONSTANT)
    Q_PROPERTY(LiveController* live READ live CONSTANT)
    Q_PROPERTY(TableBoard* board READ board CONSTANT)
    /// The table as somebody at the opposite side sees it.
    Q_PROPERTY(TableBoard* farBoard READ farBoard CONSTANT)
    Q_PROPERTY(StepCard* step READ step CONSTANT)
    Q_PROPERTY(SheetsWriter* sheets READ sheets CONSTANT)
    Q_PROPERTY(LearntPaces* learnt READ learnt CONSTANT)
    Q_PROPERTY(RecordBook* record READ record CONSTANT)
    Q_PROPERTY(Comfort* comfort READ comfort CONSTANT)
    Q_PROPERTY(LayersPresenter* layers READ layers CONSTANT)
    Q_PROPERTY(LanesBoard* lanes READ lanes CONSTANT)
    Q_PROPERTY(Rehearsal* rehearsal READ rehearsal CONSTANT)
    Q_PROPERTY(ChangeDesk* desk READ desk CONSTANT)
    Q_PROPERTY(TopDesk* top READ top CONSTANT)
    Q_PROPERTY(RoomBoard* tables READ tables CONSTANT)
    Q_PROPERTY(WayDesk* ways READ ways CONSTANT)
    Q_PROPERTY(RowsDesk* rows READ rows CONSTANT)
    Q_PROPERTY(WhyDesk* why READ why CONSTANT)
    Q_PROPERTY(Remedies* remedies READ remedies CONSTANT)

public:
    enum class Screen { Shelf, Guide, Planning, AtTable };
    Q_ENUM(Screen)

    struct Setup {
        PlanFunction plan;
        LiveController::Clock clock;
        QString sheetsFolder;
        QString comfortFile; ///< empty: nothing is kept
        qreal density = 4;   ///< pixels in a millimetre, as the screen reports
    };

    /// The library must live longer.
    Workroom(bastewright::Library* library, const Setup& setup, QObject* parent = nullptr);
    ~Workroom() override;

    /// Goes back to where the person was when the application last closed.
    void returnToLast();

    /// Begins a quilt and opens the guide for it.
    Q_INVOKABLE void beginQuilt();
    /// From the guide to the plan; people are kept where that was asked for.
    Q_INVOKABLE void finishGuide();
    /// From the guide to the shelf; a quilt that was begun and never touched is gone again.
    Q_INVOKABLE void leaveGuide();
    Q_INVOKABLE void openJob(qint64 job);
    Q_INVOKABLE void backToShelf();
    Q_INVOKABLE void backToPlan();
    /// Starts a session with the plan shown, or goes on with the one that is running.
    Q_INVOKABLE void goToTable();
    /// Shows the sheets of the plan shown, or at the table of the one in force; `sheetsWanted`.
    Q_INVOKABLE void openSheets();
    Q_INVOKABLE void forgetNotice();

    /// Shows a sentence across whatever screen is open; empty takes it away.
    void say(const QString& notice);

    Screen screen() const { return screen_; }
    QString notice() const { return notice_; }
    /// A session of the job in hand is running.
    bool inSession() const;
    ShelfModel* shelf() { return &shelf_; }
    JobEditor* editor() { return &editor_; }
    KeptDesk* kept() { return &kept_; }
    GuideDesk* guide() { return &guide_; }
    PeopleDesk* crew() { return &crew_; }
    PlanPresenter* plan() { return &plan_; }
    PassPresenter* pass() { return &pass_; }
    LiveController* live() { return &live_; }
    TableBoard* board() { return &board_; }
    TableBoard* farBoard() { return &farBoard_; }
    StepCard* step() { return &step_; }
    SheetsWriter* sheets() { return &sheets_; }
    LearntPaces* learnt() { return &learnt_; }
    RecordBook* record() { return &record_; }
    Comfort* comfort() { return &comfort_; }
    LayersPresenter* layers() { return &layers_; }
    LanesBoard* lanes() { return &lanes_; }
    Rehearsal* rehearsal() { return &rehearsal_; }
    ChangeDesk* desk() { return &desk_; }
    TopDesk* top() { return &top_; }
    RoomBoard* tables() { return &tables_; }
    WayDesk* ways() { return &ways_; }
    RowsDesk* rows() { return &rows_; }
    WhyDesk* why() { return &why_; }
    Remedies* remedies() { return &remedies_; }

signals:
    void screenChanged();
    void noticeChanged();
    void sheetsWanted();

private:
    void show(Screen screen);
    void store();
    void replan();
    void planned(const PlannedPtr& planned);
    void sayAllAgain();
    bool take(bastewright::JobId job);
    bastewright::SessionId runningSession(bastewright::JobId job) const;

    bastewright::Library* library_;
    Comfort comfort_;
    ShelfModel shelf_;
    JobEditor editor_;
    KeptDesk kept_;
    GuideDesk guide_;
    PlanPresenter plan_;
    PeopleDesk crew_;
    PassPresenter pass_;
    LiveController live_;
    TableBoard board_, farBoard_;
    StepCard step_;
    SheetsWriter sheets_;
    RecordBook record_;
    LearntPaces learnt_;
    LayersPresenter layers_;
    LanesBoard lanes_;
    Rehearsal rehearsal_;
    ChangeDesk desk_;
    TopDesk top_;
    RoomBoard tables_;
    WayDesk ways_;
    RowsDesk rows_;
    WhyDesk why_;
    Remedies remedies_;
    Replanner replanner_;
    QTimer settle_;
    bastewright::JobId job_ = 0;
    bastewright::JobId begun_ = 0; ///< begun and still in the guide; 0 for none
    std::string stored_;           ///< the job as the library has it
    bool unstored_ = false;        ///< the library has refused the last change
    Screen screen_ = Screen::Shelf;
    QString notice_;
};

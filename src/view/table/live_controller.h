#pragma once

#include "session/live_session.h"
#include "store/library.h"
#include "view/base/planned.h"
#include "view/base/table_rows.h"

#include <QObject>
#include <QSet>
#include <QTimer>
#include <QtQmlIntegration>

#include <functional>
#include <optional>

namespace bastewright {
struct Way;
}

/// A running session: reports what happens at the table to the library and shows where it stands.
/// Nothing changes on the screen before the library has stored it. What is shown is what the
/// library holds, in the library's order, so that several windows on one session keep in step: what
/// another one stores is taken in within `kLookMs`, and before anything is stored here.
class LiveController : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the workroom")
    Q_PROPERTY(bool open READ isOpen NOTIFY changed)
    Q_PROPERTY(double sessionId READ number NOTIFY changed) ///< 0 where none is open
    Q_PROPERTY(bool ended READ ended NOTIFY changed)
    Q_PROPERTY(bool paused READ paused NOTIFY changed)
    /// "On a break since 14:05"; empty while there is none.
    Q_PROPERTY(QString pausedText READ pausedText NOTIFY changed)
    /// The break began on another day.
    Q_PROPERTY(bool anotherDay READ anotherDay NOTIFY changed)
    /// The session began so many minutes later than planned, nothing is done yet, and the plan is
    /// still the old one; else 0.
    Q_PROPERTY(int lateMinutes READ lateMinutes NOTIFY changed)
    /// What is done and what is open, and which pass lies on the table.
    Q_PROPERTY(QString openText READ openText NOTIFY changed)
    Q_PROPERTY(QString liesText READ liesText NOTIFY changed)
    Q_PROPERTY(QString title READ title NOTIFY changed)
    Q_PROPERTY(qreal progress READ progress NOTIFY changed)
    Q_PROPERTY(QString progressText READ progressText NOTIFY changed)
    Q_PROPERTY(QString pinsText READ pinsText NOTIFY changed)
    /// In the box, in the quilt, back in the box: a line each; none for dots alone.
    Q_PROPERTY(QStringList pinsLines READ pinsLines NOTIFY changed)
    /// Pins are taken from a box in this session; dots are pressed in it, or may stand in for pins.
    Q_PROPERTY(bool withPins READ withPins NOTIFY changed)
    Q_PROPERTY(bool withIrons READ withIrons NOTIFY changed)
    /// What has to be so while there is a break, and before the hall is left.
    Q_PROPERTY(QString breakText READ breakText NOTIFY changed)
    Q_PROPERTY(QString nightText READ nightText NOTIFY changed)
    Q_PROPERTY(QString pinsNotice READ pinsNotice NOTIFY changed)
    Q_PROPERTY(QString finishText READ finishText NOTIFY changed)
    Q_PROPERTY(QString finishAbout READ finishAbout NOTIFY changed) ///< the same without the range
    Q_PROPERTY(QString finishClock READ finishClock NOTIFY changed) ///< empty once it has ended
    /// What is worth knowing, the most useful first: `key` to put it away by, `words`, and
    /// whether it is about `pins` that do not last.
    Q_PROPERTY(TableRows* hints READ hints CONSTANT)
    Q_PROPERTY(bool canUndo READ canUndo NOTIFY changed)
    Q_PROPERTY(bool canRedo READ canRedo NOTIFY changed)
    Q_PROPERTY(QString undoText READ undoText NOTIFY changed)
    Q_PROPERTY(QString problem READ problem NOTIFY problemChanged)
    /// The problem is a tap whose time has not come: nothing is wrong, and whoever leads may say
    /// that it was done otherwise.
    Q_PROPERTY(bool early READ early NOTIFY problemChanged)
    Q_PROPERTY(TableRows* people READ people CONSTANT)
    /// How many of them are there and wait for nobody.
    Q_PROPERTY(int busy READ busy NOTIFY changed)
    /// Written down at the table, the latest first: `noteId`, `time` of day, `words`.
    Q_PROPERTY(TableRows* notes READ notes CONSTANT)

public:
    using Clock = std::function<std::int64_t()>; ///< milliseconds since 1970
    static constexpr int kLookMs = 250;          ///< how often other windows are looked for
    /// Taps on the same thing within this are one tap.
    static constexpr int kOneTapMs = 500;
    /// So long after the last report the library's log is taken into its file.
    static constexpr int kIdleMs = 2000;

    LiveController(bastewright::Library* library, Clock clock, QObject* parent = nullptr);

    /// Starts a session of a job; false with `problem` set where the library could not keep it.
    bool start(bastewright::JobId job, const Planned& planned);
    /// Takes up a session where it was left.
    bool resume(bastewright::SessionId id);
    void close();

    bastewright::SessionId id() const { return id_; }
    double number() const { return double(id_); }
    bastewright::JobId job() const { return job_; }
    const bastewright::LiveSession* live() const { return live_ ? &*live_ : nullptr; }

    /// Shows everything anew: time has passed, or another language is spoken.
    void refresh();

    /// Reports something; false, with `problem` set, where it was not stored or does not fit.
    bool report(bastewright::What what);
    /// Asks the session whether the tap counts, and reports it if so; else says why not. A second
    /// tap on the same thing within `kOneTapMs` is part of the first.
    bool tap(const bastewright::Tap& tap);
    /// The same, made on another device and under the id it was given there; the same id again
    /// changes nothing. Returns why it does not count, for the person there, else nothing.
    QString tapFromElsewhere(const bastewright::Tap& tap, const std::string& id);
    /// Takes back somebody's last tick of a zone, while its call is in force; returns why not.
    QString takeBackOwn(const std::string& person, const std::string& id);

    Q_INVOKABLE void tick(int quilt, const QString& zone);
    Q_INVOKABLE void takeBack(int quilt, const QString& zone);
    Q_INVOKABLE void stepDone(int quilt, const QString& task);
    Q_INVOKABLE void release(int quilt, int pass);
    /// What was refused as too early was done all the same: it is reported as it is.
    Q_INVOKABLE void doneOtherwise();
    /// Everything of the pass up to a call is done, `call` being its number in `bastewright::Call`,
    /// and was so `minutesAgo`.
    Q_INVOKABLE void doneUpTo(int quilt, int call, int minutesAgo);
    Q_INVOKABLE void undo();
    Q_INVOKABLE void redo();
    Q_INVOKABLE void setPresent(const QString& person, bool here);
    Q_INVOKABLE void setPaused(bool paused);
    Q_INVOKABLE void pinsFound(int count);
    Q_INVOKABLE void pinsBack(int count);
    /// So many are in the box now, counted.
    Q_INVOKABLE void pinsInBox(int count);
    /// Writes something down; false, with `problem` set, where it could not be kept.
    Q_INVOKABLE bool note(const QString& said);
    Q_INVOKABLE void takeBackNote(const QString& noteId);
    /// Ends the session; `open` also where work is left.
    Q_INVOKABLE void end(bool open = false);
    Q_INVOKABLE void forgetProblem();
    /// Read and not to be shown again while it lasts.
    Q_INVOKABLE void putAway(const QString& hint);

    bool isOpen() const { return live_.has_value(); }
    /// The session with the plan in force; null where none is open.
    PlannedPtr planned() const { return planned_; }
    bool ended() const;
    bool paused() const;
    QString pausedText() const;
    bool anotherDay() const;
    int lateMinutes() const;
    QString openText() const;
    QString liesText() const;
    QString title() const;
    qreal progress() const;
    QString progressText() const;
    QString pinsText() const;
    QStringList pinsLines() const;
    bool withPins() const;
    bool withIrons() const;
    QString breakText() const;
    QString nightText() const;
    QString pinsNotice() const;
    QString finishText() const;
    QString finishAbout() const;
    QString finishClock() const { return finish().about; }
    bool canUndo() const;
    bool canRedo() const;
    QString undoText() const;
    QString problem() const { return problem_; }
    bool early() const { return early_.has_value(); }
    TableRows* people() { return &people_; }
    int busy() const;
    const TableRows* people() const { return &people_; }
    TableRows* notes() { return &notes_; }
    TableRows* hints() { return &hints_; }

signals:
    void changed();
    void problemChanged();

private:
    /// Times of day; all empty before it begins and once it has ended.
    struct Finish {
        QString about, early, late;
    };
    Finish finish() const;
    /// A thousand simulated afternoons, kept for all who ask until the next change or minute.
    const bastewright::Forecast& expected() const;
    /// How the session's quilts are basted, each way once.
    std::vector<const bastewright::Way*> ways() const;
    void begin();
    /// A session whose first event was not stored (its disk was full, say) begins now.
    bool beginIfNotBegun();
    /// Stores the event and shows it; returns why not, else nothing.
    QString keep(const bastewright::Event& event);
    /// Shows what has been stored since, by whoever; returns why `own` does not count, else
    /// nothing.
    QString takeIn(const std::string& own = {});
    /// The same, where another window has stored something.
    void takeInOthers();
    void takeBackEvent(const std::string& id);
    QList<QVariantList> noteRows() const;
    QList<QVariantList> hintRows();
    void say(const QString& problem);
    bool isSameTap(const std::string& thing);
    QList<QVariantList> peopleRows() const;

    bastewright::Library* library_;
    Clock clock_;
    bastewright::SessionId id_ = 0;
    bastewright::JobId job_ = 0;
    std::optional<bastewright::LiveSession> live_;
    PlannedPtr planned_;      ///< what of `live_` is in force
    int plannedRevision_ = 0; ///< of `live_`, when `planned_` was copied from it
    QString problem_;
    std::optional<bastewright::Tap> early_;
    std::string lastTapped_; ///< the thing of the last tap that counted, and when
    std::int64_t lastTapMs_ = 0;
    TableRows people_, notes_, hints_;
    mutable std::optional<bastewright::Forecast> expected_; ///< of this minute; none after a change
    mutable std::int64_t expectedMinute_ = 0;               ///< since 1970
    QSet<QString> putAway_;
    QTimer minute_, look_, idle_;
    std::int64_t seen_ = 0;     ///< the last event taken in, by its number in the library
    std::int64_t revision_ = 0; ///< of the library, when others were last looked for
};

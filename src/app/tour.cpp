#include "app/tour.h"

#include "app/event_turn.h"
#include "app/taken_photo.h"
#include "view/photo/photo_desk.h"

#include <QCoreApplication>
#include <QElapsedTimer>
#include <QFileInfo>
#include <QQuickItem>

namespace bastewright::app {
namespace {

constexpr int kPlanMs = 120'000;  // generous: large quilts on slow machines
constexpr int kMostSteps = 2'000; // of a session, far above any real one

/// Reports the first thing that may be ticked; false where there is none.
bool tickNext(LiveController& live, int quilt) {
    const auto turns = live.live()->turns();
    for (const auto& next : turns.nextSteps(quilt)) {
        if (!next.ready)
            continue;
        using Kind = NextStep::Kind;
        const Tap tap{.what = next.kind == Kind::zone      ? Tap::What::zone
                              : next.kind == Kind::step    ? Tap::What::step
                              : next.kind == Kind::release ? Tap::What::release
                                                           : Tap::What::end,
                      .job = quilt,
                      .zone = next.zone,
                      .task = next.task,
                      .pass = next.pass};
        return live.report(turns.mayTick(tap).what);
    }
    return false;
}

/// False where it takes too long.
template <class Busy>
bool waitWhile(Busy busy) {
    QElapsedTimer timer;
    timer.start();
    while (busy()) {
        if (timer.elapsed() > kPlanMs)
            return false;
        live(20);
    }
    return true;
}

} // namespace

QObject* Tour::find(QObject* root, const QString& name) {
    if (root->objectName() == name)
        return root;
    if (const auto* item = qobject_cast<QQuickItem*>(root))
        for (auto* child : item->childItems())
            if (auto* found = find(child, name))
                return found;
    for (auto* child : root->children())
        if (!qobject_cast<QQuickItem*>(child))
            if (auto* found = find(child, name))
                return found;
    return nullptr;
}

Tour::Tour(OpenRoom& room, int stillMs)
    : room_{room}
    , stillMs_{stillMs} {}

void Tour::stop(const QString& name, const AtStop& atStop) {
    live(atStop ? stillMs_ : 60);
    if (atStop)
        atStop(name);
}

bool Tour::planned() {
    auto& plan = *room_.workroom->plan();
    return waitWhile([&] { return plan.busy() || !plan.isPlanned(); });
}

QString Tour::walk(const AtStop& atStop) {
    auto& room = *room_.workroom;
    stop(QStringLiteral("shelf-empty"), atStop);
    guide(atStop);
    const auto example = room.shelf()->addExample(0);
    const auto job =
        job_.isEmpty()
            ? example
            : room.shelf()->openFile(QUrl::fromLocalFile(QFileInfo{job_}.absoluteFilePath()));
    if (job == 0)
        return room.shelf()->problem();
    for (const int other : {1, 2})
        room.shelf()->addExample(other);
    stop(QStringLiteral("shelf-examples-open"), atStop);
    for (const int other : {1, 2})
        room.shelf()->remove(room.shelf()->addExample(other)); // the same card
    room.shelf()->forgetRemoved();
    room.shelf()->copy(example);
    room.shelf()->remove(room.shelf()->addNew(room.kept()->usual()));
    stop(QStringLiteral("shelf"), atStop);
    room.shelf()->undoRemove();
    overlay("examples", QStringLiteral("shelf-examples"), atStop);
    overlay("shareSheet", QStringLiteral("shelf-share"), atStop,
            {{QStringLiteral("name"), room.shelf()->index(0).data(ShelfModel::TitleRole)}});

    room.openJob(job);
    if (!planned())
        return QStringLiteral("No plan came within two minutes.");
    stop(QStringLiteral("plan"), atStop);
    for (int pass = 2; pass <= std::min(3, room.pass()->count()); ++pass) {
        room.pass()->setNumber(pass);
        stop(QStringLiteral("plan-pass%1").arg(pass), atStop);
    }
    room.pass()->stepZone(1);
    stop(QStringLiteral("plan-zone"), atStop);
    room.pass()->setZone({});
    room.pass()->setNumber(1);
    auto* panel = find(room_.window->contentItem(), QStringLiteral("panel"));
    if (!panel)
        return QStringLiteral("The planning screen did not open.");
    panes(*panel, atStop);
    overlay("comfort", QStringLiteral("comfort"), atStop);
    sheets(atStop);
    if (!room.plan()->good())
        return {};
    session(atStop);
    room.backToShelf();
    stop(QStringLiteral("shelf-after"), atStop);
    return {};
}

void Tour::panes(QObject& panel, const AtStop& atStop) {
    for (const char* pane : {"pass", "findings", "figures", "ways", "bring", "who", "quilt",
                             "basting", "layers", "room", "people", "boxes"}) {
        panel.setProperty("pane", QString::fromLatin1(pane));
        stop(QStringLiteral("pane-") + QLatin1String(pane), atStop);
        if (qstrcmp(pane, "layers") == 0)
            layers(atStop);
        pictures(panel, QString::fromLatin1(pane), atStop);
        pads(panel, QString::fromLatin1(pane), atStop);
    }
    for (const char* pane : {"lanes", "rehearsal"}) {
        panel.setProperty("pane", QString::fromLatin1(pane));
        auto& room = *room_.workroom;
        room.rehearsal()->setMoment(room.rehearsal()->span() * 0.45);
        for (int k = 0; k < 40 && room.lanes()->zone().isEmpty(); ++k)
            room.lanes()->step(1, 0);
        stop(QStringLiteral("pane-") + QLatin1String(pane), atStop);
        if (!room.lanes()->zone().isEmpty() && qstrcmp(pane, "lanes") == 0)
            overlay("takersSheet", QStringLiteral("pane-takers"), atStop);
    }
    panel.setProperty("pane", QString{});
}

/// A value of every kind being changed.
void Tour::pads(QObject& panel, const QString& pane, const AtStop& atStop) {
    const struct {
        const char *pane, *field, *stop;
    } all[] = {{"quilt", "field-width0", "pad-length"},
               {"quilt", "field-name", "pad-text"},
               {"quilt", "field-method", "pad-choice"},
               {"people", "field-helper0/from", "pad-time"},
               {"people", "field-helper0/pace", "pad-number"},
               {"room", "field-irons", "pad-count"}};
    for (const auto& pad : all) {
        if (pane != QLatin1String(pad.pane))
            continue;
        auto* people = find(&panel, QStringLiteral("peoplePane"));
        if (people && people->property("opened").toInt() < 0) {
            people->setProperty("opened", 0);
            stop(QStringLiteral("pane-person"), atStop);
        }
        auto* tile = find(&panel, QLatin1String(pad.field));
        if (!tile)
            continue;
        QMetaObject::invokeMethod(tile, "clicked");
        stop(QLatin1String(pad.stop), atStop);
        if (auto* editor = find(&panel, QStringLiteral("fieldEditor")))
            QMetaObject::invokeMethod(editor, "close");
    }
}

/// What is touched beside the fields.
void Tour::pictures(QObject& panel, const QString& pane, const AtStop& atStop) {
    auto& room = *room_.workroom;
    if (pane == QLatin1String("quilt")) {
        auto* view = find(room_.window->contentItem(), QStringLiteral("topView"));
        if (!view)
            return;
        view->setProperty("crooked", true);
        stop(QStringLiteral("top-crooked"), atStop);
        view->setProperty("crooked", false);
        overlay("clothSheet", QStringLiteral("quilt-cloth"), atStop);
        if (auto* photos = room_.window->findChild<PhotoDesk*>()) {
            photos->show(takenPhoto(room.editor()->job().top));
            stop(QStringLiteral("quilt-photo"), atStop);
            photos->cancel();
        }
    } else if (pane == QLatin1String("ways")) {
        panel.setProperty("sideBySide", true);
        stop(QStringLiteral("ways-side-by-side"), atStop);
        panel.setProperty("sideBySide", false);
    } else if (pane == QLatin1String("basting")) {
        room.rows()->step(1);
        stop(QStringLiteral("basting-rows"), atStop);
        room.rows()->close();
    } else if (pane == QLatin1String("figures")) {
        room.why()->open(QStringLiteral("passes"));
        overlay("whySheet", QStringLiteral("why"), atStop);
    } else if (pane == QLatin1String("room")) {
        press("table0");
        stop(QStringLiteral("room-handles"), atStop);
        press("table0");
    } else if (pane == QLatin1String("people")) {
        room.tables()->keepTo(0, RoomBoard::Foot);
        stop(QStringLiteral("people-at-a-side"), atStop);
        room.editor()->undo();
        planned();
    } else if (pane == QLatin1String("findings")) {
        const auto findings = room.remedies()->findings()->rows();
        for (int i = 0; i < findings.size(); ++i) {
            if (findings[i][3].toString().isEmpty())
                continue;
            room.remedies()->cure(i, 0);
            planned();
            stop(QStringLiteral("trial"), atStop);
            room.remedies()->takeBack();
            planned();
            break;
        }
    }
}

void Tour::sheets(const AtStop& atStop) {
    auto& room = *room_.workroom;
    room.openSheets();
    auto& preview = *room.sheets()->preview();
    const auto drawing = [&] { return !preview.isDrawn(); };
    waitWhile(drawing);
    overlay("printSheet", QStringLiteral("print"), atStop);
    preview.stepPart(1);
    preview.setColour(false);
    waitWhile(drawing);
    overlay("printSheet", QStringLiteral("print-helper"), atStop);
    preview.setColour(true);
}

void Tour::layers(const AtStop& atStop) {
    auto* view = find(room_.window->contentItem(), QStringLiteral("layersView"));
    for (const char* tab : {"cloth", "backing", "batting", "spare", "choices"}) {
        if (view)
            view->setProperty("tab", QString::fromLatin1(tab));
        stop(QStringLiteral("layers-") + QLatin1String(tab), atStop);
    }
    auto& layers = *room_.workroom->layers();
    const int chosen = layers.shown();
    layers.setShown(chosen == 0 ? 1 : 0);
    stop(QStringLiteral("layers-looked-at"), atStop);
    layers.setShown(chosen);
}

void Tour::overlay(const char* name, const QString& stopName, const AtStop& atStop,
                   const QVariantMap& about) {
    auto* sheet = find(room_.window->contentItem(), QLatin1String(name));
    if (!sheet)
        sheet = room_.window->findChild<QObject*>(QLatin1String(name));
    if (sheet) {
        QMetaObject::invokeMethod(sheet, "open");
        for (const auto& [property, value] : about.asKeyValueRange())
            sheet->setProperty(property.toLatin1(), value);
        stop(stopName, atStop);
        QMetaObject::invokeMethod(sheet, "close");
        live(60);
    }
}

void Tour::changes(const AtStop& atStop) {
    auto& room = *room_.workroom;
    const auto present = room.live()->live()->state().present;
    overlay("changesSheet", QStringLiteral("table-changes"), atStop);
    for (const char* page : {"comes", "goes", "pins", "night"})
        overlay("changesSheet", QStringLiteral("table-changes-") + QLatin1String(page), atStop,
                {{QStringLiteral("page"), QLatin1String(page)}});
    overlay("whoSheet", QStringLiteral("table-who"), atStop);
    overlay("otherwiseSheet", QStringLiteral("table-otherwise"), atStop);
    overlay("endSheet", QStringLiteral("table-end"), atStop);
    if (auto* record = find(room_.window->contentItem(), QStringLiteral("tableRecord"))) {
        record->parent()->setProperty("over", QStringLiteral("record"));
        stop(QStringLiteral("table-record"), atStop);
        record->parent()->setProperty("over", QString{});
    }
    if (room.live()->hints()->count() > 0)
        overlay("hintSheet", QStringLiteral("table-hint"), atStop);
    if (auto* lanes = find(room_.window->contentItem(), QStringLiteral("tableLanes"))) {
        lanes->parent()->setProperty("over", QStringLiteral("lanes"));
        for (int k = 0; k < 80 && room.lanes()->zone().isEmpty(); ++k)
            room.lanes()->step(1, 0);
        stop(QStringLiteral("table-lanes"), atStop);
        overlay("laneDetail", QStringLiteral("table-lane-detail"), atStop);
        if (!room.lanes()->zone().isEmpty())
            overlay("takersSheet", QStringLiteral("table-takers"), atStop);
        lanes->parent()->setProperty("over", QString{});
    }
    if (auto* notes = find(room_.window->contentItem(), QStringLiteral("tableNotes"))) {
        notes->parent()->setProperty("over", QStringLiteral("notes"));
        stop(QStringLiteral("table-notes-none"), atStop);
        room.live()->note(QCoreApplication::translate(
            "Tour", "A seam has opened at the edge: mend it before quilting."));
        stop(QStringLiteral("table-notes"), atStop);
        room.live()->undo();
        notes->parent()->setProperty("over", QString{});
    }
    if (present.size() < 2)
        return;
    const auto who = QString::fromStdString(*present.rbegin());
    const auto thinking = [&] { return room.desk()->busy(); };
    room.desk()->tables(-1);
    waitWhile(thinking);
    stop(QStringLiteral("table-less"), atStop);
    room.desk()->cancel();
    room.desk()->pins(-60);
    waitWhile(thinking);
    stop(QStringLiteral("table-pins-short"), atStop);
    room.desk()->cancel();
    room.desk()->goes(who);
    waitWhile(thinking);
    stop(QStringLiteral("table-leaves"), atStop);
    room.desk()->accept();
    live(stillMs_);
    room.live()->undo(); // the new plan
    room.live()->undo(); // and that somebody left
}

void Tour::session(const AtStop& atStop) {
    auto& room = *room_.workroom;
    room.goToTable();
    stop(QStringLiteral("table-start"), atStop);
    overlay("stepSheet", QStringLiteral("table-step"), atStop);
    auto& board = *room.board();
    bool middle = false, asked = false, moved = false, held = false;
    for (int step = 0; step < kMostSteps && !room.live()->ended(); ++step) {
        if (room.step()->asks() && room.step()->checks()->count() == 1) {
            overlay("stepSheet", QStringLiteral("table-cautions"), atStop);
            room.step()->answer(QStringLiteral("cautions"), true);
        } else if (!asked && room.step()->asks()) {
            asked = true;
            room.step()->answer(QStringLiteral("palm-glides"), true);
            room.step()->answer(QStringLiteral("spare"), false);
            overlay("stepSheet", QStringLiteral("table-check"), atStop);
            room.step()->answer(QStringLiteral("spare"), true);
        }
        if (!held && room.step()->rounds().size() > 1) {
            held = true;
            if (auto* holds = find(room_.window->contentItem(), QStringLiteral("holds")))
                holds->setProperty("done", 1);
            stop(QStringLiteral("table-holds"), atStop);
        }
        if (!moved && room.step()->moves()) {
            moved = true;
            overlay("stepSheet", QStringLiteral("table-shift"), atStop);
        }
        if (!tickNext(*room.live(), board.quilt())) {
            if (board.quilt() + 1 >= board.quilts().size())
                break;
            board.setQuilt(board.quilt() + 1);
        }
        takeTurn();
        if (!middle && room.live()->progress() > 0.3) {
            middle = true;
            stop(QStringLiteral("table-middle"), atStop);
            overlay("moreSheet", QStringLiteral("table-more"), atStop);
            overlay("countSheet", QStringLiteral("table-count"), atStop);
            changes(atStop);
            room.comfort()->setFaceToFace(true);
            stop(QStringLiteral("table-facing"), atStop);
            room.comfort()->setFaceToFace(false);
            overlay("phoneSheet", QStringLiteral("table-phones-off"), atStop);
            room_.phones->choose(QStringLiteral("127.0.0.1"));
            room_.phones->setOn(true);
            overlay("phoneSheet", QStringLiteral("table-phones"), atStop);
            room_.phones->setOn(false);
        }
    }
    stop(QStringLiteral("table-done"), atStop);
}

} // namespace bastewright::app

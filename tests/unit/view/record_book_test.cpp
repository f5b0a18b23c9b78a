#include "job/job_json.h"
#include "plan/plan_json.h"
#include "unit/session/table_cases.h"
#include "unit/view/qt_application.h"
#include "view/base/words.h"
#include "view/paper/learnt_paces.h"
#include "view/paper/record_book.h"

#include <QDir>
#include <QDirIterator>
#include <QFile>
#include <QTemporaryDir>
#include <gtest/gtest.h>

using namespace bastewright;

namespace {

struct Kept : testing::Test {
    QTemporaryDir folder;
    std::optional<Library> library;
    JobId job = 0;

    Kept() {
        needApplication();
        library.emplace(
            std::move(Library::open(folder.filePath("l.sqlite").toStdString()).value().library));
        job = library->addJob("Harbour Lights", "{}").value();
    }
    SessionId keep(const made::Situation& at) {
        const auto id =
            library->startSession(job, {writeSession(at.session), writePlan(at.plan)}).value();
        for (const auto& event : at.events)
            EXPECT_TRUE(library->append(id, event));
        return id;
    }
    QByteArray saved(const char* ending) const {
        QDirIterator all{folder.filePath("out"),
                         {QStringLiteral("*.") + QLatin1String(ending)},
                         QDir::Files,
                         QDirIterator::Subdirectories};
        if (!all.hasNext())
            return {};
        QFile file{all.next()};
        return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray{};
    }
};

TEST_F(Kept, WhatWasDoneIsReadFromTheLibraryAfterTheEnd) {
    const auto at = made::situation("ended");
    const auto id = keep(at);
    RecordBook book{&*library, folder.filePath("out")};
    book.show(id);
    EXPECT_EQ(book.title(), QStringLiteral("Harbour Lights"));
    EXPECT_EQ(book.record(), recordOf(at.session, at.plan, at.events));
    EXPECT_TRUE(book.summary().contains(QStringLiteral("5 of 5 zones done")));
    EXPECT_TRUE(
        book.summary().contains(QStringLiteral("Pins: 50 in the quilt, 0 back in the box")));
    ASSERT_EQ(book.people()->count(), 2);
    EXPECT_EQ(book.people()->rows()[0][0], QStringLiteral("Ada"));
    EXPECT_EQ(book.people()->rows()[1][2], 3) << "Bo closed three zones";
    EXPECT_EQ(book.calls()->rows()[0][1], QStringLiteral("Set up"));
    const auto& lines = book.lines()->rows();
    EXPECT_EQ(lines.front()[1], QStringLiteral("The session began"));
    EXPECT_EQ(lines.back()[1], QStringLiteral("The session ended"));
    const bool told = std::any_of(lines.begin(), lines.end(), [](const QVariantList& line) {
        return line[1] == QStringLiteral("Ada: A1 is pinned open, 1 min");
    });
    EXPECT_TRUE(told);
}

TEST_F(Kept, ItIsSavedAsATableAndAsAPage) {
    const auto at = made::situation("ended");
    RecordBook book{&*library, folder.filePath("out")};
    book.show(keep(at));
    book.saveTable();
    EXPECT_EQ(saved("csv").toStdString(),
              recordCsv(recordOf(at.session, at.plan, at.events), at.session));
    book.savePage();
    EXPECT_TRUE(saved("pdf").startsWith("%PDF")) << book.message().toStdString();
    EXPECT_TRUE(book.message().startsWith(QStringLiteral("Saved: ")));
}

TEST_F(Kept, ThatItCannotBeWrittenIsSaid) {
    RecordBook book{&*library, QStringLiteral("/proc/nowhere")};
    book.show(keep(made::situation("ended")));
    book.saveTable();
    EXPECT_TRUE(book.message().contains(QStringLiteral("could not be written")))
        << book.message().toStdString();
}

TEST_F(Kept, TheSessionsOfAQuiltAreListedRunningAndEnded) {
    keep(made::situation("ended"));
    keep(made::renamed(made::situation("held"), "second-"));
    RecordBook book{&*library, folder.filePath("out")};
    book.list(job);
    ASSERT_EQ(book.sessions()->count(), 2);
    EXPECT_EQ(book.sessions()->rows()[0][2], true);
    EXPECT_EQ(book.sessions()->rows()[1][2], false);
}

TEST_F(Kept, LearntSpeedsAreOfferedToTheNextPlanAndTakenOnlyIfWanted) {
    auto at = made::situation("begun");
    made::Reporter slow{240}; // where a minute was planned
    slow.start().step("set-up");
    for (const char* step : {"backing-1", "clamp-1", "batting-1", "top-1", "reclamp-1"})
        slow.step(step);
    slow.open("p1.A1", "Ada").open("p1.B1", "Bo").open("p1.B2", "Bo").step("smooth-1");
    slow.close("p1.A1", "Ada").close("p1.B1", "Bo").close("p1.B2", "Bo");
    slow.tell(happened::Ended{});
    at.events = slow.events();
    keep(at);

    JobEditor editor;
    LearntPaces learnt{&*library, &editor};
    editor.open(made::smallSession());
    learnt.look();
    EXPECT_TRUE(learnt.text().contains(QStringLiteral("Bo slower"))) << learnt.text().toStdString();
    EXPECT_EQ(editor.session().setting.helpers[1].pace, 1) << "nothing is taken unasked";
    learnt.use();
    EXPECT_LT(editor.session().setting.helpers[1].pace, 1);
    EXPECT_EQ(editor.session().setting.helpers[2].pace, 1) << "nothing is known of Cai";
    EXPECT_TRUE(learnt.text().isEmpty());
    editor.undo();
    EXPECT_EQ(editor.session().setting.helpers[1].pace, 1);
    EXPECT_FALSE(learnt.text().isEmpty());
    learnt.putAway();
    EXPECT_TRUE(learnt.text().isEmpty());
}

} // namespace

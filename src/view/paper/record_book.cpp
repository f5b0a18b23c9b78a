#include "view/paper/record_book.h"

#include "job/job_json.h"
#include "plan/plan_json.h"
#include "view/base/file_name.h"
#include "view/base/words.h"
#include "view/paper/record_page.h"
#include "view/paper/record_words.h"

#include <QDateTime>
#include <QDir>
#include <QLocale>
#include <QSaveFile>

using namespace bastewright;

namespace {

QString dayAndTime(std::int64_t ms) {
    return QLocale{}.toString(QDateTime::fromMSecsSinceEpoch(ms), QLocale::ShortFormat);
}

} // namespace

RecordBook::RecordBook(Library* library, QString folder, QObject* parent)
    : QObject{parent}
    , library_{library}
    , folder_{std::move(folder)}
    , calls_{{"pass", "name", "took", "planned"}}
    , people_{{"name", "here", "zones", "points", "pace"}}
    , lines_{{"time", "words"}}
    , sessions_{{"session", "words", "running"}} {}

void RecordBook::show(qint64 id) {
    message_.clear();
    session_ = {};
    record_ = {};
    const auto from = library_->sessionStart(id);
    const auto events = library_->events(id);
    if (from && events) {
        auto session = readSession(from->session);
        const auto plan = readPlan(from->plan);
        if (session.session && plan.plan) {
            session_ = std::move(*session.session);
            record_ = recordOf(session_, *plan.plan, *events);
        } else {
            message_ = tr("This session cannot be read.");
        }
    } else if (id != 0) {
        message_ = words::fromCore(!from ? from.error() : events.error());
    }
    tell();
}

void RecordBook::tell() {
    QStringList names;
    for (const auto& job : session_.jobs)
        names << words::fromCore(job.name);
    title_ = names.join(QStringLiteral(" · "));
    summary_ = record_words::summary(record_);
    QList<QVariantList> calls, people, lines;
    for (const auto& c : record_.calls)
        calls.push_back({c.pass, words::call(c.call), words::span(c.took),
                         c.planned > Seconds{} ? words::span(c.planned) : QString{}});
    for (const auto& p : record_.people)
        people.push_back({words::fromCore(p.name), words::span(p.here), p.zonesClosed,
                          int(p.points), record_words::pace(p)});
    for (const auto& line : record_.lines)
        if (const QString said = record_words::line(line); !said.isEmpty())
            lines.push_back({words::timeOfDay(line.atMs), said});
    calls_.setRows(std::move(calls));
    people_.setRows(std::move(people));
    lines_.setRows(std::move(lines));
    emit changed();
}

void RecordBook::list(qint64 job) {
    QList<QVariantList> rows;
    if (const auto all = library_->sessions())
        for (const auto& s : *all)
            if (s.job == job)
                rows.push_back({qint64(s.id),
                                s.ended ? tr("%1 · ended").arg(dayAndTime(s.startedMs))
                                        : tr("%1 · running").arg(dayAndTime(s.startedMs)),
                                !s.ended});
    sessions_.setRows(std::move(rows));
    emit changed();
}

QString RecordBook::file(const char* ending) {
    const QString folder = QDir{folder_}.filePath(fileName(title_));
    QDir{}.mkpath(folder);
    return QDir{folder}.filePath(QStringLiteral("record-%1.%2")
                                     .arg(QDateTime::fromMSecsSinceEpoch(record_.startedMs)
                                              .toString(QStringLiteral("yyyy-MM-dd-HHmm")),
                                          QLatin1String(ending)));
}

void RecordBook::saveTable() {
    const QString path = file("csv");
    QSaveFile out{path};
    const auto text = QByteArray::fromStdString(recordCsv(record_, session_));
    const bool kept =
        out.open(QIODevice::WriteOnly) && out.write(text) == text.size() && out.commit();
    message_ = kept ? tr("Saved: %1").arg(path)
                    : tr("%1 could not be written: %2").arg(path, out.errorString());
    emit changed();
}

void RecordBook::savePage() {
    const QString path = file("pdf");
    const bool letter = QLocale{}.measurementSystem() == QLocale::ImperialUSSystem;
    const QString why = writeRecordPage(record_, title_, path, letter ? Paper::letter : Paper::a4);
    message_ = why.isEmpty() ? tr("Saved: %1").arg(path) : why;
    emit changed();
}

void RecordBook::forget() {
    message_.clear();
    emit changed();
}

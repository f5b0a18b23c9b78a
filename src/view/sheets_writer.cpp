#include "view/sheets_writer.h"

#include "view/words.h"

#include <QDir>
#include <QFileInfo>
#include <QRegularExpression>

namespace {

/// A name any file system takes.
QString folderName(const Planned& planned) {
    QString name = words::fromCore(planned.session.jobs.front().name).left(60);
    name.replace(QRegularExpression{QStringLiteral("[^\\w\\- ]"),
                                    QRegularExpression::UseUnicodePropertiesOption},
                 QStringLiteral("_"));
    return name.trimmed().isEmpty() ? QStringLiteral("quilt") : name.trimmed();
}

} // namespace

SheetsWriter::SheetsWriter(Write write, QString folder, QObject* parent)
    : QObject{parent}
    , write_{std::move(write)}
    , folder_{std::move(folder)} {}

SheetsWriter::~SheetsWriter() {
    if (worker_.joinable())
        worker_.join();
}

void SheetsWriter::write(const PlannedPtr& planned) {
    if (busy_ || !planned || !write_)
        return;
    busy_ = true;
    failed_ = false;
    message_ = tr("Writing the sheets …");
    emit changed();
    const QString into = QDir{folder_}.filePath(folderName(*planned));
    if (!QDir{}.mkpath(into)) {
        finished(
            {.files = {}, .problem = words::toCore(tr("The folder %1 cannot be made.").arg(into))},
            into);
        return;
    }
    worker_ = std::jthread{[this, planned, into] {
        auto outcome = write_(*planned, words::toCore(into));
        QMetaObject::invokeMethod(
            this, [this, outcome, into] { finished(outcome, into); }, Qt::QueuedConnection);
    }};
}

void SheetsWriter::finished(const Outcome& outcome, const QString& folder) {
    busy_ = false;
    failed_ = !outcome.problem.empty();
    if (failed_)
        message_ = words::fromCore(outcome.problem);
    else if (outcome.files.size() == 1)
        message_ = tr("Written: %1").arg(words::fromCore(outcome.files.front()));
    else
        message_ = tr("%1 sheets are in %2").arg(outcome.files.size()).arg(folder);
    emit changed();
}

void SheetsWriter::forget() {
    message_.clear();
    failed_ = false;
    emit changed();
}

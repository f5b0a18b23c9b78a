#include "view/shelf/shelf_model.h"

#include "job/job_json.h"
#include "view/base/file_name.h"
#include "view/base/words.h"
#include "ways/way.h"

#include <QDesktopServices>
#include <QDir>
#include <QFile>
#include <QSaveFile>
#include <QStandardPaths>

#include <map>

using namespace bastewright;

namespace {

constexpr QLatin1String kExamples{":/demo"};

QString nameOf(const Session& session) {
    QStringList names;
    for (const auto& job : session.jobs)
        if (!job.name.empty())
            names << words::fromCore(job.name);
    return names.isEmpty() ? ShelfModel::tr("Quilt without a name")
                           : names.join(QStringLiteral(" · "));
}

QString sizeOf(const Job& job) {
    const Rect top = topRect(job.top);
    return words::size({top.width(), top.length()}, job.unit);
}

/// "66 × 80⅛ in · Thread", "3 quilts · Pins, Fuse dots"
QString about(const Session& session) {
    QStringList with;
    for (const Job& job : session.jobs)
        with << words::fromCore(wayOf(job).words.name);
    with.removeDuplicates();
    return ShelfModel::tr("%1 · %2").arg(session.jobs.size() > 1
                                             ? ShelfModel::tr("%1 quilts").arg(session.jobs.size())
                                             : sizeOf(session.jobs.front()),
                                         with.join(QStringLiteral(", ")));
}

QStringList exampleFiles() {
    const QDir folder{kExamples};
    QStringList paths;
    for (const auto& name : folder.entryList({QStringLiteral("*.json")}, QDir::Files, QDir::Name))
        paths << folder.filePath(name);
    return paths;
}

std::string contents(const QString& path) {
    QFile file{path};
    if (!file.open(QIODevice::ReadOnly))
        return {};
    return file.readAll().toStdString();
}

} // namespace

std::string plannedKey(JobId job) {
    return "planned." + std::to_string(job);
}

ShelfModel::ShelfModel(Library* library, QObject* parent)
    : QAbstractListModel{parent}
    , library_{library} {
    refresh();
}

ShelfModel::Card ShelfModel::cardOf(const JobEntry& entry, const QString& state) const {
    Card card;
    card.id = entry.id;
    card.title = words::fromCore(entry.name);
    card.state = state;
    const auto text = library_->loadJob(entry.id);
    if (!text)
        return card;
    const auto read = readSession(*text);
    if (!read.session)
        return card;
    const auto& session = *read.session;
    card.title = nameOf(session);
    card.size = sizeOf(session.jobs.front());
    if (session.jobs.size() > 1)
        card.size = tr("%1 quilts, the first %2").arg(session.jobs.size()).arg(card.size);
    card.face = QuiltFace{session.jobs.front().top};
    return card;
}

void ShelfModel::refresh() {
    const auto entries = library_->jobs();
    const auto sessions = library_->sessions();
    if (!entries || !sessions)
        return say(words::fromCore(!entries ? entries.error() : sessions.error()));
    std::map<JobId, QString> states;
    for (const auto& s : *sessions) {
        auto& state = states[s.job];
        if (!s.ended)
            state = QStringLiteral("session");
        else if (state.isEmpty())
            state = QStringLiteral("done");
    }
    QList<Card> next;
    for (const auto& entry : *entries) {
        QString state = states[entry.id];
        if (state.isEmpty()) {
            const auto planned = library_->setting(plannedKey(entry.id));
            state = planned && *planned ? QStringLiteral("planned") : QStringLiteral("new");
        }
        next << cardOf(entry, state);
    }
    emit refreshed();
    if (next == cards_)
        return;
    beginResetModel();
    cards_ = std::move(next);
    endResetModel();
    emit countChanged();
}

void ShelfModel::say(const QString& problem) {
    problem_ = problem;
    emit problemChanged();
}

void ShelfModel::forgetProblem() {
    say({});
}

qint64 ShelfModel::add(const std::string& text, const QString& whence) {
    const auto read = readSession(text);
    if (!read.session) {
        const auto& problems = read.problems;
        say(tr("%1 cannot be opened: %2")
                .arg(whence, problems.empty() ? tr("it is empty.")
                                              : words::fromCore(problems.front().text)));
        return 0;
    }
    const auto id = library_->addJob(words::toCore(nameOf(*read.session)), text);
    if (!id) {
        say(words::fromCore(id.error()));
        return 0;
    }
    say({});
    refresh();
    return *id;
}

qint64 ShelfModel::addNew(const Setting& setting) {
    Session session;
    Job job;
    job.name = words::toCore(tr("New quilt"));
    job.top.width = {Length::inches(60)};
    job.top.length = {Length::inches(72)};
    session.jobs.push_back(job);
    session.setting = setting;
    return add(writeSession(session), tr("A new quilt"));
}

QStringList ShelfModel::examples() const {
    QStringList titles;
    for (const auto& file : exampleFiles()) {
        const auto read = readSession(contents(file));
        titles << (read.session ? nameOf(*read.session) : file);
    }
    return titles;
}

QStringList ShelfModel::examplesAbout() const {
    QStringList all;
    for (const auto& file : exampleFiles()) {
        const auto read = readSession(contents(file));
        all << (read.session ? about(*read.session) : QString{});
    }
    return all;
}

qint64 ShelfModel::addExample(int index) {
    const auto files = exampleFiles();
    if (index < 0 || index >= files.size())
        return 0;
    const std::string text = contents(files[index]);
    const auto read = readSession(text);
    return read.session ? heldOrAdded(*read.session, tr("The example"))
                        : add(text, tr("The example"));
}

qint64 ShelfModel::openFile(const QUrl& file) {
    const QString path = file.toLocalFile();
    const auto read = readSessionFile(words::toCore(path));
    if (!read.session) {
        say(read.problems.empty() ? tr("%1 cannot be opened.").arg(path)
                                  : words::fromCore(read.problems.front().text));
        return 0;
    }
    return heldOrAdded(*read.session, path);
}

qint64 ShelfModel::heldOrAdded(const Session& session, const QString& whence) {
    const std::string text = writeSession(session);
    // The same file again is the job it became, unless that has been changed since.
    const auto held = library_->jobWith(text);
    if (!held) {
        say(words::fromCore(held.error()));
        return 0;
    }
    if (!*held)
        return add(text, whence);
    say({});
    refresh();
    return **held;
}

qint64 ShelfModel::copy(qint64 job) {
    const auto text = library_->loadJob(job);
    if (!text) {
        say(words::fromCore(text.error()));
        return 0;
    }
    auto read = readSession(*text);
    if (!read.session)
        return add(*text, tr("The quilt"));
    auto& name = read.session->jobs.front().name;
    name = words::toCore(tr("%1 (copy)").arg(words::fromCore(name)).left(int(limits::kName) / 2));
    return add(writeSession(*read.session), tr("The copy"));
}

void ShelfModel::remove(qint64 job) {
    const auto card =
        std::find_if(cards_.begin(), cards_.end(), [job](const Card& c) { return c.id == job; });
    if (card == cards_.end())
        return;
    const QString title = card->title;
    if (const auto done = library_->removeJob(job); !done)
        return say(words::fromCore(done.error()));
    removed_ = job;
    removedName_ = title;
    refresh();
    emit removedChanged();
}

void ShelfModel::undoRemove() {
    if (removed_ == 0)
        return;
    if (const auto done = library_->restoreJob(removed_); !done)
        return say(words::fromCore(done.error()));
    forgetRemoved();
    refresh();
}

void ShelfModel::forgetRemoved() {
    removed_ = 0;
    removedName_.clear();
    emit removedChanged();
}

bool ShelfModel::saveFile(qint64 job, const QUrl& file) {
    const auto text = library_->loadJob(job);
    if (!text) {
        say(words::fromCore(text.error()));
        return false;
    }
    QSaveFile out{file.toLocalFile()};
    const QByteArray bytes = QByteArray::fromStdString(*text);
    if (!out.open(QIODevice::WriteOnly) || out.write(bytes) != bytes.size() || !out.flush() ||
        !out.commit()) {
        say(tr("%1 could not be written: %2.").arg(file.toLocalFile(), out.errorString()));
        return false;
    }
    say({});
    return true;
}

QString ShelfModel::saveInto(qint64 job, const QUrl& folder) {
    const auto card =
        std::find_if(cards_.begin(), cards_.end(), [job](const Card& c) { return c.id == job; });
    if (card == cards_.end())
        return {};
    const QString name = fileName(card->title);
    const QDir to{folder.toLocalFile()};
    // The ending by which a desktop knows a job (src/package/bastewright.xml).
    QString file = to.filePath(name + QStringLiteral(".bastewright.json"));
    for (int n = 2; QFile::exists(file); ++n)
        file = to.filePath(QStringLiteral("%1 %2.bastewright.json").arg(name).arg(n));
    return saveFile(job, QUrl::fromLocalFile(file)) ? file : QString{};
}

bool ShelfModel::openElsewhere(qint64 job) {
    // Not where all temporary files are: anybody on the machine could have prepared a place there.
    const QString own = QStandardPaths::writableLocation(QStandardPaths::GenericCacheLocation) +
                        QStringLiteral("/bastewright/shared");
    QDir{}.mkpath(own);
    QFile::setPermissions(own, QFile::ReadOwner | QFile::WriteOwner | QFile::ExeOwner);
    const QString file = saveInto(job, QUrl::fromLocalFile(own));
    if (file.isEmpty())
        return false;
    if (QDesktopServices::openUrl(QUrl::fromLocalFile(file)))
        return true;
    say(tr("This device has no program for such files; %1 was written.").arg(file));
    return false;
}

int ShelfModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : count();
}

QVariant ShelfModel::data(const QModelIndex& index, int role) const {
    if (!checkIndex(index, CheckIndexOption::IndexIsValid))
        return {};
    const auto& card = cards_[index.row()];
    switch (role) {
    case JobRole:
        return qint64(card.id);
    case TitleRole:
        return card.title;
    case SizeRole:
        return card.size;
    case StateRole:
        return card.state;
    case StateTextRole:
        return card.state == QLatin1String("session")   ? tr("In session")
               : card.state == QLatin1String("done")    ? tr("Done")
               : card.state == QLatin1String("planned") ? tr("Planned")
                                                        : tr("New");
    case FaceRole:
        return QVariant::fromValue(card.face);
    default:
        return {};
    }
}

QHash<int, QByteArray> ShelfModel::roleNames() const {
    return {{JobRole, "job"},     {TitleRole, "title"},         {SizeRole, "size"},
            {StateRole, "stage"}, {StateTextRole, "stageText"}, {FaceRole, "face"}};
}

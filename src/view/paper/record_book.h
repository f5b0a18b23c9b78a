#pragma once

#include "session/record.h"
#include "store/library.h"
#include "view/base/table_rows.h"

#include <QObject>
#include <QtQmlIntegration>

/// What was done in a session, running or ended: to be read, and kept as a file. Also which
/// sessions a quilt has had.
class RecordBook : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the workroom")
    Q_PROPERTY(QString title READ title NOTIFY changed)
    /// When, how long, how many: a line each.
    Q_PROPERTY(QStringList summary READ summary NOTIFY changed)
    /// Of each call: `pass`, `name`, `took`, `planned`.
    Q_PROPERTY(TableRows* calls READ calls CONSTANT)
    /// `name`, `here`, `zones`, `points`, `pace`.
    Q_PROPERTY(TableRows* people READ people CONSTANT)
    /// What happened: `time`, `words`.
    Q_PROPERTY(TableRows* lines READ lines CONSTANT)
    /// Where the last file went, or why it did not.
    Q_PROPERTY(QString message READ message NOTIFY changed)
    /// Sessions of the quilt asked for, latest first: `session`, `words`, `running`.
    Q_PROPERTY(TableRows* sessions READ sessions CONSTANT)

public:
    /// Files go into `folder`, a folder for each quilt in it.
    RecordBook(bastewright::Library* library, QString folder, QObject* parent = nullptr);

    /// Reads a session of the library; of none where it is 0.
    Q_INVOKABLE void show(qint64 session);
    /// Lists the sessions of a quilt.
    Q_INVOKABLE void list(qint64 job);
    /// Writes everything that happened as comma-separated values, for other programs.
    Q_INVOKABLE void saveTable();
    /// Writes the record as a page to print.
    Q_INVOKABLE void savePage();
    Q_INVOKABLE void forget();

    QString title() const { return title_; }
    QStringList summary() const { return summary_; }
    TableRows* calls() { return &calls_; }
    TableRows* people() { return &people_; }
    TableRows* lines() { return &lines_; }
    TableRows* sessions() { return &sessions_; }
    QString message() const { return message_; }
    const bastewright::Record& record() const { return record_; }

signals:
    void changed();

private:
    void tell();
    /// Where a file of this session goes; makes its folder.
    QString file(const char* ending);

    bastewright::Library* library_;
    QString folder_, title_, message_;
    QStringList summary_;
    bastewright::Session session_;
    bastewright::Record record_;
    TableRows calls_, people_, lines_, sessions_;
};

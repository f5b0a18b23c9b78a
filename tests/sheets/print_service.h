#pragma once

#include <QProcess>
#include <QString>
#include <QTemporaryDir>

#include <map>

namespace bastewright {

/// A print service of its own for a test: a real cupsd on a loopback port with its own folders and
/// configuration. Its queues pass PDFs on as they are, into files. The process's CUPS_SERVER points
/// at it.
class PrintService {
public:
    PrintService();
    ~PrintService();
    PrintService(const PrintService&) = delete;
    PrintService& operator=(const PrintService&) = delete;

    /// The first of its programs that is not installed; empty where all are there.
    static QString missingTool();

    bool runs() const { return runs_; }
    /// A queue that prints into a file; its path. `device`: another place than that.
    QString addQueue(const QString& name, const QString& device = {});
    bool command(const QString& tool, const QStringList& arguments);
    /// What the service itself says a job was asked for with: "copies" → "2", "sides" → ….
    std::map<QString, QString> jobAttributes(int job) const;
    /// What the service has written to its log.
    QString log() const;
    void stop();

private:
    QTemporaryDir folder_;
    QProcess process_;
    QString server_;
    bool runs_ = false;
};

} // namespace bastewright

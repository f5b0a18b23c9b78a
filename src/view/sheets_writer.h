#pragma once

#include "view/planned.h"

#include <QObject>
#include <QtQmlIntegration>

#include <functional>
#include <string>
#include <thread>
#include <vector>

/// Writes the sheets of a plan into a folder, off the screen's thread, and says where they are.
class SheetsWriter : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the workroom")
    Q_PROPERTY(bool busy READ busy NOTIFY changed)
    Q_PROPERTY(QString message READ message NOTIFY changed)
    Q_PROPERTY(bool failed READ failed NOTIFY changed)
    Q_PROPERTY(QString folder READ folder CONSTANT)

public:
    struct Outcome {
        std::vector<std::string> files; ///< written, with their folders
        std::string problem;            ///< one sentence; empty where all went well
    };
    using Write = std::function<Outcome(const Planned&, const std::string& folder)>;

    /// `folder` is where the sheets go, a folder for each job in it.
    SheetsWriter(Write write, QString folder, QObject* parent = nullptr);
    ~SheetsWriter() override;

    void write(const PlannedPtr& planned);
    Q_INVOKABLE void forget();

    bool busy() const { return busy_; }
    QString message() const { return message_; }
    bool failed() const { return failed_; }
    QString folder() const { return folder_; }

signals:
    void changed();

private:
    void finished(const Outcome& outcome, const QString& folder);

    Write write_;
    QString folder_, message_;
    bool busy_ = false, failed_ = false;
    std::jthread worker_;
};

#pragma once

#include "sheets/print/printing.h"
#include "view/paper/sheet_preview.h"

#include <QObject>
#include <QStringList>
#include <QtQmlIntegration>

#include <functional>
#include <string>
#include <thread>
#include <vector>

/// What becomes of the sheets: files in a folder, or pages from a printer. Everything is done off
/// the screen's thread; one sentence says how it ended.
class SheetsWriter : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the workroom")
    Q_PROPERTY(SheetPreview* preview READ preview CONSTANT)
    Q_PROPERTY(bool busy READ busy NOTIFY changed)
    Q_PROPERTY(qreal progress READ progress NOTIFY changed) ///< of printing, 0 to 1
    Q_PROPERTY(QString message READ message NOTIFY changed)
    Q_PROPERTY(bool failed READ failed NOTIFY changed)
    Q_PROPERTY(QString folder READ folder CONSTANT)
    Q_PROPERTY(QStringList printers READ printers NOTIFY printersChanged)
    Q_PROPERTY(QString printer READ printer WRITE setPrinter NOTIFY printersChanged)
    Q_PROPERTY(QString printerText READ printerText NOTIFY printersChanged)
    Q_PROPERTY(QString whyNot READ whyNot NOTIFY whyNotChanged)
    Q_PROPERTY(int copies READ copies WRITE setCopies NOTIFY changed)

public:
    /// `folder` is where files go, a folder for each job in it.
    explicit SheetsWriter(QString folder, QObject* parent = nullptr);
    ~SheetsWriter() override;

    /// The plan to show; asks for the printers there are.
    void take(const PlannedPtr& planned);

    Q_INVOKABLE void save();
    Q_INVOKABLE void saveForOthers();
    Q_INVOKABLE void print();
    Q_INVOKABLE void forget();

    SheetPreview* preview() { return &preview_; }
    bool busy() const { return busy_; }
    qreal progress() const { return progress_; }
    QString message() const { return message_; }
    bool failed() const { return failed_; }
    QString folder() const { return folder_; }
    const QStringList& printers() const { return printers_; }
    QString printer() const { return printer_; }
    void setPrinter(const QString& name);
    /// What it is; that there is none; or why none can be asked.
    QString printerText() const;
    /// Why nothing can be printed just now; empty where it can.
    QString whyNot() const;
    int copies() const { return copies_; }
    void setCopies(int copies);

signals:
    void changed();
    void printersChanged();
    void whyNotChanged();

private:
    struct Outcome {
        QString words;
        bool failed = false;
    };
    void work(const QString& saying, std::function<Outcome()> what);
    /// Where this job's files go.
    QString target() const;
    void lookForPrinters();
    void found(const tl::expected<std::vector<bastewright::Printer>, std::string>& all);

    SheetPreview preview_;
    QString folder_, message_, printer_;
    QString noPrinting_; ///< why no printer can be asked; empty where they can
    QStringList printers_, about_;
    int copies_ = 1;
    qreal progress_ = 0;
    bool busy_ = false, failed_ = false, looking_ = false;
    std::jthread worker_, looker_;
};

#pragma once

#include "view/base/table_rows.h"
#include "view/edit/field.h"
#include "view/edit/job_editor.h"

#include <QObject>
#include <QSizeF>
#include <QtQmlIntegration>

/// A first quilt by questions, one a page: what can be answered by one tap, and the values behind
/// it. Every answer is a change of the quilt in hand, so that pages can be passed over or gone back
/// to without loss.
class GuideDesk : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the workroom")
    Q_PROPERTY(Page page READ page WRITE setPage NOTIFY changed)
    Q_PROPERTY(int pages READ pages CONSTANT)
    Q_PROPERTY(QString question READ question NOTIFY changed)
    Q_PROPERTY(QString help READ help NOTIFY changed)
    /// Answers by one tap: title, about, chosen.
    Q_PROPERTY(TableRows* choices READ choices CONSTANT)
    /// Values to type: key, label, kind, value, options, optional.
    Q_PROPERTY(TableRows* values READ values CONSTANT)
    Q_PROPERTY(QString problem READ problem NOTIFY changed)
    /// The top and how far the layers go past it, inches, with what is being typed.
    Q_PROPERTY(QSizeF top READ top NOTIFY shownChanged)
    Q_PROPERTY(qreal battingOverage READ battingOverage NOTIFY shownChanged)
    Q_PROPERTY(qreal backingOverage READ backingOverage NOTIFY shownChanged)
    /// What has been answered so far, in one line.
    Q_PROPERTY(QString soFar READ soFar NOTIFY shownChanged)

public:
    enum Page { Size, Quilted, Closely, Tables, People, Supplies };
    Q_ENUM(Page)

    explicit GuideDesk(JobEditor* editor, QObject* parent = nullptr);

    /// From the first page.
    void begin();
    Q_INVOKABLE void choose(int choice);
    /// One sentence where the text does not fit, else empty.
    Q_INVOKABLE QString take(const QString& key, const QString& text);
    /// Shows in the picture what the value would make; what does not fit shows nothing new.
    Q_INVOKABLE void preview(const QString& key, const QString& text);
    Q_INVOKABLE void endPreview();

    Page page() const { return page_; }
    void setPage(Page page);
    /// The furthest page that has been looked at.
    Page reached() const { return reached_; }
    int pages() const { return Supplies + 1; }
    QString question() const;
    QString help() const;
    TableRows* choices() { return &choices_; }
    TableRows* values() { return &values_; }
    QString problem() const { return problem_; }
    QString soFar() const;
    QSizeF top() const;
    qreal battingOverage() const { return editor_->jobShown().batting.overage.in(); }
    qreal backingOverage() const { return editor_->jobShown().backing.overage.in(); }

signals:
    void changed();
    void shownChanged();

private:
    struct Choice {
        QString title, about;
        bool chosen = false;
        std::function<void(bastewright::Session&)> act;
    };
    QList<Choice> choicesNow() const;
    QList<Choice> sizes() const;
    QList<Choice> methods() const;
    QList<Choice> measures() const;
    QList<Choice> tables() const;
    Fields valuesNow() const;
    void refresh();

    JobEditor* editor_;
    Page page_ = Size, reached_ = Size;
    TableRows choices_, values_;
    QString problem_;
};

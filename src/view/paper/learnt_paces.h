#pragma once

#include "store/library.h"
#include "view/edit/job_editor.h"

#include <QObject>
#include <QtQmlIntegration>

#include <map>
#include <string>

/// What earlier sessions learnt about the people of the quilt in hand, offered to its plan and
/// taken only if somebody wants it.
class LearntPaces : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the workroom")
    /// "Learnt last time: Ada quicker, Dot slower."; empty where nothing is to be offered.
    Q_PROPERTY(QString text READ text NOTIFY changed)

public:
    LearntPaces(bastewright::Library* library, JobEditor* editor, QObject* parent = nullptr);

    /// Looks through the latest sessions that have ended.
    void look();
    /// Gives these speeds to the people of the session in hand; can be undone there.
    Q_INVOKABLE void use();
    /// Not this time.
    Q_INVOKABLE void putAway();

    QString text() const { return text_; }

signals:
    void changed();

private:
    void tell();

    bastewright::Library* library_;
    JobEditor* editor_;
    std::map<std::string, double> learnt_; ///< by name, against the trade's pace
    QString text_;
};

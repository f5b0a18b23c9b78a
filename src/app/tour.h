#pragma once

#include "app/window.h"

#include <functional>

namespace bastewright::app {

/// Walks through every screen as a person would, for the self-test and for pictures: the shelf, a
/// job and all its panes, a session from its start to its end.
class Tour {
public:
    using AtStop = std::function<void(const QString& name)>;

    /// `stillMs` is waited at every stop: by default longer than any movement on the screen.
    explicit Tour(OpenRoom& room, int stillMs = 450);

    /// The job to look at; the first example where none is given.
    void useJob(const QString& file) { job_ = file; }

    /// Calls back at every stop, once the screen stands still. Returns what went wrong in a
    /// sentence; else empty.
    QString walk(const AtStop& atStop);

private:
    /// By name, through what belongs to an object and what lies in an item; delegates are only the
    /// latter.
    static QObject* find(QObject* root, const QString& name);
    void press(const char* name);
    void stop(const QString& name, const AtStop& atStop);
    bool planned();
    void layers(const AtStop& atStop);
    void pads(QObject& panel, const QString& pane, const AtStop& atStop);
    void pictures(QObject& panel, const QString& pane, const AtStop& atStop);
    void guide(const AtStop& atStop);
    void panes(QObject& panel, const AtStop& atStop);
    void session(const AtStop& atStop);
    void changes(const AtStop& atStop);
    void sheets(const AtStop& atStop);
    /// `about`: properties of the sheet, such as the person it asks about.
    void overlay(const char* name, const QString& stopName, const AtStop& atStop,
                 const QVariantMap& about = {});

    OpenRoom& room_;
    int stillMs_;
    QString job_;
};

} // namespace bastewright::app

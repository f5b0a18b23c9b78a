#pragma once

#include "view/edit/job_editor.h"

#include <QPointer>
#include <QQuickPaintedItem>

/// What the guide draws over the cloth of the quilt in hand once it is answered: lines of quilting,
/// then the pins at their distance. The item is as large as the top.
class GuideMarks : public QQuickPaintedItem {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(JobEditor* editor READ editor WRITE setEditor NOTIFY changed REQUIRED)
    Q_PROPERTY(bool quilting MEMBER quilting_ NOTIFY changed)
    Q_PROPERTY(bool pins MEMBER pins_ NOTIFY changed)

public:
    explicit GuideMarks(QQuickItem* parent = nullptr);
    JobEditor* editor() const { return editor_; }
    void setEditor(JobEditor* editor);
    void paint(QPainter* painter) override;

signals:
    void changed();

private:
    QPointer<JobEditor> editor_;
    bool quilting_ = false, pins_ = false;
};

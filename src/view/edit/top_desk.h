#pragma once

#include "view/base/table_rows.h"
#include "view/edit/job_editor.h"
#include "view/paint/quilt_face.h"

#include <QObject>
#include <QPointF>
#include <QtQmlIntegration>

/// The top as it is measured: what is being typed is shown before it is taken, and seams are drawn
/// on it by two taps.
class TopDesk : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the workroom")
    Q_PROPERTY(QuiltFace face READ face NOTIFY changed)
    Q_PROPERTY(QString sizeText READ sizeText NOTIFY changed)
    /// Whether the corners are square enough, in a few words; empty as below.
    Q_PROPERTY(QString squareVerdict READ squareVerdict NOTIFY changed)
    /// What the readings say about the corners; empty where there is but one reading each way.
    Q_PROPERTY(QString squareText READ squareText NOTIFY changed)
    Q_PROPERTY(QString reasonText READ reasonText CONSTANT)
    /// Where the blocks add up to another size than was measured: one sentence; else empty.
    Q_PROPERTY(QString gridText READ gridText NOTIFY changed)
    /// True where wider or narrower borders make up for it.
    Q_PROPERTY(bool gridFits READ gridFits NOTIFY changed)
    /// What stands at the borders of the picture, at the sides and at head and foot.
    Q_PROPERTY(QString sidesText READ sidesText NOTIFY changed)
    Q_PROPERTY(QString endsText READ endsText NOTIFY changed)
    /// Taps draw seams.
    Q_PROPERTY(bool drawing MEMBER drawing_ NOTIFY changed)
    /// Where the seam that is being drawn begins, in inches; (-1, -1) for none.
    Q_PROPERTY(QPointF begun READ begun NOTIFY changed)
    Q_PROPERTY(QString told READ told NOTIFY changed)
    Q_PROPERTY(int seams READ seams NOTIFY changed)

public:
    explicit TopDesk(JobEditor* editor, QObject* parent = nullptr);

    /// A tap at this place of the top, in inches; it goes to the nearest 1/4 in or 1/2 cm. The
    /// first begins a seam, the second ends it.
    Q_INVOKABLE void tap(qreal x, qreal y);
    /// Forgets the seam that is being drawn.
    Q_INVOKABLE void forget();
    Q_INVOKABLE void removeLastSeam();
    /// The measured size stays, and the grid's borders follow it.
    Q_INVOKABLE void keepMeasured();
    /// The size becomes what the grid adds up to.
    Q_INVOKABLE void takeGrid();

    QuiltFace face() const { return QuiltFace{editor_->jobShown().top}; }
    QString sizeText() const;
    QString squareVerdict() const;
    QString squareText() const;
    QString gridText() const;
    bool gridFits() const;
    QString sidesText() const;
    QString endsText() const;
    QString reasonText() const;
    QPointF begun() const;
    QString told() const { return told_; }
    int seams() const { return int(editor_->job().top.seams.size()); }

signals:
    void changed();

private:
    bastewright::Length snapped(qreal inches, bastewright::Length most) const;

    JobEditor* editor_;
    bool drawing_ = false;
    std::optional<bastewright::Point> begun_;
    QString told_;
};

#pragma once

#include "view/table/lanes_board.h"

#include <QColor>
#include <QQuickPaintedItem>

struct LaneStretch;

/// Paints the part of the lanes that is looked at: one picture however long the session. The names
/// on the left and the times on top stay where they are.
class LanesItem : public QQuickPaintedItem {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(LanesBoard* board READ board WRITE setBoard NOTIFY boardChanged)
    Q_PROPERTY(qreal scrollX MEMBER scrollX_ NOTIFY lookChanged)
    Q_PROPERTY(qreal scrollY MEMBER scrollY_ NOTIFY lookChanged)
    Q_PROPERTY(qreal minute MEMBER minute_ NOTIFY lookChanged) ///< pixels
    Q_PROPERTY(qreal lane MEMBER lane_ NOTIFY lookChanged)     ///< height in pixels
    Q_PROPERTY(qreal headWidth MEMBER headWidth_ NOTIFY lookChanged)
    Q_PROPERTY(qreal headHeight MEMBER headHeight_ NOTIFY lookChanged)
    Q_PROPERTY(qreal textSize MEMBER textSize_ NOTIFY lookChanged)
    Q_PROPERTY(QString family MEMBER family_ NOTIFY lookChanged)
    Q_PROPERTY(QColor paper MEMBER paper_ NOTIFY lookChanged)
    Q_PROPERTY(QColor ground MEMBER ground_ NOTIFY lookChanged)
    Q_PROPERTY(QColor ink MEMBER ink_ NOTIFY lookChanged)
    Q_PROPERTY(QColor quiet MEMBER quiet_ NOTIFY lookChanged)
    Q_PROPERTY(QColor edge MEMBER edge_ NOTIFY lookChanged)
    Q_PROPERTY(QColor open MEMBER open_ NOTIFY lookChanged)
    Q_PROPERTY(QColor close MEMBER close_ NOTIFY lookChanged)
    Q_PROPERTY(QColor team MEMBER team_ NOTIFY lookChanged)
    Q_PROPERTY(QColor accent MEMBER accent_ NOTIFY lookChanged)

public:
    explicit LanesItem(QQuickItem* parent = nullptr);

    LanesBoard* board() const { return board_; }
    void setBoard(LanesBoard* board);

    /// The task drawn at a place of the item; empty where there is none.
    Q_INVOKABLE QString taskAt(qreal x, qreal y) const;
    /// Where a task's block lies in the item, in its first lane; empty where there is none.
    Q_INVOKABLE QRectF placeOf(const QString& task) const;

    void paint(QPainter* painter) override;

signals:
    void boardChanged();
    void lookChanged();

private:
    qreal xAt(qreal seconds) const { return headWidth_ - scrollX_ + seconds / 60 * minute_; }
    qreal yAt(int lane) const { return headHeight_ - scrollY_ + lane * lane_; }
    QRectF rectOf(const LanesBoard::Block& block) const;
    void paintLane(QPainter& p, int lane) const;
    void paintStretch(QPainter& p, const LaneStretch& stretch) const;
    void paintBlock(QPainter& p, const LanesBoard::Block& block) const;
    void paintStrip(QPainter& p, const LanesBoard::Block& block, qreal high) const;
    void paintTitle(QPainter& p, const QRectF& inside, const QStringList& titles,
                    const QString& below, const QColor& ink) const;
    /// Every piece is wide enough for its name.
    bool showsPieces(const LaneStretch& stretch) const;
    void paintDone(QPainter& p, const QRectF& r) const;
    void paintLinks(QPainter& p) const;
    void paintTimes(QPainter& p) const;
    void paintNow(QPainter& p) const;
    QString nowText() const;
    QRectF nowBox() const; ///< empty where now is out of sight
    void paintNames(QPainter& p) const;
    QFont font(qreal size, bool bold) const;
    QFont nameFont() const; ///< the same for all names
    qreal markSide() const;

    LanesBoard* board_ = nullptr;
    qreal scrollX_ = 0, scrollY_ = 0, minute_ = 10, lane_ = 60, headWidth_ = 100, headHeight_ = 30,
          textSize_ = 16;
    QString family_;
    QColor paper_{Qt::white}, ground_, ink_, quiet_, edge_, open_, close_, team_, accent_;
};

#pragma once

#include "sheets/sheet_set.h"
#include "view/base/planned.h"
#include "view/paper/sheet_thread.h"

#include <QImage>
#include <QObject>
#include <QQuickPaintedItem>
#include <QtQmlIntegration>

#include <memory>
#include <vector>

/// The sheets as they will come out, one page at a time, and what is chosen to be among them.
/// Composed and drawn off the screen's thread.
class SheetPreview : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the sheets' writer")
    Q_PROPERTY(int pages READ pages NOTIFY changed)
    Q_PROPERTY(int page READ page WRITE setPage NOTIFY changed) ///< from 0
    Q_PROPERTY(QString pageText READ pageText NOTIFY changed)
    Q_PROPERTY(QString partText READ partText NOTIFY changed)
    Q_PROPERTY(qreal tallness READ tallness NOTIFY changed) ///< height over width
    Q_PROPERTY(bool lead READ lead WRITE setLead NOTIFY changed)
    Q_PROPERTY(bool helpers READ helpers WRITE setHelpers NOTIFY changed)
    Q_PROPERTY(bool bring READ bring WRITE setBring NOTIFY changed)
    Q_PROPERTY(QStringList more READ more NOTIFY changed) ///< parts on request that are among them
    Q_PROPERTY(bool colour READ colour WRITE setColour NOTIFY changed)
    Q_PROPERTY(bool letter READ letter WRITE setLetter NOTIFY changed)
    Q_PROPERTY(bool bothSides READ bothSides WRITE setBothSides NOTIFY changed)

public:
    explicit SheetPreview(QObject* parent = nullptr);
    ~SheetPreview() override;

    void show(PlannedPtr planned);
    const PlannedPtr& planned() const { return planned_; }
    const bastewright::SheetOptions& options() const { return options_; }

    /// To where the next person's, or the one before's, pages begin.
    Q_INVOKABLE void stepPart(int by);

    int pages() const { return pages_; }
    int page() const { return page_; }
    void setPage(int page); ///< kept within the pages there are
    QString pageText() const;
    QString partText() const;
    qreal tallness() const;
    bool lead() const { return options_.lead; }
    void setLead(bool on);
    bool helpers() const { return options_.helpers; }
    void setHelpers(bool on);
    bool bring() const { return options_.bring; }
    void setBring(bool on);
    QStringList more() const;
    /// Takes a part on request in or out, by its name (`sheetParts`).
    Q_INVOKABLE void toggle(const QString& part);
    bool colour() const { return options_.colour; }
    void setColour(bool on);
    bool letter() const { return options_.paper == bastewright::Paper::letter; }
    void setLetter(bool on);
    bool bothSides() const { return options_.bothSides; }
    void setBothSides(bool on);

    /// How many pixels wide the picture is wanted.
    void setWidth(int pixels);
    /// The last page that was drawn; null until there is one.
    const QImage& picture() const { return picture_; }
    /// False while the page in hand is still to be drawn.
    bool isDrawn() const { return drawnOrder_ == order_ && drawnPage_ == page_; }

signals:
    void changed();
    void pictured();

private:
    struct Composed; // lives on the thread
    using Marks = std::vector<bastewright::SheetSet::Mark>;

    void choose(bool bastewright::SheetOptions::*option, bool on);
    void compose();
    void draw();
    void composed(int order, int pages, Marks marks);

    PlannedPtr planned_;
    bastewright::SheetOptions options_;
    int order_ = 0, pages_ = 0, page_ = 0, width_ = 0, drawnOrder_ = 0, drawnPage_ = 0;
    Marks marks_;
    QImage picture_;
    std::shared_ptr<Composed> composed_;
    SheetThread thread_; // last: joined before the rest goes
};

/// The page of a preview, as wide or high as the item allows.
class SheetPicture : public QQuickPaintedItem {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(SheetPreview* preview READ preview WRITE setPreview NOTIFY previewChanged)

public:
    explicit SheetPicture(QQuickItem* parent = nullptr);
    SheetPreview* preview() const { return preview_; }
    void setPreview(SheetPreview* preview);
    void paint(QPainter* painter) override;

signals:
    void previewChanged();

protected:
    void geometryChange(const QRectF& now, const QRectF& before) override;

private:
    SheetPreview* preview_ = nullptr;
};

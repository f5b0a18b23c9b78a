#pragma once

#include <QColor>
#include <QQuickItem>
#include <QQuickWindow>
#include <QRectF>
#include <QString>

#include <vector>

namespace bastewright::app {

/// What is asked of everything that can be seen. Sizes in pixels of the window.
struct SceneRules {
    qreal target = 48;        ///< least width and height of what is tapped
    qreal letters = 10;       ///< least size of type
    qreal picture = 0;        ///< least width and height of a picture to look at and touch
    qreal textContrast = 7;   ///< WCAG 2.2, 1.4.6
    qreal markContrast = 3;   ///< WCAG 2.2, 1.4.11: drawings and frames that tell what can be done
    bool onlyColours = false; ///< nothing but contrast, where only the light has changed
};

/// Contrast as WCAG 2.2 defines it, from the relative luminance.
qreal contrastOf(const QColor& a, const QColor& b);

/// One thing that is wrong, and where.
struct SceneFault {
    enum class Kind {
        cutText,    ///< elided, or larger than its item
        brokenWord, ///< a word goes on in the next line without a hyphen
        smallLetters,
        paleText,
        paleMark,
        smallTarget,
        smallPicture,
        outOfReach, ///< outside the window or a clip, where nothing can be scrolled
        outOfPanel, ///< text beyond the patch or button it is written on
        overlap,    ///< two texts, a text and a drawing, two things to tap
        covered,    ///< a text under something painted later
    };
    Kind kind;
    QString item;
    QRectF at; ///< of the window
};

/// What the walk has looked at, so that a walk over nothing is no success.
struct SceneCount {
    int texts = 0, targets = 0, marks = 0;
};

QString nameOf(SceneFault::Kind kind);

/// Walks the live items of a window in the order they are painted. While a sheet lies over the
/// screen only the sheet is looked at. Painted pictures (the quilt, the lanes) are one item each:
/// what is written inside them is not seen by the walk.
std::vector<SceneFault> faultsIn(const QQuickWindow& window, const SceneRules& rules,
                                 SceneCount* count = nullptr);

} // namespace bastewright::app

#include "quick/scene_walk.h"

#include "quick/text_of_item.h"

#include <algorithm>
#include <cmath>

namespace bastewright::app {
namespace {

constexpr qreal kSlack = 1.5; // rounding to whole pixels

bool isButton(const QQuickItem& item) {
    return item.inherits("QQuickAbstractButton") || item.inherits("QQuickSlider") ||
           item.inherits("QQuickTextField") || item.inherits("QQuickComboBox");
}
/// Our drawings that stand for a word.
bool isMark(const QQuickItem& item) {
    return item.inherits("Glyph") || item.inherits("PersonMark") || item.inherits("StateMark");
}

/// What is looked at and touched as a whole.
bool isPicture(const QQuickItem& item) {
    return item.inherits("QuiltItem") || item.inherits("TopItem") || item.inherits("LanesItem") ||
           item.inherits("SheetPicture") ||
           QLatin1String(item.metaObject()->className()).startsWith(QLatin1String("RoomFloor"));
}

QRectF onScene(const QQuickItem& item, const QRectF& of) {
    return item.mapRectToScene(of);
}
QRectF onScene(const QQuickItem& item) {
    return onScene(item, {0, 0, item.width(), item.height()});
}

QColor over(QColor top, const QColor& below, qreal opacity) {
    const qreal a = top.alphaF() * opacity;
    return QColor::fromRgbF(float(top.redF() * a + below.redF() * (1 - a)),
                            float(top.greenF() * a + below.greenF() * (1 - a)),
                            float(top.blueF() * a + below.blueF() * (1 - a)));
}

bool within(const QRectF& inner, const QRectF& outer) {
    return inner.left() >= outer.left() - kSlack && inner.right() <= outer.right() + kSlack &&
           inner.top() >= outer.top() - kSlack && inner.bottom() <= outer.bottom() + kSlack;
}

bool meets(const QRectF& a, const QRectF& b) {
    const QRectF both = a & b;
    return both.width() > kSlack && both.height() > kSlack;
}

/// What holds for an item because of what it lies in.
struct Around {
    QRectF shown; ///< of the window: not clipped away now
    QRectF reach; ///< of the window: what can be scrolled to
    QRectF panel; ///< the patch or button it is written on; null for none
    qreal opacity = 1;
    const QQuickItem* button = nullptr;
    const QQuickItem* list = nullptr; ///< the innermost that scrolls
    QColor behind;                    ///< what that lies on
};

struct Painted {
    QRectF at, shown; ///< of the window; shown: without what is clipped away now
    QColor colour;
    const QQuickItem *item, *list;
};
struct Text {
    const QQuickItem* item;
    QRectF at, shown;
    const QQuickItem* button;
};
struct Target {
    const QQuickItem* item;
    QRectF shown;
};

class Walk {
public:
    Walk(const QQuickWindow& window, const SceneRules& rules)
        : rules_{rules} {
        const QRectF whole{0, 0, qreal(window.width()), qreal(window.height())};
        painted_.push_back({whole, whole, window.color(), nullptr, nullptr});
        visit(*topmost(*window.contentItem()),
              {whole, whole, {}, 1, nullptr, nullptr, window.color()});
        if (!rules_.onlyColours) {
            lookForOverlaps();
            lookForCovers();
        }
    }

    std::vector<SceneFault> faults;
    SceneCount count;

private:
    using Kind = SceneFault::Kind;

    /// The sheet that lies over the screen, if one does.
    static const QQuickItem* topmost(const QQuickItem& root) {
        const QQuickItem* sheet = nullptr;
        for (const auto* layer : root.childItems())
            if (layer->inherits("QQuickOverlay") && layer->isVisible())
                for (const auto* popup : layer->childItems())
                    if (popup->inherits("QQuickPopupItem") && popup->isVisible())
                        sheet = popup;
        return sheet ? sheet : &root;
    }

    void tell(Kind kind, const QQuickItem& item, const QRectF& at, const QString& more = {}) {
        faults.push_back(
            {kind, more.isEmpty() ? describe(item) : describe(item) + QStringLiteral(", ") + more,
             at});
    }

    void visit(const QQuickItem& item, Around around) {
        if (!item.isVisible() || item.opacity() <= 0)
            return;
        around.opacity *= item.opacity();
        const QRectF at = onScene(item);
        if (isButton(item))
            lookAtButton(item, at, around);
        if (item.inherits("QQuickRectangle"))
            lookAtRectangle(item, at, around);
        if (item.inherits("Ribbon"))
            painted_.push_back({at, at & around.shown, item.property("color").value<QColor>(),
                                &item, around.list});
        if (item.inherits("QQuickText"))
            lookAtText(item, around);
        if (isMark(item))
            lookAtMark(item, at, around);
        // A small picture on a button is part of what is tapped.
        if (isPicture(item) && !around.button && !rules_.onlyColours) {
            if (std::min(at.width(), at.height()) < rules_.picture - 1)
                tell(Kind::smallPicture, item, at);
            if (!within(at, around.reach))
                tell(Kind::outOfReach, item, at);
        }
        const bool scrolls = item.inherits("QQuickFlickable");
        if (item.clip())
            around.shown &= at;
        if (item.clip() && !scrolls)
            around.reach &= at;
        auto children = item.childItems();
        std::stable_sort(children.begin(), children.end(),
                         [](const auto* a, const auto* b) { return a->z() < b->z(); });
        for (const auto* child : children)
            visit(*child, scrolls ? scrolled(item, at, around) : around);
    }

    Around scrolled(const QQuickItem& list, const QRectF& at, Around around) const {
        const auto number = [&](const char* name) { return list.property(name).toReal(); };
        around.behind = groundUnder(at, around);
        around.list = &list;
        around.shown &= at;
        around.panel = {}; // what it is written on scrolls with it, or lies behind
        if (!list.property("interactive").toBool()) {
            around.reach &= at;
            return around;
        }
        const bool across = number("contentWidth") > list.width() + 1;
        const bool down = number("contentHeight") > list.height() + 1;
        const QRectF all = onScene(list, {across ? number("originX") - number("contentX") : 0,
                                          down ? number("originY") - number("contentY") : 0,
                                          across ? number("contentWidth") : list.width(),
                                          down ? number("contentHeight") : list.height()});
        if (across)
            around.reach = {all.left(), around.reach.top(), all.width(), around.reach.height()};
        if (down)
            around.reach = {around.reach.left(), all.top(), around.reach.width(), all.height()};
        around.reach &= all;
        return around;
    }

    /// What was painted last, and covers the middle of this; also where it is scrolled out of
    /// sight.
    QColor groundUnder(const QRectF& at, const Around& around) const {
        const QPointF middle = at.center();
        const bool inSight = around.shown.contains(middle);
        for (auto it = painted_.rbegin(); it != painted_.rend(); ++it)
            if ((it->list == around.list && it->at.contains(middle)) ||
                (inSight && it->shown.contains(middle)))
                return it->colour;
        return around.behind;
    }

    void lookAtRectangle(const QQuickItem& item, const QRectF& at, Around& around) {
        const auto colour = item.property("color").value<QColor>();
        const auto* border = item.property("border").value<QObject*>();
        const bool framed = border && border->property("width").toReal() > 0 &&
                            border->property("color").value<QColor>().alpha() > 0;
        if (colour.alpha() > 0)
            painted_.push_back({at, at & around.shown,
                                over(colour, groundUnder(at, around), around.opacity), &item,
                                around.list});
        if (colour.alpha() > 0 || (framed && !item.childItems().isEmpty()))
            around.panel = at;
    }

    void lookAtButton(const QQuickItem& item, const QRectF& at, Around& around) {
        around.button = &item;
        around.panel = at;
        if (!item.isEnabled())
            return;
        ++count.targets;
        lookAtFrame(item, at, around);
        if (rules_.onlyColours)
            return;
        if (std::min(at.width(), at.height()) < rules_.target - 1)
            tell(Kind::smallTarget, item, at);
        if (!within(at, around.reach))
            tell(Kind::outOfReach, item, at);
        targets_.push_back({&item, at & around.shown});
    }

    /// What can be tapped and has a frame must show it.
    void lookAtFrame(const QQuickItem& item, const QRectF& at, const Around& around) {
        const auto* back =
            qobject_cast<const QQuickItem*>(item.property("background").value<QObject*>());
        if (!back || !back->inherits("QQuickRectangle") || !back->isVisible())
            return;
        const auto* border = back->property("border").value<QObject*>();
        const auto fill = back->property("color").value<QColor>();
        const QColor ground = groundUnder(at, around);
        if (border->property("width").toReal() <= 0)
            return;
        const auto line = border->property("color").value<QColor>();
        const qreal best = std::max(contrastOf(over(line, ground, around.opacity), ground),
                                    contrastOf(over(fill, ground, around.opacity), ground));
        if (best < rules_.markContrast)
            tell(Kind::paleMark, item, at, QStringLiteral("frame %1 : 1").arg(best, 0, 'f', 2));
    }

    /// What is drawn in the item's colour, against what lies under it.
    qreal contrastOfColour(const QQuickItem& item, const QRectF& at, const Around& around) const {
        const QColor ground = groundUnder(at, around);
        return contrastOf(over(item.property("color").value<QColor>(), ground, around.opacity),
                          ground);
    }

    void lookAtText(const QQuickItem& item, const Around& around) {
        const QString text = item.property("text").toString().trimmed();
        if (text.isEmpty())
            return;
        ++count.texts;
        const QRectF at = onScene(item, inkRect(item));
        if (item.isEnabled()) {
            const qreal ratio = contrastOfColour(item, at, around);
            if (ratio < rules_.textContrast)
                tell(Kind::paleText, item, at, QStringLiteral("%1 : 1").arg(ratio, 0, 'f', 2));
        }
        if (rules_.onlyColours)
            return;
        if (const QString cut = whatIsCut(item); !cut.isEmpty())
            tell(Kind::cutText, item, at, cut);
        if (const QString word = brokenWord(item); !word.isEmpty())
            tell(Kind::brokenWord, item, at, word);
        if (sizeOfType(item) < rules_.letters - 1)
            tell(Kind::smallLetters, item, at, QStringLiteral("%1 px").arg(sizeOfType(item)));
        if (!within(at, around.reach))
            tell(Kind::outOfReach, item, at);
        if (!around.panel.isNull() && !within(at, around.panel))
            tell(Kind::outOfPanel, item, at);
        texts_.push_back({&item, at, at & around.shown, around.button});
        painted_.push_back({{}, {}, {}, &item, nullptr}); // its place in the order of painting
    }

    void lookAtMark(const QQuickItem& item, const QRectF& at, const Around& around) {
        if (item.inherits("Glyph") && item.property("name").toString().isEmpty())
            return;
        ++count.marks;
        if (item.inherits("Glyph") && item.isEnabled()) {
            const qreal ratio = contrastOfColour(item, at, around);
            if (ratio < rules_.markContrast)
                tell(Kind::paleMark, item, at, QStringLiteral("%1 : 1").arg(ratio, 0, 'f', 2));
        }
        if (rules_.onlyColours)
            return;
        if (!within(at, around.reach))
            tell(Kind::outOfReach, item, at);
        marks_.push_back({&item, at & around.shown});
    }

    void lookForOverlaps() {
        for (std::size_t i = 0; i < texts_.size(); ++i) {
            for (std::size_t k = 0; k < i; ++k)
                if (meets(texts_[i].shown, texts_[k].shown))
                    tell(Kind::overlap, *texts_[i].item, texts_[i].shown,
                         describe(*texts_[k].item));
            for (const auto& mark : marks_)
                if (meets(texts_[i].shown, mark.shown))
                    tell(Kind::overlap, *texts_[i].item, texts_[i].shown, describe(*mark.item));
            for (const auto& target : targets_)
                if (!target.item->isAncestorOf(texts_[i].item) && target.item != texts_[i].button &&
                    meets(texts_[i].shown, target.shown))
                    tell(Kind::overlap, *texts_[i].item, texts_[i].shown, describe(*target.item));
        }
        for (std::size_t i = 0; i < targets_.size(); ++i)
            for (std::size_t k = 0; k < i; ++k)
                if (!targets_[k].item->isAncestorOf(targets_[i].item) &&
                    !targets_[i].item->isAncestorOf(targets_[k].item) &&
                    meets(targets_[i].shown, targets_[k].shown))
                    tell(Kind::overlap, *targets_[i].item, targets_[i].shown,
                         describe(*targets_[k].item));
    }

    void lookForCovers() {
        for (const auto& text : texts_) {
            bool after = false;
            for (const auto& ground : painted_) {
                if (ground.item == text.item)
                    after = true;
                else if (after && ground.colour.alpha() == 255 && meets(text.shown, ground.shown)) {
                    tell(Kind::covered, *text.item, text.shown, describe(*ground.item));
                    break;
                }
            }
        }
    }

    const SceneRules& rules_;
    std::vector<Painted> painted_;
    std::vector<Text> texts_;
    std::vector<Target> targets_, marks_;
};

} // namespace

qreal contrastOf(const QColor& a, const QColor& b) {
    const auto luminance = [](const QColor& c) {
        const auto linear = [](qreal v) {
            return v <= 0.04045 ? v / 12.92 : std::pow((v + 0.055) / 1.055, 2.4);
        };
        return 0.2126 * linear(c.redF()) + 0.7152 * linear(c.greenF()) + 0.0722 * linear(c.blueF());
    };
    const auto [low, high] = std::minmax({luminance(a), luminance(b)});
    return (high + 0.05) / (low + 0.05);
}

QString nameOf(SceneFault::Kind kind) {
    switch (kind) {
    case SceneFault::Kind::cutText:
        return QStringLiteral("text is cut");
    case SceneFault::Kind::brokenWord:
        return QStringLiteral("a word is broken");
    case SceneFault::Kind::smallLetters:
        return QStringLiteral("letters are too small");
    case SceneFault::Kind::paleText:
        return QStringLiteral("text is too pale");
    case SceneFault::Kind::paleMark:
        return QStringLiteral("a mark is too pale");
    case SceneFault::Kind::smallTarget:
        return QStringLiteral("too small to tap");
    case SceneFault::Kind::smallPicture:
        return QStringLiteral("picture is too small");
    case SceneFault::Kind::outOfReach:
        return QStringLiteral("cannot be reached");
    case SceneFault::Kind::outOfPanel:
        return QStringLiteral("runs out of what it is written on");
    case SceneFault::Kind::overlap:
        return QStringLiteral("lies over another");
    case SceneFault::Kind::covered:
        return QStringLiteral("is covered");
    }
    return {};
}

std::vector<SceneFault> faultsIn(const QQuickWindow& window, const SceneRules& rules,
                                 SceneCount* count) {
    Walk walk{window, rules};
    if (count) {
        count->texts += walk.count.texts;
        count->targets += walk.count.targets;
        count->marks += walk.count.marks;
    }
    return std::move(walk.faults);
}

} // namespace bastewright::app

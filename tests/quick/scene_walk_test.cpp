#include "quick/scene_walk.h"
#include "quick/whole_window.h"

#include <QQmlComponent>
#include <QQuickView>

#include <algorithm>
#include <ostream>

namespace bastewright::app {
namespace {

using Kind = SceneFault::Kind;

struct Scene {
    const char* name;
    const char* qml; ///< lies in an item of 400 × 300 on white
    std::vector<Kind> faults;
    friend std::ostream& operator<<(std::ostream& out, const Scene& s) { return out << s.name; }
};

const Scene kScenes[] = {
    {"allWell",
     "AbstractButton { width: 200; height: 60; background: Rectangle { border.width: 1; "
     "border.color: 'black' }"
     "  contentItem: Text { text: 'Go on'; font.pixelSize: 16; verticalAlignment: "
     "Text.AlignVCenter } }"
     "Text { y: 80; width: 90; text: 'two lines of words'; wrapMode: Text.Wrap; font.pixelSize: 16 "
     "}"
     "Flickable { y: 200; width: 300; height: 80; contentHeight: 500; clip: true;"
     "  Text { y: 460; text: 'further down'; font.pixelSize: 16 } }",
     {}},
    {"elided",
     "Text { width: 60; text: 'much too long for it'; elide: Text.ElideRight; font.pixelSize: 16 }",
     {Kind::cutText}},
    {"tooWide",
     "Text { width: 60; text: 'much too long for it'; font.pixelSize: 16 }",
     {Kind::cutText}},
    {"tooHigh",
     "Text { width: 60; height: 20; text: 'much too long for it'; wrapMode: Text.Wrap; "
     "font.pixelSize: 16 }",
     {Kind::cutText}},
    {"brokenWord",
     "Text { width: 60; text: 'Weiterschieben'; wrapMode: Text.Wrap; font.pixelSize: 16 }",
     {Kind::brokenWord}},
    {"tinyLetters", "Text { text: 'small print'; font.pixelSize: 8 }", {Kind::smallLetters}},
    {"shrunkLetters",
     "Text { width: 60; height: 20; text: 'much too long for it'; fontSizeMode: Text.Fit;"
     " minimumPixelSize: 5; font.pixelSize: 16 }",
     {Kind::smallLetters}},
    {"paleText", "Text { text: 'pale'; color: '#888888'; font.pixelSize: 16 }", {Kind::paleText}},
    {"fadedText", "Text { text: 'faded'; opacity: 0.5; font.pixelSize: 16 }", {Kind::paleText}},
    {"paleOnItsOwnGround",
     "Rectangle { width: 100; height: 40; color: '#333333'; Text { text: 'dark'; font.pixelSize: "
     "16 } }",
     {Kind::paleText}},
    {"paleFrame",
     "AbstractButton { width: 200; height: 60; background: Rectangle { border.width: 1; "
     "border.color: '#dddddd' } }",
     {Kind::paleMark}},
    {"smallTarget", "AbstractButton { width: 200; height: 30 }", {Kind::smallTarget}},
    {"outsideTheWindow", "AbstractButton { x: 350; width: 200; height: 60 }", {Kind::outOfReach}},
    {"clippedAndStill",
     "Item { width: 100; height: 40; clip: true; Text { y: 30; text: 'under the edge'; "
     "font.pixelSize: 16 } }",
     {Kind::outOfReach}},
    {"belowWhatScrolls",
     "Flickable { width: 300; height: 80; contentHeight: 200; clip: true;"
     "  Text { y: 460; text: 'further down'; font.pixelSize: 16 } }",
     {Kind::outOfReach}},
    {"outOfItsPatch",
     "Rectangle { width: 100; height: 20; border.width: 1; Text { y: 12; text: 'below'; "
     "font.pixelSize: 16 } }",
     {Kind::outOfPanel}},
    {"textOverText",
     "Text { text: 'one thing'; font.pixelSize: 16 } Text { x: 20; y: 6; text: 'another'; "
     "font.pixelSize: 16 }",
     {Kind::overlap}},
    {"buttonOverButton",
     "AbstractButton { width: 100; height: 60 } AbstractButton { x: 80; width: 100; height: 60 }",
     {Kind::overlap}},
    {"buttonOverText",
     "Text { text: 'one thing'; font.pixelSize: 16 } AbstractButton { x: 20; width: 100; height: "
     "60 }",
     {Kind::overlap}},
    {"covered",
     "Text { text: 'one thing'; font.pixelSize: 16 } Rectangle { x: 20; width: 100; height: 60; "
     "color: 'grey' }",
     {Kind::covered}},
};

class SceneWalk : public testing::TestWithParam<Scene> {};

TEST_P(SceneWalk, FindsWhatIsWrong) {
    needWindows();
    QQuickView view;
    QQmlComponent component{view.engine()};
    component.setData(
        QByteArray{
            "import QtQuick\nimport QtQuick.Controls.Basic\nItem { width: 400; height: 300\n"} +
            GetParam().qml + "\n}",
        QUrl{});
    auto* root = qobject_cast<QQuickItem*>(component.create());
    ASSERT_TRUE(root) << component.errorString().toStdString();
    root->setParentItem(view.contentItem());
    view.resize(400, 300);
    view.show();
    live(60);
    std::vector<Kind> found;
    std::string told;
    SceneCount count;
    for (const auto& fault : faultsIn(view, {.target = 48, .letters = 10}, &count)) {
        told += nameOf(fault.kind).toStdString() + ": " + fault.item.toStdString() + '\n';
        if (std::find(found.begin(), found.end(), fault.kind) == found.end())
            found.push_back(fault.kind);
    }
    EXPECT_EQ(found, GetParam().faults) << told;
    EXPECT_GT(count.texts + count.targets, 0);
    delete root;
}

INSTANTIATE_TEST_SUITE_P(Scenes, SceneWalk, testing::ValuesIn(kScenes),
                         [](const auto& about) { return std::string{about.param.name}; });

} // namespace
} // namespace bastewright::app

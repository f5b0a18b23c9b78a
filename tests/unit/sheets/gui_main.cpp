#include <QGuiApplication>
#include <gtest/gtest.h>

// Fonts need a QGuiApplication; no display does.
int main(int argc, char** argv) {
    qputenv("QT_QPA_PLATFORM", "offscreen");
    const QGuiApplication app{argc, argv};
    testing::InitGoogleTest(&argc, argv);
    return RUN_ALL_TESTS();
}

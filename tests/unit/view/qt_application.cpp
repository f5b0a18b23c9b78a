#include "unit/view/qt_application.h"

void needApplication() {
    if (!qEnvironmentVariableIsSet("QT_QPA_PLATFORM"))
        qputenv("QT_QPA_PLATFORM", "offscreen");
    static int argc = 1;
    static char name[] = "view";
    static char* argv[] = {name, nullptr};
    static const QGuiApplication application{argc, argv};
}

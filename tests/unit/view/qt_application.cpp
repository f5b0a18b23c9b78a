#include "unit/view/qt_application.h"

void needApplication() {
    if (!qEnvironmentVariableIsSet("QT_QPA_PLATFORM"))
        qputenv("QT_QPA_PLATFORM", "offscreen");
    static int argc = 1;
    static char name[] = "view";
    static char* argv[] = {name, nullptr};
    // Left to the system at exit: fonts and platform must outlive whatever else is static.
    static const auto* const application = new QGuiApplication{argc, argv};
    Q_UNUSED(application)
}

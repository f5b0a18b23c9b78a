#include "unit/view/qt_application.h"

void needApplication() {
    static int argc = 1;
    static char name[] = "view";
    static char* argv[] = {name, nullptr};
    static const QCoreApplication application{argc, argv};
}

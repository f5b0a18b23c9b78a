#include "app/window.h"

#include <QQmlExtensionPlugin>

// The QML modules written in C++ are linked in, so their plugins are named here.
Q_IMPORT_QML_PLUGIN(Bastewright_ViewPlugin)
Q_IMPORT_QML_PLUGIN(Bastewright_PagePlugin)

// Resources of a static library are dropped by the linker unless somebody asks for them; the macro
// does not work inside a namespace.
static void initResources() {
    Q_INIT_RESOURCE(demo);
    Q_INIT_RESOURCE(icon);
    Q_INIT_RESOURCE(page);
}

namespace bastewright::app {
void loadResources() {
    ::initResources();
}
} // namespace bastewright::app

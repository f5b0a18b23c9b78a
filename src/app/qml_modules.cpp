#include "app/window.h"

#include <QQmlExtensionPlugin>

// The QML modules are linked in, so their plugins are named here.
Q_IMPORT_QML_PLUGIN(Bastewright_ViewPlugin)
Q_IMPORT_QML_PLUGIN(Bastewright_PagePlugin)
Q_IMPORT_QML_PLUGIN(Bastewright_ThemePlugin)
Q_IMPORT_QML_PLUGIN(Bastewright_PartsPlugin)
Q_IMPORT_QML_PLUGIN(Bastewright_QuiltPlugin)
Q_IMPORT_QML_PLUGIN(Bastewright_PicturesPlugin)
Q_IMPORT_QML_PLUGIN(Bastewright_ShelfPlugin)
Q_IMPORT_QML_PLUGIN(Bastewright_GuidePlugin)
Q_IMPORT_QML_PLUGIN(Bastewright_PlanPlugin)
Q_IMPORT_QML_PLUGIN(Bastewright_TablePlugin)
Q_IMPORT_QML_PLUGIN(Bastewright_PaperPlugin)
Q_IMPORT_QML_PLUGIN(Bastewright_MainPlugin)

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

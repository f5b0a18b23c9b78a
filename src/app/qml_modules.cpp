#include "app/window.h"

// What Qt writes to register the types of the QML modules that are written in C++.
extern void qml_register_types_Bastewright_View();
extern void qml_register_types_Bastewright_Page();

// What is in a static library is dropped by the linker unless somebody asks for it; the macro does
// not work inside a namespace. The functions are named and not called: the engine calls them when
// their module is imported.
static void initResources() {
    [[maybe_unused]] volatile auto view = &qml_register_types_Bastewright_View;
    [[maybe_unused]] volatile auto page = &qml_register_types_Bastewright_Page;
    Q_INIT_RESOURCE(demo);
    Q_INIT_RESOURCE(icon);
    Q_INIT_RESOURCE(page);
}

namespace bastewright::app {
void loadResources() {
    ::initResources();
}
} // namespace bastewright::app

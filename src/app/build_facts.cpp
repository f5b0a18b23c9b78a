#include "app/build_facts.h"

#include "build_commit.h" // written by build_commit.cmake

#include <QString>
#include <QSysInfo>
#include <QtGlobal>
#include <sqlite3.h>

namespace bastewright::app {

std::string buildFacts() {
    std::string facts = "bastewright " BASTEWRIGHT_VERSION "\n";
    facts += "commit " BASTEWRIGHT_COMMIT "\n";
    facts += "built as " BASTEWRIGHT_BUILD_TYPE " with " BASTEWRIGHT_COMPILER ", for ";
    facts += QSysInfo::buildAbi().toStdString();
    facts += "\nQt ";
    facts += qVersion();
    facts += ", built with " QT_VERSION_STR "\nSQLite ";
    facts += sqlite3_libversion();
    facts += ", built with " SQLITE_VERSION "\n";
    return facts;
}

} // namespace bastewright::app

#include "sheets/print/printing.h"

#include "sheets/failure.h"
#include "sheets/words.h"

#include <QDir>
#include <QFileInfo>
#include <QPluginLoader>

namespace bastewright::printing {
namespace {

using sheets::failure;
using sheets::Text;

constexpr auto kLibrary = QLatin1String{"bastewright-printing.so"};

/// Beside the program, as it is built, or else where it is installed. Nowhere else: what is opened
/// here runs as the program.
QString library() {
    const QDir program{QCoreApplication::applicationDirPath()};
    const QString beside = program.filePath(kLibrary);
    const QString installed = program.filePath(QLatin1String{BASTEWRIGHT_LIBRARIES "/"} + kLibrary);
    return QFileInfo::exists(beside) ? beside : QDir::cleanPath(installed);
}

} // namespace

tl::expected<Service*, std::string> serviceIn(const QString& library) {
    if (!QFileInfo::exists(library))
        return failure(Text::tr("Neither printers nor sheets in gray can be used, because %1 is "
                                "missing. Install Bastewright again, or save the sheets in color.")
                           .arg(library));
    QPluginLoader loader{library}; // what it has loaded stays loaded
    QObject* object = loader.instance();
    if (!object)
        return failure(
            Text::tr("Neither printers nor sheets in gray can be used, because %1 cannot be opened "
                     "(%2). Install Bastewright again, or save the sheets in color.")
                .arg(library, loader.errorString().simplified()));
    auto* service = qobject_cast<Service*>(object);
    if (!service)
        return failure(
            Text::tr("Neither printers nor sheets in gray can be used, because %1 is of another "
                     "version. Install Bastewright again, or save the sheets in color.")
                .arg(library));
    return service;
}

tl::expected<Service*, std::string> service() {
    static const auto once = serviceIn(library());
    return once;
}

} // namespace bastewright::printing

#include "app/refusal.h"

#include "app/places.h"

#include <QGuiApplication>

namespace bastewright::app {

bool askToTryAgain(Comfort& comfort, const QString& problem) {
    QQmlApplicationEngine engine;
    engine.addImportPath(QStringLiteral("qrc:/qt/qml"));
    engine.setInitialProperties({{QStringLiteral("problem"), problem},
                                 {QStringLiteral("comfort"), QVariant::fromValue(&comfort)}});
    engine.load(QUrl{QStringLiteral("qrc:/qt/qml/Bastewright/Main/RefusalWindow.qml")});
    if (engine.rootObjects().isEmpty())
        return false;
    std::unique_ptr<Places> places;
    if (const auto file = qEnvironmentVariable("BASTEWRIGHT_TELL_PLACES"); !file.isEmpty())
        places = std::make_unique<Places>(
            qobject_cast<QQuickWindow*>(engine.rootObjects().constFirst()), file);
    return QGuiApplication::exec() == 1;
}

} // namespace bastewright::app

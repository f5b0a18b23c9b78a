#include "app/window.h"

#include <QGuiApplication>
#include <QQmlEngine>
#include <QtQuickTest>

/// Makes the modules that are linked in findable.
class Setup : public QObject {
    Q_OBJECT

public slots:
    void applicationAvailable() { bastewright::app::prepareWindow(); }
    void qmlEngineAvailable(QQmlEngine* engine) {
        bastewright::app::loadResources();
        engine->addImportPath(QStringLiteral("qrc:/qt/qml"));
    }
};

QUICK_TEST_MAIN_WITH_SETUP(parts, Setup)

#include "parts_main.moc"

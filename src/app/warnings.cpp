#include "app/warnings.h"

#include <QMutex>
#include <QtGlobal>

namespace bastewright::app {
namespace {

QMutex mutex;
QStringList warnings;
QtMessageHandler before = nullptr;

void take(QtMsgType type, const QMessageLogContext& context, const QString& message) {
    if (type != QtDebugMsg && type != QtInfoMsg) {
        const QMutexLocker lock{&mutex};
        warnings << message;
    }
    before(type, context, message);
}

} // namespace

WarningCatcher::WarningCatcher() {
    warnings.clear();
    before = qInstallMessageHandler(take);
}

WarningCatcher::~WarningCatcher() {
    qInstallMessageHandler(before);
}

QStringList WarningCatcher::caught() const {
    const QMutexLocker lock{&mutex};
    return warnings;
}

} // namespace bastewright::app

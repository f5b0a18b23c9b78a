#include "app/warnings.h"

#include <QtGlobal>

#include <mutex>

namespace bastewright::app {
namespace {

struct Kept {
    std::mutex mutex;
    QStringList warnings;
    QtMessageHandler before = nullptr;
};

Kept& kept() {
    static Kept one;
    return one;
}

void take(QtMsgType type, const QMessageLogContext& context, const QString& message) {
    if (type != QtDebugMsg && type != QtInfoMsg) {
        const std::scoped_lock lock{kept().mutex};
        kept().warnings << message;
    }
    kept().before(type, context, message);
}

} // namespace

WarningCatcher::WarningCatcher() {
    kept().warnings.clear();
    kept().before = qInstallMessageHandler(take);
}

WarningCatcher::~WarningCatcher() {
    qInstallMessageHandler(kept().before);
}

QStringList WarningCatcher::caught() const {
    const std::scoped_lock lock{kept().mutex};
    return kept().warnings;
}

} // namespace bastewright::app

#pragma once

#include <QStringList>

namespace bastewright::app {

/// Collects every warning of Qt and QML while it lives; they are still printed. One at a time.
class WarningCatcher {
public:
    WarningCatcher();
    ~WarningCatcher();
    WarningCatcher(const WarningCatcher&) = delete;
    WarningCatcher& operator=(const WarningCatcher&) = delete;

    QStringList caught() const;
};

} // namespace bastewright::app

#pragma once

#include <QObject>

namespace bastewright::app {

/// Ends the application in good order where the system asks for it (SIGTERM, SIGINT, SIGHUP): what
/// is open is put away as when the window is closed. One at a time; restores the system's way when
/// it goes.
class AskedToEnd : public QObject {
    Q_OBJECT

public:
    explicit AskedToEnd(QObject* parent = nullptr);
    ~AskedToEnd() override;

private:
    int ends_[2] = {-1, -1};
};

} // namespace bastewright::app

#pragma once

#include "view/base/planned.h"

#include <QObject>

#include <optional>
#include <thread>

/// Lays out every way to piece the backings: milliseconds, so on the planning thread.
Planned withBackingWays(Planned planned);

/// Plans off the screen's thread: the plan first, then the same once more with what would help
/// most. The newest request wins: a running search is asked to stop, its result is dropped, and the
/// latest session is planned next. No call waits for the search, except the destructor, which waits
/// for it to notice.
class Replanner : public QObject {
    Q_OBJECT

public:
    explicit Replanner(PlanFunction plan, QObject* parent = nullptr);
    ~Replanner() override;

    void request(bastewright::Session session);

signals:
    void planned(const PlannedPtr& planned);

private:
    void start(bastewright::Session session);
    void arrived(const PlannedPtr& planned);
    void finished();

    PlanFunction plan_;
    std::optional<bastewright::Session> next_;
    std::jthread worker_;
    bool busy_ = false;
};

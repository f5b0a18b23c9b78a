#pragma once

#include <condition_variable>
#include <deque>
#include <functional>
#include <mutex>
#include <thread>

/// Does what it is given, one after another, on a thread of its own: what holds laid-out text has
/// to stay on the thread that made it.
class SheetThread {
public:
    using Work = std::function<void()>;

    SheetThread();
    /// Ends the work in hand, drops what waits, does `last`, and joins.
    ~SheetThread();

    /// Drops what waits and does this instead.
    void replace(Work work);
    void post(Work work);
    /// Done on the thread when everything else is over.
    void setLast(Work last);

private:
    void run(const std::stop_token& stop);

    std::mutex mutex_;
    std::condition_variable_any wake_;
    std::deque<Work> waiting_;
    Work last_;
    std::jthread thread_;
};

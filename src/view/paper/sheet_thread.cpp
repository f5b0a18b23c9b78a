#include "view/paper/sheet_thread.h"

SheetThread::SheetThread()
    : thread_{[this](const std::stop_token& stop) { run(stop); }} {}

SheetThread::~SheetThread() {
    thread_.request_stop();
    thread_.join();
}

void SheetThread::post(Work work) {
    const std::lock_guard lock{mutex_};
    waiting_.push_back(std::move(work));
    wake_.notify_one();
}

void SheetThread::replace(Work work) {
    const std::lock_guard lock{mutex_};
    waiting_.clear();
    waiting_.push_back(std::move(work));
    wake_.notify_one();
}

void SheetThread::setLast(Work last) {
    const std::lock_guard lock{mutex_};
    last_ = std::move(last);
}

void SheetThread::run(const std::stop_token& stop) {
    while (true) {
        Work work;
        {
            std::unique_lock lock{mutex_};
            wake_.wait(lock, stop, [this] { return !waiting_.empty(); });
            if (stop.stop_requested()) {
                work = std::move(last_);
                lock.unlock();
                if (work)
                    work();
                return;
            }
            work = std::move(waiting_.front());
            waiting_.pop_front();
        }
        work();
    }
}

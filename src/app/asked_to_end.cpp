#include "app/asked_to_end.h"

#include <QCoreApplication>
#include <QSocketNotifier>

#include <csignal>
#include <sys/socket.h>
#include <unistd.h>

namespace bastewright::app {
namespace {

constexpr int kSignals[] = {SIGTERM, SIGINT, SIGHUP};
int tellingEnd = -1;

// Only what is safe in a handler (POSIX.1-2017, 2.4.3): one byte into a socket.
extern "C" void tell(int) {
    const char byte = 1;
    [[maybe_unused]] const auto written = ::write(tellingEnd, &byte, sizeof byte);
}

void handle(void (*how)(int)) {
    struct sigaction action {};
    action.sa_handler = how;
    sigemptyset(&action.sa_mask);
    action.sa_flags = SA_RESTART;
    for (const int signal : kSignals)
        sigaction(signal, &action, nullptr);
}

} // namespace

AskedToEnd::AskedToEnd(QObject* parent)
    : QObject{parent} {
    if (::socketpair(AF_UNIX, SOCK_STREAM | SOCK_CLOEXEC, 0, ends_) != 0)
        return;
    tellingEnd = ends_[0];
    auto* heard = new QSocketNotifier{ends_[1], QSocketNotifier::Read, this};
    connect(heard, &QSocketNotifier::activated, this, [heard] {
        heard->setEnabled(false);
        QCoreApplication::quit();
    });
    handle(tell);
}

AskedToEnd::~AskedToEnd() {
    if (ends_[0] < 0)
        return;
    handle(SIG_DFL);
    tellingEnd = -1;
    ::close(ends_[0]);
    ::close(ends_[1]);
}

} // namespace bastewright::app

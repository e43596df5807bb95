// SPDX-License-Identifier: MIT
#include "app/main/asked_to_end.h"

#include <QSocketNotifier>

#include <array>
#include <csignal>
#include <fcntl.h>
#include <unistd.h>

namespace sp::program {

namespace {

constexpr std::array kSignals{SIGTERM, SIGHUP, SIGINT};
std::array<int, 2> endPipe{-1, -1}; ///< a signal handler can do little but write to a pipe

void passOn(int) {
    const char something = 1;
    [[maybe_unused]] const auto written = ::write(endPipe[1], &something, 1);
}

void handle(void (*handler)(int)) {
    struct sigaction action {};
    action.sa_handler = handler;
    action.sa_flags = SA_RESTART;
    for (const int one : kSignals) ::sigaction(one, &action, nullptr);
}

} // namespace

AskedToEnd::AskedToEnd() {
    if (::pipe2(endPipe.data(), O_CLOEXEC | O_NONBLOCK) != 0)
        return; // they end the program at once, as they would anyway
    m_notifier = new QSocketNotifier(endPipe[0], QSocketNotifier::Read, this);
    connect(m_notifier, &QSocketNotifier::activated, this, [this] {
        m_notifier->setEnabled(false);
        Q_EMIT asked();
    });
    handle(passOn);
}

AskedToEnd::~AskedToEnd() {
    if (!m_notifier) return;
    handle(SIG_DFL);
    for (const int end : endPipe) ::close(end);
}

} // namespace sp::program

#include "moc_asked_to_end.cpp"

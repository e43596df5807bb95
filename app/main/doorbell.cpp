// SPDX-License-Identifier: MIT
#include "app/main/doorbell.h"

#include <QDir>
#include <QFile>
#include <QStandardPaths>

#include <algorithm>
#include <array>
#include <cerrno>
#include <cstring>
#include <poll.h>
#include <sys/socket.h>
#include <sys/un.h>
#include <unistd.h>

namespace sp::program {

namespace {

constexpr int kPatience = 2'000; ///< milliseconds
constexpr char kTaken = '+';
constexpr std::size_t kLongest = 8'192; ///< of a path, in bytes

/// False when the path does not fit.
bool addressOf(sockaddr_un& address) {
    address = {};
    address.sun_family = AF_UNIX;
    const auto folder = QStandardPaths::writableLocation(QStandardPaths::RuntimeLocation);
    const auto path = QFile::encodeName(QDir(folder).filePath(QStringLiteral("stonepenny.socket")));
    if (folder.isEmpty() || path.size() >= static_cast<qsizetype>(sizeof(address.sun_path))) return false;
    std::copy(path.begin(), path.end(), std::begin(address.sun_path));
    return true;
}

int newSocket() { return ::socket(AF_UNIX, SOCK_SEQPACKET | SOCK_CLOEXEC | SOCK_NONBLOCK, 0); }

bool isReady(int handle, short what) {
    pollfd wait{handle, what, 0};
    return ::poll(&wait, 1, kPatience) == 1;
}

bool isOurs(int handle) {
    ucred peer{};
    socklen_t size = sizeof(peer);
    return ::getsockopt(handle, SOL_SOCKET, SO_PEERCRED, &peer, &size) == 0 && peer.uid == ::getuid();
}

const sockaddr* generic(const sockaddr_un& address) { return reinterpret_cast<const sockaddr*>(&address); }

} // namespace

bool Doorbell::ring(const QString& file) {
    sockaddr_un address{};
    if (!addressOf(address)) return false;
    const int handle = newSocket();
    if (handle < 0) return false;
    bool isTaken = false;
    // An empty message would read as an end.
    const auto said = QByteArrayLiteral("open\n") + QFile::encodeName(file);
    if (::connect(handle, generic(address), sizeof(address)) == 0 && isOurs(handle) &&
        ::send(handle, said.constData(), static_cast<std::size_t>(said.size()), MSG_NOSIGNAL) == said.size() &&
        isReady(handle, POLLIN)) {
        char heard = 0;
        isTaken = ::recv(handle, &heard, 1, 0) == 1 && heard == kTaken;
    }
    ::close(handle);
    return isTaken;
}

Doorbell::Doorbell(QObject* parent)
    : QObject(parent) {}

Doorbell::~Doorbell() {
    if (m_handle < 0) return;
    m_notifier.reset();
    sockaddr_un address{};
    if (addressOf(address)) ::unlink(address.sun_path);
    ::close(m_handle);
}

bool Doorbell::listen() {
    sockaddr_un address{};
    if (!addressOf(address)) return false;
    const int handle = newSocket();
    if (handle < 0) return false;
    // Whoever runs was asked before, and did not answer: what lies there is of a program that ended.
    ::unlink(address.sun_path);
    if (::bind(handle, generic(address), sizeof(address)) != 0 || ::listen(handle, 8) != 0) {
        ::close(handle);
        return false;
    }
    m_handle = handle;
    m_notifier = std::make_unique<QSocketNotifier>(handle, QSocketNotifier::Read);
    connect(m_notifier.get(), &QSocketNotifier::activated, this, &Doorbell::answer);
    return true;
}

void Doorbell::answer() {
    const int caller = ::accept4(m_handle, nullptr, nullptr, SOCK_CLOEXEC | SOCK_NONBLOCK);
    if (caller < 0) return;
    std::array<char, kLongest> bytes{};
    const auto size = isOurs(caller) && isReady(caller, POLLIN) ? ::recv(caller, bytes.data(), bytes.size(), 0) : 0;
    const QByteArray said(bytes.data(), std::max<qsizetype>(0, size));
    const bool isAsked = said.startsWith("open\n");
    if (isAsked) ::send(caller, &kTaken, 1, MSG_NOSIGNAL);
    ::close(caller);
    if (isAsked) Q_EMIT rung(QFile::decodeName(said.mid(5)));
}

} // namespace sp::program

#include "moc_doorbell.cpp"

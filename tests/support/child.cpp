// SPDX-License-Identifier: MIT
#include "tests/support/child.h"

#include "core/base/ensure.h"

#include <array>
#include <cerrno>
#include <csignal>
#include <fcntl.h>
#include <poll.h>
#include <spawn.h>
#include <sys/wait.h>
#include <unistd.h>

namespace sp::test {

Child::Child(const std::vector<std::string>& command) {
    std::array<int, 2> in{};
    std::array<int, 2> out{};
    base::ensure(::pipe2(in.data(), O_CLOEXEC) == 0 && ::pipe2(out.data(), O_CLOEXEC) == 0, "tests can make pipes");
    posix_spawn_file_actions_t actions;
    posix_spawn_file_actions_init(&actions);
    posix_spawn_file_actions_adddup2(&actions, in[0], STDIN_FILENO);
    posix_spawn_file_actions_adddup2(&actions, out[1], STDOUT_FILENO);
    std::vector<std::string> words = command;
    std::vector<char*> arguments;
    for (auto& word : words) arguments.push_back(word.data());
    arguments.push_back(nullptr);
    const int failed = ::posix_spawn(&m_process, arguments[0], &actions, nullptr, arguments.data(), environ);
    posix_spawn_file_actions_destroy(&actions);
    base::ensure(failed == 0, "tests can start their child program");
    ::close(in[0]);
    ::close(out[1]);
    m_in = in[1];
    m_out = out[0];
}

Child::~Child() {
    if (m_in >= 0) ::close(m_in);
    if (m_out >= 0) ::close(m_out);
    if (m_process < 0) return;
    ::kill(m_process, SIGKILL);
    ::waitpid(m_process, nullptr, 0);
}

std::string Child::line() {
    for (;;) {
        if (const auto end = m_read.find('\n'); end != std::string::npos) {
            std::string said = m_read.substr(0, end);
            m_read.erase(0, end + 1);
            return said;
        }
        std::array<char, 4096> bytes{};
        const auto got = ::read(m_out, bytes.data(), bytes.size());
        if (got < 0 && errno == EINTR) continue;
        if (got <= 0) return {};
        m_read.append(bytes.data(), static_cast<std::size_t>(got));
    }
}

std::vector<std::string> Child::rest() {
    std::vector<std::string> lines;
    for (auto said = line(); !said.empty(); said = line()) lines.push_back(said);
    ::waitpid(m_process, nullptr, 0);
    m_process = -1;
    return lines;
}

std::vector<std::string> Child::finish() {
    ::close(m_in);
    m_in = -1;
    return rest();
}

std::vector<std::string> Child::killAfter(std::chrono::microseconds delay) {
    const timespec wait{.tv_sec = delay.count() / 1'000'000, .tv_nsec = delay.count() % 1'000'000 * 1'000};
    ::ppoll(nullptr, 0, &wait, nullptr);
    ::kill(m_process, SIGKILL);
    return rest();
}

} // namespace sp::test

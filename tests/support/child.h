// SPDX-License-Identifier: MIT
#pragma once

#include <chrono>
#include <string>
#include <sys/types.h>
#include <vector>

namespace sp::test {

/// Another program, its output read through a pipe. Killed at the end of its life if it still runs.
class Child {
  public:
    explicit Child(const std::vector<std::string>& command);
    ~Child();
    Child(const Child&) = delete;
    Child& operator=(const Child&) = delete;

    pid_t process() const { return m_process; }
    /// The next line it says; empty when it has ended.
    std::string line();
    /// Lets its standard input end and waits; everything it still says, line by line.
    std::vector<std::string> finish();
    /// SIGKILL after `delay`; everything it said before.
    std::vector<std::string> killAfter(std::chrono::microseconds delay);

  private:
    std::vector<std::string> rest();

    pid_t m_process = -1;
    int m_in = -1;
    int m_out = -1;
    std::string m_read;
};

} // namespace sp::test

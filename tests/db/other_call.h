// SPDX-License-Identifier: MIT
#pragma once

#include <gtest/gtest.h>
#include <sqlite3.h>

namespace sp::test {

/// One of the calls of SQLite's VFS is another, for as long as this lives (sqlite.org/c3ref/vfs.html, xSetSystemCall).
class OtherCall {
  public:
    template<class Call>
    OtherCall(const char* name, Call* call)
        : m_name(name) {
        set(reinterpret_cast<sqlite3_syscall_ptr>(call));
    }
    ~OtherCall() { set(nullptr); }
    OtherCall(const OtherCall&) = delete;
    OtherCall& operator=(const OtherCall&) = delete;

  private:
    void set(sqlite3_syscall_ptr call) const {
        auto* vfs = sqlite3_vfs_find(nullptr);
        EXPECT_EQ(vfs->xSetSystemCall(vfs, m_name, call), SQLITE_OK) << m_name;
    }

    const char* m_name;
};

} // namespace sp::test

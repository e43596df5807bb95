// SPDX-License-Identifier: MIT
#pragma once

#include <cstdio>
#include <cstdlib>

namespace sp::base {

/// A promise our own code makes to itself, checked in every build. Never used on input: input gets a Result.
inline void ensure(bool holds, const char* promise) {
    if (holds) return;
    std::fputs("stonepenny: broken promise: ", stderr);
    std::fputs(promise, stderr);
    std::fputc('\n', stderr);
    std::abort();
}

} // namespace sp::base

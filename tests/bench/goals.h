// SPDX-License-Identifier: MIT
#pragma once

#include <cstdio>
#include <ctime>

#include <sys/resource.h>

namespace sp::bench {

inline double processorMilliseconds() { return 1e3 * static_cast<double>(std::clock()) / CLOCKS_PER_SEC; }

/// Of programs that were started and have ended.
inline double childrensMilliseconds() {
    rusage used{};
    ::getrusage(RUSAGE_CHILDREN, &used);
    const auto of = [](const timeval& time) {
        return 1e3 * static_cast<double>(time.tv_sec) + 1e-3 * static_cast<double>(time.tv_usec);
    };
    return of(used.ru_utime) + of(used.ru_stime);
}

/// A goal in one line: what was reached of it, in percent, and whether that is enough.
inline void printGoal(const char* goal, int reached, int of, double percent) {
    const double share = of > 0 ? 100.0 * reached / of : 0;
    std::printf("%s: %d of %d, %.1f %% (goal %.0f %%): %s\n", goal, reached, of, share, percent,
                of > 0 && share >= percent ? "reached" : "missed");
}

} // namespace sp::bench

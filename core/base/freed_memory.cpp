// SPDX-License-Identifier: MIT
#include "core/base/freed_memory.h"

#include <cstdlib>
#ifdef __GLIBC__
#include <malloc.h>
#endif

namespace sp::base {

void keepFreedMemory() {
#ifdef __GLIBC__
    constexpr int kKept = 32 << 20; // the most that it takes;
    mallopt(M_MMAP_THRESHOLD, kKept);
    mallopt(M_TRIM_THRESHOLD, kKept);
#endif
}

} // namespace sp::base

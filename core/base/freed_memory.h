// SPDX-License-Identifier: MIT
#pragma once

namespace sp::base {

/// Keeps up to 32 MB of freed memory for the next use instead of giving it back to the system at once, where the C
/// library can be told so (glibc). A long order priced anew with every key would otherwise be given its memory page by
/// page each time, which takes longer than the pricing.
void keepFreedMemory();

} // namespace sp::base

// SPDX-License-Identifier: MIT
#pragma once

namespace sp::units {

/// For products of two 64-bit counts: square nanometres, micro-units times parts.
__extension__ using Int128 = __int128;

} // namespace sp::units

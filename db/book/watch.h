// SPDX-License-Identifier: MIT
#pragma once

#include <functional>
#include <stop_token>

namespace sp::db {

/// Who looks on at something that takes long: is told how far it is, and can stop it. Both in the thread that works.
struct Watch {
    std::stop_token stop{};
    std::function<void(double share)> progress{}; ///< 0 to 1; may be empty
};

} // namespace sp::db

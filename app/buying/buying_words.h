// SPDX-License-Identifier: MIT
#pragma once

#include <QCoreApplication>

namespace sp::buying {

/// Where the texts of this room's functions are found by the translators.
struct Buying {
    Q_DECLARE_TR_FUNCTIONS(Buying)
};

} // namespace sp::buying

// SPDX-License-Identifier: MIT
#pragma once

#include <Qt>

namespace sp::desk {

/// The role under which a row of a RuleTree's model says by which rule its figure was made.
inline constexpr int kRuleRole = Qt::UserRole + 1;

} // namespace sp::desk

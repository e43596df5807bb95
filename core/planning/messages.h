// SPDX-License-Identifier: MIT
#pragma once

#include "core/units/values.h"

namespace sp::planning {

#define SP_PLANNING_FAULTS(X) X(MaterialGone, NotFound) X(NothingToCut, OutOfRange)

// A line without a title.
#define SP_PLANNING_NOTES(X) X(ALine)

SP_FAULTS(Planning, SP_PLANNING_FAULTS)
SP_NOTES(Planning, SP_PLANNING_NOTES)

} // namespace sp::planning

// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/message.h"

namespace sp::scheduling {

// No bench time on any weekday; nothing that is done within the horizon, which is so many years; the work of a job of
// that number is not known, and why.
#define SP_SCHEDULING_FAULTS(X) X(NoBenchTime, Missing) X(NotWithinYears, OutOfRange) X(WorkNotKnown, Missing)

SP_FAULTS(Scheduling, SP_SCHEDULING_FAULTS)

} // namespace sp::scheduling

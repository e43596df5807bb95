// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/message.h"

namespace sp::base {

#define SP_BASE_FAULTS(X) X(NotAKey, Invalid)

// About: a sentence told of a named thing, "Jet: …".
#define SP_BASE_NOTES(X) X(About)

SP_FAULTS(Base, SP_BASE_FAULTS)
SP_NOTES(Base, SP_BASE_NOTES)

} // namespace sp::base

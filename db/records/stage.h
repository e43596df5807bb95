// SPDX-License-Identifier: MIT
#pragma once

#include "core/catalogue/stage.h"

namespace sp::db {

using catalogue::Stage;

} // namespace sp::db

// SPDX-License-Identifier: MIT
#pragma once

#include "db/records/stage.h"

#include <QString>

namespace sp::jobs {

/// "Quoted", "Let go": as a person reads it.
QString stageWord(db::Stage stage);

} // namespace sp::jobs

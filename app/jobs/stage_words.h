// SPDX-License-Identifier: MIT
#pragma once

#include "db/records/stage.h"

#include <QString>

namespace sp::jobs {

/// The name shown for a stage: "Quoted", "Let go".
QString stageWord(db::Stage stage);

} // namespace sp::jobs

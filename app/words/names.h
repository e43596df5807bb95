// SPDX-License-Identifier: MIT
#pragma once

#include "core/catalogue/bench.h"
#include "core/catalogue/material.h"

#include <QString>

namespace sp::words {

/// What a person calls them: "stone", "backing", "set up".
QString nameOf(catalogue::MaterialKind kind);
QString nameOf(catalogue::Step step);

} // namespace sp::words

// SPDX-License-Identifier: MIT
#pragma once

#include "core/catalogue/stage.h"

namespace sp::db {

using catalogue::Stage;

/// Whether a job in that stage goes by what the customer agreed to; its pieces count as sold.
constexpr bool isAgreedTo(Stage stage) {
    return stage == Stage::Agreed || stage == Stage::InProduction || stage == Stage::Ready || stage == Stage::Collected;
}

} // namespace sp::db

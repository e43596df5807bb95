// SPDX-License-Identifier: MIT
#include "db/migrations/migrations.h"

#include "db/migrations/0001_job_book.h"
#include "db/migrations/0002_kits_and_drawings.h"
#include "db/migrations/0003_jobs_and_records.h"
#include "db/migrations/0004_packing_and_freight.h"
#include "db/migrations/0005_item_numbers.h"
#include "db/migrations/0006_revisions.h"
#include "db/migrations/0007_change_and_coins.h"
#include "db/migrations/0008_kinds_of_movement.h"

#include <array>

namespace sp::db::migrations {

namespace {

constexpr std::array<std::string_view, 8> kAll{k0001JobBook,           k0002KitsAndDrawings, k0003JobsAndRecords,
                                               k0004PackingAndFreight, k0005ItemNumbers,     k0006Revisions,
                                               k0007ChangeAndCoins,    k0008KindsOfMovement};

} // namespace

std::span<const std::string_view> all() { return kAll; }

} // namespace sp::db::migrations

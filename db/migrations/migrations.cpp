// SPDX-License-Identifier: MIT
#include "db/migrations/migrations.h"

#include "db/migrations/0001_job_book.h"
#include "db/migrations/0002_kits_and_drawings.h"
#include "db/migrations/0003_jobs_and_records.h"

#include <array>

namespace sp::db::migrations {

namespace {

constexpr std::array<std::string_view, 3> kAll{k0001JobBook, k0002KitsAndDrawings, k0003JobsAndRecords};

} // namespace

std::span<const std::string_view> all() { return kAll; }

} // namespace sp::db::migrations

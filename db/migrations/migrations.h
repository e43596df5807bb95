// SPDX-License-Identifier: MIT
#pragma once

#include <span>
#include <string_view>

namespace sp::db::migrations {

/// What brings a book from one version to the next, in order and without gaps: all()[n] makes version n + 1.
/// They run with foreign keys off (a table that others refer to can only be made anew so); afterwards every reference
/// is gone through. The text of a released one is never changed.
std::span<const std::string_view> all();

/// The digest of the schema that all() makes (db/book/opening.h says how it is taken), so that opening a book need not
/// make it anew. tests/db/schema_test.cpp holds it to the truth and tells the new one after a migration.
inline constexpr std::string_view kNewestSchema = "1c55f598e85804ac69ba6bbfc8d1e86029fc74fd3a3c3cfd093d96940745ef60";

/// Marks a file as a job book, in the header's application_id: the letters SPJB.
inline constexpr int kApplicationId = 0x53504A42;

} // namespace sp::db::migrations

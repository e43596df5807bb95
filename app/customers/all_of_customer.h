// SPDX-License-Identifier: MIT
#pragma once

#include "db/book/book.h"
#include "db/book/if_there.h"

#include <nlohmann/json.hpp>

#include <cstdint>
#include <filesystem>
#include <functional>
#include <string>

namespace sp::customers {

/// What writes papers as PDF, which needs fonts.
struct PaperWriters {
    std::function<base::Done(db::Book& book, const db::Quote& quote, const std::string& path, db::IfThere ifThere)>
        quote;
    std::function<base::Done(const db::IssuedBill& bill, const std::string& path, db::IfThere ifThere)> bill;
};

/// What a person is called and reached by, their note and certificate.
nlohmann::ordered_json contactJson(const catalogue::Customer& customer);

/// Writes all that the book has of one customer into a new or an empty folder, its owner's alone: customer.json, and
/// each paper as it was sealed; how many papers. Errors: NotFound; Conflict where something is in the folder; those of
/// the book and of the writers, and then what was written by then stays.
base::Result<std::int64_t> writeAllOf(db::Book& book, const base::Id& customer, const std::filesystem::path& folder,
                                      const PaperWriters& writers);

} // namespace sp::customers

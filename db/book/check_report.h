// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/message.h"

#include <cstdint>
#include <vector>

namespace sp::db {

/// What "check" found. Empty `damage` means the book holds together.
struct CheckReport {
    std::vector<base::Message> damage;
    std::int64_t quotes = 0;
    std::int64_t sealedQuotes = 0; ///< whose digest was compared
    std::int64_t bills = 0;        ///< invoices, receipts and credit notes
    std::int64_t designs = 0;
    std::int64_t materials = 0;
};

} // namespace sp::db

// SPDX-License-Identifier: MIT
#pragma once

#include "core/catalogue/order.h"
#include "core/catalogue/price_book.h"

#include <random>

namespace sp::reference {

struct PriceCase {
    catalogue::Order order;
    catalogue::PriceBook book;
};

/// A made-up order and shop that pricing takes: one to four lines on backing, on blanks or on the customer's garments,
/// every figure of the shop drawn or switched off. Few sizes and sheets, so that laying out is remembered. Invented.
PriceCase randomPriceCase(std::mt19937_64& random);

} // namespace sp::reference

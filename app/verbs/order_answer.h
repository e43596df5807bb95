// SPDX-License-Identifier: MIT
#pragma once

#include "app/verbs/json_words.h"
#include "core/base/result.h"
#include "core/catalogue/order.h"
#include "core/catalogue/price_book.h"

#include <string>

namespace sp::verbs {

/// What an order comes to, for the customer and for the owner, as JSON (app/verbs/ORDERS.md) and as text.
struct OrderAnswer {
    Json json;
    std::string text;
};

/// Errors: as pricing::priceOrder.
base::Result<OrderAnswer> answerFor(const catalogue::Order& order, const catalogue::PriceBook& book);

} // namespace sp::verbs

// SPDX-License-Identifier: MIT
#pragma once

#include "app/verbs/json_words.h"
#include "core/base/result.h"
#include "core/catalogue/order.h"
#include "core/catalogue/price_book.h"
#include "core/supply/cheaper_packs.h"

#include <string>

namespace sp::verbs {

/// What an order comes to, for the customer and for the owner, as JSON (app/verbs/ORDERS.md) and as text.
struct OrderAnswer {
    Json json;
    std::string text;
};

/// `offers`: what the shop could buy, for what is said of its prices. Errors: as pricing::priceOrder.
base::Result<OrderAnswer> answerFor(const catalogue::Order& order, const catalogue::PriceBook& book,
                                    const supply::PackOffers& offers);

} // namespace sp::verbs

// SPDX-License-Identifier: MIT
#pragma once

#include "app/verbs/json_words.h"
#include "app/verbs/order_customer.h"
#include "db/book/book.h"

namespace sp::verbs {

/// Gives a quote of that order, quoted on its own day, at today's prices; as the next revision of a given one where one
/// is named. Errors: those of pricing::priceOrder, and the book's.
base::Result<db::Quote> give(db::Book& book, const catalogue::Order& order, const db::Quote* revised = nullptr);
/// Whoever is not in the book yet is made a customer with it, or neither is done.
base::Result<db::Quote> give(db::Book& book, const OrderFor& of, const db::Quote* revised = nullptr);

/// What is answered of a quote that was just given.
Json givenJson(const db::Quote& issued);
std::string givenText(const db::Quote& issued);

} // namespace sp::verbs

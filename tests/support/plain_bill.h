// SPDX-License-Identifier: MIT
#pragma once

#include "db/book/book.h"

namespace sp::test {

/// The sheet of a bill with little more than its figures on it.
inline quoting::SheetContent plainBill(const quoting::Bill& bill, const db::Quote& quote, const catalogue::Shop&) {
    quoting::SheetContent sheet;
    sheet.language = "en";
    sheet.title = bill.number;
    if (quote.frozen->customer) sheet.customer.name = quote.frozen->customer->name;
    sheet.toPay = {bill.amount, std::to_string(bill.amount.micros())};
    sheet.balance = {bill.account.left, std::to_string(bill.account.left.micros())};
    return sheet;
}

} // namespace sp::test

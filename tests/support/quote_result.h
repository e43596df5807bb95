// SPDX-License-Identifier: MIT
#pragma once

#include "db/book/book.h"

#include <string>

namespace sp::test {

/// A result that comes to `total`, with a sheet that says little more than that.
inline db::QuoteResult resultOf(units::Money total) {
    pricing::PricedOrder priced;
    priced.total = priced.balance = total;
    return {priced, {}, [total](const std::string& number) {
                quoting::SheetContent sheet;
                sheet.language = "en";
                sheet.title = "Quote " + number;
                sheet.customer.name = "Rowan Bakery";
                sheet.toPay = {total, std::to_string(total.micros())};
                return sheet;
            }};
}

} // namespace sp::test

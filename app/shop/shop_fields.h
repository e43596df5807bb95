// SPDX-License-Identifier: MIT
#pragma once

#include "app/shop/record_fields.h"
#include "core/catalogue/shop.h"

namespace sp::shop {

/// The shop's currency, by its three letters.
void putCurrency(RecordFields<catalogue::Shop>& shop, FieldCard* card, const desk::Formatter& formatter,
                 const char* name);

} // namespace sp::shop

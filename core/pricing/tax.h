// SPDX-License-Identifier: MIT
#pragma once

#include "core/catalogue/order.h"
#include "core/catalogue/shop.h"
#include "core/units/currency.h"
#include "core/units/money.h"

#include <cstddef>
#include <optional>
#include <span>
#include <string>
#include <string_view>

namespace sp::pricing {

/// Which of the shop's rates is called so: 0 for the usual one and for an empty name, n for its nth further one;
/// nothing where there is none of that name.
std::optional<std::size_t> findRate(const catalogue::TaxRule& rule, std::string_view name);
inline units::Rate rateAt(const catalogue::TaxRule& rule, std::size_t number) {
    return number == 0 ? rule.rate : rule.others.at(number - 1).rate;
}
inline const std::string& nameAt(const catalogue::TaxRule& rule, std::size_t number) {
    return number == 0 ? rule.name : rule.others.at(number - 1).name;
}
/// The rate on a line: nothing for one that is not taxed or for an exempt customer, and for a name that is gone.
units::Rate rateOn(const catalogue::OrderLine& line, const catalogue::TaxRule& rule, bool exempt);

/// The tax on taxable amounts (whole minor units) of one rate: the exact product rounded once, half up, on their sum or
/// on each of them, as `rule.rounding` says. For an inclusive rule it is the part of the amounts that is tax. Throws
/// base::Overflow.
/// Source: the uniform rule of the US Streamlined agreement, section 324, as in R.I. Gen. Laws 44-18.1-25; which of
/// the two ways a shop may use is for the shop to confirm with its tax authority.
units::Money taxOn(std::span<const units::Money> taxable, const catalogue::TaxRule& rule, units::Rate rate,
                   const units::Currency& currency);

} // namespace sp::pricing

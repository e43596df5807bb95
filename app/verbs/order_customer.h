// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/result.h"
#include "core/catalogue/customer.h"
#include "core/catalogue/order.h"

#include <optional>
#include <string>
#include <vector>

namespace sp::verbs {

/// An order and for whom it is.
struct OrderFor {
    catalogue::Order order;
    std::optional<catalogue::Customer> stranger; ///< who is in no entry of the book yet, without a key; else none
};

/// Says that it is for whoever is called so, or has that telephone number or mail address; a name that is nobody's is a
/// stranger's. A certificate that holds on the order's day asks for exemption. Errors: Missing for no name; Ambiguous
/// as `named`.
base::Done setCustomer(OrderFor& of, const std::vector<catalogue::Customer>& customers, const std::string& name);

} // namespace sp::verbs

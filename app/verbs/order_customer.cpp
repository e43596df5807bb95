// SPDX-License-Identifier: MIT
#include "app/verbs/order_customer.h"

#include "app/verbs/named.h"

#include <algorithm>

namespace sp::verbs {

using catalogue::Customer;

base::Done setCustomer(OrderFor& of, const std::vector<Customer>& customers, const std::string& name) {
    if (name.find_first_not_of(' ') == std::string::npos)
        return words::fail(base::Code::Missing, "customer",
                           QT_TRANSLATE_NOOP("App", "The customer has no name; give one, or leave the customer out."));
    const auto found = findNamed(customers, name);
    if (!found) return base::fail(found.error());
    const auto reached = std::ranges::find_if(
        customers, [&](const Customer& customer) { return customer.telephone == name || customer.mail == name; });
    const auto* known = *found == nullptr && reached != customers.end() ? &*reached : *found;
    if (known == nullptr) {
        of.stranger = Customer{};
        of.stranger->name = name;
        return {};
    }
    of.order.customer = known->id;
    of.order.asksExemption = catalogue::certificateOn(*known, of.order.quotedOn).has_value();
    return {};
}

} // namespace sp::verbs

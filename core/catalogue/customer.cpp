// SPDX-License-Identifier: MIT
#include "core/catalogue/customer.h"

#include "core/catalogue/order.h"
#include "core/catalogue/reminder.h"

#include <algorithm>

namespace sp::catalogue {

namespace {

/// Whether the other one is good for longer, and is in force already or from the day after on.
bool goesOnFor(const Certificate& other, const Certificate& one, units::Date today) {
    return (!other.expiresOn || *other.expiresOn > *one.expiresOn) &&
           other.issuedOn <= std::max(one.expiresOn->plusDays(1), today);
}

} // namespace

std::vector<Certificate> certificatesOf(const Customer& customer) {
    std::vector<Certificate> all;
    if (customer.certificate) all.push_back(*customer.certificate);
    all.insert(all.end(), customer.otherCertificates.begin(), customer.otherCertificates.end());
    return all;
}

std::vector<Certificate> certificatesOn(const Customer& customer, units::Date day) {
    auto all = certificatesOf(customer);
    std::erase_if(all, [day](const Certificate& one) { return !one.holdsOn(day); });
    return all;
}

std::optional<Certificate> certificateOn(const Customer& customer, units::Date day) {
    auto all = certificatesOn(customer, day);
    return all.empty() ? std::nullopt : std::optional(std::move(all.front()));
}

std::vector<Certificate> endingCertificates(const Customer& customer, units::Date today) {
    const auto lastDay = today.plusDays(kCertificateEndsSoon);
    const auto all = certificatesOf(customer);
    std::vector<Certificate> ending;
    for (const auto& one : all) {
        if (!one.expiresOn || *one.expiresOn > lastDay) continue;
        const bool isFollowed = std::ranges::any_of(all, [&](const Certificate& other) {
            return isOnePlace(other.place, one.place) && goesOnFor(other, one, today);
        });
        if (!isFollowed) ending.push_back(one);
    }
    std::ranges::stable_sort(ending, {}, [](const Certificate& one) { return *one.expiresOn; });
    return ending;
}

} // namespace sp::catalogue

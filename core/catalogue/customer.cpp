// SPDX-License-Identifier: MIT
#include "core/catalogue/customer.h"

#include <algorithm>

namespace sp::catalogue {

namespace {

bool isOnePlace(const std::string& a, const std::string& b) {
    const auto small = [](char c) { return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c; };
    return std::ranges::equal(a, b, {}, small, small);
}

/// Whether the other one is good for longer.
bool outlasts(const Certificate& other, const Certificate& one) {
    return !other.expiresOn || *other.expiresOn > *one.expiresOn;
}

} // namespace

std::vector<Certificate> certificatesOf(const Customer& customer) {
    std::vector<Certificate> all;
    if (customer.certificate) all.push_back(*customer.certificate);
    all.insert(all.end(), customer.otherCertificates.begin(), customer.otherCertificates.end());
    return all;
}

std::optional<Certificate> certificateOn(const Customer& customer, units::Date day) {
    for (auto& one : certificatesOf(customer))
        if (one.holdsOn(day)) return std::move(one);
    return std::nullopt;
}

std::vector<Certificate> endingCertificates(const Customer& customer, units::Date lastDay) {
    const auto all = certificatesOf(customer);
    std::vector<Certificate> ending;
    for (const auto& one : all) {
        if (!one.expiresOn || *one.expiresOn > lastDay) continue;
        const bool isFollowed = std::ranges::any_of(
            all, [&](const Certificate& other) { return isOnePlace(other.place, one.place) && outlasts(other, one); });
        if (!isFollowed) ending.push_back(one);
    }
    std::ranges::stable_sort(ending, {}, [](const Certificate& one) { return *one.expiresOn; });
    return ending;
}

} // namespace sp::catalogue

// SPDX-License-Identifier: MIT
#include "core/pricing/bill.h"

#include "core/pricing/messages.h"
#include "core/units/apportion.h"
#include "core/units/text.h"

#include <algorithm>

namespace sp::pricing {

using units::Money;

std::vector<BillPart> partsOf(std::span<const TaxAmount> taxes, bool included, Money total) {
    std::vector<BillPart> parts;
    for (const auto& tax : taxes) {
        if (tax.on.isZero() && tax.tax.isZero()) continue;
        parts.push_back({tax.name, tax.rate, included ? tax.on - tax.tax : tax.on, tax.tax});
    }
    const auto untaxed = total - wholeOf(parts);
    if (!untaxed.isZero()) parts.insert(parts.begin(), BillPart{{}, {}, untaxed, {}});
    return parts;
}

Money wholeOf(std::span<const BillPart> parts) {
    Money sum;
    for (const auto& part : parts) sum += part.whole();
    return sum;
}

Money taxOf(std::span<const BillPart> parts) {
    Money sum;
    for (const auto& part : parts) sum += part.tax;
    return sum;
}

void addParts(std::vector<BillPart>& parts, std::span<const BillPart> more, int sign) {
    for (const auto& part : more) {
        const auto isSame = [&](const BillPart& other) { return other.name == part.name && other.rate == part.rate; };
        auto found = std::ranges::find_if(parts, isSame);
        if (found == parts.end()) found = parts.insert(parts.end(), BillPart{part.name, part.rate, {}, {}});
        found->net += sign < 0 ? -part.net : part.net;
        found->tax += sign < 0 ? -part.tax : part.tax;
    }
    std::erase_if(parts, [](const BillPart& part) { return part.net.isZero() && part.tax.isZero(); });
}

bool areAllOwed(std::span<const BillPart> parts) {
    return std::ranges::none_of(parts,
                                [](const BillPart& part) { return part.net.isNegative() || part.tax.isNegative(); });
}

base::Result<std::vector<BillPart>> shareOf(std::span<const BillPart> left, Money amount,
                                            const units::Currency& currency) {
    const auto told = [&](Money money) { return units::formatMoney(money, currency); };
    if (amount.isZero() || amount.isNegative()) return base::fail(Fault::NothingCredited, "amount");
    if (units::toMinor(amount.exact(), currency) != amount)
        return base::fail(Fault::CreditBelowMinor, "amount", told(amount));
    const auto whole = wholeOf(left);
    if (amount > whole) return base::fail(Fault::CreditBeyond, "amount", told(amount), told(whole));
    // Running totals are rounded, each of a share of at most 1 of whole minor units: no part takes more than it has.
    std::vector<Money> weights;
    for (const auto& part : left) weights.insert(weights.end(), {part.net, part.tax});
    const auto shares = units::apportion(amount, weights, currency);
    std::vector<BillPart> parts;
    for (std::size_t i = 0; i < left.size(); ++i)
        parts.push_back({left[i].name, left[i].rate, shares[2 * i], shares[2 * i + 1]});
    std::erase_if(parts, [](const BillPart& part) { return part.net.isZero() && part.tax.isZero(); });
    return parts;
}

} // namespace sp::pricing

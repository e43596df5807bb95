// SPDX-License-Identifier: MIT
#include "core/pricing/account.h"

#include "core/pricing/messages.h"
#include "core/units/text.h"

#include <algorithm>

namespace sp::pricing {

using units::Money;

Money Account::depositLeft() const { return std::max(Money{}, deposit - paid); }

Money Account::next() const { return depositLeft().isZero() ? left : depositLeft(); }

Account accountOf(Money total, Money deposit, std::span<const catalogue::Payment> payments) {
    Account account{total, deposit, {}, {}, {}};
    for (const auto& payment : payments) account.paid += payment.amount;
    account.left = std::max(Money{}, total - account.paid);
    account.credit = std::max(Money{}, account.paid - total);
    return account;
}

base::Result<void> checkPayment(const catalogue::Payment& payment, const Account& account,
                                const units::Currency& currency, units::Date today, Beyond beyond) {
    const auto told = [&](Money amount) { return units::formatMoney(amount, currency); };
    if (payment.amount.isZero()) return base::fail(Fault::NothingPaid, "amount");
    if (payment.paidOn > today) return base::fail(Fault::PaidLater, "day", payment.paidOn);
    if (beyond == Beyond::Refused && payment.amount > account.left)
        return base::fail(Fault::PaidBeyond, "amount", told(payment.amount), told(account.left));
    if (payment.amount.isNegative() && -payment.amount > account.paid)
        return base::fail(Fault::GivenBackBeyond, "amount", told(-payment.amount), told(account.paid));
    return {};
}

} // namespace sp::pricing

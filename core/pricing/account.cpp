// SPDX-License-Identifier: MIT
#include "core/pricing/account.h"

#include "core/pricing/messages.h"
#include "core/units/text.h"

#include <algorithm>

namespace sp::pricing {

using catalogue::Payment;
using catalogue::PaymentRole;
using units::Money;

Money Account::depositLeft() const { return std::max(Money{}, deposit - paid); }

Money Account::next(Tender tender) const {
    const auto unit = tender == Tender::Cash ? coin : Money{};
    const auto asked = depositLeft();
    const auto rest = countedOut(left, unit);
    if (rest.isZero()) return left; // settled by rounding alone
    if (asked.isZero() || asked == left) return rest;
    const auto counted = countedOut(asked, unit);
    return std::min(rest, counted < asked ? counted + unit : counted);
}

Account accountOf(Money total, Money deposit, std::span<const Payment> payments) {
    Account account{total, deposit, {}, {}, {}, {}, {}};
    for (const auto& payment : payments) {
        account.paid += payment.amount;
        if (payment.role == PaymentRole::Rounding) account.rounded += payment.amount;
    }
    account.left = std::max(Money{}, total - account.paid);
    account.credit = std::max(Money{}, account.paid - total);
    return account;
}

Money receivedOf(const Payment& payment, std::span<const Payment> all) {
    const auto made = payment.reverses.value_or(payment.id);
    auto received = payment.amount;
    for (const auto& row : all)
        if (row.role == PaymentRole::Change && row.partOf == made &&
            row.reverses.has_value() == payment.reverses.has_value())
            received += row.amount;
    return received;
}

Money countedOut(Money amount, Money coin) {
    if (coin.isZero()) return amount;
    const auto rest = amount.micros() % coin.micros(); // of the sign of the amount
    const auto half = coin.micros() - coin.micros() / 2;
    auto counted = amount - Money::fromMicros(rest);
    if (rest >= half) counted += coin;
    if (-rest >= half) counted -= coin;
    return counted;
}

namespace {

/// The rows, their rounding last.
class Entries {
  public:
    explicit Entries(const Payment& payment)
        : m_payment(payment) {}

    void add(PaymentRole role, Money amount) {
        if (amount.isZero()) return;
        auto& row = m_rows.emplace_back(m_payment);
        row.role = role;
        row.amount = amount;
        if (m_rows.size() > 1) row.note.clear();
    }
    std::vector<Payment> rows() const { return m_rows; }

  private:
    Payment m_payment;
    std::vector<Payment> m_rows;
};

/// What is settled to the last part by money of this amount; nothing where it is only a part of something.
std::optional<Money> settledBy(Money amount, const Account& account, Money coin) {
    const auto settles = [&](Money whole) {
        return !whole.isZero() && (amount == whole || amount == countedOut(whole, coin));
    };
    if (settles(account.left)) return account.left;
    if (settles(-account.credit)) return -account.credit;
    if (settles(-account.paid)) return -account.paid;
    return std::nullopt;
}

} // namespace

base::Result<std::vector<Payment>> entriesOf(const Payment& payment, const Account& account,
                                             const units::Currency& currency, Tender tender, units::Date today,
                                             Beyond beyond) {
    const auto told = [&](Money amount) { return units::formatMoney(amount, currency); };
    const auto coin = tender == Tender::Cash ? account.coin : Money{};
    const auto amount = payment.amount;
    if (amount.isZero()) return base::fail(Fault::NothingPaid, "amount");
    if (payment.paidOn > today) return base::fail(Fault::PaidLater, "day", payment.paidOn);
    Entries entries(payment);
    if (const auto whole = settledBy(amount, account, coin)) {
        const auto counted = countedOut(*whole, coin);
        entries.add(PaymentRole::Money, counted);
        entries.add(PaymentRole::Rounding, *whole - counted);
        return entries.rows();
    }
    const auto minor = Money::fromMicros(currency.microsPerMinor());
    const auto smallest = std::max(coin, minor);
    if (amount.micros() % smallest.micros() != 0)
        return base::fail(Fault::PaidBelowCoin, "amount",
                          units::formatExact(amount.isNegative() ? -amount : amount, currency), told(smallest));
    if (amount.isNegative() && -amount > account.paid)
        return base::fail(Fault::GivenBackBeyond, "amount", told(-amount), told(account.paid));
    entries.add(PaymentRole::Money, amount);
    const auto due = countedOut(account.left, coin);
    if (amount <= due || beyond == Beyond::Kept) return entries.rows();
    if (account.left.isZero()) return base::fail(Fault::NothingLeftToPay, "amount", told(amount));
    const auto asked = told(due.isZero() ? account.left : due);
    if (tender != Tender::Cash) return base::fail(Fault::ChangeNotInCash, "amount", told(amount), asked);
    if (beyond == Beyond::Refused || due.isZero()) return base::fail(Fault::PaidBeyond, "amount", told(amount), asked);
    entries.add(PaymentRole::Change, due - amount);
    entries.add(PaymentRole::Rounding, account.left - due);
    return entries.rows();
}

} // namespace sp::pricing

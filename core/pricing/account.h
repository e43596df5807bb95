// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/result.h"
#include "core/catalogue/payment.h"
#include "core/units/currency.h"
#include "core/units/money.h"

#include <span>

namespace sp::pricing {

/// What a job comes to and what was paid for it. `paid` + `left` − `credit` = `total`; one of `left` and `credit` is 0.
struct Account {
    units::Money total;
    units::Money deposit; ///< asked before it is begun; at most the total
    units::Money paid;    ///< received less given back; what was taken back does not count
    units::Money left;    ///< still to pay
    units::Money credit;  ///< paid beyond the total, the customer's

    /// What is missing of the deposit.
    units::Money depositLeft() const;
    /// What one asks for next: the rest of the deposit, then the rest.
    units::Money next() const;

    friend bool operator==(const Account&, const Account&) = default;
};

/// The account of a job. Throws base::Overflow.
Account accountOf(units::Money total, units::Money deposit, std::span<const catalogue::Payment> payments);

/// What becomes of money beyond what is left to pay.
enum class Beyond {
    Refused, ///< it is taken for a slip
    Kept     ///< it is kept as the customer's credit
};

/// Whether a payment can be made on an account. Errors: Invalid for nothing, for a day after `today` and, where it is
/// refused, for more than is left; for more given back than was paid.
base::Result<void> checkPayment(const catalogue::Payment& payment, const Account& account,
                                const units::Currency& currency, units::Date today, Beyond beyond);

} // namespace sp::pricing

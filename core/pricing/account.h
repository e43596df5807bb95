// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/result.h"
#include "core/catalogue/payment.h"
#include "core/units/currency.h"
#include "core/units/money.h"

#include <span>
#include <vector>

namespace sp::pricing {

/// How money changes hands: what is not cash is paid to the last part, and has no change.
enum class Tender { Cash, Other };

/// The nearest multiple of `coin`, halves away from zero; `amount` itself where the coin is 0. The sum that is paid is
/// rounded, not its parts, and only in cash: so the guidance of Canada's finance ministry on the end of the cent in
/// 2013 (1 and 2 down, 3 and 4 up to 5 cents) and Sweden's act 1970:1029 on rounding to whole kronor (50 öre up); both
/// from memory. Throws base::Overflow.
units::Money countedOut(units::Money amount, units::Money coin);

/// What a job comes to and what was paid for it. `paid` + `left` − `credit` = `total`; one of `left` and `credit` is 0.
struct Account {
    units::Money total;
    units::Money deposit; ///< asked before it is begun; at most the total
    units::Money paid;    ///< received less given back, and `rounded`; what was taken back does not count
    units::Money left;    ///< still to pay
    units::Money credit;  ///< paid beyond the total, the customer's
    units::Money rounded; ///< of `paid`, what nobody handed over: cash was rounded to a coin by it
    units::Money coin;    ///< that cash is rounded to, a whole number of minor units; 0: none

    /// What is missing of the deposit.
    units::Money depositLeft() const;
    /// What one asks for next: the rest of the deposit, then the rest. In cash as it can be counted out; a deposit then
    /// up to the next coin, so that nothing of it is missing, but no more than the rest. A rest that is less than any
    /// coin is told as it is: a row of rounding settles it.
    units::Money next(Tender tender = Tender::Other) const;
    /// Received less given back: what is in the drawer and at the bank of it.
    units::Money money() const { return paid - rounded; }

    friend bool operator==(const Account&, const Account&) = default;
};

/// The account of a job. Throws base::Overflow.
Account accountOf(units::Money total, units::Money deposit, std::span<const catalogue::Payment> payments);

/// What was received by a row of money, less the change that was given of it; `all` are the rows of its job. Of a row
/// that takes one back, what is given back of both.
units::Money receivedOf(const catalogue::Payment& payment, std::span<const catalogue::Payment> all);

/// What becomes of money beyond what is left to pay.
enum class Beyond {
    Refused, ///< it is taken for a slip
    Kept,    ///< it is kept as the customer's credit
    Change   ///< it is given back at once, in cash
};

/// The rows that a payment makes in the ledger, its money first; none has a key of its own. In cash, paying what is
/// left (or that sum as it is counted out) and giving back all of the credit, or all that was paid, is settled by a row
/// of rounding; where nothing can be counted out that is the only row. Money beyond what is left becomes what `beyond`
/// says. Errors: Invalid for nothing, for what cannot be counted out, for a day after `today`; for more than is left
/// where it is refused or all of it would be change; for change that is not cash; for more given back than was paid.
base::Result<std::vector<catalogue::Payment>> entriesOf(const catalogue::Payment& payment, const Account& account,
                                                        const units::Currency& currency, Tender tender,
                                                        units::Date today, Beyond beyond);

} // namespace sp::pricing

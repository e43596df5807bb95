// SPDX-License-Identifier: MIT
#include "core/pricing/account.h"

#include "core/pricing/messages.h"
#include "tests/support/seed.h"

#include <gmock/gmock.h>

#include <random>

namespace sp::pricing {

namespace {

using catalogue::Payment;
using units::Money;

constexpr std::int64_t kCent = 10'000; ///< micro-units

Money cents(std::int64_t amount) { return Money::fromMicros(amount * kCent); }

Payment of(Money amount) {
    Payment payment;
    payment.amount = amount;
    payment.kind = "Cash";
    payment.paidOn = *units::Date::parse("2026-11-20");
    return payment;
}

const units::Date kToday = *units::Date::parse("2026-11-30");

base::Result<void> checked(const Payment& payment, const Account& account, Beyond beyond = Beyond::Refused) {
    return checkPayment(payment, account, units::Currency{}, kToday, beyond);
}

} // namespace

// By hand: of 571.75 with 290.00 asked first, 200.00 leave 90.00 of the deposit and 371.75 in all.
TEST(Account, asksForTheDepositFirstAndThenForTheRest) {
    auto account = accountOf(cents(57175), cents(29000), {});
    EXPECT_EQ(account.left, cents(57175));
    EXPECT_EQ(account.next(), cents(29000));
    const std::vector<Payment> some{of(cents(20000))};
    account = accountOf(cents(57175), cents(29000), some);
    EXPECT_EQ(account.depositLeft(), cents(9000));
    EXPECT_EQ(account.next(), cents(9000));
    EXPECT_EQ(account.left, cents(37175));
    const std::vector<Payment> more{of(cents(20000)), of(cents(9000))};
    account = accountOf(cents(57175), cents(29000), more);
    EXPECT_TRUE(account.depositLeft().isZero());
    EXPECT_EQ(account.next(), cents(28175));
}

TEST(Account, whatIsPaidBeyondIsCredit) {
    const std::vector<Payment> payments{of(cents(60000)), of(-cents(1000))};
    const auto account = accountOf(cents(57175), cents(29000), payments);
    EXPECT_EQ(account.paid, cents(59000));
    EXPECT_EQ(account.left, Money{});
    EXPECT_EQ(account.credit, cents(1825));
}

TEST(Account, refusesWhatCannotBeAPayment) {
    const std::vector<Payment> payments{of(cents(10000))};
    const auto account = accountOf(cents(57175), cents(29000), payments);
    EXPECT_EQ(checked(of(Money{}), account).error().fault, idOf(Fault::NothingPaid));
    auto later = of(cents(100));
    later.paidOn = kToday.plusDays(1);
    EXPECT_EQ(checked(later, account).error().fault, idOf(Fault::PaidLater));
    EXPECT_TRUE(checked(of(cents(47175)), account));
    EXPECT_EQ(checked(of(cents(47176)), account).error().fault, idOf(Fault::PaidBeyond));
    EXPECT_TRUE(checked(of(cents(47176)), account, Beyond::Kept));
    EXPECT_TRUE(checked(of(-cents(10000)), account));
    EXPECT_EQ(checked(of(-cents(10001)), account).error().fault, idOf(Fault::GivenBackBeyond));
}

TEST(Account, holdsItsLawWhateverIsPaidAndGivenBack) {
    std::mt19937_64 random(test::printedSeed());
    std::uniform_int_distribution<std::int64_t> amount(-50'000, 50'000);
    for (int round = 0; round < 1'000; ++round) {
        const auto total = cents(std::abs(amount(random)));
        const auto deposit = cents(std::abs(amount(random)) % (total.micros() / kCent + 1));
        std::vector<Payment> payments;
        Money received;
        Money givenBack;
        for (int i = 0; i < 12; ++i) {
            const auto payment = of(cents(amount(random)));
            const auto account = accountOf(total, deposit, payments);
            if (!checked(payment, account, round % 2 == 0 ? Beyond::Kept : Beyond::Refused)) continue;
            payments.push_back(payment);
            (payment.amount.isNegative() ? givenBack : received) += payment.amount;
        }
        const auto account = accountOf(total, deposit, payments);
        EXPECT_EQ(account.paid, received + givenBack);
        EXPECT_EQ(account.paid + account.left - account.credit, total);
        EXPECT_FALSE(account.paid.isNegative());
        EXPECT_TRUE(account.left.isZero() || account.credit.isZero());
        EXPECT_TRUE(round % 2 == 0 || account.credit.isZero()) << "nothing beyond was taken";
    }
}

} // namespace sp::pricing

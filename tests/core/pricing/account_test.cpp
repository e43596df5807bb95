// SPDX-License-Identifier: MIT
#include "core/pricing/account.h"

#include "core/pricing/messages.h"
#include "tests/support/amounts.h"
#include "tests/support/described.h"
#include "tests/support/seed.h"

#include <gmock/gmock.h>

#include <array>
#include <random>

namespace sp::pricing {

namespace {

using catalogue::Payment;
using units::Money;

constexpr std::int64_t kCent = 10'000; ///< micro-units

using sp::support::cents;

Payment of(Money amount) {
    Payment payment;
    payment.amount = amount;
    payment.kind = "Cash";
    payment.paidOn = *units::Date::parse("2026-11-20");
    return payment;
}

const units::Date kToday = *units::Date::parse("2026-11-30");

using Rows = std::vector<Payment>;

base::Result<Rows> entered(const Payment& payment, const Account& account, Beyond beyond = Beyond::Refused,
                           Tender tender = Tender::Other) {
    return entriesOf(payment, account, units::Currency{}, tender, kToday, beyond);
}

/// Of `left`, nothing paid yet, where cash has no coin below this.
Account owing(Money left, Money coin) {
    auto account = accountOf(left, {}, {});
    account.coin = coin;
    return account;
}

/// The amounts in cents, each with the letter of its role.
std::string written(const base::Result<Rows>& rows) {
    if (!rows) return describe(rows.error());
    std::string text;
    for (const auto& row : *rows)
        text += (text.empty() ? "" : " ") + std::string(1, "mcr"[static_cast<int>(row.role)]) +
                std::to_string(row.amount.micros() / kCent);
    return text;
}

std::string inCash(Money amount, const Account& account, Beyond beyond = Beyond::Refused) {
    return written(entered(of(amount), account, beyond, Tender::Cash));
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
    EXPECT_EQ(entered(of(Money{}), account).error().fault, idOf(Fault::NothingPaid));
    EXPECT_EQ(entered(of(Money::fromMicros(5'000)), account).error().fault, idOf(Fault::PaidBelowCoin));
    const auto yen = *units::Currency::parse("JPY");
    EXPECT_EQ(entriesOf(of(cents(150)), account, yen, Tender::Other, kToday, Beyond::Refused).error().fault,
              idOf(Fault::PaidBelowCoin));
    EXPECT_TRUE(entriesOf(of(cents(200)), account, yen, Tender::Other, kToday, Beyond::Refused));
    EXPECT_TRUE(entriesOf(of(cents(47175)), account, yen, Tender::Other, kToday, Beyond::Refused))
        << "all that is left";
    auto later = of(cents(100));
    later.paidOn = kToday.plusDays(1);
    EXPECT_EQ(entered(later, account).error().fault, idOf(Fault::PaidLater));
    EXPECT_TRUE(entered(of(cents(47175)), account));
    EXPECT_EQ(entered(of(cents(47176)), account).error().fault, idOf(Fault::ChangeNotInCash)) << "of a card";
    EXPECT_TRUE(entered(of(cents(47176)), account, Beyond::Kept));
    EXPECT_TRUE(entered(of(-cents(10000)), account));
    EXPECT_EQ(entered(of(-cents(10001)), account).error().fault, idOf(Fault::GivenBackBeyond));
}

TEST(Account, holdsItsLawWhateverIsPaidAndGivenBack) {
    std::mt19937_64 random(test::printedSeed());
    std::uniform_int_distribution<std::int64_t> amount(-50'000, 50'000);
    constexpr std::array<std::int64_t, 4> kCoins{0, 5, 10, 100};
    for (int round = 0; round < 1'000; ++round) {
        const auto total = cents(std::abs(amount(random)));
        const auto deposit = cents(std::abs(amount(random)) % (total.micros() / kCent + 1));
        const auto coin = cents(kCoins.at(random() % kCoins.size()));
        Rows payments;
        Money drawer; // counted by the test
        bool isKept = false;
        for (int i = 0; i < 12; ++i) {
            auto account = accountOf(total, deposit, payments);
            account.coin = coin;
            auto money = cents(amount(random));
            if (random() % 3 == 0) money = account.left;
            if (random() % 5 == 0) money = -account.paid;
            const auto tender = random() % 2 == 0 ? Tender::Cash : Tender::Other;
            const auto beyond = static_cast<Beyond>(random() % 3);
            const auto rows = entered(of(money), account, beyond, tender);
            if (!rows) continue;
            isKept = isKept || beyond == Beyond::Kept;
            Money handed;
            for (const auto& row : *rows) {
                EXPECT_FALSE(row.amount.isZero());
                if (row.role == catalogue::PaymentRole::Rounding) {
                    EXPECT_LE(std::abs(row.amount.micros()) * 2, coin.micros());
                    EXPECT_EQ(tender, Tender::Cash);
                } else {
                    handed += row.amount;
                }
            }
            if (tender == Tender::Cash && !coin.isZero()) { EXPECT_EQ(handed.micros() % coin.micros(), 0); }
            drawer += handed;
            payments.insert(payments.end(), rows->begin(), rows->end());
            if (money >= account.left) {
                EXPECT_TRUE(accountOf(total, deposit, payments).left.isZero()) << "to the last part";
            }
        }
        const auto account = accountOf(total, deposit, payments);
        EXPECT_EQ(account.money(), drawer);
        EXPECT_EQ(account.paid + account.left - account.credit, total);
        EXPECT_FALSE(account.paid.isNegative());
        EXPECT_TRUE(account.left.isZero() || account.credit.isZero());
        EXPECT_TRUE(isKept || account.credit.isZero()) << "nothing beyond was taken";
    }
}

struct Rounded {
    const char* rule;
    std::int64_t coin;
    std::int64_t from; ///< cents
    std::int64_t to;

    friend void PrintTo(const Rounded& row, std::ostream* out) { *out << row.rule << ", " << row.from; }
};

class CountedOut : public testing::TestWithParam<Rounded> {};

TEST_P(CountedOut, isTheNearestMultipleOfTheCoin) {
    const auto& row = GetParam();
    EXPECT_EQ(countedOut(cents(row.from), cents(row.coin)), cents(row.to));
    EXPECT_EQ(countedOut(-cents(row.from), cents(row.coin)), -cents(row.to)) << "alike when it is given back";
}

// Published rules, from memory: the finance ministry of Canada on the end of the cent in 2013 (cash sums end in 1 and
// 2: down to 0; 3, 4, 6 and 7: to 5; 8 and 9: up to 10), the Swedish act 1970:1029 (to a whole krona, 50 öre up), New
// Zealand's central bank on the end of 5 cents in 2006 (1 to 4 down, 6 to 9 up; 5 is the trader's choice, here up).
INSTANTIATE_TEST_SUITE_P(Rules, CountedOut,
                         testing::Values(Rounded{"Canada", 5, 9'331, 9'330}, Rounded{"Canada", 5, 9'332, 9'330},
                                         Rounded{"Canada", 5, 9'333, 9'335}, Rounded{"Canada", 5, 9'334, 9'335},
                                         Rounded{"Canada", 5, 9'335, 9'335}, Rounded{"Canada", 5, 9'336, 9'335},
                                         Rounded{"Canada", 5, 9'337, 9'335}, Rounded{"Canada", 5, 9'338, 9'340},
                                         Rounded{"Canada", 5, 9'339, 9'340}, Rounded{"Canada", 5, 2, 0},
                                         Rounded{"Sweden", 100, 9'949, 9'900}, Rounded{"Sweden", 100, 9'950, 10'000},
                                         Rounded{"Sweden", 100, 49, 0}, Rounded{"New Zealand", 10, 9'934, 9'930},
                                         Rounded{"New Zealand", 10, 9'935, 9'940},
                                         Rounded{"New Zealand", 10, 9'936, 9'940},
                                         Rounded{"no coin", 0, 9'931, 9'931}));

TEST(CashRounding, settlesWhatIsLeftToTheLastPart) {
    const auto down = owing(cents(9'331), cents(5));
    EXPECT_EQ(inCash(cents(9'330), down), "m9330 r1") << "as it is counted out";
    EXPECT_EQ(inCash(cents(9'331), down), "m9330 r1") << "as it is left";
    EXPECT_EQ(written(entered(of(cents(9'331)), down)), "m9331") << "a card pays to the cent";
    const auto up = owing(cents(9'333), cents(5));
    EXPECT_EQ(inCash(cents(9'335), up), "m9335 r-2") << "not more than is left";
    EXPECT_EQ(inCash(cents(9'333), up), "m9335 r-2");
    EXPECT_EQ(inCash(cents(9'330), up), "m9330") << "a part is not rounded";
    EXPECT_EQ(inCash(cents(2), owing(cents(2), cents(5))), "r2") << "there is nothing to count out";
    EXPECT_EQ(inCash(cents(9'335), owing(cents(9'335), cents(5))), "m9335");
}

TEST(CashRounding, refusesWhatTheCoinsCannotMake) {
    const auto account = owing(cents(9'331), cents(5));
    for (const auto amount : {cents(5'003), cents(9'332), cents(10'003)}) {
        const auto rows = entered(of(amount), account, Beyond::Kept, Tender::Cash);
        ASSERT_FALSE(rows);
        EXPECT_EQ(rows.error().fault, idOf(Fault::PaidBelowCoin));
    }
    EXPECT_TRUE(entered(of(cents(5'003)), account));
    EXPECT_EQ(account.next(Tender::Cash), cents(9'330));
    EXPECT_EQ(account.next(), cents(9'331));
}

TEST(CashRounding, leavesNothingOfADepositMissing) {
    auto account = accountOf(cents(9'331), cents(3'001), {});
    account.coin = cents(5);
    EXPECT_EQ(account.next(Tender::Cash), cents(3'005));
    const Rows paid{of(cents(3'005))};
    EXPECT_TRUE(accountOf(cents(9'331), cents(3'001), paid).depositLeft().isZero());
    account = accountOf(cents(9'331), cents(9'331), {});
    account.coin = cents(5);
    EXPECT_EQ(account.next(Tender::Cash), cents(9'330)) << "all of it is asked first";
    account = accountOf(cents(1'002), cents(1'001), {});
    account.coin = cents(5);
    EXPECT_EQ(account.next(Tender::Cash), cents(1'000)) << "no more than the rest";
}

TEST(CashRounding, settlesALastCentWithoutMoney) {
    const auto account = owing(cents(2), cents(5));
    EXPECT_EQ(account.next(Tender::Cash), cents(2));
    const auto rows = entered(of(account.next(Tender::Cash)), account, Beyond::Refused, Tender::Cash);
    ASSERT_TRUE(rows);
    ASSERT_EQ(rows->size(), 1U);
    EXPECT_EQ(rows->front().role, catalogue::PaymentRole::Rounding);
    EXPECT_EQ(rows->front().amount, cents(2));
}

TEST(CashRounding, givesBackAllToTheLastPartToo) {
    Rows paid{of(cents(9'330)), of(cents(1))};
    paid[1].role = catalogue::PaymentRole::Rounding;
    auto account = accountOf(cents(9'331), {}, paid);
    account.coin = cents(5);
    EXPECT_EQ(account.rounded, cents(1));
    EXPECT_EQ(account.money(), cents(9'330)) << "what is in the drawer";
    EXPECT_EQ(inCash(-cents(9'331), account), "m-9330 r-1");
    EXPECT_EQ(inCash(-cents(9'330), account), "m-9330 r-1");
    EXPECT_EQ(inCash(-cents(5'000), account), "m-5000");
    const Rows beyond{of(cents(10'000))};
    account = accountOf(cents(9'331), {}, beyond);
    account.coin = cents(5);
    EXPECT_EQ(inCash(-cents(670), account), "m-670 r1") << "the credit of 6.69";
    EXPECT_EQ(inCash(-cents(669), account), "m-670 r1");
}

TEST(Change, isGivenOfCashAtOnce) {
    const auto plain = owing(cents(9'331), {});
    EXPECT_EQ(inCash(cents(10'000), plain, Beyond::Change), "m10000 c-669");
    EXPECT_EQ(inCash(cents(10'000), owing(cents(9'331), cents(5)), Beyond::Change), "m10000 c-670 r1");
    EXPECT_EQ(inCash(cents(10'000), owing(cents(9'333), cents(5)), Beyond::Change), "m10000 c-665 r-2");
    EXPECT_EQ(inCash(cents(9'000), plain, Beyond::Change), "m9000") << "not more than is left";
    EXPECT_EQ(inCash(cents(10'000), plain, Beyond::Kept), "m10000");
    EXPECT_EQ(entered(of(cents(10'000)), plain, Beyond::Refused, Tender::Cash).error().fault, idOf(Fault::PaidBeyond));
    EXPECT_EQ(entered(of(cents(10'000)), plain, Beyond::Change).error().fault, idOf(Fault::ChangeNotInCash));
    EXPECT_EQ(entered(of(cents(100)), owing({}, {}), Beyond::Change, Tender::Cash).error().fault,
              idOf(Fault::NothingLeftToPay))
        << "all of it would be change";
}

TEST(Change, standsBesideItsMoney) {
    auto taken = of(cents(10'000));
    taken.note = "a large note";
    const auto rows = entered(taken, owing(cents(9'331), cents(5)), Beyond::Change, Tender::Cash);
    ASSERT_TRUE(rows);
    ASSERT_EQ(rows->size(), 3U);
    EXPECT_EQ(rows->at(0).note, "a large note");
    EXPECT_EQ(rows->at(1).note, "");
    auto kept = *rows;
    kept[0].id = base::Id::parse("01980000-0000-7000-8000-000000000001").value();
    for (auto* part : {&kept[1], &kept[2]}) part->partOf = kept[0].id;
    EXPECT_EQ(receivedOf(kept[0], kept), cents(9'330));
}

} // namespace sp::pricing

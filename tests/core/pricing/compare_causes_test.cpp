// SPDX-License-Identifier: MIT
// What single causes do to a total, each worked by hand beside it. Ten squares on hoodies, where nothing else costs
// anything unless a row switches it on: 10 × 20.00 = 200.00. All prices and times are invented.
#include "core/pricing/compare.h"
#include "tests/support/sample_shop.h"

#include <gtest/gtest.h>

#include <functional>
#include <string>
#include <vector>

namespace sp::pricing {

namespace {

using catalogue::PriceBook;
using catalogue::Step;
using sample::cents;
using sample::idOf;
using units::Count;
using units::Duration;
using units::Length;
using units::Money;
using units::Rate;

catalogue::Material& materialOf(PriceBook& book, const char* name) { return book.materials[idOf(name)].material; }

void setPrice(PriceBook& book, const char* name, std::int64_t price, std::int64_t per = 1) {
    book.materials[idOf(name)].price = units::UnitPrice{cents(price), Count::of(per)};
}

/// Half an hour of packing for the ten, at 20.00 an hour.
void packs(PriceBook& book) {
    book.bench.of(Step::Pack).perPiece = Duration::fromMinutes(3);
    book.shop.rates.labourPerHour = cents(2000);
}

/// 240.00 a month over 120 hours.
void hasOverhead(PriceBook& book) {
    book.shop.rates.overheadPerMonth = cents(24'000);
    book.shop.rates.productivePerMonth = Duration::fromMinutes(120 * 60);
}

struct JobOfCauses {
    catalogue::Order order;
    PriceBook then;
    PriceBook now;

    JobOfCauses() {
        auto line = sample::square(10);
        line.baseMaterial = idOf("Hoodie");
        order = sample::orderOf({line});
        then = sample::freeBook();
        setPrice(then, "Hoodie", 2000);
        now = then;
    }

    catalogue::OrderLine& line() { return order.lines[0]; }

    PriceComparison compared(const units::NumberStyle& style = {}) const {
        layout::FitMemo fits;
        const auto found = comparePrices(order, then, now, fits, style);
        EXPECT_TRUE(found.has_value()) << (found ? "" : describe(found.error()));
        return found.value_or(PriceComparison{});
    }
};

/// A figure as text; what no figure says, by its name.
std::string written(const base::Value& value) {
    if (const auto* text = std::get_if<std::string>(&value.held)) return *text;
    return describe(base::Message{{}, {value}});
}

struct Expected {
    std::string what;
    std::string was;
    std::string now;
    std::int64_t cents;
};

/// These causes and no others, in this order, and together the whole difference.
void expectCauses(const PriceComparison& compared, const std::vector<Expected>& expected) {
    ASSERT_EQ(compared.causes.size(), expected.size());
    Money sum;
    for (std::size_t i = 0; i < expected.size(); ++i) {
        const auto& cause = compared.causes[i];
        EXPECT_EQ(describe(cause.what), expected[i].what);
        EXPECT_EQ(written(cause.was), expected[i].was) << expected[i].what;
        EXPECT_EQ(written(cause.now), expected[i].now) << expected[i].what;
        EXPECT_EQ(cause.effect, cents(expected[i].cents)) << expected[i].what;
        sum += cause.effect;
    }
    EXPECT_EQ(sum, compared.totalNow - compared.totalThen);
}

struct Single {
    const char* name;
    std::function<void(JobOfCauses&)> both; ///< what holds then and now
    std::function<void(PriceBook&)> is;     ///< what is otherwise now
    Expected cause;

    friend void PrintTo(const Single& row, std::ostream* out) { *out << row.name; }
};

class SingleCause : public testing::TestWithParam<Single> {};

TEST_P(SingleCause, hasTheEffectWorkedByHand) {
    JobOfCauses job;
    if (GetParam().both) GetParam().both(job);
    job.now = job.then;
    GetParam().is(job.now);
    expectCauses(job.compared(), {GetParam().cause});
}

INSTANTIATE_TEST_SUITE_P(
    Materials, SingleCause,
    testing::Values(
        // 10 × 4.00 more
        Single{"a blank",
               {},
               [](PriceBook& b) { setPrice(b, "Hoodie", 2400); },
               {"PriceOf(Hoodie)", "20.00", "24.00", 4000}},
        // 10 × 41.00 / 2 = 205.00
        Single{"a blank by the pair",
               {},
               [](PriceBook& b) { setPrice(b, "Hoodie", 4100, 2); },
               {"PriceOf(Hoodie)", "20.00", "41.00 / 2", 500}},
        // 10 × 200 stones × 0.005 more
        Single{"a stone",
               [](JobOfCauses& j) { setPrice(j.then, "Aqua", 1440, 1440); },
               [](PriceBook& b) { setPrice(b, "Aqua", 2160, 1440); },
               {"PriceOf(Aqua)", "14.40 / 1,440", "21.60 / 1,440", 1000}},
        // 2,000 ÷ 0.8 = 2,500 stones, 500 more × 0.01
        Single{"the loss of a stone",
               [](JobOfCauses& j) { setPrice(j.then, "Aqua", 1440, 1440); },
               [](PriceBook& b) { materialOf(b, "Aqua").stone.loss = Rate::fromPercent(20); },
               {"PartOf(Aqua, Loss)", "0 %", "20 %", 500}},
        // Six squares on 9 × 12 in: 2 sheets × 1.20. Half an inch all round leaves 8 × 11 in, four: 3 sheets
        Single{"the sheet of a backing",
               [](JobOfCauses& j) {
                   j.line().baseMaterial = idOf("Backing");
                   setPrice(j.then, "Backing", 120);
               },
               [](PriceBook& b) { materialOf(b, "Backing").sheet.margin = Length::fromInch64ths(32); },
               {"PartOf(Backing, Sheet)", "", "", 120}},
        // Five of the larger size cost 2.00 more each and no customer pays for them apart
        Single{"the sizes of a blank",
               [](JobOfCauses& j) {
                   j.line().sizes = {{"2XL", Count::of(5)}};
                   materialOf(j.then, "Hoodie").sizes[1] = {"2XL", {}, {}};
               },
               [](PriceBook& b) { materialOf(b, "Hoodie").sizes[1].extraCost = cents(200); },
               {"PartOf(Hoodie, Sizes)", "", "", 1000}},
        // … or the customer pays 3.00 for each of them
        Single{"what is charged for a size",
               [](JobOfCauses& j) {
                   j.line().sizes = {{"2XL", Count::of(5)}};
                   materialOf(j.then, "Hoodie").sizes[1] = {"2XL", {}, {}};
               },
               [](PriceBook& b) { materialOf(b, "Hoodie").sizes[1].surcharge = cents(300); },
               {"PartOf(Hoodie, Sizes)", "", "", 1500}}));

INSTANTIATE_TEST_SUITE_P(Shop, SingleCause,
                         testing::Values(
                             // 10 × 20.40 = 204.00 is in whole units 10 × 20
                             Single{"the currency",
                                    [](JobOfCauses& j) { setPrice(j.then, "Hoodie", 2040); },
                                    [](PriceBook& b) { b.shop.currency = *units::Currency::parse("JPY"); },
                                    {"Currency", "USD", "JPY", -400}},
                             // A piece lifts twice: 5 of 6 on a sheet × 4.80
                             Single{"the usual tape",
                                    [](JobOfCauses& j) { setPrice(j.then, "Tape", 480); },
                                    [](PriceBook& b) { b.shop.usualTape = idOf("Tape"); },
                                    {"UsualTape", "", "Tape", 400}},
                             // One for each of two colours on a sheet of 3.00
                             Single{"the usual template",
                                    [](JobOfCauses& j) {
                                        setPrice(j.then, "Template", 300);
                                        j.then.shop.usualTemplate = idOf("Template");
                                    },
                                    [](PriceBook& b) { b.shop.usualTemplate = {}; },
                                    {"UsualTemplate", "Template", "", -300}},
                             // 10 × 5.00 / 100
                             Single{"packing",
                                    [](JobOfCauses& j) { setPrice(j.then, "Bag", 500, 100); },
                                    [](PriceBook& b) { b.shop.packing = {{idOf("Bag")}}; },
                                    {"Packing", "", "", 50}},
                             // Half an hour × 10.00 more
                             Single{"labour",
                                    [](JobOfCauses& j) { packs(j.then); },
                                    [](PriceBook& b) { b.shop.rates.labourPerHour = cents(3000); },
                                    {"LabourRate", "20.00", "30.00", 500}},
                             // Half an hour of 240.00 over 120 h is 1.00
                             Single{"overhead",
                                    [](JobOfCauses& j) {
                                        packs(j.then);
                                        hasOverhead(j.then);
                                        j.then.shop.rates.overheadPerMonth = {};
                                    },
                                    [](PriceBook& b) { b.shop.rates.overheadPerMonth = cents(24'000); },
                                    {"Overhead", "0.00", "240.00", 100}},
                             // … and over 60 h 2.00
                             Single{
                                 "bench hours",
                                 [](JobOfCauses& j) {
                                     packs(j.then);
                                     hasOverhead(j.then);
                                 },
                                 [](PriceBook& b) { b.shop.rates.productivePerMonth = Duration::fromMinutes(60 * 60); },
                                 {"BenchHoursOfAMonth", "120 h", "60 h", 100}},
                             // A fifth spoiled: a quarter of the good ones' 200.00 besides
                             Single{"spoilage",
                                    {},
                                    [](PriceBook& b) { b.shop.rates.spoilage = Rate::fromPercent(20); },
                                    {"Spoilage", "0 %", "20 %", 5000}},
                             // A quarter of 10 × 8.00, on garments that the customer brings
                             Single{"the allowance for a garment",
                                    [](JobOfCauses& j) {
                                        j.line().customersGarment = true;
                                        j.line().baseMaterial = {};
                                        j.then.shop.rates.spoilage = Rate::fromPercent(20);
                                    },
                                    [](PriceBook& b) { b.shop.rates.garmentAllowance = cents(800); },
                                    {"AllowanceForGarments", "0.00", "8.00", 2000}}));

INSTANTIATE_TEST_SUITE_P(Bench, SingleCause,
                         testing::Values(
                             // Half an hour more × 20.00
                             Single{"times",
                                    [](JobOfCauses& j) { packs(j.then); },
                                    [](PriceBook& b) { b.bench.of(Step::Pack).perPiece = Duration::fromMinutes(6); },
                                    {"BenchTimes", "", "", 1000}},
                             // 10 cycles × 30 s at 36.00 an hour
                             Single{"the press",
                                    [](JobOfCauses& j) {
                                        j.then.bench.press.dwell = Duration::fromSeconds(10);
                                        j.then.bench.press.handling = Duration::fromSeconds(20);
                                    },
                                    [](PriceBook& b) { b.bench.press.runningPerHour = cents(3600); },
                                    {"Press", "", "", 300}},
                             // 300 holes × 10,000 / 1,000,000
                             Single{"the cutter",
                                    [](JobOfCauses& j) { j.then.bench.cutter.lifeHoles = 1'000'000; },
                                    [](PriceBook& b) { b.bench.cutter.price = cents(1'000'000); },
                                    {"Cutter", "", "", 300}}));

INSTANTIATE_TEST_SUITE_P(
    Rules, SingleCause,
    testing::Values(
        // What is left of 250 when a fifth is taken is 200
        Single{"a card fee",
               {},
               [](PriceBook& b) {
                   b.shop.rules.cardFee = {true, Rate::fromPercent(20), {}};
               },
               {"CardFee", "(NoCardFee)", "20 %", 5000}},
        // 200 and 10 a payment: 210; two payments, 220
        Single{"a deposit that is paid by card",
               [](JobOfCauses& j) {
                   j.then.shop.rules.cardFee = {true, {}, cents(1000)};
               },
               [](PriceBook& b) { b.shop.rules.depositRate = Rate::fromPercent(50); },
               {"Deposit", "0 %", "50 %", 1000}},
        // A half on 200
        Single{"the ladder",
               {},
               [](PriceBook& b) {
                   b.shop.rules.ladder = {{Count::of(1), Rate::fromPercent(50)}};
               },
               {"MarkUp", "", "", 10'000}},
        // 20.00 is up to the next 3.00 21.00
        Single{"rounding",
               {},
               [](PriceBook& b) {
                   b.shop.rules.rounding = {catalogue::RoundingKind::Up, 300, 95};
               },
               {"Rounding", "", "", 1000}},
        // Half an hour of art is 10.00: spread, 21.00 a piece is asked as 25.00; apart, 20.00 stay 20.00: 250 or 210
        Single{"the charge for set-up",
               [](JobOfCauses& j) {
                   j.then.bench.of(Step::Art).perJob = Duration::fromMinutes(30);
                   j.then.shop.rates.labourPerHour = cents(2000);
                   j.then.shop.rules.rounding = {catalogue::RoundingKind::Up, 500, 95};
               },
               [](PriceBook& b) { b.shop.rules.setUp = catalogue::SetUpCharge::OwnLine; },
               {"ChargeForSettingUp", "", "", -4000}},
        // 15 % of 200
        Single{"a rush",
               [](JobOfCauses& j) { j.order.wantedBy = sample::day("2026-11-27"); },
               [](PriceBook& b) {
                   b.shop.rules.rush = {{2, Rate::fromPercent(15)}};
               },
               {"RushSurcharge", "", "", 3000}},
        Single{"the smallest order",
               {},
               [](PriceBook& b) { b.shop.rules.minimumOrder = cents(23'050); },
               {"SmallestOrder", "0.00", "230.50", 3050}},
        // 200 × 0.07
        Single{
            "tax", {}, [](PriceBook& b) { b.shop.rules.tax.rate = Rate::fromPercent(7); }, {"Tax", "0 %", "7 %", 1400}},
        // 200 × 0.07 falls away
        Single{"a certificate",
               [](JobOfCauses& j) {
                   j.order.asksExemption = true;
                   j.then.customer.emplace();
                   j.then.shop.rules.tax.rate = Rate::fromPercent(7);
               },
               [](PriceBook& b) {
                   b.customer->certificate = {"7-1", "Here", sample::day("2026-01-01"), {}};
               },
               {"CertificateChanged", "", "", -1400}}));

/// Ten squares at cost × 1.5, a tenth for the rush and a tenth of tax: 1.815 for every 1.00 of cost.
/// Cost 10 × 20.00 + 20 min × 30.00 = 210.00; 315.00, with the rush 346.50, with tax 381.15.
JobOfCauses everythingChanges() {
    JobOfCauses job;
    job.order.wantedBy = sample::day("2026-11-27");
    packs(job.then);
    auto& then = job.then.shop;
    job.then.bench.of(Step::Pack).perPiece = Duration::fromMinutes(2);
    then.rates.labourPerHour = cents(3000);
    then.rules.ladder = {{Count::of(1), Rate::fromPercent(50)}};
    then.rules.rush = {{3, Rate::fromPercent(10)}};
    then.rules.tax.rate = Rate::fromPercent(10);
    job.now = job.then;
    setPrice(job.now, "Hoodie", 2400);
    setPrice(job.now, "Tape", 480);
    auto& now = job.now.shop;
    now.usualTape = idOf("Tape");
    now.rates.labourPerHour = cents(3600);
    job.now.bench.of(Step::Pack).perPiece = Duration::fromMinutes(4);
    now.rules.cardFee = {true, Rate::fromPercent(30), {}};
    now.rules.ladder[0].markUp = Rate::fromPercent(60);
    now.rules.rounding = {catalogue::RoundingKind::Up, 500, 95};
    now.rules.rush[0].surcharge = Rate::fromPercent(20);
    now.rules.minimumOrder = cents(80'000);
    now.rules.tax.rate = Rate::fromPercent(5);
    return job;
}

} // namespace

// Each with those before it as they are now and those after it as they were.
TEST(Causes, areWorkedByHandOneAfterTheOther) {
    const auto compared = everythingChanges().compared();
    EXPECT_EQ(compared.totalThen, cents(38'115));
    EXPECT_EQ(compared.totalNow, cents(84'000));
    EXPECT_EQ(compared.difference(), cents(45'885));
    expectCauses(compared,
                 {
                     {"PriceOf(Hoodie)", "20.00", "24.00", 7260}, // 250.00 × 1.815 = 453.75
                     {"PriceOf(Tape)", "0.00", "4.80", 0},        // not used yet
                     {"UsualTape", "", "Tape", 726},              // 5 of 6 on a sheet: 254.00 × 1.815 = 461.01
                     {"LabourRate", "30.00", "36.00", 363},       // 256.00: 464.64
                     {"BenchTimes", "", "", 2178},                // 40 min, 268.00: 486.42
                     {"CardFee", "(NoCardFee)", "30 %", 23'958},  // of tax too: 402 ÷ (1 − 0.33) = 600.00: 726.00
                     {"MarkUp", "", "", 4840},                    // 640.00 + 64.00 + 70.40 = 774.40
                     {"Rounding", "", "", 1210},                  // 65.00 each: 650 + 65 + 71.50 = 786.50
                     {"RushSurcharge", "", "", 7150},             // 650 + 130 + 78 = 858.00
                     {"SmallestOrder", "0.00", "800.00", 2200},   // 800 + 80
                     {"Tax", "10 %", "5 %", -4000},               // 800 + 40
                 });
}

TEST(Causes, standBesideTheLinesAtBothPrices) {
    const auto compared = everythingChanges().compared();
    const LineRepriced expected{"Square", Count::of(10), cents(3150), cents(6500), cents(31'500), cents(65'000)};
    ASSERT_EQ(compared.lines.size(), 1U);
    EXPECT_EQ(compared.lines[0], expected);
    EXPECT_EQ(compared.lines[0].difference(), cents(33'500));
}

// What the order does not use is no cause: the certificate of an order that asks for none, the blank of a
// garment that the customer brings, what is only shown or printed.
TEST(Causes, areOnlyWhatTheOrderUses) {
    JobOfCauses job;
    job.then.customer.emplace();
    job.line().customersGarment = true; // the hoodie chosen before is still written down
    job.now = job.then;
    job.now.customer->certificate = {"7-1", "Here", sample::day("2026-01-01"), {}};
    setPrice(job.now, "Hoodie", 9900);
    materialOf(job.now, "Aqua").stone.colour = "Sea";
    materialOf(job.now, "Aqua").basis = catalogue::PriceBasis::Fixed;
    job.now.bench.press.temperature = units::Temperature::fromMillicelsius(170'000);
    job.now.shop.rules.depositRate = Rate::fromPercent(40);
    job.now.shop.rules.validDays = 14;
    expectCauses(job.compared(), {});
}

// The same certificate on file is none, however else the customer has changed.
TEST(Causes, leaveTheSameCertificateOut) {
    JobOfCauses job;
    job.order.asksExemption = true;
    job.then.shop.rules.tax.rate = Rate::fromPercent(7);
    job.then.customer.emplace().certificate = {"7-1", "Here", sample::day("2026-01-01"), {}};
    job.now = job.then;
    job.now.customer->contact = "Mill Street 4";
    expectCauses(job.compared(), {});
}

// A tape that is gone was needed then and is not now; one that only has another name is called by it: 5 of 6 × 4.80.
TEST(Causes, nameWhatIsNoLongerUsual) {
    JobOfCauses job;
    setPrice(job.then, "Tape", 480);
    job.then.shop.usualTape = idOf("Tape");
    job.now = job.then;
    job.now.shop.usualTape = {};
    auto renamed = job;
    job.now.materials.erase(idOf("Tape"));
    expectCauses(job.compared(), {{"UsualTape", "Tape", "", -400}});
    materialOf(renamed.now, "Tape").name = "Film";
    expectCauses(renamed.compared(), {{"UsualTape", "Film", "", -400}});
}

TEST(Causes, areWrittenAsThePersonWritesNumbers) {
    JobOfCauses job;
    setPrice(job.then, "Aqua", 1440, 1440);
    packs(job.then);
    hasOverhead(job.then);
    job.now = job.then;
    setPrice(job.now, "Aqua", 2160, 1440);
    job.now.shop.rates.labourPerHour = cents(3010); // half an hour × 10.10 more
    job.now.shop.rates.productivePerMonth = Duration::fromSeconds(60 * 3600) + Duration::fromMilliseconds(500);
    job.now.shop.rules.tax.rate = Rate::fromPpm(72'500);
    const auto german = job.compared({U',', U'.'}).causes;
    ASSERT_EQ(german.size(), 4U);
    EXPECT_EQ(written(german[0].was), "14,40 / 1.440");
    EXPECT_EQ(written(german[0].now), "21,60 / 1.440");
    EXPECT_EQ(written(german[1].now), "30,10");
    EXPECT_EQ(written(german[2].now), "60 h 0,5 s");
    EXPECT_EQ(written(german[3].now), "7,25 %");
    // A mark that is more than one byte stands in no amount of money; U+0080 is the first of them.
    for (const char32_t mark : {char32_t{0x66b}, char32_t{0x80}})
        EXPECT_EQ(written(job.compared({mark, 0}).causes[1].now), "30.10");
}

// An amount in a currency without decimals has no mark: 10 × 400 more.
TEST(Causes, areWrittenWithoutAMarkWhereTheCurrencyHasNone) {
    JobOfCauses job;
    job.then.shop.currency = *units::Currency::parse("JPY");
    job.now = job.then;
    setPrice(job.then, "Hoodie", 200'000);
    setPrice(job.now, "Hoodie", 240'000);
    expectCauses(job.compared({U',', U'.'}), {{"PriceOf(Hoodie)", "2000", "2400", 400'000}});
}

// Neither book is taken for the other's sake: what cannot be priced then, or now, is refused with its own words.
TEST(Causes, areNotLookedForWhereOneBookCannotPrice) {
    JobOfCauses job;
    auto unpriced = job.then;
    unpriced.materials[idOf("Hoodie")].price.reset();
    layout::FitMemo fits;
    const auto refused = priceOrder(job.order, unpriced, fits);
    ASSERT_FALSE(refused);
    const auto then = comparePrices(job.order, unpriced, job.now, fits);
    ASSERT_FALSE(then);
    EXPECT_EQ(describe(then.error()), describe(refused.error()));
    const auto now = comparePrices(job.order, job.then, unpriced, fits);
    ASSERT_FALSE(now);
    EXPECT_EQ(describe(now.error()), describe(refused.error()));
}

} // namespace sp::pricing

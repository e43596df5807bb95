// SPDX-License-Identifier: MIT
// Worked by hand; names and prices are invented.
#include "core/supply/receipts.h"
#include "tests/support/amounts.h"

#include <gtest/gtest.h>

using namespace sp;
using namespace sp::supply;
using sp::support::money;
using units::Count;
using units::Money;

namespace {

Pack pack(const char* id, const char* supplier, std::vector<MaterialCount> gives) {
    return {id, supplier, std::move(gives), {{Count::of(1), money(1)}}, {}};
}

PriceOfOne prices(std::map<std::string, units::UnitPrice> known) {
    return [known = std::move(known)](const std::string& material) -> std::optional<units::UnitPrice> {
        const auto found = known.find(material);
        return found == known.end() ? std::nullopt : std::optional(found->second);
    };
}

Money sumOf(const std::vector<Receipt>& receipts) {
    Money sum;
    for (const auto& receipt : receipts)
        if (receipt.cost) sum = sum + *receipt.cost;
    return sum;
}

TEST(Receipts, shippingIsSharedByGoods) {
    Job job;
    job.bulk = {pack("a", "Kestrel", {{"Aqua", Count::of(1440)}}), pack("j", "Kestrel", {{"Jet", Count::of(144)}})};
    PurchasePlan plan;
    plan.packs = {{"a", "Kestrel", Count::of(2), money(30)}, {"j", "Kestrel", Count::of(1), money(10)}};
    plan.orders = {{"Kestrel", money(40), money(6)}};
    EXPECT_EQ(receiptsOf(job, plan, prices({})),
              (std::vector<Receipt>{{"Aqua", Count::of(2880), money(34.5)}, {"Jet", Count::of(144), money(11.5)}}));
}

TEST(Receipts, aKitIsSharedByWhatItsMaterialsCostAlone) {
    Job job;
    job.kits = {
        pack("k", "Tollgate", {{"Aqua", Count::of(1000)}, {"Tape", Count::of(2)}, {"Templates of Fox", Count::of(1)}})};
    PurchasePlan plan;
    plan.packs = {{"k", "Tollgate", Count::of(3), money(45)}};
    plan.orders = {{"Tollgate", money(45), money(5)}};
    // Alone 1,000 Aqua cost 8.00 and two tapes 2.00: four fifths and one fifth of the 50.00. The ready-cut templates
    // have no price of their own.
    const auto known = prices({{"Aqua", {money(8), Count::of(1000)}}, {"Tape", {money(1), Count::of(1)}}});
    EXPECT_EQ(receiptsOf(job, plan, known), (std::vector<Receipt>{{"Aqua", Count::of(3000), money(40)},
                                                                  {"Tape", Count::of(6), money(10)},
                                                                  {"Templates of Fox", Count::of(3), std::nullopt}}));
}

TEST(Receipts, ofOneMaterialFromSeveralPacksAddUp) {
    Job job;
    job.bulk = {pack("a", "Kestrel", {{"Aqua", Count::of(1440)}}), pack("b", "Heron", {{"Aqua", Count::of(144)}})};
    PurchasePlan plan;
    plan.packs = {{"a", "Kestrel", Count::of(1), money(9.99)}, {"b", "Heron", Count::of(3), money(4.17)}};
    plan.orders = {{"Kestrel", money(9.99), money(7.5)}, {"Heron", money(4.17), Money()}};
    EXPECT_EQ(receiptsOf(job, plan, prices({})), (std::vector<Receipt>{{"Aqua", Count::of(1872), money(21.66)}}));
}

TEST(Receipts, addUpToTheLastMillionth) {
    Job job;
    job.kits = {pack("k", "Tollgate", {{"A", Count::of(7)}, {"B", Count::of(11)}, {"C", Count::of(13)}})};
    PurchasePlan plan;
    plan.packs = {{"k", "Tollgate", Count::of(1), Money::fromMicros(10'000'001)}};
    plan.orders = {{"Tollgate", Money::fromMicros(10'000'001), Money::fromMicros(3'333'333)}};
    const units::UnitPrice third{money(1), Count::of(3)};
    EXPECT_EQ(sumOf(receiptsOf(job, plan, prices({{"A", third}, {"B", third}, {"C", third}}))),
              Money::fromMicros(13'333'334));
}

} // namespace

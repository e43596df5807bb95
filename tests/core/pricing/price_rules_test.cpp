// SPDX-License-Identifier: MIT
// Between which edges a shop's rules of prices are taken.
#include "tests/core/pricing/price_job.h"

#include <gtest/gtest.h>

#include <functional>

using namespace sp;
using Job = pricing::PriceJob;
using catalogue::RoundingKind;
using units::Count;
using units::Rate;

namespace {

struct RuleRow {
    const char* name;
    std::function<void(catalogue::PriceRules&)> set;
    bool isTaken;
    const char* says;
};

void PrintTo(const RuleRow& row, std::ostream* out) { *out << row.name; }

class PriceRuleRange : public testing::TestWithParam<RuleRow> {};

TEST_P(PriceRuleRange, isKept) {
    Job job;
    GetParam().set(job.rules());
    const auto result = job.asked();
    EXPECT_EQ(result.has_value(), GetParam().isTaken);
    if (result) return;
    EXPECT_EQ(result.error().code, base::Code::OutOfRange);
    EXPECT_EQ(describe(result.error().message()), GetParam().says);
}

using Rules = catalogue::PriceRules;

void markUpBy(Rules& rules, std::int64_t ppm) {
    rules.ladder = {{Count::of(1), Rate{}}, {Count::of(24), Rate::fromPpm(ppm)}};
}

INSTANTIATE_TEST_SUITE_P(
    Edges, PriceRuleRange,
    testing::Values(
        RuleRow{"no tax", [](Rules& r) { r.tax.rate = {}; }, true, ""},
        RuleRow{"all of it", [](Rules& r) { r.tax.rate = Rate::fromPercent(100); }, true, ""},
        RuleRow{"more tax than all", [](Rules& r) { r.tax.rate = Rate::fromPpm(1'000'001); }, false, "TaxOutOfRange"},
        RuleRow{"less tax than none", [](Rules& r) { r.tax.rate = Rate::fromPpm(-1); }, false, "TaxOutOfRange"},
        RuleRow{"a deposit of all", [](Rules& r) { r.depositRate = Rate::fromPercent(100); }, true, ""},
        RuleRow{"a deposit of more", [](Rules& r) { r.depositRate = Rate::fromPpm(1'000'001); }, false,
                "DepositOutOfRange"},
        RuleRow{"a deposit below nothing", [](Rules& r) { r.depositRate = Rate::fromPpm(-1); }, false,
                "DepositOutOfRange"},
        RuleRow{"a mark-up below nothing", [](Rules& r) { markUpBy(r, -1'000'001); }, false, "MarkUpOutOfRange(24)"},
        RuleRow{"a mark-up down to nothing", [](Rules& r) { markUpBy(r, -1'000'000); }, true, ""},
        RuleRow{"a mark-up of 10,000 %", [](Rules& r) { markUpBy(r, 100'000'000); }, true, ""},
        RuleRow{"a mark-up beyond 10,000 %", [](Rules& r) { markUpBy(r, 100'000'001); }, false, "MarkUpOutOfRange(24)"},
        RuleRow{"ending 0",
                [](Rules& r) {
                    r.rounding = {RoundingKind::Ending, 1, 0};
                },
                true, ""},
        RuleRow{"ending 99",
                [](Rules& r) {
                    r.rounding = {RoundingKind::Ending, 1, 99};
                },
                true, ""},
        RuleRow{"ending 100",
                [](Rules& r) {
                    r.rounding = {RoundingKind::Ending, 1, 100};
                },
                false, "PriceEndingOutOfRange"},
        RuleRow{"ending below 0",
                [](Rules& r) {
                    r.rounding = {RoundingKind::Ending, 1, -1};
                },
                false, "PriceEndingOutOfRange"},
        RuleRow{"an ending that is not used",
                [](Rules& r) {
                    r.rounding = {RoundingKind::Up, 1, 100};
                },
                true, ""}));

} // namespace

// SPDX-License-Identifier: MIT
#pragma once

#include "core/pricing/price_order.h"
#include "tests/support/sample_shop.h"

#include <gtest/gtest.h>

namespace sp::pricing {

/// An order of hoodies that cost 10.00 each and nothing else.
struct PriceJob : sample::PlainJob {
    catalogue::Order order;

    explicit PriceJob(std::int64_t quantity = 10, std::int64_t each = 1000)
        : PlainJob(quantity, sample::cents(each))
        , order(sample::orderOf({line})) {}

    catalogue::OrderLine& first() { return order.lines.front(); }
    catalogue::PriceRules& rules() { return book.shop.rules; }
    /// Art of one hour at `perHour`, once.
    void setUpCosts(std::int64_t perHour) {
        book.shop.rates.labourPerHour = sample::cents(perHour);
        book.bench.of(catalogue::Step::Art).perJob = units::Duration::fromMinutes(60);
    }
    void sizesCost(std::int64_t extra, std::int64_t surcharge) {
        book.materials[sample::idOf("Hoodie")].material.sizes = {
            {"M", {}, {}}, {"2XL", sample::cents(extra), sample::cents(surcharge)}};
    }
    base::Result<PricedOrder> asked() const {
        layout::FitMemo fits;
        return priceOrder(order, book, fits);
    }
    PricedOrder price() const {
        auto result = asked();
        EXPECT_TRUE(result.has_value()) << (result ? "" : describe(result.error()));
        return result.value_or(PricedOrder{});
    }
    PricedLine line0() const {
        const auto priced = price();
        return priced.lines.empty() ? PricedLine{} : priced.lines.front();
    }
};

} // namespace sp::pricing

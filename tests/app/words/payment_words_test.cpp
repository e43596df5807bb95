// SPDX-License-Identifier: MIT
#include "app/words/payment_words.h"

#include <gtest/gtest.h>

namespace sp::words {

using catalogue::WayToPay;
using pricing::Tender;

TEST(PaymentWords, cashIsWhatTheShopCallsSo) {
    const std::vector<WayToPay> own{{"Voucher", false}, {"Stall till ", true}, {"Cash card", false}};
    EXPECT_EQ(tenderOf(" stall TILL", own), Tender::Cash);
    EXPECT_EQ(tenderOf("Voucher", own), Tender::Other);
    EXPECT_EQ(tenderOf("Cash", own), Tender::Other) << "not here";
    EXPECT_EQ(waysToPay(own), own);
}

TEST(PaymentWords, withoutOwnWaysCashComesFirst) {
    const auto usual = waysToPay({});
    ASSERT_EQ(usual.size(), 4U);
    EXPECT_TRUE(usual.front().isCash);
    EXPECT_EQ(tenderOf("cash", {}), Tender::Cash);
    EXPECT_EQ(tenderOf("Card", {}), Tender::Other);
    EXPECT_EQ(tenderOf("", {}), Tender::Other);
}

} // namespace sp::words

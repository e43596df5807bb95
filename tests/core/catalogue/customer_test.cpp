// SPDX-License-Identifier: MIT
#include "core/catalogue/customer.h"
#include "core/catalogue/reminder.h"

#include <gtest/gtest.h>

namespace sp::catalogue {

namespace {

units::Date day(const char* iso) { return units::Date::parse(iso).value(); }

Customer with(std::vector<Certificate> certificates) {
    Customer customer;
    customer.certificate = certificates.front();
    customer.otherCertificates.assign(certificates.begin() + 1, certificates.end());
    return customer;
}

std::vector<std::string> endingBy(const Customer& customer, const char* lastDay) {
    std::vector<std::string> numbers;
    for (const auto& one : endingCertificates(customer, day(lastDay).plusDays(-kCertificateEndsSoon)))
        numbers.push_back(one.number);
    return numbers;
}

using Numbers = std::vector<std::string>;

} // namespace

TEST(Certificates, theFirstInForceOnTheDayCounts) {
    const auto customer = with({{"1", "Ohio", day("2026-01-01"), day("2026-06-30")},
                                {"2", "Vermont", day("2026-06-01"), day("2026-12-31")},
                                {"3", "Ohio", day("2026-07-01"), {}}});
    const auto numberOn = [&](const char* iso) {
        const auto one = certificateOn(customer, day(iso));
        return one ? one->number : std::string();
    };
    EXPECT_EQ(numberOn("2025-12-31"), "");
    EXPECT_EQ(numberOn("2026-06-30"), "1") << "its last day";
    EXPECT_EQ(numberOn("2026-07-01"), "2");
    EXPECT_EQ(numberOn("2027-01-01"), "3");
    EXPECT_FALSE(certificateOn(Customer{}, day("2026-06-30")));
    EXPECT_EQ(certificatesOn(customer, day("2026-06-30")).size(), 2);
    EXPECT_EQ(certificatesOn(customer, day("2026-07-01")).back().number, "3");
}

TEST(Certificates, eachThatEndsIsNamedUnlessAnotherOfItsPlaceGoesOn) {
    const auto customer = with({{"1", "Ohio", day("2026-01-01"), day("2026-06-30")},
                                {"2", "Vermont", day("2026-01-01"), day("2026-05-31")},
                                {"3", "Maine", day("2026-01-01"), {}}});
    EXPECT_EQ(endingBy(customer, "2026-05-30"), Numbers{});
    EXPECT_EQ(endingBy(customer, "2026-05-31"), Numbers{"2"});
    EXPECT_EQ(endingBy(customer, "2026-12-31"), (Numbers{"2", "1"})) << "the first to end first";
    auto renewed = customer;
    renewed.otherCertificates.push_back({"4", "OHIO", day("2026-06-30"), day("2027-06-30")});
    EXPECT_EQ(endingBy(renewed, "2026-12-31"), Numbers{"2"});
    EXPECT_EQ(endingBy(renewed, "2027-12-31"), (Numbers{"2", "4"})) << "the new one is named in its turn";
    renewed.otherCertificates.back().issuedOn = day("2026-07-01");
    EXPECT_EQ(endingBy(renewed, "2026-07-20"), Numbers{"2"}) << "from the day after on";
    renewed.otherCertificates.back().issuedOn = day("2026-07-02");
    EXPECT_EQ(endingBy(renewed, "2026-07-31"), (Numbers{"2", "1"})) << "a day will be left without any";
    EXPECT_EQ(endingBy(renewed, "2026-08-01"), Numbers{"2"}) << "the new one is in force";
}

} // namespace sp::catalogue

// SPDX-License-Identifier: MIT
// Two entries that turn out to be one person.
#include "tests/db/bench_book.h"

namespace {

using namespace sp;
using base::Code;
using test::BookTest;
using test::valueOf;
using units::Money;

class CustomerTest : public BookTest {
  protected:
    base::Id add(const std::string& name, const std::string& telephone = {}, const std::string& mail = {}) {
        catalogue::Customer made;
        made.name = name;
        made.telephone = telephone;
        made.mail = mail;
        return valueOf(book->save(made));
    }
    std::vector<std::string> names() {
        std::vector<std::string> all;
        for (const auto& one : valueOf(book->customers())) all.push_back(one.name);
        return all;
    }
    catalogue::Customer read(const base::Id& id) { return valueOf(book->customer(id)).value(); }
    using Names = std::vector<std::string>;
};

TEST_F(CustomerTest, keepsHowOneIsReached) {
    const auto venner = add("Marisol Venner", "555 0148", "venner@example.org");
    reopen();
    EXPECT_EQ(read(venner).telephone, "555 0148");
    EXPECT_EQ(read(venner).mail, "venner@example.org");
    expectSound();
}

TEST_F(CustomerTest, keepsSeveralCertificates) {
    const auto today = clock.environment().today();
    const catalogue::Certificate one{"1", "Ohio", today, today.plusDays(400)};
    const catalogue::Certificate two{"2", "Vermont", today, today.plusDays(20)};
    const catalogue::Certificate three{"3", "Maine", today, {}};
    auto made = read(add("Marisol Venner"));
    made.certificate = one;
    made.otherCertificates = {two};
    ASSERT_TRUE(book->save(made));
    reopen();
    EXPECT_EQ(read(made.id), made);
    const auto asked = valueOf(book->askedToday());
    ASSERT_EQ(asked.certificates.size(), 1U);
    EXPECT_EQ(asked.certificates[0].place, "Vermont");
    EXPECT_EQ(asked.certificates[0].endsOn, today.plusDays(20));
    auto other = read(add("Marisol Venn"));
    other.certificate = three;
    other.otherCertificates = {two};
    ASSERT_TRUE(book->save(other));
    ASSERT_TRUE(book->mergeCustomers(other.id, made.id));
    EXPECT_EQ(read(made.id).certificate, one) << "its own stays";
    EXPECT_EQ(read(made.id).otherCertificates, (std::vector{two, three})) << "none twice";
    made.otherCertificates[0].expiresOn = today.plusDays(-1);
    EXPECT_FALSE(book->save(made)) << "it ends before it begins";
    expectSound();
}

TEST_F(CustomerTest, mergesTwoEntriesAndTakesOverWhatWasLacking) {
    const auto kept = add("Marisol Venner", "555 0148");
    const auto gone = add("Marisol Venn", "555 9999", "venn@example.org");
    ASSERT_TRUE(book->mergeCustomers(gone, kept));
    reopen();
    EXPECT_EQ(names(), Names{"Marisol Venner"});
    EXPECT_EQ(read(kept).telephone, "555 0148") << "its own stays";
    EXPECT_EQ(read(kept).mail, "venn@example.org");
    EXPECT_EQ(read(gone).id, kept) << "who asks for the other gets this one";
    EXPECT_EQ(book->priceBook(gone)->customer->id, kept);
    add("Marisol Venn"); // the name is free again
    expectSound();
}

TEST_F(CustomerTest, mergingMovesDraftsAndLeavesGivenQuotesAsTheyAre) {
    stock();
    const auto kept = add("Rowan Bakers");
    const auto other = valueOf(book->startQuote());
    auto given = draft(); // of `customer`, the Rowan Bakery
    const auto sealed =
        valueOf(book->issue(given, book->priceBook(customer).value(), test::resultOf(Money::fromMicros(412'500'000)),
                            given.order.quotedOn.plusDays(21)));
    const auto typed = draft();
    ASSERT_EQ(typed.order.customer, customer);
    ASSERT_TRUE(book->mergeCustomers(customer, kept));
    EXPECT_EQ(book->quote(typed.id)->order.customer, kept);
    EXPECT_EQ(book->quote(other.id)->order.customer, base::Id());
    const auto read = valueOf(book->quote(sealed.id));
    EXPECT_EQ(read.order, sealed.order);
    EXPECT_EQ(read.frozen->customer->name, "Rowan Bakery");
    for (const auto& row : valueOf(book->quotes("Rowan Bakers", 10))) EXPECT_EQ(row.customer, "Rowan Bakers");
    EXPECT_EQ(book->quotes("Rowan Bakers", 10)->size(), 2U);
    EXPECT_EQ(book->quotes("Rowan Bakery", 10)->size(), 1U) << "found by what its paper says, too";
    expectSound();
}

TEST_F(CustomerTest, mergingIsOneStepOfUndo) {
    stock();
    const auto kept = add("Rowan Bakers");
    const auto typed = draft();
    ASSERT_TRUE(book->mergeCustomers(customer, kept));
    EXPECT_EQ(test::described(book->undoState()->undo), "Merging(Rowan Bakery, Rowan Bakers)");
    ASSERT_TRUE(book->undo());
    EXPECT_EQ(names(), (Names{"Rowan Bakers", "Rowan Bakery"}));
    EXPECT_EQ(book->quote(typed.id)->order.customer, customer);
    EXPECT_EQ(read(kept).contact, "");
    ASSERT_TRUE(book->redo());
    EXPECT_EQ(names(), Names{"Rowan Bakers"});
    EXPECT_EQ(book->quote(typed.id)->order.customer, kept);
    expectSound();
}

TEST_F(CustomerTest, whatWasMergedBeforeGoesAlong) {
    const auto first = add("Marisol Ven");
    const auto second = add("Marisol Venn");
    const auto third = add("Marisol Venner");
    ASSERT_TRUE(book->mergeCustomers(first, second));
    ASSERT_TRUE(book->mergeCustomers(second, third));
    EXPECT_EQ(read(first).id, third);
    EXPECT_EQ(read(second).id, third);
    const auto refused = book->mergeCustomers(third, second);
    EXPECT_EQ(test::described(refused.error()).substr(0, 12), "CustomerGone") << "it is no entry any more";
    expectSound();
}

TEST_F(CustomerTest, refusesToMergeOneWithItself) {
    const auto venner = add("Marisol Venner");
    EXPECT_EQ(test::described(book->mergeCustomers(venner, venner).error()), "SameCustomer(Marisol Venner)");
    const auto noCustomer = book->startQuote()->id;
    EXPECT_EQ(book->mergeCustomers(venner, noCustomer).error().code, Code::NotFound);
    EXPECT_EQ(names(), Names{"Marisol Venner"});
}

} // namespace

// SPDX-License-Identifier: MIT
#pragma once

#include "tests/db/bench_book.h"
#include "tests/support/plain_bill.h"

#include <sqlite3.h>

#include <fstream>
#include <iterator>

namespace sp::test {

inline std::string bytesIn(const std::filesystem::path& file) {
    std::ifstream in(file, std::ios::binary);
    return {std::istreambuf_iterator<char>(in), {}};
}

/// Whether the letters stand anywhere in the folder: in the book, its journal, a write-ahead log or what is left over.
inline bool isAnywhereIn(const std::filesystem::path& folder, const std::string& letters) {
    for (const auto& entry : std::filesystem::recursive_directory_iterator(folder))
        if (entry.is_regular_file() && bytesIn(entry.path()).find(letters) != std::string::npos) return true;
    return false;
}

inline std::string whyNot(const base::Done& done) { return done ? std::string() : described(done.error()); }

/// What must be the same before and after: sums, papers, and the chain of seals.
struct Stays {
    std::vector<std::string> jobs;
    std::vector<std::string> bills;
    std::vector<std::string> seals;

    friend bool operator==(const Stays&, const Stays&) = default;
};

inline Stays staysOf(db::Book& book) {
    Stays stays;
    for (const auto& job : valueOf(book.quotes({}, 100'000))) {
        stays.jobs.push_back(job.number + ' ' + std::to_string(job.total ? job.total->micros() : -1) + ' ' +
                             std::to_string(job.paid.micros()) + ' ' + job.firstTitle);
        if (job.number.empty()) continue;
        const auto quote = valueOf(book.quote(job.id));
        stays.jobs.back() += ' ' + std::to_string(quote.sealedTotal->micros());
        if (quote.result) stays.jobs.back() += ' ' + std::to_string(quote.result->figures.tax.micros());
        for (const auto& bill : valueOf(book.billing(job.id)).bills)
            stays.bills.push_back(bill.number + ' ' + std::to_string(bill.total.micros()));
    }
    return stays;
}

inline void addSeals(Stays& stays, const std::filesystem::path& file, std::size_t first) {
    sqlite3* db = nullptr;
    ASSERT_EQ(sqlite3_open_v2(file.c_str(), &db, SQLITE_OPEN_READONLY, nullptr), SQLITE_OK);
    const auto take = [](void* to, int, char** row, char**) {
        static_cast<std::vector<std::string>*>(to)->emplace_back(row[0]);
        return 0;
    };
    sqlite3_exec(db, "SELECT hex(digest) || hex(previous_digest) FROM seal ORDER BY place", take, &stays.seals,
                 nullptr);
    sqlite3_close(db);
    if (first > 0 && stays.seals.size() > first) stays.seals.resize(first);
}

class EraseTest : public BookTest {
  protected:
    /// A customer whose every word is found nowhere else.
    base::Id person(const std::string& mark) {
        catalogue::Customer made;
        made.name = "Ottoline " + mark;
        made.contact = mark + " Lane 3";
        made.telephone = "555 " + mark;
        made.mail = mark + "@example.org";
        made.certificate = catalogue::Certificate{"CERT-" + mark, "Ohio", clock.environment().today(), {}};
        made.otherCertificates = {{"MORE-" + mark, "Vermont", clock.environment().today(), {}}};
        return valueOf(book->save(made));
    }
    db::Quote givenTo(const base::Id& id, units::Money total = units::Money::fromMicros(412'500'000)) {
        auto quote = valueOf(book->startQuote());
        quote.order = sampleOrder(id, design);
        quote.version = valueOf(book->saveDraft(quote));
        const auto inputs = valueOf(book->priceBook(id));
        auto result = resultOf(total);
        result.sheetFor = [sheetFor = result.sheetFor, customer = *inputs.customer](const std::string& number) {
            auto sheet = sheetFor(number);
            sheet.customer.name = customer.name;
            sheet.customer.lines = {customer.contact};
            return sheet;
        };
        return valueOf(book->issue(quote, inputs, result, quote.order.quotedOn.plusDays(21)));
    }
    base::Id pay(const db::Quote& quote, units::Money amount) {
        catalogue::Payment payment;
        payment.job = quote.id;
        payment.amount = amount;
        payment.kind = "Cash";
        payment.paidOn = clock.environment().today();
        return valueOf(book->pay(payment, pricing::Beyond::Kept));
    }
    void finish(const db::Quote& quote) {
        using db::Stage;
        for (const auto stage : {Stage::Agreed, Stage::InProduction, Stage::Ready, Stage::Collected})
            ASSERT_TRUE(book->setStage(quote.id, stage));
    }
    /// Agreed to, paid, billed in every way, collected.
    db::Quote done(const base::Id& id) {
        const auto quote = givenTo(id);
        finish(quote);
        const auto payment = pay(quote, *quote.sealedTotal);
        EXPECT_TRUE(book->issueInvoice(quote.id, plainBill));
        EXPECT_TRUE(book->issueReceipt(payment, plainBill));
        return quote;
    }
    Stays stays(std::size_t seals = 0) {
        auto found = staysOf(*book);
        addSeals(found, file, seals);
        return found;
    }
    void expectErased(const std::string& mark) {
        for (const auto* word : {"Ottoline ", "", "555 ", "CERT-", "MORE-"})
            EXPECT_FALSE(isAnywhereIn(folder.path(), word + mark)) << word + mark;
    }
    template<class T>
    static base::MessageId faultOf(const base::Result<T>& result) {
        return result ? base::MessageId{} : result.error().fault;
    }
};

} // namespace sp::test

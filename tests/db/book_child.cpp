// SPDX-License-Identifier: MIT
// A second program for tests that need one: book_child TASK FILE [NUMBER]. What it does, it says line by line.
#include "db/book/book.h"
#include "db/messages.h"
#include "tests/support/described.h"
#include "tests/support/plain_bill.h"
#include "tests/support/quote_result.h"
#include "tests/support/samples.h"

#include <sqlite3.h>

#include <csignal>
#include <iostream>
#include <string>
#include <string_view>
#include <sys/resource.h>
#include <unistd.h>

namespace {

using namespace sp;

int say(const base::Error& error) {
    std::cout << nameOf(error.code) << ": " << test::described(error) << std::endl;
    return 1;
}

/// One quote with eight lines, given, and a movement of the shelf, as one action; its number once it is on disk.
base::Result<std::string> writeOne(db::Book& book, const catalogue::Material& material) {
    std::string number;
    const auto done = book.batch(base::say(db::Note::Adding, "a sale"), [&]() -> base::Done {
        auto quote = book.startQuote();
        if (!quote) return base::fail(quote.error());
        for (int i = 0; i < 8; ++i) {
            auto line = test::sampleLine(test::sampleDesign(material.id, {}));
            line.first().design = {};
            quote->order.lines.push_back(line);
        }
        const auto version = book.saveDraft(*quote);
        if (!version) return base::fail(version.error());
        quote->version = *version;
        const auto inputs = book.priceBook({});
        if (!inputs) return base::fail(inputs.error());
        if (auto moved = book.moveStock(material.id, 1, std::nullopt, "sale"); !moved) return moved;
        const auto given =
            book.issue(*quote, *inputs, test::resultOf(units::Money::fromMicros(1'000'000)), quote->order.quotedOn);
        if (!given) return base::fail(given.error());
        number = given->number;
        return {};
    });
    if (!done) return base::fail(done.error());
    return number;
}

/// Writes until killed, or until something fails.
int write(const std::string& file) {
    auto book = db::Book::open(file, db::systemEnvironment());
    if (!book) return say(book.error());
    const auto material = (*book)->materials()->at(0);
    for (;;) {
        const auto number = writeOne(**book, material);
        if (!number) {
            const auto copied = (*book)->materials();
            std::cout << "reads on: " << (copied ? "yes" : "no") << std::endl;
            return say(number.error());
        }
        std::cout << *number << std::endl;
    }
}

/// Gives a quote, agrees to it, takes a payment, and issues invoice and receipt, until killed or until something fails.
/// Says the invoice's number and the receipt's once they are on disk.
int bill(const std::string& file) {
    auto book = db::Book::open(file, db::systemEnvironment());
    if (!book) return say(book.error());
    const auto material = (*book)->materials()->at(0);
    for (;;) {
        const auto number = writeOne(**book, material);
        if (!number) return say(number.error());
        const auto quote = (*book)->quoteNumbered(*number);
        if (!quote) return say(quote.error());
        if (const auto agreed = (*book)->setStage(quote->id, db::Stage::Agreed); !agreed) return say(agreed.error());
        const auto invoice = (*book)->issueInvoice(quote->id, test::plainBill);
        if (!invoice) return say(invoice.error());
        std::cout << invoice->number << std::endl;
        catalogue::Payment payment;
        payment.job = quote->id;
        payment.amount = invoice->total;
        payment.kind = "Cash";
        payment.paidOn = quote->order.quotedOn;
        const auto paid = (*book)->pay(payment, pricing::Beyond::Refused);
        if (!paid) return say(paid.error());
        const auto receipt = (*book)->issueReceipt(*paid, test::plainBill);
        if (!receipt) return say(receipt.error());
        std::cout << receipt->number << std::endl;
    }
}

/// Gives a quote and revises it twice, until killed or until something fails. Says each number once it is on disk.
int revise(const std::string& file) {
    auto book = db::Book::open(file, db::systemEnvironment());
    if (!book) return say(book.error());
    const auto material = (*book)->materials()->at(0);
    for (;;) {
        const auto number = writeOne(**book, material);
        if (!number) return say(number.error());
        std::cout << *number << std::endl;
        const auto quote = (*book)->quoteNumbered(*number);
        if (!quote) return say(quote.error());
        for (int round = 0; round < 2; ++round) {
            auto draft = (*book)->startRevision(quote->id);
            if (!draft) return say(draft.error());
            draft->order.lines.pop_back();
            const auto version = (*book)->saveDraft(*draft);
            if (!version) return say(version.error());
            draft->version = *version;
            const auto inputs = (*book)->priceBook({});
            if (!inputs) return say(inputs.error());
            const auto given = (*book)->issue(*draft, *inputs, test::resultOf(units::Money::fromMicros(2'000'000)),
                                              draft->order.quotedOn);
            if (!given) return say(given.error());
            std::cout << given->number << std::endl;
        }
    }
}

/// Works on a disk that takes files of no more than `limit` bytes.
int fill(const std::string& file, rlim_t limit, int (*work)(const std::string&)) {
    std::signal(SIGXFSZ, SIG_IGN);
    const rlimit limits{limit, limit};
    ::setrlimit(RLIMIT_FSIZE, &limits);
    return work(file);
}

/// Opens and reads, on a disk that takes files of no more than `limit` bytes.
int readOnFullDisk(const std::string& file, rlim_t limit) {
    std::signal(SIGXFSZ, SIG_IGN);
    const rlimit limits{limit, limit};
    ::setrlimit(RLIMIT_FSIZE, &limits);
    auto book = db::Book::open(file, db::systemEnvironment());
    if (!book) return say(book.error());
    std::cout << "open: " << test::described((*book)->readOnlyBecause()) << std::endl;
    std::cout << "quotes: " << (*book)->quotes("", 100)->size() << std::endl;
    return 0;
}

int hold(const std::string& file) {
    auto book = db::Book::open(file, db::systemEnvironment());
    if (!book) return say(book.error());
    const auto& obstacle = (*book)->readOnlyBecause();
    std::cout << (obstacle ? test::described(*obstacle) : "held") << std::endl;
    std::string line;
    std::getline(std::cin, line);
    return 0;
}

/// A second window on the newest job: says whether it may write, what was paid and what its own payment and stage come
/// to; and once its input ends, what was paid by then.
int meet(const std::string& file) {
    auto book = db::Book::open(file, db::systemEnvironment());
    if (!book) return say(book.error());
    const auto& obstacle = (*book)->readOnlyBecause();
    std::cout << (obstacle ? test::described(*obstacle) : "held") << std::endl;
    const auto job = (*book)->quotes("", 1)->at(0).id;
    const auto tellPaid = [&] { std::cout << (*book)->account(job)->paid.micros() << std::endl; };
    const auto tell = [](const auto& done) {
        std::cout << (done ? std::string("done") : test::described(done.error())) << std::endl;
    };
    tellPaid();
    catalogue::Payment payment;
    payment.job = job;
    payment.amount = units::Money::fromMicros(1'000'000);
    payment.kind = "Cash";
    payment.paidOn = (*book)->quote(job)->order.quotedOn;
    tell((*book)->pay(payment, pricing::Beyond::Refused));
    tell((*book)->setStage(job, db::Stage::Agreed));
    std::string line;
    std::getline(std::cin, line);
    tellPaid();
    return 0;
}

/// Opens and tries to change something.
int open(const std::string& file) {
    auto book = db::Book::open(file, db::systemEnvironment());
    if (!book) return say(book.error());
    std::cout << "open: " << test::described((*book)->readOnlyBecause()) << std::endl;
    std::cout << "materials: " << (*book)->materials()->size() << std::endl;
    const auto saved = (*book)->save(test::sampleStone("From the child"));
    if (!saved) return say(saved.error());
    std::cout << "saved" << std::endl;
    return 0;
}

/// Takes one customer after the other out, until killed or until nobody is left. Says who is gone.
int erase(const std::string& file) {
    auto book = db::Book::open(file, db::systemEnvironment());
    if (!book) return say(book.error());
    const auto customers = (*book)->customers();
    if (!customers) return say(customers.error());
    std::cout << "begins" << std::endl;
    for (const auto& one : *customers) {
        const auto erased = (*book)->eraseCustomer(one.id);
        if (!erased && erased.error().code == base::Code::Conflict) continue;
        if (!erased) return say(erased.error());
        std::cout << one.name << std::endl;
    }
    return 0;
}

/// Opens, and closes, until killed.
int openOnAndOn(const std::string& file) {
    std::cout << "begins" << std::endl;
    for (;;) {
        const auto book = db::Book::open(file, db::systemEnvironment());
        if (!book) return say(book.error());
        if ((*book)->readOnlyBecause()) return say(*(*book)->readOnlyBecause());
    }
}

/// Whether another program is writing the file.
int isLocked(const std::string& file) {
    sqlite3* db = nullptr;
    if (sqlite3_open(file.c_str(), &db) != SQLITE_OK) return 1;
    const int code = sqlite3_exec(db, "BEGIN IMMEDIATE", nullptr, nullptr, nullptr);
    std::cout << (code == SQLITE_BUSY ? "locked" : "free") << std::endl;
    sqlite3_close(db);
    return 0;
}

int create(const std::string& file) {
    auto book = db::Book::create(file, db::systemEnvironment());
    if (!book) return say(book.error());
    std::cout << "made" << std::endl;
    return 0;
}

/// The positive control: writes the same file without a journal on disk. Killed, it must leave damage behind.
int writeUnsafely(const std::string& file) {
    sqlite3* db = nullptr;
    if (sqlite3_open(file.c_str(), &db) != SQLITE_OK) return 1;
    sqlite3_exec(db, "PRAGMA journal_mode = MEMORY; PRAGMA synchronous = OFF; PRAGMA cache_size = 5; BEGIN", nullptr,
                 nullptr, nullptr);
    for (int round = 1;; ++round) {
        const char* sql = "WITH RECURSIVE n(i) AS (SELECT 1 UNION ALL SELECT i + 1 FROM n WHERE i < 200) "
                          "INSERT INTO record (digest, salt, json) "
                          "SELECT randomblob(32), x'', hex(randomblob(1000)) FROM n";
        if (sqlite3_exec(db, sql, nullptr, nullptr, nullptr) != SQLITE_OK) return 1;
        std::cout << round << std::endl;
    }
}

} // namespace

int main(int count, char** words) {
    if (count < 3) return 2;
    const std::string_view task = words[1];
    const std::string file = words[2];
    const auto number = static_cast<unsigned>(count > 3 ? std::stoul(words[3]) : 0);
    if (task == "write") return write(file);
    if (task == "bill") return bill(file);
    if (task == "revise") return revise(file);
    if (task == "erase") return erase(file);
    if (task == "fill-revising") return fill(file, number, revise);
    if (task == "fill") return fill(file, number, write);
    if (task == "read-on-full-disk") return readOnFullDisk(file, number);
    if (task == "hold") return hold(file);
    if (task == "meet") return meet(file);
    if (task == "open-on-and-on") return openOnAndOn(file);
    if (task == "is-locked") return isLocked(file);
    if (task == "write-unsafely") return writeUnsafely(file);
    // As somebody else, who may do less. Root may do everything.
    if (number != 0 && (::setgid(number) != 0 || ::setuid(number) != 0)) return 2;
    if (task == "open") return open(file);
    if (task == "create") return create(file);
    return 2;
}

// SPDX-License-Identifier: MIT
#include "tests/db/disk_sessions.h"

#include "core/base/ensure.h"
#include "db/messages.h"
#include "tests/support/plain_bill.h"
#include "tests/support/quote_result.h"
#include "tests/support/samples.h"
#include "tests/support/temp_folder.h"
#include "tests/support/test_data.h"

#include <fmt/format.h>
#include <sqlite3.h>

#include <algorithm>
#include <ostream>

namespace sp::test {

namespace {

using base::Done;
using db::Stage;
using units::Money;

Done done(const Done& result) { return result; }
template<class T>
Done done(const base::Result<T>& result) {
    if (!result) return base::fail(result.error());
    return {};
}
/// Notes what came of it.
template<class T>
Done into(T& place, base::Result<T> result) {
    if (!result) return base::fail(result.error());
    place = std::move(*result);
    return {};
}

const SeatStep kOpen{"open", [](Seat& seat) { return seat.open(); }};
const SeatStep kClose{"close", [](Seat& seat) {
                          seat.book.reset();
                          return Done{};
                      }};

Money total() { return Money::fromMicros(412'500'000); }

base::Result<db::Quote> give(Seat& seat) {
    const auto inputs = seat.book->priceBook(seat.customer);
    if (!inputs) return base::fail(inputs.error());
    return seat.book->issue(seat.quote, *inputs, resultOf(total()), seat.quote.order.quotedOn.plusDays(21));
}

Done draft(Seat& seat) {
    auto begun = seat.book->startQuote();
    if (!begun) return base::fail(begun.error());
    seat.quote = std::move(*begun);
    seat.quote.order = sampleOrder(seat.customer, seat.design);
    return {};
}

Done keepDraft(Seat& seat) { return into(seat.quote.version, seat.book->saveDraft(seat.quote)); }

Done pay(Seat& seat) {
    catalogue::Payment payment;
    payment.job = seat.quote.id;
    payment.amount = total();
    payment.kind = "Cash";
    payment.paidOn = seat.clock.environment().today();
    return into(seat.payment, seat.book->pay(payment, pricing::Beyond::Kept));
}

SeatStep stage(Stage to) {
    return {fmt::format("stage {}", static_cast<int>(to)),
            [to](Seat& seat) { return seat.book->setStage(seat.quote.id, to); }};
}

Done invoice(Seat& seat) {
    const auto issued = seat.book->issueInvoice(seat.quote.id, plainBill);
    if (!issued) return base::fail(issued.error());
    seat.invoice = issued->id;
    return {};
}

/// On a good disk every step is done.
void run(Seat& seat, const std::vector<SeatStep>& steps) {
    for (const auto& step : steps) base::ensure(step.run(seat).has_value(), "a good disk takes it");
}

const SeatStep kDraft{"start", draft};
const SeatStep kKeep{"keep", keepDraft};
const SeatStep kGive{"give", [](Seat& seat) { return into(seat.quote, give(seat)); }};
const SeatStep kPay{"pay", pay};
const SeatStep kInvoice{"invoice", invoice};

void prepareStock(Seat& seat) {
    seat.stock();
    seat.book.reset();
}

void prepareGiven(Seat& seat) {
    seat.stock();
    run(seat, {kDraft, kKeep, kGive, kClose});
}

void prepareCollected(Seat& seat) {
    seat.stock();
    run(seat, {kDraft, kKeep, kGive, stage(Stage::Agreed), kPay, kInvoice, stage(Stage::InProduction),
               stage(Stage::Ready), stage(Stage::Collected), kClose});
}

void prepareKept(Seat& seat, int version) {
    sqlite3* db = nullptr;
    base::ensure(sqlite3_open(seat.file.c_str(), &db) == SQLITE_OK, "a kept book can be made");
    const auto sql = bytesOf(dataFile(fmt::format("books/version_{}.sql", version)));
    base::ensure(sqlite3_exec(db, sql.c_str(), nullptr, nullptr, nullptr) == SQLITE_OK, "a kept book is SQL");
    const auto pragma = fmt::format("PRAGMA application_id = 1397770818; PRAGMA user_version = {}", version);
    sqlite3_exec(db, pragma.c_str(), nullptr, nullptr, nullptr);
    sqlite3_close(db);
}

DiskSession migration(int version) {
    return {fmt::format("migration from {}", version),
            [version](Seat& seat) { prepareKept(seat, version); },
            {kOpen, kClose},
            true};
}

/// A drawing that SQLite's cache cannot hold, so that pages are written before the transaction is whole.
Done draw(Seat& seat, char what) {
    auto drawing = sampleArtwork(seat.design.id);
    drawing.file = "<svg>" + std::string(2'600'000, what) + "</svg>";
    return done(seat.book->save(drawing));
}

std::vector<SeatStep> creating() {
    return {{"create",
             [](Seat& seat) {
                 auto made = db::Book::create(seat.file, seat.clock.environment());
                 // A disk that takes nothing away either leaves the new book there: whoever is told so opens it.
                 if (!made && made.error().fault == idOf(db::Fault::FileExists)) return seat.open();
                 if (!made) return Done(base::fail(made.error()));
                 if (const auto& why = (*made)->readOnlyBecause()) return Done(base::fail(*why));
                 seat.book = std::move(*made);
                 return Done{};
             }},
            {"stone", [](Seat& seat) { return done(seat.book->save(sampleStone())); }},
            kClose};
}

std::vector<SeatStep> undoing() {
    return {kOpen,
            {"rename",
             [](Seat& seat) {
                 auto stone = sampleStone("Moss SS10");
                 stone.id = seat.stone;
                 return done(seat.book->save(stone));
             }},
            {"several",
             [](Seat& seat) {
                 return seat.book->batch(base::say(db::Note::Adding, "a delivery"), [&]() -> Done {
                     if (auto added = seat.book->save(sampleStone("Rose SS10")); !added)
                         return base::fail(added.error());
                     return seat.book->moveStock(seat.tape, 12, Money::fromMicros(50'000'000), "delivery");
                 });
             }},
            {"undo", [](Seat& seat) { return seat.book->undo(); }},
            {"undo", [](Seat& seat) { return seat.book->undo(); }},
            {"redo", [](Seat& seat) { return seat.book->redo(); }},
            {"remove", [](Seat& seat) { return seat.book->removeCustomer(seat.other); }},
            kClose,
            kOpen,
            {"shelf", [](Seat& seat) { return seat.book->moveStock(seat.tape, 3, std::nullopt, "found"); }},
            kClose};
}

std::vector<SeatStep> copying() {
    return {
        kOpen,
        {"copy", [](Seat& seat) { return seat.book->copyTo(seat.folder / "Copy.jobbook"); }},
        {"restore",
         [](Seat& seat) { return db::Book::restore(seat.folder / "Copy.jobbook", seat.folder / "Restored.jobbook"); }},
        {"shelf", [](Seat& seat) { return seat.book->moveStock(seat.tape, 3, std::nullopt, "found"); }},
        kClose};
}

std::vector<SeatStep> keeping() {
    return {kOpen,
            {"drawing", [](Seat& seat) { return done(seat.book->save(sampleArtwork(seat.design.id))); }},
            {"columns",
             [](Seat& seat) {
                 const auto suppliers = seat.book->suppliers();
                 if (!suppliers) return Done(base::fail(suppliers.error()));
                 return done(seat.book->save(samplePriceListColumns(suppliers->at(0).id)));
             }},
            {"merge", [](Seat& seat) { return seat.book->mergeCustomers(seat.other, seat.customer); }},
            {"no drawing", [](Seat& seat) { return seat.book->removeArtwork(seat.design.id); }},
            kClose};
}

} // namespace

Done Seat::open() {
    book.reset();
    auto opened = db::Book::open(file, clock.environment());
    if (!opened) return base::fail(opened.error());
    if (const auto& why = (*opened)->readOnlyBecause()) return base::fail(*why);
    book = std::move(*opened);
    return {};
}

void Seat::stock() {
    book = std::move(db::Book::create(file, clock.environment()).value());
    stone = book->save(sampleStone()).value();
    tape = book->save(sampleTape()).value();
    const auto blank = book->save(sampleBlank()).value();
    const auto supplier = book->save(sampleSupplier()).value();
    book->save(samplePack(stone, supplier)).value();
    design = sampleDesign(stone, blank);
    design.id = book->save(design).value();
    customer = book->save(sampleCustomer()).value();
    other = book->save(sampleCustomer("Rowan Bakehouse")).value();
    base::ensure(book->save(sampleShop(tape)).has_value(), "a good disk takes it");
    base::ensure(book->save(sampleBench()).has_value(), "a good disk takes it");
}

void PrintTo(const DiskSession& session, std::ostream* out) { *out << session.name; }

std::vector<DiskSession> diskSessions() {
    const auto nothing = [](Seat&) {};
    return {
        {"a new book", nothing, creating()},
        {"a quote given", prepareStock, {kOpen, kDraft, kKeep, kGive, stage(Stage::Agreed), kClose}},
        {"a payment and its bills",
         prepareGiven,
         {kOpen,
          stage(Stage::Agreed),
          kPay,
          kInvoice,
          {"receipt", [](Seat& seat) { return done(seat.book->issueReceipt(seat.payment, plainBill)); }},
          {"credit",
           [](Seat& seat) {
               return done(seat.book->issueCredit(seat.invoice, Money::fromMicros(10'000'000), plainBill));
           }},
          {"taken back", [](Seat& seat) { return seat.book->takeBackPayment(seat.payment); }},
          kClose}},
        {"a revision",
         prepareGiven,
         {kOpen,
          {"revise", [](Seat& seat) { return into(seat.quote, seat.book->startRevision(seat.quote.id)); }},
          kKeep,
          kGive,
          kClose}},
        {"changes undone", prepareStock, undoing()},
        {"copies", prepareGiven, copying()},
        {"drawings and columns", prepareStock, keeping()},
        {"a customer erased",
         prepareCollected,
         {kOpen, {"erase", [](Seat& seat) { return seat.book->eraseCustomer(seat.customer); }}, kClose}},
        migration(1),
        migration(3),
        migration(5),
        {"a large drawing",
         prepareStock,
         {kOpen,
          {"drawing", [](Seat& seat) { return draw(seat, 'a'); }},
          {"another", [](Seat& seat) { return draw(seat, 'b'); }},
          kClose},
         true},
    };
}

namespace {

/// The rows of what is asked, each as one text.
std::vector<std::string> ask(sqlite3* db, const std::string& sql) {
    std::vector<std::string> rows;
    const auto take = [](void* to, int, char** row, char**) {
        static_cast<std::vector<std::string>*>(to)->emplace_back(row[0] == nullptr ? "NULL" : row[0]);
        return 0;
    };
    if (sqlite3_exec(db, sql.c_str(), take, &rows, nullptr) != SQLITE_OK) rows.emplace_back(sqlite3_errmsg(db));
    return rows;
}

template<class Tell>
std::string told(const std::string& bytes, const Tell& tell) {
    sqlite3* db = nullptr;
    sqlite3_open(":memory:", &db);
    auto held = bytes;
    auto* data = reinterpret_cast<unsigned char*>(held.data());
    const auto size = static_cast<sqlite3_int64>(held.size());
    sqlite3_deserialize(db, "main", data, size, size, SQLITE_DESERIALIZE_READONLY);
    std::string all = fmt::format("version {}\n", fmt::join(ask(db, "PRAGMA user_version"), " "));
    for (const auto& table : ask(db, "SELECT name FROM sqlite_schema WHERE type = 'table' ORDER BY name"))
        all += tell(db, table);
    sqlite3_close(db);
    return all;
}

} // namespace

std::string contentsOf(const std::string& bytes) {
    return told(bytes, [](sqlite3* db, const std::string& table) {
        const auto columns =
            ask(db, "SELECT group_concat('quote(' || name || ')', '||') FROM pragma_table_info('" + table + "')");
        auto rows = ask(db, "SELECT " + columns.at(0) + " FROM " + table);
        std::ranges::sort(rows);
        return fmt::format("{}\n{}\n", table, fmt::join(rows, "\n"));
    });
}

std::string shapeOf(const std::string& bytes) {
    return told(bytes, [](sqlite3* db, const std::string& table) {
        return fmt::format("{} {}\n", table, ask(db, "SELECT count(*) FROM " + table).at(0));
    });
}

void writePlainly(const std::filesystem::path& file, const std::string& pragma,
                  const std::function<void()>& afterEach) {
    sqlite3* db = nullptr;
    base::ensure(sqlite3_open(file.c_str(), &db) == SQLITE_OK, "a book is a database");
    sqlite3_exec(db, pragma.c_str(), nullptr, nullptr, nullptr);
    for (int i = 0; i < 4; ++i) {
        const auto sql = fmt::format("BEGIN IMMEDIATE; UPDATE material SET row_version = row_version + 1; "
                                     "UPDATE design SET note = hex(zeroblob({})); COMMIT",
                                     3'000 * (i + 1));
        base::ensure(sqlite3_exec(db, sql.c_str(), nullptr, nullptr, nullptr) == SQLITE_OK, "a good disk takes it");
        afterEach();
    }
    sqlite3_close(db);
}

void rollBackPlainly(const std::filesystem::path& file) {
    sqlite3* db = nullptr;
    if (sqlite3_open(file.c_str(), &db) == SQLITE_OK) ask(db, "SELECT count(*) FROM sqlite_schema");
    sqlite3_close(db);
}

} // namespace sp::test

// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/result.h"
#include "core/catalogue/customer.h"
#include "core/catalogue/design.h"
#include "core/catalogue/material.h"
#include "core/catalogue/order.h"
#include "core/catalogue/price_book.h"
#include "core/catalogue/shop.h"
#include "db/snapshot/stage.h"

#include <chrono>
#include <cstdint>
#include <filesystem>
#include <functional>
#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <unordered_map>
#include <vector>

namespace sp::db {

/// What the book needs from the world, passed in so that tests can hold the clock still.
struct Surroundings {
    std::function<std::chrono::system_clock::time_point()> now; ///< UTC
    std::function<units::Date()> today;                         ///< the shop's local day
    std::string actor;                                          ///< who works at this seat, for the change log
};

/// The computer's own clock and user name.
Surroundings systemSurroundings();

/// A quote as the job book lists it.
struct QuoteSummary {
    base::Id id;
    std::string number; ///< "2026-0042"; empty while it has not been given
    Stage stage = Stage::Enquiry;
    std::string customer; ///< name, may be empty
    std::string title;    ///< the first line's title and how many more
    units::Date quotedOn;
    std::optional<units::Money> total; ///< of a given quote
};

/// A quote, whole. While `number` is empty it is a draft, priced with the book of today; once given it is sealed:
/// `frozen` holds all inputs as they were and `sealedTotal` what they came to.
struct Quote {
    base::Id id;
    std::string number;
    Stage stage = Stage::Enquiry;
    catalogue::Order order;
    std::optional<catalogue::PriceBook> frozen;
    std::optional<units::Date> validUntil;
    std::optional<units::Money> sealedTotal;
    std::int64_t version = 0; ///< counts changes; updates name the version they saw
};

/// What undo and redo would do next, for the menu: "price of Jet SS10". Empty when there is nothing.
struct UndoState {
    std::string undo;
    std::string redo;
};

/// What "check" found. Empty `damage` means the book holds together.
struct CheckReport {
    std::vector<std::string> damage; ///< one plain sentence each
    std::int64_t quotes = 0;
    std::int64_t sealedQuotes = 0; ///< whose digest was compared
    std::int64_t designs = 0;
    std::int64_t materials = 0;
};

/// The job book: one SQLite file, the only thing in the program that touches it. Every call that changes something
/// is one transaction with its change-log row, on disk when it returns; there is no Save. Calls never throw; they
/// fail with Busy, Conflict, Full, ReadOnly, Damaged, NotFound, Invalid or Failed, and then nothing was changed.
/// Not for use from two threads at once.
class Book {
  public:
    /// Makes a new book. Errors: Conflict when a file of that name exists (it is not touched), ReadOnly, Full.
    static base::Result<std::unique_ptr<Book>> create(const std::filesystem::path& file, Surroundings surroundings);
    /// Opens a book, bringing an older one up to date after a verified backup beside it. A book on a read-only
    /// medium or held by another program opens for reading only, see `readOnlyBecause`.
    /// Errors: Missing, Foreign, TooNew (the file is not altered), Damaged.
    static base::Result<std::unique_ptr<Book>> open(const std::filesystem::path& file, Surroundings surroundings);
    /// Opens for reading only and goes through everything: structure, references, values, digests.
    static base::Result<CheckReport> check(const std::filesystem::path& file);

    virtual ~Book() = default;

    virtual const std::filesystem::path& file() const = 0;
    /// Empty when the book can be written; else one sentence that says why not.
    virtual const std::string& readOnlyBecause() const = 0;

    // What the shop knows. Lists are sorted by name, then id. Saving a thing whose id is none makes a new one and
    // returns its id. Saving refuses with Invalid what breaks the ranges stated in the catalogue headers, and with
    // Conflict a name that another thing of its sort has. Removing is soft and can be undone.
    virtual base::Result<catalogue::Shop> shop() = 0;
    virtual base::Done save(const catalogue::Shop& shop) = 0;
    virtual base::Result<catalogue::BenchStandards> bench() = 0;
    virtual base::Done save(const catalogue::BenchStandards& bench) = 0;
    virtual base::Result<std::vector<catalogue::Material>> materials() = 0;
    virtual base::Result<base::Id> save(const catalogue::Material& material) = 0;
    virtual base::Done removeMaterial(const base::Id& id) = 0;
    virtual base::Result<std::vector<catalogue::Supplier>> suppliers() = 0;
    virtual base::Result<base::Id> save(const catalogue::Supplier& supplier) = 0;
    virtual base::Done removeSupplier(const base::Id& id) = 0;
    virtual base::Result<std::vector<catalogue::Pack>> packs() = 0;
    virtual base::Result<base::Id> save(const catalogue::Pack& pack) = 0;
    virtual base::Done removePack(const base::Id& id) = 0;
    virtual base::Result<std::vector<catalogue::Design>> designs() = 0;
    virtual base::Result<base::Id> save(const catalogue::Design& design) = 0;
    virtual base::Done removeDesign(const base::Id& id) = 0;
    virtual base::Result<std::vector<catalogue::Customer>> customers() = 0;
    virtual base::Result<base::Id> save(const catalogue::Customer& customer) = 0;
    virtual base::Done removeCustomer(const base::Id& id) = 0;

    // The shelf is a ledger: movements are added, never changed.
    /// Books `amount` things in (positive) or out (negative); `cost` is what the whole movement cost, for the average.
    virtual base::Done moveStock(const base::Id& material, std::int64_t amount, std::optional<units::Money> cost,
                                 std::string_view note) = 0;
    /// Things on the shelf now, by material; materials that never moved are not in it.
    virtual base::Result<std::unordered_map<base::Id, std::int64_t>> shelf() = 0;

    /// Everything a price is made of today, for that customer (or none): all materials with the price their basis
    /// gives. A material without a price is in it, without one.
    virtual base::Result<catalogue::PriceBook> priceBook(const base::Id& customer) = 0;

    // Quotes.
    /// A new, empty draft, quoted today.
    virtual base::Result<Quote> startQuote() = 0;
    /// Keeps what is typed. Errors: Conflict when `quote.version` is not the newest or the quote has been given.
    /// Returns the new version.
    virtual base::Result<std::int64_t> saveDraft(const Quote& quote) = 0;
    /// Gives the quote: numbers it, seals the order with `inputs` and `total` under a digest. Returns it as sealed.
    virtual base::Result<Quote> give(const Quote& quote, const catalogue::PriceBook& inputs, units::Money total,
                                     units::Date validUntil) = 0;
    virtual base::Done setStage(const base::Id& quote, Stage stage) = 0;
    /// Newest first, at most `limit`, those whose number, customer or titles hold `text` (all when it is empty).
    virtual base::Result<std::vector<QuoteSummary>> quotes(std::string_view text, std::int64_t limit) = 0;
    /// Errors: NotFound; Damaged when the seal does not match.
    virtual base::Result<Quote> quote(const base::Id& id) = 0;
    virtual base::Result<Quote> quoteNumbered(std::string_view number) = 0;
    /// The draft that was last worked on, if there is one: what the Counter opens with.
    virtual base::Result<std::optional<Quote>> lastDraft() = 0;

    // Undo of what was saved since this book was opened here, newest first. A given quote is never undone.
    virtual base::Result<UndoState> undoState() = 0;
    virtual base::Done undo() = 0;
    virtual base::Done redo() = 0;

    // Several saves as one action (one undo step, one transaction): everything `work` does, or nothing.
    virtual base::Done together(std::string_view what, const std::function<base::Done()>& work) = 0;

    /// A whole, verified copy of the book in a new file. Errors: Conflict when `target` exists, Full, ReadOnly.
    virtual base::Done copyTo(const std::filesystem::path& target) = 0;
};

} // namespace sp::db

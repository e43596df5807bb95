// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/result.h"
#include "core/catalogue/customer.h"
#include "core/catalogue/design.h"
#include "core/catalogue/design_artwork.h"
#include "core/catalogue/kit.h"
#include "core/catalogue/material.h"
#include "core/catalogue/order.h"
#include "core/catalogue/price_book.h"
#include "core/catalogue/price_list.h"
#include "core/catalogue/shop.h"
#include "core/needs/order_work.h"
#include "core/pricing/account.h"
#include "core/pricing/price_order.h"
#include "core/supply/reorder.h"
#include "db/book/asked.h"
#include "db/book/backups.h"
#include "db/book/billing.h"
#include "db/book/book_copy.h"
#include "db/book/check_report.h"
#include "db/book/customer_file.h"
#include "db/book/watch.h"
#include "db/records/papers.h"
#include "db/records/values.h"
#include "db/records/wanted.h"

#include <chrono>
#include <cstdint>
#include <filesystem>
#include <functional>
#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <unordered_map>
#include <unordered_set>
#include <vector>

namespace sp::db {

/// What the book needs from the world, passed in so that tests can hold the clock still.
struct Environment {
    std::function<std::chrono::system_clock::time_point()> now; ///< UTC
    std::function<units::Date()> today;                         ///< the shop's local day
    std::string actor;                                          ///< who works at this seat, for the change log
    /// Where the index of a book lies, by which its jobs are found; a folder that can be thrown away. Empty: nowhere.
    std::filesystem::path cacheFolder = {};
    /// The shop's local day at a moment, as `today` is that of `now`. Left empty, days are those of UTC.
    std::function<units::Date(std::chrono::system_clock::time_point)> dayOf = {};
};

/// The computer's own clock and user name.
Environment systemEnvironment();

/// What a quote comes to and what its sheet says, to be sealed when it is issued.
struct QuoteResult {
    pricing::PricedOrder priced;
    std::vector<pricing::PricedOrder> others; ///< of the choices of the order that are not looked at, in their order
    /// The sheet under the number that the quote gets.
    std::function<quoting::SheetContent(const std::string& number)> sheetFor;
};

/// What a draft is to become the next revision of.
struct RevisedQuote {
    base::Id id;
    std::int64_t revision = 1; ///< of it, from which the draft was begun
    std::string number;        ///< of that revision

    friend bool operator==(const RevisedQuote&, const RevisedQuote&) = default;
};

/// By which a given quote was replaced, and when.
struct ReplacedBy {
    std::string number;
    units::Date day;

    friend bool operator==(const ReplacedBy&, const ReplacedBy&) = default;
};

/// A quote as it was given once, of those of a job.
struct GivenQuote {
    std::int64_t revision = 1;
    std::string number; ///< "2026-0042", of its second revision "2026-0042-2"
    units::Date day;
    std::optional<units::Money> total; ///< none where it offers several choices

    friend bool operator==(const GivenQuote&, const GivenQuote&) = default;
};

/// A job that was handed over, and what of it changes what it earned.
struct HandedOver {
    QuoteSummary job;
    units::Date day;         ///< the shop's local one, of the move to Collected that stands
    std::int64_t papers = 0; ///< quotes and bills that were issued for it
};

/// What was used of a material.
struct UsedOfMaterial {
    units::Date since;                ///< the day of its first movement
    std::vector<supply::DayUse> uses; ///< none below 1
};

/// A quote, whole. While `number` is empty it is a draft, priced with the book of today; once given it is sealed:
/// `frozen` holds all inputs as they were and `sealedTotal` what they came to. `result` is what the customer was given,
/// which is shown and printed whatever the inputs come to by later rules; a quote of versions 1 and 2 has none until
/// `sealResult` was called for it. Once the customer has taken one of several choices, `order`, `sealedTotal` and
/// `result` look at that one.
struct Quote {
    base::Id id;
    std::string number;
    Stage stage = Stage::Enquiry;
    std::optional<std::int64_t> choiceTaken; ///< from 0
    std::int64_t revision = 1;               ///< of a given quote
    std::optional<RevisedQuote> revises;     ///< of a draft that was begun from a given quote
    std::optional<ReplacedBy> replacedBy;    ///< of a given quote that is not its job's newest
    catalogue::Order order;
    std::optional<catalogue::PriceBook> frozen;
    std::optional<units::Date> validUntil;
    std::optional<units::Money> sealedTotal;
    std::optional<records::PaperResult> result;
    std::int64_t version = 0; ///< counts changes; updates name the version they saw
};

/// Looks at another choice of a quote; it must be there.
void lookAtChoice(Quote& quote, std::int64_t number);

/// What undo and redo would do next, for the menu: "price of Jet SS10". Nothing when there is nothing.
struct UndoState {
    std::optional<base::Message> undo;
    std::optional<base::Message> redo;
};

/// What of a book is not in a backup of it.
struct Lost {
    std::vector<QuoteSummary> quotes; ///< that are not in it, or were not given then; the newest first
    std::int64_t changes = 0;         ///< kept since, of whatever sort
};

/// What is taken off the shelf for a job that goes on to a stage, and what stays booked for one that is let go.
struct ShelfUse {
    std::vector<needs::MaterialTake> used;   ///< booked in the same step
    std::vector<needs::MaterialTake> lacks;  ///< it takes besides, but the shelf does not have
    std::optional<base::Error> whyNone = {}; ///< why what it takes cannot be worked out; then nothing is booked
    /// Was booked before for it beyond what it takes now, as of a job that was revised to less. It stays booked: what
    /// of it is still there, and what was spoiled, only somebody at the shelf knows.
    std::vector<needs::MaterialTake> beyond = {};
    bool lacksLater = false; ///< what it lacks is booked when it is ready, as far as it is there by then
    /// Was booked for it and stays so though it is let go: what of it is still there, only somebody at the shelf knows.
    std::vector<needs::MaterialTake> stays = {};
};

/// The job book: one SQLite file, the only thing in the program that touches it. Every call that changes something
/// is one transaction with its change-log row, on disk when it returns; there is no Save. Calls never throw; they
/// fail with Busy, Conflict, Full, ReadOnly, Damaged, NotFound, Invalid or Failed, and then nothing was changed.
/// Not for use from two threads at once.
class Book {
  public:
    /// Makes a new book. Errors: Conflict when a file of that name exists (it is not touched), ReadOnly, Full.
    static base::Result<std::unique_ptr<Book>> create(const std::filesystem::path& file, Environment environment);
    /// Opens a book, bringing an older one up to date after a verified backup beside it. A book on a read-only
    /// medium or held by another program opens for reading only, see `readOnlyBecause`.
    /// So does one in a network folder. A large book's structure is gone through only when it was not closed properly;
    /// what is read is always checked row by row.
    /// Errors: Missing; Foreign, TooNew (the file is not altered); Damaged; Busy when this program has it open
    /// already; Conflict when the file has a second name (hard link); ReadOnly when it may not even be read.
    static base::Result<std::unique_ptr<Book>> open(const std::filesystem::path& file, Environment environment);
    /// Goes through everything: structure, references, values, seals, and whether each thing is what the change log
    /// says it became last. Writes nothing; works beside a program that has the book open, this one included. Of a
    /// change, who made it and when are not under any seal. Errors: as open, when nothing can be read at all.
    static base::Result<CheckReport> check(const std::filesystem::path& file, const Watch& watch = {});
    /// How far the book in a file has come, read beside whoever has it open. Errors: as open.
    static base::Result<BookMark> markOf(const std::filesystem::path& file);
    /// Its newest quotes, at most `limit`, read the same way.
    static base::Result<std::vector<QuoteSummary>> quotesIn(const std::filesystem::path& file, std::int64_t limit);
    /// A backup, gone through as by `check`, in a new file; the backup stays as it is. Errors: Conflict when there is
    /// something of that name; Damaged when the backup is; Full, ReadOnly; Failed when stopped.
    static base::Done restore(const std::filesystem::path& backup, const std::filesystem::path& target,
                              const Watch& watch = {});

    ~Book();
    Book(const Book&) = delete;
    Book& operator=(const Book&) = delete;

    const std::filesystem::path& file() const;
    /// The clock and the seat this book goes by.
    const Environment& environment() const;
    /// Nothing when the book can be written; else why not, which is what every change is refused with.
    const std::optional<base::Error>& readOnlyBecause() const;
    /// Whether this is still the file that was opened, as it was left here: not moved, renamed over, deleted, or
    /// written by another program. Looked at before each change as well; once it is not, the book can only be read, and
    /// what of it is open can still be copied. Nothing, or why not.
    std::optional<base::Error> notice();
    /// When the last change before this opening was kept (UTC), where the book was not closed properly then.
    const std::optional<std::string>& cutShortAfter() const;

    // What the shop knows. Lists are sorted by name, then id. Saving a thing whose id is none makes a new one and
    // returns its id. Saving refuses with Invalid what breaks the ranges stated in the catalogue headers, and with
    // Conflict a name that another thing of its sort has, letter case of ASCII ignored (packs: of the same material and
    // supplier). Removing is soft and can be undone; a material that a design, a kit or the shop needs is not removed,
    // nor is a supplier or a design that a kit needs (Conflict). Saving a value that is as it was writes nothing.
    // Marking a pack as usual takes the mark from the material's other pack, in the same action.
    base::Result<catalogue::Shop> shop();
    base::Done save(const catalogue::Shop& shop);
    base::Result<catalogue::BenchStandards> bench();
    base::Done save(const catalogue::BenchStandards& bench);
    base::Result<std::vector<catalogue::Material>> materials();
    base::Result<base::Id> save(const catalogue::Material& material);
    base::Done removeMaterial(const base::Id& id);
    base::Result<std::vector<catalogue::Supplier>> suppliers();
    base::Result<base::Id> save(const catalogue::Supplier& supplier);
    base::Done removeSupplier(const base::Id& id);
    base::Result<std::vector<catalogue::Pack>> packs();
    base::Result<base::Id> save(const catalogue::Pack& pack);
    base::Done removePack(const base::Id& id);
    base::Result<std::vector<catalogue::Kit>> kits();
    base::Result<base::Id> save(const catalogue::Kit& kit);
    base::Done removeKit(const base::Id& id);
    base::Result<std::vector<catalogue::Design>> designs();
    base::Result<base::Id> save(const catalogue::Design& design);
    base::Done removeDesign(const base::Id& id);
    /// Pieces of it in jobs that are agreed, and in those after; one that is on a piece twice counts twice.
    base::Result<std::int64_t> soldPieces(const base::Id& design);
    base::Result<std::vector<catalogue::Customer>> customers();
    /// That customer, or the one it was merged into; nothing where it was removed.
    base::Result<std::optional<catalogue::Customer>> customer(const base::Id& id);
    base::Result<base::Id> save(const catalogue::Customer& customer);
    base::Done removeCustomer(const base::Id& id);
    /// Both entries are one person. `from` is no longer listed; `into` takes over what it lacked of it, and its drafts.
    /// Quotes that were given stay as they are and are listed under `into`. Errors: NotFound; Invalid for one entry
    /// and itself.
    base::Done mergeCustomers(const base::Id& from, const base::Id& into);

    /// Those that were removed and whose person is still in the book, until it is erased.
    base::Result<std::vector<catalogue::Customer>> removedCustomers();
    /// What is known of a customer, and what of it is gone or stays when the person is erased. Errors: NotFound.
    base::Result<CustomerFile> customerFile(const base::Id& id);
    /// The pictures of the designs in a customer's jobs as these are now, those of the newest jobs first; at most
    /// `limit`. Errors: Damaged when a picture does not match its digest.
    base::Result<std::vector<DesignPicture>> picturesFor(const base::Id& customer, std::int64_t limit);
    /// Takes a customer's personal data out for good: from the list, the change log and the papers, and from the bytes
    /// of the file; also those of entries that were merged into it. Jobs, sums, seals and numbers stay. Never undone.
    /// Errors: NotFound; Conflict with a job that is open or not paid to the cent; Failed when all of it is done but
    /// the free space of the file could not be cleaned (the next erasing does).
    base::Done eraseCustomer(const base::Id& id);

    /// What `takeContacts` would do.
    base::Result<ContactsPlan> planContacts(const std::vector<catalogue::Customer>& contacts);
    /// Adds the contacts who are new and fills in what is lacking of those who are there, in one step to undo. Who is
    /// doubtful, or cannot be kept, is left out.
    base::Result<ContactsPlan> takeContacts(const std::vector<catalogue::Customer>& contacts);

    // Drawings.
    /// The drawing of a design, if one is kept. Errors: Damaged when its bytes do not match their digest.
    base::Result<std::optional<catalogue::DesignArtwork>> artwork(const base::Id& design);
    /// Keeps a drawing with its design, in place of the one before. Errors: NotFound without that design; Invalid for
    /// an empty or too large file.
    base::Done save(const catalogue::DesignArtwork& artwork);
    base::Done removeArtwork(const base::Id& design);
    /// The stones chosen for colours in drawings, by colour, then size.
    base::Result<std::vector<catalogue::ColourMaterial>> colourMaterials();
    /// Remembers the stone for that colour and size, in place of the one before; the value's id is not looked at.
    base::Done save(const catalogue::ColourMaterial& colour);

    /// How the price lists of the suppliers are read, of those that were matched once.
    base::Result<std::vector<catalogue::PriceListColumns>> priceListColumns();
    base::Done save(const catalogue::PriceListColumns& list);

    // The shelf is a ledger: movements are added, never changed.
    /// Books `amount` things in (positive) or out (negative, never below an empty shelf); `cost` is what the whole
    /// movement cost, for the average, and belongs only to what comes in. Undo books the movement back.
    base::Done moveStock(const base::Id& material, std::int64_t amount, std::optional<units::Money> cost,
                         std::string_view note);
    /// The same of any kind, for a job or none; `id` and `reverses` are not looked at. The one above is of things
    /// bought where a cost is said, else it puts the shelf right. Errors: NotFound for a material or job that is not
    /// there; Invalid for a draft, a kind that goes the other way, what goes back to a supplier for a job, and what the
    /// shelf does not hold.
    base::Done moveStock(const records::StockMove& move);
    /// So many (0 or more) were counted: books the difference, which it returns; nothing where there is none. Errors:
    /// NotFound without that material; Invalid for a count out of range.
    base::Result<std::int64_t> countShelf(const base::Id& material, std::int64_t counted, std::string_view reason);
    /// All movements of a material, in the order in which they were booked.
    base::Result<std::vector<records::StockMove>> movesOf(const base::Id& material);
    /// By job that is agreed or being made: what was taken off the shelf for it, less what came back. Jobs for which
    /// nothing was booked are not in it.
    base::Result<std::unordered_map<base::Id, std::vector<needs::MaterialTake>>> takenForOpenJobs();
    /// The jobs that were let go or collected and for which more was taken off the shelf than came back; the one with
    /// the newest movement first, at most `limit`.
    base::Result<std::vector<base::Id>> endedWithTaken(std::int64_t limit);
    /// By material that ever moved: since when, and what was used, lost and spoiled of it on which day of the shop.
    /// What undo took back is no use; what came back from a job is taken off its latest uses, whenever it came.
    base::Result<std::unordered_map<base::Id, UsedOfMaterial>> usedByDay();
    /// What setStage would book as used if the job went on to that stage now, and what would stay booked if it were let
    /// go. Errors: as quote.
    base::Result<ShelfUse> useAt(const base::Id& quote, Stage stage);
    /// Things on the shelf now, by material; materials that never moved are not in it.
    base::Result<std::unordered_map<base::Id, std::int64_t>> shelf();
    /// The designs whose sets with planned pieces are cut: some of their pieces are ready or collected.
    base::Result<std::unordered_set<base::Id>> setsThere();

    /// Everything a price is made of today, for that customer (or none): all materials with the price their basis
    /// gives (see price_list.h). A material without a price is in it, without one; a fixed price of zero is none.
    base::Result<catalogue::PriceBook> priceBook(const base::Id& customer);

    // Quotes.
    /// A new, empty draft, quoted today. Not a step to undo by itself.
    base::Result<Quote> startQuote();
    /// Keeps what is typed. Errors: Conflict when `quote.version` is not the newest or the quote has been given.
    /// Returns the new version.
    base::Result<std::int64_t> saveDraft(const Quote& quote);
    /// Gives the quote: numbers it, seals the order with `inputs` and `result`. Returns it as sealed.
    base::Result<Quote> issue(const Quote& quote, const catalogue::PriceBook& inputs, const QuoteResult& result,
                              units::Date validUntil);
    /// Starts a quote with this order and gives it, in one step: a failure leaves no draft behind.
    base::Result<Quote> issueNew(const catalogue::Order& order, const catalogue::PriceBook& inputs,
                                 const QuoteResult& result, units::Date validUntil);
    // Revisions. A given quote is not changed: a draft is begun from it, and giving that makes the next revision of its
    // job, under its first number with "-2", "-3" behind it. What was paid stays with the job. It is Quoted then:
    // nobody has agreed to it yet. What was given before is kept under seal and its own number.
    /// The draft that revises the quote as it is now, or a new one, with its order at the prices of today
    /// (pricing::revisionOf); of several choices with the one that was taken, or all. Not a step to undo. Errors:
    /// Invalid for a draft; Conflict for a job that was let go or collected.
    base::Result<Quote> startRevision(const base::Id& quote);
    /// Whether the quote may be revised. Errors: those of startRevision.
    base::Done mayRevise(const base::Id& quote);
    /// Gives this order as the next revision of a given quote, in one step. `issue` does the same with the draft of
    /// startRevision, which is gone then, and refuses with Conflict where the quote was revised since; the draft stays.
    /// Errors: as startRevision and issue.
    base::Result<Quote> issueRevision(const base::Id& quote, const catalogue::Order& order,
                                      const catalogue::PriceBook& inputs, const QuoteResult& result,
                                      units::Date validUntil);
    /// All that were given of its job, the first first; none of a draft.
    base::Result<std::vector<GivenQuote>> givenOf(const base::Id& quote);
    /// The quote as it was given under that number, whether it was replaced since or not. Errors: as quote.
    base::Result<Quote> quoteAsGiven(std::string_view number);

    /// Quotes that were given before results were sealed, the newest first; at most `limit`.
    base::Result<std::vector<base::Id>> quotesWithoutResult(std::int64_t limit);
    /// Seals what such a quote came to; nothing says that it cannot be reckoned any more. Errors: Conflict when it has
    /// a result, or this one is not its total.
    base::Done sealResult(const base::Id& quote, const std::optional<QuoteResult>& result);
    /// Errors: Invalid where the stage cannot follow (catalogue::stagesAfter), and where one of several choices is
    /// still to be taken for what is agreed to. Once it is agreed, what the sets of its designs with planned pieces
    /// cost by it is kept with them, where that is not known yet. Once it is made (catalogue::UsedWhen), what it still
    /// takes is booked as used, in the same step to undo, as far as it is on the shelf; `useAt` says beforehand what.
    base::Done setStage(const base::Id& quote, Stage stage);
    /// Says which choice of a given quote the customer takes, from 0; nothing: that is open again. The others are kept.
    /// Errors: Invalid for a draft, for a choice it does not have, and for nothing when it is agreed to.
    base::Done takeChoice(const base::Id& quote, std::optional<std::int64_t> choice);
    /// The jobs that are wanted, over every year; by when they were started, whatever the clock said then, where
    /// nothing else is asked for. By the index of the book where there is one, which is brought up to the book first.
    base::Result<Found> find(const Wanted& wanted);
    /// Those in which `text` is found (see Wanted), the newest first.
    base::Result<std::vector<QuoteSummary>> quotes(std::string_view text, std::int64_t limit);
    /// As it is listed; nothing where it is not in the book.
    base::Result<std::optional<QuoteSummary>> summary(const base::Id& quote);
    /// The jobs that were handed over from `from` to `to`, both counted, by day, then number. What was undone, and what
    /// undo took back to Collected, moves no day.
    base::Result<std::vector<HandedOver>> handedOver(units::Date from, units::Date to);
    /// Whether any job was handed over, on whatever day.
    base::Result<bool> hasHandedOver();
    /// Whether an index would help `find` and there is none, or one that is too far behind.
    bool wantsIndex();
    /// Makes the index of the book in `file` anew, in that folder, beside whoever has the book open: in any thread. It
    /// holds names, and is its owner's alone to read. Errors: as open, Full, ReadOnly; Failed when stopped, or when
    /// somebody was erased from the book meanwhile.
    static base::Done makeIndex(const std::filesystem::path& file, const std::filesystem::path& folder,
                                const Watch& watch = {});
    /// An index was made: the next `find` goes by that.
    void takeIndex();
    /// What of the jobs and the certificates asks for somebody's attention today.
    base::Result<AskedToday> askedToday();
    /// Errors: NotFound; Damaged when the seal does not match; Conflict for the number of one that was replaced.
    base::Result<Quote> quote(const base::Id& id);
    base::Result<Quote> quoteNumbered(std::string_view number);
    /// The draft that was last worked on, if there is one: what the Counter opens with.
    base::Result<std::optional<Quote>> lastDraft();

    // Money is a ledger apart from the stage: payments are added, never changed.
    /// What a given quote comes to and what was paid for it. Errors: Invalid for a draft, and while it offers several
    /// choices of which none is taken.
    base::Result<pricing::Account> account(const base::Id& quote);
    /// In the order in which they were made.
    base::Result<std::vector<catalogue::Payment>> payments(const base::Id& quote);
    /// Adds a payment to `payment.job`, with its change and what cash is rounded by, in one step; returns the key of
    /// its first row (`payment.id` is not looked at). Undo takes all of it back by other rows. Errors: as account and
    /// pricing::entriesOf.
    base::Result<base::Id> pay(const catalogue::Payment& payment, pricing::Beyond beyond,
                               pricing::Tender tender = pricing::Tender::Other);
    /// Takes a payment back, its change and rounding with it, by rows that reverse them, today; any of its rows stands
    /// for all. Errors: NotFound; Conflict when it was taken back before, or takes one back itself, or was given back.
    base::Done takeBackPayment(const base::Id& payment);

    // Bills: invoices, receipts and credit notes. Numbered without gaps and sealed in one transaction; never undone,
    // and no stage or choice from before a bill is brought back by undo.
    /// Errors: NotFound.
    base::Result<Billing> billing(const base::Id& quote);
    /// Invoices what was agreed and is not invoiced yet, or was taken back. Errors: Invalid for a draft, while a choice
    /// is open, for what is not agreed to or comes to nothing; Conflict when all is invoiced, or more than that.
    base::Result<IssuedBill> issueInvoice(const base::Id& quote, const BillSheetMaker& words);
    /// Errors: NotFound; Invalid for money given back and for a payment that was taken back; Conflict when it has one.
    base::Result<IssuedBill> issueReceipt(const base::Id& payment, const BillSheetMaker& words);
    /// Takes `amount` of an invoice back, or nothing said: all that is left of it. Errors: Invalid for what is no
    /// invoice, and as pricing::shareOf; Conflict when all of it was taken back.
    base::Result<IssuedBill> issueCredit(const base::Id& invoice, std::optional<units::Money> amount,
                                         const BillSheetMaker& words);
    /// Errors: NotFound; Damaged when the seal does not match.
    base::Result<IssuedBill> billNumbered(std::string_view number);
    /// Over the invoices and credit notes of these days, both counted. Errors: Damaged when a seal does not match.
    base::Result<pricing::TaxReport> taxReport(units::Date from, units::Date to);

    // Undo of what was saved since this book was opened here, newest first. A given quote is never undone.
    base::Result<UndoState> undoState();
    base::Done undo();
    base::Done redo();

    // Several saves as one action (one undo step called `what`, one transaction): everything `work` does, or nothing. A
    // call inside that fails has changed nothing by itself, and `work` may go on. May be nested; undo inside finds
    // nothing.
    base::Done batch(const base::Message& what, const std::function<base::Done()>& work);

    /// A whole copy of the book in a new file, in one go, whatever else is wrong with what it holds. Errors: Conflict
    /// when `target` exists, Full, ReadOnly; Damaged when the file is torn.
    base::Done copyTo(const std::filesystem::path& target);
    /// The same a piece at a time. The copy must be whole or gone before the book is. Errors: Conflict, Full, ReadOnly;
    /// Busy inside an action.
    base::Result<std::unique_ptr<BookCopy>> startCopy(const std::filesystem::path& target);
    /// Everything in the book as files in a new or empty folder, which is there when all of them are: a table of each
    /// sort of thing as comma-separated values, the same as JSON in book.json, and the drawings. All of it is its
    /// owner's alone to read. Errors: Conflict when there is something of that name; Missing without the folder it is
    /// to be in; Full, ReadOnly; Failed when stopped.
    base::Done exportTo(const std::filesystem::path& folder, const Watch& watch = {});
    base::Result<BookMark> mark();
    /// What would be lost if that backup took this book's place. Errors: as open, of the backup.
    base::Result<Lost> lostIn(const std::filesystem::path& backup);

  private:
    class Inside; // the file, its stores and what is under way; SQLite is seen by db alone
    explicit Book(std::unique_ptr<Inside> inside);

    base::Done tidy();
    void finishErasing();

    std::unique_ptr<Inside> m_in;
};

} // namespace sp::db

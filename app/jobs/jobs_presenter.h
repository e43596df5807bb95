// SPDX-License-Identifier: MIT
#pragma once

#include "app/session/book_session.h"
#include "core/pricing/compare.h"
#include "core/pricing/order_difference.h"

#include <QObject>
#include <QString>

#include <optional>
#include <vector>

namespace sp::jobs {

/// How many quotes are read at first; each time the end of the list is reached, twice as many.
inline constexpr std::int64_t kFirstJobs = 200;
/// How many of the newest are looked through while the book has no index yet: what is done between two keys.
inline constexpr std::int64_t kLookedThrough = 1'000;

/// Jobs to be cut together.
struct Cutting {
    /// Each named with its job's number (a draft: with its customer) where there are several jobs.
    std::vector<catalogue::OrderLine> lines;
    /// The materials they are cut from, as they are today, because today's sheets are on the shelf. A material removed
    /// since a quote was given is taken from that quote.
    catalogue::PriceBook prices;
    std::vector<std::string> removed; ///< names of such materials that a line is made on
};

/// The decisions of the Jobs place: which quotes are listed, which one is current, and its stage. It reads the book
/// only on `refresh`, not after every change, so that a hidden page costs nothing.
class JobsPresenter : public QObject {
    Q_OBJECT

  public:
    explicit JobsPresenter(session::BookSession& session, QObject* parent = nullptr);

    /// Those that are wanted, in their order, as far back as `readOn` has read; no draft in which nothing was entered
    /// yet. The current one stays among them until something else is wanted, though it is not wanted any more: what is
    /// done next is done with it. The total of a draft is what it comes to today, none while it has no price.
    const std::vector<db::QuoteSummary>& jobs() const { return m_jobs; }
    /// How many of them are wanted.
    std::int64_t foundCount() const { return static_cast<std::int64_t>(m_jobs.size()) - (m_keepsCurrent ? 1 : 0); }
    const db::Wanted& wanted() const { return m_wanted; }
    /// Whether all of the book was looked through, not only its newest jobs.
    bool isWhole() const { return m_isWhole; }
    /// Whether there may be older ones.
    bool hasMore() const { return m_hasMore; }
    /// Reads further back.
    void readOn();

    /// The current quote; null when there is none or the book could not be read.
    const db::QuoteSummary* current() const;
    /// Its place in `jobs`, or -1.
    int currentRow() const;
    void select(int row);
    /// Makes this job the current one, listed in any case.
    void choose(const base::Id& job);

    /// The stages the current quote can have next, and its own, in their order.
    std::vector<db::Stage> stages() const;
    /// Moves the current quote to a stage; returns the error when the book refuses.
    std::optional<base::Error> setStage(db::Stage stage);

    /// Says which choice of the current quote the customer takes, from 0, or that it is open again; returns the error
    /// when the book refuses.
    std::optional<base::Error> takeChoice(std::optional<std::int64_t> choice);
    /// The money of a job. Errors: as db::Book::account.
    base::Result<pricing::Account> account(const base::Id& job);
    std::vector<catalogue::Payment> payments(const base::Id& job);
    /// Adds a payment to its job, or takes one back; returns the error when the book refuses.
    std::optional<base::Error> pay(catalogue::Payment payment, pricing::Beyond beyond, pricing::Tender tender);
    std::optional<base::Error> takeBackPayment(const base::Id& payment);
    units::Date today() const;
    bool canChange() const { return !m_session.isReadOnly(); }
    const std::vector<catalogue::WayToPay>& waysToPay() const { return m_session.shop().waysToPay; }

    /// The papers of a job and what can be issued. Errors: the book's.
    base::Result<db::Billing> billing(const base::Id& job);
    /// Issue one of them; the errors are told to who asked.
    base::Result<db::IssuedBill> issueInvoice(const base::Id& job, const quoting::SheetWords& words);
    base::Result<db::IssuedBill> issueReceipt(const base::Id& payment, const quoting::SheetWords& words);
    base::Result<db::IssuedBill> issueCredit(const base::Id& invoice, std::optional<units::Money> amount,
                                             const quoting::SheetWords& words);
    /// The quotes of a job, the first first; each but the last was replaced by the next. Errors: the book's.
    base::Result<std::vector<db::GivenQuote>> given(const base::Id& job);
    /// A sheet as it was given, the paper it is printed on, and by which it was replaced since, if it was.
    struct GivenSheet {
        quoting::SheetContent sheet;
        catalogue::Paper paper = catalogue::Paper::Letter;
        std::optional<db::ReplacedBy> replacedBy;
    };
    /// That of the quote with this number, whichever of its job.
    base::Result<GivenSheet> quoteSheet(const std::string& number, const quoting::SheetWords& words);
    /// What tells two quotes of a job apart, of which `is` replaced `was`. Errors: the book's.
    base::Result<pricing::OrderDifference> difference(const std::string& was, const std::string& is,
                                                      const units::NumberStyle& style);

    /// The choices of the current quote by what tells them apart; empty where there is nothing to choose.
    std::vector<std::string> choices();

    /// What the current quote, which must have been given, would come to today and why. Errors: Invalid for
    /// a draft; those of pricing::comparePrices.
    base::Result<pricing::PriceComparison> changesSince(const units::NumberStyle& style);

    /// What the jobs in these rows need cut, together. Errors: the book's.
    base::Result<Cutting> cuttingOf(const std::vector<int>& rows);

    /// What is typed; the rest of what is wanted stays.
    void setFilter(const QString& text);
    /// What else is wanted; what is typed stays as `wanted` has it.
    void setWanted(db::Wanted wanted);
    /// The same is wanted on another day, which its days go by: the current quote stays.
    void renewWanted(db::Wanted wanted);
    /// Reads the list again.
    void refresh();

  Q_SIGNALS:
    void listed();   ///< the list was read
    void selected(); ///< another quote is current
    /// The current quote has another stage, and this was booked for it.
    void movedOn(const sp::db::ShelfUse& use);

  private:
    void read();
    void keepCurrent(int row);
    void priceDraft(db::QuoteSummary& job);

    session::BookSession& m_session;
    db::Wanted m_wanted;
    std::vector<db::QuoteSummary> m_jobs;
    base::Id m_current;
    base::Id m_choicesOf; ///< the quote that m_choices was read for
    std::vector<std::string> m_choices;
    std::int64_t m_limit = kFirstJobs;
    bool m_keepsCurrent = false; ///< it is listed though it is not wanted
    bool m_hasMore = false;
    bool m_isWhole = true;
};

} // namespace sp::jobs

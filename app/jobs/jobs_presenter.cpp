// SPDX-License-Identifier: MIT
#include "app/jobs/jobs_presenter.h"

#include "app/session/stage_move.h"
#include "app/words/bill_words.h"
#include "app/words/quote_sheet.h"
#include "app/words/words.h"
#include "core/pricing/price_order.h"
#include "db/book/given_prices.h"

#include <algorithm>
#include <map>

namespace sp::jobs {

using db::Stage;

namespace {

/// Adds the materials of the order that the book no longer has, as they are in the sealed quote.
void addRemoved(Cutting& cutting, const catalogue::Order& order, const catalogue::PriceBook& frozen) {
    const auto add = [&](const base::Id& id) {
        const auto* material = cutting.prices.find(id) ? nullptr : frozen.find(id);
        if (material) cutting.prices.materials.emplace(id, *material);
        return material;
    };
    for (const auto& line : order.lines) {
        for (const auto& place : line.places)
            for (const auto& stone : place.stones) add(stone.material);
        if (line.customersGarment) continue;
        if (const auto* baseMaterial = add(line.baseMaterial);
            baseMaterial && baseMaterial->material.kind != catalogue::MaterialKind::Blank)
            cutting.removed.push_back(baseMaterial->material.name);
    }
}

/// One that was begun and in which nothing was entered yet.
bool isEmptyDraft(const db::QuoteSummary& job) {
    return job.number.empty() && job.lines == 0 && job.choices == 1 && job.customer.empty();
}

} // namespace

JobsPresenter::JobsPresenter(session::BookSession& session, QObject* parent)
    : QObject(parent)
    , m_session(session) {
    refresh();
}

int JobsPresenter::currentRow() const {
    const auto found =
        std::find_if(m_jobs.begin(), m_jobs.end(), [this](const auto& job) { return job.id == m_current; });
    return found == m_jobs.end() ? -1 : static_cast<int>(found - m_jobs.begin());
}

const db::QuoteSummary* JobsPresenter::current() const {
    const int row = currentRow();
    return row < 0 ? nullptr : &m_jobs[static_cast<std::size_t>(row)];
}

void JobsPresenter::select(int row) {
    const bool isThere = row >= 0 && row < static_cast<int>(m_jobs.size());
    const auto id = isThere ? m_jobs[static_cast<std::size_t>(row)].id : base::Id{};
    if (id == m_current) return;
    m_current = id;
    Q_EMIT selected();
}

void JobsPresenter::choose(const base::Id& job) {
    m_current = job;
    if (currentRow() < 0)
        refresh();
    else
        Q_EMIT selected();
}

std::vector<Stage> JobsPresenter::stages() const {
    const auto* job = current();
    if (!job) return {};
    auto stages = catalogue::stagesAfter(job->stage, !job->number.empty());
    stages.push_back(job->stage);
    std::ranges::sort(stages);
    return stages;
}

std::optional<base::Error> JobsPresenter::setStage(Stage stage) {
    const auto* job = current();
    if (!job || job->stage == stage) return std::nullopt;
    const auto use = session::moveToStage(m_session, db::QuoteSummary(*job), stage);
    refresh();
    if (!use) return use.error();
    Q_EMIT movedOn(*use);
    return std::nullopt;
}

std::optional<base::Error> JobsPresenter::takeChoice(std::optional<std::int64_t> choice) {
    const auto* job = current();
    if (!job || job->choiceTaken == choice) return std::nullopt;
    const auto id = job->id;
    const auto done = m_session.attempt([&](db::Book& book) { return book.takeChoice(id, choice); });
    refresh();
    return done ? std::nullopt : std::optional(done.error());
}

base::Result<db::Billing> JobsPresenter::billing(const base::Id& job) {
    return m_session.read([&](db::Book& book) { return book.billing(job); });
}

base::Result<db::IssuedBill> JobsPresenter::issueInvoice(const base::Id& job, const quoting::SheetWords& words) {
    auto bill = m_session.attempt([&](db::Book& book) { return book.issueInvoice(job, words::billSheets(words)); });
    refresh();
    return bill;
}

base::Result<db::IssuedBill> JobsPresenter::issueReceipt(const base::Id& payment, const quoting::SheetWords& words) {
    return m_session.attempt([&](db::Book& book) { return book.issueReceipt(payment, words::billSheets(words)); });
}

base::Result<db::IssuedBill> JobsPresenter::issueCredit(const base::Id& invoice, std::optional<units::Money> amount,
                                                        const quoting::SheetWords& words) {
    auto bill =
        m_session.attempt([&](db::Book& book) { return book.issueCredit(invoice, amount, words::billSheets(words)); });
    refresh();
    return bill;
}

base::Result<std::vector<db::GivenQuote>> JobsPresenter::given(const base::Id& job) {
    return m_session.read([&](db::Book& book) { return book.givenOf(job); });
}

base::Result<JobsPresenter::GivenSheet> JobsPresenter::quoteSheet(const std::string& number,
                                                                  const quoting::SheetWords& words) {
    const auto quote = m_session.read([&](db::Book& book) { return book.quoteAsGiven(number); });
    if (!quote) return base::fail(quote.error());
    return GivenSheet{words::issuedSheet(*quote, m_session.fits(), words), quote->frozen->shop.paper,
                      quote->replacedBy};
}

base::Result<pricing::OrderDifference> JobsPresenter::difference(const std::string& was, const std::string& is,
                                                                 const units::NumberStyle& style) {
    const auto before = m_session.read([&](db::Book& book) { return book.quoteAsGiven(was); });
    if (!before) return base::fail(before.error());
    const auto after = m_session.read([&](db::Book& book) { return book.quoteAsGiven(is); });
    if (!after) return base::fail(after.error());
    return db::differenceOf(*before, *after, m_session.fits(), style);
}

base::Result<pricing::Account> JobsPresenter::account(const base::Id& job) {
    return m_session.read([&](db::Book& book) { return book.account(job); });
}

std::vector<catalogue::Payment> JobsPresenter::payments(const base::Id& job) {
    auto payments = m_session.read([&](db::Book& book) { return book.payments(job); });
    return payments ? std::move(*payments) : std::vector<catalogue::Payment>();
}

std::optional<base::Error> JobsPresenter::pay(catalogue::Payment payment, pricing::Beyond beyond,
                                              pricing::Tender tender) {
    const auto done = m_session.attempt([&](db::Book& book) { return book.pay(payment, beyond, tender); });
    refresh();
    return done ? std::nullopt : std::optional(done.error());
}

std::optional<base::Error> JobsPresenter::takeBackPayment(const base::Id& payment) {
    const auto done = m_session.attempt([&](db::Book& book) { return book.takeBackPayment(payment); });
    refresh();
    return done ? std::nullopt : std::optional(done.error());
}

units::Date JobsPresenter::today() const { return m_session.book().environment().today(); }

std::vector<std::string> JobsPresenter::choices() {
    const auto* job = current();
    if (!job || job->number.empty() || job->choices < 2) return {};
    if (m_choicesOf == job->id) return m_choices;
    const auto id = job->id;
    const auto quote = m_session.read([&](db::Book& book) { return book.quote(id); });
    if (!quote || !quote->result) return {};
    m_choicesOf = id;
    m_choices.clear();
    for (const auto* choice : quoting::choicesOf(quote->result->sheet))
        m_choices.push_back(choice->difference.empty() ? choice->name : choice->name + ", " + choice->difference);
    return m_choices;
}

void JobsPresenter::setFilter(const QString& text) {
    auto wanted = m_wanted;
    wanted.text = text.trimmed().toStdString();
    setWanted(std::move(wanted));
}

void JobsPresenter::setWanted(db::Wanted wanted) {
    if (wanted == m_wanted) return;
    m_wanted = std::move(wanted);
    m_limit = kFirstJobs;
    read();
    if (currentRow() < 0) m_current = m_jobs.empty() ? base::Id{} : m_jobs.front().id;
    Q_EMIT listed();
    if (!m_isWhole) m_session.askForIndex();
}

void JobsPresenter::renewWanted(db::Wanted wanted) {
    m_wanted = std::move(wanted);
    refresh();
}

void JobsPresenter::readOn() {
    if (!hasMore()) return;
    m_limit *= 2;
    refresh();
}

base::Result<pricing::PriceComparison> JobsPresenter::changesSince(const units::NumberStyle& style) {
    const auto* job = current();
    if (!job || job->number.empty())
        return words::fail(base::Code::Invalid, "quote",
                           QT_TRANSLATE_NOOP("App", "This quote has not been given yet; it has today's prices."));
    const auto id = job->id;
    const auto quote = m_session.read([&](db::Book& book) { return book.quote(id); });
    if (!quote) return base::fail(quote.error());
    return db::pricesSince(*quote, m_session.prices(quote->order.customer), m_session.fits(), style);
}

base::Result<Cutting> JobsPresenter::cuttingOf(const std::vector<int>& rows) {
    Cutting cutting;
    cutting.prices = m_session.prices({});
    std::map<std::string, int> drafts; // how many drafts of each customer so far
    for (const int row : rows) {
        if (row < 0 || row >= static_cast<int>(m_jobs.size())) continue;
        const auto& job = m_jobs[static_cast<std::size_t>(row)];
        auto quote = m_session.read([&](db::Book& book) { return book.quote(job.id); });
        if (!quote) return base::fail(quote.error());
        auto whose = !job.number.empty()    ? job.number
                     : job.customer.empty() ? tr("Draft").toStdString()
                                            : tr("Draft for %1").arg(job.customer.c_str()).toStdString();
        if (job.number.empty())
            if (const int same = ++drafts[whose]; same > 1) whose += " (" + std::to_string(same) + ")";
        if (quote->frozen) addRemoved(cutting, quote->order, *quote->frozen);
        for (auto& line : quote->order.lines) {
            if (rows.size() > 1) line.title = whose + ", " + line.title;
            cutting.lines.push_back(std::move(line));
        }
    }
    return cutting;
}

void JobsPresenter::priceDraft(db::QuoteSummary& job) {
    const auto quote = m_session.read([&](db::Book& book) { return book.quote(job.id); });
    if (!quote) return;
    auto prices = m_session.prices(quote->order.customer);
    if (quote->revises)
        if (const auto given = m_session.read([&](db::Book& book) { return book.quote(quote->revises->id); }))
            prices = db::pricesOfRevision(*given, std::move(prices));
    std::optional<units::Money> lowest;
    std::optional<units::Money> highest;
    for (std::size_t i = 0; i < catalogue::choiceCount(quote->order); ++i) {
        const auto priced = pricing::priceOrder(catalogue::withChoice(quote->order, static_cast<std::int64_t>(i)),
                                                prices, m_session.fits());
        if (!priced) return;
        lowest = std::min(lowest.value_or(priced->total), priced->total);
        highest = std::max(highest.value_or(priced->total), priced->total);
    }
    job.total = lowest;
    if (highest != lowest) job.highestTotal = highest;
}

void JobsPresenter::read() {
    const auto readOnce = [this] {
        auto wanted = m_wanted;
        wanted.limit = m_limit;
        if (m_session.canIndex()) wanted.lookThrough = kLookedThrough; // else nothing will ever find the older ones
        auto found = m_session.read([&](db::Book& book) { return book.find(wanted); });
        if (!found) found = db::Found{};
        m_jobs = std::move(found->jobs);
        m_hasMore = found->hasMore;
        m_isWhole = found->isWhole;
        std::erase_if(m_jobs, isEmptyDraft);
    };
    m_keepsCurrent = false;
    readOnce();
    while (m_jobs.empty() && m_hasMore) { // nobody could scroll to what is behind nothing
        m_limit *= 2;
        readOnce();
    }
    for (auto& job : m_jobs)
        if (job.number.empty() && job.lines > 0) priceDraft(job);
}

/// Lists the current job where it was, though it is not among those found.
void JobsPresenter::keepCurrent(int row) {
    auto there = m_session.read([&](db::Book& book) { return book.summary(m_current); });
    if (!there) return; // it could not be read; it is current again once it can be
    if (!*there || isEmptyDraft(**there)) {
        m_current = m_jobs.empty() ? base::Id{} : m_jobs.front().id;
        return;
    }
    auto& job = **there;
    if (job.number.empty() && job.lines > 0) priceDraft(job);
    const auto end = static_cast<int>(m_jobs.size());
    m_jobs.insert(m_jobs.begin() + (row < 0 ? end : std::min(row, end)), std::move(job));
    m_keepsCurrent = true;
}

void JobsPresenter::refresh() {
    const int row = currentRow();
    read();
    if (m_current == base::Id{}) {
        if (!m_jobs.empty()) m_current = m_jobs.front().id;
    } else if (currentRow() < 0) {
        keepCurrent(row);
    }
    Q_EMIT listed();
    if (!m_isWhole) m_session.askForIndex();
}

} // namespace sp::jobs

#include "moc_jobs_presenter.cpp"

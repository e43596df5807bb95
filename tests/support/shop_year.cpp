// SPDX-License-Identifier: MIT
#include "tests/support/shop_year.h"

#include "app/words/bill_words.h"
#include "app/words/quote_sheet.h"
#include "app/words/sheet_words.h"
#include "core/pricing/repeat.h"
#include "db/messages.h"
#include "tests/support/described.h"

#include <fmt/format.h>

#include <array>
#include <stdexcept>

namespace sp::test {

using catalogue::Stage;
using units::Money;

namespace {

constexpr std::int64_t kAllJobs = 1'000'000;
constexpr std::int64_t kOfLate = 60;   ///< jobs that most of what happens is about
constexpr int kFilledAtOnce = 400;     ///< jobs in a transaction
constexpr std::int64_t kJobsADay = 25; ///< while a large book is filled

constexpr std::array kFirst{"Alder", "Birch",   "Clover",  "Dorn",  "Elder",  "Fennel", "Garnet", "Hazel",
                            "Iris",  "Juniper", "Kestrel", "Larch", "Mallow", "Nettle", "Osier",  "Poppy"};
constexpr std::array kSecond{"Lane", "Hill", "Mill", "Row", "Yard", "Gate", "Ford", "Wood", "Moor", "Quay"};
constexpr std::array kThird{"Dancers", "Bakery", "Swim Club", "Florists", "Skaters", "Band", "Stables", "Choir"};
constexpr std::array kMotif{"Lantern", "Heron", "Paper boat", "Crown", "Anchor", "Feather", "Star", "Comet"};
constexpr std::array kWord{"team",  "captain", "sleeve", "back",  "gala",  "winter", "summer", "junior",
                           "coach", "finals",  "silver", "trial", "spare", "left",   "gift",   "choir"};
constexpr std::array kKind{"Cash", "Card", "Transfer"};

template<class T>
T of(base::Result<T> result) {
    if (!result) throw std::runtime_error(describe(result.error()));
    if constexpr (!std::is_void_v<T>) return std::move(*result);
}

} // namespace

ShopYear::ShopYear(db::Book& book, HeldClock& clock, std::uint64_t seed)
    : m_book(book)
    , m_clock(clock)
    , m_random(seed)
    , m_designs(of(book.designs()))
    , m_words(std::make_unique<words::SheetWords>()) {
    for (const auto& customer : of(book.customers())) m_customers.push_back(customer.id);
    for (const auto& job : of(book.quotes({}, kAllJobs)))
        if (!job.number.empty()) m_jobs.push_back(job.id);
    std::ranges::reverse(m_jobs);
}

std::int64_t ShopYear::any(std::int64_t from, std::int64_t to) {
    // Not the library's distribution: that differs between libraries, and a seed is to bring the same year everywhere.
    return from + static_cast<std::int64_t>(m_random() % static_cast<std::uint64_t>(to - from + 1));
}

catalogue::Customer ShopYear::customer() {
    catalogue::Customer made;
    const auto number = any(0, 999'999);
    made.name = fmt::format("{} {} {} {}", kFirst[static_cast<std::size_t>(any(0, kFirst.size() - 1))],
                            kSecond[static_cast<std::size_t>(any(0, kSecond.size() - 1))],
                            kThird[static_cast<std::size_t>(any(0, kThird.size() - 1))], number);
    made.telephone = fmt::format("555 {:03} {:04}", any(100, 999), any(0, 9'999));
    made.mail = fmt::format("bench{}@{}.example", number, any(1, 99));
    return made;
}

void ShopYear::open(int customers) {
    for (int i = 0; i < customers; ++i) m_customers.push_back(of(m_book.save(customer())));
}

std::optional<db::Quote> ShopYear::someJob() {
    if (m_jobs.empty()) return std::nullopt;
    const auto last = static_cast<std::int64_t>(m_jobs.size()) - 1;
    const auto from = any(0, 9) == 0 ? 0 : std::max<std::int64_t>(0, last - kOfLate);
    return of(m_book.quote(m_jobs[static_cast<std::size_t>(any(from, last))]));
}

catalogue::OrderLine ShopYear::line() {
    auto made = catalogue::lineOf(anyOf(m_designs));
    made.quantity = units::Count::of(any(1, 60));
    if (any(0, 2) > 0)
        made.title = fmt::format("{} {} {} {}", kMotif[static_cast<std::size_t>(any(0, kMotif.size() - 1))],
                                 kWord[static_cast<std::size_t>(any(0, kWord.size() - 1))],
                                 kWord[static_cast<std::size_t>(any(0, kWord.size() - 1))], any(1, 5'000));
    if (any(0, 4) == 0) made.overrideEach = Money::fromMicros(any(100, 6'000) * 10'000);
    if (any(0, 9) == 0) made.taxable = false;
    return made;
}

catalogue::Order ShopYear::order(int lines) {
    catalogue::Order made;
    made.quotedOn = m_clock.environment().today();
    if (!m_customers.empty() && any(0, 5) > 0) made.customer = anyOf(m_customers);
    if (any(0, 1) == 0) made.wantedBy = made.quotedOn.plusDays(any(2, 30));
    for (int i = 0; i < lines; ++i) made.lines.push_back(line());
    if (any(0, 7) == 0) made.discount.share = units::Rate::fromPercent(any(1, 20));
    return made;
}

base::Result<db::Quote> ShopYear::issue(const catalogue::Order& order, const db::Quote* revised) {
    catalogue::PriceBook fresh;
    if (!m_isFilling || !m_prices.contains(order.customer)) {
        auto prices = m_book.priceBook(order.customer);
        if (!prices) return base::fail(prices.error());
        fresh = std::move(*prices);
        if (m_isFilling) m_prices.emplace(order.customer, fresh);
    }
    const auto& prices = m_isFilling ? m_prices.at(order.customer) : fresh;
    const auto until = order.quotedOn.plusDays(prices.shop.rules.validDays);
    const auto result = words::resultOf(order, prices, until, m_fits, *m_words);
    if (!result) return base::fail(result.error());
    return revised ? m_book.issueRevision(revised->id, order, prices, *result, until)
                   : m_book.issueNew(order, prices, *result, until);
}

Happened ShopYear::given(std::string what, const base::Result<db::Quote>& quote) {
    if (!quote) return {std::move(what), true};
    if (std::ranges::find(m_jobs, quote->id) == m_jobs.end()) m_jobs.push_back(quote->id);
    return {std::move(what), false, quote->id, {}, {}, {quote->number}};
}

Happened ShopYear::give(int lines) { return given("gave", issue(order(lines), nullptr)); }

Happened ShopYear::revise() {
    const auto job = someJob();
    if (!job) return {"revised", true};
    auto changed = pricing::revisionOf(job->order, m_clock.environment().today());
    if (changed.lines.size() > 1 && any(0, 1) == 0)
        changed.lines.pop_back();
    else
        changed.lines.push_back(line());
    return given("revised", issue(changed, &*job));
}

Happened ShopYear::repeat() {
    const auto job = someJob();
    if (!job) return {"repeated", true};
    return given("repeated", issue(pricing::repeatOf(job->order, job->stage, m_clock.environment().today()), nullptr));
}

Happened ShopYear::move() {
    const auto job = someJob();
    if (!job) return {"moved", true};
    const auto next = catalogue::nextStage(job->stage);
    if (catalogue::stagesAfter(job->stage, true).empty()) return {"moved", true};
    const auto stage = next && any(0, 9) > 0 ? *next : anyOf(catalogue::stagesAfter(job->stage, true));
    if (stage == Stage::Declined && any(0, 3) > 0) return {"moved", true};
    const bool isRefused = !m_book.setStage(job->id, stage);
    return {"moved", isRefused, job->id};
}

Happened ShopYear::letGo() {
    const auto job = someJob();
    if (!job) return {"let go", true};
    return {"let go", !m_book.setStage(job->id, Stage::Declined), job->id};
}

Happened ShopYear::paid(std::string what, catalogue::Payment payment, const pricing::Account& account,
                        pricing::Beyond beyond) {
    payment.kind = kKind[static_cast<std::size_t>(any(0, kKind.size() - 1))];
    payment.paidOn = m_clock.environment().today().plusDays(-any(0, 2));
    if (any(0, 3) == 0)
        payment.note =
            fmt::format("slip {} {}", kWord[static_cast<std::size_t>(any(0, kWord.size() - 1))], any(1, 900));
    const bool isCash = payment.kind == kKind[0];
    const auto done = m_book.pay(payment, beyond, isCash ? pricing::Tender::Cash : pricing::Tender::Other);
    if (!done) return {std::move(what), true, payment.job};
    const auto handed = handedOver(payment.amount, account, isCash ? account.coin : Money{}, beyond);
    return {std::move(what), false, payment.job, handed.first, handed.second};
}

/// What comes into the drawer, and what that is short of what is settled by it: as somebody would count who knows the
/// rule and not the program.
std::pair<Money, Money> ShopYear::handedOver(Money amount, const pricing::Account& account, Money coin,
                                             pricing::Beyond beyond) {
    const auto nearest = [&](Money whole) {
        if (coin.isZero()) return whole;
        const auto size = whole.isNegative() ? -whole.micros() : whole.micros();
        const auto coins = (2 * size + coin.micros()) / (2 * coin.micros());
        return Money::fromMicros((whole.isNegative() ? -coins : coins) * coin.micros());
    };
    for (const auto whole : {account.left, -account.credit, -account.paid})
        if (!whole.isZero() && (amount == whole || amount == nearest(whole)))
            return {nearest(whole), whole - nearest(whole)};
    if (beyond == pricing::Beyond::Change && amount > account.left)
        return {nearest(account.left), account.left - nearest(account.left)};
    return {amount, Money{}};
}

Happened ShopYear::pay() {
    const auto job = someJob();
    const auto account = job ? m_book.account(job->id) : base::Result<pricing::Account>{};
    if (!job || !account || account->left.isZero()) return {"paid", true};
    catalogue::Payment payment;
    payment.job = job->id;
    payment.amount = any(0, 2) == 0 ? account->next(pricing::Tender::Cash) : account->left;
    if (any(0, 5) == 0) payment.amount = Money::fromMicros(any(1, 9'000) * 10'000);
    if (any(0, 5) == 0) payment.amount = Money::fromMicros(any(1, 30) * 10'000'000); // a note
    return paid("paid", payment, *account, static_cast<pricing::Beyond>(any(0, 2)));
}

Happened ShopYear::giveBack() {
    const auto job = someJob();
    const auto account = job ? m_book.account(job->id) : base::Result<pricing::Account>{};
    if (!job || !account || account->paid.isZero()) return {"gave back", true};
    catalogue::Payment payment;
    payment.job = job->id;
    payment.amount = -(any(0, 1) == 0 ? account->paid : Money::fromMicros(any(1, 3'000) * 10'000));
    if (any(0, 2) == 0 && !account->credit.isZero()) payment.amount = -account->credit;
    return paid("gave back", payment, *account, pricing::Beyond::Refused);
}

Happened ShopYear::takeBack() {
    const auto job = someJob();
    const auto payments = job ? of(m_book.payments(job->id)) : std::vector<catalogue::Payment>();
    if (payments.empty()) return {"took back", true};
    const auto& one = anyOf(payments);
    Happened happened{"took back", !m_book.takeBackPayment(one.id), job->id};
    if (happened.isRefused) return happened;
    const auto whole = one.partOf.value_or(one.id);
    for (const auto& row : payments)
        if (row.id == whole || (row.partOf == whole && !row.reverses))
            (row.role == catalogue::PaymentRole::Rounding ? happened.rounded : happened.money) += -row.amount;
    return happened;
}

Happened ShopYear::invoice() {
    const auto job = someJob();
    const auto bill = job ? m_book.issueInvoice(job->id, words::billSheets(*m_words)) : base::Result<db::IssuedBill>{};
    if (!job || !bill) return {"invoiced", true};
    return {"invoiced", false, job->id, {}, {}, {bill->number}};
}

Happened ShopYear::receipt() {
    const auto job = someJob();
    const auto payments = job ? of(m_book.payments(job->id)) : std::vector<catalogue::Payment>();
    if (payments.empty()) return {"receipted", true};
    const auto bill = m_book.issueReceipt(anyOf(payments).id, words::billSheets(*m_words));
    if (!bill) return {"receipted", true};
    return {"receipted", false, job->id, {}, {}, {bill->number}};
}

Happened ShopYear::credit() {
    const auto job = someJob();
    const auto open = job ? of(m_book.billing(job->id)).openInvoices : std::vector<db::OpenInvoice>();
    if (open.empty()) return {"credited", true};
    std::optional<Money> amount;
    if (any(0, 1) == 0) amount = Money::fromMicros(any(1, 5'000) * 10'000);
    const auto bill = m_book.issueCredit(anyOf(open).id, amount, words::billSheets(*m_words));
    if (!bill) return {"credited", true};
    return {"credited", false, job->id, {}, {}, {bill->number}};
}

Happened ShopYear::meet() {
    m_customers.push_back(of(m_book.save(customer())));
    return {"met somebody"};
}

Happened ShopYear::rename() {
    if (m_customers.empty()) return {"renamed", true};
    auto known = of(m_book.customer(anyOf(m_customers)));
    if (!known) return {"renamed", true};
    const auto made = customer();
    known->name = made.name;
    known->telephone = made.telephone;
    return {"renamed", !m_book.save(*known)};
}

Happened ShopYear::erase() {
    if (m_customers.empty()) return {"erased", true};
    const auto id = anyOf(m_customers);
    if (!m_book.eraseCustomer(id)) return {"erased", true};
    std::erase(m_customers, id);
    return {"erased"};
}

Happened ShopYear::slip() {
    const auto job = someJob();
    if (!job) return {"slipped", true};
    catalogue::Payment payment;
    payment.job = job->id;
    payment.kind = "Cash";
    payment.paidOn = m_clock.environment().today();
    bool isTaken = false;
    switch (any(0, 3)) {
    case 0: isTaken = m_book.pay(payment, pricing::Beyond::Kept).has_value(); break; // nothing
    case 1:                                                                          // more given back than was taken
        payment.amount = -Money::fromMicros(900'000'000'000);
        isTaken = m_book.pay(payment, pricing::Beyond::Kept).has_value();
        break;
    case 2: // on a day to come
        payment.amount = Money::fromMicros(10'000);
        payment.paidOn = payment.paidOn.plusDays(1);
        isTaken = m_book.pay(payment, pricing::Beyond::Kept).has_value();
        break;
    default: // a stage that cannot follow
        isTaken = m_book.setStage(job->id, Stage::Enquiry).has_value();
        break;
    }
    if (isTaken) throw std::runtime_error("the book took what it should refuse");
    return {"slipped", true};
}

void ShopYear::passTime() { m_clock.now += std::chrono::minutes(any(5, 240)); }

Happened ShopYear::act() {
    passTime();
    const auto chance = any(0, 99);
    if (chance < 22 || m_jobs.empty()) return give(static_cast<int>(any(1, 4)));
    if (chance < 44) return move();
    if (chance < 46) return letGo();
    if (chance < 62) return pay();
    if (chance < 65) return giveBack();
    if (chance < 67) return takeBack();
    if (chance < 72) return revise();
    if (chance < 75) return repeat();
    if (chance < 83) return invoice();
    if (chance < 89) return receipt();
    if (chance < 92) return credit();
    if (chance < 94) return meet();
    if (chance < 96) return rename();
    if (chance < 97) return erase();
    return slip();
}

void ShopYear::carry(const db::Quote& quote) {
    const auto chance = any(0, 99);
    const auto chancesOf = [&](bool isOfLate) {
        // As in a shop that has been at it for years: nearly all of it is done.
        if (!isOfLate) return chance < 72 ? Stage::Collected : chance < 92 ? Stage::Declined : Stage::Quoted;
        return static_cast<Stage>(1 + chance % 6);
    };
    const auto stage = chancesOf(m_isFilling && any(0, 999) == 0);
    if (stage == Stage::Declined) return of(m_book.setStage(quote.id, stage));
    if (!catalogue::isAgreedTo(stage)) return;
    for (const auto step : {Stage::Agreed, Stage::InProduction, Stage::Ready, Stage::Collected})
        if (step <= stage) of(m_book.setStage(quote.id, step));
    const auto account = of(m_book.account(quote.id));
    if (account.left.isZero()) return;
    catalogue::Payment payment;
    payment.job = quote.id;
    payment.amount = account.deposit.isZero() ? account.left : account.deposit;
    paid("paid", payment, account, pricing::Beyond::Refused);
    payment.amount = account.left - payment.amount;
    if (stage == Stage::Collected && !payment.amount.isZero() && any(0, 999) > 0)
        paid("paid", payment, account, pricing::Beyond::Refused);
}

void ShopYear::fill(int jobs, int lines) {
    m_isFilling = true;
    for (int done = 0; done < jobs; done += kFilledAtOnce) {
        const auto many = std::min(kFilledAtOnce, jobs - done);
        of(m_book.batch(base::say(db::Note::NewQuote), [&]() -> base::Done {
            for (int i = 0; i < many; ++i) {
                m_clock.now += std::chrono::minutes(24 * 60 / kJobsADay);
                auto quote = issue(order(lines), nullptr);
                if (!quote) return base::fail(quote.error());
                carry(*quote);
                m_jobs.push_back(quote->id);
            }
            return {};
        }));
    }
    m_isFilling = false;
    m_prices.clear();
}

quoting::SheetContent saidOf(quoting::SheetContent sheet) {
    sheet.customer = {};
    return sheet;
}

std::map<std::string, quoting::SheetContent> sheetsOf(db::Book& book, const std::vector<std::string>& numbers) {
    std::map<std::string, quoting::SheetContent> sheets;
    for (const auto& number : numbers) {
        if (number.starts_with("I-") || number.starts_with("R-") || number.starts_with("C-"))
            sheets[number] = of(book.billNumbered(number)).result.sheet;
        else
            sheets[number] = of(book.quoteAsGiven(number)).result.value().sheet;
    }
    return sheets;
}

} // namespace sp::test

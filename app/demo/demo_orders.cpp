// SPDX-License-Identifier: MIT
#include "app/demo/demo_orders.h"

#include "app/demo/demo_book.h"
#include "app/words/proof_sheet.h"
#include "app/words/quote_sheet.h"
#include "app/words/sheet_words.h"
#include "app/words/words.h"

#include <algorithm>
#include <chrono>
#include <map>
#include <memory>
#include <optional>
#include <string>
#include <utility>
#include <vector>

namespace sp::demo {

namespace {

using base::Done;
using base::fail;
using catalogue::OrderLine;
using catalogue::Stage;
using units::Count;
using units::Money;

enum class Part { Deposit, Rest };

struct Paid {
    std::int64_t daysAfter; ///< the quote
    Part part;
    const char* kind;
};

/// One job of the season, written as its story is told.
struct Job {
    Job(const char* whose, std::int64_t quotedAgo, OrderLine line)
        : customer(whose)
        , daysAgo(quotedAgo)
        , lines{std::move(line)} {}

    Job& line(OrderLine more) { return lines.push_back(std::move(more)), *this; }
    Job& orRather(OrderLine line) { return otherLines.push_back(std::move(line)), *this; }
    Job& wanted(std::int64_t after) { return wantedAfter = after, *this; }
    Job& exempt() { return isExempt = true, *this; }
    Job& atNoCharge() { return isAtNoCharge = true, *this; }
    Job& less(std::int64_t percent) { return discount.share = units::Rate::fromPercent(percent), *this; }
    Job& deposit(std::int64_t after, const char* kind = "Cash") {
        return paid.push_back({after, Part::Deposit, kind}), *this;
    }
    Job& rest(std::int64_t after, const char* kind = "Cash") {
        return paid.push_back({after, Part::Rest, kind}), *this;
    }
    /// The customer changed their mind so many days after the quote.
    Job& revised(std::int64_t after, OrderLine line) {
        revisedAfter = after;
        revisedLines = {std::move(line)};
        return *this;
    }
    Job& now(Stage reached) { return stage = reached, *this; }

    const char* customer; ///< empty: someone at the counter
    std::int64_t daysAgo;
    std::optional<std::int64_t> wantedAfter; ///< days after the quote
    std::vector<OrderLine> lines;
    std::vector<OrderLine> otherLines; ///< of a second choice
    std::int64_t revisedAfter = 0;
    std::vector<OrderLine> revisedLines; ///< none of one that was not revised
    Stage stage = Stage::Quoted;
    std::vector<Paid> paid;
    catalogue::Discount discount;
    bool isExempt = false;
    bool isAtNoCharge = false;
};

/// A seat whose clock is put back by whole days while there is told what happened then.
class PastClock {
  public:
    explicit PastClock(db::Environment seat)
        : m_seat(std::move(seat)) {}

    db::Environment environment() const {
        auto past = m_seat;
        past.now = [now = m_seat.now, ago = m_ago] { return now() - std::chrono::days(*ago); };
        past.today = [today = m_seat.today, ago = m_ago] { return today().plusDays(-*ago); };
        return past;
    }
    void putBack(std::int64_t days) { *m_ago = days; }

  private:
    db::Environment m_seat;
    std::shared_ptr<std::int64_t> m_ago = std::make_shared<std::int64_t>(0);
};

class Season {
  public:
    Season(db::Book& book, PastClock& clock, units::Date today)
        : m_book(book)
        , m_clock(clock)
        , m_today(today) {}

    /// What was over on a day is written on that day; what is open, today.
    Done fill() {
        if (auto ok = read(); !ok) return ok;
        if (auto ok = useWhenReady(); !ok) return ok;
        const auto jobs = past();
        for (auto next = jobs.begin(); next != jobs.end();) {
            const auto ago = overAgo(*next);
            const auto last = std::find_if(next, jobs.end(), [&](const Job& job) { return overAgo(job) != ago; });
            m_clock.putBack(ago);
            const auto added = m_book.batch(words::say(QT_TRANSLATE_NOOP("App", "the demo's jobs")), [&]() -> Done {
                for (; next != last; ++next)
                    if (auto ok = add(*next); !ok) return ok;
                return {};
            });
            if (!added) return added;
        }
        m_clock.putBack(0);
        return openDraft();
    }

  private:
    /// How many days ago a job was handed over or let go; of one that is open none.
    static std::int64_t overAgo(const Job& job) {
        if (job.stage != Stage::Collected && job.stage != Stage::Declined) return 0;
        auto after = job.wantedAfter.value_or(0);
        for (const auto& paid : job.paid) after = std::max(after, paid.daysAfter);
        return std::max<std::int64_t>(0, job.daysAgo - after);
    }

    Done read() {
        const auto designs = m_book.designs();
        if (!designs) return fail(designs.error());
        for (const auto& design : *designs) m_designs[design.name] = design;
        const auto materials = m_book.materials();
        if (!materials) return fail(materials.error());
        for (const auto& material : *materials) m_materials[material.name] = material.id;
        const auto customers = m_book.customers();
        if (!customers) return fail(customers.error());
        for (const auto& customer : *customers) m_customers[customer.name] = customer.id;
        return {};
    }

    OrderLine line(const char* design, std::int64_t pieces, const char* on = nullptr,
                   const char* place = nullptr) const {
        auto line = catalogue::lineOf(m_designs.at(design));
        line.quantity = Count::of(pieces);
        if (on) line.baseMaterial = m_materials.at(on);
        if (place) line.first().place = place;
        return line;
    }

    /// The same piece with another design on it too.
    OrderLine with(OrderLine line, const char* design, const char* place) const {
        line.places.push_back(catalogue::placementOf(m_designs.at(design)));
        line.places.back().place = place;
        return line;
    }

    OrderLine own(const char* design, std::int64_t pieces) const {
        auto garment = line(design, pieces);
        garment.baseMaterial = {};
        garment.customersGarment = true;
        return garment;
    }

    OrderLine postage(std::int64_t cents) const {
        OrderLine charge;
        charge.title = "Postage";
        charge.places.clear();
        charge.overrideEach = Money::fromMicros(cents * 10'000);
        return charge;
    }

    std::vector<Job> past() const {
        const char* studio = "Larkspur Lane Dance Studio";
        const char* club = "Juniper Hill Swim Club";
        const char* florists = "Wren and Daughter, florists";
        const auto quoted = [](const char* customer, std::int64_t daysAgo, OrderLine line) {
            return Job(customer, daysAgo, std::move(line));
        };
        using enum Stage;
        return {
            quoted(studio, 88, line("Studio crest", 24)).wanted(12).exempt().deposit(1, "Card").rest(12).now(Collected),
            quoted(club, 81, line("Lantern", 40)).deposit(0).rest(9).now(Collected),
            quoted("", 77, line("Paper boat", 6)).rest(0).now(Collected),
            quoted(florists, 70, line("Heron", 12)).wanted(8).deposit(0).rest(8, "Transfer").now(Collected),
            quoted("", 66, own("Lantern", 2)).rest(3).now(Collected),
            quoted(club, 60, line("Clover row", 30)).wanted(14).now(Declined),
            quoted(studio, 54, line("Nameplate “Odette”", 36)).exempt().deposit(1, "Card").rest(18).now(Collected),
            quoted("", 49, line("Heron", 1)).line(postage(650)).rest(0, "Card").now(Collected),
            quoted(club, 45, line("Heron", 24)).wanted(10).less(10).deposit(0).rest(10).now(Collected),
            quoted(florists, 40, line("Lantern", 12)).rest(0).now(Collected),
            quoted("", 36, line("Paper boat", 12)),
            quoted(florists, 30, line("Clover row", 40)).wanted(9).deposit(1, "Transfer").now(Collected),
            quoted("", 28, line("Lantern", 10)),
            quoted(studio, 24, line("Studio crest", 6)).wanted(15).exempt().rest(0, "Card").now(Collected),
            quoted(club, 19, line("Lantern", 40)).wanted(18).deposit(0).revised(2, line("Lantern", 48)).now(Ready),
            quoted("", 15, line("Heron", 2)).deposit(0).now(Declined),
            quoted(studio, 12, with(line("Studio crest", 18, nullptr, "Front"), "Lantern", "Sleeve"))
                .wanted(14)
                .exempt()
                .deposit(1, "Card")
                .now(InProduction),
            quoted(florists, 9, line("Clover row", 24)).wanted(16).deposit(2, "Transfer").now(Agreed),
            quoted(club, 8, line("Lantern", 2)).wanted(3).atNoCharge().now(InProduction),
            quoted("", 6, line("Paper boat", 24)).wanted(11).now(Agreed),
            quoted(florists, 4, line("Heron", 20)).orRather(line("Heron", 20, "Tote bag, canvas")),
            quoted("", 1, line("Nameplate “Odette”", 4)),
        };
    }

    /// The demo's supplies leave the shelf by themselves.
    Done useWhenReady() {
        auto shop = m_book.shop();
        if (!shop) return fail(shop.error());
        shop->usedWhen = catalogue::UsedWhen::Ready;
        return m_book.save(*shop);
    }

    Done add(const Job& job) {
        catalogue::Order order;
        order.quotedOn = m_today.plusDays(-job.daysAgo);
        if (*job.customer != '\0') order.customer = m_customers.at(job.customer);
        if (job.wantedAfter) order.wantedBy = order.quotedOn.plusDays(*job.wantedAfter);
        order.lines = job.lines;
        order.discount = job.discount;
        order.asksExemption = job.isExempt;
        order.atNoCharge = job.isAtNoCharge;
        if (!job.otherLines.empty()) order.others.push_back({{}, job.discount, job.otherLines});
        const auto quote = give(order, nullptr);
        if (!quote) return fail(quote.error());
        return carry(*quote, job);
    }

    base::Result<db::Quote> give(const catalogue::Order& order, const db::Quote* revised) {
        const auto prices = m_book.priceBook(order.customer);
        if (!prices) return fail(prices.error());
        const auto until = order.quotedOn.plusDays(prices->shop.rules.validDays);
        const auto result = words::resultOf(order, *prices, until, m_fits, m_words);
        if (!result) return fail(result.error());
        const auto shown = words::withProofs(*result, m_book, order, *prices, m_words);
        return revised ? m_book.issueRevision(revised->id, order, *prices, shown, until)
                       : m_book.issueNew(order, *prices, shown, until);
    }

    Done revise(const db::Quote& quote, const Job& job) {
        auto order = quote.order;
        order.quotedOn = quote.order.quotedOn.plusDays(job.revisedAfter);
        order.lines = job.revisedLines;
        const auto revised = give(order, &quote);
        return revised ? Done() : fail(revised.error());
    }

    /// Through its stages and payments, as far as it has come.
    Done carry(const db::Quote& quote, const Job& job) {
        const auto& id = quote.id;
        std::vector<Stage> stages;
        for (const auto stage : {Stage::Agreed, Stage::InProduction, Stage::Ready, Stage::Collected})
            if (catalogue::isAgreedTo(job.stage) && stage <= job.stage) stages.push_back(stage);
        if (job.stage == Stage::Declined) stages.push_back(Stage::Declined);
        for (const auto& paid : job.paid)
            if (auto ok = pay(quote, paid); !ok) return ok;
        if (!job.revisedLines.empty())
            if (auto ok = revise(quote, job); !ok) return ok;
        for (const auto stage : stages) {
            if (auto ok = restock(id, stage); !ok) return ok;
            if (auto ok = m_book.setStage(id, stage); !ok) return ok;
        }
        return {};
    }

    /// A delivery of what the job is about to use, so that the shelf is what it was when the book was begun.
    Done restock(const base::Id& job, Stage stage) {
        const auto use = m_book.useAt(job, stage);
        if (!use) return fail(use.error());
        for (const auto* takes : {&use->used, &use->lacks})
            for (const auto& take : *takes)
                if (auto ok = m_book.moveStock(
                        {{}, take.material, take.count, {}, "delivery", {}, db::records::MoveKind::Bought, {}});
                    !ok)
                    return ok;
        return {};
    }

    Done pay(const db::Quote& quote, const Paid& paid) {
        const auto account = m_book.account(quote.id);
        if (!account) return fail(account.error());
        catalogue::Payment payment;
        payment.job = quote.id;
        payment.amount = paid.part == Part::Deposit ? account->depositLeft() : account->left;
        payment.kind = paid.kind;
        payment.paidOn = std::min(m_today, quote.order.quotedOn.plusDays(paid.daysAfter));
        const auto made = m_book.pay(payment, pricing::Beyond::Refused);
        if (!made) return fail(made.error());
        return {};
    }

    /// Two dozen hoodies for the club, or tees: what the Counter opens with.
    Done openDraft() {
        auto draft = m_book.startQuote();
        if (!draft) return fail(draft.error());
        auto& order = draft->order;
        order.customer = m_customers.at("Juniper Hill Swim Club");
        order.wantedBy = m_today.plusDays(14);
        order.lines = {with(line("Heron", 24, "Hoodie, navy", "Front"), "Paper boat", "Sleeve")};
        order.lines[0].sizes = {{"2XL", Count::of(3)}};
        order.others.push_back({{}, {}, {line("Heron", 24, "Tee, black", "Front")}});
        const auto saved = m_book.saveDraft(*draft);
        if (!saved) return fail(saved.error());
        return {};
    }

    db::Book& m_book;
    PastClock& m_clock;
    units::Date m_today;
    std::map<std::string, catalogue::Design> m_designs;
    std::map<std::string, base::Id> m_materials;
    std::map<std::string, base::Id> m_customers;
    layout::FitMemo m_fits;
    words::SheetWords m_words;
};

} // namespace

base::Result<std::unique_ptr<db::Book>> createBusyDemo(const std::filesystem::path& file, db::Environment environment) {
    PastClock clock(environment);
    auto book = createDemoBook(file, clock.environment());
    if (!book) return book;
    if (const auto filled = Season(**book, clock, environment.today()).fill(); !filled) return fail(filled.error());
    book->reset(); // what there is to undo begins with its reader, whose clock goes right
    return db::Book::open(file, std::move(environment));
}

} // namespace sp::demo

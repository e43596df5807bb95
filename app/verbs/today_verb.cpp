// SPDX-License-Identifier: MIT
#include "app/verbs/verb_kit.h"
#include "core/catalogue/reminder.h"
#include "core/units/text.h"

#include <fmt/format.h>

namespace sp::verbs {

namespace {

using catalogue::Reminder;
using units::Money;

const char* codeOf(Reminder reminder) {
    switch (reminder) {
    case Reminder::Wanted: return "wanted";
    case Reminder::DepositMissing: return "deposit_missing";
    case Reminder::Lapsing: return "lapsing";
    case Reminder::NotCollected: return "not_collected";
    case Reminder::Owed: return "owed";
    }
    return "";
}

/// Goes through the jobs of a book once.
class Today {
  public:
    Today(db::Book& book, units::Date today, const units::Currency& currency)
        : m_book(book)
        , m_today(today)
        , m_currency(currency) {}

    base::Done look(const db::QuoteSummary& quote) {
        const bool isPaid = !quote.total || *quote.total <= quote.paid;
        catalogue::JobState job{.stage = quote.stage,
                                .wantedBy = quote.wantedBy,
                                .lastDay = quote.lastDay,
                                .stageSince = quote.stageSince,
                                .isOwed = !isPaid};
        Money deposit;
        if (catalogue::isAgreedTo(quote.stage) && !isPaid) {
            const auto account = m_book.account(quote.id);
            if (!account) return base::fail(account.error());
            deposit = account->depositLeft();
            job.isDepositMissing = !deposit.isZero();
        }
        for (const auto reminder : catalogue::remindersOf(job, m_today)) add(reminder, quote, deposit);
        return {};
    }

    void look(const catalogue::Customer& customer) {
        if (!customer.certificate || !customer.certificate->expiresOn) return;
        const auto ends = *customer.certificate->expiresOn;
        if (m_today.daysUntil(ends) > catalogue::kCertificateEndsSoon) return;
        m_certificates.push_back({{"customer", customer.name}, {"ends", ends.iso()}});
        m_lines += ends < m_today ? line(QT_TRANSLATE_NOOP("App", "%1: the certificate of exemption ended on %2."),
                                         customer.name, ends.iso())
                                  : line(QT_TRANSLATE_NOOP("App", "%1: the certificate of exemption ends on %2."),
                                         customer.name, ends.iso());
    }

    Json json() const { return {{"day", m_today.iso()}, {"jobs", m_jobs}, {"certificates", m_certificates}}; }
    std::string text() const {
        return m_lines.empty() ? line(QT_TRANSLATE_NOOP("App", "Nothing asks for anything today.")) : m_lines;
    }

  private:
    std::string said(Reminder reminder, const db::QuoteSummary& quote, Money deposit) const {
        const auto exact = [&](Money amount) { return units::formatExact(amount, m_currency); };
        switch (reminder) {
        case Reminder::Wanted:
            return *quote.wantedBy < m_today
                       ? told(QT_TRANSLATE_NOOP("App", "late, wanted by %1"), quote.wantedBy->iso())
                       : told(QT_TRANSLATE_NOOP("App", "wanted today"));
        case Reminder::DepositMissing:
            return told(QT_TRANSLATE_NOOP("App", "%1 of the deposit are missing"), exact(deposit));
        case Reminder::Lapsing: return told(QT_TRANSLATE_NOOP("App", "the quote ends on %1"), quote.lastDay->iso());
        case Reminder::NotCollected:
            return told(QT_TRANSLATE_NOOP("App", "ready since %1, not collected"), quote.stageSince.iso());
        case Reminder::Owed: return told(QT_TRANSLATE_NOOP("App", "collected, %1 are owed"), exact(left(quote)));
        }
        return {};
    }

    static Money left(const db::QuoteSummary& quote) { return *quote.total - quote.paid; }

    void add(Reminder reminder, const db::QuoteSummary& quote, Money deposit) {
        const auto title = words::titleOf(quote).toStdString();
        Json job = {
            {"number", quote.number}, {"customer", quote.customer}, {"title", title}, {"asks", codeOf(reminder)}};
        if (reminder == Reminder::Wanted) job["wanted_by"] = quote.wantedBy->iso();
        if (reminder == Reminder::Lapsing) job["last_day"] = quote.lastDay->iso();
        if (reminder == Reminder::NotCollected) job["since"] = quote.stageSince.iso();
        if (reminder == Reminder::DepositMissing) job["amount"] = units::formatExact(deposit, m_currency);
        if (reminder == Reminder::Owed) job["amount"] = units::formatExact(left(quote), m_currency);
        m_jobs.push_back(std::move(job));
        const auto who = quote.customer.empty() ? title : quote.customer + ", " + title;
        m_lines += fmt::format("{:<10}  {}: {}\n", quote.number, who, said(reminder, quote, deposit));
    }

    db::Book& m_book;
    units::Date m_today;
    const units::Currency& m_currency;
    Json m_jobs = Json::array();
    Json m_certificates = Json::array();
    std::string m_lines;
};

} // namespace

Outcome todayVerb(const Arguments& arguments, const Helpers& helpers) {
    const auto of = openQuotes(arguments, helpers);
    if (!of) return refused(of.error());
    const auto& [book, shop, quotes] = *of;
    const auto customers = book->customers();
    if (!customers) return refused(customers.error());
    Today today(*book, helpers.environment.today(), shop.currency);
    for (const auto& quote : quotes)
        if (const auto looked = today.look(quote); !looked) return refused(looked.error());
    for (const auto& customer : *customers) today.look(customer);
    return answer(arguments, today.json(), today.text());
}

} // namespace sp::verbs

// SPDX-License-Identifier: MIT
#include "app/verbs/verb_kit.h"
#include "app/words/names.h"
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

class Today {
  public:
    Today(const db::AskedToday& asked, units::Date today, const units::Currency& currency)
        : m_today(today)
        , m_currency(currency) {
        for (const auto& one : asked.jobs) add(one);
        for (const auto& one : asked.certificates) add(one);
    }

    Json json() const { return {{"day", m_today.iso()}, {"jobs", m_jobs}, {"certificates", m_certificates}}; }
    std::string text() const {
        return m_lines.empty() ? line(QT_TRANSLATE_NOOP("App", "Nothing asks for anything today.")) : m_lines;
    }

  private:
    std::string said(const db::Asked& asked) const {
        const auto& quote = asked.job;
        const auto exact = [&](Money amount) { return units::formatExact(amount, m_currency); };
        switch (asked.reminder) {
        case Reminder::Wanted:
            return *quote.wantedBy < m_today
                       ? told(QT_TRANSLATE_NOOP("App", "late, wanted by %1"), quote.wantedBy->iso())
                       : told(QT_TRANSLATE_NOOP("App", "wanted today"));
        case Reminder::DepositMissing:
            return told(QT_TRANSLATE_NOOP("App", "%1 of the deposit are missing"), exact(asked.amount));
        case Reminder::Lapsing: return told(QT_TRANSLATE_NOOP("App", "the quote ends on %1"), quote.lastDay->iso());
        case Reminder::NotCollected:
            return told(QT_TRANSLATE_NOOP("App", "ready since %1, not collected"), quote.stageSince.iso());
        case Reminder::Owed: return told(QT_TRANSLATE_NOOP("App", "collected, %1 are owed"), exact(asked.amount));
        }
        return {};
    }

    void add(const db::Asked& asked) {
        const auto& quote = asked.job;
        const auto title = words::titleOf(quote).toStdString();
        Json job = {
            {"number", quote.number}, {"customer", quote.customer}, {"title", title}, {"asks", codeOf(asked.reminder)}};
        if (asked.reminder == Reminder::Wanted) job["wanted_by"] = quote.wantedBy->iso();
        if (asked.reminder == Reminder::Lapsing) job["last_day"] = quote.lastDay->iso();
        if (asked.reminder == Reminder::NotCollected) job["since"] = quote.stageSince.iso();
        if (asked.reminder == Reminder::DepositMissing || asked.reminder == Reminder::Owed)
            job["amount"] = units::formatExact(asked.amount, m_currency);
        m_jobs.push_back(std::move(job));
        const auto who = quote.customer.empty() ? title : quote.customer + ", " + title;
        m_lines += fmt::format("{:<11}  {}: {}\n", quote.number, who, said(asked));
    }

    void add(const db::EndingCertificate& one) {
        const auto ends = one.endsOn.iso();
        m_certificates.push_back({{"customer", one.name}, {"place", one.place}, {"ends", ends}});
        m_lines += one.endsOn < m_today
                       ? line(QT_TRANSLATE_NOOP("App", "%1: the certificate of exemption for %2 ended on %3."),
                              one.name, one.place, ends)
                       : line(QT_TRANSLATE_NOOP("App", "%1: the certificate of exemption for %2 ends on %3."), one.name,
                              one.place, ends);
    }

    units::Date m_today;
    const units::Currency& m_currency;
    Json m_jobs = Json::array();
    Json m_certificates = Json::array();
    std::string m_lines;
};

} // namespace

Outcome todayVerb(const Arguments& arguments, const Helpers& helpers) {
    auto book = openBook(arguments, helpers);
    if (!book) return refused(book.error());
    const auto shop = (*book)->shop();
    if (!shop) return refused(shop.error());
    const auto asked = (*book)->askedToday();
    if (!asked) return refused(asked.error());
    const Today today(*asked, helpers.environment.today(), shop->currency);
    return answer(arguments, today.json(), today.text());
}

} // namespace sp::verbs

// SPDX-License-Identifier: MIT
// What the presenter of the Counter decides about the customer.
#include "app/counter/counter_presenter.h"
#include "app/format/likeness.h"
#include "app/words/words.h"
#include "db/messages.h"

#include <QRegularExpression>

namespace sp::counter {

namespace {

struct Reach {
    std::string telephone;
    std::string mail;
};

/// "555 0148, venn@example.org": what has an @ is the mail address, the rest the telephone number.
Reach reachFrom(const QString& text) {
    static const QRegularExpression address(QStringLiteral("[^\\s,;]+@[^\\s,;]+"));
    static const QRegularExpression around(QStringLiteral("^[\\s,;]+|[\\s,;]+$"));
    auto rest = text;
    const auto mail = address.match(text).captured();
    if (!mail.isEmpty()) rest.remove(rest.indexOf(mail), mail.size());
    return {rest.remove(around).simplified().toStdString(), mail.toStdString()};
}

bool isTelephone(const QString& text) {
    static const QRegularExpression number(QStringLiteral("^\\+?[\\d\\s()/.-]{5,}$"));
    return number.match(text).hasMatch();
}

} // namespace

void CounterPresenter::setCustomer(const base::Id& customer) {
    const bool wasTyped = !m_typedCustomer.isEmpty();
    m_typedCustomer.clear();
    if (!canChange() || (m_quote.order.customer == customer && !wasTyped)) return;
    m_quote.order.customer = customer;
    m_quote.order.asksExemption = isExempt(this->customer());
    readPrices();
    touched();
    saveDraft();
    Q_EMIT orderShown();
}

bool CounterPresenter::isExempt(const catalogue::Customer* known) const {
    return known && catalogue::certificateOn(*known, order().quotedOn);
}

bool CounterPresenter::isNewCustomer() const {
    return canChange() && !order().customer.isNone() && order().customer == m_addedCustomer;
}

void CounterPresenter::setTypedCustomer(const QString& text) {
    if (!canChange() || m_typedCustomer == text) return;
    m_typedCustomer = text;
    if (text.isEmpty() || order().customer.isNone()) return;
    m_quote.order.customer = {};
    m_quote.order.asksExemption = false;
    readPrices();
    touched();
}

QString CounterPresenter::addCustomer(const QString& name) {
    if (!canChange()) return {};
    catalogue::Customer customer;
    customer.name = name.trimmed().toStdString();
    if (name.contains(QLatin1Char('@'))) customer.mail = reachFrom(name).mail;
    if (isTelephone(name.trimmed())) customer.telephone = customer.name;
    auto quote = m_quote;
    m_keeping = true;
    const auto added = m_session.attempt([&](db::Book& book) {
        return book.batch(base::say(db::Note::Adding, customer.name), [&]() -> base::Done {
            const auto id = book.save(customer);
            if (!id) return base::fail(id.error());
            quote.order.customer = *id;
            quote.order.asksExemption = false;
            const auto version = book.saveDraft(quote);
            if (!version) return base::fail(version.error());
            quote.version = *version;
            return {};
        });
    });
    m_keeping = false;
    if (!added) return words::sentence(added.error());
    m_rest.stop();
    m_unkept = false;
    m_quote = std::move(quote);
    m_addedCustomer = order().customer;
    m_typedCustomer.clear();
    readPrices();
    reprice();
    Q_EMIT orderShown();
    Q_EMIT changed();
    return {};
}

QString CounterPresenter::reach() const {
    const auto* known = customer();
    if (!known) return {};
    const auto telephone = QString::fromStdString(known->telephone);
    const auto mail = QString::fromStdString(known->mail);
    return telephone.isEmpty() || mail.isEmpty() ? telephone + mail : telephone + QStringLiteral(", ") + mail;
}

QString CounterPresenter::setReach(const QString& text) {
    const auto* known = customer();
    if (!known || !canChange()) return {};
    auto edited = *known;
    auto typed = reachFrom(text);
    edited.telephone = std::move(typed.telephone);
    edited.mail = std::move(typed.mail);
    if (edited == *known) return {};
    const auto saved = m_session.attempt([&](db::Book& book) { return book.save(edited); });
    return saved ? QString() : words::sentence(saved.error());
}

const catalogue::Customer* CounterPresenter::likeOfNew() const {
    const auto* added = isNewCustomer() ? customer() : nullptr;
    if (!added) return nullptr;
    const auto same = [](const std::string& one, const std::string& other) { return !one.empty() && one == other; };
    for (const auto& other : m_session.customers()) {
        if (other.id == added->id) continue;
        const bool isLike = desk::isLike(QString::fromStdString(added->name), QString::fromStdString(other.name));
        if (isLike || same(added->telephone, other.telephone) || same(added->mail, other.mail)) return &other;
    }
    return nullptr;
}

void CounterPresenter::mergeCustomer(const base::Id& into) {
    if (!canChange() || !customer()) return;
    saveDraft();
    const auto from = order().customer;
    const auto merged = m_session.change([&](db::Book& book) { return book.mergeCustomers(from, into); });
    if (merged && isExempt(customer())) setAsksExemption(true);
}

} // namespace sp::counter

// SPDX-License-Identifier: MIT
#include "app/customers/customers_presenter.h"

#include "app/session/free_name.h"
#include "app/words/words.h"
#include "core/catalogue/reminder.h"

#include <QDir>

namespace sp::customers {

CustomersPresenter::CustomersPresenter(session::BookSession& session, QObject* parent)
    : QObject(parent)
    , m_session(session) {
    connect(&m_session, &session::BookSession::changed, this, &CustomersPresenter::changed);
    openFirst();
}

void CustomersPresenter::openFirst() {
    const auto& all = m_session.customers();
    m_current = all.empty() ? base::Id{} : all.front().id;
}

std::vector<catalogue::Customer> CustomersPresenter::matching(const QString& text, const base::Id& kept) {
    std::vector<catalogue::Customer> found;
    const auto wanted = text.trimmed();
    const auto holds = [&](const std::string& part) {
        return QString::fromStdString(part).contains(wanted, Qt::CaseInsensitive);
    };
    for (const auto& one : m_session.customers())
        if (one.id == kept || holds(one.name) || holds(one.telephone) || holds(one.mail)) found.push_back(one);
    return found;
}

const catalogue::Customer* CustomersPresenter::current() { return m_session.customer(m_current); }

void CustomersPresenter::open(const base::Id& customer) {
    if (m_current == customer) return;
    m_current = customer;
    Q_EMIT opened();
}

std::optional<db::CustomerFile> CustomersPresenter::file() {
    if (!current()) return std::nullopt;
    auto file = m_session.read([&](db::Book& book) { return book.customerFile(m_current); });
    if (!file) return std::nullopt;
    return std::move(*file);
}

std::vector<db::DesignPicture> CustomersPresenter::pictures(std::int64_t limit) {
    if (!current()) return {};
    auto found = m_session.read([&](db::Book& book) { return book.picturesFor(m_current, limit); });
    return found ? std::move(*found) : std::vector<db::DesignPicture>();
}

namespace {

/// The name as a folder can be called: no part of a path, and none that is hidden.
QString asFolder(const std::string& name) {
    auto text = QString::fromStdString(name);
    for (auto& letter : text)
        if (letter == QLatin1Char('/') || letter == QLatin1Char('\\') || !letter.isPrint()) letter = QLatin1Char('-');
    while (text.startsWith(QLatin1Char('.'))) text.remove(0, 1);
    return text.trimmed();
}

} // namespace

base::Result<QString> CustomersPresenter::writeAll(const QString& folder, const PaperWriters& writers) {
    const auto* customer = current();
    if (!customer) return QString();
    const auto name = asFolder(customer->name);
    const auto target = QDir(folder).filePath(name.isEmpty() ? tr("Customer") : name);
    const auto written = m_session.attemptPart(
        [&](db::Book& book) { return writeAllOf(book, m_current, target.toStdString(), writers); });
    if (!written) return base::fail(written.error());
    return target;
}

std::vector<catalogue::Certificate> CustomersPresenter::endingCertificates() {
    const auto* customer = current();
    if (!customer) return {};
    return catalogue::endingCertificates(*customer, m_session.today());
}

QString CustomersPresenter::edit(const std::function<void(catalogue::Customer&)>& work) {
    const auto* customer = current();
    if (!customer) return {};
    auto edited = *customer;
    work(edited);
    if (edited == *customer) return {};
    const auto saved = m_session.attempt([&](db::Book& book) { return book.save(edited); });
    return saved ? QString() : words::sentence(saved.error());
}

void CustomersPresenter::create() {
    catalogue::Customer customer;
    customer.name = session::freeName(tr("New customer"), m_session.customers()).toStdString();
    const auto saved = m_session.change([&](db::Book& book) { return book.save(customer); });
    if (!saved) return;
    m_current = *saved;
    Q_EMIT opened();
}

void CustomersPresenter::mergeInto(const base::Id& other) {
    const auto from = m_current;
    const auto merged = m_session.change([&](db::Book& book) { return book.mergeCustomers(from, other); });
    if (merged) open(other);
}

std::vector<db::Leaving> CustomersPresenter::copies(const db::BackupPlaces& places) {
    const auto mark = m_session.mark();
    if (!mark) return {};
    const auto now = std::chrono::floor<std::chrono::seconds>(m_session.book().environment().now());
    return db::copiesOf(m_session.book().file(), places, *mark, now);
}

QString CustomersPresenter::erase(const base::Id& customer) {
    const auto gone = customer;
    const auto erased = m_session.attempt([&](db::Book& book) { return book.eraseCustomer(gone); });
    if (m_current == gone && !m_session.customer(gone)) {
        openFirst();
        Q_EMIT opened();
    }
    return erased ? QString() : words::sentence(erased.error());
}

} // namespace sp::customers

#include "moc_customers_presenter.cpp"

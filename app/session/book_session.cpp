// SPDX-License-Identifier: MIT
#include "app/session/book_session.h"

#include "app/words/words.h"
#include "db/messages.h"

#include <algorithm>
#include <chrono>
#include <utility>

#include <QDateTime>

namespace sp::session {

namespace {

template<class T>
const T* withId(const std::vector<T>& things, const base::Id& id) {
    const auto found = std::find_if(things.begin(), things.end(), [&](const T& thing) { return thing.id == id; });
    return found == things.end() ? nullptr : &*found;
}

} // namespace

BookSession::BookSession(std::unique_ptr<db::Book> book, QObject* parent)
    : QObject(parent)
    , m_book(std::move(book))
    , m_day(today()) {
    m_dayTimer.setInterval(std::chrono::minutes(1)); // not until midnight: the clock may be set, the computer asleep
    connect(&m_dayTimer, &QTimer::timeout, this, &BookSession::noticeDay);
    m_dayTimer.start();
}

template<class T, class Reader>
const T& BookSession::once(std::optional<T>& kept, Reader reader) {
    if (!kept) {
        auto result = (m_book.get()->*reader)();
        if (!result) {
            m_unread = result.error();
            Q_EMIT troubled(result.error());
        }
        kept = result ? std::move(*result) : T{};
    }
    return *kept;
}

const catalogue::Shop& BookSession::shop() { return once(m_read.shop, &db::Book::shop); }
const catalogue::BenchStandards& BookSession::bench() { return once(m_read.bench, &db::Book::bench); }
const std::vector<catalogue::Material>& BookSession::materials() {
    return once(m_read.materials, &db::Book::materials);
}
const std::vector<catalogue::Supplier>& BookSession::suppliers() {
    return once(m_read.suppliers, &db::Book::suppliers);
}
const std::vector<catalogue::Pack>& BookSession::packs() { return once(m_read.packs, &db::Book::packs); }
const std::vector<catalogue::Kit>& BookSession::kits() { return once(m_read.kits, &db::Book::kits); }
const std::vector<catalogue::Design>& BookSession::designs() { return once(m_read.designs, &db::Book::designs); }
const std::vector<catalogue::Customer>& BookSession::customers() {
    return once(m_read.customers, &db::Book::customers);
}
const std::vector<catalogue::ColourMaterial>& BookSession::colourMaterials() {
    return once(m_read.colourMaterials, &db::Book::colourMaterials);
}
const std::vector<catalogue::PriceListColumns>& BookSession::priceListColumns() {
    return once(m_read.priceListColumns, &db::Book::priceListColumns);
}
const std::unordered_map<base::Id, std::int64_t>& BookSession::shelf() { return once(m_read.shelf, &db::Book::shelf); }

QTime BookSession::timeOfDay() const {
    const auto now = std::chrono::floor<std::chrono::milliseconds>(m_book->environment().now());
    return QDateTime::fromMSecsSinceEpoch(now.time_since_epoch().count()).time();
}

catalogue::PriceBook BookSession::prices(const base::Id& customer) {
    if (!m_read.prices) {
        auto result = m_book->priceBook({});
        if (!result) {
            m_unread = result.error();
            Q_EMIT troubled(result.error());
            return {};
        }
        m_read.prices = std::move(*result);
    }
    auto prices = *m_read.prices;
    if (const auto* known = this->customer(customer)) prices.customer = *known;
    return prices;
}

const catalogue::Material* BookSession::material(const base::Id& id) { return withId(materials(), id); }
const catalogue::Supplier* BookSession::supplier(const base::Id& id) { return withId(suppliers(), id); }
const catalogue::Kit* BookSession::kit(const base::Id& id) { return withId(kits(), id); }
const catalogue::Design* BookSession::design(const base::Id& id) { return withId(designs(), id); }
const catalogue::Customer* BookSession::customer(const base::Id& id) {
    const auto* listed = withId(customers(), id);
    if (listed || id.isNone()) return listed;
    const auto now = m_book->customer(id);
    return now && *now ? withId(customers(), (*now)->id) : nullptr;
}

void BookSession::forget() {
    m_read = {};
    m_unread.reset();
}

std::optional<base::Error> BookSession::errorForUnread() {
    if (!m_unread) return std::nullopt;
    const auto error = *m_unread;
    forget();
    Q_EMIT troubled(error);
    Q_EMIT changed(); // so that it is read once more
    return error;
}

std::optional<catalogue::DesignArtwork> BookSession::artwork(const base::Id& design) {
    auto result = read([&](db::Book& book) { return book.artwork(design); });
    return result ? std::move(*result) : std::nullopt;
}

namespace {

/// Whether something is wrong with what was asked for, and not with the book.
bool isRefusal(base::Code code) {
    switch (code) {
    case base::Code::Invalid:
    case base::Code::OutOfRange:
    case base::Code::TooLarge:
    case base::Code::Missing:
    case base::Code::NotFound:
    case base::Code::Ambiguous:
    case base::Code::Conflict: return true;
    case base::Code::Busy:
    case base::Code::Full:
    case base::Code::ReadOnly:
    case base::Code::Foreign:
    case base::Code::TooNew:
    case base::Code::Damaged:
    case base::Code::Failed: return false;
    }
    return false;
}

} // namespace

void BookSession::settle(const std::optional<base::Error>& error, bool tellsRefusals) {
    // Who is erased is gone from the book, though the free space of its file could not be cleaned.
    if (!error || error->fault == idOf(db::Fault::ErasedNotTidied)) {
        forget();
        Q_EMIT saved();
        Q_EMIT changed();
    }
    if (error && (tellsRefusals || !isRefusal(error->code))) Q_EMIT troubled(*error);
}

void BookSession::notice() {
    auto found = m_book->notice();
    if (found && found != m_noticed) Q_EMIT troubled(*found);
    m_noticed = std::move(found);
    noticeDay();
}

void BookSession::noticeDay() {
    const auto before = std::exchange(m_day, today());
    if (m_day != before) Q_EMIT dayTurned();
}

QString BookSession::undoText() {
    const auto state = m_book->undoState();
    return state && state->undo ? words::sentence(*state->undo) : QString();
}

QString BookSession::redoText() {
    const auto state = m_book->undoState();
    return state && state->redo ? words::sentence(*state->redo) : QString();
}

bool BookSession::undo() {
    return change([](db::Book& book) { return book.undo(); }).has_value();
}

bool BookSession::redo() {
    return change([](db::Book& book) { return book.redo(); }).has_value();
}

} // namespace sp::session

#include "moc_book_session.cpp"

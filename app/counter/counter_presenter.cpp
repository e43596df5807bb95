// SPDX-License-Identifier: MIT
#include "app/counter/counter_presenter.h"

#include "app/words/proof_sheet.h"
#include "app/words/quote_sheet.h"
#include "app/words/words.h"
#include "core/catalogue/fields/tables.h"
#include "core/needs/messages.h"
#include "core/needs/shared_sets.h"
#include "db/book/given_prices.h"

#include <algorithm>

namespace sp::counter {

namespace {

constexpr int kRestMilliseconds = 600;

} // namespace

CounterPresenter::CounterPresenter(session::BookSession& session, QObject* parent)
    : QObject(parent)
    , m_session(session) {
    m_rest.setSingleShot(true);
    m_rest.setInterval(kRestMilliseconds);
    connect(&m_rest, &QTimer::timeout, this, &CounterPresenter::saveDraft);
    connect(&m_session, &session::BookSession::changed, this, &CounterPresenter::bookChanged);
}

QString CounterPresenter::whyNoPrice() const {
    if (m_unread.concern(currentChoice())) {
        const auto [line, sentence] = m_unread.first(currentChoice(), m_current);
        if (line == m_current || line == UnreadEntries::kWhole) return sentence;
        const auto title = QString::fromStdString(order().lines[static_cast<std::size_t>(line)].title);
        return tr("Line %1, %2: %3").arg(line + 1).arg(title, sentence);
    }
    return m_whyNot ? words::sentence(*m_whyNot) : QString();
}

std::optional<pricing::LeftOut> CounterPresenter::missingPrice() const {
    if (m_unread.concern(currentChoice()) || !m_whyNot || m_whyNot->fault != needs::idOf(needs::Fault::NoPrice))
        return std::nullopt;
    using catalogue::fields::fieldOf;
    for (const auto& [id, priced] : m_prices.materials) {
        const auto& material = priced.material;
        if (priced.price || material.name != m_whyNot->subject) continue;
        const bool isFixed = material.basis == catalogue::PriceBasis::Fixed;
        return pricing::LeftOut{
            m_whyNot->message(),
            isFixed ? &fieldOf<&catalogue::Material::fixedPrice>() : &fieldOf<&catalogue::PriceBreak::each>(), id};
    }
    return std::nullopt;
}

QString CounterPresenter::whyNot(const char* subject) const {
    return m_whyNot && m_whyNot->subject == subject ? words::sentence(*m_whyNot) : QString();
}

units::Date CounterPresenter::validUntil() const {
    return m_quote.validUntil.value_or(order().quotedOn.plusDays(m_prices.shop.rules.validDays));
}

needs::LineSpares CounterPresenter::spares() const {
    return needs::sparesOf(order().lines, needs::spareRuleOf(m_prices.shop)).at(static_cast<std::size_t>(m_current));
}

const pricing::PricedLine* CounterPresenter::pricedLine() const {
    if (!m_priced || !hasLine()) return nullptr;
    return &m_priced->lines[static_cast<std::size_t>(m_current)];
}

void CounterPresenter::select(int line) {
    saveDraft();
    const int last = static_cast<int>(order().lines.size()) - 1;
    m_current = std::clamp(line, -1, last);
    m_place = 0;
    reprice();
    Q_EMIT lineShown();
    Q_EMIT changed();
}

void CounterPresenter::show(db::Quote quote) {
    m_quote = std::move(quote);
    m_unread.clear();
    m_typedCustomer.clear();
    m_unkept = false;
    m_rest.stop();
    m_current = m_quote.order.lines.empty() ? -1 : 0;
    m_place = 0;
    readPrices();
    reprice();
    Q_EMIT orderShown();
    Q_EMIT lineShown();
    Q_EMIT changed();
}

void CounterPresenter::openLast() {
    auto last = m_session.read([](db::Book& book) { return book.lastDraft(); });
    if (last && *last) {
        show(std::move(**last));
        return;
    }
    startNew();
}

void CounterPresenter::startNew() {
    saveDraft();
    auto started = m_session.keepDraft([](db::Book& book) { return book.startQuote(); });
    if (started) show(std::move(*started));
}

bool CounterPresenter::open(const base::Id& quote) {
    saveDraft();
    auto opened = m_session.read([&](db::Book& book) { return book.quote(quote); });
    if (opened) show(std::move(*opened));
    return opened.has_value();
}

void CounterPresenter::repeat() {
    const auto given = m_quote;
    startNew();
    if (m_quote.id == given.id) return; // the book refused, and said so
    m_quote.order = db::repeatOf(given, m_session.prices(given.order.customer), order().quotedOn);
    readPrices();
    m_current = m_quote.order.lines.empty() ? -1 : 0;
    m_place = 0;
    touched();
    saveDraft();
    Q_EMIT orderShown();
    Q_EMIT lineShown();
    Q_EMIT repeated(given);
}

namespace {

/// Whether the same sealed quote says that it is for somebody else: erasing a customer is no new version of it.
bool namesAnother(const db::Quote& one, const db::Quote& other) {
    const auto inputs = [](const db::Quote& quote) {
        return quote.frozen ? quote.frozen->customer : std::optional<catalogue::Customer>();
    };
    const auto onSheet = [](const db::Quote& quote) {
        return quote.result ? quote.result->sheet.customer : quoting::SheetCustomer();
    };
    return inputs(one) != inputs(other) || onSheet(one) != onSheet(other);
}

} // namespace

void CounterPresenter::bookChanged() {
    if (m_keeping) return;
    // Undo may have restored an earlier state of the draft, and who is erased is on no paper any more. It is loaded
    // unless there are changes not yet saved.
    if (!m_unkept && !m_quote.id.isNone()) {
        const auto stored = m_session.read([&](db::Book& book) { return book.quote(m_quote.id); });
        if (stored && (stored->version != m_quote.version || namesAnother(*stored, m_quote))) {
            const int current = m_current;
            m_quote = *stored;
            readPrices();
            m_unread.clear();
            m_typedCustomer.clear();
            showLines(current);
            reprice();
            Q_EMIT orderShown();
            Q_EMIT lineShown();
            Q_EMIT changed();
            return;
        }
    }
    readPrices();
    reprice();
    Q_EMIT changed();
}

void CounterPresenter::readPrices() {
    m_revised.reset();
    m_prices = m_quote.frozen ? *m_quote.frozen : m_session.prices(order().customer);
    if (!m_quote.revises) return;
    auto given = m_session.read([&](db::Book& book) { return book.quote(m_quote.revises->id); });
    if (!given) return;
    m_revised = std::move(*given);
    m_prices = db::pricesOfRevision(*m_revised, std::move(m_prices));
}

QString CounterPresenter::revise() {
    saveDraft();
    const auto id = m_quote.id;
    auto begun = m_session.attempt([&](db::Book& book) { return book.startRevision(id); });
    if (!begun) return words::sentence(begun.error());
    show(std::move(*begun));
    return {};
}

base::Result<pricing::OrderDifference> CounterPresenter::difference(const units::NumberStyle& style) const {
    return db::differenceOf(m_revised.value(), order(), m_prices, m_session.fits(), style);
}

std::optional<units::Money> CounterPresenter::differenceToday() const {
    const auto& given = m_revised.value();
    if (catalogue::choiceCount(given.order) > 1) return std::nullopt; // of which would it be
    const auto since = db::pricesSince(given, m_session.prices(given.order.customer), m_session.fits());
    return since ? std::optional(since->difference()) : std::nullopt;
}

void CounterPresenter::addDesign(const base::Id& id) {
    const auto* design = m_session.design(id);
    if (!canChange() || !design) return;
    addLine(catalogue::lineOf(*design));
}

void CounterPresenter::addLine(catalogue::OrderLine line) {
    m_quote.order.lines.push_back(std::move(line));
    m_current = static_cast<int>(order().lines.size()) - 1;
    m_place = 0;
    touched();
    saveDraft();
    Q_EMIT lineShown();
}

void CounterPresenter::takeDesign() {
    if (!canChange() || !place()) return;
    const auto* design = m_session.design(place()->design);
    if (!design) return;
    for (const char* field : {"width", "height", "stone"}) m_unread.drop(keyOf(Owner::Place), QLatin1String(field));
    editPlace([&](catalogue::Placement& place) {
        place.width = design->width;
        place.height = design->height;
        place.stones = design->stones;
        place.templatesOnWall = design->templatesOnWall;
        place.plannedPieces = design->plannedPieces;
    });
    saveDraft();
    Q_EMIT lineShown();
}

void CounterPresenter::addOneOff(const QString& title) {
    if (!canChange()) return;
    catalogue::OrderLine line;
    line.title = title.trimmed().toStdString();
    for (const auto& material : m_session.materials())
        if (line.baseMaterial.isNone() && material.kind == catalogue::MaterialKind::Backing)
            line.baseMaterial = material.id;
    addLine(std::move(line));
}

void CounterPresenter::addCharge(const QString& title) {
    if (!canChange()) return;
    catalogue::OrderLine line;
    line.places.clear();
    line.title = title.trimmed().toStdString();
    addLine(std::move(line));
}

const catalogue::Placement* CounterPresenter::place() const {
    if (!hasLine() || m_place >= static_cast<int>(line().places.size())) return nullptr;
    return &line().places[static_cast<std::size_t>(m_place)];
}

const needs::PlaceRequirement* CounterPresenter::requiredAtPlace() const {
    const auto* priced = pricedLine();
    if (!priced || !place()) return nullptr;
    return &priced->cost.places[static_cast<std::size_t>(m_place)];
}

std::optional<int> CounterPresenter::sharesSetWith() const {
    if (!place()) return std::nullopt;
    const auto sets = needs::sharedSets(order().lines, m_prices);
    const auto line = static_cast<std::size_t>(m_current);
    const auto place = static_cast<std::size_t>(m_place);
    if (needs::hasOwnSet(sets, line, place)) return std::nullopt;
    return static_cast<int>(sets[line][place].line);
}

std::optional<int> CounterPresenter::hasSetBeside() const {
    const auto* here = place();
    if (!here || here->design.isNone() || here->templatesOnWall) return std::nullopt;
    const auto& lines = order().lines;
    const auto sets = needs::sharedSets(lines, m_prices);
    const auto rootOf = [&](std::size_t line, std::size_t place) {
        return sets.empty() ? std::pair(line, place) : std::pair(sets[line][place].line, sets[line][place].place);
    };
    const auto own = rootOf(static_cast<std::size_t>(m_current), static_cast<std::size_t>(m_place));
    for (std::size_t i = 0; i < static_cast<std::size_t>(m_current); ++i)
        for (std::size_t k = 0; k < lines[i].places.size(); ++k) {
            const auto& other = lines[i].places[k];
            if (other.design == here->design && !other.templatesOnWall && rootOf(i, k) != own)
                return static_cast<int>(i);
        }
    return std::nullopt;
}

void CounterPresenter::selectPlace(int place) {
    if (!hasLine() || place == m_place || place < 0 || place >= static_cast<int>(line().places.size())) return;
    saveDraft();
    m_place = place;
    Q_EMIT lineShown();
    Q_EMIT changed();
}

void CounterPresenter::addPlace(const base::Id& id) {
    const auto* design = m_session.design(id);
    if (!canChange() || !place() || !design || line().places.size() >= catalogue::kMaxPlaces) return;
    editLine([&](catalogue::OrderLine& line) {
        if (line.first().title.empty()) line.first().title = line.title; // no longer said by the line's alone
        line.places.push_back(catalogue::placementOf(*design));
    });
    m_place = static_cast<int>(line().places.size()) - 1;
    saveDraft();
    Q_EMIT lineShown();
    Q_EMIT changed();
}

void CounterPresenter::removePlace(int place) {
    if (!canChange() || !hasLine() || line().places.size() < 2) return;
    if (place < 0 || place >= static_cast<int>(line().places.size())) return;
    m_unread.removePlace(currentChoice(), m_current, place);
    if (m_place > place || m_place == static_cast<int>(line().places.size()) - 1) --m_place;
    editLine([&](catalogue::OrderLine& line) { line.places.erase(line.places.begin() + place); });
    saveDraft();
    reprice();
    Q_EMIT lineShown();
    Q_EMIT changed();
}

UnreadEntries::Owner CounterPresenter::keyOf(Owner owner) const {
    switch (owner) {
    case Owner::Order: break;
    case Owner::Choice: return {currentChoice()};
    case Owner::Line: return {currentChoice(), m_current};
    case Owner::Place: return {currentChoice(), m_current, m_place};
    }
    return {};
}

void CounterPresenter::removeLine() {
    if (!canChange() || !hasLine()) return;
    m_quote.order.lines.erase(m_quote.order.lines.begin() + m_current);
    m_unread.removeLine(currentChoice(), m_current);
    m_current = std::min(m_current, static_cast<int>(order().lines.size()) - 1);
    m_place = 0;
    touched();
    saveDraft();
    Q_EMIT lineShown();
}

void CounterPresenter::showLines(int current) {
    m_current = std::min(std::max(current, 0), static_cast<int>(order().lines.size()) - 1);
    m_place = hasLine() ? std::clamp(m_place, 0, std::max(0, static_cast<int>(line().places.size()) - 1)) : 0;
}

void CounterPresenter::lookAt(int choice) {
    if (choice < 0 || choice >= choices() || choice == currentChoice()) return;
    saveDraft();
    db::lookAtChoice(m_quote, choice);
    showLines(m_current);
    reprice();
    Q_EMIT orderShown();
    Q_EMIT lineShown();
    Q_EMIT changed();
}

void CounterPresenter::addChoice() {
    if (!canChange() || order().lines.empty() || choices() >= static_cast<int>(catalogue::kMaxChoices)) return;
    saveDraft();
    catalogue::addChoice(m_quote.order);
    touched();
    saveDraft();
    Q_EMIT orderShown();
    Q_EMIT lineShown();
}

void CounterPresenter::removeChoice() {
    if (!canChange() || choices() < 2) return;
    m_unread.removeChoice(currentChoice());
    catalogue::removeChoice(m_quote.order);
    showLines(m_current);
    touched();
    saveDraft();
    Q_EMIT orderShown();
    Q_EMIT lineShown();
}

void CounterPresenter::setChoiceTitle(const QString& title) {
    const auto typed = title.trimmed().toStdString();
    if (!canChange() || order().title == typed) return;
    m_quote.order.title = typed;
    touched();
}

void CounterPresenter::setWantedBy(std::optional<units::Date> day) {
    if (!canChange() || m_quote.order.wantedBy == day) return;
    m_quote.order.wantedBy = day;
    touched();
}

void CounterPresenter::setAsksExemption(bool asks) {
    if (!canChange() || m_quote.order.asksExemption == asks) return;
    m_quote.order.asksExemption = asks;
    touched();
    saveDraft();
}

void CounterPresenter::setAtNoCharge(bool free) {
    if (!canChange() || m_quote.order.atNoCharge == free) return;
    m_quote.order.atNoCharge = free;
    touched();
    saveDraft();
}

void CounterPresenter::setDiscount(const catalogue::Discount& discount) {
    if (!canChange() || m_quote.order.discount == discount) return;
    m_quote.order.discount = discount;
    touched();
}

void CounterPresenter::editLine(const std::function<void(catalogue::OrderLine&)>& edit) {
    if (!canChange() || !hasLine()) return;
    auto changed = line();
    edit(changed);
    if (changed == line()) return;
    m_quote.order.lines[static_cast<std::size_t>(m_current)] = std::move(changed);
    touched();
}

void CounterPresenter::editPlace(const std::function<void(catalogue::Placement&)>& edit) {
    if (!place()) return;
    editLine([&](catalogue::OrderLine& line) { edit(line.places[static_cast<std::size_t>(m_place)]); });
}

void CounterPresenter::addStone(const base::Id& material) {
    editPlace([&](catalogue::Placement& place) {
        for (const auto& stone : place.stones)
            if (stone.material == material) return;
        place.stones.push_back({material, units::Count{}});
    });
    saveDraft();
    Q_EMIT lineShown();
}

void CounterPresenter::removeStone(int row) {
    editPlace([&](catalogue::Placement& place) {
        if (row >= 0 && row < static_cast<int>(place.stones.size())) place.stones.erase(place.stones.begin() + row);
    });
    m_unread.removeNumbered(keyOf(Owner::Place), QStringLiteral("stone"), row);
    saveDraft();
    reprice();
    Q_EMIT lineShown();
    Q_EMIT changed();
}

void CounterPresenter::setProblem(Owner owner, const QString& field, const QString& problem, const QString& typed) {
    if (!m_unread.set(keyOf(owner), field, problem, typed)) return;
    reprice();
    Q_EMIT changed();
}

void CounterPresenter::touched() {
    m_unkept = true;
    m_rest.start();
    reprice();
    Q_EMIT changed();
}

void CounterPresenter::reprice() {
    m_priced.reset();
    m_whyNot.reset();
    m_ladder.clear();
    m_moreForLess.reset();
    priceOthers();
    if (m_unread.concern(currentChoice())) return;
    auto priced = pricing::priceOrder(order(), m_prices, m_session.fits());
    if (!priced) {
        m_whyNot = priced.error();
        return;
    }
    m_priced = std::move(*priced);
    priceLadder();
}

void CounterPresenter::priceOthers() {
    m_whyNoOther.reset();
    m_others.clear();
    if (isIssued()) return;
    m_others = quoting::priceOthers(order(), m_prices, m_session.fits(), m_whyNoOther);
    for (std::size_t i = 0; i < m_others.size(); ++i) {
        const int number = static_cast<int>(i) < currentChoice() ? static_cast<int>(i) : static_cast<int>(i) + 1;
        if (m_unread.concern(number)) m_others[i].priced.reset();
    }
}

QString CounterPresenter::whyNoOtherPrice() const {
    for (int number = 0; number < choices(); ++number) {
        if (number == currentChoice()) continue;
        QString why;
        if (m_unread.concern(number)) why = m_unread.first(number, UnreadEntries::kWhole).second;
        if (why.isEmpty() && m_whyNoOther && m_whyNoOther->first == number) why = words::sentence(m_whyNoOther->second);
        if (!why.isEmpty()) return tr("Choice %1: %2").arg(number + 1).arg(why);
    }
    return {};
}

std::optional<costing::CostSheet> CounterPresenter::costSheet() const {
    if (!m_priced || !hasLine()) return std::nullopt;
    auto sheet = pricing::costSheetOf(order(), static_cast<std::size_t>(m_current), m_prices, m_session.fits());
    if (!sheet) return std::nullopt;
    return std::move(*sheet);
}

void CounterPresenter::priceLadder() {
    if (!hasLine()) return;
    const bool exempt = m_priced->taxStanding == pricing::TaxStanding::Exempt;
    auto ladder = pricing::ladderFor(order(), static_cast<std::size_t>(m_current), m_prices, exempt, m_session.fits());
    if (ladder) m_ladder = std::move(*ladder);
    m_moreForLess =
        pricing::moreForLess(order(), *m_priced, static_cast<std::size_t>(m_current), m_prices, m_session.fits());
}

void CounterPresenter::saveDraft() {
    m_rest.stop();
    if (!m_unkept || !canChange()) return;
    m_keeping = true;
    const auto version = m_session.keepDraft([&](db::Book& book) { return book.saveDraft(m_quote); });
    m_keeping = false;
    if (!version) return;
    m_unkept = false;
    m_quote.version = *version;
}

std::optional<units::Money> CounterPresenter::reckonedOtherwise() const {
    if (!m_quote.sealedTotal || !m_priced || m_priced->total == *m_quote.sealedTotal) return std::nullopt;
    return m_priced->total;
}

base::Result<db::QuoteResult> CounterPresenter::withProofs(const db::QuoteResult& result,
                                                           const quoting::SheetWords& words) const {
    return m_session.read([&](db::Book& book) -> base::Result<db::QuoteResult> {
        return sp::words::withProofs(result, book, order(), m_prices, words);
    });
}

quoting::SheetContent CounterPresenter::draftSheet(const quoting::SheetWords& words) const {
    const auto result = words::resultOf(order(), m_prices, validUntil(), m_session.fits(), words);
    if (!result) return {};
    const auto shown = withProofs(*result, words);
    return shown ? shown->sheetFor({}) : result->sheetFor({});
}

bool CounterPresenter::issue(const quoting::SheetWords& words) {
    if (!canChange() || !m_priced || !whyNoOtherPrice().isEmpty()) return false;
    saveDraft();
    if (m_unkept) return false;
    const auto result = words::resultOf(order(), m_prices, validUntil(), m_session.fits(), words);
    if (!result) return false;
    const auto shown = withProofs(*result, words);
    if (!shown) return false;
    m_keeping = true;
    auto issued = m_session.change([&](db::Book& book) { return book.issue(m_quote, m_prices, *shown, validUntil()); });
    m_keeping = false;
    if (!issued) return false;
    const int current = m_current;
    show(std::move(*issued));
    select(current);
    return true;
}

} // namespace sp::counter

#include "moc_counter_presenter.cpp"

// SPDX-License-Identifier: MIT
#include "app/supplies/supplies_presenter.h"

#include "app/session/free_name.h"
#include "app/words/names.h"
#include "app/words/words.h"

#include "core/supply/kit_of_design.h"
#include "db/messages.h"

#include <algorithm>

namespace sp::supplies {

namespace {

constexpr std::int64_t kEndedJobs = 50; ///< so many of those that are over are still offered

template<class T>
QString sentenceOf(const base::Result<T>& result) {
    return result ? QString() : words::sentence(result.error());
}

} // namespace

SuppliesPresenter::SuppliesPresenter(session::BookSession& session, QObject* parent)
    : QObject(parent)
    , m_session(session) {
    connect(&m_session, &session::BookSession::changed, this, [this] {
        m_isShelfOld = true;
        m_jobs.reset();
    });
    connect(&m_session, &session::BookSession::changed, this, &SuppliesPresenter::changed);
    if (!m_session.materials().empty()) m_current = m_session.materials().front().id;
}

base::Result<supply::YieldAnswer> SuppliesPresenter::kitMakes() {
    const auto* open = kit();
    const auto* design = open ? m_session.design(open->design) : nullptr;
    if (!design)
        return words::fail(base::Code::Missing, {}, tr("Choose the design it is for; then what it makes stands here."));
    const auto problem =
        supply::yieldProblemOf(*open, units::Count::of(1), false, *design, m_session.prices({}), m_session.fits());
    if (!problem) return base::fail(problem.error());
    return supply::kitYield(*problem);
}

std::vector<catalogue::Pack> SuppliesPresenter::packs() {
    std::vector<catalogue::Pack> own;
    for (const auto& pack : m_session.packs())
        if (pack.material == m_current) own.push_back(pack);
    return own;
}

db::OnShelf SuppliesPresenter::onShelf(const base::Id& material) {
    readShelf();
    return m_shelf.of(material);
}

void SuppliesPresenter::readShelf() {
    if (!m_isShelfOld) return;
    m_isShelfOld = false; // what failed is tried again when the book changes
    auto shelf = m_session.read([this](db::Book& book) { return db::readShelf(book, m_bench); });
    m_isShelfKnown = shelf.has_value();
    if (shelf) {
        m_shelf = std::move(*shelf);
        return;
    }
    for (const auto& [id, count] : m_session.shelf()) m_shelf.materials[id].onHand = count;
}

QStringList SuppliesPresenter::remarksOnShelf(const base::Id& material) {
    readShelf();
    QStringList remarks;
    if (!m_isShelfKnown) remarks += tr("What is promised could not be read again; it is shown as it was before.");
    for (const auto& number : m_shelf.notReckoned)
        remarks += tr("What %1 takes is not known; nothing of it is promised.").arg(QString::fromStdString(number));
    if (m_session.shop().usedWhen == catalogue::UsedWhen::ByHand && m_shelf.of(material).promised > 0)
        remarks +=
            tr("You book by hand what jobs use: it stays promised until a job is ready, or you take it out for it.");
    return remarks;
}

const std::vector<db::QuoteSummary>& SuppliesPresenter::jobsToTakeFor() {
    if (m_jobs) return *m_jobs;
    m_jobs.emplace();
    for (const auto stage : {db::Stage::InProduction, db::Stage::Agreed, db::Stage::Ready}) {
        db::Wanted wanted;
        wanted.stage = stage;
        auto found = m_session.read([&](db::Book& book) { return book.find(wanted); });
        if (found) std::ranges::move(found->jobs, std::back_inserter(*m_jobs));
    }
    const auto ended = m_session.read([](db::Book& book) { return book.endedWithTaken(kEndedJobs); });
    if (!ended) return *m_jobs;
    for (const auto& id : *ended) {
        auto job = m_session.read([&](db::Book& book) { return book.summary(id); });
        if (job && *job) m_jobs->push_back(std::move(**job));
    }
    return *m_jobs;
}

void SuppliesPresenter::open(const base::Id& thing) {
    if (m_current == thing) return;
    m_current = thing;
    Q_EMIT opened();
}

QString SuppliesPresenter::edit(const std::function<void(catalogue::Material&)>& work) {
    const auto* known = material();
    if (!known) return {};
    auto edited = *known;
    work(edited);
    if (edited == *known) return {};
    return sentenceOf(m_session.attempt([&](db::Book& book) { return book.save(edited); }));
}

QString SuppliesPresenter::editSupplier(const std::function<void(catalogue::Supplier&)>& work) {
    const auto* known = supplier();
    if (!known) return {};
    auto edited = *known;
    work(edited);
    if (edited == *known) return {};
    return sentenceOf(m_session.attempt([&](db::Book& book) { return book.save(edited); }));
}

QString SuppliesPresenter::editKit(const std::function<void(catalogue::Kit&)>& work) {
    const auto* known = kit();
    if (!known) return {};
    auto edited = *known;
    work(edited);
    if (edited == *known) return {};
    return sentenceOf(m_session.attempt([&](db::Book& book) { return book.save(edited); }));
}

QString SuppliesPresenter::editPack(const base::Id& id, const std::function<void(catalogue::Pack&)>& work) {
    const auto own = packs();
    const auto known = std::find_if(own.begin(), own.end(), [&](const catalogue::Pack& pack) { return pack.id == id; });
    if (known == own.end()) return {};
    auto edited = *known;
    work(edited);
    if (edited == *known) return {};
    return sentenceOf(m_session.attempt([&](db::Book& book) {
        return book.batch(words::say(QT_TRANSLATE_NOOP("App", "the usual pack")), [&]() -> base::Done {
            if (edited.usual && !known->usual)
                for (auto other : own)
                    if (other.usual) {
                        other.usual = false;
                        if (auto saved = book.save(other); !saved) return base::fail(saved.error());
                    }
            const auto saved = book.save(edited);
            if (!saved) return base::fail(saved.error());
            return {};
        });
    }));
}

std::string SuppliesPresenter::freeName(const QString& wanted) {
    return session::freeName(wanted, m_session.materials(), m_session.suppliers(), m_session.kits()).toStdString();
}

void SuppliesPresenter::addMaterial(catalogue::MaterialKind kind) {
    catalogue::Material material;
    material.kind = kind;
    material.name = freeName(tr("New %1").arg(words::nameOf(kind)));
    if (kind == catalogue::MaterialKind::Stone) material.stone.colour = tr("Colour").toStdString();
    material.sheet.width = units::Length::fromInch64ths(9 * 64);
    material.sheet.height = units::Length::fromInch64ths(12 * 64);
    const auto saved = m_session.change([&](db::Book& book) { return book.save(material); });
    if (saved) open(*saved);
}

void SuppliesPresenter::addSupplier() {
    catalogue::Supplier supplier;
    supplier.name = freeName(tr("New supplier"));
    const auto saved = m_session.change([&](db::Book& book) { return book.save(supplier); });
    if (saved) open(*saved);
}

QString SuppliesPresenter::addKit() {
    if (m_session.suppliers().empty()) return tr("Add a supplier first; a kit is bought from one.");
    catalogue::Kit kit;
    kit.name = freeName(tr("New kit"));
    kit.supplier = m_session.suppliers().front().id;
    const auto saved = m_session.attempt([&](db::Book& book) { return book.save(kit); });
    if (saved) open(*saved);
    return sentenceOf(saved);
}

QString SuppliesPresenter::addKitItem() {
    const auto* open = kit();
    if (!open) return {};
    for (const auto& material : m_session.materials()) {
        const bool isIn = std::any_of(open->items.begin(), open->items.end(),
                                      [&](const catalogue::KitItem& item) { return item.material == material.id; });
        if (!isIn)
            return editKit([id = material.id](catalogue::Kit& edited) {
                edited.items.push_back({id, units::Count::of(1)});
            });
    }
    return tr("Every material is in the kit already.");
}

catalogue::Pack SuppliesPresenter::newPack() {
    catalogue::Pack pack;
    pack.material = m_current;
    pack.name = tr("pack").toStdString();
    pack.amount = units::Count::of(material() && material()->kind == catalogue::MaterialKind::Stone ? 1440 : 1);
    pack.prices = {{units::Count::of(1), units::Money{}}};
    return pack;
}

QString SuppliesPresenter::addPack() {
    if (m_session.suppliers().empty()) return tr("Add a supplier first; a pack is bought from one.");
    auto pack = newPack();
    pack.supplier = m_session.suppliers().front().id;
    return sentenceOf(m_session.attempt([&](db::Book& book) { return book.save(pack); }));
}

QString SuppliesPresenter::addSupplierOf(const base::Id& pack, const QString& name) {
    const auto own = packs();
    const auto known = std::ranges::find(own, pack, &catalogue::Pack::id);
    auto bought = known == own.end() ? newPack() : *known;
    catalogue::Supplier supplier;
    supplier.name = name.trimmed().toStdString();
    return sentenceOf(m_session.attempt([&](db::Book& book) {
        return book.batch(base::say(db::Note::Adding, supplier.name), [&]() -> base::Done {
            const auto added = book.save(supplier);
            if (!added) return base::fail(added.error());
            bought.supplier = *added;
            const auto saved = book.save(bought);
            if (!saved) return base::fail(saved.error());
            return {};
        });
    }));
}

void SuppliesPresenter::removePack(const base::Id& pack) {
    m_session.change([&](db::Book& book) { return book.removePack(pack); });
}

QString SuppliesPresenter::remove() {
    const auto gone = m_current;
    const bool isSupplier = supplier() != nullptr;
    const bool isKit = kit() != nullptr;
    const auto removed = m_session.attempt([&](db::Book& book) {
        return isKit ? book.removeKit(gone) : isSupplier ? book.removeSupplier(gone) : book.removeMaterial(gone);
    });
    if (!removed) return words::sentence(removed.error());
    const auto& left = m_session.materials();
    m_current = left.empty() ? base::Id{} : left.front().id;
    Q_EMIT opened();
    return {};
}

QString SuppliesPresenter::move(std::int64_t amount, db::records::MoveKind kind, std::optional<units::Money> cost,
                                const std::string& reason, const std::optional<base::Id>& job) {
    const db::records::StockMove move{{}, m_current, amount, cost, reason, {}, kind, job};
    return sentenceOf(m_session.attempt([&](db::Book& book) { return book.moveStock(move); }));
}

QString SuppliesPresenter::count(std::int64_t counted, const std::string& reason) {
    const auto id = m_current;
    return sentenceOf(m_session.attempt([&](db::Book& book) { return book.countShelf(id, counted, reason); }));
}

} // namespace sp::supplies

#include "moc_supplies_presenter.cpp"

// SPDX-License-Identifier: MIT
#include "core/base/ensure.h"
#include "db/book/action.h"
#include "db/records/record.h"

namespace sp::db {

using base::Code;
using base::Done;
using base::Result;
using catalogue::BenchStandards;
using catalogue::Customer;
using catalogue::Design;
using catalogue::Kit;
using catalogue::Material;
using catalogue::Pack;
using catalogue::Shop;
using catalogue::Supplier;
using records::StockMove;
using stores::Change;

Result<UndoState> BookFile::undoState() {
    return UndoState{m_undo.canUndo() ? m_undo.toUndo().what : std::string(),
                     m_undo.canRedo() ? m_undo.toRedo().what : std::string()};
}

Done BookFile::undo() {
    if (m_depth > 0 || !m_undo.canUndo()) return base::fail(Code::NotFound, {}, "There is nothing to undo.");
    auto step = act([&] { return bringStep("undo", m_undo.toUndo(), true); });
    if (!step) return base::fail(step.error());
    m_undo.undone(std::move(*step));
    return {};
}

Done BookFile::redo() {
    if (m_depth > 0 || !m_undo.canRedo()) return base::fail(Code::NotFound, {}, "There is nothing to redo.");
    auto step = act([&] { return bringStep("redo", m_undo.toRedo(), false); });
    if (!step) return base::fail(step.error());
    m_undo.redone(std::move(*step));
    return {};
}

UndoStep BookFile::bringStep(std::string_view kind, const UndoStep& step, bool isBack) {
    m_action->isUndone = false;
    UndoStep brought = step;
    const auto count = brought.changes.size();
    for (std::size_t i = 0; i < count; ++i) {
        auto& change = brought.changes[isBack ? count - 1 - i : i];
        change = bring(kind, change, isBack);
    }
    return brought;
}

Change BookFile::bring(std::string_view kind, const Change& change, bool isBack) {
    if (change.entity == "movement") return bringMovement(kind, change);
    Change turned = change;
    if (isBack) std::swap(turned.before, turned.after);
    if (change.entity == "shop") bringOnly<Shop>(m_stores.shop, kind, turned);
    if (change.entity == "bench") bringOnly<BenchStandards>(m_stores.bench, kind, turned);
    if (change.entity == "material") bringThing<Material>(m_stores.materials, kind, turned);
    if (change.entity == "supplier") bringThing<Supplier>(m_stores.suppliers, kind, turned);
    if (change.entity == "pack") bringThing<Pack>(m_stores.packs, kind, turned);
    if (change.entity == "kit") bringThing<Kit>(m_stores.kits, kind, turned);
    if (change.entity == "artwork") bringThing<records::ArtworkRecord>(m_stores.artworks, kind, turned);
    if (change.entity == "colour") bringThing<catalogue::ColourMaterial>(m_stores.colours, kind, turned);
    if (change.entity == "columns") bringThing<catalogue::PriceListColumns>(m_stores.priceLists, kind, turned);
    if (change.entity == "design") bringThing<Design>(m_stores.designs, kind, turned);
    if (change.entity == "customer") bringThing<Customer>(m_stores.customers, kind, turned);
    if (change.entity == "quote") bringOrder(kind, turned);
    if (change.entity == "stage") bringStage(kind, turned);
    return change;
}

namespace {

void refuseIfChanged(const std::string& now, const Change& change) {
    if (now == change.before) return;
    refuse(Code::Conflict, change.entity, "This was changed meanwhile in another way; it can no longer be undone.");
}

template<class T>
std::string writtenOrEmpty(const std::optional<T>& value) {
    return value ? records::write(*value) : std::string();
}

} // namespace

template<class T, class Store>
void BookFile::bringThing(Store& store, std::string_view kind, const Change& change) {
    refuseIfChanged(writtenOrEmpty(store.find(change.id)), change);
    const auto stamp = record(kind, {}, change);
    if (change.after.empty())
        store.remove(change.id, stamp);
    else
        store.write(orRefuse(records::read<T>(change.after)), stamp);
}

template<class T, class Store>
void BookFile::bringOnly(Store& store, std::string_view kind, const Change& change) {
    refuseIfChanged(writtenOrEmpty(store.find()), change);
    store.write(orRefuse(records::read<T>(change.after)), record(kind, {}, change));
}

void BookFile::bringOrder(std::string_view kind, const Change& change) {
    const auto row = m_stores.jobs.find(change.id);
    base::ensure(!row || row->number.empty(), "a given quote is never undone");
    refuseIfChanged(row ? records::write(row->order) : std::string(), change);
    const auto stamp = record(kind, {}, change);
    if (change.after.empty())
        m_stores.jobs.remove(change.id, stamp);
    else
        m_stores.jobs.write(change.id, orRefuse(records::read<catalogue::Order>(change.after)), stamp);
}

void BookFile::bringStage(std::string_view kind, const Change& change) {
    const auto row = m_stores.jobs.find(change.id);
    refuseIfChanged(row ? records::write(records::StageMark{row->stage}) : std::string(), change);
    const auto mark = orRefuse(records::read<records::StageMark>(change.after));
    m_stores.jobs.setStage(change.id, mark.stage, record(kind, {}, change));
}

Change BookFile::bringMovement(std::string_view kind, const Change& change) {
    const auto last = m_stores.stock.find(change.id);
    if (!last) refuse(Code::Damaged, file().string(), "A movement of the shelf is missing; open a backup.");
    const StockMove back{newId(), last->material, -last->amount, last->cost, last->note, last->id};
    if (m_stores.stock.onShelf(back.material) + back.amount < 0)
        refuse(Code::Conflict, {}, "These things are no longer on the shelf; count it and book what is there.");
    const Change made{"movement", back.id, {}, records::write(back)};
    m_stores.stock.add(back, record(kind, {}, made));
    return made;
}

} // namespace sp::db

// SPDX-License-Identifier: MIT
#include "core/base/ensure.h"
#include "db/book/action.h"
#include "db/records/record.h"

namespace sp::db {

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

Result<UndoState> Book::undoState() {
    return UndoState{m_in->undoStack.canUndo() ? m_in->undoStack.toUndo().what : std::nullopt,
                     m_in->undoStack.canRedo() ? m_in->undoStack.toRedo().what : std::nullopt};
}

Done Book::undo() {
    if (m_in->depth > 0 || !m_in->undoStack.canUndo()) return base::fail(Fault::NothingToUndo, {});
    auto step = m_in->act([&] { return m_in->bringStep("undo", m_in->undoStack.toUndo(), true); });
    if (!step) return base::fail(step.error());
    m_in->undoStack.undone(std::move(*step));
    return {};
}

Done Book::redo() {
    if (m_in->depth > 0 || !m_in->undoStack.canRedo()) return base::fail(Fault::NothingToRedo, {});
    auto step = m_in->act([&] { return m_in->bringStep("redo", m_in->undoStack.toRedo(), false); });
    if (!step) return base::fail(step.error());
    m_in->undoStack.redone(std::move(*step));
    return {};
}

UndoStep Book::Inside::bringStep(std::string_view kind, const UndoStep& step, bool isBack) {
    action->isUndone = false;
    UndoStep brought = step;
    const auto count = brought.changes.size();
    for (std::size_t i = 0; i < count; ++i) {
        auto& change = brought.changes[isBack ? count - 1 - i : i];
        change = bring(kind, change, isBack);
    }
    return brought;
}

Change Book::Inside::bring(std::string_view kind, const Change& change, bool isBack) {
    if (change.entity == "movement") return bringMovement(kind, change);
    Change turned = change;
    if (isBack) std::swap(turned.before, turned.after);
    if (change.entity == "shop") bringOnly<Shop>(stores.shop, kind, turned);
    if (change.entity == "bench") bringOnly<BenchStandards>(stores.bench, kind, turned);
    if (change.entity == "material") bringThing<Material>(stores.materials, kind, turned);
    if (change.entity == "supplier") bringThing<Supplier>(stores.suppliers, kind, turned);
    if (change.entity == "pack") bringThing<Pack>(stores.packs, kind, turned);
    if (change.entity == "kit") bringThing<Kit>(stores.kits, kind, turned);
    if (change.entity == "artwork") bringThing<records::ArtworkRecord>(stores.artworks, kind, turned);
    if (change.entity == "colour") bringThing<catalogue::ColourMaterial>(stores.colours, kind, turned);
    if (change.entity == "columns") bringThing<catalogue::PriceListColumns>(stores.priceLists, kind, turned);
    if (change.entity == "design") bringThing<Design>(stores.designs, kind, turned);
    if (change.entity == "customer") bringThing<Customer>(stores.customers, kind, turned);
    if (change.entity == "quote") bringOrder(kind, turned);
    if (change.entity == "stage") bringStage(kind, turned);
    return change;
}

namespace {

void refuseIfChanged(const std::string& now, const Change& change) {
    if (now != change.before) refuse(Fault::ChangedOtherwise, change.entity);
}

template<class T>
std::string writtenOrEmpty(const std::optional<T>& value) {
    return value ? records::write(*value) : std::string();
}

} // namespace

template<class T, class Store>
void Book::Inside::bringThing(Store& store, std::string_view kind, const Change& change) {
    refuseIfChanged(writtenOrEmpty(store.find(change.id)), change);
    const auto stamp = record(kind, {}, change);
    if (change.after.empty())
        store.remove(change.id, stamp);
    else
        store.write(orRefuse(records::read<T>(change.after)), stamp);
}

template<class T, class Store>
void Book::Inside::bringOnly(Store& store, std::string_view kind, const Change& change) {
    refuseIfChanged(writtenOrEmpty(store.find()), change);
    store.write(orRefuse(records::read<T>(change.after)), record(kind, {}, change));
}

void Book::Inside::bringOrder(std::string_view kind, const Change& change) {
    const auto row = stores.jobs.find(change.id);
    base::ensure(!row || row->number.empty(), "a given quote is never undone");
    refuseIfChanged(row ? records::write(row->order) : std::string(), change);
    const auto stamp = record(kind, {}, change);
    if (change.after.empty())
        stores.jobs.remove(change.id, stamp);
    else
        stores.jobs.write(change.id, orRefuse(records::read<catalogue::Order>(change.after)), stamp);
}

void Book::Inside::bringStage(std::string_view kind, const Change& change) {
    const auto row = stores.jobs.find(change.id);
    refuseIfChanged(row ? records::write(records::StageMark{row->stage}) : std::string(), change);
    const auto mark = orRefuse(records::read<records::StageMark>(change.after));
    stores.jobs.setStage(change.id, mark.stage, record(kind, {}, change));
}

Change Book::Inside::bringMovement(std::string_view kind, const Change& change) {
    const auto last = stores.stock.find(change.id);
    if (!last) refuse(Fault::MovementMissing, file().string());
    const StockMove back{newId(), last->material, -last->amount, last->cost, last->note, last->id};
    if (stores.stock.onShelf(back.material) + back.amount < 0) refuse(Fault::NoLongerOnShelf, {});
    const Change made{"movement", back.id, {}, records::write(back)};
    stores.stock.add(back, record(kind, {}, made));
    return made;
}

} // namespace sp::db

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
    auto step = m_in->write([&] { return m_in->applyStep("undo", m_in->undoStack.toUndo(), true); });
    if (!step) return base::fail(step.error());
    m_in->undoStack.undone(std::move(*step));
    return {};
}

Done Book::redo() {
    if (m_in->depth > 0 || !m_in->undoStack.canRedo()) return base::fail(Fault::NothingToRedo, {});
    auto step = m_in->write([&] { return m_in->applyStep("redo", m_in->undoStack.toRedo(), false); });
    if (!step) return base::fail(step.error());
    m_in->undoStack.redone(std::move(*step));
    return {};
}

UndoStep Book::Inside::applyStep(std::string_view kind, const UndoStep& step, bool isBack) {
    action->isUndone = false;
    UndoStep brought = step;
    const auto count = brought.changes.size();
    for (std::size_t i = 0; i < count; ++i) {
        auto& change = brought.changes[isBack ? count - 1 - i : i];
        change = applyChange(kind, change, isBack);
    }
    return brought;
}

Change Book::Inside::applyChange(std::string_view kind, const Change& change, bool isBack) {
    if (change.entity == "movement") return applyMovement(kind, change);
    if (change.entity == "payment") return applyPayment(kind, change);
    Change turned = change;
    if (isBack) std::swap(turned.before, turned.after);
    if (change.entity == "shop") applySingleton<Shop>(stores.shop, kind, turned);
    if (change.entity == "bench") applySingleton<BenchStandards>(stores.bench, kind, turned);
    if (change.entity == "material") applyThing<Material>(stores.materials, kind, turned);
    if (change.entity == "supplier") applyThing<Supplier>(stores.suppliers, kind, turned);
    if (change.entity == "pack") applyThing<Pack>(stores.packs, kind, turned);
    if (change.entity == "kit") applyThing<Kit>(stores.kits, kind, turned);
    if (change.entity == "artwork") applyThing<records::ArtworkRecord>(stores.artworks, kind, turned);
    if (change.entity == "colour") applyThing<catalogue::ColourMaterial>(stores.colours, kind, turned);
    if (change.entity == "columns") applyThing<catalogue::PriceListColumns>(stores.priceLists, kind, turned);
    if (change.entity == "design") applyThing<Design>(stores.designs, kind, turned);
    if (change.entity == "customer") applyThing<Customer>(stores.customers, kind, turned);
    if (change.entity == "quote") applyOrder(kind, turned);
    if (change.entity == "stage") applyStage(kind, turned);
    return change;
}

namespace {

void throwIfChanged(const std::string& now, const Change& change) {
    if (now != change.before) throwError(Fault::ChangedOtherwise, change.entity);
}

template<class T>
std::string writtenOrEmpty(const std::optional<T>& value) {
    return value ? records::write(*value) : std::string();
}

} // namespace

template<class T, class Store>
void Book::Inside::applyThing(Store& store, std::string_view kind, const Change& change) {
    throwIfChanged(writtenOrEmpty(store.find(change.id)), change);
    const auto stamp = record(kind, {}, change);
    if (change.after.empty())
        store.remove(change.id, stamp);
    else
        store.write(valueOrThrow(records::read<T>(change.after)), stamp);
}

template<class T, class Store>
void Book::Inside::applySingleton(Store& store, std::string_view kind, const Change& change) {
    throwIfChanged(writtenOrEmpty(store.find()), change);
    store.write(valueOrThrow(records::read<T>(change.after)), record(kind, {}, change));
}

void Book::Inside::applyOrder(std::string_view kind, const Change& change) {
    const auto row = stores.jobs.find(change.id);
    base::ensure(!row || row->number.empty(), "a given quote is never undone");
    throwIfChanged(row ? records::write(row->order) : std::string(), change);
    const auto stamp = record(kind, {}, change);
    if (change.after.empty())
        stores.jobs.remove(change.id, stamp);
    else
        stores.jobs.write(change.id, valueOrThrow(records::read<catalogue::Order>(change.after)), stamp);
}

void Book::Inside::applyStage(std::string_view kind, const Change& change) {
    const auto row = stores.jobs.find(change.id);
    throwIfChanged(row ? records::write(row->mark()) : std::string(), change);
    const auto mark = valueOrThrow(records::read<records::StageMark>(change.after));
    stores.jobs.setMark(change.id, mark, record(kind, {}, change));
}

Change Book::Inside::applyMovement(std::string_view kind, const Change& change) {
    const auto last = stores.stock.find(change.id);
    if (!last) throwError(Fault::MovementMissing, file().string());
    const StockMove back{newId(),    last->material, -last->amount, last->cost,
                         last->note, last->id,       last->kind,    last->job};
    if (stores.stock.onShelf(back.material) + back.amount < 0) throwError(Fault::NoLongerOnShelf, {});
    const Change made{"movement", back.id, {}, records::write(back)};
    stores.stock.add(back, record(kind, {}, made));
    return made;
}

} // namespace sp::db

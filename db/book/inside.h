// SPDX-License-Identifier: MIT
#pragma once

#include "db/book/book.h"
#include "db/book/opening.h"
#include "db/book/stores.h"
#include "db/book/undo_stack.h"

namespace sp::db {

/// What a book works with. Every change goes through `act`: one transaction, one action in the change log.
class Book::Inside {
  public:
    Inside(Opened file, Surroundings world);

    const std::filesystem::path& file() const { return opened.connection->file(); }

    /// What a new book starts out with.
    void furnish();

    /// An action under way.
    struct Action {
        base::Id command{};
        std::string at{};
        std::int64_t steps = 0;
        bool isUndone = true; ///< whether it becomes a step to undo
        UndoStep step{};
        std::vector<base::Id> given{}; ///< quotes that can no longer be undone once this is on disk
    };
    class Scope;

    template<class Work>
    auto act(Work&& work) -> base::Result<std::invoke_result_t<Work>>;
    template<class Work>
    auto look(Work&& work) -> base::Result<std::invoke_result_t<Work>>;

    base::Id newId() const;
    std::string momentNow() const;
    /// Writes a row of the change log and notes it for undo. The first thing recorded names the action.
    stores::Stamp record(std::string_view kind, std::optional<base::Message> what, stores::Change change);

    template<class T, class Store>
    base::Id keep(Store& store, std::string_view entity, T value);
    template<class Store>
    void drop(Store& store, std::string_view entity, const base::Id& id);
    template<class T, class Store>
    void keepOnly(Store& store, std::string_view entity, const T& value);
    void letGoOfUsual(const catalogue::Pack& pack);

    Quote newQuote();
    Quote sealNow(const Quote& quote, const catalogue::PriceBook& inputs, const QuoteResult& result,
                  units::Date validUntil);
    stores::JobRow draftForChange(const Quote& quote);
    std::int64_t keepOrder(const stores::JobRow& before, const catalogue::Order& order);
    Quote whole(const stores::JobRow& row);
    Quote wholeOf(const base::Id& id);
    void refuseUnfitToGive(const Quote& quote, const catalogue::PriceBook& inputs, units::Money total,
                           units::Date validUntil) const;

    /// Undo and redo: brings a thing from one state to another; gives the change as it now stands.
    stores::Change bring(std::string_view kind, const stores::Change& change, bool isBack);
    template<class T, class Store>
    void bringThing(Store& store, std::string_view kind, const stores::Change& change);
    template<class T, class Store>
    void bringOnly(Store& store, std::string_view kind, const stores::Change& change);
    void bringOrder(std::string_view kind, const stores::Change& change);
    void bringStage(std::string_view kind, const stores::Change& change);
    stores::Change bringMovement(std::string_view kind, const stores::Change& change);
    UndoStep bringStep(std::string_view kind, const UndoStep& step, bool isBack);

    Opened opened;
    Stores stores;
    Surroundings surroundings;
    UndoStack undoStack;
    std::optional<Action> action;
    int depth = 0;
};

} // namespace sp::db

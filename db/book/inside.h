// SPDX-License-Identifier: MIT
#pragma once

#include "db/book/book.h"
#include "db/book/opening.h"
#include "db/book/stores.h"
#include "db/book/undo_stack.h"
#include "db/stores/find_index.h"

#include <functional>
#include <optional>
#include <vector>

namespace sp::db {

/// What a book works with. Every change goes through `write`: one transaction, one action in the change log.
class Book::Inside {
  public:
    Inside(Opened file, Environment world);

    const std::filesystem::path& file() const { return opened.connection->file(); }

    /// What a new book starts out with.
    void initialise();

    /// An action under way.
    struct Action {
        base::Id command{};
        std::string at{};
        std::int64_t steps = 0;
        bool isUndone = true; ///< whether it becomes a step to undo
        UndoStep step{};
        std::vector<base::Id>
            issued{}; ///< what can no longer be undone once this is on disk: given quotes, all of a person
    };
    class Scope;

    template<class Work>
    auto write(Work&& work) -> base::Result<std::invoke_result_t<Work>>;
    template<class Work>
    auto read(Work&& work) -> base::Result<std::invoke_result_t<Work>>;

    /// Why this is no longer the file that was opened, as it was left here.
    std::optional<base::Error> displaced() const;
    void throwIfDisplaced();
    /// After a change from here.
    void noteHowItIsLeft();
    /// Whether an action whose commit failed is in the book all the same, and the disk can now be brought to keep it.
    /// Throws when it is there and the disk cannot.
    bool stands(const base::Id& command);

    base::Id newId() const;
    std::string momentNow() const;
    /// The shop's day at a moment as the log writes it; the first of all days for what is written otherwise.
    units::Date dayAt(std::string_view moment) const;
    /// Writes a row of the change log and notes it for undo. The first thing recorded names the action.
    stores::Stamp record(std::string_view kind, std::optional<base::Message> what, stores::Change change);

    template<class T, class Store>
    base::Id saveTo(Store& store, std::string_view entity, T value);
    template<class Store>
    void removeFrom(Store& store, std::string_view entity, const base::Id& id);
    template<class T, class Store>
    void saveSingleton(Store& store, std::string_view entity, const T& value);
    std::optional<catalogue::Customer> customerNow(const base::Id& id);
    ContactsPlan planOf(const std::vector<catalogue::Customer>& there,
                        const std::vector<catalogue::Customer>& contacts) const;
    void expectQuits(const catalogue::Customer& customer, const base::Id& entry);
    void clearOtherUsual(const catalogue::Pack& pack);
    void expectPlanAboveSold(const catalogue::Design& design);
    void keepSetCosts(const Quote& quote);
    void makeUsualIfFirst(catalogue::MaterialKind kind, const base::Id& material);

    Quote newQuote();
    Quote sealNow(const Quote& quote, const catalogue::PriceBook& inputs, const QuoteResult& result,
                  units::Date validUntil);
    /// Puts what was reckoned under the seal of a quote of the job's newest revision.
    Quote sealPaper(const base::Id& job, const std::string& number, const std::string& at,
                    const catalogue::PriceBook& inputs, const QuoteResult& result, units::Date validUntil);
    stores::JobRow jobToRevise(const base::Id& id);
    Quote newRevision(const base::Id& id);
    Quote sealRevision(const Quote& quote, const catalogue::PriceBook& inputs, const QuoteResult& result,
                       units::Date validUntil);
    Quote asGiven(const stores::JobRow& row, const stores::GivenRow& given);
    Quote ofRevision(const base::Id& job, std::int64_t revision);
    stores::JobRow draftForChange(const Quote& quote);
    void setMark(const stores::JobRow& row, const records::StageMark& mark, base::Message what);
    std::int64_t saveOrder(const stores::JobRow& before, const catalogue::Order& order);
    Quote whole(const stores::JobRow& row);
    Quote wholeOf(const base::Id& id);
    stores::JobRow rowOf(const base::Id& id);
    /// What the seal holds, into the quote that was given with it.
    void putSealed(Quote& quote, stores::IssuedPaper paper, const std::optional<std::int64_t>& choiceTaken);
    void throwIfNotIssuable(const Quote& quote, const catalogue::PriceBook& inputs, units::Money total,
                            units::Date validUntil) const;

    /// Undo and redo: brings a thing from one state to another; gives the change as it now stands.
    stores::Change applyChange(std::string_view kind, const stores::Change& change, bool isBack);
    template<class T, class Store>
    void applyThing(Store& store, std::string_view kind, const stores::Change& change);
    template<class T, class Store>
    void applySingleton(Store& store, std::string_view kind, const stores::Change& change);
    void applyOrder(std::string_view kind, const stores::Change& change);
    void applyStage(std::string_view kind, const stores::Change& change);
    stores::Change applyPayment(std::string_view kind, const stores::Change& change);
    catalogue::Payment addReversal(std::string_view kind, std::optional<base::Message> what,
                                   const catalogue::Payment& payment, units::Date day);
    catalogue::Payment addAnew(std::string_view kind, const base::Id& payment, units::Date day);
    units::Money comesTo(const Quote& quote, units::Money more = {});
    pricing::Account accountOf(const Quote& quote);
    /// The index of this book, brought up to it; null where there is none or that would take long. Throws DbError.
    stores::FindIndex* currentIndex();
    using IndexQuery = std::function<std::vector<base::Id>(stores::FindIndex&)>;
    /// What the index answers; nothing where there is none, where another program is at it, or where it is damaged: it
    /// is taken away then.
    std::optional<std::vector<base::Id>> askIndex(const IndexQuery& query);
    /// Takes the index of this book away and what was begun of one, their bytes too: they name people.
    void forgetIndex();
    catalogue::Material materialOf(const base::Id& id);
    /// Books a movement that the shelf holds; it gets a key here where it has none.
    void addMove(records::StockMove move, std::optional<base::Message> what);
    ShelfUse useOf(const Quote& quote, Stage stage);
    void bookUse(const base::Id& job, const ShelfUse& use);
    void throwIfInvoiced(const base::Id& job, const std::string& number);
    quoting::Bill billOf(const Quote& quote, catalogue::PaperKind kind, std::vector<pricing::BillPart> parts);
    IssuedBill issueBill(const Quote& quote, quoting::Bill bill, records::BillResult links,
                         const BillSheetMaker& words);
    stores::Change applyMovement(std::string_view kind, const stores::Change& change);
    UndoStep applyStep(std::string_view kind, const UndoStep& step, bool isBack);

    Opened opened;
    Stores stores;
    Environment environment;
    /// When the last change was kept, in a book that was not closed properly.
    std::optional<std::string> cutShortAfter;
    UndoStack undoStack;
    std::unique_ptr<stores::FindIndex> index;
    bool isIndexStale = false; ///< the one that is there is too far behind
    std::optional<Action> action;
    int depth = 0;
    bool isUnsettled = false; ///< an action that was said to have failed may be done
};

} // namespace sp::db

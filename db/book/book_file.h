// SPDX-License-Identifier: MIT
#pragma once

#include "db/book/book.h"
#include "db/book/opening.h"
#include "db/book/stores.h"
#include "db/book/undo_stack.h"

namespace sp::db {

/// The book in its file. Every change goes through `act`: one transaction, one action in the change log.
class BookFile final : public Book {
  public:
    BookFile(Opened opened, Surroundings surroundings);

    /// What a new book starts out with.
    void furnish();

    const std::filesystem::path& file() const override { return m_opened.connection->file(); }
    const Surroundings& surroundings() const override { return m_surroundings; }
    const std::string& readOnlyBecause() const override { return m_opened.readOnlyBecause; }

    base::Result<catalogue::Shop> shop() override;
    base::Done save(const catalogue::Shop& shop) override;
    base::Result<catalogue::BenchStandards> bench() override;
    base::Done save(const catalogue::BenchStandards& bench) override;
    base::Result<std::vector<catalogue::Material>> materials() override;
    base::Result<base::Id> save(const catalogue::Material& material) override;
    base::Done removeMaterial(const base::Id& id) override;
    base::Result<std::vector<catalogue::Supplier>> suppliers() override;
    base::Result<base::Id> save(const catalogue::Supplier& supplier) override;
    base::Done removeSupplier(const base::Id& id) override;
    base::Result<std::vector<catalogue::Pack>> packs() override;
    base::Result<base::Id> save(const catalogue::Pack& pack) override;
    base::Done removePack(const base::Id& id) override;
    base::Result<std::vector<catalogue::Kit>> kits() override;
    base::Result<base::Id> save(const catalogue::Kit& kit) override;
    base::Done removeKit(const base::Id& id) override;
    base::Result<std::vector<catalogue::Design>> designs() override;
    base::Result<base::Id> save(const catalogue::Design& design) override;
    base::Done removeDesign(const base::Id& id) override;
    base::Result<std::vector<catalogue::Customer>> customers() override;
    base::Result<base::Id> save(const catalogue::Customer& customer) override;
    base::Done removeCustomer(const base::Id& id) override;

    base::Result<std::optional<catalogue::DesignArtwork>> artwork(const base::Id& design) override;
    base::Done save(const catalogue::DesignArtwork& artwork) override;
    base::Done removeArtwork(const base::Id& design) override;
    base::Result<std::vector<catalogue::ColourMaterial>> colourMaterials() override;
    base::Done save(const catalogue::ColourMaterial& colour) override;
    base::Result<std::vector<catalogue::PriceListColumns>> priceListColumns() override;
    base::Done save(const catalogue::PriceListColumns& list) override;

    base::Done moveStock(const base::Id& material, std::int64_t amount, std::optional<units::Money> cost,
                         std::string_view note) override;
    base::Result<std::unordered_map<base::Id, std::int64_t>> shelf() override;
    base::Result<catalogue::PriceBook> priceBook(const base::Id& customer) override;

    base::Result<Quote> startQuote() override;
    base::Result<std::int64_t> saveDraft(const Quote& quote) override;
    base::Result<Quote> give(const Quote& quote, const catalogue::PriceBook& inputs, const QuoteResult& result,
                             units::Date validUntil) override;
    base::Result<Quote> giveNew(const catalogue::Order& order, const catalogue::PriceBook& inputs,
                                const QuoteResult& result, units::Date validUntil) override;
    base::Result<std::vector<base::Id>> quotesWithoutResult(std::int64_t limit) override;
    base::Done sealResult(const base::Id& quote, const std::optional<QuoteResult>& result) override;
    base::Done setStage(const base::Id& quote, Stage stage) override;
    base::Result<std::vector<QuoteSummary>> quotes(std::string_view text, std::int64_t limit) override;
    base::Result<Quote> quote(const base::Id& id) override;
    base::Result<Quote> quoteNumbered(std::string_view number) override;
    base::Result<std::optional<Quote>> lastDraft() override;

    base::Result<UndoState> undoState() override;
    base::Done undo() override;
    base::Done redo() override;
    base::Done together(std::string_view what, const std::function<base::Done()>& work) override;
    base::Done copyTo(const std::filesystem::path& target) override;

  private:
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
    stores::Stamp record(std::string_view kind, std::string what, stores::Change change);

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

    Opened m_opened;
    Stores m_stores;
    Surroundings m_surroundings;
    UndoStack m_undo;
    std::optional<Action> m_action;
    int m_depth = 0;
};

} // namespace sp::db

// SPDX-License-Identifier: MIT
#pragma once

#include "app/counter/unread_entries.h"
#include "app/session/book_session.h"
#include "core/needs/spares.h"
#include "core/pricing/ladder.h"
#include "core/pricing/left_out.h"
#include "core/pricing/order_difference.h"
#include "core/pricing/price_order.h"
#include "core/quoting/sheet_maker.h"

#include <QObject>
#include <QString>
#include <QTimer>

#include <optional>

namespace sp::counter {

/// The decisions of the Counter. It holds the quote being worked on, prices it again after every change and saves it in
/// the book. While an entry cannot be read there is no price: `priced` is empty and `whyNoPrice` says why.
///
/// A change is priced at once and saved when the entry is finished (`keep`) or after a pause in typing; each save is
/// one step of undo. A given quote is sealed: it is shown with the prices it was given with and refuses changes.
class CounterPresenter : public QObject {
    Q_OBJECT

  public:
    explicit CounterPresenter(session::BookSession& session, QObject* parent = nullptr);

    // The quote on the counter.
    const db::Quote& quote() const { return m_quote; }
    const catalogue::Order& order() const { return m_quote.order; }
    bool isIssued() const { return !m_quote.number.empty(); }
    /// Whether the quote can be edited: it has not been given, and the book can be written.
    bool canChange() const { return !isIssued() && !m_session.isReadOnly(); }
    const catalogue::PriceBook& prices() const { return m_prices; }
    const std::optional<pricing::PricedOrder>& priced() const { return m_priced; }
    /// Why there is no price, in one sentence; empty while there is one.
    QString whyNoPrice() const;
    /// Where that is mended, if it is a price that a material lacks.
    std::optional<pricing::LeftOut> missingPrice() const;
    /// Why there is no price although all entries can be read, if the reason concerns `subject`; else empty.
    QString whyNot(const char* subject) const;
    units::Date validUntil() const;
    session::BookSession& session() { return m_session; }

    // The choices of the order, of which one is looked at: order, lines and price are those of that one.
    int choices() const { return static_cast<int>(catalogue::choiceCount(order())); }
    int currentChoice() const { return static_cast<int>(order().choice); }
    /// The choices that are not looked at, priced; of a given quote none: what they came to is on its sheet.
    const std::vector<quoting::PricedChoice>& others() const { return m_others; }
    /// Why one of those has no price, with its number; empty while all have. The quote cannot be given then.
    QString whyNoOtherPrice() const;
    /// Looks at the choice with that number, from 0. Nothing is saved by that.
    void lookAt(int choice);
    void addChoice();    ///< one more, the same as the one looked at, and looks at it; at most kMaxChoices
    void removeChoice(); ///< the one looked at, not the only one
    /// The shop's own name for the choice looked at.
    void setChoiceTitle(const QString& title);

    // The line being edited.
    int current() const { return m_current; }
    bool hasLine() const { return m_current >= 0; }
    const catalogue::OrderLine& line() const { return m_quote.order.lines[static_cast<std::size_t>(m_current)]; }
    const pricing::PricedLine* pricedLine() const;
    /// The spares of the current line; only with a line.
    needs::LineSpares spares() const;
    /// The cost sheet of the current line; empty while there is no price.
    std::optional<costing::CostSheet> costSheet() const;
    /// Prices of other quantities of the current line; empty while there is no price.
    const std::vector<pricing::LadderPrice>& ladder() const { return m_ladder; }
    /// More pieces of the current line that come to less.
    const std::optional<pricing::MoreForLess>& moreForLess() const { return m_moreForLess; }
    void select(int line);

    // The place of it that is being edited; a charge has none.
    int currentPlace() const { return m_place; }
    const catalogue::Placement* place() const;
    const needs::PlaceRequirement* requiredAtPlace() const; ///< none while there is no price
    void selectPlace(int place);
    /// The line of whose set of templates the current place is made too; none where it has its own.
    std::optional<int> sharesSetWith() const;
    /// The first line before it with the same design at a place that is made with another set; none where there is
    /// none.
    std::optional<int> hasSetBeside() const;

    // Actions. Each prices the order again and emits `changed`, and `lineShown` if the current line changes.
    void openLast(); ///< the draft last worked on, or a new one
    void startNew();
    bool open(const base::Id& quote);
    /// Opens the draft that is to revise this given quote. Returns why not, in one sentence.
    QString revise();
    /// The given quote that this draft revises, as its job is now; null of any other.
    const db::Quote* revised() const { return m_revised ? &*m_revised : nullptr; }
    /// What tells this draft from the quote it revises; only of such a draft. Errors: those of pricing::priceOrder.
    base::Result<pricing::OrderDifference> difference(const units::NumberStyle& style) const;
    /// How much more the quote as it was would come to today; none where that cannot be said.
    std::optional<units::Money> differenceToday() const;
    void repeat(); ///< a new draft with what this given quote ordered (db::repeatOf), at today’s prices
    void addDesign(const base::Id& design);
    void takeDesign(); ///< gives the current place the size and stones its design has now
    void addOneOff(const QString& title);
    void addCharge(const QString& title);
    void addPlace(const base::Id& design); ///< one more on the current line
    void removePlace(int place);           ///< not the only one
    void removeLine();
    // Who it is for. Only a known exemption moves the price, so a name that is nobody's yet hides none.
    void setCustomer(const base::Id& customer);
    /// A new customer of that name, who is the order's, in one step of undo. Text that is a mail address or a telephone
    /// number is kept as that too. Returns why not, in one sentence.
    QString addCustomer(const QString& name);
    /// What is typed for the customer and is nobody yet; the order is nobody's then. Empty: nothing is.
    void setTypedCustomer(const QString& text);
    const QString& typedCustomer() const { return m_typedCustomer; }
    /// The order's customer; null where there is none.
    const catalogue::Customer* customer() const { return m_session.customer(order().customer); }
    /// How the order's customer is reached, telephone and mail in one text; returns why not, in one sentence.
    QString setReach(const QString& text);
    QString reach() const;
    bool isNewCustomer() const; ///< the order's was added here
    /// Somebody in the book who may be the customer that was added here; null where nobody is like them.
    const catalogue::Customer* likeOfNew() const;
    /// The order's customer and that one are the same person: the order is for that one.
    void mergeCustomer(const base::Id& into);
    void setWantedBy(std::optional<units::Date> day);
    void setAsksExemption(bool asks);
    void setAtNoCharge(bool free);
    void setDiscount(const catalogue::Discount& discount);
    /// Changes the current line through `edit`.
    void editLine(const std::function<void(catalogue::OrderLine&)>& edit);
    /// Changes the current place through `edit`.
    void editPlace(const std::function<void(catalogue::Placement&)>& edit);
    void addStone(const base::Id& material);
    void removeStone(int row);

    /// Whose entry it is: the order's, that of the choice looked at, of the current line or of its current place.
    enum class Owner { Order, Choice, Line, Place };
    /// Notes an entry that cannot be read, as typed, with the sentence that says why; an empty sentence: it can be read
    /// again. While the order or any line of the choice looked at has such an entry there is no price. Entries of a
    /// choice, a line or a place are kept while another one is current.
    void setProblem(Owner owner, const QString& field, const QString& problem, const QString& typed);
    /// The unreadable text of a field of that owner; null if the field is fine.
    const QString* unread(Owner owner, const QString& field) const { return m_unread.typed(keyOf(owner), field); }
    /// Whether the line has an unreadable entry in that field, or, without a field, in any.
    bool isUnread(int line, const QString& field = {}) const { return m_unread.has(currentChoice(), line, field); }

    /// Saves what was typed now, as one step of undo.
    void saveDraft();
    /// The sheet of the draft as it would be given, without a number; only while all choices have a price.
    quoting::SheetContent draftSheet(const quoting::SheetWords& words) const;
    /// Numbers and seals the quote together with the text of its sheet. False if that fails; the session's `troubled`
    /// then says why.
    bool issue(const quoting::SheetWords& words);
    /// The total of a given quote by today's rules, if it differs from the one it was given with.
    std::optional<units::Money> reckonedOtherwise() const;

  Q_SIGNALS:
    void changed();                            ///< the order, its price or the reason why there is none
    void lineShown();                          ///< another line or place, or one restored by undo: fields load it
    void orderShown();                         ///< another quote: all fields load it
    void repeated(const sp::db::Quote& given); ///< the order is that of a quote, once more

  private:
    base::Result<db::QuoteResult> withProofs(const db::QuoteResult& result, const quoting::SheetWords& words) const;
    void show(db::Quote quote);
    void bookChanged();
    void touched();
    void readPrices();
    void reprice();
    void priceOthers();
    bool isExempt(const catalogue::Customer* known) const;
    void showLines(int current);
    void priceLadder();
    void addLine(catalogue::OrderLine line);
    UnreadEntries::Owner keyOf(Owner owner) const;

    session::BookSession& m_session;
    db::Quote m_quote;
    catalogue::PriceBook m_prices;
    std::optional<pricing::PricedOrder> m_priced;
    std::optional<base::Error> m_whyNot;
    std::vector<quoting::PricedChoice> m_others;
    std::optional<std::pair<std::int64_t, base::Error>> m_whyNoOther;
    std::vector<pricing::LadderPrice> m_ladder;
    std::optional<pricing::MoreForLess> m_moreForLess;
    UnreadEntries m_unread;
    std::optional<db::Quote> m_revised;
    QString m_typedCustomer;
    base::Id m_addedCustomer; ///< the last that was added here
    int m_current = -1;
    int m_place = 0;
    bool m_unkept = false;
    bool m_keeping = false;
    QTimer m_rest;
};

} // namespace sp::counter

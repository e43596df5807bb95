// SPDX-License-Identifier: MIT
#pragma once

#include "app/first_hour/usual_supplies.h"
#include "app/session/book_session.h"
#include "core/quoting/first_steps.h"

#include <QObject>
#include <QString>

#include <optional>

namespace sp::first_hour {

/// What is decided while a new shop is set up: which step is worked at, what of it is done, and what becomes of the
/// supplies and the first design. Every edit is saved when it is made; what the book refuses comes back as the sentence
/// to show. Lives as long as the window, so that the step outlasts the page.
class FirstHourPresenter : public QObject {
    Q_OBJECT

  public:
    explicit FirstHourPresenter(session::BookSession& session, QObject* parent = nullptr);

    session::BookSession& session() { return m_session; }
    quoting::FirstStep step() const { return m_step; }
    void go(quoting::FirstStep step);
    /// To the one after it, the last stays.
    void goOn();

    bool isSettled(quoting::FirstStep step);
    bool isAllSettled();
    /// The first that is not; the last where all are.
    quoting::FirstStep firstOpen();
    /// The shop is done with this place, or wants it again.
    QString setShown(bool shown);

    /// Some pieces of the shop's first design, else of one made for it. None while no stone has a price.
    std::optional<base::Result<quoting::Trial>> trial();
    catalogue::PriceBook prices() { return m_session.prices({}); }

    // Supplies.
    /// The book's material of that name and kind; null while there is none.
    const catalogue::Material* made(const UsualSupply& supply);
    /// What a pack of it costs; none while it has no price.
    std::optional<catalogue::Pack> packOf(const UsualSupply& supply);
    /// Where those of the group are bought.
    QString supplierOf(SupplyGroup group);
    /// Has all of the group bought there; a new name makes a supplier, as soon as something has a price.
    QString setSupplier(SupplyGroup group, const QString& name);
    /// That supplier, made where there is none of the name yet.
    base::Result<base::Id> makeSupplier(SupplyGroup group);
    /// Makes it with that price of a pack and has every line take it, where it is of such a kind; or changes the
    /// price. Without a price it is taken out.
    QString setPrice(SupplyGroup group, const UsualSupply& supply, std::optional<units::Money> price);

    /// The stones that one can set: those of the book that have a price, by name.
    std::vector<const catalogue::Material*> stones();
    /// Makes it, on the book's first backing.
    QString makeDesign(catalogue::Design design);

  Q_SIGNALS:
    void changed(); ///< something of the book, or the step

  private:
    QString priceKnown(const catalogue::Pack& pack, units::Money price);
    QString addPriced(SupplyGroup group, const UsualSupply& supply, units::Money price);
    QString takeOut(const UsualSupply& supply);
    base::Result<base::Id> supplierIn(db::Book& book, SupplyGroup group);
    std::vector<catalogue::Pack> packsOf(SupplyGroup group);
    bool hasQuote();

    session::BookSession& m_session;
    quoting::FirstStep m_step = quoting::FirstStep::Letterhead;
    std::array<QString, 2> m_suppliers; ///< by group, as typed
    bool m_hasQuote = false;            ///< once there is one it stays
};

} // namespace sp::first_hour

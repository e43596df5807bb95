// SPDX-License-Identifier: MIT
#pragma once

#include "app/buying/planner.h"

#include <functional>

namespace sp::buying {

/// What is decided at Buying: for what is bought (a design and a number, or the order at the Counter), and the answer
/// to exactly that. From the moment something is typed until its own answer is there, there is no answer.
class BuyingPresenter : public QObject {
    Q_OBJECT

  public:
    using OrderReader = std::function<std::vector<catalogue::OrderLine>()>;
    BuyingPresenter(session::BookSession& session, OrderReader order, QObject* parent = nullptr);

    session::BookSession& session() { return m_session; }
    Planner& planner() { return m_planner; }
    const base::Id& design() const { return m_design; }
    std::optional<std::int64_t> pieces() const { return m_pieces; }
    bool isForOrder() const { return m_forOrder; }
    bool usesShelf() const { return m_usesShelf; }
    bool cutsTemplates() const { return m_cutsTemplates; }

    void setDesign(const base::Id& design);
    /// Nothing: what is typed is no number.
    void setPieces(std::optional<std::int64_t> pieces);
    void setForOrder(bool forOrder);
    void setUsesShelf(bool uses);
    void setCutsTemplates(bool cuts);
    void show(const base::Id& design, std::int64_t pieces);
    /// Asks again: the book or the order may have changed.
    void ask();

    const std::shared_ptr<const Answer>& answer() const { return m_answer; }
    /// The curve so far; none before its first part.
    const std::shared_ptr<const supply::CostCurve>& curve() const { return m_curve; }
    /// Kits that serve the design beside bulk; none before they are compared, and for a whole order.
    const std::shared_ptr<const std::vector<supply::KitChoice>>& kits() const { return m_kits; }
    bool isCurveComplete() const { return m_curveComplete; }
    bool isWorking() const { return m_working; }
    /// Why there is no answer and none is worked on; else empty.
    QString whyNot() const { return m_whyNot; }
    /// "24 × Lantern", or the order.
    QString title();
    /// Puts on the shelf what that way buys, at what it costs, as one step of undo: a material whose cost follows the
    /// shelf follows the plan that was bought. Says what went wrong; empty when it is there.
    QString takeIn(supply::Strategy strategy);
    /// The last quantity that the curve shows.
    std::int64_t horizon() const;

  Q_SIGNALS:
    void changed(); ///< answer, whyNot or isWorking
    void curveChanged();
    void kitsChanged();

  private:
    void asked(const QString& whyNot);

    session::BookSession& m_session;
    OrderReader m_order;
    Planner m_planner;
    base::Id m_design;
    std::optional<std::int64_t> m_pieces = 24;
    bool m_forOrder = false;
    bool m_usesShelf = true;
    bool m_cutsTemplates = true;
    bool m_working = false;
    bool m_curveComplete = false;
    QString m_whyNot;
    std::shared_ptr<const Answer> m_answer;
    std::shared_ptr<const supply::CostCurve> m_curve;
    std::shared_ptr<const std::vector<supply::KitChoice>> m_kits;
};

} // namespace sp::buying

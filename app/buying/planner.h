// SPDX-License-Identifier: MIT
#pragma once

#include "app/async/latest_task.h"
#include "app/session/book_session.h"
#include "core/supply/kit_choice.h"

#include <QObject>

#include <memory>

namespace sp::buying {

/// What the book says about buying, copied for the thread that plans. Without the shelf nothing is reckoned to lie
/// there.
std::shared_ptr<const supply::Supplies> suppliesOf(session::BookSession& session, bool cutsTemplates, bool usesShelf);

/// Which kits serve a design, and how each does beside bulk.
struct KitQuestion {
    catalogue::Design design;
    std::shared_ptr<const catalogue::PriceBook> prices;
    std::int64_t pieces = 1; ///< asked for
    std::int64_t last = 1;   ///< compared from 1 piece up to so many
};

/// So many quantities are looked at for pieces asked for.
std::int64_t horizonOf(std::int64_t pieces);

struct Question {
    std::shared_ptr<const supply::Supplies> supplies;
    std::vector<catalogue::OrderLine> lines;
    std::int64_t horizon = 0; ///< quantities of the curve to work out afterwards; 0, or several lines: none
    std::optional<KitQuestion> kits = std::nullopt; ///< worked out after the answer, before the curve
};

struct Answer {
    supply::Job job;
    supply::JobPlans plans;
    bool isProving = false; ///< a solver still looks at what is not proven; another answer comes
};

/// Plans purchases off the screen's thread, one question at a time: a new question ends the work on the one before, of
/// which nothing is heard any more. What is done for the three ways is counted in steps: a busy machine answers like an
/// idle one.
class Planner : public QObject {
    Q_OBJECT

  public:
    explicit Planner(QObject* parent = nullptr);

    void ask(Question question);
    /// Wants no answer any more.
    void drop() { m_task.drop(); }

  Q_SIGNALS:
    /// Once, or twice where the first answer isProving.
    void answered(const std::shared_ptr<const sp::buying::Answer>& answer);
    void refused(const sp::base::Error& error);
    /// Each kit of the question's, in the book's order.
    void kitsCompared(const std::shared_ptr<const std::vector<sp::supply::KitChoice>>& kits);
    /// The curve so far; `isComplete` when no more comes.
    void curveGrew(const std::shared_ptr<const sp::supply::CostCurve>& curve, bool isComplete);

  private:
    class Work;

    layout::FitMemo m_fits; ///< the thread's alone
    async::LatestTask m_task{nullptr, QThread::LowPriority};
};

} // namespace sp::buying

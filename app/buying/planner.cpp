// SPDX-License-Identifier: MIT
#include "app/buying/planner.h"

#include "app/async/solver.h"
#include "app/buying/buying_words.h"
#include "app/words/words.h"
#include "core/needs/messages.h"

#include <QElapsedTimer>
#include <QThread>

#include <algorithm>
#include <functional>

namespace sp::buying {

using supply::Strategy;

namespace {

constexpr std::int64_t kSteps = supply::PlanEffort::kUsual / 3; ///< for each of the three ways
constexpr std::int64_t kPointSteps = 4'000'000;                 ///< for each way of a point of the curve
constexpr int kSolverSeconds = 10;                              ///< for each way that is not proven
constexpr qint64 kCurveBudget = 20'000;
constexpr qint64 kTellEvery = 150;
constexpr std::int64_t kMaxCoordinate = 400; ///< quantities looked at for the proof beyond what is shown

} // namespace

std::shared_ptr<const supply::Supplies> suppliesOf(session::BookSession& session, bool cutsTemplates, bool usesShelf) {
    auto supplies = std::make_shared<supply::Supplies>();
    supplies->materials = session.materials();
    supplies->suppliers = session.suppliers();
    supplies->packs = session.packs();
    supplies->kits = session.kits();
    if (usesShelf) supplies->shelf = session.shelf();
    const auto& shop = session.shop();
    supplies->usualTape = shop.usualTape;
    supplies->usualTemplate = shop.usualTemplate;
    supplies->packing = shop.packing;
    supplies->spares = needs::spareRuleOf(shop);
    supplies->cutsTemplates = cutsTemplates;
    supplies->words.untitled = words::text(base::say(needs::Note::ThisLine));
    supplies->words.readyCut = [words = Buying::tr("Templates of %1, ready cut")](const std::string& title) {
        return words.arg(QString::fromStdString(title)).toStdString();
    };
    return supplies;
}

std::int64_t horizonOf(std::int64_t pieces) { return std::clamp<std::int64_t>(2 * pieces, 48, 240); }

/// One question, answered beside the screen's thread.
class Planner::Work {
  public:
    Work(Planner& planner, const async::LatestTask::Run& run, const Question& question)
        : m_planner(planner)
        , m_run(run)
        , m_question(question) {}

    void run() {
        auto job = supply::jobOf(m_question.lines, *m_question.supplies, m_planner.m_fits);
        if (!job) return tell([error = job.error()](Planner& planner) { Q_EMIT planner.refused(error); });
        auto plans = planned(*job, kSteps);
        if (!plans) return tell([error = plans.error()](Planner& planner) { Q_EMIT planner.refused(error); });
        const bool isProving = async::hasSolver() && std::ranges::any_of(plans->strategies, isUnproven);
        auto answer = std::make_shared<const Answer>(Answer{*job, std::move(*plans), isProving});
        tell([answer](Planner& planner) { Q_EMIT planner.answered(answer); });
        if (isProving) {
            answer = std::make_shared<const Answer>(Answer{*job, proven(*job, answer->plans), false});
            tell([answer](Planner& planner) { Q_EMIT planner.answered(answer); });
        }
        if (m_question.kits) compareKits(*m_question.kits);
        if (m_question.horizon > 0 && job->lines.size() == 1) curve(std::move(*job), *answer);
    }

  private:
    bool isStale() const { return m_run.isStopped(); }

    /// In the screen's thread, unless a newer question came meanwhile.
    void tell(std::function<void(Planner&)> say) {
        m_run.tell([planner = &m_planner, say = std::move(say)] { say(*planner); });
    }

    /// Nothing is told where a piece of the design cannot be bought for: the answer said why.
    void compareKits(const KitQuestion& asked) {
        auto kits = supply::kitChoices(asked.design, *m_question.supplies, *asked.prices, asked.pieces, asked.last,
                                       m_planner.m_fits, [this] { return isStale(); });
        if (!kits) return;
        const auto compared = std::make_shared<const std::vector<supply::KitChoice>>(std::move(*kits));
        tell([compared](Planner& planner) { Q_EMIT planner.kitsCompared(compared); });
    }

    /// Kits, bulk and mix, with so many steps each.
    base::Result<supply::JobPlans> planned(const supply::Job& job, std::int64_t steps) {
        std::array<supply::StrategyPlan, 3> strategies;
        for (std::size_t i = 0; i < strategies.size(); ++i) {
            auto strategy = supply::planStrategy(job, static_cast<Strategy>(i), {steps, [this] { return isStale(); }});
            if (!strategy) return base::fail(strategy.error());
            strategies[i] = std::move(*strategy);
        }
        return supply::compared(job, std::move(strategies));
    }

    static bool isUnproven(const supply::StrategyPlan& strategy) { return strategy.plan && !strategy.plan->proven; }

    /// The same plans, proven or bettered by the solver as far as it comes in its time.
    supply::JobPlans proven(const supply::Job& job, const supply::JobPlans& plans) {
        auto strategies = plans.strategies;
        for (std::size_t i = 0; i < strategies.size() && !isStale(); ++i) {
            if (!isUnproven(strategies[i])) continue;
            const auto way = static_cast<Strategy>(i);
            const auto programme = supply::purchaseProgram(supply::purchaseOf(job, way));
            if (!programme) continue;
            const auto solution = async::solved(*programme, kSolverSeconds, [this] { return isStale(); });
            if (solution) supply::takeSolution(job, way, *solution, strategies[i]);
        }
        return supply::compared(job, std::move(strategies));
    }

    /// What was answered for the quantity asked about is its point: one question has one answer.
    void curve(supply::Job job, const Answer& answer) {
        const auto strategies = supply::strategiesOf(job);
        const auto beyond = supply::provenBeyond(strategies).value_or(0);
        const auto last = std::max(m_question.horizon, beyond <= kMaxCoordinate ? beyond : 0);
        QElapsedTimer whole;
        QElapsedTimer sinceTold;
        whole.start();
        sinceTold.start();
        std::vector<supply::CostCurvePoint> points;
        const auto show = [&](bool isComplete) {
            const auto shown = std::make_shared<const supply::CostCurve>(supply::assembled(strategies, points));
            tell([shown, isComplete](Planner& planner) { Q_EMIT planner.curveGrew(shown, isComplete); });
        };
        for (std::int64_t n = 1; n <= last && !isStale() && !whole.hasExpired(kCurveBudget); ++n) {
            supply::setPieces(job, n);
            if (n == answer.job.pieces()) {
                points.push_back(supply::pointOf(answer.job, answer.plans));
            } else {
                const auto plans = planned(job, kPointSteps);
                if (!plans || plans->of(Strategy::Mix).isUnsolved) break;
                points.push_back(supply::pointOf(job, *plans));
            }
            if (!sinceTold.hasExpired(kTellEvery)) continue;
            show(false);
            sinceTold.restart();
        }
        show(true);
    }

    Planner& m_planner; ///< outlives its works
    const async::LatestTask::Run& m_run;
    const Question& m_question;
};

Planner::Planner(QObject* parent)
    : QObject(parent) {}

void Planner::ask(Question question) {
    m_task.start([this, question = std::move(question)](const async::LatestTask::Run& run) {
        Work(*this, run, question).run();
    });
}

} // namespace sp::buying

#include "moc_planner.cpp"

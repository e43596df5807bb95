// SPDX-License-Identifier: MIT
#include "app/buying/planner.h"

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

constexpr int kPointQuestions = 40;   ///< of a search, for each way of a point: the same claims on every machine
constexpr int kLateQuestions = 2'000; ///< where those were too few for any plan
constexpr qint64 kSecondTry = 3'000;  ///< ms
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
    Work(Planner& planner, const async::LatestTask::Run& run, const Question& question, qint64 patience)
        : m_planner(planner)
        , m_run(run)
        , m_question(question)
        , m_patience(patience) {}

    void run() {
        auto job = supply::jobOf(m_question.lines, *m_question.supplies, m_planner.m_fits);
        if (!job) return tell([error = job.error()](Planner& planner) { Q_EMIT planner.refused(error); });
        m_clock.start();
        auto plans = planned(*job, {m_patience / 4, m_patience / 2, m_patience});
        if (!plans) return tell([error = plans.error()](Planner& planner) { Q_EMIT planner.refused(error); });
        const auto answer = std::make_shared<const Answer>(Answer{*job, std::move(*plans)});
        tell([answer](Planner& planner) { Q_EMIT planner.answered(answer); });
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

    /// Kits, bulk and mix, each until so many milliseconds after the clock's start.
    base::Result<supply::JobPlans> planned(const supply::Job& job, std::array<qint64, 3> until) {
        std::array<supply::StrategyPlan, 3> strategies;
        for (std::size_t i = 0; i < strategies.size(); ++i) {
            auto strategy = supply::planStrategy(job, static_cast<Strategy>(i),
                                                 [&] { return isStale() || m_clock.hasExpired(until[i]); });
            // A busy machine may not have let the search begin: some plan is worth waiting for.
            if (strategy && strategy->isLate)
                strategy = supply::planStrategy(job, static_cast<Strategy>(i),
                                                [&] { return isStale() || m_clock.hasExpired(kSecondTry); });
            if (!strategy) return base::fail(strategy.error());
            strategies[i] = std::move(*strategy);
        }
        return supply::compared(job, std::move(strategies));
    }

    /// The three ways of a point of the curve.
    base::Result<supply::JobPlans> plannedPoint(const supply::Job& job) {
        std::array<supply::StrategyPlan, 3> strategies;
        for (std::size_t i = 0; i < strategies.size(); ++i)
            for (const int most : {kPointQuestions, kLateQuestions}) {
                int asked = 0;
                auto strategy =
                    supply::planStrategy(job, static_cast<Strategy>(i), [&] { return isStale() || ++asked > most; });
                if (!strategy) return base::fail(strategy.error());
                strategies[i] = std::move(*strategy);
                if (!strategies[i].isLate) break;
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
                const auto plans = plannedPoint(job);
                if (!plans || plans->of(Strategy::Mix).isLate) break;
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
    qint64 m_patience;
    QElapsedTimer m_clock;
};

Planner::Planner(QObject* parent)
    : QObject(parent) {}

void Planner::ask(Question question) {
    m_task.start([this, question = std::move(question), patience = m_patience](const async::LatestTask::Run& run) {
        Work(*this, run, question, patience).run();
    });
}

} // namespace sp::buying

// SPDX-License-Identifier: MIT
#include "app/buying/buying_presenter.h"

#include "app/session/settings.h"
#include "app/words/words.h"
#include "core/supply/receipts.h"

#include <algorithm>
#include <unordered_map>

namespace sp::buying {

BuyingPresenter::BuyingPresenter(session::BookSession& session, OrderReader order, QObject* parent)
    : QObject(parent)
    , m_session(session)
    , m_order(std::move(order))
    , m_cutsTemplates(session::kept(session::kCutsTemplates)) {
    if (!m_session.designs().empty()) m_design = m_session.designs().front().id;
    for (const auto& kit : m_session.kits()) // there is most to compare
        if (m_session.design(kit.design)) m_design = kit.design;
    connect(&m_session, &session::BookSession::changed, this, &BuyingPresenter::ask);
    connect(&m_planner, &Planner::answered, this, [this](const std::shared_ptr<const Answer>& answer) {
        m_answer = answer;
        m_working = false;
        Q_EMIT changed();
    });
    connect(&m_planner, &Planner::refused, this, [this](const base::Error& error) { asked(words::sentence(error)); });
    connect(&m_planner, &Planner::kitsCompared, this,
            [this](const std::shared_ptr<const std::vector<supply::KitChoice>>& kits) {
                m_kits = kits;
                Q_EMIT kitsChanged();
            });
    connect(&m_planner, &Planner::curveGrew, this,
            [this](const std::shared_ptr<const supply::CostCurve>& curve, bool isComplete) {
                m_curve = curve;
                m_curveComplete = isComplete;
                Q_EMIT curveChanged();
            });
}

void BuyingPresenter::asked(const QString& whyNot) {
    m_answer.reset();
    m_curve.reset();
    m_kits.reset();
    m_curveComplete = false;
    m_whyNot = whyNot;
    m_working = whyNot.isEmpty();
    Q_EMIT changed();
    Q_EMIT curveChanged();
    Q_EMIT kitsChanged();
}

std::int64_t BuyingPresenter::horizon() const { return horizonOf(m_pieces.value_or(24)); }

void BuyingPresenter::ask() {
    m_planner.drop();
    Question question;
    if (m_forOrder) {
        question.lines = m_order();
        if (question.lines.empty()) return asked(tr("There is no order at the Counter: put a design on it there."));
    } else {
        const auto* design = m_session.design(m_design);
        if (!design) return asked(tr("Choose a design to buy for."));
        if (!m_pieces) return asked(tr("Say how many pieces are to be made."));
        question.lines = {supply::lineOf(*design, m_session.materials(), *m_pieces)};
        question.horizon = horizon();
        question.kits = {*design, std::make_shared<const catalogue::PriceBook>(m_session.prices({})), *m_pieces,
                         horizon()};
    }
    question.supplies = suppliesOf(m_session, m_cutsTemplates, m_usesShelf);
    asked({});
    m_planner.ask(std::move(question));
}

void BuyingPresenter::setDesign(const base::Id& design) {
    m_design = design;
    ask();
}

void BuyingPresenter::setPieces(std::optional<std::int64_t> pieces) {
    m_pieces = pieces;
    ask();
}

void BuyingPresenter::setForOrder(bool forOrder) {
    m_forOrder = forOrder;
    ask();
}

void BuyingPresenter::setUsesShelf(bool uses) {
    m_usesShelf = uses;
    ask();
}

void BuyingPresenter::setCutsTemplates(bool cuts) {
    m_cutsTemplates = cuts;
    session::save(session::kCutsTemplates, cuts);
    ask();
}

void BuyingPresenter::show(const base::Id& design, std::int64_t pieces) {
    m_forOrder = false;
    m_design = design;
    m_pieces = pieces;
    ask();
}

QString BuyingPresenter::takeIn(supply::Strategy strategy) {
    if (!m_answer || !m_answer->plans.of(strategy).plan) return tr("There is no plan to put on the shelf yet.");
    std::unordered_map<std::string, base::Id> ids;
    for (const auto& material : m_session.materials()) ids[material.name] = material.id;
    const auto prices = m_session.prices({});
    const auto priceOfOne = [&](const std::string& material) -> std::optional<units::UnitPrice> {
        const auto id = ids.find(material);
        const auto* priced = id == ids.end() ? nullptr : prices.find(id->second);
        return priced ? priced->price : std::nullopt;
    };
    const auto receipts = supply::receiptsOf(m_answer->job, *m_answer->plans.of(strategy).plan, priceOfOne);
    const auto what = words::say(QT_TRANSLATE_NOOP("App", "what was bought for %1"), title().toStdString());
    const auto done = m_session.attempt([&](db::Book& book) {
        return book.batch(what, [&]() -> base::Done {
            for (const auto& receipt : receipts) {
                const auto id = ids.find(receipt.material);
                if (id == ids.end()) continue; // templates ready cut are for this job alone
                auto moved = book.moveStock(id->second, receipt.count.value(), receipt.cost, words::text(what));
                if (!moved) return moved;
            }
            return {};
        });
    });
    return done ? QString() : words::sentence(done.error());
}

QString BuyingPresenter::title() {
    if (m_forOrder) return tr("The order at the Counter");
    const auto* design = m_session.design(m_design);
    return design ? QStringLiteral("%1 × %2").arg(m_pieces.value_or(0)).arg(QString::fromStdString(design->name))
                  : QString();
}

} // namespace sp::buying

#include "moc_buying_presenter.cpp"

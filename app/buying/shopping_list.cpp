// SPDX-License-Identifier: MIT
#include "app/buying/shopping_list.h"

#include "app/buying/buying_words.h"
#include "app/buying/cost_curve_picture.h"
#include "app/buying/plan_rows.h"
#include "app/desk/fonts.h"
#include "app/paper/page_flow.h"
#include "app/paper/paper_colours.h"
#include "core/base/csv.h"
#include "core/supply/plan_figures.h"

#include <QCoreApplication>

namespace sp::buying {

using paper::Brick;
using paper::Document;
using paper::Face;
using supply::Strategy;
using units::Money;

namespace {

constexpr double kTickBox = 8; ///< points
constexpr double kPackLeft = 16;
constexpr double kAmountRoom = 90;
constexpr double kCurveHeight = 330;
constexpr int kCurveLetters = 9;

/// "9.99": two decimals, or as many as there are.
std::string plainAmount(Money amount) { return units::formatExact(amount, units::Currency{}); }

paper::PageFrame frameOf(const BuyingPaper& about, const QString& title, const paper::Lettering& lettering) {
    return {paper::headOf(paper::OwnPaper{about.shop, title, about.job, about.formatter.date(about.day)}), lettering,
            paper::columnWidth(about.shop.paper)};
}

/// The rows of the printed list.
class ListBricks : private paper::BrickPen {
  public:
    ListBricks(const Answer& answer, const BuyingPaper& about, const paper::Lettering& lettering)
        : BrickPen(lettering, paper::columnWidth(about.shop.paper))
        , m_answer(answer)
        , m_formatter(about.formatter)
        , m_plan(*answer.plans.of(Strategy::Mix).plan) {}

    void addTo(std::vector<Brick>& bricks) const {
        for (const auto& note : sparesOf(m_answer)) bricks.push_back(line(Face::Small, note, 6));
        if (m_plan.packs.empty())
            bricks.push_back(line(Face::Body, Buying::tr("Nothing has to be bought: the shelf is enough."), 12));
        for (const auto& order : m_plan.orders) addOrder(bricks, order);
        bricks.push_back(row(Face::Strong, Buying::tr("Together"), m_formatter.moneyNamed(m_plan.cost), 14));
        rule(bricks.back(), 0, -6, m_width);
    }

  private:
    Brick line(Face face, const QString& words, double gap) const {
        Brick brick;
        brick.gap = gap;
        brick.height = paragraph(brick, 0, 0, face, paper::kInk, words, m_width, 4);
        return brick;
    }

    Brick row(Face face, const QString& words, const QString& amount, double gap, double left = 0) const {
        Brick brick;
        brick.gap = gap;
        brick.height = paragraph(brick, left, 0, face, paper::kInk, words, m_width - left - kAmountRoom, 3);
        figuresRight(brick, m_width, 0, face, paper::kInk, amount);
        return brick;
    }

    /// A supplier's name over what is bought there; the same again where it goes on on another page.
    Brick orderHead(const QString& name, const QString& amount, double gap) const {
        auto brick = row(Face::Strong, name, amount, gap);
        brick.keepWithNext = true;
        brick.height += 4;
        rule(brick, 0, brick.height, m_width);
        return brick;
    }

    void addOrder(std::vector<Brick>& bricks, const supply::PlannedOrder& order) const {
        const auto name = QString::fromStdString(order.supplier);
        bricks.push_back(orderHead(name, m_formatter.money(supply::orderTotal(order)), 20));
        const auto again = std::make_shared<const Brick>(orderHead(Buying::tr("%1, continued").arg(name), {}, 0));
        for (const auto& pack : m_plan.packs) {
            if (pack.supplier != order.supplier) continue;
            auto brick = row(Face::Body, packWords(m_answer.job, pack, m_formatter), m_formatter.money(pack.goods), 6,
                             kPackLeft);
            const double top = m_lettering.ascent(Face::Body) - kTickBox;
            brick.parts.boxes.push_back({{0, top, kTickBox, kTickBox}, paper::kInk, {}, false});
            brick.headAgain = again;
            bricks.push_back(std::move(brick));
        }
        // Shipping stands with the last pack.
        bricks.back().keepWithNext = true;
        bricks.push_back(row(Face::Small, Buying::tr("Shipping"), m_formatter.money(order.shipping), 6, kPackLeft));
        bricks.back().headAgain = again;
    }

    const Answer& m_answer;
    const desk::Formatter& m_formatter;
    const supply::PurchasePlan& m_plan;
};

} // namespace

std::string shoppingCsv(const Answer& answer) {
    const auto& plan = *answer.plans.of(Strategy::Mix).plan;
    const auto words = [](const QString& text) { return text.toStdString(); };
    auto text = base::csvRecord({{words(Buying::tr("Supplier"))},
                                 {words(Buying::tr("Pack"))},
                                 {words(Buying::tr("Material"))},
                                 {words(Buying::tr("Packs"))},
                                 {words(Buying::tr("Each"))},
                                 {words(Buying::tr("Goods"))}});
    for (const auto& order : plan.orders) {
        for (const auto& pack : plan.packs) {
            const auto* offer = answer.job.offer(pack.id);
            if (pack.supplier != order.supplier || !offer) continue;
            text += base::csvRecord(
                {{order.supplier},
                 {offer->withTemplates ? offer->name + words(Buying::tr(", templates cut")) : offer->name},
                 {offer->material},
                 {std::to_string(pack.count.value()), true},
                 {plainAmount(supply::packEach(pack)), true},
                 {plainAmount(pack.goods), true}});
        }
        text += base::csvRecord({{order.supplier},
                                 {words(Buying::tr("Shipping"))},
                                 {""},
                                 {"", true},
                                 {"", true},
                                 {plainAmount(order.shipping), true}});
    }
    return text;
}

Document shoppingPages(const Answer& answer, const BuyingPaper& about) {
    const paper::Lettering lettering;
    const auto title = Buying::tr("Shopping list");
    const auto frame = frameOf(about, title, lettering);
    std::vector<Brick> bricks{frame.letterhead(), frame.addressee()};
    ListBricks(answer, about, lettering).addTo(bricks);
    return {title.toStdString(), paper::layOnPages(bricks, frame, about.shop.paper)};
}

Document costCurvePage(std::shared_ptr<const supply::CostCurve> curve, std::int64_t horizon, std::int64_t pieces,
                       const BuyingPaper& about) {
    const paper::Lettering lettering;
    const auto title = Buying::tr("Cost of one piece by quantity");
    const auto frame = frameOf(about, title, lettering);
    const double width = paper::columnWidth(about.shop.paper);
    std::vector<Brick> bricks{frame.letterhead(), frame.addressee()};
    auto words = costCurveWords(*curve, horizon, about.formatter);
    if (const auto shown = shownWords(*curve, horizon, pieces, about.formatter); !shown.isEmpty()) words << shown;
    Brick picture;
    picture.gap = 16;
    picture.height = kCurveHeight;
    picture.parts.pictures.push_back(
        {{0, 0, width, kCurveHeight},
         [curve = std::move(curve), horizon, formatter = about.formatter](QPainter& painter, const QRectF& area) {
             QFont font = desk::textFont(desk::TextSize::Small);
             font.setPixelSize(kCurveLetters); // a unit is a point
             painter.setFont(font);
             paintCostCurve(painter, area, {*curve, horizon, 0}, desk::Look::Light, formatter);
         }});
    bricks.push_back(std::move(picture));
    const paper::BrickPen pen(lettering, width);
    for (const auto& sentence : words) {
        Brick brick;
        brick.gap = bricks.size() == 3 ? 14 : 2;
        brick.height = pen.paragraph(brick, 0, 0, Face::Body, paper::kInk, sentence, width, 3);
        bricks.push_back(std::move(brick));
    }
    return {title.toStdString(), paper::layOnPages(bricks, frame, about.shop.paper)};
}

} // namespace sp::buying

// SPDX-License-Identifier: MIT
#include "core/costing/cost_line.h"

#include "core/base/overflow.h"
#include "core/costing/messages.h"
#include "core/costing/parts.h"
#include "core/needs/requirements.h"

namespace sp::costing {

namespace {

using units::Money;

/// Goes through the table and adds up what it finds there, part by part, node by node and tag by tag.
class Adder {
  public:
    /// `nodes` may be null: then only the sums are kept.
    Adder(PartInputs inputs, LineCost& cost, std::vector<CostNode>* nodes)
        : m_in(inputs)
        , m_cost(cost)
        , m_nodes(nodes) {}

    void add() {
        if (m_nodes) m_nodes->push_back({Part::Job, 0, 0, {}, {}});
        for (const auto& row : partTable()) {
            if (!row.amount)
                openSum(row);
            else if (!arises(row))
                continue;
            else if (row.within == Part::Job || row.within == m_open)
                addAll(row);
        }
        closeSum();
        m_cost.total = m_in.above;
        spoil();
        if (m_nodes) m_nodes->front().amount = m_in.above;
    }

  private:
    void spoil() {
        const auto beside = Exact().lostBeside(Operand::Spoilage, m_in.book.shop.rates.spoilage);
        m_cost.spoiledLabour = Money::fromExact(m_lostLabour.exact() * beside);
        m_cost.spoiledTime =
            units::Duration::fromMilliseconds((exactly(m_in.takes.bench.untilPacked()) * beside).roundedHalfEven());
    }

    void openSum(const PartRow& row) {
        closeSum();
        if (row.arises && !row.arises(m_in, 0)) return;
        if (m_in.line.isCharge() && row.part != Part::Base && row.part != Part::Freight) return;
        m_open = row.part;
        m_sum = {};
        if (!m_nodes) return;
        m_openNode = m_nodes->size();
        m_nodes->push_back({row.part, 1, 0, {}, {}});
    }

    void closeSum() {
        if (m_nodes && m_open != Part::Job) (*m_nodes)[m_openNode].amount = m_sum;
        m_open = Part::Job;
    }

    void addAll(const PartRow& row) {
        if (row.within == Part::Job) closeSum();
        const std::size_t end = row.most ? row.most(m_in) : row.first + 1;
        for (std::size_t i = row.first; i < end; ++i)
            if (!row.arises || row.arises(m_in, i)) addLeaf(row, i);
    }

    bool arises(const PartRow& row) const { return !m_in.line.isCharge() || (row.tags & tag::kOnCharge); }

    void addLeaf(const PartRow& row, std::size_t index) {
        const Money amount = Money::fromExact(row.amount(m_in, index));
        if (m_nodes)
            m_nodes->push_back({row.part, static_cast<std::uint8_t>(row.within == Part::Job ? 1 : 2),
                                static_cast<std::uint16_t>(index), amount, row.formula(m_in, index)});
        m_sum += amount;
        m_in.above += amount;
        if (row.tags & tag::kFallsAway) m_cost.setUp += amount;
        if (row.tags & tag::kPaidOut) m_cost.outOfPocket += amount;
        if (row.tags & tag::kPaysOff) m_cost.paidOff += amount;
        if (row.tags & tag::kLabour) m_cost.labour += amount;
        if (!(row.tags & (tag::kLostMaterial | tag::kLostWork))) return;
        if (m_in.line.isCharge()) return; // it is sold as it is: nothing is made that could be spoiled
        if (m_in.line.customersGarment && !(row.tags & tag::kLostOnAny)) return;
        if ((row.tags & tag::kLabour) && !(row.tags & tag::kOfPacking)) m_lostLabour += amount;
        if ((row.tags & tag::kOfPacking) && !m_in.losesPacking()) return;
        const Money lost = row.lost ? Money::fromExact(row.lost(m_in, index)) : amount;
        (row.tags & tag::kLostMaterial ? m_in.lostMaterials : m_in.lostWork) += lost;
    }

    PartInputs m_in;
    LineCost& m_cost;
    std::vector<CostNode>* m_nodes;
    Part m_open = Part::Job; ///< the part whose parts are being added
    std::size_t m_openNode = 0;
    Money m_sum;        ///< of its parts so far
    Money m_lostLabour; ///< of the lost work what is labour
};

base::Done checkShop(const catalogue::PriceBook& book) {
    const auto& rates = book.shop.rates;
    if (!rates.overheadPerMonth.isZero() && rates.productivePerMonth <= units::Duration{})
        return base::fail(Fault::NoProductiveHours, "productive hours");
    if (rates.spoilage.isNegative() || rates.spoilage.ppm() >= units::kPpm)
        return base::fail(Fault::SpoilageOutOfRange, "spoilage");
    const auto& fee = book.shop.rules.cardFee;
    if (fee.charged && (fee.rate.isNegative() || fee.rate.ppm() >= units::kPpm))
        return base::fail(Fault::CardFeeOutOfRange, "card fee");
    if (book.bench.press.lifePresses < 1 || book.bench.cutter.lifeHoles < 1)
        return base::fail(Fault::MachineLifeBelowOne, "wear");
    return {};
}

base::Done cost(const catalogue::OrderLine& line, const catalogue::PriceBook& book,
                base::Result<needs::Requirements> takes, const OrderShare& share, std::int64_t rules, LineCost& sheet,
                std::vector<CostNode>* nodes) {
    if (!takes) return base::fail(takes.error());
    try {
        if (auto ok = checkShop(book); !ok) return ok;
        sheet.bench = takes->bench;
        Adder({line, book, *takes, share, rules}, sheet, nodes).add();
        sheet.places = std::move(takes->places);
        return {};
    } catch (const base::Overflow&) { return base::fail(Fault::LineTooCostly, line.title, line.title); }
}

} // namespace

base::Result<needs::Requirements> requirementsOf(const catalogue::OrderLine& line, const catalogue::PriceBook& book,
                                                 layout::FitMemo& fits, const OrderShare& share) {
    try {
        return needs::requirementsOf(line, book, line.quantity.value(), fits, share.setPieces);
    } catch (const base::Overflow&) { return base::fail(Fault::LineTooCostly, line.title, line.title); }
}

base::Result<CostSheet> costLine(const catalogue::OrderLine& line, const catalogue::PriceBook& book,
                                 layout::FitMemo& fits, const OrderShare& share, std::int64_t rules) {
    CostSheet sheet;
    sheet.needs = share.prices;
    sheet.sets = share.sets;
    auto takes = requirementsOf(line, book, fits, share);
    if (auto ok = cost(line, book, std::move(takes), share, rules, sheet, &sheet.nodes); !ok)
        return base::fail(ok.error());
    return sheet;
}

base::Result<LineCost> costFigures(const catalogue::OrderLine& line, const catalogue::PriceBook& book,
                                   needs::Requirements takes, const OrderShare& share, std::int64_t rules) {
    LineCost figures;
    if (auto ok = cost(line, book, std::move(takes), share, rules, figures, nullptr); !ok)
        return base::fail(ok.error());
    return figures;
}

base::Result<LineCost> costFigures(const catalogue::OrderLine& line, const catalogue::PriceBook& book,
                                   layout::FitMemo& fits, const OrderShare& share, std::int64_t rules) {
    auto takes = requirementsOf(line, book, fits, share);
    if (!takes) return base::fail(takes.error());
    return costFigures(line, book, std::move(*takes), share, rules);
}

base::Result<catalogue::SetCost> setCostOf(const catalogue::OrderLine& line, std::size_t place,
                                           const catalogue::PriceBook& book, layout::FitMemo& fits,
                                           const OrderShare& share) {
    auto alone = line;
    alone.places = {line.places[place]};
    alone.first().templatesOnWall = false;
    alone.first().plannedPieces.reset();
    alone.quantity = units::Count::of(1);
    alone.sizes.clear();
    OrderShare itsOwn;
    itsOwn.prices = share.prices;
    const auto sheet = costLine(alone, book, fits, itsOwn);
    if (!sheet) return base::fail(sheet.error());
    catalogue::SetCost cost;
    for (const auto& node : sheet->nodes)
        if (node.part == Part::Template || node.part == Part::FreightOnTemplate) cost.templates += node.amount;
    cost.work = sheet->setUp - cost.templates;
    return cost;
}

} // namespace sp::costing

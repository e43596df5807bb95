// SPDX-License-Identifier: MIT
#include "core/costing/cost_line.h"

#include "core/base/overflow.h"
#include "core/needs/requirements.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>

namespace sp::costing {

namespace {

using catalogue::Step;
using units::Fraction;
using units::Money;

/// `amount` for each of one minus `share`, less the amount itself: what is lost on the way.
Fraction lostShare(units::Rate share) { return Fraction::ratio(share.ppm(), units::kPpm - share.ppm()); }

Fraction perHour(Money hourly, units::Duration time) {
    return Fraction::ratio(static_cast<units::Int128>(hourly.micros()) * time.milliseconds(),
                           units::kMillisecondsPerHour);
}

/// What a sheet material costs, in micro-units, exactly: by whole sheets, by position, or by the length cut off a roll.
Fraction costOf(const needs::SheetRequirement& takes, const catalogue::PricedMaterial& material) {
    const Fraction each = material.price->each();
    const auto& sheet = material.material.sheet;
    if (sheet.form == catalogue::SheetForm::Roll)
        return each * Fraction::ratio(takes.use.rollLength.nanometres(), sheet.height.nanometres());
    if (sheet.basis == catalogue::ShareBasis::WholeSheets) return each * Fraction::of(takes.use.sheets);
    return each * takes.paidByPosition * Fraction::ratio(1, takes.use.perSheet);
}

/// Adds up the tree: opens a node, adds leaves, closes it with their sum; writes it down where somebody wants it.
class Writer {
  public:
    /// `nodes` may be null: then only the sums are kept.
    explicit Writer(std::vector<CostNode>* nodes)
        : m_nodes(nodes) {}

    std::size_t open(Part part) {
        const std::size_t number = m_nodes ? m_nodes->size() : 0;
        if (m_nodes) m_nodes->push_back({part, m_depth, 0, Money{}});
        m_sums[++m_depth] = {};
        return number;
    }
    Money close(std::size_t node) {
        const Money sum = m_sums[m_depth--];
        m_sums[m_depth] += sum;
        if (m_nodes) (*m_nodes)[node].amount = sum;
        return sum;
    }
    Money leaf(Part part, std::size_t index, const Fraction& micros) {
        const Money amount = Money::fromExact(micros);
        if (m_nodes) m_nodes->push_back({part, m_depth, static_cast<std::uint16_t>(index), amount});
        m_sums[m_depth] += amount;
        return amount;
    }
    /// What stands so far below the open node.
    Money sumSoFar() const { return m_sums[m_depth]; }

  private:
    std::vector<CostNode>* m_nodes;
    std::array<Money, 8> m_sums{}; ///< by depth; the tree is three deep
    std::uint8_t m_depth = 0;
};

class LineCoster {
  public:
    LineCoster(const catalogue::OrderLine& line, const catalogue::PriceBook& book, const needs::Requirements& takes,
               LineCost& sheet, std::vector<CostNode>* nodes)
        : m_line(line)
        , m_book(book)
        , m_takes(takes)
        , m_pieces(Fraction::of(takes.pieces))
        , m_base(takes.materials.base)
        , m_tape(takes.materials.tape)
        , m_template(takes.materials.templates)
        , m_sheet(sheet)
        , m_write(nodes) {}

    void cost(Money cardFixed) {
        m_sheet.bench = m_takes.bench;
        m_sheet.tape = m_takes.tape.use;
        m_sheet.templates = m_takes.templates.use;
        m_sheet.base = m_takes.backing.use;
        m_sheet.piecesPerPress = m_takes.press.piecesPerPress;
        m_sheet.pressesPerPiece = m_takes.press.pressesPerPiece;
        m_sheet.cycles = m_takes.press.cycles;
        const auto job = m_write.open(Part::Job);
        stones();
        sheets();
        packing();
        labour();
        press();
        wear();
        overhead();
        spoilage();
        cardFee(cardFixed);
        m_sheet.total = m_write.close(job);
    }

  private:
    void stones() {
        const auto node = m_write.open(Part::Stones);
        for (std::size_t i = 0; i < m_line.stones.size(); ++i) {
            m_write.leaf(Part::Stone, i, m_takes.stones(i) * m_takes.materials.stones[i].material->price->each());
        }
        m_materials += m_spoiledStones = m_write.close(node);
    }

    void sheets() {
        if (m_tape) { m_materials += m_write.leaf(Part::Tape, 0, costOf(m_takes.tape, *m_tape)); }
        if (m_template) {
            Fraction cost;
            if (!m_line.templatesOnWall) {
                cost = costOf(m_takes.templates, *m_template);
                if (m_line.plannedPieces)
                    cost = cost * Fraction::ratio(std::min(m_line.quantity.value(), m_line.plannedPieces->value()),
                                                  m_line.plannedPieces->value());
            }
            const Money templates = m_write.leaf(Part::Template, 0, cost);
            m_sheet.setUp += templates;
            m_sheet.outOfPocket += templates;
        }
        if (m_base) m_materials += base();
    }

    Money base() {
        const auto& material = *m_base;
        if (m_takes.materials.isOnBacking()) return m_write.leaf(Part::Base, 0, costOf(m_takes.backing, material));
        const auto node = m_write.open(Part::Base);
        m_write.leaf(Part::BasePrice, 0, m_pieces * material.price->each());
        for (std::size_t i = 0; i < m_line.sizes.size(); ++i)
            for (const auto& size : material.material.sizes)
                if (size.name == m_line.sizes[i].size && !size.extraCost.isZero())
                    m_write.leaf(Part::SizeExtra, i,
                                 size.extraCost.exact() * Fraction::of(m_line.sizes[i].count.value()));
        return m_write.close(node);
    }

    void packing() {
        const auto& items = m_takes.materials.packing;
        if (items.empty()) return;
        const auto node = m_write.open(Part::Packing);
        for (std::size_t i = 0; i < items.size(); ++i)
            m_write.leaf(Part::PackingItem, i, m_pieces * items[i]->price->each());
        m_materials += m_write.close(node);
    }

    void labour() {
        const auto node = m_write.open(Part::Labour);
        for (const Step step : catalogue::kSteps) {
            const auto time = m_sheet.bench.of(step);
            if (time.isZero()) continue;
            const Money amount = m_write.leaf(Part::LabourStep, static_cast<std::size_t>(step),
                                              perHour(m_book.shop.rates.labourPerHour, time));
            if (catalogue::isOncePerJob(step))
                m_sheet.setUp += amount;
            else
                m_work += amount;
        }
        m_pieceLabour = m_work;
        m_sheet.labour = m_write.close(node);
    }

    void press() {
        const auto& press = m_book.bench.press;
        const auto cycle = press.dwell + press.handling;
        const auto node = m_write.open(Part::Press);
        const Fraction hourly = press.runningPerHour.exact();
        const auto machine = [&](const Fraction& times, units::Duration one) {
            return hourly * times * Fraction::ratio(one.milliseconds(), units::kMillisecondsPerHour);
        };
        m_machine += m_write.leaf(Part::PressCycles, 0, machine(Fraction::of(m_sheet.cycles), cycle));
        if (!press.secondPressShare.isZero())
            m_machine += m_write.leaf(Part::SecondPress, 0,
                                      machine(m_takes.press.secondPresses, press.secondDwell + press.handling));
        if (!press.warmUp.isZero()) m_write.leaf(Part::WarmUp, 0, machine(Fraction::of(1), press.warmUp));
        if (press.testPresses > 0) m_write.leaf(Part::TestPress, 0, machine(Fraction::of(press.testPresses), cycle));
        m_sheet.outOfPocket += m_write.close(node);
    }

    void wear() {
        const auto& press = m_book.bench.press;
        const auto& cutter = m_book.bench.cutter;
        const auto node = m_write.open(Part::Wear);
        const Fraction perPress = Fraction::ratio((press.price - press.salvage).micros(), press.lifePresses);
        const Fraction presses = Fraction::of(m_sheet.cycles) + m_takes.press.secondPresses;
        m_work += Money::fromExact(perPress * presses);
        m_write.leaf(Part::PressWear, 0, perPress * (presses + Fraction::of(press.testPresses)));
        if (!m_line.templatesOnWall) {
            m_sheet.setUp += m_write.leaf(Part::CutterWear, 0,
                                          Fraction::ratio((cutter.price - cutter.salvage).micros(), cutter.lifeHoles) *
                                              Fraction::of(m_takes.holes));
        }
        m_write.close(node);
    }

    void overhead() {
        const auto& rates = m_book.shop.rates;
        if (rates.overheadPerMonth.isZero()) return;
        const auto node = m_write.open(Part::Overhead);
        const auto share = [&](units::Duration time) {
            return rates.overheadPerMonth.exact() *
                   Fraction::ratio(time.milliseconds(), rates.productivePerMonth.milliseconds());
        };
        if (const auto once = m_sheet.bench.oncePerJob(); !once.isZero())
            m_sheet.setUp += m_write.leaf(Part::OverheadOnce, 0, share(once));
        m_work += m_write.leaf(Part::OverheadPieces, 0, share(m_sheet.bench.forPieces()));
        m_write.close(node);
    }

    void spoilage() {
        m_sheet.outOfPocket += m_materials;
        const auto share = m_book.shop.rates.spoilage;
        if (share.isZero()) return;
        const auto node = m_write.open(Part::Spoilage);
        const Money materials = m_line.customersGarment ? m_spoiledStones : m_materials + m_machine;
        const Money work = m_line.customersGarment ? m_pieceLabour : m_work;
        m_sheet.outOfPocket += m_write.leaf(Part::SpoiledMaterials, 0, materials.exact() * lostShare(share));
        m_write.leaf(Part::SpoiledWork, 0, work.exact() * lostShare(share));
        if (m_line.customersGarment)
            m_sheet.outOfPocket += m_write.leaf(
                Part::GarmentAllowance, 0, m_book.shop.rates.garmentAllowance.exact() * m_pieces * lostShare(share));
        m_write.close(node);
    }

    /// (net + fixed) / (1 − rate) keeps `net` after the fee; the fee is what that adds.
    void cardFee(Money fixed) {
        const auto& fee = m_book.shop.rules.cardFee;
        if (!fee.charged) return;
        const Money net = m_write.sumSoFar();
        const Fraction charged = (net + fixed).exact() * Fraction::ratio(units::kPpm, units::kPpm - fee.rate.ppm());
        m_sheet.outOfPocket += m_write.leaf(Part::CardFee, 0, charged - net.exact());
    }

    const catalogue::OrderLine& m_line;
    const catalogue::PriceBook& m_book;
    const needs::Requirements& m_takes;
    const Fraction m_pieces;
    const catalogue::PricedMaterial* m_base;     ///< none under the customer's own garment
    const catalogue::PricedMaterial* m_tape;     ///< none where the shop charges none
    const catalogue::PricedMaterial* m_template; ///< likewise
    LineCost& m_sheet;
    Writer m_write;
    Money m_materials;     ///< what goes into the pieces: lost with a spoiled one
    Money m_spoiledStones; ///< the stones among them
    Money m_machine;       ///< running the press for the pieces
    Money m_work;          ///< labour, wear and overhead of the pieces
    Money m_pieceLabour;   ///< the labour among it
};

base::Done checkShop(const catalogue::PriceBook& book) {
    const auto& rates = book.shop.rates;
    const auto bad = [](std::string subject, std::string detail) {
        return base::fail(base::Code::OutOfRange, std::move(subject), std::move(detail));
    };
    if (!rates.overheadPerMonth.isZero() && rates.productivePerMonth <= units::Duration{})
        return bad("productive hours", "The month has no productive hours to carry the overhead; give them in Shop.");
    if (rates.spoilage.isNegative() || rates.spoilage.ppm() >= units::kPpm)
        return bad("spoilage", "Spoilage must be from 0 to below 100 %; correct it in Shop.");
    const auto& fee = book.shop.rules.cardFee;
    if (fee.charged && (fee.rate.isNegative() || fee.rate.ppm() >= units::kPpm))
        return bad("card fee", "The card fee must be from 0 to below 100 %; correct it in Shop.");
    if (book.bench.press.lifePresses < 1 || book.bench.cutter.lifeHoles < 1)
        return bad("wear", "A machine must be reckoned to last at least one use; correct its life in Shop.");
    return {};
}

base::Done cost(const catalogue::OrderLine& line, const catalogue::PriceBook& book, layout::FitMemo& fits,
                Money cardFixed, LineCost& sheet, std::vector<CostNode>* nodes) {
    try {
        const auto takes = needs::requirementsOf(line, book, line.quantity.value(), fits);
        if (!takes) return base::fail(takes.error());
        if (auto ok = checkShop(book); !ok) return ok;
        LineCoster(line, book, *takes, sheet, nodes).cost(cardFixed);
        return {};
    } catch (const base::Overflow&) {
        return base::fail(base::Code::TooLarge, line.title,
                          fmt::format("{} comes to more money than this program reckons with; check its pieces, "
                                      "stones and prices.",
                                      line.title));
    }
}

} // namespace

base::Result<CostSheet> costLine(const catalogue::OrderLine& line, const catalogue::PriceBook& book,
                                 layout::FitMemo& fits, Money cardFixed) {
    CostSheet sheet;
    if (auto ok = cost(line, book, fits, cardFixed, sheet, &sheet.nodes); !ok) return base::fail(ok.error());
    return sheet;
}

base::Result<LineCost> costFigures(const catalogue::OrderLine& line, const catalogue::PriceBook& book,
                                   layout::FitMemo& fits, Money cardFixed) {
    LineCost figures;
    if (auto ok = cost(line, book, fits, cardFixed, figures, nullptr); !ok) return base::fail(ok.error());
    return figures;
}

} // namespace sp::costing

// SPDX-License-Identifier: MIT
#include "core/costing/cost_line.h"

#include "core/base/overflow.h"
#include "core/costing/line_check.h"
#include "core/costing/sheet_use.h"

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
    LineCoster(const catalogue::OrderLine& line, const catalogue::PriceBook& book, const LineMaterials& materials,
               layout::FitMemo& fits, LineCost& sheet, std::vector<CostNode>* nodes)
        : m_line(line)
        , m_book(book)
        , m_fits(fits)
        , m_pieces(Fraction::of(line.quantity.value()))
        , m_found(materials)
        , m_base(materials.base)
        , m_tape(materials.tape)
        , m_template(materials.templates)
        , m_sheet(sheet)
        , m_write(nodes) {}

    base::Done cost(Money cardFixed) {
        if (auto ok = planSheets(); !ok) return ok;
        m_sheet.bench = benchTime(m_book.bench, m_line);
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
        return {};
    }

  private:
    bool onBlank() const { return !m_base || m_base->material.kind == catalogue::MaterialKind::Blank; }

    base::Done planSheets() {
        const auto quantity = m_line.quantity.value();
        if (m_tape) {
            const auto& tape = m_tape->material;
            const auto lifts = std::max<std::int64_t>(1, tape.sheet.lifts);
            if (auto ok = plan(m_sheet.tape, tape, (quantity + lifts - 1) / lifts); !ok) return ok;
        }
        if (m_template && !m_line.templatesOnWall)
            if (auto ok =
                    plan(m_sheet.templates, m_template->material, static_cast<std::int64_t>(m_line.stones.size()));
                !ok)
                return ok;
        units::Length border;
        if (!onBlank()) {
            const auto& backing = m_base->material;
            if (auto ok = plan(m_sheet.base, backing, quantity); !ok) return ok;
            border = backing.sheet.border;
        }
        const auto use = useOfPress(m_book.bench.press, m_line.width + border + border, m_line.height + border + border,
                                    onBlank(), m_fits);
        if (!use) return base::fail(use.error());
        m_sheet.piecesPerPress = use->piecesPerPress;
        m_sheet.pressesPerPiece = use->pressesPerPiece;
        m_sheet.cycles = (quantity + use->piecesPerPress - 1) / use->piecesPerPress * use->pressesPerPiece;
        return {};
    }

    base::Done plan(SheetUse& use, const catalogue::Material& material, std::int64_t pieces) {
        const auto planned = useOfSheet(material, m_line.width, m_line.height, pieces, m_fits);
        if (!planned) return base::fail(planned.error());
        use = *planned;
        return {};
    }

    void stones() {
        const auto node = m_write.open(Part::Stones);
        for (std::size_t i = 0; i < m_line.stones.size(); ++i) {
            const auto& stone = m_line.stones[i];
            const auto& material = *m_found.stones[i];
            const Fraction taken = Fraction::of(stone.count.value()) * m_pieces *
                                   Fraction::ratio(units::kPpm, units::kPpm - material.material.stone.loss.ppm());
            m_write.leaf(Part::Stone, i, taken * material.price->each());
        }
        m_materials += m_spoiledStones = m_write.close(node);
    }

    void sheets() {
        if (m_tape) {
            const Fraction shares =
                m_pieces * Fraction::ratio(1, std::max<std::int64_t>(1, m_tape->material.sheet.lifts));
            m_materials += m_write.leaf(Part::Tape, 0, costOfUse(m_sheet.tape, *m_tape, shares));
        }
        if (m_template) {
            Fraction cost;
            if (!m_line.templatesOnWall) {
                cost = costOfUse(m_sheet.templates, *m_template, Fraction::of(m_sheet.templates.cut));
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
        if (!onBlank()) return m_write.leaf(Part::Base, 0, costOfUse(m_sheet.base, material, m_pieces));
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
        const auto& items = m_found.packing;
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
        m_seconds = m_pieces * Fraction::ratio(press.secondPressShare.ppm(), units::kPpm);
        if (!press.secondPressShare.isZero())
            m_machine += m_write.leaf(Part::SecondPress, 0, machine(m_seconds, press.secondDwell + press.handling));
        if (!press.warmUp.isZero()) m_write.leaf(Part::WarmUp, 0, machine(Fraction::of(1), press.warmUp));
        if (press.testPresses > 0) m_write.leaf(Part::TestPress, 0, machine(Fraction::of(press.testPresses), cycle));
        m_sheet.outOfPocket += m_write.close(node);
    }

    void wear() {
        const auto& press = m_book.bench.press;
        const auto& cutter = m_book.bench.cutter;
        const auto node = m_write.open(Part::Wear);
        const Fraction perPress = Fraction::ratio((press.price - press.salvage).micros(), press.lifePresses);
        const Fraction presses = Fraction::of(m_sheet.cycles) + m_seconds;
        m_work += Money::fromExact(perPress * presses);
        m_write.leaf(Part::PressWear, 0, perPress * (presses + Fraction::of(press.testPresses)));
        if (!m_line.templatesOnWall) {
            units::Int128 holes = 0;
            for (const auto& stone : m_line.stones) holes += stone.count.value();
            m_sheet.setUp += m_write.leaf(Part::CutterWear, 0,
                                          Fraction::ratio((cutter.price - cutter.salvage).micros(), cutter.lifeHoles) *
                                              Fraction::of(holes));
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
    layout::FitMemo& m_fits;
    const Fraction m_pieces;
    const LineMaterials& m_found;
    const catalogue::PricedMaterial* m_base;     ///< none under the customer's own garment
    const catalogue::PricedMaterial* m_tape;     ///< none where the shop charges none
    const catalogue::PricedMaterial* m_template; ///< likewise
    LineCost& m_sheet;
    Writer m_write;
    Fraction m_seconds;    ///< second presses
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
    const auto materials = checkLine(line, book);
    if (!materials) return base::fail(materials.error());
    if (auto ok = checkShop(book); !ok) return ok;
    try {
        return LineCoster(line, book, *materials, fits, sheet, nodes).cost(cardFixed);
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

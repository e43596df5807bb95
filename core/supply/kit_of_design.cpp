// SPDX-License-Identifier: MIT
#include "core/supply/kit_of_design.h"

#include "core/needs/material_need.h"
#include "core/needs/sheet_use.h"
#include "core/supply/messages.h"

#include <algorithm>
#include <string>

namespace sp::supply {

using base::Code;
using base::Result;
using catalogue::Design;
using catalogue::Kit;
using catalogue::MaterialKind;
using catalogue::PricedMaterial;
using units::Count;

namespace {

/// Stones of that material on one piece.
Count takenOf(const Design& design, const base::Id& material) {
    Count count;
    for (const auto& stone : design.stones)
        if (stone.material == material) count += stone.count;
    return count;
}

/// One piece of the design, with the colours that it has stones of.
catalogue::OrderLine pieceOf(const Design& design, bool templatesCut) {
    auto line = catalogue::lineOf(design);
    line.first().templatesOnWall = templatesCut;
    std::erase_if(line.first().stones, [](const catalogue::StoneCount& stone) { return stone.count.value() <= 0; });
    return line;
}

Result<std::int64_t> piecesOnSheet(const catalogue::Material& material, const Design& design, layout::FitMemo& fits) {
    const auto fit = needs::piecesPerSheet(material, design.width, design.height, fits);
    if (!fit && fit.error().code == Code::TooLarge) return 0;
    return fit;
}

class Unpacking {
  public:
    Unpacking(const Kit& kit, Count kits, bool templatesCut, const Design& design, const catalogue::PriceBook& prices,
              layout::FitMemo& fits)
        : m_kit(kit)
        , m_kits(kits.value())
        , m_templatesCut(templatesCut || design.templatesOnWall)
        , m_design(design)
        , m_piece(pieceOf(design, m_templatesCut))
        , m_prices(prices)
        , m_fits(fits) {}

    Result<YieldProblem> run() {
        if (m_piece.first().stones.empty()) return base::fail(Fault::DesignWithoutStones, m_design.name, m_design.name);
        const auto& each = m_templatesCut && m_kit.priceWithTemplates && !m_design.templatesOnWall
                               ? *m_kit.priceWithTemplates
                               : m_kit.price;
        m_problem.price = units::Money::fromMicros(each.micros() * m_kits);
        for (const auto& stone : m_design.stones)
            if (auto added = addStone(stone.material); !added) return base::fail(added.error());
        for (const auto kind : {MaterialKind::Tape, MaterialKind::Template, MaterialKind::Backing})
            if (auto added = addSheets(kind); !added) return base::fail(added.error());
        for (const auto& item : m_kit.items)
            if (auto added = addOther(item.material); !added) return base::fail(added.error());
        return std::move(m_problem);
    }

  private:
    Result<const PricedMaterial*> known(const base::Id& id) const {
        if (const auto* found = m_prices.find(id)) return found;
        return base::fail(Fault::KitMaterialGone, m_kit.name, m_kit.name);
    }
    Count inKits(const base::Id& material) const {
        std::int64_t count = 0;
        for (const auto& item : m_kit.items)
            if (item.material == material) count += item.count.value() * m_kits;
        return Count::of(count);
    }
    bool isThere(const std::string& material) const {
        return std::any_of(m_problem.lines.begin(), m_problem.lines.end(),
                           [&](const YieldLine& line) { return line.material == material; });
    }

    base::Done addStone(const base::Id& id) {
        const auto material = known(id);
        if (!material) return base::fail(material.error());
        const auto& stone = (*material)->material;
        if (isThere(stone.name)) return {};
        const auto need = needs::needOfStone(takenOf(m_design, id), stone);
        m_problem.lines.push_back({stone.name, CountedStock{inKits(id), m_kit.shortCount, need.loss, need.perPiece},
                                   std::nullopt, (*material)->price});
        return {};
    }

    /// Cuts that one piece, of templates the design, takes of sheets of that kind.
    std::int64_t cutsOf(MaterialKind kind) const {
        if (kind == MaterialKind::Tape) return 1;
        if (kind == MaterialKind::Template) return needs::cutsFor(needs::needOfTemplates(m_piece.first()), 1);
        const auto* base = m_prices.find(m_design.usualBase);
        return base != nullptr ? needs::cutsFor(needs::needOfBase(base->material), 1) : 0;
    }

    base::Done addSheets(MaterialKind kind) {
        YieldLine line;
        line.sheets = SheetStock{{}, Count::of(cutsOf(kind)), kind == MaterialKind::Template};
        for (const auto& item : m_kit.items) {
            const auto material = known(item.material);
            if (!material) return base::fail(material.error());
            const auto& sheet = (*material)->material;
            if (sheet.kind != kind) continue;
            const auto fit = piecesOnSheet(sheet, m_design, m_fits);
            if (!fit) return base::fail(fit.error());
            line.material = line.material.empty() ? sheet.name : std::string(catalogue::nameOf(kind));
            line.bulk = line.sheets->lots.empty() ? (*material)->price : std::nullopt;
            line.sheets->lots.push_back({inKits(item.material), Count::of(*fit),
                                         Count::of(kind == MaterialKind::Tape ? needs::needOfTape(sheet).lifts : 1)});
        }
        if (line.sheets->lots.empty()) {
            if (line.sheets->perPiece.value() == 0) return {};
            line.material = catalogue::nameOf(kind);
            line.sheets->lots.push_back({Count::of(0), Count::of(0), Count::of(1)});
        }
        m_problem.lines.push_back(std::move(line));
        return {};
    }

    /// Of a blank, or of what a piece is packed in. What goes once with an order limits no number of pieces.
    Count thingsAPiece(const base::Id& id) const {
        if (id == m_design.usualBase) return Count::of(1);
        Count count;
        for (const auto& use : catalogue::packingOf(m_piece, m_prices.shop.packing))
            if (use.material == id && use.per == catalogue::PackingPer::Piece) count += use.amount;
        return count;
    }

    base::Done addOther(const base::Id& id) {
        const auto material = known(id);
        if (!material) return base::fail(material.error());
        const auto& thing = (*material)->material;
        if (thing.kind == MaterialKind::Stone) return addStone(id);
        if (thing.kind != MaterialKind::Blank && thing.kind != MaterialKind::Packing) return {};
        m_problem.lines.push_back(
            {thing.name, CountedStock{inKits(id), {}, {}, thingsAPiece(id)}, std::nullopt, (*material)->price});
        return {};
    }

    const Kit& m_kit;
    std::int64_t m_kits;
    bool m_templatesCut;
    const Design& m_design;
    const catalogue::OrderLine m_piece;
    const catalogue::PriceBook& m_prices;
    layout::FitMemo& m_fits;
    YieldProblem m_problem;
};

} // namespace

Result<YieldProblem> yieldProblemOf(const Kit& kit, Count kits, bool templatesCut, const Design& design,
                                    const catalogue::PriceBook& prices, layout::FitMemo& fits) {
    if (kits.value() < 1 || kits.value() > 1'000) return base::fail(Fault::KitsOutOfRange, kit.name);
    return Unpacking(kit, kits, templatesCut, design, prices, fits).run();
}

} // namespace sp::supply

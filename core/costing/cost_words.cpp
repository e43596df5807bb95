// SPDX-License-Identifier: MIT
#include "core/costing/cost_words.h"

#include <fmt/format.h>

#include <algorithm>

namespace sp::costing {

namespace {

using catalogue::PricedMaterial;
using catalogue::Step;
using units::Count;
using units::Money;

class Words {
  public:
    Words(const catalogue::OrderLine& line, const catalogue::PriceBook& book, const CostSheet& sheet,
          const units::NumberStyle& style)
        : m_line(line)
        , m_book(book)
        , m_sheet(sheet)
        , m_style(style) {}

    std::string label(const CostNode& node) const;
    std::string rule(const CostNode& node) const;

  private:
    std::string money(Money amount) const { return units::formatMoney(amount, m_book.shop.currency, m_style); }
    /// With as many decimals as it has.
    std::string exact(Money amount) const {
        const auto minor = m_book.shop.currency.microsPerMinor();
        return amount.micros() % minor == 0 ? money(amount) : units::formatExact(amount, m_book.shop.currency);
    }
    std::string count(std::int64_t n) const { return units::formatCount(Count::of(n), m_style); }
    std::string percent(units::Rate rate) const { return units::formatRate(rate, m_style) + " %"; }
    std::string time(units::Duration span) const { return units::formatDuration(span, m_style); }
    std::string length(units::Length length) const {
        const auto unit = m_book.shop.lengthUnit;
        return fmt::format("{} {}", units::formatLength(length, unit, m_style), units::nameOf(unit));
    }
    std::string counted(std::int64_t n, std::string_view thing) const {
        return fmt::format("{} {}{}", count(n), thing, n == 1 ? "" : "s");
    }
    std::string pieces() const { return counted(m_line.quantity.value(), "piece"); }
    const PricedMaterial& priced(const base::Id& id) const { return *m_book.find(id); }
    std::string price(const PricedMaterial& material) const {
        const auto per = material.price->per.value();
        const auto amount = exact(material.price->price);
        return per == 1 ? amount : fmt::format("{} / {}", amount, count(per));
    }
    std::string from(const PricedMaterial& material) const {
        return material.priceFrom.empty() ? std::string() : fmt::format(" ({})", material.priceFrom);
    }
    std::string rate() const { return money(m_book.shop.rates.labourPerHour) + " an hour"; }

    std::string sheetRule(const needs::SheetUse& use, const PricedMaterial& material, const std::string& what) const;
    std::string tapeRule() const;
    std::string templateRule() const;
    std::string stepRule(Step step) const;
    std::string pressRule(Part part) const;
    std::string wearRule(Part part) const;
    std::string spoilageRule(Part part) const;
    std::string cardFeeRule() const;

    const catalogue::OrderLine& m_line;
    const catalogue::PriceBook& m_book;
    const CostSheet& m_sheet;
    const units::NumberStyle& m_style;
};

std::string Words::label(const CostNode& node) const {
    switch (node.part) {
    case Part::Job: return m_line.title.empty() ? "This job" : m_line.title;
    case Part::Stones: return "Stones";
    case Part::Stone: return priced(m_line.stones[node.index].material).material.name;
    case Part::Tape: return "Tape";
    case Part::Template: return "Templates";
    case Part::Base: return priced(m_line.onto).material.kind == catalogue::MaterialKind::Blank ? "Blanks" : "Backing";
    case Part::BasePrice: return priced(m_line.onto).material.name;
    case Part::SizeExtra: return fmt::format("Extra for size {}", m_line.sizes[node.index].size);
    case Part::Packing: return "Packing";
    case Part::PackingItem: return priced(m_book.shop.packing[node.index]).material.name;
    case Part::Labour: return "Bench labour";
    case Part::LabourStep: {
        std::string name(catalogue::nameOf(static_cast<Step>(node.index)));
        name[0] = static_cast<char>(name[0] - 'a' + 'A');
        return name;
    }
    case Part::Press: return "Press";
    case Part::PressCycles: return "Press cycles";
    case Part::SecondPress: return "Second presses";
    case Part::WarmUp: return "Warm-up";
    case Part::TestPress: return "Test presses";
    case Part::Wear: return "Machine wear";
    case Part::PressWear: return "Press wear";
    case Part::CutterWear: return "Cutter wear";
    case Part::Overhead: return "Overhead";
    case Part::OverheadOnce: return "On the set-up";
    case Part::OverheadPieces: return "On the pieces";
    case Part::Spoilage: return "Spoilage";
    case Part::SpoiledMaterials: return m_line.customersGarment ? "Stones lost" : "Materials lost";
    case Part::SpoiledWork: return m_line.customersGarment ? "Labour lost" : "Work lost";
    case Part::GarmentAllowance: return "Replacing garments";
    case Part::CardFee: return "Card fee";
    }
    return {};
}

std::string Words::sheetRule(const needs::SheetUse& use, const PricedMaterial& material,
                             const std::string& what) const {
    const auto& sheet = material.material.sheet;
    if (sheet.form == catalogue::SheetForm::Roll)
        return fmt::format("{}: {} off a roll of {} × {}{}", what, length(use.rollLength), length(sheet.height),
                           price(material), from(material));
    if (sheet.basis == catalogue::ShareBasis::WholeSheets)
        return fmt::format("{}, {} to a sheet: {} × {}{}", what, count(use.perSheet), counted(use.sheets, "sheet"),
                           price(material), from(material));
    return fmt::format("{} ÷ {} to a sheet × {}{}", what, count(use.perSheet), price(material), from(material));
}

std::string Words::tapeRule() const {
    const auto& tape = priced(m_book.shop.usualTape);
    const auto lifts = std::max<std::int64_t>(1, tape.material.sheet.lifts);
    const std::string shared = fmt::format("{} ÷ {} of a piece of tape", pieces(), counted(lifts, "lift"));
    const bool byPosition = tape.material.sheet.form == catalogue::SheetForm::Sheet &&
                            tape.material.sheet.basis == catalogue::ShareBasis::ByPosition;
    return sheetRule(m_sheet.tape, tape,
                     byPosition ? shared : fmt::format("{} = {} of tape", shared, count(m_sheet.tape.cut)));
}

std::string Words::templateRule() const {
    if (m_line.templatesOnWall) return "the templates hang on the wall: nothing to cut";
    const auto whole = sheetRule(m_sheet.templates, priced(m_book.shop.usualTemplate),
                                 counted(m_sheet.templates.cut, "template") + ", one for each colour");
    if (!m_line.plannedPieces) return whole;
    return fmt::format("{}, × {} of {} planned pieces", whole,
                       count(std::min(m_line.quantity.value(), m_line.plannedPieces->value())),
                       count(m_line.plannedPieces->value()));
}

std::string Words::stepRule(Step step) const {
    const auto& standard = m_book.bench.of(step);
    const auto spent = time(m_sheet.bench.of(step));
    std::string how;
    const auto add = [&](units::Duration span, const std::string& what) {
        if (span.isZero()) return;
        if (!how.empty()) how += " + ";
        how += fmt::format("{} {}", time(span), what);
    };
    const auto colours = static_cast<std::int64_t>(m_line.stones.size());
    const bool once = catalogue::isOncePerJob(step);
    add(step == Step::Art && m_line.artTime ? *m_line.artTime : standard.perJob, "a job");
    if (!once) add(standard.perPiece, "a piece");
    add(standard.perColour, fmt::format("a colour × {}", count(colours)));
    add(standard.per100Stones, "for 100 stones");
    if (!once) how += fmt::format(", {}", pieces());
    if (!once && standard.learning.ppm() != units::kPpm)
        how += fmt::format(", learning {}", percent(standard.learning));
    return fmt::format("{} = {} × {}", how, spent, rate());
}

std::string Words::pressRule(Part part) const {
    const auto& press = m_book.bench.press;
    const auto cycle = fmt::format("({} dwell + {} handling)", time(press.dwell), time(press.handling));
    const auto hourly = money(press.runningPerHour) + " an hour";
    if (part == Part::PressCycles) {
        const auto how =
            m_sheet.pressesPerPiece > 1
                ? fmt::format("{} × {} presses each, larger than the platen", pieces(), count(m_sheet.pressesPerPiece))
                : fmt::format("{}, {} at once", pieces(), count(m_sheet.piecesPerPress));
        return fmt::format("{} = {} × {} × {}", how, counted(m_sheet.cycles, "cycle"), cycle, hourly);
    }
    if (part == Part::SecondPress)
        return fmt::format("{} of {} × ({} dwell + {} handling) × {}", percent(press.secondPressShare), pieces(),
                           time(press.secondDwell), time(press.handling), hourly);
    if (part == Part::WarmUp) return fmt::format("{} × {}", time(press.warmUp), hourly);
    return fmt::format("{} × {} × {}", count(press.testPresses), cycle, hourly);
}

std::string Words::wearRule(Part part) const {
    if (part == Part::PressWear) {
        const auto& press = m_book.bench.press;
        return fmt::format("({} − {} salvage) ÷ {} presses × ({} + {} of {} pressed twice + {})", money(press.price),
                           money(press.salvage), count(press.lifePresses), counted(m_sheet.cycles, "cycle"),
                           percent(press.secondPressShare), count(m_line.quantity.value()),
                           counted(press.testPresses, "test"));
    }
    const auto& cutter = m_book.bench.cutter;
    std::int64_t holes = 0;
    for (const auto& stone : m_line.stones) holes += stone.count.value();
    return fmt::format("({} − {} salvage) ÷ {} holes × {} holes", money(cutter.price), money(cutter.salvage),
                       count(cutter.lifeHoles), count(holes));
}

std::string Words::spoilageRule(Part part) const {
    const auto share = m_book.shop.rates.spoilage;
    const auto lost = fmt::format("× (1 ÷ (1 − {}) − 1)", percent(share));
    if (part == Part::GarmentAllowance)
        return fmt::format("{} × {} for replacing one {}", pieces(), money(m_book.shop.rates.garmentAllowance), lost);
    const bool materials = part == Part::SpoiledMaterials;
    if (m_line.customersGarment) return fmt::format("the {} of the pieces {}", materials ? "stones" : "labour", lost);
    return fmt::format("{} of the pieces {}",
                       materials ? "stones, tape, base, packing and pressing" : "labour, wear and overhead", lost);
}

std::string Words::cardFeeRule() const {
    const auto& fee = m_book.shop.rules.cardFee;
    return fmt::format("(all the above + share of {} fixed) ÷ (1 − {}), less all the above", exact(fee.fixed),
                       percent(fee.rate));
}

std::string Words::rule(const CostNode& node) const {
    const auto& rates = m_book.shop.rates;
    const auto overhead = [&](units::Duration span) {
        return fmt::format("{} × {} a month ÷ {} of bench time", time(span), money(rates.overheadPerMonth),
                           time(rates.productivePerMonth));
    };
    switch (node.part) {
    case Part::Job: return fmt::format("{}: the sum of the parts", pieces());
    case Part::Stone: {
        const auto& stone = m_line.stones[node.index];
        const auto& material = priced(stone.material);
        const auto loss = material.material.stone.loss;
        return fmt::format("{} a piece × {}{} × {}{}", count(stone.count.value()), pieces(),
                           loss.isZero() ? std::string() : fmt::format(" ÷ (1 − {} loss)", percent(loss)),
                           price(material), from(material));
    }
    case Part::Tape: return tapeRule();
    case Part::Template: return templateRule();
    case Part::Base:
        if (priced(m_line.onto).material.kind == catalogue::MaterialKind::Blank) return "the sum of the parts";
        return sheetRule(m_sheet.base, priced(m_line.onto), pieces());
    case Part::BasePrice:
        return fmt::format("{} × {}{}", pieces(), price(priced(m_line.onto)), from(priced(m_line.onto)));
    case Part::SizeExtra: {
        const auto& size = m_line.sizes[node.index];
        for (const auto& row : priced(m_line.onto).material.sizes)
            if (row.name == size.size)
                return fmt::format("{} of {} × {}", count(size.count.value()), size.size, exact(row.extraCost));
        return {};
    }
    case Part::PackingItem: {
        const auto& item = priced(m_book.shop.packing[node.index]);
        return fmt::format("{} × {}{}", pieces(), price(item), from(item));
    }
    case Part::LabourStep: return stepRule(static_cast<Step>(node.index));
    case Part::Labour: return fmt::format("{} at the bench × {}", time(m_sheet.bench.total()), rate());
    case Part::PressCycles:
    case Part::SecondPress:
    case Part::WarmUp:
    case Part::TestPress: return pressRule(node.part);
    case Part::PressWear:
    case Part::CutterWear: return wearRule(node.part);
    case Part::OverheadOnce: return overhead(m_sheet.bench.oncePerJob());
    case Part::OverheadPieces: return overhead(m_sheet.bench.forPieces());
    case Part::SpoiledMaterials:
    case Part::SpoiledWork:
    case Part::GarmentAllowance: return spoilageRule(node.part);
    case Part::CardFee: return cardFeeRule();
    case Part::Spoilage: return fmt::format("{} of the pieces made cannot be sold", percent(rates.spoilage));
    case Part::Stones:
    case Part::Packing:
    case Part::Press:
    case Part::Wear:
    case Part::Overhead: return "the sum of the parts";
    }
    return {};
}

} // namespace

CostTree explain(const catalogue::OrderLine& line, const catalogue::PriceBook& book, const CostSheet& sheet,
                 const units::NumberStyle& style) {
    const Words words(line, book, sheet, style);
    CostTree root;
    std::vector<CostTree*> path; // the open node at each depth
    for (const auto& node : sheet.nodes) {
        CostTree tree{node.part, words.label(node), node.amount, words.rule(node), {}};
        if (node.depth == 0) {
            root = std::move(tree);
            path.assign(1, &root);
            continue;
        }
        path.resize(node.depth);
        auto& siblings = path.back()->children;
        siblings.push_back(std::move(tree));
        path.push_back(&siblings.back());
    }
    return root;
}

} // namespace sp::costing

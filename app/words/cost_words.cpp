// SPDX-License-Identifier: MIT
#include "app/words/cost_words.h"

#include "app/words/names.h"
#include "app/words/sheet_words.h"
#include "app/words/shown.h"
#include "core/base/ensure.h"
#include "core/needs/line_check.h"
#include "core/needs/material_need.h"
#include "core/units/apportion.h"

#include <QCoreApplication>

#include <algorithm>
#include <span>

namespace sp::words {

namespace {

using catalogue::PricedMaterial;
using catalogue::Step;
using costing::CostNode;
using costing::Formula;
using costing::Operand;
using costing::Part;
using units::Count;
using units::Duration;
using units::Money;

class CostWords {
    Q_DECLARE_TR_FUNCTIONS(CostWords)

  public:
    CostWords(const catalogue::OrderLine& line, const catalogue::PriceBook& book, const costing::CostSheet& sheet,
              const units::NumberStyle& style, const supply::PackOffers* offers)
        : m_line(line)
        , m_book(book)
        , m_sheet(sheet)
        , m_style(style)
        , m_offers(offers) {
        for (std::size_t place = 0; place < line.places.size(); ++place)
            for (std::size_t row = 0; row < line.places[place].stones.size(); ++row) m_stones.push_back({place, row});
    }

    QString label(const CostNode& node) const;
    QString rule(const CostNode& node) const;

  private:
    QString plain(Money amount) const { return shown(units::formatMoney(amount, m_book.shop.currency, m_style)); }
    /// With as many decimals as it has.
    QString exact(Money amount) const {
        const bool isWhole = units::toMinor(amount.exact(), m_book.shop.currency) == amount;
        return isWhole ? plain(amount) : shown(units::formatExact(amount, m_book.shop.currency));
    }
    QString plain(Count n) const { return shown(units::formatCount(n, m_style)); }
    QString plain(units::Rate rate) const { return tr("%1 %").arg(shown(units::formatRate(rate, m_style))); }
    QString plain(Duration span) const { return shown(units::formatDuration(span, m_style)); }
    QString plain(units::Length length) const {
        const auto unit = m_book.shop.lengthUnit;
        return QStringLiteral("%1 %2").arg(shown(units::formatLength(length, unit, m_style)),
                                           shown(std::string(units::nameOf(unit))));
    }
    QString plain(const units::UnitPrice& price) const {
        const auto amount = exact(price.price);
        return price.per == Count::of(1) ? amount : QStringLiteral("%1 / %2").arg(amount, plain(price.per));
    }
    QString plain(const costing::PerHour& rate) const { return tr("%1 an hour").arg(plain(rate.price)); }

    /// The operand's value, of which the formula must have one.
    template<class Value>
    static const Value& of(const CostNode& node, Operand name) {
        const auto* value = node.formula.find(name);
        base::ensure(value != nullptr, "a rule in words names only operands of its formula");
        return std::get<Value>(*value);
    }
    template<class Value>
    QString in(const CostNode& node, Operand name) const {
        return plain(of<Value>(node, name));
    }

    QString pieces(Count n) const { return counted(Thing::Piece, n.value(), plain(n)); }
    QString pieces(const CostNode& node) const { return pieces(of<Count>(node, Operand::Pieces)); }
    QString sheets(Count n) const { return counted(Thing::Sheet, n.value(), plain(n)); }
    QString lifts(Count n) const { return counted(Thing::Lift, n.value(), plain(n)); }
    QString templates(Count n) const { return counted(Thing::Template, n.value(), plain(n)); }
    QString cycles(Count n) const { return counted(Thing::Cycle, n.value(), plain(n)); }
    QString tests(Count n) const { return counted(Thing::TestPress, n.value(), plain(n)); }

    const PricedMaterial& priced(const base::Id& id) const { return *m_book.find(id); }
    /// The price with where it is from: "9.99 / 1,440 (sample supplier)".
    QString price(const CostNode& node, const PricedMaterial& material) const {
        const auto amount = in<units::UnitPrice>(node, Operand::Price);
        QStringList from;
        if (const auto origin = originInWords(material.origin); !origin.isEmpty()) from << origin;
        from << packsInWords(material);
        return from.isEmpty() ? amount : QStringLiteral("%1 (%2)").arg(amount, from.join(QStringLiteral("; ")));
    }
    QStringList packsInWords(const PricedMaterial& material) const;
    QString originInWords(const catalogue::PriceOrigin& origin) const;
    /// A part of one place; of a line with several the place is said.
    QString atPlace(const QString& label, std::size_t place) const {
        if (m_line.places.size() < 2) return label;
        return tr("%1, %2", "a part of the cost and the place it is for").arg(label, atPlace(place));
    }
    QString atPlace(std::size_t place) const {
        const auto& there = m_line.places[place];
        return shown(there.place.empty() ? needs::titleOf(m_line, there) : there.place);
    }
    const PricedMaterial& stoneOf(const CostNode& node) const {
        const auto& [place, row] = m_stones[node.index];
        return priced(m_line.places[place].stones[row].material);
    }
    bool isOnBlank() const { return priced(m_line.baseMaterial).material.kind == catalogue::MaterialKind::Blank; }

    const std::vector<catalogue::PackingUse>& packingUses() const {
        return catalogue::packingOf(m_line, m_book.shop.packing);
    }
    const PricedMaterial& packing(const CostNode& node) const { return priced(packingUses()[node.index].material); }
    QStringList orderPacking() const;
    bool hasFreight() const {
        return std::ranges::any_of(m_sheet.nodes, [](const CostNode& node) { return node.part == Part::Freight; });
    }
    QString stepName(Step step) const;
    QString stoneRule(const CostNode& node) const;
    QString sheetRule(const CostNode& node, const PricedMaterial& material, const QString& what) const;
    QString tapeRule(const CostNode& node) const;
    QString templateRule(const CostNode& node) const;
    QString setRule(const CostNode& node) const;
    /// Whether what is done once for the set of a place is done by this line.
    bool isWorkedOn(std::size_t place) const {
        const bool isPaidOff =
            !m_sheet.sets.empty() && !m_sheet.sets[place].planned.isZero() && m_sheet.sets[place].holdsWork;
        return !m_line.places[place].templatesOnWall && !isPaidOff;
    }
    /// Where lines share a set, what of it this one bears.
    QString ofSet(const CostNode& node, const QString& whole) const {
        if (!node.formula.find(Operand::SetPieces)) return whole;
        return tr("%1, × %2 of the %3 pieces that share the set")
            .arg(whole, in<Count>(node, Operand::Pieces), in<Count>(node, Operand::SetPieces));
    }
    QString timesAt(Step step, std::span<const catalogue::Placement> places) const;
    QString stepRule(const CostNode& node) const;
    QString cycleRule(const CostNode& node) const;
    QString oneCycle(const CostNode& node, Operand dwell) const {
        return tr("(%1 dwell + %2 handling)").arg(in<Duration>(node, dwell), in<Duration>(node, Operand::Handling));
    }
    QString running(const CostNode& node) const { return in<costing::PerHour>(node, Operand::PressRunning); }
    QString pressWearRule(const CostNode& node) const;
    QString cutterWearRule(const CostNode& node) const;
    QString overheadRule(const CostNode& node) const {
        return tr("%1 × %2 a month ÷ %3 of bench time")
            .arg(in<Duration>(node, Operand::BenchTime), in<Money>(node, Operand::OverheadPerMonth),
                 in<Duration>(node, Operand::ProductivePerMonth));
    }
    QString spoilageRule(const CostNode& node) const;
    QString freightRule(const CostNode& node) const;

    const catalogue::OrderLine& m_line;
    const catalogue::PriceBook& m_book;
    const costing::CostSheet& m_sheet;
    const units::NumberStyle& m_style;
    const supply::PackOffers* m_offers; ///< may be null
    struct StoneAt {
        std::size_t place;
        std::size_t row;
    };
    std::vector<StoneAt> m_stones; ///< as the parts are numbered
};

QString CostWords::originInWords(const catalogue::PriceOrigin& origin) const {
    using Kind = catalogue::PriceOrigin::Kind;
    QString from;
    switch (origin.kind) {
    case Kind::Unsaid: return {};
    case Kind::Fixed: return tr("fixed price");
    case Kind::NotFixed: return tr("its fixed price is not set");
    case Kind::ShelfAverage: return tr("average of the shelf");
    case Kind::NoPack: from = tr("no pack of it is known"); break;
    case Kind::Pack:
        from = origin.supplier.empty()
                   ? shown(origin.pack)
                   : tr("%1, %2", "a supplier and a pack of theirs").arg(shown(origin.supplier), shown(origin.pack));
        if (origin.pricedOn)
            from = tr("%1, %2", "a pack and the day of its price").arg(from, shown(plainDate(*origin.pricedOn)));
        break;
    }
    return origin.isShelfBare ? tr("nothing with a cost is on the shelf; %1").arg(from) : from;
}

/// For how many packs the price is, where it goes by them, and what would cost less.
QStringList CostWords::packsInWords(const PricedMaterial& material) const {
    if (!m_sheet.needs) return {};
    const auto known = m_sheet.needs->find(material.material.id);
    if (known == m_sheet.needs->end()) return {};
    const auto& need = known->second;
    const auto packs = [&](std::int64_t n) { return counted(Thing::Pack, n, plain(Count::of(n))); };
    QStringList said;
    if (!material.breaks.empty()) said << tr("for the %1 of this order").arg(packs(need.packs));
    const auto cheaper = supply::cheaperPacks(material, need, m_offers);
    if (!cheaper) return said;
    const auto paid = supply::costOf(need);
    if (cheaper->supplier == material.origin.supplier && cheaper->pack == material.origin.pack)
        said << tr("%1 cost less: %2 instead of %3").arg(packs(cheaper->packs), plain(cheaper->cost), plain(paid));
    else
        said << tr("less in another pack: %1 of %2, %3, for %4 instead of %5, without shipping")
                    .arg(packs(cheaper->packs), shown(cheaper->supplier), shown(cheaper->pack), plain(cheaper->cost),
                         plain(paid));
    return said;
}

QStringList CostWords::orderPacking() const {
    QStringList all;
    for (const auto& use : packingUses())
        if (use.per == catalogue::PackingPer::Order)
            all << tr("%1 × %2", "so many of a packing material")
                       .arg(plain(use.amount), shown(priced(use.material).material.name));
    return all;
}

QString CostWords::stepName(Step step) const {
    switch (step) {
    case Step::Art: return tr("Art");
    case Step::Cut: return tr("Cut");
    case Step::Weed: return tr("Weed");
    case Step::SetUp: return tr("Set up");
    case Step::Brush: return tr("Brush");
    case Step::Lift: return tr("Lift");
    case Step::Press: return tr("Press", "the step at the bench");
    case Step::Trim: return tr("Trim");
    case Step::Pack: return tr("Pack");
    }
    return {};
}

QString CostWords::label(const CostNode& node) const {
    switch (node.part) {
    case Part::Job: return m_line.title.empty() ? tr("This job") : shown(m_line.title);
    case Part::Stones: return tr("Stones");
    case Part::Stone: return atPlace(shown(stoneOf(node).material.name), m_stones[node.index].place);
    case Part::Tape: return atPlace(tr("Tape"), node.index);
    case Part::Template: return atPlace(tr("Templates"), node.index);
    case Part::SetTemplates: return atPlace(tr("Templates, paid off"), node.index);
    case Part::SetWork: return atPlace(tr("Art and cutting, paid off"), node.index);
    case Part::Base: return isOnBlank() ? tr("Blanks") : atPlace(tr("Backing"), node.index);
    case Part::BasePrice: return shown(priced(m_line.baseMaterial).material.name);
    case Part::SizeExtra: return tr("Extra for size %1").arg(shown(m_line.sizes[node.index].size));
    case Part::Packing: return tr("Packing");
    case Part::PackingItem: return shown(packing(node).material.name);
    case Part::OrderPacking:
    case Part::FreightOnOrder: return tr("For the order");
    case Part::Freight: return tr("Freight in");
    case Part::FreightOnStone: return atPlace(shown(stoneOf(node).material.name), m_stones[node.index].place);
    case Part::FreightOnTape: return atPlace(tr("Tape"), node.index);
    case Part::FreightOnTemplate: return atPlace(tr("Templates"), node.index);
    case Part::FreightOnBase: return isOnBlank() ? tr("Blanks") : atPlace(tr("Backing"), node.index);
    case Part::FreightOnPacking: return shown(packing(node).material.name);
    case Part::Labour: return tr("Bench labour");
    case Part::LabourStep: return stepName(static_cast<Step>(node.index));
    case Part::Press: return tr("Press", "the machine");
    case Part::PressCycles: return atPlace(tr("Press cycles"), node.index);
    case Part::SecondPress: return atPlace(tr("Second presses"), node.index);
    case Part::WarmUp: return tr("Warm-up");
    case Part::TestPress: return tr("Test presses");
    case Part::Wear: return tr("Machine wear");
    case Part::PressWear: return tr("Press wear");
    case Part::CutterWear: return tr("Cutter wear");
    case Part::Overhead: return tr("Overhead");
    case Part::OverheadOnce: return tr("On the set-up");
    case Part::OverheadPieces: return tr("On the pieces");
    case Part::Spoilage: return tr("Spoilage");
    case Part::SpoiledMaterials: return m_line.customersGarment ? tr("Stones lost") : tr("Materials lost");
    case Part::SpoiledWork: return m_line.customersGarment ? tr("Labour lost") : tr("Work lost");
    case Part::GarmentAllowance: return tr("Replacing garments");
    case Part::CardFee: return tr("Card fee");
    }
    return {};
}

QString CostWords::stoneRule(const CostNode& node) const {
    const auto& material = stoneOf(node);
    const auto taken = tr("%1 a piece × %2").arg(in<Count>(node, Operand::StonesAPiece), pieces(node));
    const auto loss = of<units::Rate>(node, Operand::Loss);
    return loss.isZero() ? tr("%1 × %2").arg(taken, price(node, material))
                         : tr("%1 ÷ (1 − %2 loss) × %3").arg(taken, plain(loss), price(node, material));
}

QString CostWords::sheetRule(const CostNode& node, const PricedMaterial& material, const QString& what) const {
    const auto paid = price(node, material);
    if (node.formula.find(Operand::RollLength))
        return tr("%1: %2 off a roll of %3 × %4")
            .arg(what, in<units::Length>(node, Operand::RollLength), in<units::Length>(node, Operand::WholeRoll), paid);
    if (const auto* whole = node.formula.find(Operand::Sheets))
        return tr("%1, %2 to a sheet: %3 × %4")
            .arg(what, in<Count>(node, Operand::PerSheet), sheets(std::get<Count>(*whole)), paid);
    return tr("%1 ÷ %2 to a sheet × %3").arg(what, in<Count>(node, Operand::PerSheet), paid);
}

QString CostWords::tapeRule(const CostNode& node) const {
    const auto& tape = priced(m_book.shop.usualTape);
    const auto lifted = Count::of(needs::needOfTape(tape.material).lifts);
    const auto shared = tr("%1 ÷ %2 of a piece of tape").arg(pieces(m_line.quantity), lifts(lifted));
    const bool byPosition = !node.formula.find(Operand::RollLength) && !node.formula.find(Operand::Sheets);
    return sheetRule(
        node, tape,
        byPosition ? shared
                   : tr("%1 = %2 of tape").arg(shared, plain(Count::of(m_sheet.places[node.index].tape.use.cut))));
}

QString CostWords::templateRule(const CostNode& node) const {
    if (m_line.places[node.index].templatesOnWall) return tr("the templates hang on the wall: nothing to cut");
    const auto cut =
        tr("%1, one for each colour").arg(templates(Count::of(m_sheet.places[node.index].templates.use.cut)));
    const auto whole = sheetRule(node, priced(m_book.shop.usualTemplate), cut);
    if (!node.formula.find(Operand::PlannedPieces)) return ofSet(node, whole);
    return ofSet(node,
                 tr("%1, × %2 of %3 planned pieces")
                     .arg(whole, in<Count>(node, Operand::PlannedPiecesHere), in<Count>(node, Operand::PlannedPieces)));
}

/// "6.50, what the set cost when it was cut, × 12 of 100 planned pieces; 88 of them sold before".
QString CostWords::setRule(const CostNode& node) const {
    const auto& set = m_sheet.sets[node.index];
    const auto cost = in<Money>(node, Operand::SetCost);
    const auto planned = in<Count>(node, Operand::PlannedPieces);
    if (set.carried.isZero()) return tr("%1 for the set: its %2 planned pieces are sold").arg(cost, planned);
    auto how = (set.isKept ? tr("%1, what it cost when the set was cut, × %2 of %3 planned pieces")
                           : tr("%1, what it costs for the set today, × %2 of %3 planned pieces"))
                   .arg(cost, in<Count>(node, Operand::PlannedPiecesHere), planned);
    if (!set.sold.isZero()) how = tr("%1, of which %2 are sold").arg(how, plain(set.sold));
    if (!node.formula.find(Operand::SetPieces)) return how;
    return tr("%1, × %2 of the %3 pieces of the design in this order")
        .arg(how, in<Count>(node, Operand::Pieces), in<Count>(node, Operand::SetPieces));
}

/// "10 s a piece + 2 s a colour × 3": how long a step takes for designs at some places.
QString CostWords::timesAt(Step step, std::span<const catalogue::Placement> places) const {
    const auto& standard = m_book.bench.of(step);
    std::int64_t colours = 0;
    for (const auto& place : places) colours += static_cast<std::int64_t>(place.stones.size());
    QStringList times;
    const auto add = [&](Duration span, const QString& text) {
        if (!span.isZero()) times << text;
    };
    const auto perJob = step == Step::Art && places[0].artTime ? *places[0].artTime : standard.perJob;
    add(perJob, tr("%1 a job").arg(plain(perJob)));
    if (!catalogue::isOncePerJob(step)) add(standard.perPiece, tr("%1 a piece").arg(plain(standard.perPiece)));
    add(standard.perColour, tr("%1 a colour × %2").arg(plain(standard.perColour), plain(Count::of(colours))));
    add(standard.per100Stones, tr("%1 for 100 stones").arg(plain(standard.per100Stones)));
    return times.join(tr(" + "));
}

QString CostWords::stepRule(const CostNode& node) const {
    const auto step = static_cast<Step>(node.index);
    const auto& standard = m_book.bench.of(step);
    const bool once = catalogue::isOncePerJob(step);
    const std::span<const catalogue::Placement> places = m_line.places;
    QStringList times;
    if (catalogue::isForThePiece(step) || places.size() == 1)
        times << timesAt(step, places);
    else
        for (std::size_t i = 0; i < places.size(); ++i)
            if (!once || isWorkedOn(i))
                times << tr("%1: %2", "a place and the times of a step there")
                             .arg(atPlace(i), timesAt(step, places.subspan(i, 1)));
    auto how = ofSet(node, times.join(QStringLiteral("; ")));
    if (!once && !how.isEmpty()) how = tr("%1, %2").arg(how, pieces(m_line.quantity));
    if (!once && !standard.perCycle.isZero()) {
        std::int64_t cycles = 0;
        for (const auto& place : m_sheet.places) cycles += place.press.cycles;
        const auto pressing = tr("%1 a press cycle × %2").arg(plain(standard.perCycle), plain(Count::of(cycles)));
        how = how.isEmpty() ? pressing : tr("%1 + %2", "times of a step").arg(how, pressing);
    }
    if (!once && standard.learning.ppm() != units::kPpm) how = tr("%1, learning %2").arg(how, plain(standard.learning));
    return tr("%1 = %2 × %3")
        .arg(how, in<Duration>(node, Operand::StepTime), in<costing::PerHour>(node, Operand::LabourRate));
}

QString CostWords::cycleRule(const CostNode& node) const {
    const auto presses = of<Count>(node, Operand::PressesAPiece);
    const auto how = presses > Count::of(1)
                         ? tr("%1 × %2 presses each, larger than the platen").arg(pieces(node), plain(presses))
                         : tr("%1, %2 at once").arg(pieces(node), in<Count>(node, Operand::PiecesAtOnce));
    return tr("%1 = %2 × %3 × %4")
        .arg(how, cycles(of<Count>(node, Operand::Cycles)), oneCycle(node, Operand::Dwell), running(node));
}

QString CostWords::pressWearRule(const CostNode& node) const {
    const auto pressed =
        Count::of(of<Count>(node, Operand::Pieces).value() * static_cast<std::int64_t>(m_line.places.size()));
    if (node.formula.find(Operand::SharedTestWear))
        return tr("(%1 − %2 salvage) ÷ %3 presses × (%4 + %5 of %6 pressed twice) + %7 of the order’s tests")
            .arg(in<Money>(node, Operand::PressPrice), in<Money>(node, Operand::PressSalvage),
                 in<Count>(node, Operand::PressLife), cycles(of<Count>(node, Operand::Cycles)),
                 in<units::Rate>(node, Operand::SecondPressShare), plain(pressed),
                 in<Money>(node, Operand::SharedTestWear));
    return tr("(%1 − %2 salvage) ÷ %3 presses × (%4 + %5 of %6 pressed twice + %7)")
        .arg(in<Money>(node, Operand::PressPrice), in<Money>(node, Operand::PressSalvage),
             in<Count>(node, Operand::PressLife), cycles(of<Count>(node, Operand::Cycles)),
             in<units::Rate>(node, Operand::SecondPressShare), plain(pressed),
             tests(of<Count>(node, Operand::TestPresses)));
}

QString CostWords::cutterWearRule(const CostNode& node) const {
    std::int64_t holes = 0;
    for (const auto& place : m_sheet.places) holes += place.holes;
    return ofSet(node, tr("(%1 − %2 salvage) ÷ %3 holes × %4 holes")
                           .arg(in<Money>(node, Operand::CutterPrice), in<Money>(node, Operand::CutterSalvage),
                                in<Count>(node, Operand::CutterLife), plain(Count::of(holes))));
}

QString CostWords::spoilageRule(const CostNode& node) const {
    const auto lost = tr("× (1 ÷ (1 − %1) − 1)").arg(in<units::Rate>(node, Operand::Spoilage));
    if (node.part == Part::GarmentAllowance)
        return tr("%1 × %2 for replacing one %3").arg(pieces(node), in<Money>(node, Operand::GarmentAllowance), lost);
    if (node.part == Part::SpoiledMaterials && hasFreight())
        return m_line.customersGarment
                   ? tr("the stones of the pieces and their freight %1").arg(lost)
                   : tr("stones, tape, base, their freight and pressing of the pieces %1").arg(lost);
    if (node.part == Part::SpoiledMaterials)
        return m_line.customersGarment ? tr("the stones of the pieces %1").arg(lost)
                                       : tr("stones, tape, base and pressing of the pieces %1").arg(lost);
    return m_line.customersGarment ? tr("the labour of the pieces until they are packed %1").arg(lost)
                                   : tr("labour, wear and overhead of the pieces until they are packed %1").arg(lost);
}

QString CostWords::freightRule(const CostNode& node) const {
    const auto goods = in<Money>(node, Operand::Goods);
    if (node.formula.find(Operand::FreightShare))
        return tr("%1 of %2").arg(in<units::Rate>(node, Operand::FreightShare), goods);
    return tr("%1 × %2 shipping ÷ %3, the goods of a usual order")
        .arg(goods, in<Money>(node, Operand::Shipping), in<Money>(node, Operand::UsualOrder));
}

QString CostWords::rule(const CostNode& node) const {
    const auto& rates = m_book.shop.rates;
    switch (node.part) {
    case Part::Job: return tr("%1: the sum of the parts").arg(pieces(m_line.quantity));
    case Part::Stone: return stoneRule(node);
    case Part::Tape: return tapeRule(node);
    case Part::Template: return templateRule(node);
    case Part::SetTemplates:
    case Part::SetWork: return setRule(node);
    case Part::Base:
        if (isOnBlank()) return tr("the sum of the parts");
        return sheetRule(node, priced(m_line.baseMaterial), pieces(m_line.quantity));
    case Part::BasePrice: return tr("%1 × %2").arg(pieces(node), price(node, priced(m_line.baseMaterial)));
    case Part::SizeExtra:
        return tr("%1 of %2 × %3")
            .arg(in<Count>(node, Operand::SizePieces), shown(m_line.sizes[node.index].size),
                 exact(of<Money>(node, Operand::SizeExtra)));
    case Part::PackingItem: {
        const auto each = of<Count>(node, Operand::PackingAPiece);
        const auto taken = each == Count::of(1) ? pieces(node) : tr("%1 a piece × %2").arg(plain(each), pieces(node));
        return tr("%1 × %2").arg(taken, price(node, packing(node)));
    }
    case Part::OrderPacking:
        return tr("its share, by cost, of what goes with the order: %1").arg(orderPacking().join(tr(", ")));
    case Part::FreightOnStone:
    case Part::FreightOnTape:
    case Part::FreightOnTemplate:
    case Part::FreightOnBase:
    case Part::FreightOnPacking: return freightRule(node);
    case Part::FreightOnOrder: return tr("its share, by cost, of the freight on what goes with the order");
    case Part::LabourStep: return stepRule(node);
    case Part::Labour:
        return tr("%1 at the bench × %2")
            .arg(plain(m_sheet.bench.total()), plain(costing::PerHour{rates.labourPerHour}));
    case Part::PressCycles: return cycleRule(node);
    case Part::SecondPress:
        return tr("%1 of %2 × %3 × %4")
            .arg(in<units::Rate>(node, Operand::SecondPressShare), pieces(node), oneCycle(node, Operand::SecondDwell),
                 running(node));
    case Part::WarmUp:
        if (node.formula.find(Operand::SharedWarmUp))
            return tr("its share of warming up once for the order, by what the lines cost");
        return tr("%1 × %2").arg(in<Duration>(node, Operand::WarmUp), running(node));
    case Part::TestPress:
        if (node.formula.find(Operand::SharedTestPresses))
            return tr("its share of testing once for the order, by what the lines cost");
        return tr("%1 × %2 × %3")
            .arg(in<Count>(node, Operand::TestPresses), oneCycle(node, Operand::Dwell), running(node));
    case Part::PressWear: return pressWearRule(node);
    case Part::CutterWear: return cutterWearRule(node);
    case Part::OverheadOnce:
    case Part::OverheadPieces: return overheadRule(node);
    case Part::SpoiledMaterials:
    case Part::SpoiledWork:
    case Part::GarmentAllowance: return spoilageRule(node);
    case Part::CardFee:
        return tr("(all the above + share of %1 fixed) ÷ (1 − %2), less all the above")
            .arg(exact(m_book.shop.rules.cardFee.fixed), in<units::Rate>(node, Operand::FeeRate));
    case Part::Spoilage: return tr("%1 of the pieces made cannot be sold").arg(plain(rates.spoilage));
    case Part::Stones:
    case Part::Packing:
    case Part::Freight:
    case Part::Press:
    case Part::Wear:
    case Part::Overhead: return tr("the sum of the parts");
    }
    return {};
}

} // namespace

CostTree explain(const catalogue::OrderLine& line, const catalogue::PriceBook& book, const costing::CostSheet& sheet,
                 const units::NumberStyle& style, const supply::PackOffers* offers) {
    const CostWords words(line, book, sheet, style, offers);
    CostTree root;
    std::vector<CostTree*> path; // the open node at each depth
    for (std::size_t i = 0; i < sheet.nodes.size(); ++i) {
        const auto& node = sheet.nodes[i];
        CostTree tree{node.part, words.label(node).toStdString(), node.amount, words.rule(node).toStdString(), i, {}};
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

} // namespace sp::words

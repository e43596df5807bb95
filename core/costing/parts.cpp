// SPDX-License-Identifier: MIT
#include "core/costing/parts.h"

#include <algorithm>
#include <array>
#include <optional>
#include <utility>

namespace sp::costing {

namespace {

using catalogue::PricedMaterial;
using catalogue::SheetForm;
using catalogue::Step;
using tag::kFallsAway;
using tag::kLabour;
using tag::kLostMaterial;
using tag::kLostOnAny;
using tag::kLostWork;
using tag::kOfPacking;
using tag::kOnce;
using tag::kOnCharge;
using tag::kPaidOut;
using tag::kPaysOff;
using units::Count;
using units::Fraction;

using In = const PartInputs&;

/// `rule` is called with Exact or Traced, the inputs and the index.
template<class RuleOf>
constexpr PartRow leaf(Part part, Part within, unsigned tags, RuleOf, bool (*arises)(In, std::size_t) = nullptr,
                       std::size_t (*most)(In) = nullptr, std::size_t first = 0) {
    return {part,
            within,
            static_cast<std::uint16_t>(tags),
            first,
            most,
            arises,
            [](In in, std::size_t i) -> Fraction { return RuleOf{}(Exact{}, in, i); },
            [](In in, std::size_t i) -> Formula { return RuleOf{}(Traced{}, in, i); },
            nullptr};
}

constexpr PartRow sum(Part part, bool (*arises)(In, std::size_t) = nullptr) {
    return {part, Part::Job, 0, 0, nullptr, arises, nullptr, nullptr, nullptr};
}

/// Lost is not all of it: the rule of what is.
template<class RuleOf>
constexpr PartRow losing(PartRow row, RuleOf) {
    row.lost = [](In in, std::size_t i) -> Fraction { return RuleOf{}(Exact{}, in, i); };
    return row;
}

/// What a sheet material costs: by whole sheets, by position, or by the length cut off a roll.
template<class Term, class Cuts, class Paid>
auto sheetCost(const Term& term, In in, const needs::SheetRequirement& takes, const PricedMaterial& material, Cuts cuts,
               Paid paid) {
    const auto& use = takes.use;
    const auto& sheet = material.material.sheet;
    const auto price = term(Operand::Price, in.priceOf(material));
    if (sheet.form == SheetForm::Roll)
        return price * term(Operand::RollLength, use.rollLength) / term(Operand::WholeRoll, sheet.height);
    if (sheet.basis == catalogue::ShareBasis::ByPosition)
        return paid(term) / term(Operand::PerSheet, Count::of(use.perSheet)) * price;
    return term(Operand::Sheets, Count::of(use.sheets),
                [&](const auto& how) { return ceiling(cuts(how) / how(Operand::PerSheet, Count::of(use.perSheet))); }) *
           price;
}

constexpr auto stone = [](const auto& term, In in, std::size_t i) {
    const auto& taken = in.takes.materials.stones[i];
    const auto& need = taken.need;
    return term(Operand::StonesAPiece, need.perPiece) * term(Operand::Pieces, in.pieces()) /
           term.without(Operand::Loss, need.loss) * term(Operand::Price, in.priceOf(*taken.material));
};

constexpr auto tape = [](const auto& term, In in, std::size_t i) {
    const auto& material = *in.takes.materials.tape;
    const auto shares = [&](const auto& how) {
        return how(Operand::Pieces, in.pieces()) /
               how(Operand::Lifts, Count::of(needs::needOfTape(material.material).lifts));
    };
    const auto cuts = [&](const auto& how) {
        return how(Operand::Cuts, Count::of(in.takes.places[i].tape.use.cut),
                   [&](const auto& further) { return ceiling(shares(further)); });
    };
    return sheetCost(term, in, in.takes.places[i].tape, material, cuts, shares);
};

bool sharesSet(In in, std::size_t place) {
    return !in.share.setPieces.empty() && in.share.setPieces[place] != in.pieces() && in.isCut(place);
}

/// What the line bears of what is done once for a set.
template<class Term, class Whole>
Whole ofSet(const Term& term, In in, std::size_t place, Whole whole) {
    if (!sharesSet(in, place)) return whole;
    return std::move(whole) * term(Operand::Pieces, in.pieces()) / term(Operand::SetPieces, in.share.setPieces[place]);
}

constexpr auto templates = [](const auto& term, In in, std::size_t i) {
    const auto& place = in.line.places[i];
    const auto& takes = in.takes.places[i].templates;
    if (place.templatesOnWall) return term.nothing();
    const auto cuts = [&](const auto& how) { return how(Operand::Cuts, Count::of(takes.use.cut)); };
    const auto whole = sheetCost(term, in, takes, *in.takes.materials.templates, cuts, cuts);
    if (!place.plannedPieces || !in.share.sets.empty()) return ofSet(term, in, i, whole);
    const auto here = std::min(sharesSet(in, i) ? in.share.setPieces[i] : in.pieces(), *place.plannedPieces);
    return ofSet(term, in, i,
                 whole * term(Operand::PlannedPiecesHere, here) / term(Operand::PlannedPieces, *place.plannedPieces));
};

/// What the line bears of a set that is paid off.
template<class Term>
auto shareOfSet(const Term& term, In in, std::size_t place, units::Money cost) {
    const auto& set = *in.paidOff(place);
    auto share = term(Operand::SetCost, cost) * term(Operand::PlannedPiecesHere, set.carried) /
                 term(Operand::PlannedPieces, set.planned);
    if (set.ofPieces == in.pieces()) return share;
    return std::move(share) * term(Operand::Pieces, in.pieces()) / term(Operand::SetPieces, set.ofPieces);
}

constexpr auto setTemplates = [](const auto& term, In in, std::size_t i) {
    return shareOfSet(term, in, i, in.paidOff(i)->cost.templates);
};

constexpr auto setWork = [](const auto& term, In in, std::size_t i) {
    return shareOfSet(term, in, i, in.paidOff(i)->cost.work);
};

constexpr auto backing = [](const auto& term, In in, std::size_t i) {
    const auto cuts = [&](const auto& how) { return how(Operand::Pieces, in.pieces()); };
    return sheetCost(term, in, in.takes.places[i].backing, *in.takes.materials.base, cuts, cuts);
};

constexpr auto blank = [](const auto& term, In in, std::size_t) {
    return term(Operand::Pieces, in.pieces()) * term(Operand::Price, in.priceOf(*in.takes.materials.base));
};

const catalogue::BlankSize* sizeOf(In in, std::size_t i) {
    for (const auto& size : in.takes.materials.base->material.sizes)
        if (size.name == in.line.sizes[i].size && !size.extraCost.isZero()) return &size;
    return nullptr;
}

constexpr auto sizeExtra = [](const auto& term, In in, std::size_t i) {
    return term(Operand::SizePieces, in.line.sizes[i].count) * term(Operand::SizeExtra, sizeOf(in, i)->extraCost);
};

constexpr auto packing = [](const auto& term, In in, std::size_t i) {
    const auto& [material, need] = in.takes.materials.packing[i];
    return term(Operand::Pieces, in.pieces()) * term(Operand::PackingAPiece, need.perPiece) *
           term(Operand::Price, in.priceOf(*material));
};

constexpr auto orderPacking = [](const auto& term, In in, std::size_t) {
    return term(Operand::OrderPacking, in.share.packing);
};

/// Freight on goods that a part above has come to.
template<class Term>
auto freightOn(const Term& term, units::Money goods, const PricedMaterial& material) {
    const auto& freight = material.freight;
    const auto on = term(Operand::Goods, goods);
    if (freight.kind == catalogue::FreightKind::Share) return on * term(Operand::FreightShare, freight.share);
    return on * term(Operand::Shipping, freight.shipping) / term(Operand::UsualOrder, freight.usualOrder);
}

/// What the part of that rule has come to.
template<class RuleOf>
units::Money goodsOf(RuleOf rule, In in, std::size_t i) {
    return units::Money::fromExact(rule(Exact{}, in, i));
}

constexpr auto stoneFreight = [](const auto& term, In in, std::size_t i) {
    return freightOn(term, goodsOf(stone, in, i), *in.takes.materials.stones[i].material);
};

constexpr auto tapeFreight = [](const auto& term, In in, std::size_t i) {
    return freightOn(term, goodsOf(tape, in, i), *in.takes.materials.tape);
};

constexpr auto templateFreight = [](const auto& term, In in, std::size_t i) {
    return freightOn(term, goodsOf(templates, in, i), *in.takes.materials.templates);
};

constexpr auto backingFreight = [](const auto& term, In in, std::size_t i) {
    return freightOn(term, goodsOf(backing, in, i), *in.takes.materials.base);
};

/// With the extra cost of larger sizes.
constexpr auto blankFreight = [](const auto& term, In in, std::size_t) {
    auto goods = goodsOf(blank, in, 0);
    for (std::size_t i = 0; i < in.line.sizes.size(); ++i)
        if (sizeOf(in, i)) goods += goodsOf(sizeExtra, in, i);
    return freightOn(term, goods, *in.takes.materials.base);
};

constexpr auto packingFreight = [](const auto& term, In in, std::size_t i) {
    return freightOn(term, goodsOf(packing, in, i), *in.takes.materials.packing[i].material);
};

constexpr auto orderFreight = [](const auto& term, In in, std::size_t) {
    return term(Operand::OrderFreight, in.share.freight);
};

/// Whether templates are paid for by this job; those that hang on the wall are named with nothing.
bool paysTemplates(In in, std::size_t place) { return in.takes.materials.templates && !in.paidOff(place); }

bool hasFreightOnTemplate(In in, std::size_t place) {
    return paysTemplates(in, place) && !in.line.places[place].templatesOnWall &&
           in.carriesFreight(in.takes.materials.templates);
}

bool hasFreight(In in, std::size_t) {
    const auto& found = in.takes.materials;
    const auto carries = [&](const needs::LineTake& take) { return in.carriesFreight(take.material); };
    bool isOnTemplates = false;
    for (std::size_t i = 0; i < in.line.places.size(); ++i)
        isOnTemplates = isOnTemplates || hasFreightOnTemplate(in, i);
    return std::ranges::any_of(found.stones, carries) || std::ranges::any_of(found.packing, carries) ||
           (in.carriesFreight(found.tape) && !in.line.isCharge()) || in.carriesFreight(found.base) || isOnTemplates;
}

/// Sums what `of` says for each of the line's places that `counts`; one must.
template<class Of, class Counts>
auto sumOfPlaces(In in, Of of, Counts counts) {
    std::optional<decltype(of(std::size_t{0}))> sum;
    for (std::size_t i = 0; i < in.line.places.size(); ++i)
        if (counts(i)) sum = sum ? std::move(*sum) + of(i) : of(i);
    return std::move(*sum);
}
template<class Of>
auto sumOfPlaces(In in, Of of) {
    return sumOfPlaces(in, of, [](std::size_t) { return true; });
}

template<class Term>
auto cycles(const Term& term, In in, std::size_t place) {
    const auto& press = in.takes.places[place].press;
    return term(Operand::Cycles, Count::of(press.cycles), [&](const auto& how) {
        return ceiling(how(Operand::Pieces, in.pieces()) /
                       how(Operand::PiecesAtOnce, Count::of(press.piecesPerPress))) *
               how(Operand::PressesAPiece, Count::of(press.pressesPerPiece));
    });
}

template<class Term>
auto allCycles(const Term& term, In in) {
    if (in.line.places.size() == 1) return cycles(term, in, 0);
    std::int64_t sum = 0;
    for (const auto& place : in.takes.places) sum += place.press.cycles;
    return term(Operand::Cycles, Count::of(sum),
                [&](const auto& how) { return sumOfPlaces(in, [&](std::size_t i) { return cycles(how, in, i); }); });
}

/// How long a step takes at some of the line's places, as catalogue::StepStandard says; what has been learned has no
/// formula of the kind.
template<class How, class Cycles>
auto stepTimeAt(const How& how, In in, Step step, std::size_t first, std::span<const catalogue::Placement> places,
                Cycles cyclesThere) {
    const auto& standard = in.book.bench.of(step);
    const auto fixed = step == Step::Art && places[0].artTime ? *places[0].artTime : standard.perJob;
    std::int64_t colours = 0;
    std::int64_t stones = 0;
    for (const auto& place : places) {
        colours += static_cast<std::int64_t>(place.stones.size());
        for (const auto& row : place.stones) stones += row.count.value();
    }
    const auto perJob = how(Operand::PerJob, fixed);
    const auto byColourAndStone =
        how(Operand::PerColour, standard.perColour) * how(Operand::Colours, Count::of(colours)) +
        how(Operand::Per100Stones, standard.per100Stones) * how(Operand::Stones, Count::of(stones)) / how.number(100);
    if (catalogue::isOncePerJob(step)) return toMillisecond(ofSet(how, in, first, perJob + byColourAndStone));
    const auto forPieces =
        (how(Operand::PerPiece, standard.perPiece) + byColourAndStone) * how(Operand::Pieces, in.pieces());
    return perJob + toMillisecond(forPieces + how(Operand::PerCycle, standard.perCycle) * cyclesThere(how));
}

template<class How>
auto stepTime(const How& how, In in, Step step) {
    const std::span<const catalogue::Placement> places = in.line.places;
    if (catalogue::isForThePiece(step))
        return stepTimeAt(how, in, step, 0, places, [&](const auto& term) { return allCycles(term, in); });
    return sumOfPlaces(
        in,
        [&](std::size_t i) {
            return stepTimeAt(how, in, step, i, places.subspan(i, 1),
                              [&](const auto& term) { return cycles(term, in, i); });
        },
        [&](std::size_t i) { return !catalogue::isOncePerJob(step) || in.isCut(i); });
}

constexpr auto labour = [](const auto& term, In in, std::size_t i) {
    const auto step = static_cast<Step>(i);
    const auto time = in.takes.bench.of(step);
    const auto rate = term(Operand::LabourRate, PerHour{in.book.shop.rates.labourPerHour});
    if (in.book.bench.of(step).learning.ppm() != units::kPpm) return rate * term(Operand::StepTime, time);
    return rate * term(Operand::StepTime, time, [&](const auto& how) { return stepTime(how, in, step); });
};

template<class Term>
auto oneCycle(const Term& term, In in) {
    return term(Operand::Dwell, in.book.bench.press.dwell) + term(Operand::Handling, in.book.bench.press.handling);
}

template<class Term>
auto secondPresses(const Term& term, In in) {
    return term(Operand::SecondPressShare, in.book.bench.press.secondPressShare) * term(Operand::Pieces, in.pieces());
}

template<class Term>
auto tests(const Term& term, In in) {
    return term(Operand::TestPresses, Count::of(in.book.bench.press.testPresses));
}

template<class Term>
auto running(const Term& term, In in) {
    return term(Operand::PressRunning, PerHour{in.book.bench.press.runningPerHour});
}

template<class Term>
auto allSecondPresses(const Term& term, In in) {
    const auto places = static_cast<std::int64_t>(in.line.places.size());
    return places == 1 ? secondPresses(term, in) : secondPresses(term, in) * term.number(places);
}

constexpr auto pressCycles = [](const auto& term, In in, std::size_t i) {
    return cycles(term, in, i) * oneCycle(term, in) * running(term, in);
};

constexpr auto secondPress = [](const auto& term, In in, std::size_t) {
    const auto& press = in.book.bench.press;
    return secondPresses(term, in) *
           (term(Operand::SecondDwell, press.secondDwell) + term(Operand::Handling, press.handling)) *
           running(term, in);
};

constexpr auto warmUp = [](const auto& term, In in, std::size_t) {
    if (in.share.press) return term(Operand::SharedWarmUp, in.share.press->warmUp);
    return term(Operand::WarmUp, in.book.bench.press.warmUp) * running(term, in);
};

constexpr auto testPress = [](const auto& term, In in, std::size_t) {
    if (in.share.press) return term(Operand::SharedTestPresses, in.share.press->tests);
    return tests(term, in) * oneCycle(term, in) * running(term, in);
};

template<class Term>
auto wearOfAPress(const Term& term, In in) {
    const auto& press = in.book.bench.press;
    return (term(Operand::PressPrice, press.price) - term(Operand::PressSalvage, press.salvage)) /
           term(Operand::PressLife, Count::of(press.lifePresses));
}

constexpr auto pressWear = [](const auto& term, In in, std::size_t) {
    if (in.share.press && in.book.bench.press.testPresses > 0)
        return wearOfAPress(term, in) * (allCycles(term, in) + allSecondPresses(term, in)) +
               term(Operand::SharedTestWear, in.share.press->testWear);
    return wearOfAPress(term, in) * (allCycles(term, in) + allSecondPresses(term, in) + tests(term, in));
};

/// Test presses are made once, whatever is spoiled.
constexpr auto pressWearOfPieces = [](const auto& term, In in, std::size_t) {
    return wearOfAPress(term, in) * (allCycles(term, in) + allSecondPresses(term, in));
};

template<class Term>
auto holes(const Term& term, In in) {
    bool isShared = false;
    for (std::size_t i = 0; i < in.line.places.size(); ++i) isShared = isShared || sharesSet(in, i);
    if (!isShared) return term(Operand::Holes, Count::of(in.takes.holes()));
    return sumOfPlaces(
        in,
        [&](std::size_t i) { return ofSet(term, in, i, term(Operand::Holes, Count::of(in.takes.places[i].holes))); },
        [&](std::size_t i) { return in.isCut(i); });
}

constexpr auto cutterWear = [](const auto& term, In in, std::size_t) {
    const auto& cutter = in.book.bench.cutter;
    return (term(Operand::CutterPrice, cutter.price) - term(Operand::CutterSalvage, cutter.salvage)) /
           term(Operand::CutterLife, Count::of(cutter.lifeHoles)) * holes(term, in);
};

template<class Term>
auto overhead(const Term& term, In in, units::Duration time) {
    const auto& rates = in.book.shop.rates;
    return term(Operand::OverheadPerMonth, rates.overheadPerMonth) * term(Operand::BenchTime, time) /
           term(Operand::ProductivePerMonth, rates.productivePerMonth);
}

constexpr auto overheadOnce = [](const auto& term, In in, std::size_t) {
    return overhead(term, in, in.takes.bench.oncePerJob());
};

constexpr auto overheadPieces = [](const auto& term, In in, std::size_t) {
    return overhead(term, in, in.takes.bench.forPieces());
};

/// A spoiled piece is never packed.
constexpr auto overheadUntilPacked = [](const auto& term, In in, std::size_t) {
    return overhead(term, in, in.losesPacking() ? in.takes.bench.forPieces() : in.takes.bench.untilPacked());
};

constexpr auto spoiledMaterials = [](const auto& term, In in, std::size_t) {
    return term(Operand::LostMaterials, in.lostMaterials) *
           term.lostBeside(Operand::Spoilage, in.book.shop.rates.spoilage);
};

constexpr auto spoiledWork = [](const auto& term, In in, std::size_t) {
    return term(Operand::LostWork, in.lostWork) * term.lostBeside(Operand::Spoilage, in.book.shop.rates.spoilage);
};

constexpr auto garments = [](const auto& term, In in, std::size_t) {
    const auto& rates = in.book.shop.rates;
    return term(Operand::GarmentAllowance, rates.garmentAllowance) * term(Operand::Pieces, in.pieces()) *
           term.lostBeside(Operand::Spoilage, rates.spoilage);
};

/// Before rules 3, since when it is no cost: (all above + fixed) ÷ (1 − rate) keeps all above after the fee; the fee is
/// what that adds.
constexpr auto cardFee = [](const auto& term, In in, std::size_t) {
    return (term(Operand::AllAbove, in.above) + term(Operand::FixedFee, in.share.cardFixed)) /
               term.without(Operand::FeeRate, in.book.shop.rules.cardFee.rate) -
           term(Operand::AllAbove, in.above);
};

bool isOnBlank(In in, std::size_t) { return in.takes.materials.base && !in.takes.materials.isOnBacking(); }
bool isForOrder(const needs::LineTake& take) { return take.need.kind == needs::NeedKind::ForOrder; }
std::size_t placesOf(In in) { return in.line.places.size(); }
bool isAnyCut(In in, std::size_t) {
    for (std::size_t i = 0; i < in.line.places.size(); ++i)
        if (in.isCut(i)) return true;
    return false;
}
bool hasTime(In in, std::size_t step) { return !in.takes.bench.of(static_cast<Step>(step)).isZero(); }
/// The steps done once come first, packing is the last.
constexpr auto kStepsOnce = static_cast<std::size_t>(std::ranges::count_if(catalogue::kSteps, catalogue::isOncePerJob));
constexpr auto kPackStep = static_cast<std::size_t>(Step::Pack);
static_assert(kPackStep + 1 == catalogue::kSteps.size());

constexpr std::array kTable{
    sum(Part::Stones),
    leaf(Part::Stone, Part::Stones, kPaidOut | kLostMaterial | kLostOnAny, stone, nullptr,
         [](In in) { return in.takes.materials.stones.size(); }),
    leaf(
        Part::Tape, Part::Job, kPaidOut | kLostMaterial, tape,
        [](In in, std::size_t) { return in.takes.materials.tape != nullptr; }, placesOf),
    leaf(Part::Template, Part::Job, kOnce | kPaidOut | kFallsAway, templates, paysTemplates, placesOf),
    leaf(
        Part::SetTemplates, Part::Job, kPaidOut | kPaysOff, setTemplates,
        [](In in, std::size_t i) { return in.paidOff(i) != nullptr; }, placesOf),
    leaf(
        Part::SetWork, Part::Job, kPaysOff, setWork,
        [](In in, std::size_t i) { return in.paidOff(i) && !in.paidOff(i)->cost.work.isZero(); }, placesOf),
    leaf(
        Part::Base, Part::Job, kPaidOut | kLostMaterial, backing,
        [](In in, std::size_t) { return in.takes.materials.isOnBacking(); }, placesOf),
    sum(Part::Base, isOnBlank),
    leaf(Part::BasePrice, Part::Base, kPaidOut | kLostMaterial | kOnCharge, blank),
    leaf(
        Part::SizeExtra, Part::Base, kPaidOut | kLostMaterial | kOnCharge, sizeExtra,
        [](In in, std::size_t i) { return sizeOf(in, i) != nullptr; }, [](In in) { return in.line.sizes.size(); }),
    sum(Part::Packing, [](In in, std::size_t) { return !in.takes.materials.packing.empty(); }),
    leaf(
        Part::PackingItem, Part::Packing, kPaidOut | kLostMaterial | kOfPacking, packing,
        [](In in, std::size_t i) { return !isForOrder(in.takes.materials.packing[i]); },
        [](In in) { return in.takes.materials.packing.size(); }),
    leaf(Part::OrderPacking, Part::Packing, kOnce | kPaidOut, orderPacking,
         [](In in, std::size_t) { return std::ranges::any_of(in.takes.materials.packing, isForOrder); }),
    sum(Part::Freight, hasFreight),
    leaf(
        Part::FreightOnStone, Part::Freight, kPaidOut | kLostMaterial | kLostOnAny, stoneFreight,
        [](In in, std::size_t i) { return in.carriesFreight(in.takes.materials.stones[i].material); },
        [](In in) { return in.takes.materials.stones.size(); }),
    leaf(
        Part::FreightOnTape, Part::Freight, kPaidOut | kLostMaterial, tapeFreight,
        [](In in, std::size_t) { return in.carriesFreight(in.takes.materials.tape); }, placesOf),
    leaf(Part::FreightOnTemplate, Part::Freight, kOnce | kPaidOut | kFallsAway, templateFreight, hasFreightOnTemplate,
         placesOf),
    leaf(
        Part::FreightOnBase, Part::Freight, kPaidOut | kLostMaterial, backingFreight,
        [](In in, std::size_t) {
            return in.takes.materials.isOnBacking() && in.carriesFreight(in.takes.materials.base);
        },
        placesOf),
    leaf(Part::FreightOnBase, Part::Freight, kPaidOut | kLostMaterial | kOnCharge, blankFreight,
         [](In in, std::size_t) { return isOnBlank(in, 0) && in.carriesFreight(in.takes.materials.base); }),
    leaf(
        Part::FreightOnPacking, Part::Freight, kPaidOut | kLostMaterial | kOfPacking, packingFreight,
        [](In in, std::size_t i) {
            const auto& take = in.takes.materials.packing[i];
            return !isForOrder(take) && in.carriesFreight(take.material);
        },
        [](In in) { return in.takes.materials.packing.size(); }),
    leaf(Part::FreightOnOrder, Part::Freight, kOnce | kPaidOut, orderFreight,
         [](In in, std::size_t) { return !in.share.freight.isZero(); }),
    sum(Part::Labour),
    leaf(Part::LabourStep, Part::Labour, kOnce | kLabour | kFallsAway, labour, hasTime, [](In) { return kStepsOnce; }),
    leaf(
        Part::LabourStep, Part::Labour, kLabour | kLostWork | kLostOnAny, labour, hasTime, [](In) { return kPackStep; },
        kStepsOnce),
    leaf(
        Part::LabourStep, Part::Labour, kLabour | kLostWork | kLostOnAny | kOfPacking, labour, hasTime,
        [](In) { return kPackStep + 1; }, kPackStep),
    sum(Part::Press),
    leaf(Part::PressCycles, Part::Press, kPaidOut | kLostMaterial, pressCycles, nullptr, placesOf),
    leaf(
        Part::SecondPress, Part::Press, kPaidOut | kLostMaterial, secondPress,
        [](In in, std::size_t) { return !in.book.bench.press.secondPressShare.isZero(); }, placesOf),
    leaf(Part::WarmUp, Part::Press, kOnce | kPaidOut, warmUp,
         [](In in, std::size_t) { return !in.book.bench.press.warmUp.isZero(); }),
    leaf(Part::TestPress, Part::Press, kOnce | kPaidOut, testPress,
         [](In in, std::size_t) { return in.book.bench.press.testPresses > 0; }),
    sum(Part::Wear),
    losing(leaf(Part::PressWear, Part::Wear, kLostWork, pressWear), pressWearOfPieces),
    leaf(Part::CutterWear, Part::Wear, kOnce | kFallsAway, cutterWear, isAnyCut),
    sum(Part::Overhead, [](In in, std::size_t) { return !in.book.shop.rates.overheadPerMonth.isZero(); }),
    leaf(Part::OverheadOnce, Part::Overhead, kOnce | kFallsAway, overheadOnce,
         [](In in, std::size_t) { return !in.takes.bench.oncePerJob().isZero(); }),
    losing(leaf(Part::OverheadPieces, Part::Overhead, kLostWork, overheadPieces), overheadUntilPacked),
    sum(Part::Spoilage, [](In in, std::size_t) { return !in.book.shop.rates.spoilage.isZero(); }),
    leaf(Part::SpoiledMaterials, Part::Spoilage, kPaidOut, spoiledMaterials),
    leaf(Part::SpoiledWork, Part::Spoilage, 0, spoiledWork),
    leaf(Part::GarmentAllowance, Part::Spoilage, kPaidOut, garments,
         [](In in, std::size_t) { return in.line.customersGarment; }),
    leaf(Part::CardFee, Part::Job, kPaidOut | kOnCharge, cardFee, [](In in, std::size_t) { return in.holdsCardFee(); }),
};

} // namespace

std::span<const PartRow> partTable() { return kTable; }

} // namespace sp::costing

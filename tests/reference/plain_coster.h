// SPDX-License-Identifier: MIT
// How the plain price reckons what one line costs, for plain_price.cpp and plain_sharing.cpp.
#pragma once

#include "tests/reference/plain_price.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <utility>
#include <vector>

namespace sp::reference {

using catalogue::MaterialKind;
using catalogue::PricedMaterial;
using catalogue::Step;
using costing::Part;
using Wide = units::Int128;
using Whole = std::int64_t;

constexpr Whole kMillion = 1'000'000;
constexpr Whole kCent = 10'000;
constexpr Whole kHour = 3'600'000;

inline Whole up(Wide n, Wide by) { return static_cast<Whole>(n >= 0 ? (n + by - 1) / by : -(-n / by)); }

/// n / by with halves to even.
inline Whole even(Wide n, Wide by) {
    if (n < 0) return -even(-n, by);
    const Wide whole = n / by;
    const Wide twice = 2 * (n % by);
    return static_cast<Whole>(twice > by || (twice == by && whole % 2 == 1) ? whole + 1 : whole);
}

/// n / by with halves away from zero.
inline Whole away(Wide n, Wide by) { return n < 0 ? -away(-n, by) : static_cast<Whole>((2 * n + by) / (2 * by)); }

/// micro-units / by, to whole cents.
inline Whole cents(Wide micros, Wide by = 1) { return away(micros, by * kCent) * kCent; }

inline const std::vector<catalogue::PackingUse>& packingOf(const catalogue::OrderLine& line,
                                                           const catalogue::PriceBook& book) {
    return line.packing ? *line.packing : book.shop.packing;
}

/// What so much of a material carries.
inline Whole freightOf(const PricedMaterial& material, Whole goods) {
    const auto& freight = material.freight;
    if (freight.kind == catalogue::FreightKind::Share) return even(Wide{goods} * freight.share.ppm(), kMillion);
    if (freight.kind == catalogue::FreightKind::Nothing || freight.usualOrder.isZero()) return 0;
    return even(Wide{goods} * freight.shipping.micros(), freight.usualOrder.micros());
}

struct Coster {
    const catalogue::OrderLine& line;
    const catalogue::PriceBook& book;
    layout::FitMemo& fits;
    PlainCost cost{};
    Whole n = line.quantity.value();
    Whole setOf = line.quantity.value(); ///< pieces that share the set of templates
    std::map<base::Id, Whole> prices{};  ///< see PlainShare
    PlainSet set{};

    bool isWorkElsewhere() const { return line.first().templatesOnWall || (set.planned != 0 && set.holdsWork); }
    /// The line's part of what a set costs that is paid off.
    Whole ofSet(Whole whole) const { return even(Wide{whole} * set.carried * n, Wide{set.planned} * set.ofPieces); }

    Whole packPrice(const PricedMaterial& material) const {
        const auto known = prices.find(material.material.id);
        return known == prices.end() ? material.price->price.micros() : known->second;
    }

    Whole add(Part part, std::size_t index, Whole amount) {
        cost.parts[{part, index}] = amount;
        cost.total += amount;
        return amount;
    }

    Whole perSheet(const catalogue::SheetTraits& sheet) const {
        const auto border = sheet.border + sheet.border;
        return fits
            .count({sheet.width, sheet.height}, {line.first().width + border, line.first().height + border},
                   {sheet.margin, sheet.gap, sheet.oneWay})
            .value();
    }

    /// What `cut` pieces of a sheet material cost; by position `over`-ths of `shares` are paid. `part` of `whole` of
    /// it.
    Whole sheetCost(const PricedMaterial& material, Whole cut, Whole shares, Whole over, Wide part = 1,
                    Wide whole = 1) const {
        const auto& sheet = material.material.sheet;
        const Wide price = packPrice(material) * part;
        const Wide per = material.price->per.value() * whole;
        if (sheet.form == catalogue::SheetForm::Roll) {
            const auto border = sheet.border + sheet.border;
            const auto length = fits.length(sheet.width, {line.first().width + border, line.first().height + border},
                                            {sheet.margin, sheet.gap, sheet.oneWay}, cut);
            return even(price * length->nanometres(), per * sheet.height.nanometres());
        }
        if (sheet.basis == catalogue::ShareBasis::WholeSheets) return even(price * up(cut, perSheet(sheet)), per);
        return even(price * shares, per * over * perSheet(sheet));
    }

    /// Milliseconds.
    Whole timeOf(Step step, Whole cycles) const {
        if (catalogue::isOncePerJob(step) && isWorkElsewhere()) return 0;
        const auto& standard = book.bench.of(step);
        Whole stones = 0;
        for (const auto& stone : line.first().stones) stones += stone.count.value();
        const auto colours = static_cast<Whole>(line.first().stones.size());
        const Wide perColour = Wide{colours} * standard.perColour.milliseconds() * 100;
        const Wide perStones = Wide{stones} * standard.per100Stones.milliseconds();
        if (catalogue::isOncePerJob(step)) {
            Whole fixed = standard.perJob.milliseconds();
            if (step == Step::Art && line.first().artTime) fixed = line.first().artTime->milliseconds();
            return even((Wide{fixed} * 100 + perColour + perStones) * n, Wide{100} * setOf);
        }
        const Wide one = Wide{standard.perPiece.milliseconds()} * 100 + perColour + perStones;
        const Whole cycle = standard.perCycle.milliseconds();
        if (standard.learning.ppm() == kMillion)
            return standard.perJob.milliseconds() + even(one * n + Wide{cycle} * cycles * 100, 100);
        const long double exponent = std::log2(static_cast<long double>(standard.learning.ppm()) / kMillion);
        const auto factor = [&](Whole most) {
            long double sum = 0;
            for (Whole i = 1; i <= most; ++i) sum += std::pow(static_cast<long double>(i), exponent);
            return sum;
        };
        return standard.perJob.milliseconds() + std::llround(static_cast<long double>(one) / 100 * factor(n) +
                                                             static_cast<long double>(cycle) * factor(cycles));
    }

    /// How often a platen of `across` × `deep` covers the piece.
    static Whole covers(units::Length width, units::Length height, units::Length across, units::Length deep) {
        return up(width.nanometres(), across.nanometres()) * up(height.nanometres(), deep.nanometres());
    }

    PlainCost all(const PlainShare& share) {
        if (share.setPieces != 0) setOf = share.setPieces;
        prices = share.prices;
        set = share.set;
        const auto& rates = book.shop.rates;
        const auto& press = book.bench.press;
        const auto* base = line.customersGarment ? nullptr : book.find(line.baseMaterial);
        const bool backing = base && base->material.kind == MaterialKind::Backing;

        Whole stones = 0;
        Whole holes = 0;
        for (std::size_t i = 0; i < line.first().stones.size(); ++i) {
            const auto* stone = book.find(line.first().stones[i].material);
            const Whole count = line.first().stones[i].count.value();
            holes += count;
            stones += add(Part::Stone, i,
                          even(Wide{count} * n * packPrice(*stone) * kMillion,
                               Wide{stone->price->per.value()} * (kMillion - stone->material.stone.loss.ppm())));
        }
        Whole materials = stones;
        if (const auto* tape = book.find(book.shop.usualTape)) {
            const Whole lifts = tape->material.sheet.lifts;
            materials += add(Part::Tape, 0, sheetCost(*tape, up(n, lifts), n, lifts));
        }
        Whole paid = 0;
        if (set.planned != 0) {
            paid += add(Part::SetTemplates, 0, ofSet(set.templates));
            if (set.work != 0) add(Part::SetWork, 0, ofSet(set.work));
        } else if (const auto* sheets = book.find(book.shop.usualTemplate)) {
            const auto colours = static_cast<Whole>(line.first().stones.size());
            const bool isPlanned = line.first().plannedPieces.has_value() && !share.isOfOrder;
            const Whole planned = isPlanned ? line.first().plannedPieces->value() : 1;
            const Wide part = Wide{isPlanned ? std::min(setOf, planned) : 1} * n;
            const Whole amount = line.first().templatesOnWall ? 0
                                                              : sheetCost(*sheets, colours, colours, 1, part,
                                                                          Wide{isPlanned ? planned : 1} * setOf);
            paid += add(Part::Template, 0, amount);
            cost.setUp += amount;
        }
        if (backing) materials += add(Part::Base, 0, sheetCost(*base, n, n, 1));
        if (base && !backing) {
            materials += add(Part::BasePrice, 0, even(Wide{n} * packPrice(*base), base->price->per.value()));
            for (std::size_t i = 0; i < line.sizes.size(); ++i)
                for (const auto& size : base->material.sizes)
                    if (size.name == line.sizes[i].size && size.extraCost != units::Money{})
                        materials += add(Part::SizeExtra, i, size.extraCost.micros() * line.sizes[i].count.value());
        }
        Whole packed = 0; // a spoiled piece never gets it
        bool isForOrder = false;
        const auto& packing = packingOf(line, book);
        for (std::size_t i = 0; i < packing.size(); ++i) {
            const auto& material = *book.find(packing[i].material);
            if (packing[i].per == catalogue::PackingPer::Order)
                isForOrder = true;
            else
                packed +=
                    add(Part::PackingItem, i,
                        even(Wide{n} * packing[i].amount.value() * packPrice(material), material.price->per.value()));
        }
        if (isForOrder) paid += add(Part::OrderPacking, 0, share.packing);

        // Freight: of what stands above in cents and millionths, rounded once more.
        const auto freight = [&](Part part, std::size_t index, Part of, const PricedMaterial* material,
                                 Whole extra = 0) {
            const auto goods = cost.parts.find({of, index});
            if (!material || goods == cost.parts.end()) return Whole{0};
            const Whole carried = freightOf(*material, goods->second + extra);
            return carried == 0 ? 0 : add(part, index, carried);
        };
        for (std::size_t i = 0; i < line.first().stones.size(); ++i) {
            const Whole on = freight(Part::FreightOnStone, i, Part::Stone, book.find(line.first().stones[i].material));
            stones += on;
            materials += on;
        }
        materials += freight(Part::FreightOnTape, 0, Part::Tape, book.find(book.shop.usualTape));
        if (!line.first().templatesOnWall && set.planned == 0) {
            const Whole on = freight(Part::FreightOnTemplate, 0, Part::Template, book.find(book.shop.usualTemplate));
            paid += on;
            cost.setUp += on;
        }
        if (backing) materials += freight(Part::FreightOnBase, 0, Part::Base, base);
        Whole extras = 0;
        for (const auto& [key, amount] : cost.parts)
            if (key.first == Part::SizeExtra) extras += amount;
        if (base && !backing) materials += freight(Part::FreightOnBase, 0, Part::BasePrice, base, extras);
        for (std::size_t i = 0; i < packing.size(); ++i)
            packed += freight(Part::FreightOnPacking, i, Part::PackingItem, book.find(packing[i].material));
        if (share.freight != 0) paid += add(Part::FreightOnOrder, 0, share.freight);

        const auto border = backing ? base->material.sheet.border + base->material.sheet.border : units::Length{};
        const auto width = line.first().width + border;
        const auto height = line.first().height + border;
        const Whole presses = std::min(covers(width, height, press.platenWidth, press.platenHeight),
                                       covers(width, height, press.platenHeight, press.platenWidth));
        Whole atOnce = 1;
        if (presses == 1 && backing)
            atOnce = fits.count({press.platenWidth, press.platenHeight}, {width, height}, {}).value();
        cost.cycles = up(n, atOnce) * presses;

        Whole onceTime = 0;
        Whole pieceTime = 0;
        Whole pieceLabour = 0;
        Whole packTime = 0;
        Whole packLabour = 0;
        for (const auto step : catalogue::kSteps) {
            const Whole time = timeOf(step, cost.cycles);
            if (time == 0) continue;
            const Whole amount = add(Part::LabourStep, static_cast<std::size_t>(step),
                                     even(Wide{rates.labourPerHour.micros()} * time, kHour));
            cost.labour += amount;
            (catalogue::isOncePerJob(step) ? onceTime : pieceTime) += time;
            (catalogue::isOncePerJob(step) ? cost.setUp : pieceLabour) += amount;
            if (step != Step::Pack) continue;
            packTime = time;
            packLabour = amount;
        }
        cost.milliseconds = onceTime + pieceTime;

        const Whole cycle = (press.dwell + press.handling).milliseconds();
        const Whole second = (press.secondDwell + press.handling).milliseconds();
        const Whole running = press.runningPerHour.micros();
        Whole machine = add(Part::PressCycles, 0, even(Wide{running} * cost.cycles * cycle, kHour));
        const Wide seconds = Wide{n} * press.secondPressShare.ppm(); // in millionths
        if (seconds != 0)
            machine += add(Part::SecondPress, 0, even(running * seconds * second, Wide{kHour} * kMillion));
        paid += machine;
        if (press.warmUp != units::Duration{})
            paid += add(Part::WarmUp, 0,
                        share.warmUp >= 0 ? share.warmUp : even(Wide{running} * press.warmUp.milliseconds(), kHour));
        if (press.testPresses != 0)
            paid += add(Part::TestPress, 0,
                        share.warmUp >= 0 ? share.tests : even(Wide{running} * press.testPresses * cycle, kHour));

        const Wide worth = (press.price - press.salvage).micros();
        const Wide life = Wide{press.lifePresses} * kMillion;
        const Wide used = Wide{cost.cycles} * kMillion + seconds;
        if (share.warmUp >= 0 && press.testPresses != 0)
            add(Part::PressWear, 0, even(worth * used + Wide{share.testWear} * life, life));
        else
            add(Part::PressWear, 0, even(worth * (used + Wide{press.testPresses} * kMillion), life));
        const Whole lostWear = even(worth * used, life);
        if (!isWorkElsewhere())
            cost.setUp += add(Part::CutterWear, 0,
                              even(Wide{(book.bench.cutter.price - book.bench.cutter.salvage).micros()} * holes * n,
                                   Wide{book.bench.cutter.lifeHoles} * setOf));

        Whole lostOverhead = 0;
        if (rates.overheadPerMonth != units::Money{}) {
            const Wide month = rates.overheadPerMonth.micros();
            const Whole hours = rates.productivePerMonth.milliseconds();
            if (onceTime != 0) cost.setUp += add(Part::OverheadOnce, 0, even(month * onceTime, hours));
            add(Part::OverheadPieces, 0, even(month * pieceTime, hours));
            lostOverhead = even(month * (pieceTime - packTime), hours);
        }

        paid += materials + packed;
        if (const Whole lost = rates.spoilage.ppm(); lost != 0) {
            const Whole rest = kMillion - lost;
            const Whole things = line.customersGarment ? stones : materials + machine;
            const Whole labour = pieceLabour - packLabour;
            const Whole work = line.customersGarment ? labour : labour + lostWear + lostOverhead;
            paid += add(Part::SpoiledMaterials, 0, even(Wide{things} * lost, rest));
            add(Part::SpoiledWork, 0, even(Wide{work} * lost, rest));
            cost.spoiledLabour = even(Wide{labour} * lost, rest);
            cost.spoiledMilliseconds = even(Wide{pieceTime - packTime} * lost, rest);
            if (line.customersGarment)
                paid += add(Part::GarmentAllowance, 0, even(Wide{rates.garmentAllowance.micros()} * n * lost, rest));
        }
        cost.floor = paid;
        return cost;
    }
};

} // namespace sp::reference

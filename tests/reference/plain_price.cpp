// SPDX-License-Identifier: MIT
#include "tests/reference/plain_price.h"

#include <algorithm>
#include <cmath>
#include <strings.h>

namespace sp::reference {

namespace {

using catalogue::MaterialKind;
using catalogue::PricedMaterial;
using catalogue::Step;
using costing::Part;
using Wide = units::Int128;
using Whole = std::int64_t;

constexpr Whole kMillion = 1'000'000;
constexpr Whole kCent = 10'000;
constexpr Whole kHour = 3'600'000;

Whole up(Wide n, Wide by) { return static_cast<Whole>(n >= 0 ? (n + by - 1) / by : -(-n / by)); }

/// n / by with halves to even.
Whole even(Wide n, Wide by) {
    if (n < 0) return -even(-n, by);
    const Wide whole = n / by;
    const Wide twice = 2 * (n % by);
    return static_cast<Whole>(twice > by || (twice == by && whole % 2 == 1) ? whole + 1 : whole);
}

/// n / by with halves away from zero.
Whole away(Wide n, Wide by) { return n < 0 ? -away(-n, by) : static_cast<Whole>((2 * n + by) / (2 * by)); }

/// micro-units / by, to whole cents.
Whole cents(Wide micros, Wide by = 1) { return away(micros, by * kCent) * kCent; }

const std::vector<catalogue::PackingUse>& packingOf(const catalogue::OrderLine& line,
                                                    const catalogue::PriceBook& book) {
    return line.packing ? *line.packing : book.shop.packing;
}

/// What so much of a material carries.
Whole freightOf(const PricedMaterial& material, Whole goods) {
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

/// micro-units / by by the shop's rule, in whole cents.
Whole rounded(Wide micros, Wide by, const catalogue::Rounding& rule) {
    const Wide step = Wide{std::max<Whole>(1, rule.step)} * kCent;
    if (rule.kind == catalogue::RoundingKind::Nearest) return static_cast<Whole>(away(micros, by * step) * step);
    if (rule.kind == catalogue::RoundingKind::Up) return static_cast<Whole>(up(micros, by * step) * step);
    Whole price = rule.ending * kCent;
    if (Wide{price} * by < micros) price += up(micros - Wide{price} * by, by * 100 * kCent) * 100 * kCent;
    return price;
}

bool isExempt(const catalogue::Order& order, const catalogue::PriceBook& book) {
    if (!order.asksExemption || !book.customer || !book.customer->certificate) return false;
    const auto& paper = *book.customer->certificate;
    return paper.issuedOn <= order.quotedOn && (!paper.expiresOn || order.quotedOn <= *paper.expiresOn);
}

/// Of the rate that the line names, due or not.
Whole rateOf(const catalogue::OrderLine& line, const catalogue::PriceBook& book) {
    for (const auto& other : book.shop.rules.tax.others)
        if (other.name == line.taxRate) return other.rate.ppm();
    return book.shop.rules.tax.rate.ppm();
}

PlainLine plainLine(const catalogue::OrderLine& line, const catalogue::PriceBook& book, bool exempt,
                    layout::FitMemo& fits, const PlainShare& share) {
    const auto& rules = book.shop.rules;
    PlainLine priced;
    priced.cost = plainCost(line, book, fits, share);
    const Whole n = line.quantity.value();
    const Whole tax = rateOf(line, book);
    const bool holdsTax = rules.tax.inclusive && line.taxable && !exempt;
    // Asked with the tax inside = net × (1 + t): where no tax is due, what was set with it is divided by 1 + t.
    const Whole inside = rules.tax.inclusive ? kMillion + tax : kMillion;
    const Whole surchargeBy = holdsTax ? kMillion : inside;
    const Whole typedBy = holdsTax || !line.taxable ? kMillion : inside;

    // A size that is charged for is priced by its surcharge: its extra cost is not spread over the pieces.
    auto plain = line;
    const auto* base = line.customersGarment ? nullptr : book.find(line.baseMaterial);
    if (base)
        for (const auto& size : base->material.sizes) {
            if (size.surcharge == units::Money{}) continue;
            for (const auto& ordered : line.sizes)
                if (ordered.size == size.name)
                    priced.sizes +=
                        cents(Wide{size.surcharge.micros()} * kMillion, surchargeBy) * ordered.count.value();
            std::erase_if(plain.sizes, [&](const auto& ordered) { return ordered.size == size.name; });
        }
    for (const auto& row : rules.places)
        for (const auto& place : line.places)
            if (strcasecmp(place.place.c_str(), row.place.c_str()) == 0)
                priced.places += cents(Wide{row.surcharge.micros()} * kMillion, surchargeBy) * n;
    Whole spread = plainCost(plain, book, fits, share).total;

    Whole markUp = 0;
    for (const auto& step : rules.ladder)
        if ((share.counted != 0 ? share.counted : n) >= step.from.value()) markUp = step.markUp.ppm();
    // Of what is paid, price × (1 + t), the card keeps r: price × (1 − r × (1 + t)) is left.
    const Wide square = Wide{kMillion} * kMillion;
    const Whole onIt = line.taxable && !exempt ? tax : 0;
    const Whole taken = rules.cardFee.charged ? rules.cardFee.rate.ppm() : 0;
    const Wide left = square - Wide{taken} * (kMillion + onIt);
    priced.floor = even((Wide{priced.cost.floor} + share.cardFixed) * square, left);
    const Wide factor = kMillion + markUp;
    const Wide asked = kMillion + (holdsTax ? tax : 0);
    if (rules.setUp == catalogue::SetUpCharge::OwnLine) {
        spread -= priced.cost.setUp;
        priced.setUp = cents(priced.cost.setUp * factor * asked, left);
    }
    priced.each = line.overrideEach
                      ? cents(Wide{line.overrideEach->micros()} * kMillion, typedBy)
                      : rounded((spread * factor + Wide{share.cardFixed} * kMillion) * asked, left * n, rules.rounding);
    priced.goods = priced.each * n;
    priced.charged = priced.goods + priced.sizes + priced.places + priced.setUp;
    return priced;
}

pricing::PriceCoverage coverageOf(Whole kept, const PlainCost& cost) {
    if (kept < cost.floor) return pricing::PriceCoverage::BelowFloor;
    return kept < cost.total ? pricing::PriceCoverage::BelowCost : pricing::PriceCoverage::Pays;
}

/// What is left of `kept`, the price less the card fee, and the own wage in it, for an hour at the bench; 0 where there
/// is no such time.
Whole perHourOf(Whole kept, const PlainCost& cost) {
    const Wide time = Wide{cost.milliseconds} + cost.spoiledMilliseconds;
    if (time == 0) return 0;
    return even((Wide{kept - cost.total} + cost.labour + cost.spoiledLabour) * kHour, time);
}

/// `amount` by so much of so much in whole cents, after what went before.
struct Sharing {
    Whole amount;
    Whole all;
    Whole running = 0;
    Whole given = 0;

    Whole next(Whole weight) {
        running += weight;
        const Whole upToHere = all == 0 ? amount : cents(Wide{amount} * running, all);
        const Whole share = upToHere - given;
        given = upToHere;
        return share;
    }
};

/// What is left of each line and of all of them.
void settle(PlainOrder& priced, bool inside) {
    Sharing fee{priced.cardFee, priced.goods};
    PlainCost all;
    for (std::size_t i = 0; i < priced.lines.size(); ++i) {
        auto& line = priced.lines[i];
        line.net = line.paid;
        if (inside) line.net -= line.tax;
        line.cardFee = fee.next(line.charged);
        line.coverage = coverageOf(line.net - line.cardFee, line.cost);
        line.perHour = perHourOf(line.net - line.cardFee, line.cost);
        all.total += line.cost.total;
        all.floor += line.cost.floor;
        all.labour += line.cost.labour;
        all.milliseconds += line.cost.milliseconds;
        all.spoiledLabour += line.cost.spoiledLabour;
        all.spoiledMilliseconds += line.cost.spoiledMilliseconds;
    }
    priced.net = priced.subtotal - (inside ? priced.tax : 0);
    priced.cost = all.total;
    priced.coverage = coverageOf(priced.net - priced.cardFee, all);
    priced.perHour = perHourOf(priced.net - priced.cardFee, all);
}

/// Each material that goes with the order once is paid for the most that a line names, by those lines in proportion to
/// what they cost without it.
void sharePacking(const catalogue::Order& order, const catalogue::PriceBook& book, const std::vector<Whole>& costs,
                  std::vector<PlainShare>& shares) {
    std::map<base::Id, std::pair<Whole, std::vector<std::size_t>>> packed;
    for (std::size_t i = 0; i < order.lines.size(); ++i)
        for (const auto& use : packingOf(order.lines[i], book)) {
            if (use.per != catalogue::PackingPer::Order) continue;
            auto& [most, lines] = packed[use.material];
            most = std::max(most, use.amount.value());
            if (lines.empty() || lines.back() != i) lines.push_back(i);
        }
    for (const auto& [material, use] : packed) {
        const auto& [most, lines] = use;
        const auto& priced = *book.find(material);
        const auto known = shares[lines[0]].prices.find(material);
        const Whole price = known == shares[lines[0]].prices.end() ? priced.price->price.micros() : known->second;
        const Whole paid = even(Wide{most} * price, priced.price->per.value());
        Wide all = 0;
        for (const auto line : lines) all += costs[line];
        const auto split = [&](Whole amount, Whole PlainShare::*to) {
            Wide reached = 0;
            Whole given = 0;
            for (const auto line : lines) {
                reached += all == 0 ? 1 : costs[line];
                const Whole upTo = even(Wide{amount} * reached, all == 0 ? static_cast<Wide>(lines.size()) : all);
                shares[line].*to += upTo - given;
                given = upTo;
            }
        };
        split(paid, &PlainShare::packing);
        split(freightOf(*book.find(material), paid), &PlainShare::freight);
    }
}

bool areOneSet(const catalogue::Placement& a, const catalogue::Placement& b, const catalogue::PriceBook& book) {
    if (a.design.isNone() || a.design != b.design || a.templatesOnWall || b.templatesOnWall) return false;
    if (a.plannedPieces.has_value() != b.plannedPieces.has_value()) return false;
    if (a.width != b.width || a.height != b.height || a.stones.size() != b.stones.size()) return false;
    for (std::size_t i = 0; i < a.stones.size(); ++i) {
        const auto sizeOf = [&](const auto& row) { return book.find(row.material)->material.stone.size; };
        if (a.stones[i].count != b.stones[i].count || sizeOf(a.stones[i]) != sizeOf(b.stones[i])) return false;
    }
    return true;
}

/// The pieces of the lines that `is` says go with a line, itself among them.
Whole piecesWith(const catalogue::Order& order, std::size_t line, auto is) {
    Whole sum = 0;
    for (std::size_t i = 0; i < order.lines.size(); ++i)
        if (i == line || is(order.lines[line].first(), order.lines[i].first())) sum += order.lines[i].quantity.value();
    return sum;
}

/// What a pack of each material costs that an order takes, all of it together. Stones before their loss are added up,
/// whole sheets line by line, one set of templates for those that share it.
std::map<base::Id, Whole> packPrices(const catalogue::Order& order, const catalogue::PriceBook& book,
                                     layout::FitMemo& fits) {
    std::map<base::Id, Wide> taken;
    std::map<base::Id, Whole> once;
    for (std::size_t i = 0; i < order.lines.size(); ++i) {
        const auto& line = order.lines[i];
        const auto& place = line.first();
        const Whole n = line.quantity.value();
        const Coster coster{line, book, fits};
        for (const auto& stone : place.stones) taken[stone.material] += Wide{stone.count.value()} * n;
        const auto sheets = [&](const PricedMaterial& material, Whole cut) {
            taken[material.material.id] += up(cut, coster.perSheet(material.material.sheet));
        };
        if (const auto* tape = book.find(book.shop.usualTape)) sheets(*tape, up(n, tape->material.sheet.lifts));
        bool isFirst = !place.templatesOnWall;
        for (std::size_t k = 0; k < i; ++k) isFirst = isFirst && !areOneSet(place, order.lines[k].first(), book);
        if (const auto* sheet = book.find(book.shop.usualTemplate); sheet && isFirst)
            sheets(*sheet, static_cast<Whole>(place.stones.size()));
        if (const auto* base = line.customersGarment ? nullptr : book.find(line.baseMaterial)) {
            if (base->material.kind == MaterialKind::Backing)
                sheets(*base, n);
            else
                taken[line.baseMaterial] += n;
        }
        for (const auto& use : packingOf(line, book)) {
            if (use.per == catalogue::PackingPer::Order)
                once[use.material] = std::max(once[use.material], use.amount.value());
            else
                taken[use.material] += Wide{use.amount.value()} * n;
        }
    }
    for (const auto& [material, amount] : once) taken[material] += amount;
    std::map<base::Id, Whole> prices;
    for (const auto& [id, amount] : taken) {
        const auto& material = *book.find(id);
        const Whole kept =
            material.material.kind == MaterialKind::Stone ? kMillion - material.material.stone.loss.ppm() : kMillion;
        const Whole packs = up(up(amount * kMillion, kept), material.price->per.value());
        prices[id] = material.price->price.micros();
        for (const auto& step : material.breaks)
            if (packs >= step.from.value()) prices[id] = step.each.micros();
    }
    return prices;
}

/// How the set of a line is paid off: what is left of the plan is carried by all lines of the design, each piece the
/// same; a set that was not cut yet costs what it does today, as one piece by itself.
PlainSet plainSet(const catalogue::Order& order, std::size_t number, const catalogue::PriceBook& book,
                  layout::FitMemo& fits, const std::map<base::Id, Whole>& prices) {
    const auto& line = order.lines[number];
    const auto& place = line.first();
    if (!place.plannedPieces) return {};
    PlainSet set;
    set.planned = place.plannedPieces->value();
    for (std::size_t i = 0; i < order.lines.size(); ++i) {
        const auto& other = order.lines[i].first();
        if (i == number || (other.plannedPieces && !place.design.isNone() && other.design == place.design))
            set.ofPieces += order.lines[i].quantity.value();
    }
    const auto known = place.design.isNone() ? book.sets.end() : book.sets.find(place.design);
    const Whole sold = known == book.sets.end() ? 0 : known->second.sold.value();
    const Whole left = std::max<Whole>(0, set.planned - sold);
    if (left == 0 && !place.templatesOnWall) return {};
    set.carried = std::min(left, set.ofPieces);
    set.holdsWork = book.shop.paysOffWork;
    if (known != book.sets.end() && known->second.cost) {
        set.templates = known->second.cost->templates.micros();
        set.work = known->second.cost->work.micros();
        set.holdsWork = set.holdsWork || set.work != 0;
        return set;
    }
    auto alone = line;
    alone.quantity = units::Count::of(1);
    alone.sizes.clear();
    alone.first().templatesOnWall = false;
    alone.first().plannedPieces.reset();
    PlainShare bought;
    bought.prices = prices;
    const auto cost = plainCost(alone, book, fits, bought);
    for (const auto part : {Part::Template, Part::FreightOnTemplate})
        if (const auto at = cost.parts.find({part, 0}); at != cost.parts.end()) set.templates += at->second;
    if (set.holdsWork) set.work = cost.setUp - set.templates;
    return set;
}

/// What is done once for all of an order, with the lines by what they cost without it.
void shareOrder(const catalogue::Order& order, const catalogue::PriceBook& book, layout::FitMemo& fits,
                std::vector<PlainShare>& shares) {
    const auto& press = book.bench.press;
    const bool isPressedOnce = shares.size() > 1;
    std::vector<Whole> costs;
    const auto prices = packPrices(order, book, fits);
    for (std::size_t i = 0; i < shares.size(); ++i) {
        auto& share = shares[i];
        share.prices = prices;
        share.isOfOrder = true;
        share.set = plainSet(order, i, book, fits, prices);
        share.setPieces = piecesWith(order, i, [&](const auto& a, const auto& b) { return areOneSet(a, b, book); });
        share.counted = order.lines[i].quantity.value();
        if (book.shop.countsDesignOverLines)
            share.counted = piecesWith(
                order, i, [](const auto& a, const auto& b) { return !a.design.isNone() && a.design == b.design; });
        if (isPressedOnce) share.warmUp = 0;
        costs.push_back(plainCost(order.lines[i], book, fits, share).total);
    }
    sharePacking(order, book, costs, shares);
    if (!isPressedOnce) return;
    Wide all = 0;
    for (const auto cost : costs) all += cost;
    const auto split = [&](Whole amount, Whole PlainShare::*to) {
        Wide reached = 0;
        Whole given = 0;
        for (std::size_t i = 0; i < shares.size(); ++i) {
            reached += all == 0 ? 1 : costs[i];
            const Whole upTo = even(Wide{amount} * reached, all == 0 ? static_cast<Wide>(shares.size()) : all);
            shares[i].*to = upTo - given;
            given = upTo;
        }
    };
    const Wide running = press.runningPerHour.micros();
    split(even(running * press.warmUp.milliseconds(), kHour), &PlainShare::warmUp);
    split(even(running * press.testPresses * (press.dwell + press.handling).milliseconds(), kHour), &PlainShare::tests);
    split(even(Wide{(press.price - press.salvage).micros()} * press.testPresses, press.lifePresses),
          &PlainShare::testWear);
}

} // namespace

PlainCost plainCost(const catalogue::OrderLine& line, const catalogue::PriceBook& book, layout::FitMemo& fits,
                    const PlainShare& share) {
    return Coster{line, book, fits}.all(share);
}

PlainOrder plainPrice(const catalogue::Order& order, const catalogue::PriceBook& book, layout::FitMemo& fits) {
    const auto& rules = book.shop.rules;
    const bool exempt = isExempt(order, book);
    PlainOrder priced;
    const auto lines = static_cast<Whole>(order.lines.size());
    // A deposit is a payment of its own.
    const bool isTwice = rules.depositRate.ppm() > 0 && rules.depositRate.ppm() < kMillion;
    Whole fixedLeft = rules.cardFee.charged ? rules.cardFee.fixed.micros() * (isTwice ? 2 : 1) : 0;
    std::vector<PlainShare> shares(order.lines.size());
    for (Whole i = 0; i < lines; ++i) {
        auto& share = shares[static_cast<std::size_t>(i)];
        share.cardFixed = up(fixedLeft, lines - i); // the first ones take what is left over
        fixedLeft -= share.cardFixed;
    }
    shareOrder(order, book, fits, shares);
    for (Whole i = 0; i < lines; ++i) {
        const auto& share = shares[static_cast<std::size_t>(i)];
        priced.lines.push_back(plainLine(order.lines[static_cast<std::size_t>(i)], book, exempt, fits, share));
        priced.goods += priced.lines.back().charged;
    }
    if (order.wantedBy) {
        const auto days = order.quotedOn.daysUntil(*order.wantedBy);
        const auto step = std::ranges::find_if(rules.rush, [&](const auto& row) { return days <= row.days; });
        if (step != rules.rush.end()) priced.rush = cents(Wide{priced.goods} * step->surcharge.ppm(), kMillion);
    }
    const Whole before = priced.goods + priced.rush;
    if (order.discount.share)
        priced.discount = cents(Wide{before} * order.discount.share->ppm(), kMillion);
    else if (order.discount.amount)
        priced.discount = cents(order.discount.amount->micros());
    const bool isFree = exempt || std::ranges::none_of(order.lines, [](const auto& line) { return line.taxable; });
    const Whole minimumBy = rules.tax.inclusive && isFree ? kMillion + rules.tax.rate.ppm() : kMillion;
    const Whole minimum = cents(Wide{rules.minimumOrder.micros()} * kMillion, minimumBy);
    priced.minimumOrderCharge = std::max<Whole>(0, minimum - (before - priced.discount));
    priced.subtotal = before - priced.discount + priced.minimumOrderCharge;

    // What was put on or taken off is shared by what each line charges; each running total is rounded to the cent.
    Sharing added{priced.subtotal - priced.goods, priced.goods};
    std::map<std::string, std::pair<Whole, Whole>> taxable; // by name: what is taxed, at what rate
    const auto of = [&](Whole rate) { return rules.tax.inclusive ? kMillion + rate : kMillion; };
    for (std::size_t i = 0; i < priced.lines.size(); ++i) {
        auto& line = priced.lines[i];
        line.paid = line.charged + added.next(line.charged);
        if (exempt || !order.lines[i].taxable) continue;
        const Whole rate = rateOf(order.lines[i], book);
        auto& sum = taxable[order.lines[i].taxRate];
        sum = {sum.first + line.paid, rate};
        if (rules.tax.rounding == catalogue::TaxRounding::PerLine) line.tax = cents(Wide{line.paid} * rate, of(rate));
    }
    for (const auto& [name, sum] : taxable) {
        const auto& [paid, rate] = sum;
        Whole all = cents(Wide{paid} * rate, of(rate));
        if (rules.tax.rounding == catalogue::TaxRounding::PerLine) {
            all = 0;
            for (std::size_t i = 0; i < priced.lines.size(); ++i)
                if (order.lines[i].taxRate == name) all += priced.lines[i].tax;
        }
        priced.tax += all;
        // What each line holds of it, by what it comes to.
        Sharing held{all, paid};
        for (std::size_t i = 0; i < priced.lines.size(); ++i)
            if (order.lines[i].taxable && order.lines[i].taxRate == name)
                priced.lines[i].tax = held.next(priced.lines[i].paid);
    }
    const bool inside = rules.tax.inclusive && !exempt;
    priced.total = priced.subtotal + (inside ? 0 : priced.tax);
    const Whole step = rules.depositStep.micros() > 0 ? rules.depositStep.micros() : kCent;
    const Whole share = even(Wide{priced.total} * rules.depositRate.ppm(), kMillion);
    priced.deposit = std::min(priced.total, up(share, step) * step);
    if (rules.cardFee.charged) {
        const Whole payments = (priced.deposit != 0 ? 1 : 0) + (priced.deposit != priced.total ? 1 : 0);
        priced.cardFee = cents(Wide{priced.total} * rules.cardFee.rate.ppm() +
                                   Wide{rules.cardFee.fixed.micros()} * payments * kMillion,
                               kMillion);
    }
    settle(priced, inside);
    return priced;
}

} // namespace sp::reference

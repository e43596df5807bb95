// SPDX-License-Identifier: MIT
#include "tests/reference/plain_price.h"

#include "tests/reference/plain_coster.h"
#include "tests/reference/plain_sharing.h"

#include <strings.h>

namespace sp::reference {

namespace {

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
    if (!order.asksExemption || !book.customer) return false;
    const auto isGood = [&](const catalogue::Certificate& paper) {
        return paper.issuedOn <= order.quotedOn && (!paper.expiresOn || order.quotedOn <= *paper.expiresOn);
    };
    const auto& others = book.customer->otherCertificates;
    return (book.customer->certificate && isGood(*book.customer->certificate)) || std::ranges::any_of(others, isGood);
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

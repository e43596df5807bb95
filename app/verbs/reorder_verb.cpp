// SPDX-License-Identifier: MIT
#include "app/verbs/verb_kit.h"
#include "core/units/text.h"
#include "db/book/shelf_reorder.h"

#include <algorithm>

namespace sp::verbs {

namespace {

constexpr std::int64_t kUsualDays = 90; ///< looked at where nobody says how many
constexpr std::int64_t kMostDays = 3'650;

struct ReorderAsked {
    std::int64_t days = kUsualDays;
    supply::Service service = supply::Service::Percent95;
    std::optional<units::Money> perOrder = {};
    units::Rate holding = {};
};

base::Result<supply::Service> serviceOf(const Arguments& arguments) {
    const auto typed = arguments.value("--service").value_or("95");
    const std::pair<const char*, supply::Service> known[] = {{"90", supply::Service::Percent90},
                                                             {"95", supply::Service::Percent95},
                                                             {"98", supply::Service::Percent98},
                                                             {"99", supply::Service::Percent99}};
    for (const auto& [text, service] : known)
        if (typed == text) return service;
    return words::fail(base::Code::OutOfRange, "--service",
                       QT_TRANSLATE_NOOP("App", "--service must be 90, 95, 98 or 99, not “%1”."), typed);
}

tl::unexpected<base::Error> notAboveNothing(const char* option, const std::string& typed) {
    return words::fail(base::Code::OutOfRange, option,
                       QT_TRANSLATE_NOOP("App", "%1 must be more than nothing, not “%2”."), option, typed);
}

base::Result<ReorderAsked> reorderAsked(const Arguments& arguments, const units::Currency& currency) {
    ReorderAsked asked;
    if (const auto typed = arguments.value("--days")) {
        const auto days = units::parseCount(*typed);
        if (!days) return base::fail(days.error());
        if (days->value() < 2 || days->value() > kMostDays)
            return words::fail(base::Code::OutOfRange, "--days",
                               QT_TRANSLATE_NOOP("App", "--days must be 2 to %1, not “%2”."), kMostDays, *typed);
        asked.days = days->value();
    }
    const auto service = serviceOf(arguments);
    if (!service) return base::fail(service.error());
    asked.service = *service;
    const auto perOrder = arguments.value("--order-cost");
    const auto holding = arguments.value("--holding");
    if (perOrder.has_value() != holding.has_value())
        return words::fail(base::Code::Missing, perOrder ? "--holding" : "--order-cost",
                           QT_TRANSLATE_NOOP("App", "How much to order is worked out from --order-cost and --holding "
                                                    "together: give both, or neither."));
    if (!perOrder) return asked;
    const auto money = units::parseMoney(*perOrder, currency);
    if (!money) return base::fail(money.error());
    const auto rate = units::parseRate(*holding);
    if (!rate) return base::fail(rate.error());
    if (*money <= units::Money()) return notAboveNothing("--order-cost", *perOrder);
    if (*rate <= units::Rate()) return notAboveNothing("--holding", *holding);
    asked.perOrder = *money;
    asked.holding = *rate;
    return asked;
}

/// How many of the usual pack of a material to order at a time; nothing where it has none, nobody said what an order
/// costs, or too little of its use is known. Errors: those of supply::economicOrderOf.
base::Result<std::optional<std::pair<supply::EconomicOrder, catalogue::Pack>>>
orderOfPacks(const db::ReorderState& state, const std::vector<catalogue::Pack>& packs, const ReorderAsked& asked) {
    const auto pack =
        std::ranges::find_if(packs, [&](const auto& one) { return one.material == state.material && one.usual; });
    if (!asked.perOrder || pack == packs.end()) return std::nullopt;
    if (state.demand.used == 0 || !state.isKnownLongEnough()) return std::nullopt;
    const auto used = supply::packsInAYear(state.demand, pack->amount);
    const auto order = supply::economicOrderOf({used, *asked.perOrder, asked.holding, pack->prices});
    if (!order) return base::fail(order.error());
    return std::pair(*order, *pack);
}

/// Why there is no point.
std::string pointlessLine(const db::ReorderState& state, const std::string& name, std::int64_t daysAsked) {
    const auto unpromised = state.there.free();
    const auto& [used, days, perDay, variance] = state.demand;
    std::string text;
    if (unpromised < 0)
        text = line(QT_TRANSLATE_NOOP("App", "%1: %2 lacking for agreed jobs; order now."), name, -unpromised);
    if (state.whyNone) text += words::text(base::about(name, *state.whyNone)) + "\n";
    if (!text.empty()) return text;
    if (!state.isKnownLongEnough())
        return days < daysAsked
                   ? line(QT_TRANSLATE_NOOP("App", "%1: days known: %2, too few to tell when to order; look again "
                                                   "later."),
                          name, days)
                   : line(QT_TRANSLATE_NOOP("App", "%1: days looked at: %2, too few to tell when to order; look at "
                                                   "more with --days."),
                          name, days);
    return line(QT_TRANSLATE_NOOP("App", "%1: when to order is not known; give its supplier lead days. Free: %2, "
                                         "used: %3, days looked at: %4."),
                name, unpromised, used, days);
}

std::string reorderLine(const db::ReorderState& state, const std::string& name, std::int64_t daysAsked) {
    if (!state.point) return pointlessLine(state, name, daysAsked);
    const auto* sentence = state.isLow().value_or(false)
                               ? QT_TRANSLATE_NOOP("App", "%1: order now. Free: %2, low at: %3 (used: %4, days looked "
                                                          "at: %5, lead days: %6, kept for days of more use: %7).")
                               : QT_TRANSLATE_NOOP("App", "%1: enough is there. Free: %2, low at: %3 (used: %4, days "
                                                          "looked at: %5, lead days: %6, kept for days of more use: "
                                                          "%7).");
    return line(sentence, name, state.there.free(), state.point->point, state.demand.used, state.demand.days,
                *state.leadDays, state.point->safety);
}

template<class Value>
Json orNothing(const std::optional<Value>& value) {
    return value ? Json(*value) : Json(nullptr);
}

Json reorderJson(const db::ReorderState& state, const std::string& name) {
    const auto isKnown = state.point.has_value();
    return {{"material", name},
            {"on_hand", state.there.onHand},
            {"promised", state.there.promised},
            {"free", state.there.free()},
            {"used", state.demand.used},
            {"days", state.demand.days},
            {"lead_days", orNothing(state.leadDays)},
            {"safety", isKnown ? Json(state.point->safety) : Json(nullptr)},
            {"reorder_point", isKnown ? Json(state.point->point) : Json(nullptr)},
            {"low", orNothing(state.isLow())},
            {"why_no_point", state.whyNone ? Json(state.whyNone->fault.name) : Json(nullptr)},
            {"order_packs", nullptr},
            {"pack", nullptr},
            {"why_no_order", nullptr}};
}

struct ReorderRow {
    Json json;
    std::string text;
};

/// What is said of one material; what is wrong with it stands in its row, and the others go on.
ReorderRow reorderRow(const db::ReorderState& state, const std::string& name, const std::vector<catalogue::Pack>& packs,
                      const ReorderAsked& asked) {
    ReorderRow row{reorderJson(state, name), reorderLine(state, name, asked.days)};
    const auto order = orderOfPacks(state, packs, asked);
    if (!order) {
        row.json["why_no_order"] = order.error().fault.name;
        row.text += words::text(base::about(name, order.error())) + "\n";
    } else if (*order) {
        const auto& [best, pack] = **order;
        row.json["order_packs"] = best.packs;
        row.json["pack"] = pack.name;
        row.text += line(QT_TRANSLATE_NOOP("App", "%1: ordering %2 of “%3” at a time costs least in a year."), name,
                         best.packs, pack.name);
    }
    return row;
}

} // namespace

Outcome reorderVerb(const Arguments& arguments, const Helpers& helpers) {
    auto book = openBook(arguments, helpers);
    if (!book) return refused(book.error());
    const auto shop = (*book)->shop();
    if (!shop) return refused(shop.error());
    const auto asked = reorderAsked(arguments, shop->currency);
    if (!asked) return refused(asked.error());
    const auto materials = (*book)->materials();
    if (!materials) return refused(materials.error());
    const auto packs = (*book)->packs();
    if (!packs) return refused(packs.error());
    db::BenchReader reader;
    const auto states = db::readReorder(**book, reader, asked->days, asked->service);
    if (!states) return refused(states.error());
    const auto shelf = db::readShelf(**book, reader);
    if (!shelf) return refused(shelf.error());
    Json list = Json::array();
    std::string text;
    for (const auto& state : *states) {
        const auto& name = std::ranges::find(*materials, state.material, &catalogue::Material::id)->name;
        auto row = reorderRow(state, name, *packs, *asked);
        text += row.text;
        list.push_back(std::move(row.json));
    }
    if (text.empty()) text = line(QT_TRANSLATE_NOOP("App", "Nothing was taken off the shelf in these days."));
    text += notReckonedLines(shelf->notReckoned);
    return answer(arguments,
                  {{"materials", std::move(list)}, {"days", asked->days}, {"not_reckoned", shelf->notReckoned}}, text);
}

} // namespace sp::verbs

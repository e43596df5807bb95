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
    asked.perOrder = *money;
    asked.holding = *rate;
    return asked;
}

/// How many of the usual pack of a material to order at a time; nothing where it has none, or nobody said what an order
/// costs.
base::Result<std::optional<std::pair<supply::EconomicOrder, catalogue::Pack>>>
orderOfPacks(const db::ReorderState& state, const std::vector<catalogue::Pack>& packs, const ReorderAsked& asked) {
    const auto pack = std::ranges::find_if(
        packs, [&](const auto& one) { return one.material == state.material && one.usual && !one.prices.empty(); });
    if (!asked.perOrder || pack == packs.end()) return std::nullopt;
    const auto used = supply::packsInAYear(state.demand, pack->amount);
    const auto order = supply::economicOrderOf({used, *asked.perOrder, asked.holding, pack->prices});
    if (!order) return base::fail(order.error());
    return std::pair(*order, *pack);
}

std::string reorderLine(const db::ReorderState& state, const std::string& name) {
    const auto& [used, days, perDay, variance] = state.demand;
    if (!state.point)
        return line(QT_TRANSLATE_NOOP("App", "%1: when to order is not known; give its supplier lead days. Free: %2, "
                                             "used: %3, days looked at: %4."),
                    name, state.there.free(), used, days);
    const auto* sentence =
        state.isLow() ? QT_TRANSLATE_NOOP("App", "%1: order now. Free: %2, low at: %3 (used: %4, days looked at: %5, "
                                                 "lead days: %6, kept for days of more use: %7).")
                      : QT_TRANSLATE_NOOP("App", "%1: enough is there. Free: %2, low at: %3 (used: %4, days looked at: "
                                                 "%5, lead days: %6, kept for days of more use: %7).");
    return line(sentence, name, state.there.free(), state.point->point, used, days, *state.leadDays,
                state.point->safety);
}

Json reorderJson(const db::ReorderState& state, const std::string& name) {
    Json row{{"material", name},
             {"on_hand", state.there.onHand},
             {"promised", state.there.promised},
             {"free", state.there.free()},
             {"used", state.demand.used},
             {"days", state.demand.days},
             {"lead_days", nullptr},
             {"safety", nullptr},
             {"reorder_point", nullptr},
             {"low", state.isLow()}};
    if (!state.point) return row;
    row["lead_days"] = *state.leadDays;
    row["safety"] = state.point->safety;
    row["reorder_point"] = state.point->point;
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
    Json list = Json::array();
    std::string text;
    for (const auto& state : *states) {
        const auto& name = std::ranges::find(*materials, state.material, &catalogue::Material::id)->name;
        auto row = reorderJson(state, name);
        text += reorderLine(state, name);
        const auto order = orderOfPacks(state, *packs, *asked);
        if (!order) return refused(order.error());
        if (*order) {
            const auto& [best, pack] = **order;
            row["order_packs"] = best.packs;
            row["pack"] = pack.name;
            text += line(QT_TRANSLATE_NOOP("App", "%1: ordering %2 of “%3” at a time costs least in a year."), name,
                         best.packs, pack.name);
        }
        list.push_back(std::move(row));
    }
    if (text.empty()) text = line(QT_TRANSLATE_NOOP("App", "Nothing was taken off the shelf in these days."));
    return answer(arguments, {{"materials", std::move(list)}, {"days", asked->days}}, text);
}

} // namespace sp::verbs

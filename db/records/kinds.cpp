// SPDX-License-Identifier: MIT
#include "db/records/record.h"
#include "db/records/shapes.h"

#include <algorithm>
#include <array>

namespace sp::db::records {

namespace {

/// Version 2 of a priced material: before, an English sentence said where its price comes from.
void originInCode(Json& priced) {
    constexpr std::string_view kBare = "nothing with a cost is on the shelf; ";
    constexpr std::pair<std::string_view, std::string_view> kSentences[] = {
        {"", "unsaid"},
        {"fixed price", "fixed"},
        {"average of the shelf", "shelf-average"},
        {"no pack of it is known", "no-pack"},
        {"its fixed price is not set", "not-fixed"}};
    auto said = takeOut(priced, "price_from").get<std::string>();
    const bool isBare = said.starts_with(kBare);
    if (isBare) said.erase(0, kBare.size());
    std::string_view kind = "pack";
    for (const auto& [sentence, code] : kSentences)
        if (said == sentence) kind = code;
    priced["origin"] = {{"kind", kind},
                        {"shelf_is_bare", isBare},
                        {"supplier", ""},
                        {"pack", kind == "pack" ? said : std::string()},
                        {"priced_on", nullptr}};
}

/// Version 2 of a movement: before, nobody said of what kind it was.
void movementGetsKind(Json& move) {
    const auto cost = move.is_object() ? move.find("cost_micros") : move.end();
    if (!move.is_object() || cost == move.end()) refuseKey("cost_micros");
    move["kind"] = cost->is_null() ? "counted" : "bought";
}

/// Version 2 of a quote of before papers had results.
void quoteGetsPlaces(Json& quote) {
    const auto order = quote.is_object() ? quote.find("order") : quote.end();
    if (!quote.is_object() || order == quote.end()) refuseKey("order");
    linesGetPlaces(*order);
}

} // namespace

int newestVersion(std::string_view kind, const catalogue::fields::Object& object,
                  const std::vector<Upgrade>& upgrades) {
    int newest = static_cast<int>(upgrades.size()) + 1;
    catalogue::fields::forEachField(object, [&](const auto& field) { newest = std::max(newest, field.sinceIn(kind)); });
    return newest;
}

// A kind of which fields were moved, split or renamed has its upgrades here, from version 1 on; null for a version with
// which fields only came new and after which there is another upgrade: makeKind<Order>("order", {nullptr, &orderOf3}).

template<>
const Kind& kindOf<catalogue::Shop>() {
    static const Kind kind = [] {
        auto shop = makeKind<catalogue::Shop>("shop", {&shopGetsLists});
        shop.inShape = &shopInShape;
        shop.outOfShape = &shopOutOfShape;
        return shop;
    }();
    return kind;
}
template<>
const Kind& kindOf<catalogue::BenchStandards>() {
    static const Kind kind = makeKind<catalogue::BenchStandards>("bench");
    return kind;
}
template<>
const Kind& kindOf<catalogue::Material>() {
    static const Kind kind = makeKind<catalogue::Material>("material");
    return kind;
}
template<>
const Kind& kindOf<catalogue::Supplier>() {
    static const Kind kind = makeKind<catalogue::Supplier>("supplier");
    return kind;
}
template<>
const Kind& kindOf<catalogue::Pack>() {
    static const Kind kind = makeKind<catalogue::Pack>("pack");
    return kind;
}
template<>
const Kind& kindOf<catalogue::Kit>() {
    static const Kind kind = makeKind<catalogue::Kit>("kit");
    return kind;
}
template<>
const Kind& kindOf<ArtworkRecord>() {
    static const Kind kind = makeKind<ArtworkRecord>("artwork");
    return kind;
}
template<>
const Kind& kindOf<catalogue::ColourMaterial>() {
    static const Kind kind = makeKind<catalogue::ColourMaterial>("colour");
    return kind;
}
template<>
const Kind& kindOf<catalogue::PriceListColumns>() {
    static const Kind kind = makeKind<catalogue::PriceListColumns>("columns");
    return kind;
}
template<>
const Kind& kindOf<catalogue::Design>() {
    static const Kind kind = makeKind<catalogue::Design>("design");
    return kind;
}
template<>
const Kind& kindOf<catalogue::Customer>() {
    static const Kind kind = makeKind<catalogue::Customer>("customer");
    return kind;
}
template<>
const Kind& kindOf<catalogue::Order>() {
    static const Kind kind = [] {
        auto order = makeKind<catalogue::Order>("order", {&orderGetsChoices, nullptr, &orderLooksAtChoice});
        order.inShape = &orderInShape;
        order.outOfShape = &orderOutOfShape;
        return order;
    }();
    return kind;
}
template<>
const Kind& kindOf<catalogue::PricedMaterial>() {
    static const Kind kind = makeKind<catalogue::PricedMaterial>("priced-material", {&originInCode});
    return kind;
}
template<>
const Kind& kindOf<StockMove>() {
    static const Kind kind = makeKind<StockMove>("movement", {&movementGetsKind});
    return kind;
}
template<>
const Kind& kindOf<StageMark>() {
    static const Kind kind = makeKind<StageMark>("stage");
    return kind;
}
template<>
const Kind& kindOf<catalogue::Payment>() {
    static const Kind kind = makeKind<catalogue::Payment>("payment");
    return kind;
}
template<>
const Kind& kindOf<PriceList>() {
    static const Kind kind = makeKind<PriceList>("price-list");
    return kind;
}
template<>
const Kind& kindOf<SealedQuote>() {
    static const Kind kind = makeKind<SealedQuote>("sealed-quote", {&quoteGetsPlaces});
    return kind;
}
template<>
const Kind& kindOf<SealedPaper>() {
    static const Kind kind = makeKind<SealedPaper>("sealed-paper");
    return kind;
}
template<>
const Kind& kindOf<SealedPerson>() {
    static const Kind kind = makeKind<SealedPerson>("sealed-person");
    return kind;
}
template<>
const Kind& kindOf<PaperResult>() {
    static const Kind kind = makeKind<PaperResult>("paper-result");
    return kind;
}
template<>
const Kind& kindOf<SealedResult>() {
    static const Kind kind = makeKind<SealedResult>("sealed-result");
    return kind;
}
template<>
const Kind& kindOf<BillResult>() {
    static const Kind kind = makeKind<BillResult>("bill");
    return kind;
}

std::span<const Kind* const> allKinds() {
    static const std::array kinds{
        &kindOf<catalogue::Shop>(),
        &kindOf<catalogue::BenchStandards>(),
        &kindOf<catalogue::Material>(),
        &kindOf<catalogue::Supplier>(),
        &kindOf<catalogue::Pack>(),
        &kindOf<catalogue::Kit>(),
        &kindOf<ArtworkRecord>(),
        &kindOf<catalogue::ColourMaterial>(),
        &kindOf<catalogue::PriceListColumns>(),
        &kindOf<catalogue::Design>(),
        &kindOf<catalogue::Customer>(),
        &kindOf<catalogue::Order>(),
        &kindOf<catalogue::PricedMaterial>(),
        &kindOf<StockMove>(),
        &kindOf<StageMark>(),
        &kindOf<catalogue::Payment>(),
        &kindOf<PriceList>(),
        &kindOf<SealedQuote>(),
        &kindOf<SealedPaper>(),
        &kindOf<SealedPerson>(),
        &kindOf<PaperResult>(),
        &kindOf<SealedResult>(),
        &kindOf<BillResult>(),
    };
    return kinds;
}

const Kind* kindNamed(std::string_view name) {
    const auto kinds = allKinds();
    const auto found = std::find_if(kinds.begin(), kinds.end(), [&](const Kind* kind) { return kind->name == name; });
    return found == kinds.end() ? nullptr : *found;
}

} // namespace sp::db::records

// SPDX-License-Identifier: MIT
#include "db/records/shapes.h"

#include "db/db_error.h"

#include <initializer_list>

namespace sp::db::records {

namespace {

void move(Json& from, Json& to, std::initializer_list<const char*> keys) {
    for (const auto* key : keys) {
        if (to.contains(key)) refuseKey(key);
        to[key] = takeOut(from, key);
    }
}

/// Takes out what only a later program knows how to use, as long as it is as this one writes it.
void takePlain(Json& object, const char* key, const Json& plain) {
    if (takeOut(object, key) == plain) return;
    throwError(Fault::RecordHoldsLater, key);
}

void expectEmpty(const Json& object) {
    if (!object.is_object() || !object.empty()) throwError(Fault::RecordHoldsMore, {});
}

Json& listAt(Json& object, const char* key) {
    const auto found = object.is_object() ? object.find(key) : object.end();
    if (!object.is_object() || found == object.end() || !found->is_array()) refuseKey(key);
    return *found;
}

constexpr const char* kCut = "cut";
constexpr const char* kOnWall = "wall";
constexpr const char* kPiece = "piece";
constexpr const char* kCharge = "charge";

void placeInShape(Json& place) {
    const Json onWall = takeOut(place, "templates_on_wall");
    if (!onWall.is_boolean()) refuseKey("templates_on_wall");
    place["templates"] = onWall.get<bool>() ? kOnWall : kCut;
    place["entries"] = Json::array();
    place["position"] = nullptr;
}

void placeOutOfShape(Json& place) {
    takePlain(place, "entries", Json::array());
    takePlain(place, "position", nullptr);
    const Json templates = takeOut(place, "templates");
    if (templates != kCut && templates != kOnWall) refuseKey("templates");
    if (place.contains("templates_on_wall")) refuseKey("templates_on_wall");
    place["templates_on_wall"] = templates == kOnWall;
}

void lineInShape(Json& line) {
    auto& places = listAt(line, "places");
    line["kind"] = places.empty() ? kCharge : kPiece;
    for (auto& place : places) placeInShape(place);
}

void lineOutOfShape(Json& line) {
    auto& places = listAt(line, "places");
    for (auto& place : places) placeOutOfShape(place);
    const bool isCharge = places.empty();
    if (takeOut(line, "kind") != (isCharge ? kCharge : kPiece)) refuseKey("kind");
}

/// The numbers of its items that a list may be asked for.
std::size_t takeNumberIn(Json& object, const char* key, std::size_t items) {
    const Json number = takeOut(object, key);
    if (!number.is_number_integer() || number < 0 || number.get<std::uint64_t>() >= items) refuseKey(key);
    return number.get<std::size_t>();
}

} // namespace

void linesGetPlaces(Json& order) {
    for (auto& line : listAt(order, "lines")) {
        Json place = {{"place", ""}, {"title", ""}};
        move(line, place,
             {"design", "width_nm", "height_nm", "stones", "planned_pieces", "art_time_ms", "templates_on_wall"});
        line["places"] = Json::array({std::move(place)});
    }
}

void orderGetsChoices(Json& order) {
    linesGetPlaces(order);
    order["at_no_charge"] = false;
    for (auto& line : listAt(order, "lines")) {
        line["tax_rate"] = "";
        line["at_no_charge"] = false;
        for (auto& place : listAt(line, "places")) place.erase("title");
        lineInShape(line);
    }
    Json choice = {{"title", ""}};
    move(order, choice, {"discount", "lines"});
    order["choices"] = Json::array({std::move(choice)});
}

void orderLooksAtChoice(Json& order) {
    const auto& choices = listAt(order, "choices");
    if (choices.size() != 1) refuseKey("choices");
    order["choice"] = 0;
}

void orderInShape(Json& order) {
    Json looked = Json::object();
    move(order, looked, {"title", "discount", "lines"});
    Json choices = takeOut(order, "others");
    if (!choices.is_array()) refuseKey("others");
    const auto number = order.at("choice").get<std::size_t>();
    choices.insert(choices.begin() + static_cast<std::ptrdiff_t>(number), std::move(looked));
    for (auto& choice : choices)
        for (auto& line : listAt(choice, "lines")) lineInShape(line);
    order["choices"] = std::move(choices);
}

void orderOutOfShape(Json& order) {
    Json choices = takeOut(order, "choices");
    if (!choices.is_array()) refuseKey("choices");
    for (auto& choice : choices)
        for (auto& line : listAt(choice, "lines")) lineOutOfShape(line);
    const auto number = takeNumberIn(order, "choice", choices.size());
    Json looked = std::move(choices[number]);
    choices.erase(number);
    move(looked, order, {"title", "discount", "lines"});
    expectEmpty(looked);
    order["choice"] = number;
    order["others"] = std::move(choices);
}

void shopGetsLists(Json& shop) {
    for (auto& packing : listAt(shop, "packing"))
        packing = {{"material", std::move(packing)}, {"amount", 1}, {"per", "piece"}};
    Json rules = takeOut(shop, "rules");
    Json tax = takeOut(rules, "tax");
    if (!tax.is_object()) refuseKey("tax");
    tax["others"] = Json::array();
    rules["tax"] = std::move(tax);
    shop["rules"] = std::move(rules);
    shopInShape(shop);
}

void shopInShape(Json& shop) {
    Json rules = takeOut(shop, "rules");
    Json tax = takeOut(rules, "tax");
    Json rate = Json::object();
    move(tax, rate, {"name", "rate_ppm"});
    Json others = takeOut(tax, "others");
    if (!others.is_array()) refuseKey("others");
    others.insert(others.begin(), std::move(rate));
    tax["rates"] = std::move(others);
    rules["tax"] = std::move(tax);
    shop["rules"] = std::move(rules);
}

void shopOutOfShape(Json& shop) {
    Json rules = takeOut(shop, "rules");
    Json tax = takeOut(rules, "tax");
    Json rates = takeOut(tax, "rates");
    if (!rates.is_array() || rates.empty()) refuseKey("rates");
    Json usual = std::move(rates[0]);
    rates.erase(rates.begin());
    move(usual, tax, {"name", "rate_ppm"});
    expectEmpty(usual);
    tax["others"] = std::move(rates);
    rules["tax"] = std::move(tax);
    shop["rules"] = std::move(rules);
}

} // namespace sp::db::records

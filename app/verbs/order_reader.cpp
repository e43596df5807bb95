// SPDX-License-Identifier: MIT
#include "app/verbs/order_reader.h"

#include "app/verbs/named.h"
#include "app/verbs/problem_reader.h"
#include "core/catalogue/fields/names.h"
#include "core/units/text.h"

#include <utility>

namespace sp::verbs {

namespace {

using base::Code;
using catalogue::MaterialKind;

template<class T>
T valueOrThrow(base::Result<T> result) {
    if (!result) throw ProblemError{result.error()};
    return std::move(*result);
}

[[noreturn]] void throwAt(const std::string& place, const char* sentence) {
    throw ProblemError{words::makeError(Code::Invalid, place, sentence, place)};
}

class OrderReader {
  public:
    OrderReader(db::Book& book, units::Date today)
        : m_designs(valueOrThrow(book.designs()))
        , m_materials(valueOrThrow(book.materials()))
        , m_customers(valueOrThrow(book.customers()))
        , m_today(today) {}

    OrderFor read(ProblemObject& object) {
        OrderFor of;
        auto& order = of.order;
        order.quotedOn = object.has("day") ? day(object, "day") : m_today;
        if (object.has("due")) order.wantedBy = day(object, "due");
        if (object.has("customer"))
            if (const auto set = setCustomer(of, m_customers, object.text("customer")); !set)
                throw ProblemError{set.error()};
        if (object.has("at_no_charge")) order.atNoCharge = object.flag("at_no_charge");
        if (object.has("exempt")) order.asksExemption = object.flag("exempt");
        if (object.has("choices"))
            readChoices(object, order);
        else
            readChoice(object, order);
        return of;
    }

  private:
    /// The first is looked at.
    void readChoices(ProblemObject& object, catalogue::Order& order) const {
        auto choices = object.list("choices");
        if (choices.empty() || choices.size() > catalogue::kMaxChoices)
            throwAt(object.place("choices"), QT_TRANSLATE_NOOP("App", "%1 must hold one to four choices."));
        for (auto& one : choices) {
            if (&one != &choices.front()) catalogue::addChoice(order);
            if (one.has("title")) order.title = one.text("title");
            readChoice(one, order);
            one.done();
        }
        catalogue::lookAtChoice(order, 0);
    }

    void readChoice(ProblemObject& object, catalogue::Order& order) const {
        order.discount = {};
        order.lines.clear();
        if (object.has("discount")) readDiscount(object, order.discount);
        for (auto& line : object.list("lines")) {
            order.lines.push_back(readLine(line));
            line.done();
        }
    }

    static units::Date day(ProblemObject& object, std::string_view key) {
        return valueOrThrow(units::Date::parse(object.text(key)));
    }

    static void readDiscount(ProblemObject& object, catalogue::Discount& discount) {
        auto given = object.object("discount");
        if (given.has("share") == given.has("amount"))
            throwAt(object.place("discount"),
                    QT_TRANSLATE_NOOP("App", "%1 must have either a share or an amount, as in {\"share\":\"0.1\"}."));
        if (given.has("share")) discount.share = given.rate("share");
        if (given.has("amount")) discount.amount = given.money("amount");
        given.done();
    }

    catalogue::OrderLine readLine(ProblemObject& object) const {
        catalogue::OrderLine line;
        if (object.has("charge")) {
            line.title = object.text("charge");
            line.places.clear();
        } else if (object.has("places")) {
            readPlaces(object, line);
        } else {
            line.first() = readPlace(object, line, true);
            line.title = std::exchange(line.first().title, {});
        }
        line.quantity = object.count("pieces");
        readBase(object, line);
        if (object.has("sizes")) line.sizes = readSizes(object);
        if (object.has("packing")) line.packing = readPacking(object);
        if (object.has("price_each")) line.overrideEach = object.money("price_each");
        if (object.has("taxable")) line.taxable = object.flag("taxable");
        if (object.has("at_no_charge")) line.atNoCharge = object.flag("at_no_charge");
        if (object.has("tax_rate")) line.taxRate = object.text("tax_rate");
        return line;
    }

    /// A design as it is in the book, or as the order says; it gives the line what it
    /// usually goes on, and the first one its packing.
    catalogue::Placement readPlace(ProblemObject& object, catalogue::OrderLine& line, bool isFirst) const {
        catalogue::Placement place;
        const bool isOneOff = !object.has("design");
        if (!isOneOff) {
            const auto design = valueOrThrow(
                named(m_designs, object.text("design"),
                      QT_TRANSLATE_NOOP("App", "There is no design named “%1” in this book; check the spelling.")));
            place = catalogue::placementOf(design);
            if (line.baseMaterial.isNone()) line.baseMaterial = design.usualBase;
            if (isFirst) line.packing = design.packing;
        }
        if (object.has("title") || isOneOff) place.title = object.text("title");
        if (object.has("place")) place.place = object.text("place");
        if (object.has("size") || isOneOff) {
            const auto size = object.size("size");
            place.width = size.width;
            place.height = size.height;
        }
        if (object.has("stones") || isOneOff) place.stones = readStones(object);
        if (object.has("templates_on_wall")) place.templatesOnWall = object.flag("templates_on_wall");
        if (object.has("planned_pieces")) place.plannedPieces = object.count("planned_pieces");
        if (object.has("art_time")) place.artTime = valueOrThrow(units::parseDuration(object.text("art_time")));
        return place;
    }

    void readPlaces(ProblemObject& object, catalogue::OrderLine& line) const {
        line.places.clear();
        for (auto& place : object.list("places")) {
            line.places.push_back(readPlace(place, line, line.places.empty()));
            place.done();
        }
        if (line.places.empty() || line.places.size() > catalogue::kMaxPlaces)
            throwAt(
                object.place("places"),
                QT_TRANSLATE_NOOP("App", "%1 must have one to eight designs; leave some out, or make it a charge."));
        line.title = object.has("title") ? object.text("title") : line.first().title;
    }

    std::vector<catalogue::StoneCount> readStones(ProblemObject& object) const {
        std::vector<catalogue::StoneCount> stones;
        for (auto& row : object.list("stones")) {
            stones.push_back(
                {material(row.text("stone"), {MaterialKind::Stone},
                          QT_TRANSLATE_NOOP("App", "There is no stone named “%1” in this book; check the spelling.")),
                 row.count("count")});
            row.done();
        }
        return stones;
    }

    std::vector<catalogue::PackingUse> readPacking(ProblemObject& object) const {
        std::vector<catalogue::PackingUse> packing;
        for (auto& row : object.list("packing")) {
            auto& use = packing.emplace_back();
            use.material =
                material(row.text("packing"), {MaterialKind::Packing},
                         QT_TRANSLATE_NOOP("App", "There is no packing named “%1” in this book; check the spelling."));
            if (row.has("amount")) use.amount = row.count("amount");
            if (row.has("per")) use.per = readPer(row);
            row.done();
        }
        return packing;
    }

    static catalogue::PackingPer readPer(ProblemObject& row) {
        const auto per = catalogue::fields::namedBy<catalogue::PackingPer>(row.text("per"));
        if (!per) throwAt(row.place("per"), QT_TRANSLATE_NOOP("App", "%1 must be “piece” or “order”."));
        return *per;
    }

    void readBase(ProblemObject& object, catalogue::OrderLine& line) const {
        if (object.has("customers_garment")) line.customersGarment = object.flag("customers_garment");
        if (line.customersGarment) {
            if (object.has("on"))
                throwAt(object.place("on"),
                        QT_TRANSLATE_NOOP("App", "%1 goes with no customer’s garment: leave one of the two out."));
            line.baseMaterial = {};
        } else if (object.has("on")) {
            line.baseMaterial = material(
                object.text("on"), {MaterialKind::Backing, MaterialKind::Blank},
                QT_TRANSLATE_NOOP("App", "There is no backing or blank named “%1” in this book; check the spelling."));
        }
    }

    static std::vector<catalogue::SizeCount> readSizes(ProblemObject& object) {
        std::vector<catalogue::SizeCount> sizes;
        for (auto& row : object.list("sizes")) {
            sizes.push_back({row.text("size"), row.count("pieces")});
            row.done();
        }
        return sizes;
    }

    base::Id material(const std::string& name, std::initializer_list<MaterialKind> kinds, const char* notThere) const {
        auto those = m_materials;
        std::erase_if(those, [&](const catalogue::Material& one) {
            return std::find(kinds.begin(), kinds.end(), one.kind) == kinds.end();
        });
        return valueOrThrow(named(those, name, notThere)).id;
    }

    std::vector<catalogue::Design> m_designs;
    std::vector<catalogue::Material> m_materials;
    std::vector<catalogue::Customer> m_customers;
    units::Date m_today;
};

} // namespace

base::Result<OrderFor> readOrder(std::string_view text, db::Book& book, units::Date today) {
    return readProblem(text, [&](ProblemObject& object) { return OrderReader(book, today).read(object); });
}

} // namespace sp::verbs

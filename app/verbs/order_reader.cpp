// SPDX-License-Identifier: MIT
#include "app/verbs/order_reader.h"

#include "app/verbs/named.h"
#include "app/verbs/problem_reader.h"
#include "core/catalogue/fields/names.h"
#include "core/units/text.h"

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

    catalogue::Order read(ProblemObject& object) {
        catalogue::Order order;
        order.quotedOn = object.has("day") ? day(object, "day") : m_today;
        if (object.has("due")) order.wantedBy = day(object, "due");
        if (object.has("customer")) readCustomer(object, order);
        if (object.has("exempt")) order.asksExemption = object.flag("exempt");
        if (object.has("discount")) readDiscount(object, order.discount);
        for (auto& line : object.list("lines")) {
            order.lines.push_back(readLine(line));
            line.done();
        }
        return order;
    }

  private:
    static units::Date day(ProblemObject& object, std::string_view key) {
        return valueOrThrow(units::Date::parse(object.text(key)));
    }

    void readCustomer(ProblemObject& object, catalogue::Order& order) const {
        const auto customer = valueOrThrow(
            named(m_customers, object.text("customer"),
                  QT_TRANSLATE_NOOP("App", "There is no customer named “%1” in this book; check the spelling.")));
        order.customer = customer.id;
        order.asksExemption = customer.certificate && customer.certificate->holdsOn(order.quotedOn);
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
        const bool isOneOff = !object.has("design");
        if (!isOneOff)
            line = catalogue::lineOf(valueOrThrow(
                named(m_designs, object.text("design"),
                      QT_TRANSLATE_NOOP("App", "There is no design named “%1” in this book; check the spelling."))));
        if (object.has("title") || isOneOff) line.title = object.text("title");
        if (object.has("size") || isOneOff) {
            const auto size = object.size("size");
            line.width = size.width;
            line.height = size.height;
        }
        if (object.has("stones") || isOneOff) line.stones = readStones(object);
        line.quantity = object.count("pieces");
        readBase(object, line);
        if (object.has("sizes")) line.sizes = readSizes(object);
        if (object.has("templates_on_wall")) line.templatesOnWall = object.flag("templates_on_wall");
        if (object.has("planned_pieces")) line.plannedPieces = object.count("planned_pieces");
        if (object.has("art_time")) line.artTime = valueOrThrow(units::parseDuration(object.text("art_time")));
        if (object.has("packing")) line.packing = readPacking(object);
        if (object.has("price_each")) line.overrideEach = object.money("price_each");
        if (object.has("taxable")) line.taxable = object.flag("taxable");
        if (object.has("tax_rate")) line.taxRate = object.text("tax_rate");
        return line;
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

base::Result<catalogue::Order> readOrder(std::string_view text, db::Book& book, units::Date today) {
    return readProblem(text, [&](ProblemObject& object) { return OrderReader(book, today).read(object); });
}

} // namespace sp::verbs

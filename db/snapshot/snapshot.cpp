// SPDX-License-Identifier: MIT
#include "db/snapshot/snapshot.h"

#include "core/catalogue/stone_size.h"
#include "db/snapshot/checker.h"
#include "db/snapshot/json.h"

#include <set>

namespace sp::db::snapshot {

namespace {

template<class T>
constexpr std::string_view kKind{};
template<>
constexpr std::string_view kKind<catalogue::Shop>{"shop"};
template<>
constexpr std::string_view kKind<catalogue::BenchStandards>{"bench"};
template<>
constexpr std::string_view kKind<catalogue::Material>{"material"};
template<>
constexpr std::string_view kKind<catalogue::Supplier>{"supplier"};
template<>
constexpr std::string_view kKind<catalogue::Pack>{"pack"};
template<>
constexpr std::string_view kKind<catalogue::Kit>{"kit"};
template<>
constexpr std::string_view kKind<ArtworkRecord>{"artwork"};
template<>
constexpr std::string_view kKind<catalogue::ColourMaterial>{"colour"};
template<>
constexpr std::string_view kKind<catalogue::PriceListColumns>{"columns"};
template<>
constexpr std::string_view kKind<catalogue::Design>{"design"};
template<>
constexpr std::string_view kKind<catalogue::Customer>{"customer"};
template<>
constexpr std::string_view kKind<catalogue::Order>{"order"};
template<>
constexpr std::string_view kKind<catalogue::OrderLine>{"order-line"};
template<>
constexpr std::string_view kKind<catalogue::PricedMaterial>{"priced-material"};
template<>
constexpr std::string_view kKind<StockMove>{"movement"};
template<>
constexpr std::string_view kKind<StageMark>{"stage"};
template<>
constexpr std::string_view kKind<PriceList>{"price-list"};
template<>
constexpr std::string_view kKind<SealedQuote>{"sealed-quote"};

// What the catalogue's headers say beyond the range of one field.

template<class T>
void checkWhole(const Checker&, const T&) {}

/// A list by quantity: ascending, the first from 1.
template<class Row>
void checkFromOne(const Checker& check, std::string_view words, const std::vector<Row>& rows) {
    if (rows.empty() || rows.front().from != units::Count::of(1))
        check.refuseField(words, "must begin with a row from 1");
    for (std::size_t i = 1; i < rows.size(); ++i)
        if (rows[i].from <= rows[i - 1].from) check.refuseField(words, "must have its rows in ascending order");
}

void checkWhole(const Checker& check, const catalogue::Material& material) {
    if (material.kind == catalogue::MaterialKind::Stone && !catalogue::stoneSizeNamed(material.stone.size))
        check.refuseField("stone size", "is not in the table of sizes; choose one from SS6 to SS40");
    std::set<std::string_view> names;
    for (const auto& size : material.sizes)
        if (!names.insert(size.name).second) check.refuseField("sizes", "name a size twice; rename one");
}

void checkWhole(const Checker& check, const catalogue::Pack& pack) { checkFromOne(check, "price", pack.prices); }

void checkWhole(const Checker& check, const catalogue::Shop& shop) {
    checkFromOne(check, "mark-up", shop.rules.ladder);
    for (std::size_t i = 1; i < shop.rules.rush.size(); ++i)
        if (shop.rules.rush[i].days <= shop.rules.rush[i - 1].days)
            check.refuseField("rush surcharge", "must have its days in ascending order");
}

void checkWhole(const Checker& check, const catalogue::Customer& customer) {
    if (!customer.certificate || !customer.certificate->expiresOn) return;
    if (*customer.certificate->expiresOn < customer.certificate->issuedOn)
        check.refuseField("day of expiry", "lies before the day of issue");
}

void checkWhole(const Checker& check, const catalogue::Design& design) {
    for (const auto& stone : design.stones)
        if (stone.material.isNone()) check.refuseField("stone", "is missing in a row; choose one");
}

void checkWhole(const Checker& check, const catalogue::Kit& kit) {
    std::set<base::Id> materials;
    for (const auto& item : kit.items)
        if (!materials.insert(item.material).second)
            check.refuseField("contents", "name a material twice; put the two rows into one");
}

void checkWhole(const Checker& check, const catalogue::ColourMaterial& colour) {
    if (!catalogue::stoneSizeNamed(colour.stoneSize))
        check.refuseField("stone size", "is not in the table of sizes; choose one from SS6 to SS40");
}

void checkWhole(const Checker& check, const catalogue::PriceListColumns& list) {
    std::set<catalogue::ListColumn> columns;
    for (const auto& column : list.columns)
        if (!columns.insert(column.column).second)
            check.refuseField("columns of the price list", "say the same twice; choose one column for each");
}

void checkWhole(const Checker& check, const ArtworkRecord& artwork) {
    if (!artwork.thumbnail.empty() && artwork.thumbnail.size() != artwork.file.size())
        check.refuseField("small picture", "is not named as it should be");
    if (!artwork.counts.empty() && !Json::accept(artwork.counts))
        check.refuseField("counts of the drawing", "cannot be read; count the drawing again");
}

void checkWhole(const Checker& check, const catalogue::Order& order) {
    if (order.discount.share && order.discount.amount)
        check.refuseField("discount", "is given twice; keep the share or the amount");
}

void checkWhole(const Checker& check, const StockMove& move) {
    if (move.amount == 0) check.refuseField("amount", "is nothing; type how many came in or went out");
    if (move.cost && move.amount < 0 && !move.reverses)
        check.refuseField("cost", "belongs to what comes in; leave it out for what goes out");
}

template<class T>
std::string nameOf(const T& value) {
    if constexpr (requires { value.letterhead; })
        return {};
    else if constexpr (requires { value.name; })
        return value.name;
    else
        return {};
}

template<class T>
void refuseUnlessGood(const T& value) {
    Checker checker(nameOf(value));
    Fields<T>::walk(checker, value);
    checkWhole(checker, value);
}

/// JSON text as a tree; a key that stands twice in one object is refused.
Json parse(std::string_view text) {
    std::vector<std::set<std::string>> keys;
    bool isDouble = false;
    const auto look = [&](int, Json::parse_event_t event, Json& parsed) {
        if (event == Json::parse_event_t::object_start) keys.emplace_back();
        if (event == Json::parse_event_t::object_end) keys.pop_back();
        if (event == Json::parse_event_t::key && !keys.back().insert(parsed.get<std::string>()).second) isDouble = true;
        return true;
    };
    Json tree = Json::parse(text, look, false);
    if (tree.is_discarded() || isDouble || !tree.is_object())
        refuse(base::Code::Damaged, {}, "A saved record is damaged and cannot be read; open a backup.");
    return tree;
}

/// Collects the words of the fields that differ, given both as JSON.
class Differences {
  public:
    Differences(const Json& before, const Json& after)
        : m_before(before)
        , m_after(after) {}

    template<class T, class... Bounds>
    void operator()(std::string_view key, std::string_view words, const T& value, const Bounds&...) {
        const auto& before = m_before[std::string(key)];
        const auto& after = m_after[std::string(key)];
        if (before == after) return;
        if constexpr (Walkable<T>) {
            Differences inner(before, after);
            Fields<T>::walk(inner, value);
            m_words.merge(inner.m_words);
        } else {
            m_words.emplace(words);
        }
    }
    std::string only() const { return m_words.size() == 1 ? *m_words.begin() : std::string(); }

  private:
    const Json& m_before;
    const Json& m_after;
    std::set<std::string> m_words;
};

} // namespace

template<class T>
std::string write(const T& value) {
    return Json{{"format", kFormat}, {"kind", std::string(kKind<T>)}, {"value", Writer::json(value)}}.dump();
}

template<class T>
base::Result<T> read(std::string_view json) {
    return atTheDoor([&] {
        const Json tree = parse(json);
        const auto format = tree.find("format");
        if (format != tree.end() && format->is_number_integer() && *format > kFormat)
            refuse(base::Code::TooNew, {}, "A saved record was written by a later version; update Stonepenny.");
        const auto kind = tree.find("kind");
        const auto value = tree.find("value");
        if (format == tree.end() || *format != kFormat || kind == tree.end() || *kind != std::string(kKind<T>) ||
            value == tree.end() || tree.size() != 3)
            refuse(base::Code::Damaged, {}, "A saved record is not of the sort it should be; open a backup.");
        T result{};
        Reader::readInto(*value, result);
        if (auto good = check(result); !good) refuse(base::Code::Damaged, good.error().subject, good.error().detail);
        return result;
    });
}

template<class T>
base::Done check(const T& value) {
    return atTheDoor([&] { refuseUnlessGood(value); });
}

template<class T>
std::string difference(const T& before, const T& after) {
    const Json old = Writer::json(before);
    const Json now = Writer::json(after);
    Differences differences(old, now);
    Fields<T>::walk(differences, after);
    return differences.only();
}

#define SNAPSHOT_OF(Type)                                                                                              \
    template std::string write<Type>(const Type&);                                                                     \
    template base::Result<Type> read<Type>(std::string_view);                                                          \
    template base::Done check<Type>(const Type&);                                                                      \
    template std::string difference<Type>(const Type&, const Type&);

SNAPSHOT_OF(catalogue::Shop)
SNAPSHOT_OF(catalogue::BenchStandards)
SNAPSHOT_OF(catalogue::Material)
SNAPSHOT_OF(catalogue::Supplier)
SNAPSHOT_OF(catalogue::Pack)
SNAPSHOT_OF(catalogue::Kit)
SNAPSHOT_OF(catalogue::ColourMaterial)
SNAPSHOT_OF(catalogue::PriceListColumns)
SNAPSHOT_OF(catalogue::Design)
SNAPSHOT_OF(catalogue::Customer)
SNAPSHOT_OF(catalogue::Order)
SNAPSHOT_OF(catalogue::OrderLine)
SNAPSHOT_OF(catalogue::PricedMaterial)
SNAPSHOT_OF(StockMove)
SNAPSHOT_OF(ArtworkRecord)
SNAPSHOT_OF(StageMark)
SNAPSHOT_OF(PriceList)
SNAPSHOT_OF(SealedQuote)

} // namespace sp::db::snapshot

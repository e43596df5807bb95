// SPDX-License-Identifier: MIT
#include "app/supplies/price_list_work.h"
#include "app/verbs/named.h"
#include "app/verbs/verb_kit.h"
#include "core/units/text.h"

#include <fmt/format.h>

#include <filesystem>

namespace sp::verbs {

namespace {

struct OpenList {
    std::unique_ptr<db::Book> book;
    catalogue::Supplier supplier;
    supplies::ListedBook known;
    supplies::ListedFile file;
};

base::Result<supplies::ListedBook> listedBookOf(db::Book& book, units::Date today) {
    auto materials = book.materials();
    if (!materials) return base::fail(materials.error());
    auto packs = book.packs();
    if (!packs) return base::fail(packs.error());
    const auto shop = book.shop();
    if (!shop) return base::fail(shop.error());
    return supplies::ListedBook{std::move(*materials), std::move(*packs), shop->currency, today};
}

base::Result<OpenList> openList(const Arguments& arguments, const Helpers& helpers) {
    auto book = openBook(arguments, helpers);
    if (!book) return base::fail(book.error());
    const auto suppliers = (*book)->suppliers();
    if (!suppliers) return base::fail(suppliers.error());
    auto supplier = named(*suppliers, arguments.of("--supplier"),
                          QT_TRANSLATE_NOOP("App", "There is no supplier “%1” in this book; add it in Supplies."));
    if (!supplier) return base::fail(supplier.error());
    auto known = listedBookOf(**book, helpers.environment.today());
    if (!known) return base::fail(known.error());
    const auto lists = (*book)->priceListColumns();
    if (!lists) return base::fail(lists.error());
    catalogue::PriceListColumns remembered;
    remembered.supplier = supplier->id;
    for (const auto& list : *lists)
        if (list.supplier == supplier->id) remembered = list;
    const auto& path = arguments.words().front();
    const auto bytes = textOf(path);
    if (!bytes) return base::fail(bytes.error());
    auto file = supplies::listedFile(*bytes, std::filesystem::path(path).filename().string(), remembered, *known);
    if (!file) return base::fail(file.error());
    return OpenList{std::move(*book), std::move(*supplier), std::move(*known), std::move(*file)};
}

Json pricesJson(const std::vector<catalogue::PriceBreak>& prices, const units::Currency& currency) {
    Json list = Json::array();
    for (const auto& price : prices)
        list.push_back({{"from", price.from.value()}, {"each", units::formatExact(price.each, currency)}});
    return list;
}

Json readingJson(const supply::PriceListReading& reading, const OpenList& list) {
    const auto& currency = list.known.currency;
    Json columns = Json::object();
    for (const auto& column : list.file.columns.columns)
        columns[std::string(catalogue::fields::wordOf(column.column))] = column.heading;
    Json changes = Json::array();
    for (const auto& change : reading.changes)
        changes.push_back(
            {{"line", change.line},
             {"material", change.material},
             {"made", change.made.has_value()},
             {"pack", change.pack.name},
             {"amount", change.pack.amount.value()},
             {"item", change.pack.item},
             {"prices_before", change.before ? pricesJson(change.before->prices, currency) : Json(nullptr)},
             {"prices", pricesJson(change.pack.prices, currency)}});
    Json troubles = Json::array();
    for (const auto& trouble : reading.troubles)
        troubles.push_back({{"line", trouble.line},
                            {"name", trouble.name},
                            {"reason", words::sentence(trouble.reason).toStdString()}});
    return {{"supplier", list.supplier.name},
            {"columns", std::move(columns)},
            {"decimal_comma", list.file.columns.decimalComma},
            {"changes", std::move(changes)},
            {"as_they_were", reading.confirmed.size()},
            {"missing_stones", reading.missing},
            {"not_taken", std::move(troubles)}};
}

std::string pricesText(const std::vector<catalogue::PriceBreak>& prices, const units::Currency& currency) {
    std::string text;
    for (const auto& price : prices) {
        if (!text.empty()) text += "; " + units::formatCount(price.from) + ": ";
        text += units::formatExact(price.each, currency);
    }
    return text;
}

std::string readingText(const supply::PriceListReading& reading, const OpenList& list) {
    const auto& currency = list.known.currency;
    std::string text;
    for (const auto& change : reading.changes)
        text += fmt::format(
            "{}: {}, {}: {}\n", change.line, change.material, change.pack.name,
            change.before ? told(QT_TRANSLATE_NOOP("App", "%1, was %2"), pricesText(change.pack.prices, currency),
                                 pricesText(change.before->prices, currency))
                          : told(QT_TRANSLATE_NOOP("App", "%1, a new pack"), pricesText(change.pack.prices, currency)));
    for (const auto& trouble : reading.troubles)
        text += fmt::format("{}: {}: {}\n", trouble.line, trouble.name, words::sentence(trouble.reason).toStdString());
    text += line(QT_TRANSLATE_NOOP("App", "Packs that change: %1; as they were: %2. Rows that cannot be taken: %3."),
                 reading.changes.size(), reading.confirmed.size(), reading.troubles.size());
    if (reading.missing > 0)
        text +=
            line(QT_TRANSLATE_NOOP("App", "Stones that are missing: %1; --make-missing makes them."), reading.missing);
    return text;
}

} // namespace

Outcome priceListVerb(const Arguments& arguments, const Helpers& helpers) {
    const auto list = openList(arguments, helpers);
    if (!list) return refused(list.error());
    auto context = list->known.context();
    context.makesMissing = arguments.has("--make-missing");
    const auto reading = supply::readPriceList(list->file.table, list->file.columns, context);
    if (!reading) return refused(reading.error());
    const bool takes = arguments.has("--take");
    if (takes)
        if (const auto done = supplies::takeOver(*list->book, list->supplier, list->file.columns, *reading); !done)
            return refused(done.error());
    auto json = readingJson(*reading, *list);
    json["taken"] = takes;
    return answer(arguments, json,
                  readingText(*reading, *list) +
                      (takes ? line(QT_TRANSLATE_NOOP("App", "The price list is taken over."))
                             : line(QT_TRANSLATE_NOOP("App", "Nothing is changed yet; --take takes it over."))));
}

} // namespace sp::verbs

// SPDX-License-Identifier: MIT
//
// Suppliers' price lists, from bytes in any encoding to packs, on any bytes. What is read can be kept in the book,
// every row that is named stands in the file, and a refusal is a fault with clean values. The first byte chooses
// whether missing stones are made, and whether a line is matched by hand.
#include "core/base/ensure.h"
#include "core/catalogue/fields/check.h"
#include "core/supply/price_list_csv.h"
#include "core/supply/price_list_guess.h"
#include "core/units/text.h"
#include "tests/support/amounts.h"

#include <cstddef>
#include <cstdint>
#include <cstdio>
#include <string>
#include <string_view>

using namespace sp;
using support::idOf;
using units::Count;

namespace {

void checkClean(const base::Message& message) {
    const std::string values = describe(message);
    base::ensure(values.size() < 40'000, "what is said is of bearable length");
    for (const char c : values) base::ensure(static_cast<unsigned char>(c) >= 0x20, "a value has no controls");
}

catalogue::Material stone(std::uint64_t id, const std::string& colour, const std::string& size) {
    catalogue::Material material;
    material.id = idOf(id);
    material.name = colour + " " + size;
    material.stone.colour = colour;
    material.stone.size = size;
    return material;
}

void checkReading(const supply::PriceListReading& reading, std::size_t lines) {
    for (const auto& change : reading.changes) {
        base::ensure(change.line >= 1 && change.line <= lines, "a change stands in the file");
        auto pack = change.pack;
        if (change.made) base::ensure(*change.made < reading.made.size(), "a pack is of a stone that is made");
        if (change.made) pack.material = idOf(99);
        if (pack.id.isNone()) pack.id = idOf(100);
        base::ensure(catalogue::fields::check(pack).has_value(), "what was read can be kept");
    }
    for (auto material : reading.made) {
        material.id = idOf(99); // the book gives it one
        const auto kept = catalogue::fields::check(material);
        if (!kept) std::fprintf(stderr, "%s\n", describe(kept.error()).c_str());
        base::ensure(kept.has_value(), "a stone that is made can be kept");
    }
    for (const auto& trouble : reading.troubles) {
        base::ensure(trouble.line >= 1 && trouble.line <= lines, "a row that was not taken stands in the file");
        checkClean(trouble.reason);
    }
}

} // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    if (size == 0) return 0;
    const std::string_view bytes(reinterpret_cast<const char*>(data) + 1, size - 1);
    auto read = supply::readPriceTable(bytes, "list.csv");
    if (!read) {
        checkClean(read.error().message());
        return 0;
    }
    const std::vector<catalogue::Material> materials{stone(1, "Jet", "SS10"), stone(2, "Moonglow", "SS16")};
    const std::vector<catalogue::Pack> packs{{.id = idOf(11),
                                              .material = idOf(1),
                                              .supplier = idOf(10),
                                              .name = "bag of 10 gross",
                                              .amount = Count::of(1440),
                                              .prices = {{Count::of(1), support::money(6.5)}},
                                              .usual = false,
                                              .pricedOn = {},
                                              .item = "1001"}};
    const auto table = supply::fromHeadings(std::move(read->table));
    const auto columns = supply::guessColumns(table, idOf(10), materials);
    base::ensure(supply::hasColumns(table, columns), "a guessed column is in the list");
    supply::PriceListContext context{
        .materials = materials,
        .packs = packs,
        .currency = *units::Currency::parse("USD"),
        .seenOn = *units::Date::parse("2026-11-25"),
        .packCalled = [](Count contents) { return "pack of " + units::formatCount(contents); }};
    context.makesMissing = data[0] % 2 == 1;
    context.drawnAs = [](std::string_view colour) { return static_cast<std::uint32_t>(colour.size()); };
    if (data[0] % 4 >= 2) context.matched[2] = idOf(2);
    const auto reading = supply::readPriceList(table, columns, context);
    if (!reading) {
        checkClean(reading.error().message());
        return 0;
    }
    checkReading(*reading, bytes.size() + 1);
    return 0;
}

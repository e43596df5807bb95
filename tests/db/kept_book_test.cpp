// SPDX-License-Identifier: MIT
// Books of earlier versions exist. These were written by the programs of their time (tests/data/books) and must come
// through with nothing lost. The texts beside them hold what those programs said of them; STONEPENNY_WRITE_GOLDEN=1
// rewrites the texts.
#include "tests/db/kept_book.h"

#include "app/words/names.h"
#include "app/words/quote_sheet.h"
#include "app/words/sheet_words.h"
#include "core/pricing/price_order.h"
#include "core/quoting/sheet_maker.h"
#include "core/units/text.h"
#include "db/records/record.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <cstdlib>
#include <map>

namespace {

using namespace sp;
using base::Code;
using units::Money;

// ----------------------------------------------------------------------------------------------------------- as text

template<class T>
T got(base::Result<T> result) {
    EXPECT_TRUE(result.has_value()) << (result ? "" : describe(result.error()));
    return result ? std::move(*result) : T{};
}

std::string orDash(const std::string& text) { return text.empty() ? "-" : text; }

std::string stageOf(db::Stage stage) {
    constexpr std::array kWords{"enquiry", "quoted", "agreed", "making", "ready", "collected", "let go"};
    return kWords.at(static_cast<std::size_t>(stage));
}

/// As the programs said it that made the kept books.
std::string inWords(const catalogue::PriceOrigin& origin) {
    using Kind = catalogue::PriceOrigin::Kind;
    switch (origin.kind) {
    case Kind::Unsaid: return {};
    case Kind::Fixed: return "fixed price";
    case Kind::ShelfAverage: return "average of the shelf";
    case Kind::NoPack: return "no pack of it is known";
    case Kind::NotFixed: return "its fixed price is not set";
    case Kind::Pack: break;
    }
    return origin.supplier + ", " + origin.pack;
}

/// What the lists of a book show.
std::string listed(db::Book& book) {
    std::string text = "quotes\n";
    for (const auto& row : got(book.quotes("", 1'000)))
        text += fmt::format("  {} | {} | {} | {} | {} | {}\n", orDash(row.number), stageOf(row.stage),
                            orDash(row.customer), orDash(words::titleOf(row).toStdString()), row.quotedOn.iso(),
                            row.total ? std::to_string(row.total->micros()) : "-");
    text += "shelf\n";
    const auto shelf = got(book.shelf());
    const auto prices = got(book.priceBook({}));
    for (const auto& material : got(book.materials())) {
        const auto lying = shelf.find(material.id);
        const auto& priced = prices.materials.at(material.id);
        text += fmt::format(
            "  {} | {} | {} | {}\n", material.name, lying == shelf.end() ? "-" : std::to_string(lying->second),
            priced.price ? fmt::format("{} for {}", priced.price->price.micros(), priced.price->per.value()) : "-",
            orDash(inWords(priced.origin)));
    }
    text += "designs\n";
    for (const auto& design : got(book.designs())) {
        const auto artwork = got(book.artwork(design.id));
        text += fmt::format("  {} | {} stones | {}\n", design.name, design.stones.size(),
                            artwork ? fmt::format("{}, {} bytes", artwork->fileName, artwork->file.size()) : "-");
    }
    text += "customers\n";
    for (const auto& customer : got(book.customers()))
        text += fmt::format("  {} | {}\n", customer.name, customer.certificate ? customer.certificate->number : "-");
    text += fmt::format("kits {}, packs {}, suppliers {}, colours {}, price lists {}\n", got(book.kits()).size(),
                        got(book.packs()).size(), got(book.suppliers()).size(), got(book.colourMaterials()).size(),
                        got(book.priceListColumns()).size());
    const auto draft = got(book.lastDraft());
    text += "last draft\n";
    if (draft)
        for (const auto& line : draft->order.lines)
            text +=
                fmt::format("  {} × {} | {} stones\n", line.quantity.value(), line.title, line.first().stones.size());
    return text;
}

/// What the customer reads, in the order of reading.
std::string printed(const quoting::SheetContent& sheet) {
    std::string text;
    const auto say = [&](std::string_view what, const std::string& value) {
        if (!value.empty()) text += fmt::format("  {}: {}\n", what, value);
    };
    const auto sayAll = [&](std::string_view what, const std::vector<std::string>& lines) {
        for (const auto& line : lines) say(what, line);
    };
    say("shop", sheet.shopName);
    sayAll("shop", sheet.shopLines);
    say("title", sheet.title);
    say("demo", sheet.demo);
    for (const auto& fact : sheet.facts) say("fact", fact.label + " " + fact.value);
    say("customer", sheet.customer.name);
    sayAll("customer", sheet.customer.lines);
    say("currency", sheet.currency);
    for (const auto& line : sheet.lines) {
        say("line", fmt::format("{} | {} | {} | {} | {}", line.pieces, line.title, line.each, line.amount.text,
                                line.running.text));
        say("detail", line.detail);
        for (const auto& stone : line.stones) say("stone", fmt::format("{} {:06x}", stone.name, stone.rgb));
        for (const auto& extra : line.extras) say("extra", extra.label + " | " + extra.amount.text);
        say("note", line.note);
    }
    for (const auto& row : sheet.adjustments) say("then", row.label + " | " + row.amount.text);
    if (sheet.showsTogether) say("together", sheet.together.text);
    if (sheet.tax)
        say("tax",
            quoting::taxLabel(sheet, sheet) + " | " + sheet.tax->amount.text + " | " + quoting::taxNote(sheet, sheet));
    say("tax", sheet.taxIncluded);
    say("to pay", sheet.toPay.text);
    if (sheet.deposit) say("deposit", sheet.deposit->text + ", then " + sheet.balance.text);
    for (const auto& ladder : sheet.ladders) {
        std::string steps;
        for (const auto& step : ladder.steps)
            steps += fmt::format(" | {}{} {}", step.pieces, step.isOrdered ? "*" : "", step.each);
        say("ladder", ladder.title + steps);
    }
    say("ladder", sheet.ladderNote);
    sayAll("terms", sheet.terms);
    sayAll("care", sheet.care);
    return text;
}

/// What the sealed inputs come to, figure by figure.
std::string reckoned(const pricing::PricedOrder& priced) {
    std::string text;
    for (const auto& line : priced.lines)
        text += fmt::format("  line: cost {}, paid out {}, each {} ({} asked), goods {}, set-up {}, charged {}\n",
                            line.cost.total.micros(), line.cost.outOfPocket.micros(), line.calculatedEach.micros(),
                            line.each.micros(), line.goods.micros(), line.setUp.micros(), line.charged.micros());
    return text + fmt::format("  goods {}, rush {}, discount {}, topped up {}, together {}, tax {}, total {}, deposit "
                              "{}, profit {}\n",
                              priced.goods.micros(), priced.rush.micros(), priced.discount.micros(),
                              priced.minimumOrderCharge.micros(), priced.subtotal.micros(), priced.tax.micros(),
                              priced.total.micros(), priced.deposit.micros(), priced.earnings.profit.micros());
}

/// The text kept beside the book under that name.
void expectKept(const std::string& name, const std::string& text) {
    const auto kept = test::dataFile("books/" + name);
    if (std::getenv("STONEPENNY_WRITE_GOLDEN") != nullptr) {
        test::writeBytes(kept, text);
        return;
    }
    EXPECT_EQ(test::bytesOf(kept), text);
}

// -------------------------------------------------------------------------------------------------------- the books

class KeptBookTest : public test::KeptBook {
  protected:
    std::vector<std::string> issued(db::Book& book) {
        std::vector<std::string> numbers;
        for (const auto& row : got(book.quotes("", 1'000)))
            if (!row.number.empty()) numbers.push_back(row.number);
        return {numbers.rbegin(), numbers.rend()};
    }
    std::filesystem::path backup = folder / fmt::format("Old Bench before version {}.jobbook", test::newestBook());
};

/// What a book of before version 3 holds, and where the newest has it: queries that must give the same rows.
struct Moved {
    const char* before;
    const char* now;
    int since = 1;
};

const std::vector<Moved>& moved() {
    static const std::vector<Moved> rows{
        {"SELECT seq || quote(command_id) || step || at || actor || kind || entity || quote(entity_id) || '|' || "
         "before "
         "|| '|' || after FROM change ORDER BY seq",
         "SELECT seq || quote(command_id) || step || at || actor || kind || entity || quote(entity_id) || '|' || "
         "coalesce((SELECT json FROM record WHERE digest = before), '') || '|' || "
         "coalesce((SELECT json FROM record WHERE digest = after), '') FROM change ORDER BY seq"},
        {"SELECT place || quote(quote_id) || number || ' ' || total_micros || quote(digest) || quote(previous_digest) "
         "|| "
         "frozen FROM sealed ORDER BY place",
         "SELECT s.place || quote(p.job_id) || p.number || ' ' || p.total_micros || quote(s.digest) || "
         "quote(s.previous_digest) || r.json FROM seal s JOIN paper p ON p.id = s.paper_id "
         "JOIN record r ON r.digest = s.digest WHERE s.kind = 'paper' ORDER BY s.place"},
        {"SELECT quote(digest) || json FROM sealed_part ORDER BY digest",
         "SELECT quote(digest) || json FROM record WHERE json LIKE '%\"kind\":\"price%' OR digest IN (SELECT digest "
         "FROM record WHERE EXISTS (SELECT 1 FROM record l WHERE l.json LIKE '%\"kind\":\"price-list\"%' AND "
         "instr(l.json, lower(hex(record.digest))) > 0)) ORDER BY digest"},
        {"SELECT quote(id) || started_seq || number || stage || quote(customer_id) || quoted_on || quote(wanted_by) || "
         "row_version || ' ' || change_seq || quote(deleted_at) FROM quote ORDER BY id",
         "SELECT quote(id) || started_seq || number || stage || quote(customer_id) || quoted_on || quote(wanted_by) || "
         "row_version || ' ' || change_seq || quote(deleted_at) FROM job ORDER BY id"},
        {"SELECT quote(quote_id) || position || title || quote(design_id) || quote(onto_id) || quantity FROM "
         "quote_line "
         "ORDER BY quote_id, position",
         "SELECT quote(job_id) || line || title || quote(design_id) || quote(onto_id) || quantity FROM job_line ORDER "
         "BY "
         "job_id, line"},
        // The rows of an order, of the shop and of the bench said what the log says they became last.
        {"SELECT quote(id) || (SELECT after FROM change WHERE entity = 'quote' AND entity_id = quote.id ORDER BY seq "
         "DESC "
         "LIMIT 1) FROM quote WHERE deleted_at IS NULL ORDER BY id",
         "SELECT quote(j.id) || r.json FROM job j JOIN revision v ON v.job_id = j.id JOIN record r ON r.digest = "
         "v.order_digest WHERE j.deleted_at IS NULL ORDER BY j.id"},
        {"SELECT row_version || ' ' || change_seq || (SELECT after FROM change WHERE entity = 'shop' ORDER BY seq DESC "
         "LIMIT 1) FROM shop",
         "SELECT s.row_version || ' ' || s.change_seq || r.json FROM shop s JOIN record r ON r.digest = s.digest"},
        {"SELECT row_version || ' ' || change_seq || (SELECT after FROM change WHERE entity = 'bench' ORDER BY seq "
         "DESC "
         "LIMIT 1) FROM bench",
         "SELECT s.row_version || ' ' || s.change_seq || r.json FROM bench s JOIN record r ON r.digest = s.digest"},
        {"SELECT position || quote(material_id) FROM shop_packing ORDER BY position",
         "SELECT position || quote(material_id) FROM shop_packing WHERE amount = 1 AND per = 'piece' ORDER BY "
         "position"},
        {"SELECT year || ' ' || last_number FROM counter ORDER BY year",
         "SELECT year || ' ' || last_number FROM series WHERE name = 'quote' ORDER BY year"},
    };
    return rows;
}

/// Tables that stayed as they were, or only lost a list of words.
const std::vector<Moved>& stayed() {
    static const std::vector<Moved> rows{
        {"material", ""},           {"blank_size", ""},
        {"supplier", ""},           {"pack", ""},
        {"pack_price", ""},         {"design", ""},
        {"design_stone", ""},       {"customer", ""},
        {"stock_move", ""},         {"kit", "", 2},
        {"kit_item", "", 2},        {"kit_tool", "", 2},
        {"artwork_file", "", 2},    {"design_artwork", "", 2},
        {"colour_material", "", 2}, {"csv_columns", "", 2},
        {"csv_column", "", 2},
    };
    return rows;
}

TEST_P(KeptBookTest, isBroughtUpToDateWithNothingLost) {
    std::vector<std::pair<std::string, std::vector<std::string>>> before;
    std::size_t rows = 0;
    const auto expect = [&](const std::string& was, const std::string& now) {
        before.emplace_back(now, ask(file, was));
        rows += before.back().second.size();
    };
    for (const auto& row : moved()) expect(GetParam() < 3 ? row.before : row.now, row.now);
    for (const auto& row : stayed()) {
        if (row.since > GetParam()) continue;
        std::string list;
        for (const auto& column :
             ask(file, std::string("SELECT 'quote(' || name || ')' FROM pragma_table_info('") + row.before + "')"))
            list += (list.empty() ? "" : " || ',' || ") + column;
        const auto all = "SELECT " + list + " AS r FROM " + row.before + " ORDER BY r";
        expect(all, all);
    }
    ASSERT_GT(rows, 250U);
    {
        auto book = db::Book::open(file, clock.environment());
        ASSERT_TRUE(book) << describe(book.error());
        EXPECT_EQ(test::described((*book)->readOnlyBecause()), "");
    }
    for (const auto& [now, was] : before) EXPECT_EQ(ask(file, now), was) << now;
    EXPECT_TRUE(std::filesystem::exists(backup));
    const auto report = db::Book::check(file);
    ASSERT_TRUE(report) << describe(report.error());
    EXPECT_EQ(test::described(report->damage), std::vector<std::string>{});
    EXPECT_EQ(report->sealedQuotes, GetParam() == 1 ? 2 : std::min(GetParam(), 6) + 5);
}

TEST_P(KeptBookTest, listsAndPrintsWhatItDid) {
    auto book = got(db::Book::open(file, clock.environment()));
    const words::SheetWords words;
    layout::FitMemo fits;
    const auto sheets = [&](bool isSealed) {
        std::string text;
        for (const auto& number : issued(*book)) {
            const auto quote = got(book->quoteNumbered(number));
            EXPECT_EQ(quote.result.has_value(), isSealed || GetParam() >= 3) << number;
            text += fmt::format("sheet of {}\n{}", number, printed(words::issuedSheet(quote, fits, words)));
        }
        return text;
    };
    const auto lists = listed(*book);
    expectKept(fmt::format("version_{}.txt", GetParam()), lists + sheets(false));
    words::sealOldResults(*book, std::chrono::seconds(60), words);
    expectKept(fmt::format("version_{}.txt", GetParam()), listed(*book) + sheets(true));
    EXPECT_EQ(book->quotesWithoutResult(10)->size(), 0U);
    EXPECT_EQ(test::described(db::Book::check(file)->damage), std::vector<std::string>{});
    const auto first = got(book->quoteNumbered("2026-0001"));
    const auto again = got(words::resultOf(first.order, *first.frozen, first.validUntil, fits, words));
    EXPECT_EQ(book->sealResult(first.id, again).error().code, Code::Conflict);
}

/// The books of before results were sealed.
class UnsealedBookTest : public KeptBookTest {};

// Where the rules have changed before a result was sealed.
TEST_P(UnsealedBookTest, printsTheTotalWhereItsLinesAreLost) {
    auto book = got(db::Book::open(file, clock.environment()));
    auto quote = got(book->quoteNumbered("2026-0002"));
    const words::SheetWords words;
    layout::FitMemo fits;
    const auto before = words::issuedSheet(quote, fits, words);
    quote.sealedTotal = *quote.sealedTotal + Money::fromMicros(10'000);
    const auto sheet = words::issuedSheet(quote, fits, words);
    ASSERT_EQ(sheet.lines.size(), 1U);
    EXPECT_EQ(sheet.lines[0].title,
              "The lines of this quote can no longer be shown as they were given; its total stands.");
    EXPECT_EQ(sheet.toPay.value, *quote.sealedTotal);
    EXPECT_EQ(sheet.lines[0].amount.value, *quote.sealedTotal);
    EXPECT_FALSE(sheet.tax);
    EXPECT_EQ(sheet.taxIncluded, "");
    EXPECT_EQ(sheet.title, before.title);
    EXPECT_EQ(sheet.customer.name, before.customer.name);
    const auto result =
        got(words::resultOf(quote.order, *quote.frozen, quote.validUntil, fits, words, pricing::kFirstRulesVersion));
    auto other = result;
    other.priced.total = other.priced.total + Money::fromMicros(10'000);
    EXPECT_EQ(book->sealResult(quote.id, other).error().code, Code::Conflict);
    EXPECT_TRUE(book->sealResult(quote.id, std::nullopt));
    EXPECT_FALSE(got(book->quote(quote.id)).result);
    EXPECT_EQ(test::described(db::Book::check(file)->damage), std::vector<std::string>{});
    EXPECT_TRUE(book->sealResult(quote.id, result));
    EXPECT_TRUE(got(book->quote(quote.id)).result);
}

TEST_P(KeptBookTest, comesToWhatItDid) {
    auto book = got(db::Book::open(file, clock.environment()));
    std::string text;
    for (const auto& number : issued(*book)) {
        const auto quote = got(book->quoteNumbered(number));
        layout::FitMemo fits;
        const auto rules = quote.result ? quote.result->rules : pricing::kFirstRulesVersion;
        const auto again = got(pricing::priceOrder(quote.order, quote.frozen.value(), fits, rules));
        EXPECT_EQ(again.total, quote.sealedTotal) << number;
        text += fmt::format("{} at {}\n{}", number, quote.sealedTotal->micros(), reckoned(again));
        // The control: its supplies cost twice as much since.
        if (!quote.order.customer.isNone() && !got(book->customers()).empty()) {
            const auto inputs = book->priceBook(quote.order.customer);
            if (!inputs) continue;                                  // a customer who was removed
            if (GetParam() >= 3 && number >= "2026-0007") continue; // given since
            const auto today = pricing::priceOrder(quote.order, *inputs, fits);
            ASSERT_TRUE(today) << describe(today.error());
            EXPECT_NE(today->total, again.total) << number;
        }
    }
    expectKept(fmt::format("version_{}_priced.txt", GetParam()), text);
}

TEST_P(KeptBookTest, holdsRecordsThatSayTheSameWrittenAnew) {
    const auto records =
        ask(file, GetParam() >= 3 ? "SELECT json FROM record WHERE json <> ''"
                                  : "SELECT before FROM change WHERE before <> '' UNION SELECT after FROM change "
                                    "WHERE after <> '' UNION SELECT frozen FROM sealed UNION SELECT json FROM "
                                    "sealed_part");
    ASSERT_GT(records.size(), 50U);
    for (const auto& record : records) {
        const auto from = record.find(R"("kind":")") + 8;
        const auto* kind = db::records::kindNamed(record.substr(from, record.find('"', from) - from));
        ASSERT_NE(kind, nullptr) << record;
        const auto renewed = kind->renewed(record);
        ASSERT_TRUE(renewed) << describe(renewed.error());
        EXPECT_EQ(kind->renewed(*renewed), *renewed);
        // A kind that has not changed since is still written to the byte as it was then.
        if (kind->version == 1) { EXPECT_EQ(*renewed, record); }
    }
}

TEST_P(KeptBookTest, takesWhatIsNew) {
    auto book = db::Book::open(file, clock.environment()).value();
    const auto supplier = book->suppliers()->at(1).id;
    const auto design = book->designs()->at(0);
    ASSERT_TRUE(book->save(test::sampleKit(design.stones[0].material, supplier, design.id)));
    ASSERT_TRUE(book->save(test::sampleArtwork(design.id)));
    ASSERT_TRUE(book->save(test::samplePriceListColumns(supplier)));
    ASSERT_TRUE(book->save(catalogue::ColourMaterial{{}, 1, "SS10", design.stones[0].material}));
    EXPECT_EQ(test::described(db::Book::check(file)->damage), std::vector<std::string>{});
    for (int step = 0; step < 4; ++step) ASSERT_TRUE(book->undo());
    EXPECT_EQ(test::described(db::Book::check(file)->damage), std::vector<std::string>{});
}

TEST_P(KeptBookTest, isLeftAloneWhenItsReferencesAreBroken) {
    run(file, "DELETE FROM supplier WHERE name = 'Millrace Blanks'");
    const auto before = test::bytesOf(file);
    const auto opened = db::Book::open(file, clock.environment());
    ASSERT_FALSE(opened);
    EXPECT_EQ(opened.error().code, Code::Damaged);
    EXPECT_EQ(test::bytesOf(file), before);
}

INSTANTIATE_TEST_SUITE_P(Kept, KeptBookTest, testing::Range(1, test::newestBook()), test::nameOfVersion);
INSTANTIATE_TEST_SUITE_P(Kept, UnsealedBookTest, testing::Values(1, 2), test::nameOfVersion);

} // namespace

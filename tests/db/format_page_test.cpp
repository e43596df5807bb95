// SPDX-License-Identifier: MIT
// The page on the format of records says what the table of fields says.
#include "app/demo/demo_book.h"
#include "app/words/words.h"
#include "db/records/json.h"
#include "db/records/record.h"
#include "tests/support/held_clock.h"
#include "tests/support/temp_folder.h"
#include "tests/support/test_data.h"

#include <fmt/format.h>
#include <gtest/gtest.h>
#include <sqlite3.h>

#include <algorithm>
#include <cmath>
#include <cstdlib>
#include <fstream>

namespace {

using namespace sp;
namespace fields = catalogue::fields;
using fields::Sort;

const std::string kPage = test::dataFile("../../db/records/FORMAT.md");
const std::string kFrom = "## The kinds\n";

/// "1,000,000".
std::string grouped(std::int64_t value) {
    std::string digits = fmt::format("{}", value < 0 ? -value : value);
    for (auto at = static_cast<std::ptrdiff_t>(digits.size()) - 3; at > 0; at -= 3)
        digits.insert(static_cast<std::size_t>(at), ",");
    return (value < 0 ? "-" : "") + digits;
}

std::string wholeText(const char* what, const fields::Range& range) {
    return fmt::format("{}, {} to {}", what, grouped(range.lowest), grouped(range.highest));
}

std::string holds(const fields::Type& type, const fields::Bounds& bounds) {
    switch (type.sort) {
    case Sort::YesNo: return "yes or no";
    case Sort::Whole: return wholeText("number", bounds.range);
    case Sort::Money: return wholeText("money", bounds.range);
    case Sort::Rate: return wholeText("share", bounds.range);
    case Sort::Length: return wholeText("length", bounds.range);
    case Sort::Duration: return wholeText("time", bounds.range);
    case Sort::Count: return wholeText("count", bounds.range);
    case Sort::Word: {
        std::string words;
        for (const auto name : type.names) words += fmt::format("{}`{}`", words.empty() ? "" : ", ", name);
        return "word: " + words;
    }
    case Sort::Text:
        return fmt::format("text, {} to {}{}", bounds.text.shortest, grouped(static_cast<int>(bounds.text.longest)),
                           bounds.text.hasLines ? ", with lines" : "");
    case Sort::Id: return bounds.key == fields::Key::Needed ? "key" : "key or none";
    case Sort::Date: return "day";
    case Sort::Currency: return "currency";
    case Sort::Temperature: return "temperature, -50 to 500 °C";
    case Sort::Maybe: return "maybe " + holds(*type.inner, bounds);
    case Sort::List:
        return fmt::format("list of {}, up to {}", holds(*type.inner, bounds),
                           grouped(static_cast<int>(bounds.length.longest)));
    case Sort::Steps: return "steps, each " + holds(*type.inner, bounds);
    case Sort::Object: return std::string(type.object().name);
    }
    return {};
}

std::string sinceText(const fields::Field& field) {
    if (field.since.empty()) return "1";
    std::string text;
    for (const auto& row : field.since) text += fmt::format("{}{} {}", text.empty() ? "" : ", ", row.kind, row.version);
    return text;
}

std::string beforeText(const fields::Field& field) {
    if (field.since.empty()) return "";
    return field.before ? std::string(field.said) : "see the kind";
}

void addTable(const fields::Object& object, std::vector<const fields::Object*>& seen, std::string& page) {
    if (std::find(seen.begin(), seen.end(), &object) != seen.end()) return;
    seen.push_back(&object);
    page += fmt::format("\n### {}\n\n| key | what it is | holds | since | before |\n| --- | --- | --- | --- | --- |\n",
                        object.name);
    std::vector<const fields::Object*> inner;
    for (const auto& field : object.fields) {
        page += fmt::format("| `{}` | {} | {} | {} | {} |\n", field.key, words::text(base::say(field.words)),
                            holds(*field.type, field.bounds), sinceText(field), beforeText(field));
        const auto* type = field.type;
        while (type->inner != nullptr) type = type->inner;
        if (type->object != nullptr) inner.push_back(&type->object());
    }
    for (const auto* type : inner) addTable(*type, seen, page);
}

/// A line for each version with which fields came new: "`shop` 3: `Shop.offers_more_on_sheet`".
std::string cameNew() {
    std::string lines;
    for (const auto* kind : db::records::allKinds())
        for (int version = 2; version <= kind->version; ++version) {
            std::string names;
            fields::forEachField(kind->object(), [&](const auto& field) {
                const auto name = fmt::format("`{}.{}`", field.owner, field.key);
                if (field.sinceIn(kind->name) == version && names.find(name) == std::string::npos)
                    names += (names.empty() ? "" : ", ") + name;
            });
            if (!names.empty()) lines += fmt::format("- `{}` {}: {}\n", kind->name, version, names);
        }
    return lines;
}

std::string tables() {
    std::string page = kFrom + "\n| kind | newest version | value |\n| --- | --- | --- |\n";
    for (const auto* kind : db::records::allKinds())
        page += fmt::format("| `{}` | {} | {} |\n", kind->name, kind->version, kind->object().name);
    page += "\nWith these versions fields came new:\n\n" + cameNew();
    page += "\n## The types\n";
    std::vector<const fields::Object*> seen;
    for (const auto* kind : db::records::allKinds()) addTable(kind->object(), seen, page);
    return page;
}

TEST(FormatPage, saysWhatTheTableOfFieldsSays) {
    const auto page = test::bytesOf(kPage);
    const auto head = page.substr(0, page.find(kFrom));
    if (std::getenv("STONEPENNY_WRITE_GOLDEN") != nullptr) std::ofstream(kPage) << head << tables();
    const auto written = test::bytesOf(kPage);
    ASSERT_NE(written.find(kFrom), std::string::npos);
    EXPECT_EQ(written.substr(written.find(kFrom)), tables())
        << "run this with STONEPENNY_WRITE_GOLDEN=1 and read what it changed in " << kPage;
}

TEST(FormatPage, saysWhatBecameOfTheFieldsThatAnUpgradeMoved) {
    const auto page = test::bytesOf(kPage);
    for (const auto* kind : db::records::allKinds())
        for (std::size_t step = 0; step < kind->upgrades.size(); ++step) {
            if (kind->upgrades[step] == nullptr) continue;
            EXPECT_NE(page.find(fmt::format("\n`{}` {}:", kind->name, step + 2)), std::string::npos)
                << kind->name << ' ' << step + 2 << " has no line under “Versions”";
        }
}

/// The rows of what the page asks, as the sqlite3 program prints them; the library behind it is ours too, the reading
/// of the page is not.
std::vector<std::string> askedByThePage(const std::filesystem::path& book, std::size_t which) {
    const auto page = test::bytesOf(kPage);
    std::size_t from = 0;
    for (std::size_t i = 0; i <= which; ++i) from = page.find("```sql\n", from) + 7;
    const auto sql = page.substr(from, page.find("```", from) - from);
    std::vector<std::string> rows;
    sqlite3* db = nullptr;
    EXPECT_EQ(sqlite3_open_v2(book.c_str(), &db, SQLITE_OPEN_READONLY, nullptr), SQLITE_OK);
    const auto take = [](void* to, int count, char** row, char**) {
        auto& line = static_cast<std::vector<std::string>*>(to)->emplace_back();
        for (int i = 0; i < count; ++i) line += fmt::format("{}{}", i == 0 ? "" : "|", row[i] == nullptr ? "" : row[i]);
        return 0;
    };
    EXPECT_EQ(sqlite3_exec(db, sql.c_str(), take, &rows, nullptr), SQLITE_OK) << sqlite3_errmsg(db) << '\n' << sql;
    sqlite3_close(db);
    return rows;
}

TEST(FormatPage, readsABookWithoutTheProgram) {
    const test::TempFolder folder;
    const auto file = folder / "demo.jobbook";
    test::HeldClock clock;
    std::vector<std::string> quotes;
    std::vector<std::string> titles;
    units::Money received;
    {
        const auto book = demo::createDemoBook(file, clock.environment());
        ASSERT_TRUE(book);
        const auto jobs = (*book)->quotes({}, 1'000).value();
        for (const auto& job : jobs) {
            if (job.number.empty()) continue;
            quotes.push_back(fmt::format("{}|{}", job.number, job.total->micros()));
            const auto quote = (*book)->quote(job.id).value();
            for (const auto& line : quote.result->sheet.lines) titles.push_back(line.title);
            const auto payments = (*book)->payments(job.id).value();
            for (const auto& payment : payments)
                if (payment.role != catalogue::PaymentRole::Rounding) received += payment.amount;
        }
    }
    const auto given = askedByThePage(file, 0);
    ASSERT_EQ(given.size(), quotes.size());
    for (std::size_t i = 0; i < given.size(); ++i) {
        const auto number = given[i].substr(0, given[i].find('|'));
        const auto total = std::stod(given[i].substr(given[i].rfind('|') + 1));
        EXPECT_EQ(fmt::format("{}|{}", number, std::llround(total * 1e6)), quotes[i]) << given[i];
    }
    const auto lines = askedByThePage(file, 1);
    EXPECT_GE(lines.size(), titles.size()) << "those of earlier revisions stand there too";
    for (const auto& title : titles)
        EXPECT_TRUE(std::ranges::any_of(lines, [&](const auto& row) {
            return row.find('|' + title + '|') != std::string::npos;
        })) << title;
    double sum = 0;
    for (const auto& row : askedByThePage(file, 2)) sum += std::stod(row.substr(row.rfind('|') + 1));
    EXPECT_EQ(std::llround(sum * 1e6), received.micros());
}

} // namespace

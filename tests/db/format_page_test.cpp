// SPDX-License-Identifier: MIT
// The page on the format of records says what the table of fields says.
#include "app/words/words.h"
#include "db/records/json.h"
#include "db/records/record.h"
#include "tests/support/temp_folder.h"
#include "tests/support/test_data.h"

#include <fmt/format.h>
#include <gtest/gtest.h>

#include <algorithm>
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

} // namespace

// SPDX-License-Identifier: MIT
#include "db/book/export_tables.h"

#include "db/records/temperature_parts.h"

#include <fmt/format.h>

#include <utility>

namespace sp::db {

namespace fs = std::filesystem;
namespace fields = catalogue::fields;
using base::CsvCell;
using fields::Sort;

namespace {

constexpr std::size_t kWaiting = 256 * 1024; ///< bytes kept back before they are written

/// What a whole number is written as, and what its column is called for it.
struct Written {
    std::string_view keyEnds; ///< what its key ends in
    std::string_view column;  ///< what the heading has there
    std::int64_t whole;       ///< so many make one of what is written
};
Written writtenOf(Sort sort) {
    switch (sort) {
    case Sort::Money: return {"_micros", "", 1'000'000};
    case Sort::Rate: return {"_ppm", "_percent", 10'000};
    case Sort::Length: return {"_nm", "_mm", 1'000'000};
    case Sort::Duration: return {"_ms", "_seconds", 1'000};
    case Sort::YesNo:
    case Sort::Whole:
    case Sort::Count:
    case Sort::Word:
    case Sort::Text:
    case Sort::Id:
    case Sort::Date:
    case Sort::Currency:
    case Sort::Temperature:
    case Sort::Maybe:
    case Sort::List:
    case Sort::Steps:
    case Sort::Object: break;
    }
    return {"", "", 1};
}

std::string headingOf(std::string_view key, Sort sort) {
    const auto written = writtenOf(sort);
    std::string heading(key);
    if (!heading.ends_with(written.keyEnds)) return heading;
    heading.resize(heading.size() - written.keyEnds.size());
    return heading.append(written.column);
}

CsvCell cellOf(const fields::Type& type, const void* value) {
    switch (type.sort) {
    case Sort::YesNo: return {*static_cast<const bool*>(value) ? "true" : "false"};
    case Sort::Whole:
    case Sort::Money:
    case Sort::Rate:
    case Sort::Length:
    case Sort::Duration:
    case Sort::Count: return {decimalOf(type.whole(value), writtenOf(type.sort).whole), true};
    case Sort::Word: {
        const auto place = static_cast<std::size_t>(type.whole(value));
        return {place < type.names.size() ? std::string(type.names[place]) : std::string()};
    }
    case Sort::Text: return {*static_cast<const std::string*>(value)};
    case Sort::Id: {
        const auto& id = *static_cast<const base::Id*>(value);
        return {id.isNone() ? std::string() : id.text()};
    }
    case Sort::Date: return {static_cast<const units::Date*>(value)->iso()};
    case Sort::Currency: return {std::string(static_cast<const units::Currency*>(value)->code())};
    case Sort::Temperature: {
        const auto parts = records::partsOf(*static_cast<const units::Temperature*>(value));
        return {decimalOf(parts.milli, 1'000) + " " + std::string(fields::wordOf(parts.unit))};
    }
    case Sort::Maybe:
    case Sort::List:
    case Sort::Steps:
    case Sort::Object: break;
    }
    return {};
}

bool isList(const fields::Type& type) { return type.sort == Sort::List || type.sort == Sort::Steps; }

} // namespace

std::string decimalOf(std::int64_t amount, std::int64_t whole) {
    const auto magnitude = amount < 0 ? 0 - static_cast<std::uint64_t>(amount) : static_cast<std::uint64_t>(amount);
    const auto unit = static_cast<std::uint64_t>(whole);
    std::string text = amount < 0 ? "-" : "";
    text += fmt::format("{}", magnitude / unit);
    auto rest = magnitude % unit;
    if (rest == 0) return text;
    text += '.';
    for (auto place = unit / 10; rest > 0; place /= 10) {
        text += static_cast<char>('0' + rest / place);
        rest %= place;
    }
    return text;
}

ExportFile::ExportFile(const fs::path& target)
    : m_file(target, Readers::OwnerAlone) {}

void ExportFile::append(std::string_view bytes) {
    m_waiting += bytes;
    if (m_waiting.size() >= kWaiting) flush();
}

void ExportFile::flush() {
    m_file.make([this] { m_file.write(m_waiting); });
    m_waiting.clear();
}

void ExportFile::commit() {
    flush();
    m_file.commit();
}

/// One table. What belongs to an object in a row names the row by its number, in the column `of`.
struct ExportTable::Sheet {
    fs::path folder;
    std::string name;
    const fields::Type* item = nullptr; ///< of a list's; null: of an object's
    const fields::Object* object = nullptr;
    ExportFile file;
    std::int64_t rows = 0;
    std::vector<std::unique_ptr<Sheet>> lists; ///< in the order they are met

    Sheet(const fs::path& where, std::string itsName)
        : folder(where)
        , name(std::move(itsName))
        , file(folder / (name + ".csv")) {}

    void write(const std::vector<CsvCell>& cells) { file.append(base::csvRecord(cells)); }

    void headList(const fields::Type& list) {
        item = list.inner;
        std::vector<CsvCell> head{{"row"}, {"of"}, {list.sort == Sort::Steps ? "step" : "place"}};
        if (item->sort == Sort::Object) {
            object = &item->object();
            addHeads(*object, "", head);
        } else {
            head.push_back({headingOf("value", item->sort)});
        }
        write(head);
    }

    void addHeads(const fields::Object& of, const std::string& before, std::vector<CsvCell>& head) {
        for (const auto& field : of.fields) addHead(*field.type, before + std::string(field.key), head);
    }
    void addHead(const fields::Type& type, const std::string& key, std::vector<CsvCell>& head) {
        if (type.sort == Sort::Object) return addHeads(type.object(), key + "_", head);
        if (type.sort == Sort::Maybe) {
            if (isList(*type.inner)) head.push_back({"has_" + key});
            return addHead(*type.inner, key, head);
        }
        if (!isList(type)) return head.push_back({headingOf(key, type.sort)});
        auto list = std::make_unique<Sheet>(folder, name + "_" + key);
        list->headList(type);
        lists.push_back(std::move(list));
    }

    /// A row for an object of the table; its lists get theirs.
    void addRow(std::vector<CsvCell> cells, const void* value) {
        ++rows;
        std::size_t next = 0;
        if (object)
            addCells(*object, value, cells, next);
        else
            addCell(*item, value, cells, next);
        write(cells);
    }
    /// `value` is null where there is no such object.
    void addCells(const fields::Object& of, const void* value, std::vector<CsvCell>& cells, std::size_t& next) {
        for (const auto& field : of.fields) addCell(*field.type, value ? field.in(value) : nullptr, cells, next);
    }
    void addCell(const fields::Type& type, const void* value, std::vector<CsvCell>& cells, std::size_t& next) {
        if (type.sort == Sort::Object) return addCells(type.object(), value, cells, next);
        if (type.sort == Sort::Maybe) {
            const bool has = value && type.size(value) > 0;
            if (isList(*type.inner)) cells.push_back({has ? "true" : "false"});
            return addCell(*type.inner, has ? type.at(value, 0) : nullptr, cells, next);
        }
        if (!isList(type)) return cells.push_back(value ? cellOf(type, value) : CsvCell{});
        lists[next++]->addItems(type, value, rows);
    }
    void addItems(const fields::Type& list, const void* value, std::int64_t of) {
        for (std::size_t i = 0; value && i < list.size(value); ++i) {
            CsvCell place{fmt::format("{}", i + 1), true};
            if (list.sort == Sort::Steps) place = {std::string(fields::wordOf(static_cast<catalogue::Step>(i)))};
            addRow({{fmt::format("{}", rows + 1), true}, {fmt::format("{}", of), true}, std::move(place)},
                   list.at(value, i));
        }
    }

    void commit() {
        file.commit();
        for (auto& list : lists) list->commit();
    }
};

ExportTable::ExportTable(const fs::path& folder, const std::string& name, std::vector<std::string> own,
                         const fields::Object& object)
    : m_sheet(std::make_unique<Sheet>(folder, name)) {
    m_sheet->object = &object;
    std::vector<CsvCell> head{{"row"}};
    for (auto& column : own) head.push_back({std::move(column)});
    m_sheet->addHeads(object, "", head);
    m_sheet->write(head);
}

ExportTable::~ExportTable() = default;

void ExportTable::add(std::vector<CsvCell> own, const void* value) {
    own.insert(own.begin(), {fmt::format("{}", m_sheet->rows + 1), true});
    m_sheet->addRow(std::move(own), value);
}

void ExportTable::commit() { m_sheet->commit(); }

} // namespace sp::db

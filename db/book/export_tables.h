// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/csv.h"
#include "core/catalogue/fields/field.h"
#include "db/book/files.h"

#include <cstdint>
#include <filesystem>
#include <memory>
#include <string>
#include <string_view>
#include <vector>

// Values of the table of fields as comma-separated tables for people: amounts of money in the currency's unit, shares
// in per cent, lengths in millimetres, times in seconds, days as 2026-10-12. Each sort of thing has a table; what an
// object in it holds stands in the same row, each of its lists in a table of its own. All throw DbError.
namespace sp::db {

/// So many of what `whole` of make one, as a decimal with a point: -1234500 of a million is "-1.2345".
std::string decimalOf(std::int64_t amount, std::int64_t whole);

/// A file of an export while it grows. It has its name once it is committed.
class ExportFile {
  public:
    explicit ExportFile(const std::filesystem::path& target);
    void append(std::string_view bytes);
    void commit();

  private:
    void flush();

    TempFile m_file;
    std::string m_waiting;
};

class ExportTable {
  public:
    /// The tables `name`.csv and `name`_….csv in `folder`, with their headings. `own` are columns of the caller's
    /// before those of the object.
    ExportTable(const std::filesystem::path& folder, const std::string& name, std::vector<std::string> own,
                const catalogue::fields::Object& object);
    ~ExportTable();

    void add(std::vector<base::CsvCell> own, const void* value);
    void commit();

  private:
    struct Sheet;
    std::unique_ptr<Sheet> m_sheet;
};

} // namespace sp::db

// SPDX-License-Identifier: MIT
#pragma once

#include "core/supply/price_list_csv.h"
#include "db/book/book.h"

#include <map>
#include <string>
#include <utility>
#include <vector>

// What the dialog and the verb have in common when a supplier's price list is read.
namespace sp::supplies {

/// What the book knows that a list is held against, in a copy that another thread may read.
struct ListedBook {
    std::vector<catalogue::Material> materials;
    std::vector<catalogue::Pack> packs;
    units::Currency currency;
    units::Date seenOn; ///< becomes the day of every price

    /// Looks at this value, which must outlive it. The words are the reader's; stones are drawn as the colour that
    /// theirs is called after.
    supply::PriceListContext context() const;
};

/// A list as a file holds it, and how its columns are read: as they were for this supplier before if it has those, else
/// as they are guessed.
struct ListedFile {
    base::CsvTable table;
    units::Encoding encoding = units::Encoding::Utf8;
    catalogue::PriceListColumns columns;
};
/// Errors: those of supply::readPriceTable; Missing where nothing stands below the headings.
base::Result<ListedFile> listedFile(std::string_view bytes, std::string_view fileName,
                                    const catalogue::PriceListColumns& remembered, const ListedBook& book);

/// So many stones and packs are saved at once, and undone at once, without a wait that is felt.
inline constexpr std::size_t kMostTakenOver = 3'000;

/// All that a list changes in the book, in an order in which it can be saved part by part: the columns, which it
/// remembers, stones before their packs. Whoever saves it part by part has as many steps to undo.
class TakingOver {
  public:
    TakingOver(const catalogue::Supplier& supplier, catalogue::PriceListColumns columns,
               supply::PriceListReading reading);

    std::size_t count() const { return m_reading.made.size() + m_reading.changes.size() + m_reading.confirmed.size(); }
    std::size_t saved() const { return m_saved; }
    bool isDone() const { return m_saved == count(); }
    /// Saves at most so many of what is left, as one action called after the supplier: all of them, or nothing. Errors:
    /// those of db::Book::save.
    base::Done saveNext(db::Book& book, std::size_t most);

  private:
    base::Done saveOne(db::Book& book, std::size_t at);

    std::string m_supplier;
    catalogue::PriceListColumns m_columns;
    supply::PriceListReading m_reading;
    std::vector<base::Id> m_made; ///< keys of the stones saved by now
    std::size_t m_saved = 0;
};

/// The whole of it as one action. Errors: those of db::Book::save.
base::Done takeOver(db::Book& book, const catalogue::Supplier& supplier, const catalogue::PriceListColumns& columns,
                    const supply::PriceListReading& reading);

} // namespace sp::supplies

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

/// Remembers the columns and saves all that the list changes, as one action called after the supplier. Errors: TooLarge
/// beyond kMostTakenOver; those of db::Book::save.
base::Done takeOver(db::Book& book, const catalogue::Supplier& supplier, const catalogue::PriceListColumns& columns,
                    const supply::PriceListReading& reading);

} // namespace sp::supplies

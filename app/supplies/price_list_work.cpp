// SPDX-License-Identifier: MIT
#include "app/supplies/price_list_work.h"

#include "app/supplies/colour_words.h"
#include "app/words/words.h"
#include "core/supply/price_list_guess.h"

#include <QCoreApplication>

namespace sp::supplies {

namespace {

/// Where its texts are found by the translators.
struct PriceListWords {
    Q_DECLARE_TR_FUNCTIONS(PriceList)
};

} // namespace

supply::PriceListContext ListedBook::context() const {
    return {.materials = materials,
            .packs = packs,
            .currency = currency,
            .seenOn = seenOn,
            .packCalled =
                [](units::Count contents) {
                    return PriceListWords::tr("pack of %1")
                        .arg(QString::fromStdString(units::formatCount(contents)))
                        .toStdString();
                },
            .drawnAs =
                [](std::string_view colour) {
                    return drawnAs(QString::fromUtf8(colour.data(), static_cast<qsizetype>(colour.size())));
                }};
}

base::Result<ListedFile> listedFile(std::string_view bytes, std::string_view fileName,
                                    const catalogue::PriceListColumns& remembered, const ListedBook& book) {
    auto read = supply::readPriceTable(bytes, fileName);
    if (!read) return base::fail(read.error());
    ListedFile file{supply::fromHeadings(std::move(read->table)), read->encoding, remembered};
    if (file.table.rows.size() < 2)
        return words::fail(base::Code::Missing, {},
                           PriceListWords::tr("“%1” holds no rows below its headings; choose another file.")
                               .arg(QString::fromUtf8(fileName.data(), static_cast<qsizetype>(fileName.size()))));
    if (remembered.columns.empty() || !supply::hasColumns(file.table, remembered))
        file.columns = supply::guessColumns(file.table, remembered.supplier, book.materials);
    return file;
}

base::Done takeOver(db::Book& book, const catalogue::Supplier& supplier, const catalogue::PriceListColumns& columns,
                    const supply::PriceListReading& reading) {
    const auto saves = reading.made.size() + reading.changes.size() + reading.confirmed.size();
    if (saves > kMostTakenOver)
        return words::fail(
            base::Code::TooLarge, {},
            QT_TRANSLATE_NOOP("App", "The list has %1 stones and packs for the book, and %2 can be taken over at once; "
                                     "leave out rows that the shop does not buy."),
            units::formatCount(units::Count::of(static_cast<std::int64_t>(saves))),
            units::formatCount(units::Count::of(static_cast<std::int64_t>(kMostTakenOver))));
    const auto what = words::say(QT_TRANSLATE_NOOP("App", "price list of %1"), supplier.name);
    return book.batch(what, [&]() -> base::Done {
        if (auto saved = book.save(columns); !saved) return saved;
        std::vector<base::Id> made;
        for (const auto& material : reading.made) {
            const auto id = book.save(material);
            if (!id) return base::fail(id.error());
            made.push_back(*id);
        }
        for (const auto& change : reading.changes) {
            auto pack = change.pack;
            if (change.made) pack.material = made[*change.made];
            if (auto saved = book.save(pack); !saved) return base::fail(saved.error());
        }
        for (const auto& pack : reading.confirmed)
            if (auto saved = book.save(pack); !saved) return base::fail(saved.error());
        return {};
    });
}

} // namespace sp::supplies

// SPDX-License-Identifier: MIT
#include "app/supplies/price_list_work.h"

#include "app/supplies/colour_words.h"
#include "app/words/words.h"
#include "core/supply/price_list_guess.h"

#include <QCoreApplication>

#include <algorithm>

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

TakingOver::TakingOver(const catalogue::Supplier& supplier, catalogue::PriceListColumns columns,
                       supply::PriceListReading reading)
    : m_supplier(supplier.name)
    , m_columns(std::move(columns))
    , m_reading(std::move(reading)) {}

base::Done TakingOver::saveOne(db::Book& book, std::size_t at) {
    if (at < m_reading.made.size()) {
        const auto id = book.save(m_reading.made[at]);
        if (!id) return base::fail(id.error());
        m_made.push_back(*id);
        return {};
    }
    at -= m_reading.made.size();
    const bool isChange = at < m_reading.changes.size();
    auto pack = isChange ? m_reading.changes[at].pack : m_reading.confirmed[at - m_reading.changes.size()];
    if (isChange && m_reading.changes[at].made) pack.material = m_made[*m_reading.changes[at].made];
    const auto saved = book.save(pack);
    return saved ? base::Done() : base::fail(saved.error());
}

base::Done TakingOver::saveNext(db::Book& book, std::size_t most) {
    const auto end = m_saved + std::min(most, count() - m_saved);
    const auto known = m_made.size();
    const auto done =
        book.batch(words::say(QT_TRANSLATE_NOOP("App", "price list of %1"), m_supplier), [&]() -> base::Done {
            if (m_saved == 0)
                if (auto saved = book.save(m_columns); !saved) return saved;
            for (auto at = m_saved; at < end; ++at)
                if (auto saved = saveOne(book, at); !saved) return saved;
            return {};
        });
    if (done)
        m_saved = end;
    else
        m_made.resize(known);
    return done;
}

base::Done takeOver(db::Book& book, const catalogue::Supplier& supplier, const catalogue::PriceListColumns& columns,
                    const supply::PriceListReading& reading) {
    TakingOver all(supplier, columns, reading);
    return all.saveNext(book, all.count());
}

} // namespace sp::supplies

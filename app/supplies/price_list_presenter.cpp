// SPDX-License-Identifier: MIT
#include "app/supplies/price_list_presenter.h"

#include "app/words/words.h"

#include <QCoreApplication>
#include <QFile>
#include <QFileInfo>

#include <algorithm>

namespace sp::supplies {

using catalogue::ListColumn;

namespace {

/// Where its texts are found by the translators.
struct PriceListWords {
    Q_DECLARE_TR_FUNCTIONS(PriceList)
};

} // namespace

PriceListPresenter::PriceListPresenter(session::BookSession& session, const base::Id& supplier, units::Date seenOn)
    : m_session(session)
    , m_seenOn(seenOn) {
    m_columns.supplier = supplier;
    for (const auto& known : m_session.priceListColumns())
        if (known.supplier == supplier) m_columns = known;
}

QString PriceListPresenter::load(const QString& path) {
    QFile file(path);
    const auto name = QFileInfo(path).fileName();
    if (!file.open(QIODevice::ReadOnly))
        return PriceListWords::tr("“%1” cannot be read; check the file and choose it again.").arg(name);
    const auto bytes = file.read(static_cast<qint64>(supply::kMaxPriceList) + 1);
    auto table =
        supply::readPriceTable({bytes.constData(), static_cast<std::size_t>(bytes.size())}, name.toStdString());
    if (!table) return words::sentence(table.error());
    if (table->rows.size() < 2)
        return PriceListWords::tr("“%1” holds no rows below its headings; choose another file.").arg(name);
    m_table = std::move(*table);
    m_fileName = name;
    return {};
}

QStringList PriceListPresenter::headings() const {
    QStringList names;
    if (!m_table) return names;
    for (const auto& cell : m_table->rows.front().cells)
        if (const auto name = QString::fromStdString(cell).trimmed(); !name.isEmpty() && !names.contains(name))
            names << name;
    return names;
}

QString PriceListPresenter::heading(ListColumn column) const {
    for (const auto& known : m_columns.columns)
        if (known.column == column) return QString::fromStdString(known.heading);
    return {};
}

void PriceListPresenter::setHeading(ListColumn column, const QString& heading) {
    std::erase_if(m_columns.columns, [&](const auto& known) { return known.column == column; });
    if (!heading.isEmpty()) m_columns.columns.push_back({column, heading.toStdString()});
}

void PriceListPresenter::setDecimalComma(bool on) { m_columns.decimalComma = on; }

base::Result<supply::PriceListReading> PriceListPresenter::reading() {
    if (!m_table) return words::fail(base::Code::Missing, {}, PriceListWords::tr("Choose the file of the price list."));
    return supply::readPriceList(
        *m_table, m_columns,
        {m_session.materials(), m_session.packs(), m_session.shop().currency, m_seenOn, [](units::Count contents) {
             return PriceListWords::tr("pack of %1")
                 .arg(QString::fromStdString(units::formatCount(contents)))
                 .toStdString();
         }});
}

QString PriceListPresenter::import() {
    const auto read = reading();
    if (!read) return words::sentence(read.error());
    const auto* supplier = m_session.supplier(m_columns.supplier);
    const auto what =
        words::say(QT_TRANSLATE_NOOP("App", "price list of %1"), supplier ? supplier->name : std::string());
    const auto done = m_session.attempt([&](db::Book& book) {
        return book.batch(what, [&]() -> base::Done {
            if (auto saved = book.save(m_columns); !saved) return saved;
            for (const auto& change : read->changes)
                if (auto saved = book.save(change.pack); !saved) return base::fail(saved.error());
            for (const auto& pack : read->confirmed)
                if (auto saved = book.save(pack); !saved) return base::fail(saved.error());
            return {};
        });
    });
    return done ? QString() : words::sentence(done.error());
}

} // namespace sp::supplies

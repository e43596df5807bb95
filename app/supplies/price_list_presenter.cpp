// SPDX-License-Identifier: MIT
#include "app/supplies/price_list_presenter.h"

#include "app/words/words.h"
#include "core/supply/price_list_guess.h"

#include <QFile>
#include <QFileInfo>

#include <algorithm>

namespace sp::supplies {

using catalogue::ListColumn;

namespace {

constexpr std::size_t kPart = 500; ///< saved without a wait that is felt

QString counted(std::size_t number) {
    return QString::fromStdString(units::formatCount(units::Count::of(static_cast<std::int64_t>(number))));
}

/// Reads the bytes of a file, one more than a list may have.
base::Result<QByteArray> bytesOfList(const QString& path) {
    QFile file(path);
    if (!file.open(QIODevice::ReadOnly))
        return words::fail(base::Code::NotFound, {},
                           PriceListPresenter::tr("“%1” cannot be read; check the file and choose it again.")
                               .arg(QFileInfo(path).fileName()));
    return file.read(static_cast<qint64>(supply::kMaxPriceList) + 1);
}

} // namespace

PriceListPresenter::PriceListPresenter(session::BookSession& session, const base::Id& supplier, units::Date seenOn,
                                       QObject* parent)
    : QObject(parent)
    , m_session(session)
    , m_seenOn(seenOn)
    , m_problem(tr("Choose the file of the price list.")) {
    m_columns.supplier = supplier;
    for (const auto& known : m_session.priceListColumns())
        if (known.supplier == supplier) m_columns = known;
}

std::shared_ptr<const ListedBook> PriceListPresenter::listedBook() {
    return std::make_shared<const ListedBook>(
        ListedBook{m_session.materials(), m_session.packs(), m_session.shop().currency, m_seenOn});
}

void PriceListPresenter::begin() {
    m_isBusy = true;
    m_rowsRead = 0;
    m_problem.clear();
}

void PriceListPresenter::load(const QString& path) {
    begin();
    m_file.reset();
    m_reading.reset();
    m_matched.clear();
    m_fileName = QFileInfo(path).fileName();
    auto remembered = m_columns;
    for (const auto& known : m_session.priceListColumns())
        if (known.supplier == m_columns.supplier) remembered = known;
    m_task.ask(
        [path, name = m_fileName.toStdString(), remembered, book = listedBook()]() -> base::Result<ListedFile> {
            const auto bytes = bytesOfList(path);
            if (!bytes) return base::fail(bytes.error());
            return listedFile({bytes->constData(), static_cast<std::size_t>(bytes->size())}, name, remembered, *book);
        },
        [this](base::Result<ListedFile> file) {
            if (!file) return taken(base::fail(file.error()));
            m_columns = file->columns;
            m_file = std::make_shared<const ListedFile>(std::move(*file));
            read();
        });
    Q_EMIT changed();
}

void PriceListPresenter::read() {
    if (!m_file) return;
    begin();
    const auto work = [this, file = m_file, columns = m_columns, matched = m_matched, makes = m_makesMissing,
                       book = listedBook()](const async::LatestTask::Run& run) {
        auto context = book->context();
        context.matched = matched;
        context.makesMissing = makes;
        context.goesOn = [&](std::size_t rows) {
            run.tell([this, rows] {
                m_rowsRead = rows;
                Q_EMIT progressed();
            });
            return !run.isStopped();
        };
        auto answer = std::make_shared<base::Result<supply::PriceListReading>>(
            supply::readPriceList(file->table, columns, context));
        run.tell([this, answer] { taken(std::move(*answer)); });
    };
    m_task.start(work);
    Q_EMIT changed();
}

void PriceListPresenter::taken(base::Result<supply::PriceListReading> reading) {
    m_isBusy = false;
    m_problem = reading ? QString() : words::sentence(reading.error());
    m_reading.reset();
    if (reading) m_reading = std::move(*reading);
    Q_EMIT changed();
}

std::size_t PriceListPresenter::inAll() const {
    if (m_taking) return m_taking->count();
    return m_file ? m_file->table.rows.size() - 1 : 0;
}

void PriceListPresenter::stop() {
    if (m_taking) {
        m_isStopped = true;
        return;
    }
    m_task.drop();
    m_isBusy = false;
    m_file.reset();
    m_reading.reset();
    m_problem = tr("Reading “%1” was stopped; choose it again, or another file.").arg(m_fileName);
    Q_EMIT changed();
}

QStringList PriceListPresenter::headings() const {
    QStringList names;
    if (!m_file) return names;
    for (const auto& name : supply::headingsOf(m_file->table)) names << QString::fromStdString(name);
    return names;
}

std::optional<ListColumn> PriceListPresenter::meaning(std::size_t column) const {
    if (!m_file) return std::nullopt;
    const auto names = supply::headingsOf(m_file->table);
    for (const auto& known : m_columns.columns)
        if (column < names.size() && known.heading == names[column]) return known.column;
    return std::nullopt;
}

void PriceListPresenter::setMeaning(std::size_t column, std::optional<ListColumn> meaning) {
    if (!m_file) return;
    const auto name = supply::headingsOf(m_file->table).at(column);
    std::erase_if(m_columns.columns,
                  [&](const auto& known) { return known.heading == name || known.column == meaning; });
    if (meaning) m_columns.columns.push_back({*meaning, name});
    read();
}

void PriceListPresenter::setDecimalComma(bool on) {
    m_columns.decimalComma = on;
    read();
}

void PriceListPresenter::match(const std::vector<std::size_t>& lines, const base::Id& material) {
    for (const auto line : lines)
        if (material.isNone())
            m_matched.erase(line);
        else
            m_matched[line] = material;
    read();
}

void PriceListPresenter::setMakesMissing(bool on) {
    m_makesMissing = on;
    read();
}

QString PriceListPresenter::import() {
    const auto* supplier = m_session.supplier(m_columns.supplier);
    if (!reading() || !supplier) return m_problem;
    auto all = std::make_unique<TakingOver>(*supplier, m_columns, *m_reading);
    const bool isLong = all->count() > kMostTakenOver;
    const auto most = isLong ? kPart : kMostTakenOver;
    const auto done = m_session.attempt([&](db::Book& book) { return all->saveNext(book, most); });
    if (!done) return words::sentence(done.error());
    if (!isLong) return {};
    m_taking = std::move(all);
    m_isStopped = false;
    m_isBusy = true;
    QMetaObject::invokeMethod(this, &PriceListPresenter::savePart, Qt::QueuedConnection);
    Q_EMIT changed();
    return {};
}

/// The book is of this thread alone, so that the parts are saved here, with what waits for the window between them.
void PriceListPresenter::savePart() {
    if (!m_taking) return;
    if (m_isStopped)
        return endSaving(tr("Stopped: of %1 stones and packs %2 are in the book; undo takes them back part by part.")
                             .arg(counted(m_taking->count()), counted(m_taking->saved())));
    const auto done = m_session.attemptPart([this](db::Book& book) { return m_taking->saveNext(book, kPart); });
    if (!done)
        return endSaving(
            tr("%1 Of %2 stones and packs %3 are in the book; undo takes them back part by part.")
                .arg(words::sentence(done.error()), counted(m_taking->count()), counted(m_taking->saved())));
    if (m_taking->isDone()) return endSaving({});
    Q_EMIT progressed();
    QMetaObject::invokeMethod(this, &PriceListPresenter::savePart, Qt::QueuedConnection);
}

void PriceListPresenter::endSaving(const QString& problem) {
    m_taking.reset();
    m_isBusy = false;
    m_file.reset();
    m_reading.reset();
    m_problem = problem;
    m_session.attempt([](db::Book&) { return base::Done(); }); // tells what the parts changed
    Q_EMIT changed();
    if (problem.isEmpty()) Q_EMIT saved();
}

PriceListPresenter::~PriceListPresenter() {
    if (m_taking) m_session.attempt([](db::Book&) { return base::Done(); });
}

} // namespace sp::supplies

#include "moc_price_list_presenter.cpp"

// SPDX-License-Identifier: MIT
#include "app/supplies/price_list_dialog.h"

#include "app/desk/bench_style.h"
#include "app/desk/card.h"
#include "app/desk/choices.h"
#include "app/desk/field_box.h"
#include "app/desk/fonts.h"
#include "app/words/words.h"

#include <QFileDialog>
#include <QHBoxLayout>
#include <QHeaderView>

#include <algorithm>
#include <array>

namespace sp::supplies {

namespace {

constexpr int kLongEnough = 300;     // ms
constexpr int kReasonsSpread = 1000; ///< of the rows that cannot be taken, over several columns

} // namespace

PriceListDialog::PriceListDialog(session::BookSession& session, const desk::Formatter& formatter,
                                 const base::Id& supplier, units::Date seenOn, QWidget* parent)
    : QDialog(parent)
    , m_presenter(session, supplier, seenOn)
    , m_formatter(formatter) {
    setObjectName(QStringLiteral("priceList"));
    const auto* known = session.supplier(supplier);
    setWindowTitle(tr("Price list of %1").arg(known ? QString::fromStdString(known->name) : QString()));
    resize(desk::withinScreen(*this, {desk::scaled(1000), desk::scaled(720)}));
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(desk::pageMargins());
    column->setSpacing(12);
    build(column);
    m_longEnough = new QTimer(this);
    m_longEnough->setObjectName(QStringLiteral("longEnough"));
    m_longEnough->setSingleShot(true);
    m_longEnough->setInterval(kLongEnough);
    connect(m_longEnough, &QTimer::timeout, this, &PriceListDialog::showProgress);
    connect(&m_presenter, &PriceListPresenter::changed, this, &PriceListDialog::refresh);
    connect(&m_presenter, &PriceListPresenter::progressed, this, [this] {
        m_progress->setRange(0, static_cast<int>(m_presenter.inAll()));
        m_progress->setValue(static_cast<int>(m_presenter.reached()));
    });
    connect(&m_presenter, &PriceListPresenter::saved, this, &PriceListDialog::accept);
    refresh();
}

void PriceListDialog::build(QVBoxLayout* column) {
    auto* top = new QHBoxLayout;
    m_file = new desk::TextLabel({}, desk::TextSize::Body, desk::Role::Ink, desk::Weight::Strong, this);
    m_file->setTextFormat(Qt::PlainText);
    m_file->setElides(true);
    top->addWidget(m_file, 1);
    auto* choose = new QPushButton(tr("Choose &file…"), this);
    choose->setObjectName(QStringLiteral("chooseList"));
    choose->setAutoDefault(false); // Enter belongs to the choices
    connect(choose, &QPushButton::clicked, this, &PriceListDialog::chooseFile);
    top->addWidget(choose);
    column->addLayout(top);
    m_columns = new ListColumns(m_presenter, this);
    column->addWidget(m_columns);
    column->addWidget(buildOptions());
    column->addWidget(buildTable(), 1);
    m_reason = new desk::TextLabel({}, desk::TextSize::Small, desk::Role::Warn, desk::Weight::Plain, this);
    m_reason->setObjectName(QStringLiteral("listReason"));
    m_reason->setWordWrap(true);
    column->addWidget(m_reason);
    m_match = new desk::ChoiceField(m_formatter, this);
    m_match->setObjectName(QStringLiteral("listMatch"));
    m_match->setUnknownWording(tr("Nothing in the book is called “%1”; choose from the list."));
    column->addWidget(new desk::FieldBox(tr("The chosen &row is"), m_match, this));
    connect(m_match, &desk::ChoiceField::chosen, this, [this](const QVariant& chosen) {
        const int row = m_table->currentIndex().row();
        if (row < 0) return;
        m_presenter.match(m_rows->linesOf(row), chosen.isValid() ? chosen.value<base::Id>() : base::Id());
    });
    m_sum = new desk::TextLabel({}, desk::TextSize::Body, desk::Role::Ink, desk::Weight::Plain, this);
    m_sum->setObjectName(QStringLiteral("listSum"));
    m_sum->setWordWrap(true);
    column->addWidget(m_sum);
    column->addWidget(buildProgress());
    column->addWidget(buildButtons());
}

QWidget* PriceListDialog::buildOptions() {
    auto* options = new QWidget(this);
    auto* row = new QHBoxLayout(options);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(24);
    m_comma = new QCheckBox(tr("&Decimal comma: 6,95"), options);
    m_comma->setObjectName(QStringLiteral("listComma"));
    row->addWidget(m_comma);
    m_make = new QCheckBox(options);
    m_make->setObjectName(QStringLiteral("listMake"));
    row->addWidget(m_make);
    row->addStretch(1);
    connect(m_comma, &QCheckBox::clicked, &m_presenter, &PriceListPresenter::setDecimalComma);
    connect(m_make, &QCheckBox::clicked, &m_presenter, &PriceListPresenter::setMakesMissing);
    return options;
}

QWidget* PriceListDialog::buildTable() {
    m_rows = new ListRowsModel(m_formatter, this);
    m_table = new desk::RowTable(this);
    m_table->setObjectName(QStringLiteral("listRows"));
    m_table->setAccessibleName(tr("What becomes of the rows"));
    m_table->setModel(m_rows);
    m_table->setSelectionMode(QAbstractItemView::SingleSelection);
    auto* header = m_table->horizontalHeader();
    header->setResizeContentsPrecision(100);
    for (int i = 0; i < ListRowsModel::kColumns; ++i) header->setSectionResizeMode(i, QHeaderView::ResizeToContents);
    constexpr std::array kWide{ListRowsModel::Said, ListRowsModel::Material, ListRowsModel::Pack};
    for (const int i : kWide) header->setSectionResizeMode(i, QHeaderView::Stretch);
    // They share what is left over, but take no less than their headings, at any size of text.
    connect(header, &QHeaderView::geometriesChanged, this, [header, kWide] {
        int least = 0;
        for (const int i : kWide) least = std::max(least, header->sectionSizeHint(i));
        if (least != header->minimumSectionSize()) header->setMinimumSectionSize(least);
    });
    connect(m_table->selectionModel(), &QItemSelectionModel::currentRowChanged, this, &PriceListDialog::showRow);
    return m_table;
}

QWidget* PriceListDialog::buildProgress() {
    m_progressRow = new QWidget(this);
    auto* row = new QHBoxLayout(m_progressRow);
    row->setContentsMargins(0, 0, 0, 0);
    m_progress = new QProgressBar(m_progressRow);
    row->addWidget(m_progress, 1);
    m_stop = new QPushButton(tr("&Stop"), m_progressRow);
    m_stop->setObjectName(QStringLiteral("stopList"));
    m_stop->setAutoDefault(false);
    row->addWidget(m_stop);
    connect(m_stop, &QPushButton::clicked, &m_presenter, &PriceListPresenter::stop);
    m_progressRow->hide();
    return m_progressRow;
}

QWidget* PriceListDialog::buildButtons() {
    auto* buttons = new QWidget(this);
    auto* row = new QHBoxLayout(buttons);
    row->setContentsMargins(0, 0, 0, 0);
    row->addStretch(1);
    auto* close = new QPushButton(tr("&Close"), buttons);
    close->setObjectName(QStringLiteral("closeList"));
    connect(close, &QPushButton::clicked, this, &QDialog::reject);
    row->addWidget(close);
    m_take = new QPushButton(tr("&Take these prices over"), buttons);
    m_take->setObjectName(QStringLiteral("takeList"));
    desk::makePrimary(*m_take);
    row->addWidget(m_take);
    for (auto* button : {close, m_take}) button->setAutoDefault(false); // Enter belongs to the choices
    connect(m_take, &QPushButton::clicked, this, [this] {
        const auto problem = m_presenter.import();
        if (!problem.isEmpty())
            say(problem, desk::Role::Warn);
        else if (!m_presenter.isSaving())
            accept();
    });
    return buttons;
}

void PriceListDialog::chooseFile() {
    auto* files =
        new QFileDialog(this, tr("Choose a price list"), {}, tr("Price lists (*.csv *.tsv *.txt);;All files (*)"));
    files->setAttribute(Qt::WA_DeleteOnClose);
    files->setFileMode(QFileDialog::ExistingFile);
    connect(files, &QFileDialog::fileSelected, this, &PriceListDialog::load);
    files->open();
}

void PriceListDialog::load(const QString& path) {
    m_line = 0;
    m_presenter.load(path);
}

void PriceListDialog::say(const QString& sentence, desk::Role role) {
    m_sum->setText(sentence);
    m_sum->setRole(role);
}

void PriceListDialog::showProgress() {
    if (!m_presenter.isBusy()) return;
    if (m_presenter.reached() == 0) m_progress->setRange(0, 0);
    m_progressRow->show();
}

/// Nothing is asked of the list while it is saved but to stop.
void PriceListDialog::fitSaving() {
    const bool isSaving = m_presenter.isSaving();
    m_progress->setAccessibleName(isSaving ? tr("How far the list is saved") : tr("How far the list is read"));
    for (auto* part : findChildren<QWidget*>(Qt::FindDirectChildrenOnly))
        if (part != m_progressRow && !part->isWindow()) part->setEnabled(!isSaving);
    if (!isSaving) return;
    say(tr("The prices are being saved."), desk::Role::Muted);
    m_progress->setRange(0, static_cast<int>(m_presenter.inAll()));
    m_progress->setValue(static_cast<int>(m_presenter.reached()));
    m_progressRow->show();
    m_stop->setFocus(Qt::OtherFocusReason);
}

void PriceListDialog::reject() {
    if (m_presenter.isSaving())
        m_presenter.stop();
    else
        QDialog::reject();
}

void PriceListDialog::refresh() {
    const auto name = m_presenter.fileName();
    m_file->setText(name.isEmpty()                    ? tr("No file chosen yet")
                    : m_presenter.isGuessedEncoding() ? tr("%1 (letters taken for Windows-1252)").arg(name)
                                                      : name);
    if (m_presenter.isBusy()) {
        if (!m_longEnough->isActive() && !m_progressRow->isVisible()) m_longEnough->start();
    } else {
        m_longEnough->stop();
        m_progressRow->hide();
    }
    fitSaving();
    if (m_presenter.isSaving()) return;
    m_columns->fill();
    m_comma->setChecked(m_presenter.hasDecimalComma());
    m_comma->setEnabled(m_presenter.table() != nullptr);
    const auto* reading = m_presenter.reading();
    m_take->setEnabled(reading && !(reading->changes.empty() && reading->confirmed.empty()));
    if (m_presenter.isBusy() && m_presenter.table()) return; // what is shown stays until there is something new
    const auto missing = reading ? reading->missing + reading->made.size() : 0;
    m_make->setVisible(missing > 0);
    m_make->setText(words::counted("PriceListDialog",
                                   QT_TRANSLATE_N_NOOP("PriceListDialog", "&Make the %n missing stones"),
                                   "&Make the missing stone", static_cast<std::int64_t>(missing)));
    m_make->setChecked(m_presenter.makesMissing());
    m_rows->show(reading);
    if (reading)
        showReading(*reading);
    else
        say(m_presenter.isBusy() ? tr("The list is being read.") : m_presenter.problem(), desk::Role::Muted);
    showRow();
}

void PriceListDialog::showReading(const supply::PriceListReading& reading) {
    auto sum = tr("Packs that change: %1; as they were: %2. Rows that cannot be taken: %3.")
                   .arg(m_formatter.count(units::Count::of(static_cast<std::int64_t>(reading.changes.size()))),
                        m_formatter.count(units::Count::of(static_cast<std::int64_t>(reading.confirmed.size()))),
                        m_formatter.count(units::Count::of(static_cast<std::int64_t>(reading.troubles.size()))));
    say(sum, desk::Role::Ink);
    m_match->setChoices(desk::choicesOf(m_presenter.materials()));
    m_table->clearSpans();
    const auto reasons = std::min(static_cast<int>(reading.troubles.size()), kReasonsSpread);
    for (int row = 0; row < reasons; ++row)
        m_table->setSpan(row, ListRowsModel::Material, 1, ListRowsModel::kColumns - ListRowsModel::Material);
    if (m_line == 0) return;
    if (const int row = m_rows->rowOf(m_line); row >= 0) m_table->setCurrentIndex(m_rows->index(row, 0));
}

void PriceListDialog::showRow() {
    const int row = m_rows->rowCount() == 0 ? -1 : m_table->currentIndex().row();
    m_match->setEnabled(row >= 0);
    m_reason->setVisible(row >= 0 && !m_rows->reasonOf(row).isEmpty());
    if (row < 0) return m_match->setCurrent({});
    if (const auto lines = m_rows->linesOf(row); !lines.empty()) m_line = lines.front();
    m_reason->setText(m_rows->reasonOf(row));
    const auto material = m_rows->materialOf(row);
    m_match->setCurrent(material.isNone() ? QVariant() : QVariant::fromValue(material));
}

} // namespace sp::supplies

#include "moc_price_list_dialog.cpp"

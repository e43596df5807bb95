// SPDX-License-Identifier: MIT
#include "app/supplies/price_list_dialog.h"

#include "app/desk/bench_style.h"
#include "app/desk/card.h"
#include "app/desk/field_box.h"
#include "app/desk/fonts.h"
#include "app/supplies/price_text.h"
#include "app/words/words.h"

#include <QFileDialog>
#include <QGridLayout>
#include <QHBoxLayout>
#include <QScrollArea>

namespace sp::supplies {

using catalogue::ListColumn;

namespace {

constexpr int kMaxTroublesShown = 50;

} // namespace

PriceListDialog::PriceListDialog(session::BookSession& session, const desk::Formatter& formatter,
                                 const base::Id& supplier, units::Date seenOn, QWidget* parent)
    : QDialog(parent)
    , m_presenter(session, supplier, seenOn)
    , m_formatter(formatter) {
    setObjectName(QStringLiteral("priceList"));
    const auto* known = session.supplier(supplier);
    setWindowTitle(tr("Price list of %1").arg(known ? QString::fromStdString(known->name) : QString()));
    resize(desk::withinScreen(*this, {desk::scaled(840), desk::scaled(620)}));
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(desk::pageMargins());
    column->setSpacing(12);
    build(column);
    fillHeadings();
    preview();
}

void PriceListDialog::build(QVBoxLayout* column) {
    auto* top = new QHBoxLayout;
    m_file = new desk::TextLabel(tr("No file chosen yet"), desk::TextSize::Body, desk::Role::Ink, desk::Weight::Strong,
                                 this);
    top->addWidget(m_file, 1);
    auto* choose = new QPushButton(tr("Choose &file…"), this);
    choose->setObjectName(QStringLiteral("chooseList"));
    connect(choose, &QPushButton::clicked, this, &PriceListDialog::chooseFile);
    top->addWidget(choose);
    column->addLayout(top);
    buildColumns(column);
    m_table = new desk::FiguresTable(
        tr("What would change"),
        {{tr("Material")}, {tr("Pack")}, {tr("Holds"), true}, {tr("Price now"), true}, {tr("Price in the list"), true}},
        this);
    m_table->setObjectName(QStringLiteral("listChanges"));
    column->addWidget(m_table, 1);
    m_sum = new desk::TextLabel({}, desk::TextSize::Body, desk::Role::Ink, desk::Weight::Plain, this);
    m_sum->setObjectName(QStringLiteral("listSum"));
    m_sum->setWordWrap(true);
    column->addWidget(m_sum);
    auto* scroll = new QScrollArea(this);
    scroll->setFrameShape(QFrame::NoFrame);
    scroll->setWidgetResizable(true);
    scroll->setMaximumHeight(desk::scaled(96));
    scroll->setAccessibleName(tr("Rows that cannot be taken"));
    m_troubles = new desk::TextLabel({}, desk::TextSize::Small, desk::Role::Warn, desk::Weight::Plain, scroll);
    m_troubles->setObjectName(QStringLiteral("listTroubles"));
    m_troubles->setWordWrap(true);
    m_troubles->setAlignment(Qt::AlignTop | Qt::AlignLeft);
    scroll->setWidget(m_troubles);
    m_troubles->setAutoFillBackground(false);
    scroll->viewport()->setAutoFillBackground(false);
    column->addWidget(scroll);
    auto* buttons = new QHBoxLayout;
    buttons->addStretch(1);
    auto* close = new QPushButton(tr("&Close"), this);
    close->setObjectName(QStringLiteral("closeList"));
    connect(close, &QPushButton::clicked, this, &QDialog::reject);
    buttons->addWidget(close);
    m_take = new QPushButton(tr("&Take these prices over"), this);
    m_take->setObjectName(QStringLiteral("takeList"));
    desk::makePrimary(*m_take);
    buttons->addWidget(m_take);
    column->addLayout(buttons);
    for (auto* button : {choose, close, m_take}) button->setAutoDefault(false); // Enter belongs to the choices
    connect(m_take, &QPushButton::clicked, this, [this] {
        const auto problem = m_presenter.import();
        if (problem.isEmpty())
            accept();
        else
            say(problem);
    });
}

void PriceListDialog::buildColumns(QVBoxLayout* column) {
    auto* grid = new QGridLayout;
    grid->setSpacing(12);
    struct Kind {
        ListColumn column;
        QString words;
        const char* name;
    };
    const Kind kinds[] = {{ListColumn::Material, tr("&What is sold"), "listMaterial"},
                          {ListColumn::Pack, tr("&Name of the pack"), "listPack"},
                          {ListColumn::Amount, tr("&How many in it"), "listAmount"},
                          {ListColumn::Price, tr("&Price of a pack"), "listPrice"},
                          {ListColumn::FromPacks, tr("F&rom so many packs"), "listFrom"}};
    int at = 0;
    for (const auto& kind : kinds) {
        auto* combo = new QComboBox(this);
        combo->setObjectName(QLatin1String(kind.name));
        combo->setAccessibleName(QString(kind.words).remove(QLatin1Char('&')));
        grid->addWidget(new desk::FieldBox(kind.words, combo, this), at / 3, at % 3, Qt::AlignTop);
        grid->setColumnStretch(at % 3, 1);
        ++at;
        m_columns.emplace_back(kind.column, combo);
        connect(combo, &QComboBox::activated, this, [this, which = kind.column, combo] {
            m_presenter.setHeading(which, combo->currentData().toString());
            preview();
        });
    }
    m_comma = new QCheckBox(tr("&Decimal comma: 6,95"), this);
    m_comma->setObjectName(QStringLiteral("listComma"));
    m_comma->setChecked(m_presenter.columns().decimalComma);
    grid->addWidget(new desk::BesideFields(m_comma, this), at / 3, at % 3, Qt::AlignTop);
    connect(m_comma, &QCheckBox::clicked, this, [this](bool on) {
        m_presenter.setDecimalComma(on);
        preview();
    });
    column->addLayout(grid);
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
    if (const auto problem = m_presenter.load(path); !problem.isEmpty()) {
        // What the list before said must not look like what this one says.
        m_table->setRows({});
        m_troubles->clear();
        m_take->setEnabled(false);
        return say(problem);
    }
    m_file->setText(m_presenter.fileName());
    fillHeadings();
    preview();
}

void PriceListDialog::fillHeadings() {
    const auto headings = m_presenter.headings();
    for (const auto& [column, combo] : m_columns) {
        combo->clear();
        combo->addItem(tr("not in the list"), QString());
        for (const auto& heading : headings) combo->addItem(heading, heading);
        combo->setCurrentIndex(std::max(0, combo->findData(m_presenter.heading(column))));
        combo->setEnabled(!headings.isEmpty());
    }
}

void PriceListDialog::say(const QString& problem) {
    m_sum->setText(problem);
    m_sum->setRole(desk::Role::Warn);
}

void PriceListDialog::preview() {
    const auto reading = m_presenter.reading();
    m_take->setEnabled(reading && !(reading->changes.empty() && reading->confirmed.empty()));
    m_table->setRows({});
    m_troubles->clear();
    if (!reading) {
        m_sum->setText(words::sentence(reading.error()));
        m_sum->setRole(desk::Role::Muted);
        return;
    }
    fillTable(*reading);
    m_sum->setRole(desk::Role::Ink);
    m_sum->setText(tr("Packs that change: %1; as they were: %2. Rows that cannot be taken: %3.")
                       .arg(reading->changes.size())
                       .arg(reading->confirmed.size())
                       .arg(reading->troubles.size()));
    QStringList lines;
    for (const auto& trouble : reading->troubles) {
        if (lines.size() == kMaxTroublesShown) {
            lines << tr("… and more");
            break;
        }
        lines << tr("Line %1, “%2”: %3")
                     .arg(trouble.line)
                     .arg(QString::fromStdString(trouble.name), words::sentence(trouble.reason));
    }
    m_troubles->setText(lines.join(QLatin1Char('\n')));
}

void PriceListDialog::fillTable(const supply::PriceListReading& reading) {
    std::vector<QStringList> rows;
    for (const auto& change : reading.changes) {
        const auto& pack = change.pack;
        auto holds = m_formatter.count(pack.amount);
        if (change.before && change.before->amount != pack.amount)
            holds = tr("%1 (now %2)").arg(holds, m_formatter.count(change.before->amount));
        const auto firstKept = pack.prices.end() - static_cast<std::ptrdiff_t>(change.kept);
        auto prices = writePrices({pack.prices.begin(), firstKept}, m_formatter);
        if (change.kept > 0)
            prices = tr("%1 (kept: %2)").arg(prices, writePrices({firstKept, pack.prices.end()}, m_formatter));
        rows.push_back({QString::fromStdString(change.material), QString::fromStdString(pack.name), holds,
                        change.before ? writePrices(change.before->prices, m_formatter) : tr("new pack"), prices});
    }
    m_table->setRows(rows);
}

} // namespace sp::supplies

#include "moc_price_list_dialog.cpp"

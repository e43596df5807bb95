// SPDX-License-Identifier: MIT
#include "app/customers/customers_page.h"

#include "app/customers/contacts_dialog.h"
#include "app/customers/customer_fields.h"
#include "app/customers/customer_pictures.h"
#include "app/customers/erase_dialog.h"
#include "app/desk/bench_style.h"
#include "app/desk/card.h"
#include "app/desk/empty_state.h"
#include "app/desk/scroll_page.h"
#include "app/session/settings.h"
#include "app/words/contact_words.h"
#include "app/words/names.h"
#include "app/words/words.h"
#include "db/book/written_file.h"

#include <QFile>
#include <QFileInfo>
#include <QHBoxLayout>
#include <QPushButton>

namespace sp::customers {

using desk::Role;
using desk::TextSize;
using desk::Weight;

CustomersPage::CustomersPage(session::BookSession& session, const desk::Formatter& formatter, desk::Prompter& prompter,
                             std::function<db::BackupPlaces()> backups, PaperWriters writers, QWidget* parent)
    : ListPage(parent)
    , m_presenter(session)
    , m_formatter(formatter)
    , m_prompter(prompter)
    , m_backups(std::move(backups))
    , m_writers(std::move(writers)) {
    buildActions(*buildList(tr("Customers"),
                            {tr("Customers"), tr("&Find by name, telephone or mail"), tr("No customer is called so.")},
                            "customers", "findCustomer", m_formatter));
    auto* card = new desk::Card(this);
    buildCard(card);
    addCard(card);
    connect(&m_presenter, &CustomersPresenter::opened, this, &CustomersPage::refresh);
    connect(&m_presenter, &CustomersPresenter::changed, this, &CustomersPage::refresh);
    refresh();
}

void CustomersPage::buildActions(desk::FlowGrid& below) {
    const auto add = [&](const QString& text, const char* name, auto act) {
        auto* button = new QPushButton(text, this);
        button->setObjectName(QLatin1String(name));
        connect(button, &QPushButton::clicked, this, act);
        below.add(button);
        return button;
    };
    desk::makePrimary(*add(tr("&New customer"), "newCustomer", [this] {
        m_presenter.create();
        m_fields->focusName();
    }));
    add(tr("&Read from a file…"), "readCustomers", [this] { readFile(); });
    add(tr("&Write to a file…"), "writeCustomers", [this] { writeFile(); });
}

void CustomersPage::buildCard(QWidget* card) {
    auto* outer = new QVBoxLayout(card);
    outer->setContentsMargins(1, 1, 1, 1);
    auto* empty = new desk::EmptyState(desk::Icon::Customers, tr("No customer is here yet."), tr("New customer"), card);
    connect(empty, &desk::EmptyState::acted, &m_presenter, &CustomersPresenter::create);
    m_empty = empty;
    outer->addWidget(m_empty);
    auto* scroll = new desk::ScrollPage(desk::cardMargins(), card);
    m_content = scroll;
    outer->addWidget(scroll);
    auto* column = scroll->column();
    auto* head = new QHBoxLayout;
    m_heading = desk::pageTitle({}, this);
    head->addWidget(m_heading, 1);
    auto* all = new QPushButton(tr("E&xport…"), this);
    all->setObjectName(QStringLiteral("exportCustomer"));
    all->setToolTip(tr("Writes all that the book has of this customer, and their papers as PDF"));
    connect(all, &QPushButton::clicked, this, &CustomersPage::writeAll);
    head->addWidget(all);
    auto* erase = new QPushButton(tr("&Erase…"), this);
    erase->setObjectName(QStringLiteral("eraseCustomer"));
    erase->setToolTip(tr("Takes the person out of the book for good; jobs and sums stay"));
    connect(erase, &QPushButton::clicked, this, &CustomersPage::askToErase);
    head->addWidget(erase);
    column->addLayout(head);
    const auto line = [&](const char* name, TextSize size, Role role) {
        auto* label = new desk::TextLabel({}, size, role, Weight::Plain, this);
        label->setObjectName(QLatin1String(name));
        label->setWordWrap(true);
        column->addWidget(label);
        return label;
    };
    m_sums = line("customerSums", TextSize::Body, Role::Ink);
    m_certificate = line("certificateEnds", TextSize::Body, Role::Warn);
    m_fields = new CustomerFields(m_presenter, m_formatter, this);
    column->addWidget(m_fields);
    line("certificateCaution", TextSize::Small, Role::Muted)
        ->setText(tr("Whether a certificate holds is for you to confirm with your tax authority. Without one in force "
                     "on file tax is charged."));
    m_table = new desk::FiguresTable(tr("Jobs"),
                                     {{tr("Number"), false, false},
                                      {tr("Day"), false, false},
                                      {tr("What"), false, true},
                                      {tr("Stage"), false, false},
                                      {tr("Total"), true, false},
                                      {tr("Paid"), true, false}},
                                     this);
    m_table->setObjectName(QStringLiteral("customerJobs"));
    column->addWidget(m_table);
    m_pictures = new CustomerPictures(this);
    column->addWidget(m_pictures);
    connect(m_table, &QAbstractItemView::activated, this, [this](const QModelIndex& index) {
        if (index.row() >= 0 && index.row() < static_cast<int>(m_jobs.size()))
            Q_EMIT openAsked(m_jobs[static_cast<std::size_t>(index.row())]);
    });
    column->addStretch(1);
}

std::vector<desk::StoneListRow> CustomersPage::rows(const QString& wanted, const base::Id& kept) {
    std::vector<desk::StoneListRow> rows;
    for (const auto& one : m_presenter.matching(wanted, kept))
        rows.push_back({one.id,
                        QString::fromStdString(one.name),
                        QString::fromStdString(one.telephone.empty() ? one.mail : one.telephone),
                        {}});
    return rows;
}

void CustomersPage::load() {
    const auto* customer = m_presenter.current();
    m_content->setVisible(customer != nullptr);
    m_empty->setVisible(customer == nullptr && m_presenter.session().customers().empty());
    if (!customer) return;
    m_heading->setText(QString::fromStdString(customer->name));
    m_fields->load();
    sayCertificate();
    loadJobs();
}

void CustomersPage::sayCertificate() {
    const auto today = m_presenter.session().today();
    QStringList sentences;
    for (const auto& one : m_presenter.endingCertificates()) {
        const auto place = QString::fromStdString(one.place);
        const auto day = m_formatter.date(*one.expiresOn);
        sentences << (*one.expiresOn < today
                          ? tr("The certificate of exemption for %1 ended on %2; ask for a new one.").arg(place, day)
                          : tr("The certificate of exemption for %1 ends on %2; ask for a new one.").arg(place, day));
    }
    m_certificate->setVisible(!sentences.isEmpty());
    m_certificate->setText(sentences.join(QLatin1Char('\n')));
}

void CustomersPage::loadJobs() {
    const auto file = m_presenter.file();
    m_jobs.clear();
    std::vector<QStringList> rows;
    if (file)
        for (const auto& job : file->jobs) {
            m_jobs.push_back(job.id);
            rows.push_back({QString::fromStdString(job.number), m_formatter.date(job.quotedOn), words::titleOf(job),
                            words::nameOf(job.stage), job.total ? m_formatter.money(*job.total) : QString(),
                            job.number.empty() ? QString() : m_formatter.money(job.paid)});
        }
    m_table->setRows(rows);
    m_table->showAllRows();
    m_table->setVisible(!rows.empty());
    m_pictures->show(m_presenter.pictures(CustomerPictures::kMost));
    const auto owed = file ? file->owed : units::Money{};
    const auto credit = file ? file->credit : units::Money{};
    if (rows.empty())
        m_sums->setText(tr("Nothing was ordered yet."));
    else if (owed.isZero() && credit.isZero())
        m_sums->setText(tr("Owes nothing."));
    else if (credit.isZero())
        m_sums->setText(tr("Owes %1.").arg(m_formatter.money(owed)));
    else
        m_sums->setText(tr("Owes %1, has a credit of %2.").arg(m_formatter.money(owed), m_formatter.money(credit)));
}

void CustomersPage::askToErase() {
    if (!m_presenter.current()) return;
    auto* dialog = new EraseDialog(m_presenter, m_backups(), m_formatter, window());
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    dialog->open();
}

void CustomersPage::writeAll() {
    if (!m_presenter.current()) return;
    const auto folder = m_prompter.folderToUse(
        {tr("Where the customer’s folder is to be"), session::folderOf(session::kPapersIn), {}, {}, {}});
    if (!folder) return;
    const auto written = m_presenter.writeAll(*folder, m_writers);
    messages().tell(written ? desk::Tone::Jewel : desk::Tone::Warn,
                    written ? tr("All of the customer is in “%1”; keep it as you keep the book.").arg(*written)
                            : words::sentence(written.error()));
}

void CustomersPage::readFile() {
    const auto path = m_prompter.fileToOpen(
        {tr("Read customers"), session::folderOf(session::kPapersIn), {}, tr("Contacts (*.vcf *.csv)"), {}});
    if (!path) return;
    QFile file(*path);
    const auto tell = [&](const QString& sentence) { messages().tell(desk::Tone::Warn, sentence); };
    if (!file.open(QIODevice::ReadOnly))
        return tell(tr("“%1” cannot be read; look whether it is there and yours to read.").arg(*path));
    const auto bytes = file.read(static_cast<qint64>(catalogue::kMaxContactBytes) + 1).toStdString();
    auto contacts = words::readContacts(bytes, QFileInfo(*path).fileName().toStdString());
    if (!contacts) return tell(words::sentence(contacts.error()));
    const auto plan = m_presenter.session().read([&](db::Book& book) { return book.planContacts(*contacts); });
    if (!plan) return;
    auto* dialog = new ContactsDialog(m_presenter, std::move(*contacts), *plan, window());
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    dialog->open();
}

void CustomersPage::writeFile() {
    const auto path = m_prompter.fileToSave({tr("Write customers"), session::folderOf(session::kPapersIn),
                                             tr("Customers") + QStringLiteral(".vcf"),
                                             tr("Cards (*.vcf);;Table (*.csv)"), QStringLiteral("vcf")});
    if (!path) return;
    const auto& all = m_presenter.session().customers();
    const auto bytes = path->endsWith(QLatin1String(".csv"), Qt::CaseInsensitive)
                           ? catalogue::writeContactTable(all)
                           : catalogue::writeCards(all, catalogue::CardVersion::V4);
    session::noteFolderOf(session::kPapersIn, *path);
    const auto done = db::writeFile(path->toStdString(), bytes, db::IfThere::Replace);
    messages().tell(done ? desk::Tone::Jewel : desk::Tone::Warn,
                    done ? tr("“%1” is written; it names customers, keep it as you keep the book.").arg(*path)
                         : words::sentence(done.error()));
}

} // namespace sp::customers

#include "moc_customers_page.cpp"

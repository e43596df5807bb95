// SPDX-License-Identifier: MIT
#include "app/backups/backups_dialog.h"

#include "app/backups/backup_keeper.h"
#include "app/desk/bench_style.h"
#include "app/desk/card.h"
#include "app/desk/page_head.h"
#include "app/words/names.h"
#include "app/words/words.h"

#include <QDateTime>
#include <QDir>
#include <QHBoxLayout>
#include <QVBoxLayout>

#include <algorithm>

namespace sp::backups {

using desk::Role;
using desk::TextSize;
using desk::Weight;

namespace {

constexpr std::size_t kNamed = 3; ///< quotes that would be lost, by name; the others by their number

QString shownPath(const std::filesystem::path& path) {
    return QDir::toNativeSeparators(QString::fromStdString(path.string()));
}

desk::TextLabel* wrapped(const char* name, QWidget* parent) {
    auto* label = new desk::TextLabel({}, TextSize::Small, Role::Muted, Weight::Plain, parent);
    label->setObjectName(QLatin1String(name));
    label->setWordWrap(true);
    return label;
}

QString nameOf(const db::QuoteSummary& quote) {
    const auto title = words::titleOf(quote);
    return quote.number.empty() ? title : QObject::tr("%1, %2").arg(QString::fromStdString(quote.number), title);
}

} // namespace

BackupsDialog::BackupsDialog(BackupsQuestion question, const desk::Formatter& formatter, desk::Prompter& prompter,
                             QWidget* parent)
    : QDialog(parent)
    , m_question(std::move(question))
    , m_formatter(formatter)
    , m_prompter(prompter)
    , m_looking(nullptr, QThread::LowPriority) {
    setObjectName(QStringLiteral("backups"));
    setWindowTitle(tr("Backups"));
    build();
    showRows();
    lookInto();
}

void BackupsDialog::build() {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(desk::pageMargins());
    column->setSpacing(12);
    const auto head = desk::addPageHead(*column, windowTitle(), "backupsSaid", this);
    head.note->setWordWrap(true);
    head.note->setText(
        tr("One is made when the book is closed and every 30 minutes, if something was changed, and is gone "
           "through before it counts. Kept are the last ten, one a day for two weeks and one a week for "
           "two months, in %1.")
            .arg(shownPath(m_question.folder)));
    m_table = new desk::FiguresTable(tr("Backups"),
                                     {{tr("Made"), false, false},
                                      {tr("Jobs"), true, false},
                                      {tr("Last job"), false, true},
                                      {tr("Gone through"), false, false}},
                                     this);
    m_table->setObjectName(QStringLiteral("backupRows"));
    column->addWidget(m_table, 1);
    m_lost = wrapped("backupLost", this);
    column->addWidget(m_lost);
    m_second = wrapped("backupSecond", this);
    column->addWidget(m_second);
    auto* buttons = new QHBoxLayout;
    buttons->setSpacing(8);
    const auto add = [&](const QString& text, const char* name) {
        auto* button = new QPushButton(text, this);
        button->setObjectName(QLatin1String(name));
        button->setAutoDefault(false);
        buttons->addWidget(button);
        return button;
    };
    if (m_question.keeper) {
        auto* now = add(tr("&Make one now"), "backupNow");
        connect(now, &QPushButton::clicked, this, [this] { m_question.keeper->makeNow(true); });
        connect(m_question.keeper, &BackupKeeper::made, this, [this] {
            m_question.backups = m_question.keeper->backups();
            showRows();
            lookInto();
        });
        connect(m_question.keeper, &BackupKeeper::failed, m_lost, &QLabel::setText);
        auto* second = add(tr("&Second place…"), "backupSecondPlace");
        connect(second, &QPushButton::clicked, this, &BackupsDialog::chooseSecondPlace);
    }
    buttons->addStretch(1);
    m_restore = add(tr("&Restore this one"), "backupRestore");
    desk::makePrimary(*m_restore);
    auto* close = add(tr("&Close"), "backupClose");
    column->addLayout(buttons);
    connect(m_table, &desk::FiguresTable::rowChosen, this, [this] { showLost(row()); });
    connect(m_restore, &QPushButton::clicked, this, &BackupsDialog::restore);
    connect(close, &QPushButton::clicked, this, &QDialog::reject);
    showSecondPlace();
    resize(desk::withinScreen(*this, {desk::scaled(760), desk::scaled(520)}));
}

int BackupsDialog::row() const { return m_table->currentIndex().isValid() ? m_table->currentIndex().row() : -1; }

QString BackupsDialog::whenOf(const db::Backup& backup) const {
    const auto moment = QDateTime::fromSecsSinceEpoch(backup.madeAt.time_since_epoch().count());
    const auto day = units::Date::parse(moment.date().toString(Qt::ISODate).toStdString());
    return day ? tr("%1, %2").arg(m_formatter.date(*day), m_formatter.clock(moment.time())) : QString();
}

void BackupsDialog::showRows() {
    m_seen.assign(m_question.backups.size(), {{}, tr("being read…")});
    std::vector<QStringList> rows;
    for (const auto& backup : m_question.backups)
        rows.push_back({whenOf(backup), QLocale().toString(static_cast<qlonglong>(backup.jobs)), {}, m_seen[0].sound});
    m_table->setRows(rows);
    m_restore->setEnabled(!rows.empty());
    m_lost->setText(rows.empty() ? tr("There is no backup yet.") : QString());
    if (!rows.empty()) m_table->selectRow(0);
}

/// The list is there at once; what takes reading comes row by row.
void BackupsDialog::lookInto() {
    m_looking.start([this, backups = m_question.backups](const async::LatestTask::Run& run) {
        for (std::size_t i = 0; i < backups.size() && !run.isStopped(); ++i) {
            const auto newest = db::Book::quotesIn(backups[i].file, 1);
            const auto report = db::Book::check(backups[i].file, {run.stopToken(), {}});
            const bool isSound = report && report->damage.empty();
            const auto last = newest && !newest->empty() ? std::optional(newest->front()) : std::nullopt;
            run.tell([this, i, isSound, last] {
                auto* model = m_table->model();
                const auto at = static_cast<int>(i);
                if (last) model->setData(model->index(at, 2), nameOf(*last));
                model->setData(model->index(at, 3), isSound ? tr("sound") : tr("damaged"));
            });
        }
    });
}

QString BackupsDialog::lostText(const base::Result<db::Lost>& lost) const {
    if (!lost) return tr("What was done since then cannot be read. %1").arg(words::sentence(lost.error()));
    if (lost->quotes.empty() && lost->changes <= 0) return tr("Nothing was changed since then.");
    QStringList named;
    for (std::size_t i = 0; i < std::min(kNamed, lost->quotes.size()); ++i) named += nameOf(lost->quotes[i]);
    const auto changes = words::counted("App", QT_TRANSLATE_N_NOOP("App", "%n changes"), "%n change", lost->changes);
    if (named.isEmpty()) return tr("Since then: %1, no quote among them.").arg(changes);
    const auto quotes = words::counted("App", QT_TRANSLATE_N_NOOP("App", "%n quotes"), "%n quote",
                                       static_cast<std::int64_t>(lost->quotes.size()));
    const auto list = named.join(QStringLiteral("; "));
    return lost->quotes.size() > kNamed
               ? tr("Lost would be %1 since then: %2 and others; with them %3.").arg(quotes, list, changes)
               : tr("Lost would be %1 since then: %2; with them %3.").arg(quotes, list, changes);
}

void BackupsDialog::showLost(int row) {
    if (row < 0 || row >= static_cast<int>(m_question.backups.size())) return;
    const auto into = tr("It is restored into a file of its own, %1; the book that is there stays as it is.")
                          .arg(shownPath(m_question.target()));
    const auto& file = m_question.backups[static_cast<std::size_t>(row)].file;
    m_lost->setText(m_question.lost ? tr("%1 %2").arg(lostText(m_question.lost(file)), into) : into);
}

void BackupsDialog::restore() {
    const int chosen = row();
    if (chosen < 0) return;
    const auto backup = m_question.backups[static_cast<std::size_t>(chosen)].file;
    m_restore->setEnabled(false);
    m_looking.drop();
    // What is open now is backed up first, so that it can be come back to.
    if (m_question.keeper) m_question.keeper->finish();
    const auto target = m_question.target();
    m_lost->setText(tr("It is being restored…"));
    m_restoring.start([this, backup, target](const async::LatestTask::Run& run) {
        const auto told = [this, &run](double share) {
            run.tell([this, share] {
                m_lost->setText(tr("It is being restored: %1 %").arg(static_cast<int>(100 * share)));
            });
        };
        const auto done = db::Book::restore(backup, target, {run.stopToken(), told});
        run.tell([this, done, target] {
            m_restore->setEnabled(true);
            if (!done) return m_lost->setText(words::sentence(done.error()));
            Q_EMIT restored(QString::fromStdString(target.string()));
            accept();
        });
    });
}

void BackupsDialog::chooseSecondPlace() {
    const auto chosen = m_prompter.folderToUse({tr("A second place for backups, on another disk or stick"),
                                                QString::fromStdString(BackupKeeper::secondPlace().string()),
                                                {},
                                                {},
                                                {}});
    if (!chosen) return;
    BackupKeeper::setSecondPlace(*chosen);
    showSecondPlace();
    m_question.keeper->makeNow(true);
}

void BackupsDialog::showSecondPlace() {
    m_second->setVisible(m_question.keeper != nullptr);
    const auto place = BackupKeeper::secondPlace();
    std::error_code error;
    if (place.empty())
        m_second->setText(
            tr("If this disk fails, the backups on it go with the book: choose a second place on another disk "
               "or a stick."));
    else if (std::filesystem::is_directory(place, error))
        m_second->setText(tr("Each backup is put in %1 as well.").arg(shownPath(place)));
    else
        m_second->setText(
            tr("The second place %1 is not there now; plug it in for the next backup.").arg(shownPath(place)));
}

} // namespace sp::backups

#include "moc_backups_dialog.cpp"

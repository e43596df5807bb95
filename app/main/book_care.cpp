// SPDX-License-Identifier: MIT
#include "app/main/book_care.h"

#include "app/backups/backups_dialog.h"
#include "app/backups/restoring.h"
#include "app/desk/typed_field.h"
#include "app/session/settings.h"
#include "app/words/words.h"

#include <QApplication>
#include <QDateTime>
#include <QDir>
#include <QFileInfo>
#include <QStandardPaths>

namespace sp::program {

using desk::Tone;

namespace {

constexpr double kMegabyte = 1'000'000;
constexpr std::chrono::seconds kTypingNoted{2};

std::filesystem::path documentsFolder() {
    return QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation).toStdString();
}

/// Where a check puts the copy that it goes through; it is never given this name.
std::filesystem::path checkedCopy() {
    return (QDir(QDir::tempPath())
                .filePath(QStringLiteral("Stonepenny check %1.jobbook"))
                .arg(QCoreApplication::applicationPid()))
        .toStdString();
}

} // namespace

BookCare::BookCare(Parts parts, QWidget* window)
    : m_parts(std::move(parts))
    , m_window(window)
    , m_keeper(m_parts.session, backups::backupRoot()) {
    connect(&m_typing, &QTimer::timeout, this, &BookCare::noteTyped);
    connect(&m_task, &backups::CopyTask::progressed, this, &BookCare::tellProgress);
}
BookCare::~BookCare() = default;

void BookCare::begin(desk::MessageBar& messages) {
    m_messages = &messages;
    connect(&m_keeper, &backups::BackupKeeper::failed, this, [this](const QString& sentence) {
        m_messages->tell(Tone::Warn, sentence, tr("Backups…"), [this] { showBackups(); });
    });
    greet();
    m_keeper.begin();
    session::save(session::kTyped, QString());
    m_typing.start(kTypingNoted);
}

void BookCare::end() {
    m_typing.stop();
    session::save(session::kTyped, QString());
    m_task.stop();
    m_keeper.finish();
}

/// What stands in a field and was not put into the book yet: should the program end now, that is all that is lost.
void BookCare::noteTyped() {
    const auto* field = qobject_cast<desk::TypedField*>(QApplication::focusWidget());
    QString typed;
    if (field && field->window() == m_window && field->isDirty())
        typed = QStringList{bookFile(), field->accessibleName(), field->text()}.join(QLatin1Char('\n'));
    session::save(session::kTyped, typed);
}

/// What was being typed into this book when the program ended; it is said, not put into a field, since nobody knows
/// whether the same thing is shown there now.
QString BookCare::typedThen() const {
    const auto typed = session::kept(session::kTyped).split(QLatin1Char('\n'));
    if (typed.size() < 3 || typed[0] != bookFile()) return {};
    return tr("Not kept yet was what stood in “%1”: %2").arg(typed[1], typed.mid(2).join(QLatin1Char(' ')));
}

QString BookCare::bookFile() const { return QString::fromStdString(m_parts.session.book().file().string()); }

/// "14:02", with the day where it was another.
QString BookCare::closedAt() const {
    const auto& at = m_parts.session.book().cutShortAfter();
    const auto moment = QDateTime::fromString(QString::fromStdString(*at), Qt::ISODateWithMs).toLocalTime();
    const auto day = units::Date::parse(moment.date().toString(Qt::ISODate).toStdString());
    const auto time = m_parts.formatter.clock(moment.time());
    if (!day || *day == m_parts.session.today()) return time;
    return tr("%1, %2").arg(m_parts.formatter.date(*day), time);
}

/// One message at a time, the weightiest.
void BookCare::greet() {
    const auto& session = m_parts.session;
    if (session.isReadOnly()) return;
    if (session.book().cutShortAfter()) {
        m_messages->tell(
            Tone::Jewel,
            tr("Closed unexpectedly. Everything that was kept, the last of it at %1, is here.").arg(closedAt()),
            tr("Check this book"), [this] { check(); });
        m_messages->setDetail(typedThen());
        return;
    }
    const auto backups = [this] { showBackups(); };
    if (const auto trouble = session::kept(session::kBackupTrouble); !trouble.isEmpty())
        return m_messages->tell(Tone::Warn, trouble, tr("Backups…"), backups);
    if (const auto missing = m_keeper.roomMissing(); missing > 0)
        return m_messages->tell(Tone::Warn,
                                tr("The disk is getting full: %1 MB more should be free for this book and its backups.")
                                    .arg(QLocale().toString(static_cast<double>(missing) / kMegabyte, 'f', 0)));
    if (const auto since = backups::BackupKeeper::secondPlaceMissingSince(QDate::currentDate()))
        m_messages->tell(Tone::Jewel,
                         tr("The second place for backups, %1, has not been there since %2; plug it in when you can.")
                             .arg(QDir::toNativeSeparators(session::kept(session::kSecondPlace)),
                                  QLocale().toString(*since, QLocale::ShortFormat)),
                         tr("Backups…"), backups);
}

void BookCare::startTask(const QString& sentence, const std::filesystem::path& target,
                         std::function<void(backups::CopyTask::Outcome)> done) {
    m_parts.keepDraft();
    m_task.stop();
    auto copy = m_parts.session.startCopy(target);
    if (!copy) return m_messages->tell(Tone::Warn, words::sentence(copy.error()));
    m_underWay = sentence;
    m_messages->tell(Tone::Jewel, sentence, tr("Stop"), [this] { m_task.stop(); });
    m_task.start(std::move(*copy), std::move(done));
}

void BookCare::tellProgress(double share) {
    if (m_messages->sentence() == m_underWay) m_messages->setDetail(tr("%1 %").arg(static_cast<int>(100 * share)));
}

void BookCare::check() {
    startTask(tr("This book is being checked; work on meanwhile."), checkedCopy(),
              [this](backups::CopyTask::Outcome outcome) { tellChecked(outcome); });
}

void BookCare::tellChecked(const backups::CopyTask::Outcome& outcome) {
    const auto& report = outcome.report;
    if (!report) return m_messages->tell(Tone::Warn, words::sentence(report.error()));
    if (report->damage.empty())
        return m_messages->tell(Tone::Good, tr("This book is sound. Quotes: %1; given and unchanged: %2.")
                                                .arg(report->quotes)
                                                .arg(report->sealedQuotes));
    m_messages->tell(Tone::Warn, words::sentence(report->damage.front()), tr("Save a copy"), [this] { saveCopy(); });
}

void BookCare::saveCopy() {
    const QFileInfo file(QString::fromStdString(m_parts.session.book().file().string()));
    const auto target = m_parts.prompter.fileToSave({tr("Save a copy of this book"), file.absolutePath(),
                                                     tr("%1 copy").arg(file.completeBaseName()),
                                                     tr("Job books (*.jobbook)"), QStringLiteral("jobbook")});
    if (!target) return;
    startTask(tr("A copy of this book is being made; work on meanwhile."), target->toStdString(),
              [this](backups::CopyTask::Outcome outcome) { tellCopied(outcome); });
}

void BookCare::moveHere() {
    const auto elsewhere = documentsFolder();
    std::error_code ignored;
    std::filesystem::create_directories(elsewhere, ignored);
    const auto target = backups::freeIn(elsewhere, m_parts.session.book().file().stem().string());
    startTask(tr("The book is being copied to this computer."), target, [this](backups::CopyTask::Outcome outcome) {
        tellCopied(outcome);
        if (outcome.report) Q_EMIT openBookAsked(QString::fromStdString(outcome.copy->target().string()));
    });
}

void BookCare::tellCopied(const backups::CopyTask::Outcome& outcome) {
    if (!outcome.report) return m_messages->tell(Tone::Warn, words::sentence(outcome.report.error()));
    // Of a damaged book a copy is worth the more.
    if (const auto done = outcome.copy->commit(); !done)
        return m_messages->tell(Tone::Warn, words::sentence(done.error()));
    const auto where = QDir::toNativeSeparators(QString::fromStdString(outcome.copy->target().string()));
    const auto& damage = outcome.report->damage;
    if (damage.empty()) return m_messages->tell(Tone::Good, tr("A copy of this book is in %1.").arg(where));
    m_messages->tell(
        Tone::Warn, tr("A copy is in %1, but as damaged as this book. %2").arg(where, words::sentence(damage.front())));
}

void BookCare::showBackups() {
    m_parts.keepDraft();
    const auto& book = m_parts.session.book();
    auto* dialog = new backups::BackupsDialog(
        {m_keeper.backups(), m_keeper.folder(),
         [&book] { return backups::restoreTarget(book.file(), documentsFolder(), QDate::currentDate()); },
         [this](const std::filesystem::path& file) { return m_parts.session.lostIn(file); }, &m_keeper},
        m_parts.formatter, m_parts.prompter, m_window);
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    connect(dialog, &backups::BackupsDialog::restored, this, &BookCare::openBookAsked);
    dialog->open();
}

} // namespace sp::program

#include "moc_book_care.cpp"

// SPDX-License-Identifier: MIT
#pragma once

#include "app/backups/backup_keeper.h"
#include "app/backups/copy_task.h"
#include "app/desk/message_bar.h"
#include "app/desk/prompter.h"
#include "app/format/formatter.h"
#include "app/session/book_session.h"

#include <QObject>

#include <functional>

namespace sp::program {

/// What a window does for the safety of its book: backups without being asked, copies and checks beside the work, and
/// what has to be said about the file.
class BookCare : public QObject {
    Q_OBJECT

  public:
    struct Parts {
        session::BookSession& session;
        desk::Prompter& prompter;
        const desk::Formatter& formatter;
        std::function<void()> keepDraft; ///< puts what is typed into the book
    };

    BookCare(Parts parts, QWidget* window);
    ~BookCare() override;

    /// From now on messages go to this bar. Says what there is to say, and begins to look after the book.
    void begin(desk::MessageBar& messages);
    /// The book is about to be closed: makes the last backup.
    void end();

    void saveCopy();
    void check();
    /// Copies the book into the documents of this computer and opens the copy.
    void moveHere();
    void showBackups();
    /// Whether a copy or a check is under way.
    bool isBusy() const { return m_task.isBusy(); }
    backups::BackupKeeper& keeper() { return m_keeper; }

  Q_SIGNALS:
    void openBookAsked(const QString& file);

  private:
    void greet();
    void noteTyped();
    QString typedThen() const;
    void startTask(const QString& sentence, const std::filesystem::path& target,
                   std::function<void(backups::CopyTask::Outcome)> done);
    void tellProgress(double share);
    void tellChecked(const backups::CopyTask::Outcome& outcome);
    void tellCopied(const backups::CopyTask::Outcome& outcome);
    QString closedAt() const;
    QString bookFile() const;

    Parts m_parts;
    QWidget* m_window;
    desk::MessageBar* m_messages = nullptr;
    backups::BackupKeeper m_keeper;
    backups::CopyTask m_task;
    QString m_underWay; ///< the sentence of the task
    QTimer m_typing;
};

} // namespace sp::program

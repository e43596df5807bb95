// SPDX-License-Identifier: MIT
#pragma once

#include "app/async/latest_task.h"
#include "app/desk/figures.h"
#include "app/desk/figures_table.h"
#include "app/desk/prompter.h"
#include "app/format/formatter.h"
#include "db/book/book.h"

#include <QDialog>
#include <QPushButton>

#include <functional>
#include <memory>

namespace sp::backups {

class BackupKeeper;

/// What the dialog shows and may do. Everything in it outlives the dialog.
struct BackupsQuestion {
    std::vector<db::Backup> backups;                                          ///< the newest first
    std::filesystem::path folder;                                             ///< where they lie
    std::function<std::filesystem::path()> target;                            ///< of what is restored
    std::function<base::Result<db::Lost>(const std::filesystem::path&)> lost; ///< empty: no book is open
    BackupKeeper* keeper = nullptr;                                           ///< of the book that is open
};

/// The backups there are: when each was made, how many jobs it holds, which was the last, whether it is sound; what
/// would be lost; and restoring one into a new file.
class BackupsDialog : public QDialog {
    Q_OBJECT

  public:
    BackupsDialog(BackupsQuestion question, const desk::Formatter& formatter, desk::Prompter& prompter,
                  QWidget* parent = nullptr);

  Q_SIGNALS:
    /// A backup is in this new file, gone through.
    void restored(const QString& file);

  private:
    void build();
    void showRows();
    void lookInto();
    void showLost(int row);
    void restore();
    void chooseSecondPlace();
    void showSecondPlace();
    QString whenOf(const db::Backup& backup) const;
    QString lostText(const base::Result<db::Lost>& lost) const;
    int row() const;

    struct Seen {
        QString last;
        QString sound;
    };

    BackupsQuestion m_question;
    const desk::Formatter& m_formatter;
    desk::Prompter& m_prompter;
    std::vector<Seen> m_seen; ///< as long as the backups
    desk::FiguresTable* m_table = nullptr;
    desk::TextLabel* m_lost = nullptr;
    desk::TextLabel* m_second = nullptr;
    QPushButton* m_restore = nullptr;
    async::LatestTask m_looking;
    async::LatestTask m_restoring;
};

} // namespace sp::backups

// SPDX-License-Identifier: MIT
#pragma once

#include <QDialog>
#include <QString>

class QLabel;
class QPushButton;

namespace sp::program {

/// Stands where the window would, while the book to start with cannot be opened: which book it is, why, and what can be
/// done. It decides nothing.
class BookTrouble : public QDialog {
    Q_OBJECT

  public:
    explicit BookTrouble(QWidget* parent = nullptr);

    /// `file` is missing or refused, for the reason that `sentence` says. Where it is the demo book itself, there is no
    /// other to look at instead, and one's own can be started.
    void tell(const QString& file, const QString& sentence, bool isDemo);

  Q_SIGNALS:
    void tryAgainAsked();
    void locateAsked();
    void backupAsked();
    void demoAsked();
    void newBookAsked();

  private:
    QLabel* m_title;
    QLabel* m_sentence;
    QLabel* m_place;
    QPushButton* m_again;
    QPushButton* m_demo;
    QPushButton* m_new;
};

} // namespace sp::program

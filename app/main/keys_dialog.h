// SPDX-License-Identifier: MIT
#pragma once

#include <QDialog>

#include <vector>

namespace sp::program {

/// A key as it is written on this machine, and what it does.
struct KeyWords {
    QString key;
    QString words;
};

/// "Keys and help": what each place is for, and every key. Needs no network.
class KeysDialog : public QDialog {
    Q_OBJECT

  public:
    /// `keys` are those of the Book menu; the others are the same everywhere.
    KeysDialog(const std::vector<KeyWords>& keys, QWidget* parent = nullptr);
};

} // namespace sp::program

// SPDX-License-Identifier: MIT
#pragma once

#include <QDialog>

#include <vector>

namespace sp::program {

/// A key as it is written on this machine, and what it does; or a figure, and how it is made.
struct KeyWords {
    QString key;
    QString words;
};

/// "Keys and help": what each place is for, every key, and how each figure of a cost sheet is made. Needs no network.
class KeysDialog : public QDialog {
    Q_OBJECT

  public:
    /// `keys` are those of the Book menu; the others are the same everywhere. `formulas` are those of a cost sheet, as
    /// its rows say them.
    KeysDialog(const std::vector<KeyWords>& keys, const std::vector<KeyWords>& formulas, QWidget* parent = nullptr);
};

} // namespace sp::program

// SPDX-License-Identifier: MIT
#pragma once

#include "app/desk/row_table.h"

namespace sp::jobs {

/// The table of quotes. Shift with Up and Down chooses several, Ctrl+Space adds or takes out one.
class JobsTable : public desk::RowTable {
    Q_OBJECT

  public:
    explicit JobsTable(QWidget* parent = nullptr);
};

} // namespace sp::jobs

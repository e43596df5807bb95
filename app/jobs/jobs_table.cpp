// SPDX-License-Identifier: MIT
#include "app/jobs/jobs_table.h"

#include "app/desk/figures.h"
#include "app/jobs/jobs_table_model.h"

namespace sp::jobs {

JobsTable::JobsTable(QWidget* parent)
    : RowTable(parent) {
    setObjectName(QStringLiteral("jobs"));
    setAccessibleName(tr("Quotes, newest first"));
    setSelectionMode(ExtendedSelection);
    setHorizontalScrollMode(ScrollPerPixel);
    for (const int column : {JobsTableModel::Total, JobsTableModel::Left})
        setItemDelegateForColumn(column, new desk::FigureDelegate(this));
}

} // namespace sp::jobs

#include "moc_jobs_table.cpp"

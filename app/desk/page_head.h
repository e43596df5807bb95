// SPDX-License-Identifier: MIT
#pragma once

#include "app/desk/figures.h"

#include <QHBoxLayout>
#include <QVBoxLayout>

namespace sp::desk {

/// The head of a page: its title, under it a small note, and room at the right of `row` for what belongs to the whole
/// page.
struct PageHead {
    QHBoxLayout* row;
    QVBoxLayout* words; ///< title and note, with a stretch after them
    TextLabel* note;
};
PageHead addPageHead(QVBoxLayout& column, const QString& title, const char* noteName, QWidget* parent);

} // namespace sp::desk

// SPDX-License-Identifier: MIT
#pragma once

#include "app/desk/card.h"
#include "app/desk/flow_grid.h"

#include <QCheckBox>

namespace sp::shop {

/// A card with a heading, a remark where there is one, and fields side by side, four to a row, fewer where
/// it is narrow.
class FieldCard : public desk::Card {
    Q_OBJECT

  public:
    FieldCard(const QString& title, const QString& remark, QWidget* parent);

    /// The next field with its label over it, `span` columns wide; goes to the next row where it does not fit.
    void put(QWidget* field, const QString& label, const char* name, const QString& remark = {}, int span = 1);
    /// The next field is a box to tick, which carries its own words.
    void putTick(QCheckBox* tick, const char* name);
    /// One thing as wide as the card.
    void fill(QWidget* content);

    /// A button of its own width, at the left.
    void fillLeft(QWidget* button);

  private:
    desk::FlowGrid* m_grid;
};

} // namespace sp::shop

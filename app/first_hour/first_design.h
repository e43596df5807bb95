// SPDX-License-Identifier: MIT
#pragma once

#include "app/desk/rows_panel.h"
#include "app/desk/value_fields.h"
#include "app/desk/word_field.h"
#include "app/first_hour/first_hour_presenter.h"

namespace sp::first_hour {

/// A design typed in: its name, how large it is, and how many of each priced stone are on one piece.
class FirstDesign : public desk::RowsPanel {
    Q_OBJECT

  public:
    FirstDesign(FirstHourPresenter& presenter, const desk::Formatter& formatter, QWidget* parent = nullptr);

    void load();
    /// Whether anything is typed.
    bool isBegun() const;
    /// Makes it of what is typed and empties the fields; false with a sentence where something is missing.
    bool make();

  private:
    struct Row {
        base::Id material;
        desk::CountField* count;
    };

    static QString noStoneYet();
    void addRow(int row, const catalogue::Material& stone);

    FirstHourPresenter& m_presenter;
    const desk::Formatter& m_formatter;
    desk::WordField* m_name;
    desk::LengthField* m_width;
    desk::LengthField* m_height;
    std::vector<Row> m_rows;
};

} // namespace sp::first_hour

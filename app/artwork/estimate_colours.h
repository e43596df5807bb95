// SPDX-License-Identifier: MIT
#pragma once

#include "app/artwork/estimate_presenter.h"
#include "app/desk/choice_field.h"
#include "app/desk/figures.h"
#include "app/desk/row_grid.h"

#include <QWidget>

class QCheckBox;

namespace sp::artwork {

/// Whether each colour of a file's drawing is set in a stone of its own, and in which. There where it has two colours
/// or more, and not too many for a row each.
class EstimateColours : public QWidget {
    Q_OBJECT

  public:
    static constexpr std::size_t kMaxRows = 40;

    EstimateColours(EstimatePresenter& presenter, const desk::Formatter& formatter, QWidget* parent = nullptr);

    /// A row for each colour of the presenter's file, with the stone it most likely stands for.
    void loadFile();
    /// Reads the stones anew; what is chosen stays.
    void loadChoices();
    /// Puts the presenter's counts beside the colours.
    void showTallies();
    /// Colours are set each by itself.
    bool isOn() const;
    /// What they are set with; nothing while an entry is not right.
    std::optional<std::vector<ColourStone>> chosen() const;

  Q_SIGNALS:
    void edited();

  private:
    struct Row {
        std::string colour;
        desk::ChoiceField* stone;
        desk::TextLabel* tally;
    };
    void addRow(const std::string& colour);

    EstimatePresenter& m_presenter;
    const desk::Formatter& m_formatter;
    QCheckBox* m_each = nullptr;
    desk::TextLabel* m_tooMany = nullptr;
    desk::RowGrid* m_grid = nullptr;
    std::vector<Row> m_rows;
};

} // namespace sp::artwork

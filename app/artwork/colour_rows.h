// SPDX-License-Identifier: MIT
#pragma once

#include "app/artwork/artwork_presenter.h"
#include "app/desk/choice_field.h"
#include "app/desk/figures.h"
#include "app/desk/row_grid.h"

#include <QWidget>

namespace sp::artwork {

/// The drawn colours and sizes of a file with their counts, each with a field for the stone it stands for. The first
/// kMaxRows, which hold most stones, have a row; a sentence speaks for the rest.
class ColourRows : public QWidget {
    Q_OBJECT

  public:
    static constexpr int kMaxRows = 40;

    ColourRows(ArtworkPresenter& presenter, const desk::Formatter& formatter, QWidget* parent = nullptr);

    /// Shows the presenter's rows. Fields stay while the rows are the same, so that one keeps the focus.
    void load();

  private:
    void rebuild();
    void addRow(int row);

    ArtworkPresenter& m_presenter;
    const desk::Formatter& m_formatter;
    desk::RowGrid* m_grid = nullptr;
    std::vector<QString> m_shown;
    std::vector<desk::ChoiceField*> m_fields;
    std::vector<desk::TextLabel*> m_far; ///< what is said of a stone that looks different
    std::vector<desk::FigureLabel*> m_counts;
    desk::TextLabel* m_oneByOne; ///< what single stones were set to
};

/// The stones of the book, those of the size first.
std::vector<desk::Choice> stonesToChoose(session::BookSession& session, std::optional<std::size_t> size);

/// What a hole can be set with: the stones, and last to leave it out (the id none).
std::vector<desk::Choice> stoneChoices(session::BookSession& session, std::optional<std::size_t> size);

} // namespace sp::artwork

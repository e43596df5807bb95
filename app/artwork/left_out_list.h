// SPDX-License-Identifier: MIT
#pragma once

#include "app/artwork/artwork_presenter.h"
#include "app/desk/row_grid.h"
#include "app/format/formatter.h"

#include <QWidget>

namespace sp::artwork {

/// What of a file is no stone, and which stones want a look: each reason with its number, a button that makes those
/// stand out in the picture.
class LeftOutList : public QWidget {
    Q_OBJECT

  public:
    LeftOutList(const desk::Formatter& formatter, QWidget* parent = nullptr);

    void load(const ArtworkPresenter& presenter);

  Q_SIGNALS:
    void shown(std::optional<sp::artwork::Classification> classification);

  private:
    void addHeading(const QString& words);
    void add(const QString& words, std::size_t number, std::optional<Classification> classification);

    const desk::Formatter& m_formatter;
    desk::RowGrid* m_grid = nullptr;
};

/// The fate whose words these are; nothing for a reason of the file itself.
std::optional<Classification> classificationOf(const base::Message& reason);

} // namespace sp::artwork

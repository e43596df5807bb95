// SPDX-License-Identifier: MIT
#pragma once

#include "app/artwork/artwork_view.h"
#include "app/desk/card.h"
#include "app/desk/figures.h"
#include "app/format/formatter.h"

class QHBoxLayout;
class QVBoxLayout;

namespace sp::artwork {

/// The card beside a picture: what is entered, which scrolls, and below it what becomes of it, which stays in sight.
/// Gives way to a picture that has hardly any room.
class SideCard : public desk::Card {
    Q_OBJECT

  public:
    explicit SideCard(QWidget* parent = nullptr);

    QVBoxLayout* entries() { return m_entries; }
    QVBoxLayout* foot() { return m_foot; }

    QSize sizeHint() const override;

  private:
    QVBoxLayout* m_entries = nullptr;
    QVBoxLayout* m_foot;
};

/// Buttons that zoom the view, put at the end of a row.
void addZoomButtons(QHBoxLayout* row, ArtworkView* view, QWidget* page);

/// "1 stone", "1,212 stones".
QString stonesInWords(std::int64_t stones, const desk::Formatter& formatter);

/// Muted words of several lines.
desk::TextLabel* smallWords(QWidget* parent);

/// A small picture of the whole of it as PNG, for a design's card.
QByteArray thumbnailOf(Picture picture);

} // namespace sp::artwork

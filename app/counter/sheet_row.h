// SPDX-License-Identifier: MIT
#pragma once

#include "app/counter/counter_presenter.h"
#include "app/desk/sheet_picture.h"
#include "app/format/formatter.h"

#include <QWidget>

#include <array>

namespace sp::counter {

/// How the line lies on its backing, tape and template sheets, each drawn to scale.
class SheetRow : public QWidget {
    Q_OBJECT

  public:
    SheetRow(CounterPresenter& presenter, const desk::Formatter& formatter, QWidget* parent = nullptr);

    void refresh();

  private:
    struct Place {
        desk::SheetPicture* picture = nullptr;
        // What is drawn now: nothing is laid out again while these stay the same.
        layout::Sheet sheet;
        layout::Piece piece;
        layout::FitRules rules;
    };

    void show(Place& place, const base::Id& material, const needs::SheetUse& use, bool onWall);
    QStringList caption(const catalogue::Material& material, const needs::SheetUse& use, bool onWall) const;

    CounterPresenter& m_presenter;
    const desk::Formatter& m_formatter;
    Place m_base;
    Place m_tape;
    Place m_templates;
};

} // namespace sp::counter

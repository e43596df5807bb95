// SPDX-License-Identifier: MIT
#pragma once

#include "app/desk/figures.h"
#include "app/desk/value_fields.h"
#include "app/format/formatter.h"
#include "app/paper/plan_shape.h"
#include "app/plans/sheet_planner.h"

#include <QCheckBox>
#include <QDialog>
#include <QPushButton>
#include <QScrollArea>

class QVBoxLayout;

namespace sp::plans {

/// What is laid on sheets: lines of one order or of several.
struct PlanQuestion {
    QString title; ///< "Lantern", "Quote 2026-0042": what the plan is for
    std::vector<catalogue::OrderLine> lines;
    bool asksPieces = false; ///< one line whose number of pieces is typed in the dialog
    units::Date day{};       ///< on which it is asked; printed
    QString note{};          ///< what else must be known of it, in a sentence; also printed
};

/// How everything that a job needs cut lies on its sheets and rolls, to scale, with the fewest sheets found and what no
/// plan can beat. While another plan is worked out no picture is shown. Opened with open().
class PlanDialog : public QDialog {
    Q_OBJECT

  public:
    PlanDialog(PlanQuestion question, catalogue::PriceBook prices, const desk::Formatter& formatter,
               QWidget* parent = nullptr);

    const SheetPlanner& planner() const { return m_planner; }

  protected:
    bool focusNextPrevChild(bool next) override;

  private:
    void build();
    void ask();
    void showAnswers();
    void say(const QString& sentence);
    void addPlan(QVBoxLayout* column, const PlanAnswer& answer);
    void addSheets(QVBoxLayout* column, const planning::CutPlan& plan);
    void addLegend(QVBoxLayout* column, const planning::CutPlan& plan);
    void addMeasures(QVBoxLayout* column, const planning::CutPlan& plan);
    void showPreview();

    PlanQuestion m_question;
    catalogue::PriceBook m_prices;
    desk::Formatter m_formatter;
    paper::PlanWords m_words;
    SheetPlanner m_planner;
    desk::CountField* m_pieces = nullptr;
    desk::TextLabel* m_said = nullptr;
    desk::TextLabel* m_spares = nullptr; ///< how many, and why
    QScrollArea* m_scroll = nullptr;
    QCheckBox* m_measures = nullptr;
    QPushButton* m_print = nullptr;
};

} // namespace sp::plans

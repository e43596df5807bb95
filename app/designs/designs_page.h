// SPDX-License-Identifier: MIT
#pragma once

#include "app/designs/designs_presenter.h"
#include "app/desk/choice_field.h"
#include "app/desk/field_box.h"
#include "app/desk/figures.h"
#include "app/desk/list_page.h"
#include "app/desk/packing_rows.h"
#include "app/desk/sheet_picture.h"
#include "app/desk/value_fields.h"
#include "app/desk/word_field.h"

#include <QCheckBox>
#include <QPushButton>
#include <QVBoxLayout>

namespace sp::artwork {
class DesignPictures;
class DesignView;
} // namespace sp::artwork

namespace sp::designs {

class DesignStones;

/// The Designs place: the list at the left, the design that is open at the right.
class DesignsPage : public desk::ListPage {
    Q_OBJECT

  public:
    DesignsPage(session::BookSession& session, const desk::Formatter& formatter, QWidget* parent = nullptr);

    const base::Id& currentDesign() const { return m_presenter.currentId(); }
    void open(const base::Id& design) { m_presenter.open(design); }

  Q_SIGNALS:
    void cutFileAsked();  ///< count a cut file for a design
    void estimateAsked(); ///< before there is a cut file

  private:
    void buildActions(desk::FlowGrid& below);
    void buildCard(QWidget* card);
    void buildPacking(QVBoxLayout* column);
    void connectFields();
    template<class Field, class Put>
    void saveWith(Field* field, Put put);
    std::vector<desk::StoneListRow> rows(const QString& wanted, const base::Id& kept) override;
    base::Id openOne() const override { return m_presenter.currentId(); }
    void openAnother(const base::Id& design) override { m_presenter.open(design); }
    void load() override;
    void loadBases();
    void loadPacking(const catalogue::Design& design);
    void showPaidOff(const catalogue::Design& design);
    void showSheet();
    QLayout* buildDrawing();
    void showDrawing();
    void removed();
    void showPlan();

    artwork::DesignPictures* m_pictures; ///< before the presenter: it hears of a change first
    DesignsPresenter m_presenter;
    base::Id m_shown; ///< the design the fields speak of
    desk::Formatter m_formatter;
    QWidget* m_content = nullptr;
    QWidget* m_empty = nullptr;
    desk::TextLabel* m_heading = nullptr;
    desk::WordField* m_name = nullptr;
    desk::LengthField* m_width = nullptr;
    desk::LengthField* m_height = nullptr;
    desk::ChoiceField* m_base = nullptr;
    QCheckBox* m_onWall = nullptr;
    desk::CountField* m_planned = nullptr;
    desk::TextLabel* m_paidOff = nullptr;
    desk::DurationField* m_art = nullptr;
    desk::WordField* m_note = nullptr;
    DesignStones* m_stones = nullptr;
    QCheckBox* m_ownPacking = nullptr;
    desk::PackingRows* m_packing = nullptr;
    artwork::DesignView* m_picture = nullptr;
    desk::TextLabel* m_otherCounts = nullptr;
    desk::SheetPicture* m_sheet = nullptr;
    desk::TextLabel* m_total = nullptr;
    QLabel* m_drawing = nullptr;
    desk::TextLabel* m_drawingWords = nullptr;
};

} // namespace sp::designs

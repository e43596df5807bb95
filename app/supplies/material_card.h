// SPDX-License-Identifier: MIT
#pragma once

#include "app/desk/choice_field.h"
#include "app/desk/field_box.h"
#include "app/desk/figures.h"
#include "app/desk/flow_grid.h"
#include "app/desk/value_fields.h"
#include "app/desk/word_field.h"
#include "app/supplies/supplies_presenter.h"

#include <QCheckBox>
#include <QComboBox>
#include <QWidget>

#include <functional>

namespace sp::supplies {

class ColourButton;
class PackRows;
class SizeRows;

/// The fields of a material, those of its kind, with its packs and its shelf.
class MaterialCard : public QWidget {
    Q_OBJECT

  public:
    MaterialCard(SuppliesPresenter& presenter, const desk::Formatter& formatter, QWidget* parent = nullptr);

    void load();

  private:
    QWidget* buildStone();
    QWidget* buildSheet();
    QWidget* buildPrice();
    QWidget* buildShelf();
    void loadStone(const catalogue::Material& material);
    void loadSheet(const catalogue::Material& material);
    void loadShelf(const catalogue::Material& material);
    /// What goes out, as it was chosen.
    db::records::MoveKind outAs() const;
    /// What goes back to a supplier is for no job: none can be chosen then.
    void jobFollowsKind();
    /// Takes the job whose whole name is typed; false, and the field says so, where there is none of it.
    bool settlesJob();
    /// What comes in: bought where a sum is typed, come back from the job that is chosen, or else counted.
    void countIn();
    void takeOut();
    /// What is done with the number that was typed; `work` says what is wrong, or nothing. The job is left as it is.
    void moveShelf(const std::function<QString(std::int64_t)>& work);
    desk::FieldBox* box(desk::FlowGrid* grid, const QString& label, QWidget* field, const char* name, int span = 1);
    template<class Field, class Put>
    void saveWith(Field* field, Put put);
    template<class Put>
    void saveChoice(QComboBox* combo, Put put);

    SuppliesPresenter& m_presenter;
    base::Id m_shown; ///< what the fields speak of
    const desk::Formatter& m_formatter;
    desk::WordField* m_name = nullptr;
    QWidget* m_stone = nullptr;
    desk::WordField* m_colour = nullptr;
    QComboBox* m_size = nullptr;
    ColourButton* m_picture = nullptr;
    desk::RateField* m_loss = nullptr;
    QWidget* m_sheet = nullptr;
    QComboBox* m_form = nullptr;
    desk::LengthField* m_width = nullptr;
    desk::LengthField* m_height = nullptr;
    desk::FieldBox* m_heightBox = nullptr;
    desk::LengthField* m_margin = nullptr;
    desk::LengthField* m_border = nullptr;
    desk::LengthField* m_gap = nullptr;
    desk::CountField* m_lifts = nullptr;
    desk::FieldBox* m_liftsBox = nullptr;
    QComboBox* m_share = nullptr;
    QCheckBox* m_oneWay = nullptr;
    SizeRows* m_sizes = nullptr;
    QComboBox* m_basis = nullptr;
    desk::MoneyField* m_fixed = nullptr;
    QCheckBox* m_nothing = nullptr;
    PackRows* m_packs = nullptr;
    desk::TextLabel* m_onHand = nullptr;
    desk::CountField* m_amount = nullptr;
    desk::MoneyField* m_cost = nullptr;
    QComboBox* m_outAs = nullptr;
    desk::WordField* m_reason = nullptr;
    desk::ChoiceField* m_forJob = nullptr;
    desk::TextLabel* m_shelfRemarks = nullptr;
};

} // namespace sp::supplies

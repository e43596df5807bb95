// SPDX-License-Identifier: MIT
#pragma once

#include "app/counter/counter_presenter.h"
#include "app/desk/card.h"
#include "app/desk/choice_field.h"
#include "app/desk/field_box.h"
#include "app/desk/message_bar.h"
#include "app/desk/share_bar.h"
#include "app/desk/tab_row.h"
#include "app/desk/value_fields.h"
#include "app/desk/word_field.h"

#include <QCheckBox>
#include <QComboBox>
#include <QStringListModel>
#include <QVBoxLayout>

namespace sp::artwork {
class DesignPictures;
class DesignView;
} // namespace sp::artwork

namespace sp::counter {

class SheetRow;
class StoneRows;

/// The middle of the Counter: the line being edited. It shows no costs.
class LinePanel : public desk::Card {
    Q_OBJECT

  public:
    LinePanel(CounterPresenter& presenter, const desk::Formatter& formatter, artwork::DesignPictures& pictures,
              QWidget* parent = nullptr);

    void focusPieces();

  Q_SIGNALS:
    void designsWanted(); ///< the empty panel's action
    void removeAsked();

  private:
    void build();
    QLayout* buildHead();
    QLayout* buildLine();
    QLayout* buildPlace();
    void buildAddPlace();
    void buildBench(QVBoxLayout* column);
    void connectAll();
    void loadLine();
    void loadPlace();
    void loadSizes();
    void offerBases();
    void offerPlaces();
    void loadTax();
    void refresh();
    void refreshPlaces();
    void refreshPicture();
    void refreshBench();
    void refreshShortage();

    template<class T>
    void typed(CounterPresenter::Owner owner, desk::ValueField<T>* field, std::function<void(const T&)> put);
    void sizeTyped();

    CounterPresenter& m_presenter;
    const desk::Formatter& m_formatter;
    QWidget* m_content = nullptr;
    QToolButton* m_remove = nullptr;
    QWidget* m_empty = nullptr;
    desk::TextLabel* m_heading = nullptr;
    desk::TextLabel* m_number = nullptr;
    desk::WordField* m_title = nullptr;
    desk::CountField* m_pieces = nullptr;
    desk::ChoiceField* m_baseMaterial = nullptr;
    desk::MoneyField* m_price = nullptr; ///< of a charge
    desk::TabRow* m_places = nullptr;
    QWidget* m_placeFields = nullptr;
    desk::WordField* m_where = nullptr;
    QStringListModel* m_knownPlaces = nullptr; ///< those of the shop's surcharges
    desk::LengthField* m_width = nullptr;
    desk::LengthField* m_height = nullptr;
    desk::ChoiceField* m_addPlace = nullptr;
    desk::FieldBox* m_addPlaceBox = nullptr;
    desk::FieldBox* m_priceBox = nullptr;
    QCheckBox* m_onWall = nullptr;
    QCheckBox* m_taxable = nullptr;
    QCheckBox* m_atNoCharge = nullptr;
    QComboBox* m_taxRate = nullptr;
    QWidget* m_sizes = nullptr;
    std::vector<desk::CountField*> m_sizeFields;
    artwork::DesignPictures& m_pictures;
    artwork::DesignView* m_picture = nullptr;
    desk::TextLabel* m_otherCounts = nullptr;
    StoneRows* m_stones = nullptr;
    SheetRow* m_sheets = nullptr;
    QWidget* m_bench = nullptr;
    desk::TextLabel* m_benchTime = nullptr;
    desk::ShareBar* m_benchBar = nullptr;
    desk::MessageBar* m_short = nullptr;
    desk::TextLabel* m_note = nullptr;
};

} // namespace sp::counter

// SPDX-License-Identifier: MIT
#pragma once

#include "app/desk/choice_field.h"
#include "app/desk/figures.h"
#include "app/desk/rows_panel.h"
#include "app/desk/value_fields.h"
#include "app/desk/word_field.h"
#include "app/supplies/supplies_presenter.h"

#include <QCheckBox>

namespace sp::supplies {

/// The packs of the open material, a row each: supplier, what it is called, how many are in it, prices by number of
/// packs, what one and a gross cost by that, and which is the usual one. While the book has no supplier, the first row
/// is saved once one is named in it.
class PackRows : public desk::RowsPanel {
    Q_OBJECT

  public:
    PackRows(SuppliesPresenter& presenter, const desk::Formatter& formatter, QWidget* parent = nullptr);

    void load();

  private:
    struct Row {
        base::Id pack;
        desk::ChoiceField* supplier;
        desk::WordField* name;
        desk::CountField* amount;
        desk::WordField* prices;
        desk::TextLabel* whichIs;
        QCheckBox* usual;
    };

    void addPack();
    void nameSupplier(const base::Id& pack, const QString& name);
    QString whichIs(const catalogue::Pack& pack) const;
    void rebuild(const std::vector<catalogue::Pack>& packs);
    void addRow(int row, const catalogue::Pack& pack);
    void connectRow(const Row& row);

    SuppliesPresenter& m_presenter;
    const desk::Formatter& m_formatter;
    std::vector<Row> m_rows;
    base::Id m_firstOf; ///< the material whose first pack waits for the name of its supplier; none as a rule
};

} // namespace sp::supplies

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

/// The packs of the open material, a row each: supplier, what it is called, how many are in it, the price of one, what
/// one and a gross cost by that, and which is the usual one; below it the supplier's item number, and a row for each
/// further price, from so many packs on. While the book has no supplier, the first row is saved once one is named in
/// it. A bad entry keeps the prices of its pack from being saved; it stays as typed, with its sentence.
class PackRows : public desk::RowsPanel {
    Q_OBJECT

  public:
    PackRows(SuppliesPresenter& presenter, const desk::Formatter& formatter, QWidget* parent = nullptr);

    void load();

  private:
    /// A further price.
    struct Break {
        desk::CountField* from;
        desk::MoneyField* each;
        desk::TextLabel* whichIs;
    };
    struct Row {
        base::Id pack;
        desk::ChoiceField* supplier = nullptr;
        desk::WordField* name = nullptr;
        desk::CountField* amount = nullptr;
        desk::MoneyField* price = nullptr; ///< of one pack
        desk::TextLabel* whichIs = nullptr;
        QCheckBox* usual = nullptr;
        desk::WordField* item = nullptr;
        std::vector<Break> breaks = {};
    };
    /// An entry that is not saved, over the making of the rows anew.
    struct Unsaved {
        base::Id pack;
        std::size_t at; ///< of fieldsOf its row
        QString text;
        QString problem;
    };

    void addPack();
    void nameSupplier(const base::Id& pack, const QString& name);
    /// What one and a gross cost where a pack costs `each`.
    QString whichIs(const catalogue::Pack& pack, units::Money each) const;
    bool isShown(const std::vector<catalogue::Pack>& packs) const;
    void fill(const Row& row, const catalogue::Pack& pack);
    void rebuild(const std::vector<catalogue::Pack>& packs);
    void addHeads();
    /// `line`: the next free one of the grid. Answers the next after it.
    int addRow(int line, const catalogue::Pack& pack);
    int addLowerLines(int line, Row& row, const catalogue::Pack& pack);
    Break addBreakRow(int line, const base::Id& pack, int at);
    void connectRow(const Row& row);
    void addBreak(const base::Id& pack);
    void removeBreak(const base::Id& pack, int at);
    void pricesCommitted(const base::Id& pack);
    /// Shows what is wrong with the prices typed for a pack, beside the entry. True: nothing is.
    bool arePricesGood(const Row& row);
    static std::vector<desk::TypedField*> fieldsOf(const Row& row);

    SuppliesPresenter& m_presenter;
    const desk::Formatter& m_formatter;
    std::vector<Row> m_rows;
    base::Id m_firstOf; ///< the material whose first pack waits for the name of its supplier; none as a rule
};

} // namespace sp::supplies

// SPDX-License-Identifier: MIT
#pragma once

#include "app/desk/choice_field.h"
#include "app/desk/rows_panel.h"
#include "app/desk/value_fields.h"
#include "core/catalogue/fields/field.h"
#include "core/catalogue/packing.h"

#include <QComboBox>

#include <vector>

namespace sp::desk {

/// What goes with every piece or every order, a row each: which packing, how many, with what.
class PackingRows : public RowsPanel {
    Q_OBJECT

  public:
    /// `name` begins the object names: "packing" makes packing0, packingAmount0, packingPer0 and packingAdd. `list` is
    /// the field that the rows are together.
    PackingRows(const Formatter& formatter, const QString& name, const catalogue::fields::Field& list,
                QWidget* parent = nullptr);

    /// What there is to choose from, and what is chosen. Leaves a field alone that a person is at.
    void setRows(const std::vector<Choice>& materials, const std::vector<catalogue::PackingUse>& rows);
    const std::vector<catalogue::PackingUse>& rows() const { return m_rows; }

  Q_SIGNALS:
    void edited();

  private:
    struct Line {
        ChoiceField* material;
        CountField* amount;
        QComboBox* per;
    };

    void rebuild();
    void addLine(std::size_t at);
    void connectLine(std::size_t at);
    void addRow();
    void takeOut(std::size_t at);

    const Formatter& m_formatter;
    QString m_name;
    std::vector<Choice> m_materials;
    std::vector<catalogue::PackingUse> m_rows;
    std::vector<Line> m_lines;
};

} // namespace sp::desk

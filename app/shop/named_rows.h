// SPDX-License-Identifier: MIT
#pragma once

#include "app/desk/rows_panel.h"
#include "app/desk/value_fields.h"
#include "app/desk/word_field.h"

#include <array>
#include <string>
#include <variant>
#include <vector>

namespace sp::shop {

/// A name of the shop's own, and what it stands for: a rate of tax, or what a place adds to the price.
struct NamedRow {
    std::string name;
    std::variant<units::Rate, units::Money> value;

    friend bool operator==(const NamedRow&, const NamedRow&) = default;
};

/// Rows of a name and a value, all of one kind. A row with a bad entry keeps all of them from being saved; it stays as
/// typed, with its sentence.
class NamedRows : public desk::RowsPanel {
    Q_OBJECT

  public:
    struct Words {
        QString add;                  ///< the button
        std::array<QString, 2> heads; ///< over the names and over the values
        QString newName;              ///< what a new row is called
        QString nextName;             ///< the same with a number at %1, where that is taken
        QString noName;               ///< said where a name is missing
        QString nameOf;               ///< a row's name for who does not see it, its number at %1
        QString valueOf;              ///< likewise its value
        QString remove;               ///< likewise what takes it out
    };
    /// The rows of the table of fields that list, name and value stand for, and what the widgets are called.
    struct Fields {
        const catalogue::fields::Field& list;
        const catalogue::fields::Field& name;
        const catalogue::fields::Field& value;
        std::array<const char*, 3> objects; ///< of the button, a name and a value
    };

    /// `plain`: the value of a new row, and so the kind of all.
    NamedRows(const desk::Formatter& formatter, Words words, const Fields& fields,
              std::variant<units::Rate, units::Money> plain, QWidget* parent = nullptr);

    /// Leaves a field alone that a person is at.
    void setRows(const std::vector<NamedRow>& rows);
    const std::vector<NamedRow>& rows() const { return m_rows; }

  Q_SIGNALS:
    void edited();

  private:
    struct Line {
        desk::WordField* name;
        std::variant<desk::RateField*, desk::MoneyField*> value;
        desk::TypedField* typed; ///< the same as `value`
    };

    void rebuild();
    void addLine(std::size_t at);
    void addRow();
    void committed();
    void show(const Line& line, const NamedRow& row) const;

    const desk::Formatter& m_formatter;
    Words m_words;
    Fields m_fields;
    std::variant<units::Rate, units::Money> m_plain;
    std::vector<NamedRow> m_rows;
    std::vector<Line> m_lines;
};

} // namespace sp::shop

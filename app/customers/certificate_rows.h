// SPDX-License-Identifier: MIT
#pragma once

#include "app/desk/rows_panel.h"
#include "app/desk/value_fields.h"
#include "app/desk/word_field.h"
#include "core/catalogue/customer.h"

#include <optional>
#include <string>
#include <vector>

namespace sp::customers {

/// The further certificates of a customer, a row each. One is on file once its number, place and day of issue are all
/// there; while it is half typed it is on file as it was.
class CertificateRows : public desk::RowsPanel {
    Q_OBJECT

  public:
    CertificateRows(const desk::Formatter& formatter, units::Date today, QWidget* parent = nullptr);

    /// What is on file now. The fields are left alone while one is half typed, or refused; what is typed is put into
    /// what is on file by then.
    void setRows(const std::vector<catalogue::Certificate>& rows);
    /// Those of somebody else: what is half typed goes.
    void startAnew(const std::vector<catalogue::Certificate>& rows);
    const std::vector<catalogue::Certificate>& rows() const { return m_rows; }

  Q_SIGNALS:
    void edited();

  private:
    struct Typed {
        std::string number;
        std::string place;
        std::optional<units::Date> issuedOn;
        std::optional<units::Date> expiresOn;
        std::optional<catalogue::Certificate> onFile; ///< as it was when the row was last the same

        bool isBlank() const { return number.empty() && place.empty() && !issuedOn && !expiresOn; }
        bool isWhole() const { return !number.empty() && !place.empty() && issuedOn; }
        /// What of it is to be on file: while it is half typed, what is.
        std::optional<catalogue::Certificate> kept() const;
    };
    struct Line {
        desk::WordField* number;
        desk::WordField* place;
        desk::DateField* issuedOn;
        desk::DateField* expiresOn;
    };

    static std::vector<Typed> typedOf(const std::vector<catalogue::Certificate>& rows);
    void rebuild();
    void addLine(std::size_t at);
    void addRow();
    void takeOut(std::size_t at);
    void committed(std::size_t at);
    bool isUnfinished() const;
    /// What is on file with what is typed put into it.
    std::vector<catalogue::Certificate> merged() const;
    void handOn(std::vector<catalogue::Certificate> rows);

    const desk::Formatter& m_formatter;
    units::Date m_today;
    std::vector<Typed> m_typed; ///< as the fields show them
    std::vector<catalogue::Certificate> m_onFile;
    std::vector<catalogue::Certificate> m_rows; ///< handed on last
    std::vector<Line> m_lines;
};

} // namespace sp::customers

// SPDX-License-Identifier: MIT
#pragma once

#include "app/counter/line_pictures.h"
#include "core/quoting/sheet_content.h"

#include <QAbstractScrollArea>

namespace sp::counter {

/// The upper part of the slip's front: letterhead, number and the lines of the order, as on the printed sheet. Only
/// visible rows are drawn, so a long order takes no longer than a short one.
class SlipLines : public QAbstractScrollArea {
    Q_OBJECT

  public:
    explicit SlipLines(LinePicture pictures, QWidget* parent = nullptr);

    /// `current` is the line to keep visible; -1: none.
    void setContent(const quoting::SheetContent* content, int current);
    /// What the designs look like may be other than it was.
    void layAnew();

  protected:
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void changeEvent(QEvent* event) override;

  private:
    /// A row of text with its parts. `line` is the order line it belongs to; -1: none.
    struct Row {
        enum class Kind { Title, Plain, Main, Detail, Rule } kind = Kind::Plain;
        int top = 0;
        int height = 0;
        int line = -1;
        QString left;
        QString text;
        QString each;
        QString amount;
        int lead = 0;        ///< height of the first line of text, on which the figures stand
        QStringList words{}; ///< the text in the lines it takes
    };

    void layRows();
    /// Makes the columns of figures as wide as theirs are; true if that is another width than before.
    bool fitFigures();
    void addRow(Row row, int height, int line);
    /// Whether both rows break their text into the same lines.
    static bool isLaidLike(const Row& before, const Row& now);
    /// Tells screen readers the text of the rows, which is only painted.
    void describe();
    void showCurrent();
    /// The rectangle of a row's text, between the figures left and right of it, for a row at `y`.
    QRect wordsOf(const Row& row, int y) const;
    QFont fontOf(const Row& row) const;
    void paintRow(QPainter& painter, const Row& row, int y) const;
    void paintPicture(QPainter& painter, const Row& row, int y) const;

    LinePicture m_pictures;

    const quoting::SheetContent* m_content = nullptr;
    int m_current = -1;
    std::vector<Row> m_rows;
    std::vector<Row> m_before; ///< the rows of the last layout, at the same width
    int m_laidWidth = -1;
    int m_height = 0;
    int m_pictureWidth = 0; ///< of the column of pictures, with the gap after it; 0 where there are none
    int m_piecesWidth = 0;  ///< what the widest number of pieces takes, with the gap after it
    int m_amountWidth = 0;  ///< of the amounts likewise, with the gap before them
};

} // namespace sp::counter

// SPDX-License-Identifier: MIT
#pragma once

#include "app/artwork/estimate_colours.h"
#include "app/desk/choice_field.h"
#include "app/desk/field_box.h"
#include "app/desk/long_text.h"
#include "app/desk/value_fields.h"

#include <QRadioButton>

class QPushButton;
class QVBoxLayout;

namespace sp::artwork {

/// The entries of an estimate: lettering or a file's shapes, how high, which stone, how far apart, set how.
class EstimateFields : public QWidget {
    Q_OBJECT

  public:
    EstimateFields(EstimatePresenter& presenter, const desk::Formatter& formatter, QWidget* parent = nullptr);

    /// Asks the presenter what the entries say, or says there which one is not right.
    void ask();
    /// Reads the choices anew; entries stay.
    void loadChoices();
    /// Puts the presenter's counts of colours and its complaint about an entry beside them.
    void showAnswer();
    /// Turns to the shapes of the file that was read.
    void showFile();
    void focusStart();

  Q_SIGNALS:
    void fileAsked();

  private:
    void buildSource(QVBoxLayout* column);
    void buildLettering(QVBoxLayout* column);
    void buildFile(QVBoxLayout* column);
    void buildStones(QVBoxLayout* column);
    void buildStyle(QVBoxLayout* column);
    void follow(desk::LengthField* field);
    void sourceChanged();
    void loadRemarks();
    /// Shows the entries that what is chosen asks for.
    void showEntries();
    StoneStyle style() const;
    /// The first entry that is not right, in words; empty when all are.
    QString unreadEntry() const;

    EstimatePresenter& m_presenter;
    const desk::Formatter& m_formatter;
    QRadioButton* m_fromLettering = nullptr;
    QRadioButton* m_fromFile = nullptr;
    QWidget* m_lettering = nullptr;
    QWidget* m_fileBox = nullptr;
    desk::LongText* m_text = nullptr;
    desk::ChoiceField* m_font = nullptr;
    desk::LengthField* m_height = nullptr;
    desk::TextLabel* m_fileName = nullptr;
    QPushButton* m_choose = nullptr;
    desk::LengthField* m_fileHeight = nullptr;
    desk::FieldBox* m_fileHeightBox = nullptr;
    EstimateColours* m_colours = nullptr;
    desk::ChoiceField* m_stone = nullptr;
    desk::FieldBox* m_stoneBox = nullptr;
    desk::LengthField* m_pitch = nullptr;
    desk::FieldBox* m_pitchBox = nullptr;
    desk::LengthField* m_edge = nullptr;
    QRadioButton* m_outline = nullptr;
    QRadioButton* m_fill = nullptr;
    QRadioButton* m_both = nullptr;
    desk::ChoiceField* m_outlineStone = nullptr;
    desk::FieldBox* m_outlineBox = nullptr; ///< of it; there for both alone
    bool m_pitchDone = true;                ///< nobody is still typing in it
};

} // namespace sp::artwork

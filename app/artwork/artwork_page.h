// SPDX-License-Identifier: MIT
#pragma once

#include "app/artwork/artwork_presenter.h"
#include "app/artwork/artwork_view.h"
#include "app/artwork/colour_rows.h"
#include "app/artwork/left_out_list.h"
#include "app/desk/field_box.h"
#include "app/desk/figures.h"
#include "app/desk/split_page.h"
#include "app/desk/value_fields.h"
#include "app/desk/word_field.h"

#include <QButtonGroup>
#include <QPushButton>
#include <QVBoxLayout>

namespace sp::artwork {

/// Where a counted file may go.
struct Destination {
    base::Id openDesign;  ///< offered beside a new one; may be none
    bool isOrder = false; ///< the design is put on the order at the Counter
};

/// A cut file as it was counted: its picture at the left, what stands for what at the right, and what becomes of it.
class ArtworkPage : public desk::SplitPage {
    Q_OBJECT

  public:
    ArtworkPage(session::BookSession& session, const desk::Formatter& formatter, QWidget* parent = nullptr);

    ArtworkPresenter& presenter() { return m_presenter; }
    ArtworkView& view() { return *m_view; }
    /// Reads a file; `opened` when it is there, `refused` with the sentence when it cannot be read.
    void open(const QString& path, const Destination& destination);
    /// What the button says that takes a file without stones to be estimated.
    static QString estimateWord();

    /// Undoes, or does again, what was assigned here; false when there is nothing.
    bool undo() { return m_presenter.undoAssigning(); }
    bool redo() { return m_presenter.redoAssigning(); }

  Q_SIGNALS:
    void opened();
    void refused(const QString& sentence, const QString& shapesIn); ///< the second as ArtworkPresenter::refused
    void estimateAsked(const QString& path);                        ///< of a file that holds shapes and no stones
    void used(const sp::base::Id& design);                          ///< the design has what the file says
    void left();                                                    ///< nothing is taken over

  protected:
    void keyPressEvent(QKeyEvent* event) override;

  private:
    void buildPicture(QVBoxLayout* column);
    void buildSide(QVBoxLayout* column);
    void buildScales(QVBoxLayout* column);
    void buildStone(QVBoxLayout* column);
    void buildUse(QVBoxLayout* column);
    void connectAll();
    void loadFile();
    void load();
    void loadScales();
    void loadStone();
    void loadDifferences();
    void useNew();
    void useOpen();

    ArtworkPresenter m_presenter;
    const desk::Formatter& m_formatter;
    Destination m_destination;
    bool m_fits = true;
    desk::TextLabel* m_heading = nullptr;
    desk::TextLabel* m_summary = nullptr;
    desk::TextLabel* m_note = nullptr;
    ArtworkView* m_view = nullptr;
    QWidget* m_scaleBox = nullptr;
    QVBoxLayout* m_scaleColumn = nullptr;
    QButtonGroup* m_scales = nullptr;
    desk::LengthField* m_allowance = nullptr;
    ColourRows* m_rows = nullptr;
    desk::TextLabel* m_stoneWords = nullptr;
    desk::ChoiceField* m_stone = nullptr;
    LeftOutList* m_leftOut = nullptr;
    desk::TextLabel* m_differences = nullptr;
    desk::WordField* m_name = nullptr;
    desk::TextLabel* m_whyNot = nullptr;
    QPushButton* m_useNew = nullptr;
    QPushButton* m_useOpen = nullptr;
};

} // namespace sp::artwork

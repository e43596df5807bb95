// SPDX-License-Identifier: MIT
#pragma once

#include "app/artwork/artwork_view.h"
#include "app/artwork/estimate_fields.h"
#include "app/desk/split_page.h"
#include "app/desk/word_field.h"

class QPushButton;
class QVBoxLayout;

namespace sp::artwork {

class SideCard;

/// How many stones something takes before there is artwork: where they would sit at the left with their number and how
/// sure that is, what is asked at the right, and what becomes of it below.
class EstimatePage : public desk::SplitPage {
    Q_OBJECT

  public:
    EstimatePage(session::BookSession& session, OutlineMaker outlines, const desk::Formatter& formatter,
                 QWidget* parent = nullptr);

    EstimatePresenter& presenter() { return m_presenter; }
    ArtworkView& view() { return *m_view; }
    /// Asks anew; the entries are as they were left.
    void start();
    /// Estimates from the shapes of a file; one that cannot be read is said in a sentence and changes nothing.
    void openFile(const QString& path) { m_presenter.readFile(path); }

  Q_SIGNALS:
    void fileAsked();                      ///< which file? Answered by openFile
    void priced(const sp::base::Id& made); ///< it is a design, and is wanted on the order
    void made(const sp::base::Id& made);   ///< it is a design
    void left();

  protected:
    void keyPressEvent(QKeyEvent* event) override;

  private:
    void buildPicture(QVBoxLayout* column);
    void buildUse(QVBoxLayout* column);
    void load();
    void loadWords();
    void loadPicture();
    void setHeading(const QString& words);
    std::optional<base::Id> make();

    EstimatePresenter m_presenter;
    const desk::Formatter& m_formatter;
    desk::TextLabel* m_heading = nullptr;
    desk::TextLabel* m_summary = nullptr;
    ArtworkView* m_view = nullptr;
    desk::TextLabel* m_note = nullptr;
    EstimateFields* m_fields = nullptr;
    desk::WordField* m_name = nullptr;
    QPushButton* m_price = nullptr;
    QPushButton* m_make = nullptr;
    Box m_shown;              ///< of the shape in the picture; another one is fitted
    bool m_nameTyped = false; ///< a name of the person's own is not replaced
};

} // namespace sp::artwork

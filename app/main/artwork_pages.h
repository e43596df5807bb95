// SPDX-License-Identifier: MIT
#pragma once

#include "app/desk/prompter.h"
#include "app/format/formatter.h"
#include "app/session/book_session.h"

#include <QObject>
#include <QPointer>
#include <QStackedWidget>

namespace sp::artwork {
class ArtworkPage;
class EstimatePage;
struct Destination;
} // namespace sp::artwork

namespace sp::program {

/// The two pages that are not on the rail: a counted cut file and an estimate. Each is made on first use and stays in
/// the window's stack until it is closed or its result is used.
class ArtworkPages : public QObject {
    Q_OBJECT

  public:
    /// Everything is borrowed and outlives this.
    ArtworkPages(session::BookSession& session, const desk::Formatter& formatter, desk::Prompter& prompter,
                 QStackedWidget& stack, QObject* parent = nullptr);

    /// Counts a cut file and shows it; a file that cannot be read leaves everything as it is (`refused`).
    void count(const QString& file, const artwork::Destination& destination);
    void estimate();
    void estimateFile(const QString& file);
    /// Whether the estimate page is shown; a dropped file is then a shape for it.
    bool isEstimating() const;
    /// What was assigned on the counted file, while its page is shown; it is saved only when it is used.
    bool undo();
    bool redo();
    /// The name of the counted file, while its page is shown and what was assigned there is in no design; else empty.
    QString unusedFile() const;
    /// Shows the counted file again as it was left.
    void showCounted();
    /// Closes both pages and discards what was typed there.
    void reset();

  Q_SIGNALS:
    void opening();                                                 ///< one of the two is about to be shown
    void refused(const QString& sentence, const QString& shapesIn); ///< as ArtworkPage::refused
    void left();
    void counted(const sp::base::Id& design); ///< the design now has what the file says
    void priced(const sp::base::Id& design);  ///< an estimate became a design, to be put on the order
    void made(const sp::base::Id& design);    ///< an estimate became a design

  private:
    artwork::ArtworkPage& artworkPage();
    artwork::EstimatePage& estimatePage();

    session::BookSession& m_session;
    const desk::Formatter& m_formatter;
    desk::Prompter& m_prompter;
    QStackedWidget& m_stack;
    QPointer<artwork::ArtworkPage> m_artwork; ///< both belong to the stack
    QPointer<artwork::EstimatePage> m_estimate;
};

} // namespace sp::program

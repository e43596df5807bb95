// SPDX-License-Identifier: MIT
#pragma once

#include "app/paper/output.h"

#include <QDialog>
#include <QPrinter>

class QLabel;
class QPrintPreviewWidget;
class QPushButton;

namespace sp::paper {

/// The sheet, or any paper that is laid out, as it will be printed, with what can be done with it. Opened with open()
/// or show(). Needs no printer: without one the sheet can still be seen and saved. What went wrong is said in the
/// dialog itself.
class PreviewDialog : public QDialog {
    Q_OBJECT

  public:
    /// `suggestedPath` is the file that saving as PDF offers first.
    PreviewDialog(Document document, catalogue::Paper paper, QString suggestedPath, QWidget* parent = nullptr);
    PreviewDialog(DrawnPages drawn, catalogue::Paper paper, QString suggestedPath, QWidget* parent = nullptr);

    /// Saves and says so, or says why not; what the file dialog calls with the chosen path.
    void savePdf(const QString& path);

  private:
    void buildRows();
    void addKeys();
    void askPrinter();
    void askPath();
    void turnTo(int page);
    void say(const QString& sentence);

    DrawnPages m_drawn;
    catalogue::Paper m_paper;
    QString m_suggestedPath;
    QPrinter m_printer{QPrinter::HighResolution};
    QPrintPreviewWidget* m_preview = nullptr;
    QLabel* m_message = nullptr;
    QLabel* m_page = nullptr;
    QPushButton* m_back = nullptr;
    QPushButton* m_next = nullptr;
};

/// Opens one over `parent`'s window that goes when it is closed. `name` is that of the file, without its kind, that
/// saving offers where papers were saved last; `object` the dialog's object name.
void showPreview(Document document, catalogue::Paper paper, const QString& name, const char* object, QWidget* parent);

} // namespace sp::paper

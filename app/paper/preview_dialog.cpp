// SPDX-License-Identifier: MIT
#include "app/paper/preview_dialog.h"

#include "app/desk/fonts.h"
#include "app/session/settings.h"
#include "app/words/words.h"

#include <QDialogButtonBox>
#include <QDir>
#include <QFileDialog>
#include <QGraphicsView>
#include <QHBoxLayout>
#include <QLabel>
#include <QPrintDialog>
#include <QPrintPreviewWidget>
#include <QPrinterInfo>
#include <QPushButton>
#include <QScreen>
#include <QShortcut>
#include <QVBoxLayout>

namespace sp::paper {

PreviewDialog::PreviewDialog(Document document, catalogue::Paper paper, QString suggestedPath, QWidget* parent)
    : PreviewDialog(drawnOf(std::move(document)), paper, std::move(suggestedPath), parent) {}

PreviewDialog::PreviewDialog(DrawnPages drawn, catalogue::Paper paper, QString suggestedPath, QWidget* parent)
    : QDialog(parent)
    , m_drawn(std::move(drawn))
    , m_paper(paper)
    , m_suggestedPath(std::move(suggestedPath)) {
    setWindowTitle(tr("Preview of %1").arg(m_drawn.title));
    setPaper(m_printer, m_paper);
    buildRows();
    addKeys();
    turnTo(1);
    resize(desk::withinScreen(*this, {760, 900}));
}

void PreviewDialog::buildRows() {
    m_preview = new QPrintPreviewWidget(&m_printer, this);
    m_preview->setObjectName(QStringLiteral("sheetPreview"));
    for (auto* pages : m_preview->findChildren<QGraphicsView*>()) pages->setAccessibleName(windowTitle());
    connect(m_preview, &QPrintPreviewWidget::paintRequested, this,
            [this](QPrinter* printer) { paintPages(m_drawn, *printer, 0, m_drawn.count() - 1); });
    connect(m_preview, &QPrintPreviewWidget::previewChanged, this, [this] { turnTo(m_preview->currentPage()); });

    m_back = new QPushButton(tr("Page &back"), this);
    m_next = new QPushButton(tr("Page &on"), this);
    m_page = new QLabel(this);
    m_page->setObjectName(QStringLiteral("pageNumber"));
    m_message = new QLabel(this);
    m_message->setObjectName(QStringLiteral("previewMessage"));
    m_message->setWordWrap(true);
    m_message->setTextInteractionFlags(Qt::TextSelectableByMouse);
    m_message->hide();
    connect(m_back, &QPushButton::clicked, this, [this] { turnTo(m_preview->currentPage() - 1); });
    connect(m_next, &QPushButton::clicked, this, [this] { turnTo(m_preview->currentPage() + 1); });

    auto* buttons = new QDialogButtonBox(this);
    auto* printButton = buttons->addButton(tr("&Print…"), QDialogButtonBox::ActionRole);
    auto* save = buttons->addButton(tr("&Save as PDF…"), QDialogButtonBox::ActionRole);
    auto* close = buttons->addButton(tr("&Close"), QDialogButtonBox::RejectRole);
    printButton->setObjectName(QStringLiteral("print"));
    save->setObjectName(QStringLiteral("savePdf"));
    close->setObjectName(QStringLiteral("close"));
    for (auto* button : {m_back, m_next, printButton, save, close}) button->setAutoDefault(false);
    connect(printButton, &QPushButton::clicked, this, &PreviewDialog::askPrinter);
    connect(save, &QPushButton::clicked, this, &PreviewDialog::askPath);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);

    auto* pages = new QHBoxLayout;
    pages->addWidget(m_back);
    pages->addWidget(m_page);
    pages->addWidget(m_next);
    pages->addStretch();
    pages->addWidget(buttons);
    auto* rows = new QVBoxLayout(this);
    rows->addWidget(m_preview, 1);
    rows->addWidget(m_message);
    rows->addLayout(pages);
}

void PreviewDialog::addKeys() {
    const auto onKey = [this](const QKeySequence& key, auto action) {
        connect(new QShortcut(key, this), &QShortcut::activated, this, action);
    };
    onKey(QKeySequence::Print, [this] { askPrinter(); });
    onKey(QKeySequence::Save, [this] { askPath(); });
    onKey(QKeySequence::ZoomIn, [this] { m_preview->zoomIn(); });
    onKey(QKeySequence::ZoomOut, [this] { m_preview->zoomOut(); });
    onKey(QKeySequence(Qt::Key_PageUp), [this] { turnTo(m_preview->currentPage() - 1); });
    onKey(QKeySequence(Qt::Key_PageDown), [this] { turnTo(m_preview->currentPage() + 1); });
}

void PreviewDialog::turnTo(int page) {
    const int pages = m_drawn.count();
    const int wanted = std::clamp(page, 1, pages);
    if (m_preview->currentPage() != wanted) m_preview->setCurrentPage(wanted);
    m_page->setText(tr("Page %1 of %2").arg(wanted).arg(pages));
    m_back->setVisible(pages > 1);
    m_next->setVisible(pages > 1);
    m_back->setEnabled(wanted > 1);
    m_next->setEnabled(wanted < pages);
}

void PreviewDialog::say(const QString& sentence) {
    m_message->setText(sentence);
    m_message->show();
}

void PreviewDialog::askPrinter() {
    if (QPrinterInfo::availablePrinterNames().isEmpty()) {
        say(tr("No printer is set up on this computer; save the sheet as a PDF instead."));
        return;
    }
    auto* dialog = new QPrintDialog(&m_printer, this);
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    dialog->setOption(QAbstractPrintDialog::PrintPageRange);
    dialog->setMinMax(1, m_drawn.count());
    connect(dialog, &QDialog::accepted, this, [this] {
        const auto done = print(m_drawn, m_paper, m_printer);
        say(done ? tr("Sent to the printer %1.").arg(m_printer.printerName()) : words::sentence(done.error()));
    });
    dialog->open();
}

void PreviewDialog::askPath() {
    // The file dialog itself asks before a file is replaced.
    auto* dialog = new QFileDialog(this, tr("Save as PDF"), m_suggestedPath, tr("PDF (*.pdf)"));
    dialog->setObjectName(QStringLiteral("pdfPath"));
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    dialog->setAcceptMode(QFileDialog::AcceptSave);
    dialog->setDefaultSuffix(QStringLiteral("pdf"));
    connect(dialog, &QFileDialog::fileSelected, this, &PreviewDialog::savePdf);
    dialog->open();
}

void PreviewDialog::savePdf(const QString& path) {
    const auto done = writePdf(m_drawn, m_paper, path, db::IfThere::Replace);
    if (done) session::noteFolderOf(session::kPapersIn, path);
    say(done ? tr("Saved as %1.").arg(QDir::toNativeSeparators(path)) : words::sentence(done.error()));
}

void showPreview(Document document, catalogue::Paper paper, const QString& name, const char* object, QWidget* parent) {
    const QDir folder(session::folderOf(session::kPapersIn));
    auto* preview =
        new PreviewDialog(std::move(document), paper, folder.filePath(name + QStringLiteral(".pdf")), parent->window());
    preview->setObjectName(QLatin1String(object));
    preview->setAttribute(Qt::WA_DeleteOnClose);
    preview->open();
}

} // namespace sp::paper

#include "moc_preview_dialog.cpp"

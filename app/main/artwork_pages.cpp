// SPDX-License-Identifier: MIT
#include "app/main/artwork_pages.h"

#include "app/artwork/artwork_page.h"
#include "app/artwork/estimate_page.h"
#include "app/artwork/letter_outlines.h"
#include "app/session/settings.h"

namespace sp::program {

using artwork::ArtworkPage;
using artwork::EstimatePage;

ArtworkPages::ArtworkPages(session::BookSession& session, const desk::Formatter& formatter, desk::Prompter& prompter,
                           QStackedWidget& stack, QObject* parent)
    : QObject(parent)
    , m_session(session)
    , m_formatter(formatter)
    , m_prompter(prompter)
    , m_stack(stack) {}

void ArtworkPages::count(const QString& file, const artwork::Destination& destination) {
    artworkPage().open(file, destination);
}

void ArtworkPages::estimate() {
    Q_EMIT opening();
    auto& page = estimatePage();
    if (m_stack.currentWidget() == &page) return;
    page.start();
    m_stack.setCurrentWidget(&page);
}

void ArtworkPages::estimateFile(const QString& file) {
    estimate();
    estimatePage().openFile(file);
}

bool ArtworkPages::isEstimating() const { return m_estimate && m_stack.currentWidget() == m_estimate; }

bool ArtworkPages::undo() { return m_artwork && m_stack.currentWidget() == m_artwork && m_artwork->undo(); }

bool ArtworkPages::redo() { return m_artwork && m_stack.currentWidget() == m_artwork && m_artwork->redo(); }

QString ArtworkPages::unusedFile() const {
    const bool isUnused = m_artwork && m_stack.currentWidget() == m_artwork && m_artwork->presenter().hasUnused();
    return isUnused ? m_artwork->presenter().fileName() : QString();
}

void ArtworkPages::showCounted() {
    if (!m_artwork) return;
    Q_EMIT opening();
    m_stack.setCurrentWidget(m_artwork);
    m_artwork->view().setFocus(Qt::OtherFocusReason);
}

void ArtworkPages::reset() {
    delete m_artwork;
    delete m_estimate;
}

ArtworkPage& ArtworkPages::artworkPage() {
    if (m_artwork) return *m_artwork;
    m_artwork = new ArtworkPage(m_session, m_formatter, &m_stack);
    m_stack.addWidget(m_artwork);
    connect(m_artwork, &ArtworkPage::opened, this, [this] {
        Q_EMIT opening();
        m_stack.setCurrentWidget(m_artwork);
    });
    connect(m_artwork, &ArtworkPage::refused, this, &ArtworkPages::refused);
    connect(m_artwork, &ArtworkPage::estimateAsked, this, &ArtworkPages::estimateFile);
    connect(m_artwork, &ArtworkPage::left, this, &ArtworkPages::left);
    connect(m_artwork, &ArtworkPage::used, this, &ArtworkPages::counted);
    return *m_artwork;
}

EstimatePage& ArtworkPages::estimatePage() {
    if (m_estimate) return *m_estimate;
    m_estimate = new EstimatePage(m_session, artwork::outlinesOf, m_formatter, &m_stack);
    m_stack.addWidget(m_estimate);
    connect(m_estimate, &EstimatePage::fileAsked, this, [this] {
        const auto file = m_prompter.fileToOpen({tr("Estimate from a shape"),
                                                 session::folderOf(session::kCutFilesIn),
                                                 {},
                                                 tr("Drawings (*.svg *.svgz *.dxf *.plt);;All files (*)"),
                                                 {}});
        if (!file) return;
        session::noteFolderOf(session::kCutFilesIn, *file);
        m_estimate->openFile(*file);
    });
    connect(m_estimate, &EstimatePage::left, this, &ArtworkPages::left);
    connect(m_estimate, &EstimatePage::priced, this, &ArtworkPages::priced);
    connect(m_estimate, &EstimatePage::made, this, &ArtworkPages::made);
    return *m_estimate;
}

} // namespace sp::program

#include "moc_artwork_pages.cpp"

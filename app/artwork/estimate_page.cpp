// SPDX-License-Identifier: MIT
#include "app/artwork/estimate_page.h"

#include "app/artwork/page_parts.h"
#include "app/desk/bench_style.h"
#include "app/words/words.h"

#include <QAccessible>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QPushButton>
#include <QVBoxLayout>

namespace sp::artwork {

using desk::Role;
using desk::TextSize;

EstimatePage::EstimatePage(session::BookSession& session, OutlineMaker outlines, const desk::Formatter& formatter,
                           QWidget* parent)
    : SplitPage(parent)
    , m_presenter(session, std::move(outlines))
    , m_formatter(formatter) {
    setObjectName(QStringLiteral("estimatePage"));
    auto* left = new QVBoxLayout;
    left->setSpacing(8);
    buildPicture(left);
    sides()->addLayout(left, 1);
    auto* card = new SideCard(this);
    m_fields = new EstimateFields(m_presenter, m_formatter, card);
    card->entries()->addWidget(m_fields);
    card->entries()->addStretch(1);
    buildUse(card->foot());
    sides()->addWidget(card);
    connect(m_fields, &EstimateFields::fileAsked, this, &EstimatePage::fileAsked);
    connect(&m_presenter, &EstimatePresenter::changed, this, &EstimatePage::load);
    connect(&m_presenter, &EstimatePresenter::fileRead, this, [this] {
        messages().dismiss();
        m_fields->showFile();
    });
    connect(&m_presenter, &EstimatePresenter::fileRefused, this,
            [this](const QString& sentence) { messages().tell(desk::Tone::Warn, sentence); });
    // What the stones are called, look like and measure may be another; nobody looks while it is hidden.
    connect(&session, &session::BookSession::changed, this, [this] {
        if (isVisible()) start();
    });
    m_fields->ask();
}

void EstimatePage::buildPicture(QVBoxLayout* column) {
    auto* head = new QHBoxLayout;
    head->setSpacing(8);
    m_heading = desk::pageTitle({}, this);
    m_heading->setObjectName(QStringLiteral("estimateCount"));
    head->addWidget(m_heading, 1);
    m_view = new ArtworkView(this);
    m_view->setObjectName(QStringLiteral("estimateView"));
    m_view->setAccessibleName(tr("Picture of where the stones would sit"));
    addZoomButtons(head, m_view, this);
    column->addLayout(head);
    m_summary = new desk::TextLabel({}, TextSize::Body, Role::Muted, desk::Weight::Plain, this);
    m_summary->setObjectName(QStringLiteral("estimateSummary"));
    m_summary->setWordWrap(true);
    column->addWidget(m_summary);
    column->addWidget(m_view, 1);
    m_note = smallWords(this);
    column->addWidget(m_note);
}

void EstimatePage::buildUse(QVBoxLayout* column) {
    column->addWidget(new desk::Hairline(this));
    m_name = new desk::WordField(m_formatter, tr("Give the design a name."), this);
    m_name->setObjectName(QStringLiteral("estimateName"));
    connect(m_name, &desk::TypedField::edited, this, [this] { m_nameTyped = !m_name->isBlank(); });
    column->addWidget(new desk::FieldBox(tr("Design &name"), m_name, this));
    m_price = new QPushButton(tr("&Price it"), this);
    m_price->setObjectName(QStringLiteral("estimatePrice"));
    m_price->setToolTip(tr("Makes a design of it and puts it on the order"));
    desk::makePrimary(*m_price);
    m_make = new QPushButton(tr("Make a &design of it"), this);
    m_make->setObjectName(QStringLiteral("estimateMake"));
    auto* leave = new QPushButton(tr("Clos&e"), this);
    leave->setObjectName(QStringLiteral("leaveEstimate"));
    column->addWidget(m_price);
    auto* row = new QHBoxLayout;
    row->setSpacing(8);
    row->addWidget(m_make, 1);
    row->addWidget(leave);
    column->addLayout(row);
    connect(m_price, &QPushButton::clicked, this, [this] {
        if (const auto design = make()) Q_EMIT priced(*design);
    });
    connect(m_make, &QPushButton::clicked, this, [this] {
        if (const auto design = make()) Q_EMIT made(*design);
    });
    connect(leave, &QPushButton::clicked, this, &EstimatePage::left);
}

void EstimatePage::start() {
    const bool isBack = !isVisible();
    m_fields->loadChoices();
    m_fields->ask();
    if (isBack) m_fields->focusStart();
}

void EstimatePage::load() {
    m_fields->showAnswer();
    const bool isThere = m_presenter.estimate() != nullptr;
    m_price->setEnabled(isThere);
    m_make->setEnabled(isThere);
    loadWords();
    loadPicture();
    if (!m_nameTyped && isThere) m_name->setRaw(m_presenter.freeName());
}

void EstimatePage::setHeading(const QString& words) {
    if (words == m_heading->text()) return;
    m_heading->setText(words);
    QAccessibleEvent said(m_heading, QAccessible::NameChanged);
    QAccessible::updateAccessibility(&said);
}

void EstimatePage::loadWords() {
    const auto* estimate = m_presenter.estimate();
    m_summary->setRole(estimate || m_presenter.isWaiting() || m_presenter.isBusy() ? Role::Muted : Role::Warn);
    if (!estimate) {
        setHeading(tr("Estimate stones"));
        m_summary->setText(m_presenter.isBusy() ? tr("Setting stones…") : m_presenter.problem());
        m_note->setText(tr("An estimate, for a price before there is artwork. A cut file is counted, not estimated."));
        return;
    }
    setHeading(tr("About %1").arg(stonesInWords(estimate->count.value(), m_formatter)));
    auto summary = tr("An estimate: laid out by hand it takes %1 to %2. %3 over all.")
                       .arg(m_formatter.count(estimate->least), m_formatter.count(estimate->most),
                            m_formatter.size(m_presenter.width(), m_presenter.height()));
    for (const auto& reason : estimate->range) summary += QLatin1Char(' ') + words::sentence(reason);
    if (estimate->warning) {
        m_summary->setRole(Role::Warn);
        summary += QLatin1Char(' ') + words::sentence(*estimate->warning);
    }
    m_summary->setText(summary);
    auto how = words::sentence(estimate->how);
    if (!how.isEmpty()) how[0] = how[0].toUpper();
    const auto hint = tr("Drag or the arrows move it, Ctrl and the wheel or + and − zoom.");
    m_note->setText(how.isEmpty() ? hint : tr("%1. %2").arg(how, hint));
}

void EstimatePage::loadPicture() {
    const auto* estimate = m_presenter.estimate();
    const Box box = estimate ? estimate->box : Box{};
    m_view->setPicture(m_presenter.picture(), estimate && !(box == m_shown));
    if (estimate) m_shown = box;
    m_view->setAccessibleDescription(estimate ? QStringLiteral("%1. %2").arg(m_heading->text(), m_summary->text())
                                              : m_summary->text());
}

std::optional<base::Id> EstimatePage::make() {
    if (!m_name->problem().isEmpty()) {
        m_name->showError();
        m_name->setFocus(Qt::OtherFocusReason);
        return std::nullopt;
    }
    const auto design = m_presenter.makeDesign(m_name->text(), thumbnailOf(m_presenter.picture()));
    if (!design) {
        messages().tell(desk::Tone::Warn, words::sentence(design.error()));
        return std::nullopt;
    }
    messages().dismiss();
    m_nameTyped = false;
    return *design;
}

void EstimatePage::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Escape)
        Q_EMIT left();
    else
        SplitPage::keyPressEvent(event);
}

} // namespace sp::artwork

#include "moc_estimate_page.cpp"

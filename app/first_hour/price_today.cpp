// SPDX-License-Identifier: MIT
#include "app/first_hour/price_today.h"

#include "app/words/cost_words.h"
#include "app/words/words.h"
#include "core/costing/per_piece.h"

#include <QVBoxLayout>

namespace sp::first_hour {

using desk::Role;
using desk::TextLabel;
using desk::TextSize;
using desk::Weight;

PriceToday::PriceToday(FirstHourPresenter& presenter, const desk::Formatter& formatter, QWidget* parent)
    : desk::Card(parent)
    , m_presenter(presenter)
    , m_formatter(formatter)
    , m_on(new TextLabel({}, TextSize::Small, Role::Muted, Weight::Plain, this))
    , m_parts(new desk::RowGrid(12, this))
    , m_missingHead(new TextLabel(tr("What is not in it"), TextSize::Small, Role::Muted, Weight::Plain, this))
    , m_missing(new TextLabel({}, TextSize::Small, Role::Warn, Weight::Plain, this))
    , m_warning(new TextLabel({}, TextSize::Body, Role::Warn, Weight::Strong, this)) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(desk::cardMargins());
    column->setSpacing(8);
    column->addWidget(desk::pageTitle(tr("A price today"), this));
    m_on->setObjectName(QStringLiteral("trialOn"));
    m_on->setWordWrap(true);
    column->addWidget(m_on);
    column->addWidget(m_parts);
    column->addSpacing(8);
    column->addWidget(m_missingHead);
    m_missing->setObjectName(QStringLiteral("trialMissing"));
    m_missing->setWordWrap(true);
    m_missing->setTextFormat(Qt::RichText);
    m_missing->setTextInteractionFlags(Qt::LinksAccessibleByKeyboard | Qt::LinksAccessibleByMouse);
    column->addWidget(m_missing);
    m_warning->setObjectName(QStringLiteral("trialWarning"));
    m_warning->setWordWrap(true);
    column->addWidget(m_warning);
    column->addStretch(1);
    connect(m_missing, &QLabel::linkActivated, this, [this](const QString& number) {
        const auto at = number.toULongLong();
        if (at < m_leftOut.size()) Q_EMIT mendAsked(pricing::LeftOut(m_leftOut[at]));
    });
}

void PriceToday::add(const QString& what, const QString& figure, Weight weight) {
    const auto size = weight == Weight::Strong ? TextSize::Title : TextSize::Body;
    auto* label = new TextLabel(what, TextSize::Body, Role::Ink, weight, m_parts->body());
    auto* amount = new desk::FigureLabel(figure, size, Role::Ink, weight, m_parts->body());
    amount->setMeaning(what);
    m_parts->cells()->addWidget(label, m_row, 0);
    m_parts->cells()->addWidget(amount, m_row++, 1);
}

void PriceToday::load() {
    m_parts->restart();
    m_row = 0;
    m_each.clear();
    m_leftOut.clear();
    m_missingHead->hide();
    m_missing->hide();
    m_warning->hide();
    const auto trial = m_presenter.trial();
    if (!trial)
        m_on->setText(tr("The first stone with a price starts it: then some pieces are priced here as a customer would "
                         "pay for them."));
    else if (!*trial)
        m_on->setText(words::sentence(trial->error()));
    else
        showTrial(**trial);
    m_parts->finish();
}

void PriceToday::showTrial(const quoting::Trial& trial) {
    const auto& line = trial.order.lines.front();
    const auto pieces = m_formatter.count(line.quantity);
    m_on->setText(line.title.empty() ? tr("Tried on %1 decals of %2 with stones of yours.")
                                           .arg(pieces, m_formatter.size(line.first().width, line.first().height))
                                     : tr("Tried on %1 of %2.").arg(pieces, QString::fromStdString(line.title)));
    if (line.customersGarment)
        m_on->setText(m_on->text() + QLatin1Char(' ') +
                      tr("No backing has a price yet: a garment is reckoned that the customer brings."));
    const auto tree = words::explain(line, m_presenter.prices(), trial.cost, m_formatter.style());
    const auto shares = costing::shownForOneOf(trial.cost, line.quantity, m_formatter.currency());
    for (const auto& part : tree.children)
        if (!shares[part.node].isZero())
            add(QString::fromStdString(part.label), m_formatter.money(shares[part.node]), Weight::Plain);
    const auto& priced = trial.priced.lines.front();
    const auto cost = shares[tree.node];
    add(priced.each < cost ? tr("Rounding") : tr("Mark-up, rounded"), m_formatter.money(priced.each - cost),
        Weight::Plain);
    m_each = m_formatter.money(priced.each);
    add(tr("A piece, so far"), m_each, Weight::Strong);
    showLeftOut(trial);
}

void PriceToday::showLeftOut(const quoting::Trial& trial) {
    m_leftOut = trial.leftOut;
    QStringList lines;
    for (std::size_t i = 0; i < m_leftOut.size(); ++i)
        lines << QStringLiteral("<a href=\"%1\">%2</a>")
                     .arg(QString::number(i), words::sentence(m_leftOut[i].what).toHtmlEscaped());
    const auto& shop = m_presenter.session().shop();
    const bool isUnpaid = shop.rates.labourPerHour.isZero() && !shop.meantAsNothing.labour;
    if (isUnpaid && !trial.perTenAnHour.isZero())
        lines << tr("Each %1 an hour adds %2 to a piece.")
                     .arg(m_formatter.money(units::Money::fromMicros(10 * units::kMicrosPerUnit)),
                          m_formatter.money(trial.perTenAnHour))
                     .toHtmlEscaped();
    m_missing->setText(lines.join(QStringLiteral("<br>")));
    m_missingHead->setVisible(!lines.isEmpty());
    m_missing->setVisible(!lines.isEmpty());
    m_warning->setText(tr("Too low to live on yet: nothing in it pays for your hours."));
    m_warning->setVisible(isUnpaid);
}

} // namespace sp::first_hour

#include "moc_price_today.cpp"

// SPDX-License-Identifier: MIT
#include "app/first_hour/step_list.h"

#include "app/desk/bench_style.h"
#include "app/desk/figures.h"

#include <QPainter>
#include <QRadioButton>
#include <QVBoxLayout>

namespace sp::first_hour {

using desk::colour;
using desk::Role;
using desk::scaled;
using desk::textFont;
using desk::TextSize;
using desk::Weight;
using quoting::FirstStep;

namespace {

constexpr int kMark = 26; ///< across a mark, px at 100 %
constexpr int kMarkAt = 22;
constexpr int kWordsAt = 48;

} // namespace

/// One step: a radio button to the keyboard and to screen readers.
class StepButton : public QRadioButton {
  public:
    StepButton(const QString& title, int number, bool isLast, QWidget* parent)
        : QRadioButton(title, parent)
        , m_number(number)
        , m_isLast(isLast) {
        setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
        setCursor(Qt::PointingHandCursor);
    }

    void stand(Standing standing, const QString& note) {
        m_standing = standing;
        m_note = note;
        setToolTip(note);
        setAccessibleDescription(
            standing == Standing::Done       ? QCoreApplication::translate("FirstSteps", "Done. %1").arg(note)
            : standing == Standing::PassedBy ? QCoreApplication::translate("FirstSteps", "Left open. %1").arg(note)
                                             : note);
        update();
    }

    QSize sizeHint() const override {
        const QFontMetrics strong(textFont(TextSize::Body, Weight::Strong));
        const QFontMetrics small(textFont(TextSize::Small));
        return {scaled(kWordsAt) + strong.horizontalAdvance(text()) + scaled(12),
                strong.height() + small.height() + scaled(26)};
    }
    QSize minimumSizeHint() const override { return sizeHint(); }

  protected:
    bool hitButton(const QPoint& at) const override { return rect().contains(at); }

    void enterEvent(QEnterEvent* event) override {
        QRadioButton::enterEvent(event);
        update();
    }

    void paintEvent(QPaintEvent*) override {
        QPainter painter(this);
        painter.setRenderHint(QPainter::Antialiasing);
        paintGround(painter);
        paintMark(painter);
        const QFontMetrics strong(textFont(TextSize::Body, Weight::Strong));
        const QRect words = rect().adjusted(scaled(kWordsAt), scaled(10), -scaled(8), -scaled(10));
        painter.setFont(textFont(TextSize::Body, isChecked() ? Weight::Strong : Weight::Plain));
        painter.setPen(colour(Role::Ink));
        painter.drawText(words, Qt::AlignLeft | Qt::AlignTop | Qt::TextHideMnemonic, text());
        painter.setFont(textFont(TextSize::Small));
        painter.setPen(colour(m_standing == Standing::PassedBy ? Role::Warn : Role::Muted));
        painter.drawText(words.adjusted(0, strong.height() + 3, 0, 0), Qt::AlignLeft | Qt::AlignTop,
                         painter.fontMetrics().elidedText(m_note, Qt::ElideRight, words.width()));
    }

  private:
    void paintGround(QPainter& painter) const {
        const QRectF box = QRectF(rect()).adjusted(1, 3, -1, -3);
        painter.setPen(isChecked() ? QPen(colour(Role::Jewel), 2) : QPen(Qt::NoPen));
        painter.setBrush(isChecked()    ? colour(Role::Field)
                         : underMouse() ? colour(Role::Card)
                                        : QColor(Qt::transparent));
        painter.drawRoundedRect(box, desk::kFieldRadius + 2, desk::kFieldRadius + 2);
        if (!hasFocus()) return;
        painter.setPen(QPen(colour(Role::Jewel), 1, Qt::DotLine));
        painter.setBrush(Qt::NoBrush);
        painter.drawRoundedRect(box.adjusted(4, 4, -4, -4), desk::kFieldRadius, desk::kFieldRadius);
    }

    void paintMark(QPainter& painter) const {
        const QPointF centre(scaled(kMarkAt), height() / 2.0);
        const double radius = scaled(kMark) / 2.0;
        painter.setPen(
            QPen(colour(Role::FieldOutline), 1.5, m_standing == Standing::Done ? Qt::SolidLine : Qt::DotLine));
        if (m_number > 1) painter.drawLine(QPointF(centre.x(), 0), centre - QPointF(0, radius + 4));
        if (!m_isLast) painter.drawLine(centre + QPointF(0, radius + 4), QPointF(centre.x(), height()));
        const auto ink = m_standing == Standing::Done       ? colour(Role::Good)
                         : isChecked()                      ? colour(Role::Jewel)
                         : m_standing == Standing::PassedBy ? colour(Role::Warn)
                                                            : colour(Role::Muted);
        painter.setPen(QPen(ink, 2));
        painter.setBrush(m_standing == Standing::Done ? ink : colour(Role::Card));
        painter.drawEllipse(centre, radius - 1, radius - 1);
        if (m_standing == Standing::Done) {
            const double u = radius / 13;
            painter.setPen(QPen(colour(Role::Card), 2.2 * u, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
            painter.drawPolyline(QPolygonF({centre + QPointF(-5 * u, 0.5 * u), centre + QPointF(-1.5 * u, 4 * u),
                                            centre + QPointF(5.5 * u, -4 * u)}));
        } else {
            painter.setFont(textFont(TextSize::Small, Weight::Strong));
            const QRectF box(centre.x() - radius, centre.y() - radius, 2 * radius, 2 * radius);
            painter.drawText(box, Qt::AlignCenter,
                             m_standing == Standing::PassedBy ? QStringLiteral("!") : QString::number(m_number));
        }
    }

    int m_number;
    bool m_isLast;
    Standing m_standing = Standing::ToCome;
    QString m_note;
};

StepList::StepList(QWidget* parent)
    : QWidget(parent)
    , m_group(new QButtonGroup(this)) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    const auto& steps = quoting::kFirstSteps;
    for (std::size_t i = 0; i < steps.size(); ++i) {
        const int number = static_cast<int>(i) + 1;
        auto* button = new StepButton(titleOf(steps[i]), number, i + 1 == steps.size(), this);
        button->setObjectName(QStringLiteral("firstStep%1").arg(number));
        m_group->addButton(button, static_cast<int>(steps[i]));
        column->addWidget(button);
    }
    setAccessibleName(tr("Steps"));
    connect(m_group, &QButtonGroup::idClicked, this, [this](int id) { Q_EMIT chosen(static_cast<FirstStep>(id)); });
}

void StepList::setStep(FirstStep step, Standing standing, const QString& note) {
    static_cast<StepButton*>(m_group->button(static_cast<int>(step)))->stand(standing, note);
}

void StepList::setCurrent(FirstStep step) { m_group->button(static_cast<int>(step))->setChecked(true); }

QString StepList::titleOf(FirstStep step) {
    switch (step) {
    case FirstStep::Letterhead: return tr("Letterhead");
    case FirstStep::MoneyAndTax: return tr("Currency and tax");
    case FirstStep::HoursWorth: return tr("An hour’s worth");
    case FirstStep::EveryLine: return tr("What every line takes");
    case FirstStep::Stones: return tr("First stones");
    case FirstStep::Design: return tr("First design");
    case FirstStep::Quote: return tr("First quote");
    }
    return {};
}

} // namespace sp::first_hour

#include "moc_step_list.cpp"

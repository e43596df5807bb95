// SPDX-License-Identifier: MIT
#include "app/desk/empty_state.h"

#include "app/desk/bench_style.h"
#include "app/desk/figures.h"

#include <QVBoxLayout>

namespace sp::desk {

namespace {

/// The drawing, in the muted ink of the look in force.
class Drawing : public QWidget {
  public:
    explicit Drawing(Icon which)
        : m_which(which) {
        setFixedSize(48, 48);
    }

  protected:
    void paintEvent(QPaintEvent*) override {
        QPainter painter(this);
        paintIcon(painter, rect(), m_which, colour(Role::Muted));
    }

  private:
    Icon m_which;
};

} // namespace

EmptyState::EmptyState(Icon drawing, const QString& sentence, const QString& action, QWidget* parent)
    : QWidget(parent)
    , m_button(new QPushButton(action)) {
    auto* words = new TextLabel(sentence, TextSize::Body, Role::Muted);
    words->setWordWrap(true);
    words->setAlignment(Qt::AlignHCenter);
    words->setMinimumWidth(280);
    m_button->setObjectName(QStringLiteral("emptyAction"));
    m_button->setAccessibleDescription(sentence);
    makePrimary(*m_button);
    auto* column = new QVBoxLayout(this);
    column->setSpacing(12);
    column->addStretch(1);
    column->addWidget(new Drawing(drawing), 0, Qt::AlignHCenter);
    column->addWidget(words);
    column->addSpacing(8);
    column->addWidget(m_button, 0, Qt::AlignHCenter);
    column->addStretch(2);
    connect(m_button, &QPushButton::clicked, this, &EmptyState::acted);
}

} // namespace sp::desk

#include "moc_empty_state.cpp"

// SPDX-License-Identifier: MIT
#include "app/main/book_trouble.h"

#include "app/desk/bench_style.h"
#include "app/desk/card.h"
#include "app/desk/figures.h"
#include "app/desk/fonts.h"

#include <QDir>
#include <QFileInfo>
#include <QHBoxLayout>
#include <QPushButton>
#include <QVBoxLayout>

namespace sp::program {

using desk::Role;
using desk::TextSize;

BookTrouble::BookTrouble(QWidget* parent)
    : QDialog(parent)
    , m_title(new desk::TextLabel({}, TextSize::Title, Role::Ink, desk::Weight::Strong, this))
    , m_sentence(new desk::TextLabel({}, TextSize::Body, Role::Ink, desk::Weight::Plain, this))
    , m_place(new desk::TextLabel({}, TextSize::Small, Role::Muted, desk::Weight::Plain, this))
    , m_again(new QPushButton(tr("&Try again"), this))
    , m_demo(new QPushButton(tr("Look at the &demo book"), this))
    , m_new(new QPushButton(tr("Start a &job book…"), this)) {
    setObjectName(QStringLiteral("bookTrouble"));
    setWindowTitle(tr("Stonepenny"));
    m_title->setObjectName(QStringLiteral("troubleTitle"));
    m_sentence->setObjectName(QStringLiteral("troubleSentence"));
    m_place->setObjectName(QStringLiteral("troublePlace"));
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(desk::pageMargins());
    column->setSpacing(12);
    for (auto* label : {m_title, m_sentence, m_place}) {
        label->setWordWrap(true);
        column->addWidget(label);
    }
    column->addSpacing(8);
    column->addStretch(1);
    auto* locate = new QPushButton(tr("&Locate it…"), this);
    auto* backup = new QPushButton(tr("Open a &backup…"), this);
    m_again->setObjectName(QStringLiteral("troubleAgain"));
    locate->setObjectName(QStringLiteral("troubleLocate"));
    backup->setObjectName(QStringLiteral("troubleBackup"));
    m_demo->setObjectName(QStringLiteral("troubleDemo"));
    m_new->setObjectName(QStringLiteral("troubleNew"));
    desk::makePrimary(*m_again);
    m_again->setDefault(true);
    auto* buttons = new QHBoxLayout;
    buttons->setSpacing(8);
    for (auto* button : {m_again, locate, backup}) buttons->addWidget(button);
    buttons->addStretch(1);
    for (auto* button : {m_demo, m_new}) buttons->addWidget(button);
    for (auto* button : {locate, backup, m_demo, m_new}) button->setAutoDefault(false);
    column->addLayout(buttons);
    connect(m_again, &QPushButton::clicked, this, &BookTrouble::tryAgainAsked);
    connect(locate, &QPushButton::clicked, this, &BookTrouble::locateAsked);
    connect(backup, &QPushButton::clicked, this, &BookTrouble::backupAsked);
    connect(m_demo, &QPushButton::clicked, this, &BookTrouble::demoAsked);
    connect(m_new, &QPushButton::clicked, this, &BookTrouble::newBookAsked);
    resize(desk::withinScreen(*this, {desk::scaled(720), desk::scaled(260)}));
}

void BookTrouble::tell(const QString& file, const QString& sentence, bool isDemo) {
    const QFileInfo info(file);
    m_title->setText(isDemo ? tr("The demo book is not open")
                            : tr("Your job book “%1” is not open").arg(info.completeBaseName()));
    m_sentence->setText(sentence);
    m_place->setText(isDemo ? tr("It is kept in %1. Nothing in it is yours.").arg(QDir::toNativeSeparators(file))
                            : tr("It was last at %1. If it is on a stick or another disk, plug that in and try again.")
                                  .arg(QDir::toNativeSeparators(file)));
    m_demo->setVisible(!isDemo);
    m_new->setVisible(isDemo);
}

} // namespace sp::program

#include "moc_book_trouble.cpp"

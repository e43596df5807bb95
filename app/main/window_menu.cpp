// SPDX-License-Identifier: MIT
// The Book menu of the window, and what it opens.
#include "app/counter/counter_page.h"
#include "app/desk/bench_style.h"
#include "app/desk/fonts.h"
#include "app/desk/icons.h"
#include "app/desk/rail.h"
#include "app/main/artwork_pages.h"
#include "app/main/keys_dialog.h"
#include "app/main/main_window.h"
#include "app/session/settings.h"
#include "app/words/cost_words.h"
#include "app/words/translations.h"

#include <QActionGroup>
#include <QDir>
#include <QFileInfo>
#include <QMenu>
#include <QMessageBox>
#include <QToolButton>

namespace sp::program {

QAction* MainWindow::act(QMenu* menu, const QString& text, const QKeySequence& keys, std::function<void()> work) {
    auto* action = new QAction(text, this);
    action->setShortcut(keys);
    connect(action, &QAction::triggered, this, [work = std::move(work)] { work(); });
    addAction(action);
    menu->addAction(action);
    return action;
}

void MainWindow::buildMenu() {
    auto* menu = new QMenu(this);
    menu->setObjectName(QStringLiteral("bookMenu"));
    act(menu, tr("&New order"), QKeySequence::New, [this] {
        goTo(PlaceId::Counter);
        counter()->startNew();
    });
    act(menu, tr("&Find in this place"), QKeySequence::Find, [this] { findHere(); });
    act(menu, tr("F&ind a quote…"), QKeySequence(QStringLiteral("Ctrl+Shift+F")), [this] { findQuote(); });
    act(menu, tr("&Count a cut file…"), QKeySequence(QStringLiteral("Ctrl+I")), [this] { askForCutFile(); });
    act(menu, tr("&Estimate stones…"), QKeySequence(QStringLiteral("Ctrl+Shift+I")), [this] { m_artwork->estimate(); });
    auto* choice = act(menu, tr("Offer &another choice"), QKeySequence(QStringLiteral("Ctrl+D")), [this] {
        goTo(PlaceId::Counter);
        counter()->addChoice();
    });
    auto* give = act(menu, tr("&Give this quote"), Qt::CTRL | Qt::Key_Return, [this] { giveOrGoOn(); });
    auto* print = act(menu, tr("&Print or save the sheet…"), QKeySequence::Print, [this] {
        goTo(PlaceId::Counter);
        counter()->showSheet();
    });
    greyUnless(menu, choice, [this] { return m_presenter.canChange() && m_presenter.hasLine(); });
    greyUnless(menu, give, [this] { return m_presenter.canChange() && m_presenter.priced(); });
    greyUnless(menu, print, [this] { return m_presenter.isIssued() || m_presenter.priced(); });
    act(menu, tr("&Turn the slip over"), Qt::Key_F9, [this] {
        goTo(PlaceId::Counter);
        counter()->turnOver();
    });
    menu->addSeparator();
    m_undo = act(menu, tr("Un&do"), QKeySequence::Undo, [this] { undo(); });
    m_redo = act(menu, tr("&Redo"), QKeySequence(QStringLiteral("Ctrl+Shift+Z")), [this] { redo(); });
    m_redo->setShortcuts({QKeySequence(QStringLiteral("Ctrl+Shift+Z")), QKeySequence(QStringLiteral("Ctrl+Y"))});
    greyUnless(menu, m_undo, [this] { return !m_session.undoText().isEmpty(); });
    greyUnless(menu, m_redo, [this] { return !m_session.redoText().isEmpty(); });
    menu->addSeparator();
    act(menu, tr("Start a &job book…"), {}, [this] { Q_EMIT newBookAsked(); });
    act(menu, tr("&Open a job book…"), QKeySequence::Open, [this] { Q_EMIT openBookAsked({}); });
    buildLastBooksMenu(menu->addMenu(tr("Last &books")));
    act(menu, tr("&Save a copy of this book…"), {}, [this] { m_care->saveCopy(); });
    act(menu, tr("Back&ups…"), {}, [this] { m_care->showBackups(); });
    act(menu, tr("C&heck this book"), {}, [this] { m_care->check(); });
    menu->addSeparator();
    buildLookMenu(menu->addMenu(tr("&Look")));
    buildLanguageMenu(menu->addMenu(tr("Language of window and &menus")));
    buildTurnBackMenu(menu->addMenu(tr("O&wner’s side turns back")));
    act(menu, tr("&Keys and help"), QKeySequence::HelpContents, [this] { showKeys(); });
    act(menu, tr("About Stonepenn&y"), {}, [this] { about(); });
    act(menu, tr("&Quit"), QKeySequence(QStringLiteral("Ctrl+Q")), [this] { close(); });

    m_bookButton->setObjectName(QStringLiteral("book"));
    m_bookButton->setText(tr("Book"));
    m_bookButton->setToolTip(tr("Everything that can be done with this job book (F10)"));
    m_bookButton->setAccessibleName(tr("Book menu"));
    m_bookButton->setIcon(desk::icon(desk::Icon::Open, desk::Role::Ink));
    m_bookButton->setToolButtonStyle(Qt::ToolButtonTextUnderIcon);
    m_bookButton->setPopupMode(QToolButton::InstantPopup);
    m_bookButton->setAutoRaise(true);
    m_bookButton->setMenu(menu);
    m_bookButton->setShortcut(Qt::Key_F10);
    m_rail->layout()->addWidget(m_bookButton);
    m_rail->layout()->setAlignment(m_bookButton, Qt::AlignHCenter | Qt::AlignBottom);
}

/// While the menu is open; by its key it still answers, and says why it cannot be done.
void MainWindow::greyUnless(QMenu* menu, QAction* action, std::function<bool()> canBeDone) {
    connect(menu, &QMenu::aboutToShow, action,
            [action, canBeDone = std::move(canBeDone)] { action->setEnabled(canBeDone()); });
    connect(menu, &QMenu::aboutToHide, action, [action] { action->setEnabled(true); });
}

void MainWindow::buildLookMenu(QMenu* menu) {
    auto* schemes = new QActionGroup(this);
    const std::pair<QString, desk::Scheme> choices[] = {{tr("As the &system"), desk::Scheme::System},
                                                        {tr("&Light"), desk::Scheme::Light},
                                                        {tr("&Dark"), desk::Scheme::Dark},
                                                        {tr("Light, high &contrast"), desk::Scheme::LightContrast},
                                                        {tr("Dark, &high contrast"), desk::Scheme::DarkContrast}};
    for (const auto& [word, scheme] : choices) {
        auto* action = menu->addAction(word);
        action->setCheckable(true);
        action->setChecked(m_theme.scheme() == scheme);
        schemes->addAction(action);
        connect(action, &QAction::triggered, this, [this, scheme = scheme] {
            m_theme.setScheme(scheme);
            session::save(session::kScheme, static_cast<int>(scheme));
        });
    }
    menu->addSeparator();
    auto* larger =
        act(menu, tr("L&arger text"), QKeySequence::ZoomIn, [this] { zoomTo(desk::zoomLarger(desk::zoom())); });
    larger->setShortcuts({QKeySequence(QStringLiteral("Ctrl++")), QKeySequence(QStringLiteral("Ctrl+="))});
    act(menu, tr("S&maller text"), QKeySequence::ZoomOut, [this] { zoomTo(desk::zoomSmaller(desk::zoom())); });
    act(menu, tr("&Usual text size"), QKeySequence(QStringLiteral("Ctrl+0")), [this] { zoomTo(100); });
}

/// Texts are made as the window is built, so another language is spoken from the next start on.
void MainWindow::buildLanguageMenu(QMenu* menu) {
    menu->setObjectName(QStringLiteral("languageMenu"));
    auto* languages = new QActionGroup(this);
    const auto add = [this, menu, languages](const QString& word, const QString& language) {
        auto* action = menu->addAction(word);
        action->setData(language);
        action->setCheckable(true);
        action->setChecked(session::kept(session::kLanguage) == language);
        languages->addAction(action);
        connect(action, &QAction::triggered, this, [this, language] {
            session::save(session::kLanguage, language);
            m_messages->tell(desk::Tone::Jewel, tr("The window speaks this language from the next start on."));
        });
    };
    add(tr("As the &system"), {});
    for (const auto& language : words::languagesThere()) add(words::ownNameOf(language), language);
}

/// How long the owner's side stays up without a key; read when it is turned up.
void MainWindow::buildTurnBackMenu(QMenu* menu) {
    menu->setObjectName(QStringLiteral("turnBackMenu"));
    auto* waits = new QActionGroup(this);
    const std::pair<QString, int> choices[] = {{tr("After &half a minute without a key"), 30},
                                               {tr("After &two minutes without a key"), 120},
                                               {tr("After te&n minutes without a key"), 600},
                                               {tr("Only &when I turn it"), 0}};
    for (const auto& [word, seconds] : choices) {
        auto* action = menu->addAction(word);
        action->setCheckable(true);
        action->setChecked(session::kept(session::kTurnsBackAfter) == seconds);
        waits->addAction(action);
        connect(action, &QAction::triggered, this,
                [seconds = seconds] { session::save(session::kTurnsBackAfter, seconds); });
    }
}

/// Filled when it is opened: another book may have been opened since.
void MainWindow::buildLastBooksMenu(QMenu* menu) {
    menu->setObjectName(QStringLiteral("lastBooksMenu"));
    const auto fill = [this, menu] {
        menu->clear();
        const auto here = QString::fromStdString(m_session.book().file().string());
        for (const auto& file : session::lastBooks()) {
            if (QFileInfo(file) == QFileInfo(here) || !QFileInfo::exists(file)) continue;
            auto* action =
                menu->addAction(QFileInfo(file).completeBaseName().replace(QLatin1Char('&'), QLatin1String("&&")));
            action->setToolTip(QDir::toNativeSeparators(file));
            connect(action, &QAction::triggered, this, [this, file] { Q_EMIT openBookAsked(file); });
        }
        if (!menu->isEmpty()) menu->addSeparator();
        auto* demo = menu->addAction(tr("The &demo book"));
        demo->setEnabled(!m_session.shop().isDemo);
        connect(demo, &QAction::triggered, this, [this] { Q_EMIT demoAsked(); });
    };
    fill();
    menu->setToolTipsVisible(true);
    connect(menu, &QMenu::aboutToShow, this, fill);
}

/// As the rows of its cost sheet say them, a sum by the names of its parts; none while no stone has a price.
std::vector<KeyWords> MainWindow::formulasOfATrial() {
    const auto trial = m_firstHour.trial();
    if (!trial || !*trial) return {};
    std::vector<KeyWords> formulas;
    const std::function<void(const words::CostTree&)> add = [&](const words::CostTree& part) {
        QStringList parts;
        for (const auto& child : part.children)
            if (!child.amount.isZero()) parts << QString::fromStdString(child.label);
        const auto rule = parts.isEmpty() ? QString::fromStdString(part.rule) : parts.join(QStringLiteral(" + "));
        if (!rule.isEmpty() && !part.amount.isZero())
            formulas.push_back({QString::fromStdString(part.label),
                                QStringLiteral("%1 = %2").arg(rule, m_formatter.moneyExact(part.amount))});
        for (const auto& child : part.children) add(child);
    };
    add(words::explain((*trial)->order.lines.front(), m_firstHour.prices(), (*trial)->cost, m_formatter.style()));
    return formulas;
}

void MainWindow::showKeys() {
    std::vector<KeyWords> keys;
    for (const auto* action : actions()) {
        if (action->shortcut().isEmpty()) continue;
        auto words = action->text();
        words.remove(QLatin1Char('&')).remove(QStringLiteral("…"));
        keys.push_back({action->shortcut().toString(QKeySequence::NativeText), words});
    }
    auto* shown = new KeysDialog(keys, formulasOfATrial(), this);
    shown->setAttribute(Qt::WA_DeleteOnClose);
    shown->open();
}

void MainWindow::zoomTo(int percent) {
    desk::setZoom(percent);
    fitRail();
    session::save(session::kZoom, percent);
}

void MainWindow::about() {
    auto* shown = new QMessageBox(
        QMessageBox::NoIcon, tr("About Stonepenny"),
        tr("Stonepenny %1, for shops that set hot-fix stones.\n\nUnder the MIT licence. It stands on Qt %2 (LGPL 3), "
           "SQLite, fmt, pugixml and JSON for Modern C++.\n\nWhat it says about tax, safety and law are reminders: "
           "local rules, the makers’ data and licensed practice come first.")
            .arg(QStringLiteral(STONEPENNY_VERSION), QString::fromLatin1(qVersion())),
        QMessageBox::Close, this);
    shown->setAttribute(Qt::WA_DeleteOnClose);
    shown->open();
}

} // namespace sp::program

// SPDX-License-Identifier: MIT
// The gate for controls: in every place and every dialog each of them has a name, the one that is seen beside or on it,
// is reached by Tab once, and no two keys with Alt are the same.
#include "tests/app/every_dialog.h"

#include <QAccessible>
#include <QComboBox>
#include <QLabel>
#include <QMenu>
#include <QToolButton>

#include <algorithm>
#include <map>

using namespace sp;
using program::PlaceId;

namespace {

QString plain(QString words) {
    return words.remove(QLatin1Char('&')).remove(QStringLiteral("…")).simplified().toCaseFolded();
}

class Controls : public test::EveryDialog {
  protected:
    static std::string nameOf(const QWidget* widget) {
        return widget->metaObject()->className() + std::string(" ") + widget->objectName().toStdString();
    }
    /// What a person can give the focus in that window, by keys or by a click.
    static std::vector<QWidget*> controlsOf(const QWidget& window) {
        std::vector<QWidget*> found;
        for (auto* widget : window.findChildren<QWidget*>()) {
            const bool takesFocus = widget->isVisible() && widget->isEnabled() && widget->window() == &window &&
                                    widget->focusPolicy() != Qt::NoFocus && !widget->focusProxy();
            if (takesFocus) found.push_back(widget);
        }
        return found;
    }
    /// The words on a control, or on the label that belongs to it.
    static QString wordsOf(const QWidget& window, const QWidget* control) {
        if (const auto* button = qobject_cast<const QAbstractButton*>(control)) return button->text();
        for (const auto* label : window.findChildren<QLabel*>())
            if (label->buddy() == control) return label->text();
        return {};
    }
    static void expectNames(const QWidget& window, const std::string& where) {
        for (auto* control : controlsOf(window)) {
            const auto* accessible = QAccessible::queryAccessibleInterface(control);
            ASSERT_NE(accessible, nullptr) << where << ": " << nameOf(control);
            const auto name = accessible->text(QAccessible::Name);
            EXPECT_FALSE(plain(name).isEmpty()) << where << ": " << nameOf(control) << " has no name";
            EXPECT_NE(name, control->objectName()) << where << ": " << nameOf(control) << " is called by its key";
            // Qt on Linux gives a list of choices its choice for a name; what it is, its label says, or its
            // description.
            if (qobject_cast<const QComboBox*>(control)) {
                const bool isSaid = !accessible->relations(QAccessible::Label).empty() ||
                                    !accessible->text(QAccessible::Description).isEmpty();
                EXPECT_TRUE(isSaid) << where << ": what " << nameOf(control) << " chooses is not said";
                continue;
            }
            // WCAG 2.2, 2.5.3: the name holds the words that are seen.
            EXPECT_TRUE(plain(name).contains(plain(wordsOf(window, control))))
                << where << ": " << nameOf(control) << " is called " << name.toStdString() << " and labelled "
                << wordsOf(window, control).toStdString();
        }
    }
    /// Alt and a letter goes to one thing.
    static void expectOwnKeys(const QWidget& window, const std::string& where) {
        std::map<QString, std::string> seen;
        const auto take = [&](const QString& words) {
            const auto key = QKeySequence::mnemonic(words).toString();
            if (key.isEmpty()) return;
            EXPECT_TRUE(seen.emplace(key, words.toStdString()).second)
                << where << ": " << key.toStdString() << " is " << seen[key] << " and " << words.toStdString();
        };
        for (const auto* widget : window.findChildren<QWidget*>()) {
            if (!widget->isVisible() || widget->window() != &window) continue;
            if (const auto* label = qobject_cast<const QLabel*>(widget); label && label->buddy()) take(label->text());
            if (const auto* button = qobject_cast<const QAbstractButton*>(widget)) take(button->text());
        }
    }
    /// From the first that takes it, once round.
    void expectReached(QWidget& window, const std::string& where) {
        std::vector<QWidget*> wanted;
        for (auto* control : controlsOf(window))
            if (control->focusPolicy() & Qt::TabFocus) wanted.push_back(control);
        ASSERT_FALSE(wanted.empty()) << where;
        if (!window.isAncestorOf(QApplication::focusWidget())) wanted.front()->setFocus(Qt::TabFocusReason);
        std::vector<QWidget*> met;
        for (std::size_t i = 0; i <= 2 * wanted.size(); ++i) {
            auto* now = QApplication::focusWidget();
            ASSERT_NE(now, nullptr) << where;
            if (std::ranges::find(met, now) != met.end()) break;
            met.push_back(now);
            press(Qt::Key_Tab);
        }
        for (auto* control : wanted)
            EXPECT_EQ(std::ranges::count(met, control), 1) << where << ": Tab does not reach " << nameOf(control);
    }
};

TEST_F(Controls, ofEveryPlaceAreNamedAsTheyAreLabelled) {
    orderLantern();
    for (int place = 0; place < test::kPlaceCount; ++place) {
        goTo(static_cast<PlaceId>(place));
        expectNames(*m_window, "place " + std::to_string(place));
        expectOwnKeys(*m_window, "place " + std::to_string(place));
    }
    goTo(PlaceId::Counter);
    press(Qt::Key_F9);
    expectNames(*m_window, "owner’s side");
    expectOwnKeys(*m_window, "owner’s side");
}

TEST_F(Controls, ofEverySupplyAreNamedAsTheyAreLabelled) {
    goTo(PlaceId::Supplies);
    auto* supplies = find<QAbstractItemView>("supplies");
    for (int row = 0; row < supplies->model()->rowCount(); ++row) {
        const auto index = supplies->model()->index(row, 0);
        supplies->setCurrentIndex(index);
        test::handleQueued();
        expectNames(*m_window, index.data().toString().toStdString());
        expectOwnKeys(*m_window, index.data().toString().toStdString());
    }
}

TEST_F(Controls, ofTheFirstStepsAreNamedAsTheyAreLabelled) {
    goTo(PlaceId::FirstSteps);
    for (int step = 1; step <= 7; ++step) {
        click(QStringLiteral("firstStep%1").arg(step).toLatin1().constData());
        expectNames(*m_window, "step " + std::to_string(step));
        expectOwnKeys(*m_window, "step " + std::to_string(step));
    }
}

TEST_F(Controls, ofTheMenusHaveTheirOwnKeys) {
    int menus = 0;
    for (const auto* menu : m_window->findChildren<QMenu*>()) {
        std::map<QString, std::string> seen;
        for (const auto* action : menu->actions()) {
            const auto key = QKeySequence::mnemonic(action->text()).toString();
            if (key.isEmpty()) continue;
            const auto words = action->text().toStdString();
            EXPECT_TRUE(seen.emplace(key, words).second)
                << key.toStdString() << " is " << seen[key] << " and " << words;
        }
        if (!seen.empty()) ++menus;
    }
    EXPECT_GE(menus, 3) << "the book’s, the look’s, new supplies";
}

TEST_F(Controls, ofEveryDialogAreNamedReachedAndHaveTheirOwnKeys) {
    int dialogs = 0;
    forEachDialog([&](QDialog& dialog, const std::string& name) {
        ++dialogs;
        expectNames(dialog, name);
        expectOwnKeys(dialog, name);
        expectReached(dialog, name);
    });
    EXPECT_EQ(dialogs, 14);
}

} // namespace

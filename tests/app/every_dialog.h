// SPDX-License-Identifier: MIT
#pragma once

#include "tests/app/demo_window.h"

#include <QAbstractButton>
#include <QAbstractItemView>
#include <QAction>
#include <QDialog>
#include <QTableView>

#include <fstream>
#include <functional>

namespace sp::test {

/// Opens every dialog of the window, one after the other, as a person would.
class EveryDialog : public DemoWindow {
  protected:
    using Look = std::function<void(QDialog&, const std::string& name)>;

    /// Calls `look` with each while it is shown, and closes it.
    void forEachDialog(const Look& look) {
        orderLantern();
        pull("&Print or save the sheet…");
        see(look, "quote sheet");
        pull("&Keys and help");
        see(look, "keys");
        pull("About Stonepenn&y");
        see(look, "about");
        pull("Back&ups…");
        see(look, "backups");
        goTo(program::PlaceId::Designs);
        click("designPlan");
        see(look, "plan",
            [](const QDialog& plan) { return plan.findChild<QAbstractButton*>("printPlan")->isEnabled(); });
        goTo(program::PlaceId::Buying);
        ASSERT_TRUE(waitFor([this] { return find<QAbstractButton>("shoppingList")->isEnabled(); }));
        click("shoppingList");
        see(look, "shopping list");
        seeSupplies(look);
        seeJobs(look);
        seeCustomers(look);
    }

    void goTo(program::PlaceId place) {
        m_window->goTo(place);
        handleQueued();
    }
    void click(const char* name) {
        find<QAbstractButton>(name)->click();
        handleQueued();
    }
    QDialog* shownDialog() {
        for (auto* one : m_window->findChildren<QDialog*>())
            if (one->isVisible()) return one;
        return nullptr;
    }

  private:
    void pull(const char* words) {
        for (auto* action : m_window->actions())
            if (action->text() == program::MainWindow::tr(words)) {
                action->trigger();
                return handleQueued();
            }
        FAIL() << "the menu has no " << words;
    }
    void seeSupplies(const Look& look) {
        goTo(program::PlaceId::Supplies);
        choose("supplies", "Jet SS10");
        click("stonePicture");
        see(look, "picture of colours");
        choose("supplies", "Kestrel Row Stones");
        click("readPriceList");
        see(look, "price list");
    }
    void seeJobs(const Look& look) {
        goTo(program::PlaceId::Counter);
        press(Qt::Key_Return, Qt::ControlModifier); // given
        goTo(program::PlaceId::Jobs);
        auto* jobs = find<QAbstractItemView>("jobs");
        for (const auto& [button, name] : {std::pair{"jobChanges", "changes"}, std::pair{"jobMoney", "payments"},
                                           std::pair{"jobPapers", "papers"}, std::pair{"jobPlan", "plan of a job"}}) {
            auto* open = find<QAbstractButton>(button);
            for (int row = 0; row < jobs->model()->rowCount() && !(open->isVisible() && open->isEnabled()); ++row) {
                jobs->setCurrentIndex(jobs->model()->index(row, 0));
                handleQueued();
            }
            click(button);
            see(look, name, [](const QDialog& shown) {
                return shown.objectName() != QLatin1String("sheetPlan") ||
                       shown.findChild<QAbstractButton*>("printPlan")->isEnabled();
            });
        }
    }
    void seeCustomers(const Look& look) {
        goTo(program::PlaceId::Customers);
        std::ofstream(m_folder / "demo before version 1.jobbook") << "a copy"; // so that there is one to name
        click("eraseCustomer");
        see(look, "erasing",
            [](const QDialog& asked) { return asked.findChild<QTableView*>("copiesLeft") != nullptr; });
        const auto people = m_folder / "people.vcf";
        std::ofstream(people) << "BEGIN:VCARD\r\nVERSION:4.0\r\nFN:Ada Quince\r\nEND:VCARD\r\n";
        m_prompter.file = QString::fromStdString(people.string());
        click("readCustomers");
        see(look, "contacts");
    }
    void choose(const char* list, const char* row) {
        auto* view = find<QAbstractItemView>(list);
        for (int i = 0; i < view->model()->rowCount(); ++i)
            if (view->model()->index(i, 0).data().toString() == QLatin1String(row)) {
                view->setCurrentIndex(view->model()->index(i, 0));
                return handleQueued();
            }
        FAIL() << row;
    }
    void see(const Look& look, const std::string& name, const std::function<bool(const QDialog&)>& isThere = {}) {
        ASSERT_TRUE(waitFor([this] { return shownDialog() != nullptr; })) << name;
        auto* dialog = shownDialog();
        if (isThere) {
            ASSERT_TRUE(waitFor([&] { return isThere(*dialog); })) << name;
        }
        QApplication::setActiveWindow(dialog);
        handleQueued();
        look(*dialog, name);
        dialog->close();
        ASSERT_TRUE(waitFor([this] { return shownDialog() == nullptr; })) << name;
        QApplication::setActiveWindow(m_window.get());
        handleQueued();
    }
};

} // namespace sp::test

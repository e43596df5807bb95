// SPDX-License-Identifier: MIT
// Messages over the Counter, and what of it stays in a window of usual size.
#include "app/desk/message_bar.h"
#include "app/words/cost_words.h"
#include "core/quoting/first_steps.h"
#include "tests/app/demo_window.h"

#include <QClipboard>
#include <QGuiApplication>
#include <QMenu>
#include <QPushButton>
#include <QTextBrowser>

#include <algorithm>

#include <functional>

using namespace sp;

namespace {

class Messages : public test::DemoWindow {
  protected:
    void expectButtonsInSight(const char* when) {
        test::handleQueued();
        for (const char* name : {"give", "print", "turnOver"}) {
            auto* button = find<QPushButton>(name);
            const QRect seen = button->visibleRegion().boundingRect();
            EXPECT_EQ(seen, button->rect()) << name << " " << when;
        }
    }
};

TEST_F(Messages, oneThingThatIsAskedTodayIsOne) {
    orderLantern();
    find<QPushButton>("give")->click();
    test::handleQueued();
    const auto said = [this] { return find<>("placeJobs")->accessibleDescription(); };
    for (int day = 0; day < 60 && said().isEmpty(); ++day) { // until the quote is about to lapse
        m_clock.now += std::chrono::hours(24);
        m_window->session().notice();
    }
    EXPECT_EQ(said(), "1 thing asked today");
}

TEST_F(Messages, neverPushAButtonOutOfAUsualWindow) {
    m_window->resize(1366, 768);
    orderLantern();
    expectButtonsInSight("with the greeting of the demo");
    press(Qt::Key_F9);
    expectButtonsInSight("with the owner's side up");
    press(Qt::Key_F9);
    press(Qt::Key_Return, Qt::ControlModifier);
    ASSERT_TRUE(m_window->presenter().isIssued());
    expectButtonsInSight("of a given quote");
    m_window->messages().tell(
        desk::Tone::Warn,
        QStringLiteral("What is typed there cannot be used; prices go by what was before. ").repeated(6));
    expectButtonsInSight("under a long warning");
    EXPECT_FALSE(m_window->counterPage().messages().isVisible()) << "one at a time";
    m_window->messages().dismiss();
    EXPECT_TRUE(m_window->counterPage().messages().isVisible()) << "the one before is back";
}

// Undo knows nothing of a given quote; what it would undo is elsewhere in the book.
TEST_F(Messages, undoAtAGivenQuoteSaysFirstWhatItReaches) {
    auto shop = m_window->session().shop();
    const auto labour = shop.rates.labourPerHour;
    orderLantern();
    shop.rates.labourPerHour = units::Money::fromMicros(99'000'000);
    ASSERT_TRUE(m_window->session().change([&](db::Book& book) { return book.save(shop); }));
    press(Qt::Key_Return, Qt::ControlModifier);
    ASSERT_TRUE(m_window->presenter().isIssued());
    const auto what = m_window->session().undoText();
    ASSERT_FALSE(what.isEmpty());
    press(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(m_window->session().shop().rates.labourPerHour, shop.rates.labourPerHour) << "nothing happens unseen";
    EXPECT_EQ(m_window->messages().sentence(),
              "Nothing of a given quote is undone. Elsewhere in the book the last was: " + what + ".");
    m_window->messages().findChild<QPushButton*>(QStringLiteral("messageAction"))->click();
    EXPECT_EQ(m_window->session().shop().rates.labourPerHour, labour);
    EXPECT_EQ(m_window->messages().sentence(), "Undone: " + what + ".");
    press(Qt::Key_Z, Qt::ControlModifier | Qt::ShiftModifier);
    EXPECT_EQ(m_window->session().shop().rates.labourPerHour, labour);
    m_window->messages().findChild<QPushButton*>(QStringLiteral("messageAction"))->click();
    EXPECT_EQ(m_window->session().shop().rates.labourPerHour, shop.rates.labourPerHour);
}

TEST_F(Messages, ofPastedTextThereAreNone) {
    orderLantern();
    QGuiApplication::clipboard()->setText(QStringLiteral("Name\tX\nsecond line"));
    auto* title = field("title");
    title->setFocus();
    title->selectAll();
    title->paste();
    press(Qt::Key_Return);
    EXPECT_EQ(m_window->presenter().line().title, "Name X second line");
    EXPECT_EQ(m_window->messages().sentence(), "");
    const auto id = m_window->presenter().quote().id;
    reopen();
    ASSERT_TRUE(m_window->presenter().open(id));
    EXPECT_EQ(m_window->presenter().line().title, "Name X second line") << "it was saved";
}

TEST_F(Messages, theGreetingStaysWhenAnOwnBookIsNotStartedAfterAll) {
    auto& bar = m_window->counterPage().messages();
    ASSERT_TRUE(bar.sentence().startsWith("A demo book"));
    bar.findChild<QPushButton*>(QStringLiteral("messageAction"))->click();
    EXPECT_TRUE(bar.sentence().startsWith("A demo book"));
    EXPECT_TRUE(bar.findChild<QPushButton*>(QStringLiteral("messageAction"))->isVisible());
}

// While the menu is open what cannot be done is grey; afterwards its key still answers.
TEST_F(Messages, theBookMenuGreysWhatCannotBeDone) {
    auto* menu = find<QMenu>("bookMenu");
    const auto greyed = [menu] {
        Q_EMIT menu->aboutToShow();
        QStringList words;
        for (const auto* action : menu->actions())
            if (!action->isSeparator() && !action->isEnabled())
                words << QString(action->text()).remove(QLatin1Char('&'));
        Q_EMIT menu->aboutToHide();
        for (const auto* action : menu->actions()) EXPECT_TRUE(action->isEnabled()) << action->text().toStdString();
        return words;
    };
    EXPECT_TRUE(greyed().contains(QStringLiteral("Give this quote"))) << "nothing is ordered";
    EXPECT_TRUE(greyed().contains(QStringLiteral("Print or save the sheet…")));
    EXPECT_TRUE(greyed().contains(QStringLiteral("Offer another choice")));
    EXPECT_TRUE(greyed().contains(QStringLiteral("Redo")));
    orderLantern();
    EXPECT_FALSE(greyed().contains(QStringLiteral("Give this quote")));
    EXPECT_FALSE(greyed().contains(QStringLiteral("Offer another choice")));
    press(Qt::Key_Return, Qt::ControlModifier);
    ASSERT_TRUE(m_window->presenter().isIssued());
    EXPECT_TRUE(greyed().contains(QStringLiteral("Give this quote"))) << "it is given";
    EXPECT_FALSE(greyed().contains(QStringLiteral("Print or save the sheet…")));
}

// What F1 says of a cost sheet is what its rows say: the rules are made from the formulas that costing evaluates.
TEST_F(Messages, theHelpHasTheFormulasOfACostSheet) {
    press(Qt::Key_F1);
    const auto* help = find<QTextBrowser>("keysText");
    ASSERT_NE(help, nullptr);
    const auto text = help->toPlainText();
    const auto book = m_window->session().prices({});
    layout::FitMemo fits;
    const auto trial = quoting::trialOf(m_window->session().designs().front(), book, m_window->session().today(), fits);
    ASSERT_TRUE(trial);
    const auto tree =
        words::explain(trial->order.lines.front(), book, trial->cost, desk::Formatter(QLocale(), book.shop).style());
    int rules = 0;
    const std::function<void(const words::CostTree&)> look = [&](const words::CostTree& part) {
        const bool isSum = std::ranges::any_of(part.children, [](const auto& one) { return !one.amount.isZero(); });
        if (!isSum && !part.rule.empty() && !part.amount.isZero()) {
            ++rules;
            EXPECT_TRUE(text.contains(QString::fromStdString(part.rule))) << part.rule;
        }
        for (const auto& child : part.children) look(child);
    };
    look(tree);
    EXPECT_GT(rules, 15);
    EXPECT_FALSE(text.contains(QStringLiteral("the sum of the parts"))) << "which, is said";
    ASSERT_GT(tree.children.size(), 1U);
    EXPECT_TRUE(text.contains(QString::fromStdString(tree.children[0].label + " + " + tree.children[1].label)));
}

} // namespace

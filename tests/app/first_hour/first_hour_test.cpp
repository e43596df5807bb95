// SPDX-License-Identifier: MIT
// A new shop's own first hour: from an empty book to a given quote, by keyboard.
#include "tests/app/demo_window.h"

#include "app/desk/rail.h"
#include "app/first_hour/first_hour_page.h"
#include "app/main/first_book.h"

#include <QCheckBox>
#include <QDialog>
#include <QFile>
#include <QFileDialog>
#include <QPushButton>
#include <QRadioButton>

namespace sp::test {

namespace {

using first_hour::SupplyGroup;
using program::PlaceId;
using quoting::FirstStep;

class FirstHour : public DemoWindow {
  protected:
    FirstHour() {
        m_window->close();
        m_window.reset();
        openNew();
        m_keys = 0;
    }

    std::filesystem::path ownBook() const { return m_folder.path() / "own.jobbook"; }
    void openNew() {
        open(program::createFirstBook(QString::fromStdString(ownBook().string()), QLocale(), m_clock.environment()));
    }
    void reopenOwn() {
        m_window->close();
        m_window.reset();
        open(db::Book::open(ownBook(), m_clock.environment()));
    }
    first_hour::FirstHourPage* page() { return m_window->findChild<first_hour::FirstHourPage*>(); }
    bool isAtFirstSteps() { return page() && page()->isVisible(); }
    QString standingOf(int step) {
        return find<QRadioButton>(QStringLiteral("firstStep%1").arg(step).toLatin1().constData())
            ->accessibleDescription();
    }
    void nextStep() { press(Qt::Key_Return, Qt::ControlModifier); }
    void goToStep(int step) {
        find<QRadioButton>(QStringLiteral("firstStep%1").arg(step).toLatin1().constData())->click();
        test::handleQueued();
    }
    void typeInto(const char* name, const char* text) {
        auto* entry = field(name);
        entry->setFocus();
        entry->selectAll();
        type(text);
        press(Qt::Key_Return);
    }
    const catalogue::Shop& shop() { return m_window->session().shop(); }
};

TEST_F(FirstHour, aNewBookOpensOnItsFirstStepAndADemoBookDoesNot) {
    EXPECT_TRUE(isAtFirstSteps());
    EXPECT_EQ(focused(), "firstShopName");
    EXPECT_TRUE(find<>("placeFirstSteps")->isVisible());
    m_window->close();
    m_window.reset();
    open(db::Book::open(bookFile(), m_clock.environment()));
    EXPECT_FALSE(isAtFirstSteps());
    EXPECT_FALSE(find<>("placeFirstSteps")->isVisible());
}

TEST_F(FirstHour, theWindowIsCalledAfterTheShopAsSoonAsThatHasAName) {
    EXPECT_TRUE(m_window->windowTitle().startsWith(QStringLiteral("own – ")));
    typeInto("firstShopName", "Heron Street Sparkle");
    EXPECT_TRUE(m_window->windowTitle().startsWith(QStringLiteral("Heron Street Sparkle – ")));
}

// Usual supplies, four prices, a first design, and the first walk-in. The limit is 150 events.
TEST_F(FirstHour, fromNothingToAGivenQuoteTakesNoMoreThan150Keys) {
    m_prompter.target = QString::fromStdString((m_folder.path() / "sheet.pdf").string());
    type("Heron");
    nextStep();
    EXPECT_EQ(focused(), "firstTaxRate");
    type("7.25");
    nextStep();
    EXPECT_EQ(focused(), "firstLabour");
    type("24");
    press(Qt::Key_Return);
    type("600");
    nextStep();
    EXPECT_EQ(focused(), "sheetPrice0");
    type("14.50");
    press(Qt::Key_Return);
    EXPECT_EQ(focused(), "sheetPrice1");
    type("16.25");
    press(Qt::Key_Return);
    type("11.80");
    nextStep();
    EXPECT_EQ(focused(), "stonePrice0");
    type("5.80");
    nextStep();
    EXPECT_EQ(focused(), "firstDesignName");
    type("Star");
    press(Qt::Key_Return);
    type("3");
    press(Qt::Key_Return);
    type("3");
    press(Qt::Key_Return);
    EXPECT_EQ(focused(), "firstDesignStone0");
    type("120");
    nextStep();
    ASSERT_EQ(m_window->session().designs().size(), 1U);
    nextStep(); // to the Counter, with the design
    EXPECT_EQ(m_window->presenter().order().lines.size(), 1U);
    type("24");
    press(Qt::Key_M, Qt::AltModifier);
    type("Odetta");
    press(Qt::Key_Return);
    press(Qt::Key_Return, Qt::ControlModifier);
    press(Qt::Key_P, Qt::ControlModifier);
    auto* preview = m_window->findChild<QDialog*>(QStringLiteral("preview"));
    ASSERT_NE(preview, nullptr);
    for (auto* button : preview->findChildren<QPushButton*>())
        if (button->text().startsWith(QLatin1String("&S"))) button->click();
    ++m_keys; // Alt+S
    auto* files = m_window->findChild<QFileDialog*>(QStringLiteral("pdfPath"));
    ASSERT_NE(files, nullptr);
    files->selectFile(*m_prompter.target); // instead of the documents folder of who runs the test
    ++m_keys;                              // Enter
    static_cast<QDialog*>(files)->accept();
    EXPECT_LE(m_keys, 150);
    RecordProperty("keys", m_keys);
    ASSERT_TRUE(m_window->presenter().isIssued());
    EXPECT_EQ(m_window->presenter().quote().frozen->customer->name, "Odetta");
    EXPECT_TRUE(QFile::exists(*m_prompter.target));
    EXPECT_EQ(shop().letterhead.name, "Heron");
    EXPECT_EQ(shop().rules.tax.rate, units::Rate::fromPpm(72'500));
    EXPECT_FALSE(shop().usualTape.isNone());
    EXPECT_FALSE(shop().usualTemplate.isNone());
    reopenOwn();
    EXPECT_FALSE(find<>("placeFirstSteps")->isVisible()) << "all is done";
}

TEST_F(FirstHour, aPriceMakesTheSupplyAndTakingItAwayTakesTheSupplyOut) {
    auto& session = m_window->session();
    goToStep(4);
    typeInto("sheetPrice3", "6.20"); // a bag
    ASSERT_EQ(session.materials().size(), 1U);
    ASSERT_EQ(shop().packing.size(), 1U);
    EXPECT_EQ(shop().packing.front().material, session.materials().front().id);
    ASSERT_EQ(session.packs().size(), 1U);
    EXPECT_EQ(session.packs().front().amount, units::Count::of(100));
    EXPECT_TRUE(session.packs().front().usual);
    typeInto("sheetPrice3", "6.50");
    ASSERT_EQ(session.packs().size(), 1U) << "another price, not another pack";
    EXPECT_EQ(session.packs().front().prices.front().each, units::Money::fromMicros(6'500'000));
    typeInto("sheetPrice3", " ");
    EXPECT_TRUE(session.materials().empty());
    EXPECT_TRUE(shop().packing.empty());
    EXPECT_TRUE(session.undo()) << "one step";
    EXPECT_EQ(session.materials().size(), 1U);
    EXPECT_EQ(shop().packing.size(), 1U);
    EXPECT_EQ(field("sheetPrice3")->text(), "6.50");
}

// One that is said not to be meant and then has a price is meant.
TEST_F(FirstHour, aTapeWithAPriceIsTakenByEveryLine) {
    goToStep(4);
    find<QCheckBox>("firstNoTape")->click();
    typeInto("sheetPrice0", "14.50");
    ASSERT_EQ(m_window->session().materials().size(), 1U);
    EXPECT_EQ(shop().usualTape, m_window->session().materials().front().id);
    typeInto("sheetPrice0", " ");
    EXPECT_TRUE(shop().usualTape.isNone());
    EXPECT_TRUE(m_window->session().materials().empty());
}

TEST_F(FirstHour, aPriceThatCannotBeReadStaysWithItsSentenceAndMakesNothing) {
    goToStep(5);
    typeInto("stonePrice0", "5.8o");
    EXPECT_EQ(field("stonePrice0")->text(), "5.8o");
    EXPECT_FALSE(text("stoneProblem").isEmpty());
    EXPECT_TRUE(m_window->session().materials().empty());
}

TEST_F(FirstHour, whatNobodyTypedIsNoMistake) {
    for (int step = 1; step <= 7; ++step) {
        for (const auto* entry : page()->findChildren<desk::TypedField*>())
            if (entry->isVisible()) { EXPECT_EQ(entry->problem(), "") << entry->objectName().toStdString(); }
        nextStep();
    }
    EXPECT_EQ(text("sheetProblem"), "");
    EXPECT_EQ(text("stoneProblem"), "");
}

TEST_F(FirstHour, aDesignWithoutStonesWithAPriceIsToldWhatToDo) {
    goToStep(6);
    const QString sentence = QStringLiteral("No stone has a price yet: give one first, or count a cut file.");
    EXPECT_EQ(text("firstDesignProblem"), sentence);
    typeInto("firstDesignName", "Star");
    nextStep();
    EXPECT_EQ(text("firstDesignProblem"), sentence) << "there is no field for stones to send anybody to";
}

TEST_F(FirstHour, theSupplierOfAGroupIsNamedOnceForAllOfIt) {
    auto& session = m_window->session();
    goToStep(5);
    typeInto("stonePrice0", "5.80");
    typeInto("stonePrice3", "6.50");
    ASSERT_EQ(session.suppliers().size(), 1U);
    const auto before = session.suppliers().front().id;
    typeInto("firstStoneSupplier", "Kestrel Row Stones");
    ASSERT_EQ(session.suppliers().size(), 1U);
    EXPECT_EQ(session.suppliers().front().name, "Kestrel Row Stones");
    EXPECT_EQ(session.suppliers().front().id, before) << "it was called otherwise, nothing more";
    goToStep(4);
    typeInto("sheetSupplier", "Kestrel Row Stones");
    typeInto("sheetPrice0", "14.50");
    EXPECT_EQ(session.suppliers().size(), 1U) << "one sells both";
    typeInto("sheetSupplier", "Tollgate Film and Tape");
    ASSERT_EQ(session.suppliers().size(), 2U) << "the stones stay where they were bought";
    EXPECT_EQ(field("firstStoneSupplier")->text(), "Kestrel Row Stones");
}

TEST_F(FirstHour, whatIsLeftOpenIsSaidAndWhatIsMeantIsNot) {
    goToStep(2);
    nextStep();
    goToStep(5);
    typeInto("stonePrice0", "5.80");
    EXPECT_TRUE(standingOf(2).startsWith(QLatin1String("Left open."))) << standingOf(2).toStdString();
    EXPECT_TRUE(standingOf(5).startsWith(QLatin1String("Done.")));
    EXPECT_FALSE(standingOf(6).startsWith(QLatin1String("Left open."))) << "still to come";
    EXPECT_TRUE(text("trialMissing").contains(QLatin1String("Labour")));
    EXPECT_TRUE(find<QLabel>("trialWarning")->isVisible());
    goToStep(2);
    find<QCheckBox>("firstNoTax")->click();
    EXPECT_TRUE(standingOf(2).startsWith(QLatin1String("Done.")));
    goToStep(3);
    find<QCheckBox>("firstNoLabour")->click();
    EXPECT_FALSE(find<QLabel>("trialWarning")->isVisible());
    EXPECT_FALSE(text("trialMissing").contains(QLatin1String("Labour")));
}

TEST_F(FirstHour, anotherCurrencyKeepsTheStepAndTheField) {
    goToStep(2);
    typeInto("firstCurrency", "EUR");
    ASSERT_TRUE(test::waitFor([this] { return focused() == "firstTaxName"; })) << focused();
    EXPECT_EQ(shop().currency.code(), "EUR");
    EXPECT_TRUE(find<QLineEdit>("firstCurrency")->isVisible());
}

TEST_F(FirstHour, aDesignLacksNothingWhenItIsMade) {
    goToStep(5);
    typeInto("stonePrice0", "5.80");
    goToStep(6);
    typeInto("firstDesignWidth", "3");
    nextStep();
    EXPECT_EQ(text("firstDesignProblem"), "Give the design a name.");
    typeInto("firstDesignName", "Star");
    nextStep();
    EXPECT_EQ(text("firstDesignProblem"), "Give the width and the height of the design.");
    typeInto("firstDesignHeight", "3");
    nextStep();
    EXPECT_EQ(text("firstDesignProblem"), "Give how many stones are on one piece.");
    EXPECT_TRUE(m_window->session().designs().empty());
    typeInto("firstDesignStone0", "120");
    nextStep();
    ASSERT_EQ(m_window->session().designs().size(), 1U);
    EXPECT_EQ(m_window->session().designs().front().stones.front().count, units::Count::of(120));
}

TEST_F(FirstHour, isPutAwayAndBroughtBackByTheShop) {
    find<QPushButton>("putFirstAway")->click();
    EXPECT_FALSE(isAtFirstSteps());
    EXPECT_FALSE(find<>("placeFirstSteps")->isVisible());
    reopenOwn();
    EXPECT_FALSE(find<>("placeFirstSteps")->isVisible());
    m_window->goTo(PlaceId::Shop);
    find<QCheckBox>("beingSetUp")->click();
    EXPECT_TRUE(find<>("placeFirstSteps")->isVisible());
}

TEST(PlacesOfTheWindow, thatAreOffAnswerNoKey) {
    const desk::Theme theme{*qApp, desk::Scheme::Light};
    desk::Rail rail;
    for (const auto* name : {"placeOne", "placeTwo", "placeThree"})
        rail.addPlace(desk::Icon::Counter, QLatin1String(name), QLatin1String(name));
    rail.show();
    QApplication::setActiveWindow(&rail);
    test::handleQueued();
    QTest::keyClick(&rail, Qt::Key_3, Qt::ControlModifier);
    ASSERT_EQ(rail.current(), 2);
    rail.setShown(1, false);
    QTest::keyClick(&rail, Qt::Key_2, Qt::ControlModifier);
    EXPECT_EQ(rail.current(), 2);
    rail.setShown(1, true);
    QTest::keyClick(&rail, Qt::Key_2, Qt::ControlModifier);
    EXPECT_EQ(rail.current(), 1);
}

TEST_F(FirstHour, isResumedAtTheFirstStepLeftOpen) {
    typeInto("firstShopName", "Heron");
    reopenOwn();
    EXPECT_TRUE(isAtFirstSteps());
    EXPECT_EQ(focused(), "firstTaxRate");
}

TEST_F(FirstHour, theSupplierOfAPriceListIsThereToReadItFor) {
    goToStep(5);
    find<QPushButton>("firstPriceList")->click();
    ASSERT_EQ(m_window->session().suppliers().size(), 1U);
    EXPECT_TRUE(test::waitFor([this] { return m_window->findChild<QDialog*>() != nullptr; }));
}

} // namespace

} // namespace sp::test

// SPDX-License-Identifier: MIT
// What is new in Supplies is named at once, and a pack takes its supplier by name.
#include "app/supplies/colour_button.h"
#include "app/supplies/colour_words.h"
#include "app/supplies/supplies_page.h"
#include "core/supply/pack_price.h"
#include "tests/app/supplies/supplies_fixture.h"

#include <QDialog>
#include <QMenu>
#include <QToolButton>

using namespace sp;

namespace {

class NewSupply : public test::SuppliesTest {
  protected:
    void open() { show(std::make_unique<supplies::SuppliesPage>(*m_session, *m_formatter)); }
    void openEmptyBook() {
        m_page.reset();
        auto book = db::Book::create(m_folder / "own.jobbook", m_clock.environment());
        ASSERT_TRUE(book.has_value());
        m_session = std::make_unique<session::BookSession>(std::move(*book));
        open();
    }
    /// The new thing of the menu at that place.
    void add(int at) {
        auto* button = m_page->findChild<QPushButton*>(QStringLiteral("newSupply"));
        QList<QAction*> choices;
        for (auto* action : button->menu()->actions())
            if (!action->isSeparator()) choices << action;
        choices[at]->trigger();
        test::handleQueued();
    }
    static QLineEdit* focused() { return qobject_cast<QLineEdit*>(QApplication::focusWidget()); }
    /// Keys to whatever has the focus.
    static void keys(const char* text, Qt::Key then = Qt::Key_Return) {
        QTest::keyClicks(QApplication::focusWidget(), QString::fromUtf8(text));
        QTest::keyClick(QApplication::focusWidget(), then);
        test::handleQueued();
    }
};

TEST_F(NewSupply, isNamedByTheNextKeys) {
    open();
    for (int kind = 0; kind < 8; ++kind)
        for (const char* before : {"findSupply", "materialName"}) {
            if (auto* field = m_page->findChild<QLineEdit*>(QLatin1String(before)); field->isVisible())
                field->setFocus();
            add(kind);
            auto* name = focused();
            ASSERT_NE(name, nullptr) << kind;
            EXPECT_TRUE(name->objectName().endsWith(QLatin1String("Name"))) << name->objectName().toStdString();
            EXPECT_EQ(name->selectedText(), name->text());
            const auto typed = QStringLiteral("Thing %1 %2").arg(kind).arg(QLatin1String(before));
            keys(typed.toUtf8().constData());
            EXPECT_EQ(name->text(), typed);
        }
}

TEST_F(NewSupply, takesAPackAndItsSupplierByKeysInAnEmptyBook) {
    openEmptyBook();
    add(0);
    keys("Jet SS10");
    auto* button = m_page->findChild<QPushButton*>(QStringLiteral("addPack"));
    button->click();
    test::handleQueued();
    ASSERT_NE(focused(), nullptr);
    EXPECT_EQ(focused()->objectName(), "packSupplier0") << "the new row has the focus";
    EXPECT_TRUE(m_session->packs().empty()) << "nothing is kept of it yet";
    keys("Kestrel Row Stones");
    ASSERT_EQ(m_session->suppliers().size(), 1U);
    EXPECT_EQ(m_session->suppliers().front().name, "Kestrel Row Stones");
    ASSERT_EQ(m_session->packs().size(), 1U);
    EXPECT_EQ(focused()->objectName(), "packName0");
    keys("bag of 10 gross");
    keys("10 gross");
    keys("9.99");
    const auto& pack = m_session->packs().front();
    EXPECT_EQ(pack.supplier, m_session->suppliers().front().id);
    EXPECT_EQ(pack.amount, units::Count::of(1440));
    EXPECT_EQ(said("packWhichIs0"), "1.00 · 0.0069"); // 9.99 ÷ 10 and ÷ 1,440
    while (m_session->packs().size() == 1 && m_session->undo()) continue;
    EXPECT_TRUE(m_session->suppliers().empty()) << "supplier and pack are one step of undo";
}

TEST_F(NewSupply, aPacksFurtherPricesAreRowsTypedOneAfterTheOther) {
    openEmptyBook();
    add(0);
    keys("Jet SS10");
    click("addPack");
    keys("Kestrel Row Stones");
    keys("bag of 10 gross");
    keys("10 gross");
    const auto kept = [this] { return m_session->packs().front(); };
    const auto step = [](std::int64_t from, std::int64_t micros) {
        return catalogue::PriceBreak{units::Count::of(from), units::Money::fromMicros(micros)};
    };
    click("packAddBreak0");
    EXPECT_EQ(kept().prices.size(), 1U) << "no price to begin with";
    EXPECT_TRUE(said("packProblem").ends_with("Give the price of one pack first.")) << said("packProblem");
    ASSERT_EQ(focused()->objectName(), "packPrice0");
    keys("8.90");
    click("packAddBreak0");
    ASSERT_EQ(focused()->objectName(), "packFrom0_0");
    EXPECT_EQ(focused()->selectedText(), "5");
    EXPECT_EQ(kept().prices, (std::vector{step(1, 8'900'000), step(5, 8'900'000)}));
    keys("6");
    EXPECT_EQ(focused()->objectName(), "packEach0_0");
    keys("8.01");
    click("packAddBreak0");
    EXPECT_EQ(focused()->objectName(), "packFrom0_1");
    EXPECT_EQ(focused()->selectedText(), "12");
    type("packEach0_1", "7.50");
    ASSERT_EQ(kept().prices, (std::vector{step(1, 8'900'000), step(6, 8'010'000), step(12, 7'500'000)}));
    m_session->undo();
    EXPECT_EQ(kept().prices, (std::vector{step(1, 8'900'000), step(6, 8'010'000), step(12, 8'010'000)}));
    m_session->undo();
    EXPECT_EQ(kept().prices, (std::vector{step(1, 8'900'000), step(6, 8'010'000)}));
    auto* remove = m_page->findChild<QToolButton*>(QStringLiteral("packRemoveBreak0_0"));
    ASSERT_NE(remove, nullptr);
    remove->click();
    test::handleQueued();
    EXPECT_EQ(kept().prices, (std::vector{step(1, 8'900'000)}));
    EXPECT_EQ(m_page->findChild<QWidget*>(QStringLiteral("packFrom0_0")), nullptr);
}

TEST_F(NewSupply, aWrongFurtherPriceStaysAsTypedAndChangesNothing) {
    openEmptyBook();
    add(0);
    click("addPack");
    keys("Kestrel Row Stones");
    type("packPrice0", "8.90");
    click("packAddBreak0");
    click("packAddBreak0");
    const auto prices = [this] { return m_session->packs().back().prices; };
    const auto good = prices();
    ASSERT_EQ(good.size(), 3U);
    const auto shown = [this](const char* field) {
        return m_page->findChild<QLineEdit*>(QLatin1String(field))->text();
    };
    type("packFrom0_1", "4");
    EXPECT_TRUE(said("packProblem").ends_with("Give more than 5; the price above holds from there on."));
    EXPECT_EQ(shown("packFrom0_1"), "4");
    type("packEach0_1", "0");
    type("packEach0_0", "seven");
    EXPECT_EQ(prices(), good);
    // The rows are made anew; what is wrong stays.
    click("packAddBreak0");
    EXPECT_EQ(prices().size(), 4U);
    EXPECT_EQ(shown("packFrom0_1"), "4");
    EXPECT_EQ(shown("packEach0_1"), "0");
    EXPECT_EQ(shown("packEach0_0"), "seven");
    EXPECT_NE(said("packProblem"), "");
    type("packEach0_0", "8");
    type("packEach0_1", "7");
    type("packFrom0_1", "9");
    EXPECT_EQ(said("packProblem"), "The price of a pack rises from 20 packs on; it is kept, but check it.");
    EXPECT_EQ(prices()[2], (catalogue::PriceBreak{units::Count::of(9), units::Money::fromMicros(7'000'000)}));
}

TEST_F(NewSupply, aPackHasTheItemNumberOfItsSuppliersList) {
    openEmptyBook();
    add(0);
    click("addPack");
    keys("Kestrel Row Stones");
    type("packItem0", "KR-1044");
    EXPECT_EQ(m_session->packs().back().item, "KR-1044");
    m_session->undo();
    EXPECT_EQ(m_session->packs().back().item, "");
    EXPECT_EQ(m_page->findChild<QLineEdit*>(QStringLiteral("packItem0"))->text(), "");
}

TEST_F(NewSupply, aFurtherPackTakesASupplierThatThereIsOrANewOne) {
    open();
    const auto before = m_session->packs().size();
    click("addPack");
    ASSERT_NE(focused(), nullptr);
    ASSERT_TRUE(focused()->objectName().startsWith(QLatin1String("packSupplier")));
    keys("Bell Row Beads");
    EXPECT_EQ(m_session->packs().size(), before + 1);
    const auto& suppliers = m_session->suppliers();
    EXPECT_TRUE(std::ranges::any_of(suppliers, [](const auto& one) { return one.name == "Bell Row Beads"; }));
}

TEST_F(NewSupply, aStonesPictureIsChosenByNameOrFromAPictureOfColours) {
    openEmptyBook();
    add(0);
    const auto drawn = [this] { return m_session->materials().front().stone.rgb; };
    type("stoneColour", "aquamarine");
    EXPECT_EQ(drawn(), supplies::colourCalled(QStringLiteral("Aquamarine")));
    type("stoneColour", "Siam");
    EXPECT_EQ(drawn(), supplies::colourCalled(QStringLiteral("Siam"))) << "it goes along with the name";
    auto* button = m_page->findChild<supplies::ColourButton*>(QStringLiteral("stonePicture"));
    ASSERT_NE(button, nullptr);
    EXPECT_EQ(button->text(), "Siam");
    button->click();
    auto* picture = m_page->findChild<QDialog*>(QStringLiteral("pictureOfColours"));
    ASSERT_NE(picture, nullptr);
    auto* jet = picture->findChildren<QPushButton*>().at(5);
    EXPECT_EQ(jet->text(), "Jet");
    jet->click();
    test::handleQueued();
    EXPECT_EQ(drawn(), supplies::colourCalled(QStringLiteral("Jet")));
    EXPECT_EQ(button->text(), "Jet");
    type("stoneColour", "Crystal");
    EXPECT_EQ(drawn(), supplies::colourCalled(QStringLiteral("Jet"))) << "what was chosen stays";
}

// The nearest of the list's own words; anything else is grey.
TEST(ColourCalled, findsTheWordsInASuppliersName) {
    using supplies::drawnAs;
    EXPECT_EQ(drawnAs(QStringLiteral("light SAPPHIRE  AB")), supplies::colourCalled(QStringLiteral("Light sapphire")));
    EXPECT_EQ(drawnAs(QStringLiteral("Jet")), supplies::colourCalled(QStringLiteral("Jet")));
    EXPECT_EQ(drawnAs(QStringLiteral("Jetty")), supplies::colourCalled(QStringLiteral("Silver")));
}

TEST(ColourCalled, knowsTheWordsInAnyCase) {
    EXPECT_TRUE(supplies::colourCalled(QStringLiteral("LIGHT ROSE")).has_value());
    EXPECT_FALSE(supplies::colourCalled(QStringLiteral("a colour of no colour")).has_value());
}

// 8.90 for 1,440: 0.89 a gross exactly; 0.006180… a stone.
TEST(PackPrice, isRoundedOnceToTheStepAskedFor) {
    catalogue::Pack pack;
    pack.amount = units::Count::of(1440);
    pack.prices = {{units::Count::of(1), units::Money::fromMicros(8'900'000)}};
    EXPECT_EQ(supply::priceOf(pack, 144, 1).micros(), 890'000);
    EXPECT_EQ(supply::priceOf(pack, 1, 100).micros(), 6'200);
    EXPECT_EQ(supply::priceOf(pack, 1, 1).micros(), 6'181);
    pack.prices.clear();
    EXPECT_TRUE(supply::priceOf(pack, 144, 1).isZero());
}

TEST_F(NewSupply, aBlanksSizesAreRowsTypedOneAfterTheOther) {
    open();
    add(4); // a blank
    keys("Smock");
    const auto kept = [this] {
        const auto all = m_session->materials();
        return std::ranges::find(all, "Smock", &catalogue::Material::name)->sizes;
    };
    auto* more = m_page->findChild<QPushButton*>(QStringLiteral("addSize"));
    ASSERT_TRUE(more->isVisible());
    for (const char* usual : {"S", "M"}) {
        more->click();
        ASSERT_NE(focused(), nullptr);
        EXPECT_EQ(focused()->selectedText(), QLatin1String(usual));
    }
    keys("2XL");
    EXPECT_EQ(focused()->objectName(), "sizeCost1");
    keys("2.10");
    keys("2.75");
    ASSERT_EQ(kept().size(), 2U);
    EXPECT_EQ(kept()[1],
              (catalogue::BlankSize{"2XL", units::Money::fromMicros(2'100'000), units::Money::fromMicros(2'750'000)}));
    // Two of one name are not saved; what is typed stays, with its sentence.
    auto* name = m_page->findChild<QLineEdit*>(QStringLiteral("sizeName1"));
    name->setFocus();
    keys("S");
    EXPECT_EQ(kept()[1].name, "2XL");
    EXPECT_EQ(m_page->findChild<QLineEdit*>(QStringLiteral("sizeName1"))->text(), "S");
    const auto* told = m_page->findChild<QLabel*>(QStringLiteral("sizeProblem"));
    EXPECT_TRUE(told->isVisible());
    EXPECT_TRUE(told->text().contains(QStringLiteral("twice"))) << told->text().toStdString();
    more->click();
    EXPECT_EQ(kept().back().name, "M") << "the next of the usual ones";
}

} // namespace

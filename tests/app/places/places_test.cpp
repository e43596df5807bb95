// SPDX-License-Identifier: MIT
// Designs, Supplies and Shop driven by keys, off screen, on a fresh demo book.
#include "app/demo/demo_book.h"
#include "app/designs/designs_page.h"
#include "app/desk/theme.h"
#include "app/shop/shop_page.h"
#include "app/supplies/price_text.h"
#include "app/supplies/supplies_page.h"
#include "app/words/quote_sheet.h"
#include "app/words/sheet_words.h"
#include "tests/support/held_clock.h"
#include "tests/support/temp_folder.h"
#include "tests/support/wait_for.h"

#include <QAbstractItemModelTester>
#include <QAccessible>
#include <QApplication>
#include <QCheckBox>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QListView>
#include <QMenu>
#include <QPushButton>
#include <QScrollArea>
#include <QScrollBar>
#include <QTest>
#include <QToolButton>
#include <gtest/gtest.h>

#include <algorithm>

using namespace sp;

namespace {

class Places : public testing::Test {
  protected:
    Places() {
        QLocale::setDefault(QLocale(QLocale::English, QLocale::UnitedStates));
        auto book = demo::createDemoBook(m_folder / "demo.jobbook", m_clock.environment());
        EXPECT_TRUE(book.has_value());
        m_session = std::make_unique<session::BookSession>(std::move(*book));
        m_formatter = std::make_unique<desk::Formatter>(QLocale(), m_session->shop());
    }

    template<class Page>
    void open() {
        m_page = std::make_unique<Page>(*m_session, *m_formatter);
        m_page->resize(1274, 768);
        m_page->show();
        QApplication::setActiveWindow(m_page.get());
        test::handleQueued();
    }

    QLineEdit* field(const char* name) {
        auto* found = m_page->findChild<QLineEdit*>(QLatin1String(name));
        EXPECT_NE(found, nullptr) << name;
        return found;
    }
    /// Types over what is there and goes on with Enter.
    void type(const char* name, const char* text) {
        auto* target = field(name);
        target->setFocus();
        target->selectAll();
        QTest::keyClicks(target, QString::fromUtf8(text));
        QTest::keyClick(target, Qt::Key_Return);
        test::handleQueued();
    }
    void click(const char* name) {
        auto* button = m_page->findChild<QPushButton*>(QLatin1String(name));
        ASSERT_NE(button, nullptr) << name;
        button->click();
        test::handleQueued();
    }
    void expectNames() {
        for (auto* widget : m_page->findChildren<QWidget*>()) {
            if (!widget->isVisible() || widget->focusPolicy() == Qt::NoFocus || !widget->isEnabled()) continue;
            auto* accessible = QAccessible::queryAccessibleInterface(widget);
            ASSERT_NE(accessible, nullptr);
            EXPECT_FALSE(accessible->text(QAccessible::Name).isEmpty())
                << widget->metaObject()->className() << ' ' << widget->objectName().toStdString();
        }
    }

    test::HeldClock m_clock;
    test::TempFolder m_folder;
    desk::Theme m_theme{*qApp, desk::Scheme::Light};
    std::unique_ptr<session::BookSession> m_session;
    std::unique_ptr<desk::Formatter> m_formatter;
    std::unique_ptr<QWidget> m_page;
};

TEST_F(Places, aNewDesignIsSavedFieldByField) {
    open<designs::DesignsPage>();
    click("newDesign");
    type("designName", "Kite");
    type("designWidth", "88.9 mm");
    type("designHeight", "2 3/4");
    type("designStone0", "118");
    const auto& designs = m_session->designs();
    const auto kite = std::find_if(designs.begin(), designs.end(), [](const auto& d) { return d.name == "Kite"; });
    ASSERT_NE(kite, designs.end());
    EXPECT_EQ(kite->width, units::Length::fromMicrometres(88'900));
    EXPECT_EQ(kite->height, units::Length::fromInch64ths(2 * 64 + 48));
    EXPECT_EQ(kite->stones.front().count.value(), 118);
}

TEST_F(Places, aBadEntryStaysAndIsNotSaved) {
    open<designs::DesignsPage>();
    const auto before = m_session->designs().front();
    type("designWidth", "3mm*2mm");
    EXPECT_EQ(field("designWidth")->text(), "3mm*2mm");
    EXPECT_EQ(m_session->designs().front(), before);
}

TEST_F(Places, aBadEntryStaysWhileAnotherIsSaved) {
    open<designs::DesignsPage>();
    type("designWidth", "wide");
    type("designHeight", "2 1/4");
    EXPECT_EQ(m_session->designs().front().height, units::Length::fromInch64ths(2 * 64 + 16));
    EXPECT_EQ(field("designWidth")->text(), "wide");
    // Another design has none of it.
    m_page->findChild<QListView*>()->setCurrentIndex(m_page->findChild<QListView*>()->model()->index(1, 0));
    EXPECT_NE(field("designWidth")->text(), "wide");
}

TEST_F(Places, theShopsCareCardsAreShownAsTheyWillBePrinted) {
    open<shop::ShopPage>();
    m_page->findChild<QPushButton*>(QStringLiteral("careCards"))->click();
    auto* preview = m_page->window()->findChild<QWidget*>(QStringLiteral("carePreview"));
    ASSERT_NE(preview, nullptr);
    EXPECT_TRUE(preview->isVisible());
    preview->close();
}

TEST_F(Places, undoIsSeenInTheFieldOneIsIn) {
    open<shop::ShopPage>();
    const auto before = field("labour")->text();
    type("labour", "24");
    field("labour")->setFocus();
    m_session->undo();
    EXPECT_EQ(field("labour")->text(), before);
}

TEST_F(Places, theNoteUnderThePacksIsAboutWhatStandsThere) {
    open<supplies::SuppliesPage>();
    auto* note = m_page->findChild<QLabel*>(QStringLiteral("packProblem"));
    ASSERT_NE(note, nullptr);
    type("packAmount0", "9.99x");
    EXPECT_TRUE(note->text().startsWith("contents of pack 1: ")) << note->text().toStdString();
    type("packSupplier0", "sack");
    EXPECT_TRUE(note->text().contains("sack")) << "the first of them: " << note->text().toStdString();
    EXPECT_EQ(field("packAmount0")->text(), "9.99x");
    type("packSupplier0", "Kestrel Row Stones");
    EXPECT_TRUE(note->text().contains("9.99x"));
    type("packAmount0", "144");
    EXPECT_FALSE(note->isVisible());
}

TEST_F(Places, undoBringsADesignBack) {
    open<designs::DesignsPage>();
    const auto before = m_session->designs().size();
    click("removeDesign");
    EXPECT_EQ(m_session->designs().size(), before - 1);
    m_session->undo();
    EXPECT_EQ(m_session->designs().size(), before);
}

TEST_F(Places, aDesignLooksAsTheBookHasItNow) {
    open<designs::DesignsPage>();
    const auto& designs = m_session->designs();
    const auto found = std::find_if(designs.begin(), designs.end(), [](const auto& d) { return d.name == "Heron"; });
    ASSERT_NE(found, designs.end());
    auto heron = *found;
    static_cast<designs::DesignsPage*>(m_page.get())->open(heron.id);
    test::handleQueued();
    auto* picture = m_page->findChild<QWidget*>(QStringLiteral("designPicture"));
    ASSERT_NE(picture, nullptr);
    EXPECT_EQ(picture->accessibleName(), "Picture of Heron");
    ASSERT_TRUE(m_session->change([&](db::Book& book) { return book.removeArtwork(heron.id); }));
    EXPECT_EQ(picture->accessibleName(), "No picture of Heron");
    ASSERT_TRUE(m_session->undo());
    EXPECT_EQ(picture->accessibleName(), "Picture of Heron");

    auto* note = m_page->findChild<QLabel*>(QStringLiteral("designPictureOfOtherCounts"));
    ASSERT_NE(note, nullptr);
    EXPECT_TRUE(note->isHidden());
    heron = *m_session->design(heron.id);
    heron.stones.front().count = units::Count::of(heron.stones.front().count.value() + 1);
    ASSERT_TRUE(m_session->change([&](db::Book& book) { return book.save(heron); }));
    EXPECT_FALSE(note->isHidden());
    EXPECT_EQ(note->text(), "The picture is of other counts than this design has.");
    ASSERT_TRUE(m_session->undo());
    EXPECT_TRUE(note->isHidden());
}

TEST_F(Places, aNewStoneWithAPackHasAPrice) {
    open<supplies::SuppliesPage>();
    auto* add = m_page->findChild<QPushButton*>(QStringLiteral("newSupply"));
    ASSERT_NE(add, nullptr);
    add->menu()->actions().front()->trigger();
    type("materialName", "Topaz SS12");
    click("addPack");
    type("packAmount0", "10 gross");
    type("packPrice0", "7.20");
    click("packAddBreak0");
    type("packEach0_0", "8.60");
    EXPECT_TRUE(m_page->findChild<QLabel*>(QStringLiteral("packProblem"))->text().contains("rises from 5 packs on"));
    type("packEach0_0", "6.60");
    EXPECT_EQ(m_page->findChild<QLabel*>(QStringLiteral("packProblem"))->text(), QString());
    const auto prices = m_session->prices({});
    for (const auto& [id, priced] : prices.materials)
        if (priced.material.name == "Topaz SS12") {
            ASSERT_TRUE(priced.price.has_value());
            EXPECT_EQ(priced.price->price, units::Money::fromMicros(7'200'000));
            EXPECT_EQ(priced.price->per.value(), 1440);
            return;
        }
    FAIL() << "the stone is not in the price book";
}

TEST_F(Places, theShelfIsALedger) {
    open<supplies::SuppliesPage>();
    const auto id = m_session->materials().front().id;
    const auto before = m_session->shelf().at(id);
    type("shelfAmount", "2 gross");
    click("countIn");
    EXPECT_EQ(m_session->shelf().at(id), before + 288);
    type("shelfAmount", "100");
    click("takeOut");
    EXPECT_EQ(m_session->shelf().at(id), before + 188);
    type("shelfAmount", "17");
    type("shelfReason", "stocktaking");
    click("countShelf");
    EXPECT_EQ(m_session->shelf().at(id), 17);
    const auto moves = m_session->read([&](db::Book& book) { return book.movesOf(id); }).value();
    EXPECT_EQ(moves.back().note, "stocktaking");
    EXPECT_EQ(moves.back().kind, db::records::MoveKind::Counted);
    EXPECT_EQ(moves[moves.size() - 2].kind, db::records::MoveKind::Used);
}

TEST_F(Places, theStepOfPricesIsMoney) {
    open<shop::ShopPage>();
    EXPECT_EQ(field("roundingStep")->text(), "0.05");
    EXPECT_FALSE(field("roundingEnding")->isEnabled()) << "prices are rounded to a step";
    type("roundingStep", "0.25");
    EXPECT_EQ(m_session->shop().rules.rounding.step, 25);
    for (const char* bad : {"0", "0.005", "20000"}) {
        type("roundingStep", bad);
        EXPECT_EQ(m_session->shop().rules.rounding.step, 25) << bad;
        EXPECT_EQ(field("roundingStep")->text(), bad);
    }
}

TEST_F(Places, aRateIsSavedAndUndone) {
    open<shop::ShopPage>();
    type("labour", "24");
    EXPECT_EQ(m_session->shop().rates.labourPerHour, units::Money::fromMicros(24'000'000));
    type("labour", "a lot");
    EXPECT_EQ(m_session->shop().rates.labourPerHour, units::Money::fromMicros(24'000'000));
    EXPECT_EQ(field("labour")->text(), "a lot");
    type("labour", "24");
    m_session->undo();
    EXPECT_EQ(m_session->shop().rates.labourPerHour, units::Money::fromMicros(18'000'000));
    EXPECT_EQ(field("labour")->text(), "18.00");
}

TEST_F(Places, aStepOfTheLadderIsSaved) {
    open<shop::ShopPage>();
    type("ladderRate0", "110");
    EXPECT_EQ(m_session->shop().rules.ladder.front().markUp, units::Rate::fromPercent(110));
    type("bench_5_1", "40 s");
    EXPECT_EQ(m_session->bench().of(catalogue::Step::Brush).perColour, units::Duration::fromSeconds(40));
}

TEST_F(Places, packingGoesWithEveryPiece) {
    open<shop::ShopPage>();
    const auto packing = [this] { return m_session->shop().packing; };
    const auto both = packing();
    ASSERT_EQ(both.size(), 2U);
    EXPECT_EQ(field("packing0")->text(), "Clear bag");
    EXPECT_EQ(field("packing1")->text(), "Care card");
    for (int i = 0; i < 2; ++i) click("packingAdd");
    const auto all = packing();
    ASSERT_EQ(all.size(), 4U);
    click("packingAdd");
    EXPECT_EQ(packing(), all) << "there is no fifth";
    QAbstractButton* remove = nullptr;
    for (auto* button : m_page->findChildren<QAbstractButton*>())
        if (button->accessibleName() == QStringLiteral("Take packing 1 out")) remove = button;
    ASSERT_NE(remove, nullptr);
    remove->click();
    test::handleQueued();
    EXPECT_EQ(packing(), (std::vector{all[1], all[2], all[3]}));
    EXPECT_EQ(field("packing0")->text(), "Care card");
    type("packing0", "clear");
    EXPECT_EQ(packing()[0], both[0]);
    type("packing0", "wrapping");
    EXPECT_EQ(packing()[0], both[0]);
    EXPECT_EQ(field("packing0")->text(), "wrapping");
}

TEST_F(Places, aShopHasSeveralRatesOfTax) {
    open<shop::ShopPage>();
    const auto others = [this] { return m_session->shop().rules.tax.others; };
    ASSERT_EQ(others().size(), 1U);
    click("taxRateAdd");
    ASSERT_EQ(others().size(), 2U);
    type("otherTaxName1", "Books");
    type("otherTaxRate1", "2.5");
    EXPECT_EQ(others()[1], (catalogue::TaxRate{"Books", units::Rate::fromPpm(25'000)}));
    type("otherTaxRate1", "101");
    EXPECT_EQ(others()[1].rate, units::Rate::fromPpm(25'000));
    EXPECT_EQ(field("otherTaxRate1")->text(), "101");
    type("otherTaxRate1", "3");
    type("otherTaxName1", "Sales tax");
    EXPECT_EQ(others()[1].name, "Books") << "two rates of one name";
    EXPECT_EQ(field("otherTaxName1")->text(), "Sales tax");
}

TEST_F(Places, aShopNamesItsWaysToBePaid) {
    open<shop::ShopPage>();
    const auto ways = [this] { return m_session->shop().waysToPay; };
    ASSERT_TRUE(ways().empty()) << "those that the program knows";
    click("payAdd");
    ASSERT_EQ(ways().size(), 5U) << "beside those that the program knows";
    EXPECT_EQ(ways()[0], (catalogue::WayToPay{"Cash", true}));
    EXPECT_FALSE(ways()[4].isCash);
    type("payName4", "Market stall till");
    m_page->findChild<QCheckBox*>("payCash4")->click();
    EXPECT_EQ(ways()[4], (catalogue::WayToPay{"Market stall till", true}));
    type("payName4", "Card");
    EXPECT_EQ(ways()[4].name, "Market stall till") << "two of one name";
    auto* example = m_page->findChild<QLabel*>("coinExample");
    EXPECT_FALSE(example->isVisible());
    type("smallestCoin", "5");
    EXPECT_EQ(field("payName4")->text(), "Card") << "what was typed stays";
    EXPECT_TRUE(example->isVisible());
    EXPECT_TRUE(example->text().contains("10.00")) << "5 typed for 5 cents: " << example->text().toStdString();
}

// A field that is hidden is done; what it then says is of rows that are gone.
TEST_F(Places, aRowIsTakenOutWhileAnotherIsTyped) {
    open<shop::ShopPage>();
    click("payAdd");
    const auto ways = [this] { return m_session->shop().waysToPay; };
    auto* name = field("payName4");
    name->setFocus();
    name->selectAll();
    QTest::keyClicks(name, "Voucher");
    QToolButton* remove = nullptr;
    for (auto* button : m_page->findChildren<QToolButton*>())
        if (button->accessibleName() == "Take way to pay 4 out") remove = button;
    ASSERT_NE(remove, nullptr);
    QTest::mouseClick(remove, Qt::LeftButton);
    test::handleQueued();
    ASSERT_EQ(ways().size(), 4U);
    EXPECT_EQ(ways()[0].name, "Cash");
    EXPECT_EQ(ways()[3].name, "Voucher") << "what was typed is kept";
    name = field("payName3");
    name->setFocus();
    name->selectAll();
    QTest::keyClicks(name, "Token");
    ASSERT_TRUE(m_session->undo()); // the rows are built anew under what is typed
    test::handleQueued();
    ASSERT_EQ(ways().size(), 5U);
    EXPECT_EQ(ways()[0].name, "Cash");
}

TEST_F(Places, packingGoesByNumbersWithPiecesOrOrders) {
    open<shop::ShopPage>();
    const auto first = [this] { return m_session->shop().packing.at(0); };
    type("packingAmount0", "3");
    EXPECT_EQ(first().amount, units::Count::of(3));
    type("packingAmount0", "0");
    EXPECT_EQ(first().amount, units::Count::of(3)) << "nothing is no amount";
    EXPECT_EQ(field("packingAmount0")->text(), "0");
    auto* per = m_page->findChild<QComboBox*>("packingPer0");
    ASSERT_NE(per, nullptr);
    per->setCurrentIndex(1);
    Q_EMIT per->activated(1);
    EXPECT_EQ(first().per, catalogue::PackingPer::Order);
    m_session->undo();
    EXPECT_EQ(first().per, catalogue::PackingPer::Piece);
    EXPECT_EQ(per->currentIndex(), 0);
}

TEST_F(Places, aDesignMayHavePackingOfItsOwn) {
    open<designs::DesignsPage>();
    const auto shown = [this] {
        return *m_session->design(static_cast<designs::DesignsPage*>(m_page.get())->currentDesign());
    };
    auto* own = m_page->findChild<QCheckBox*>("designOwnPacking");
    ASSERT_NE(own, nullptr);
    ASSERT_FALSE(shown().packing.has_value());
    EXPECT_FALSE(own->isChecked());
    EXPECT_EQ(m_page->findChild<QLineEdit*>("designPacking0"), nullptr);
    own->click();
    test::handleQueued();
    EXPECT_EQ(shown().packing, m_session->shop().packing) << "begins with what the shop takes";
    type("designPackingAmount0", "2");
    EXPECT_EQ(shown().packing->at(0).amount, units::Count::of(2));
    EXPECT_EQ(m_session->shop().packing[0].amount, units::Count::of(1));
    own->click();
    EXPECT_FALSE(shown().packing.has_value());
}

// 12 are sold; a plan for fewer is refused at its field, where it stays.
TEST_F(Places, aDesignShowsHowFarItsSetIsPaidOff) {
    auto& designs = m_session->designs();
    const auto crest =
        std::find_if(designs.begin(), designs.end(), [](const auto& d) { return d.name == "Studio crest"; });
    ASSERT_NE(crest, designs.end());
    auto planned = *crest;
    planned.plannedPieces = units::Count::of(100);
    const auto sell = [&](db::Book& book) -> base::Done {
        if (auto saved = book.save(planned); !saved) return base::fail(saved.error());
        auto line = catalogue::lineOf(planned);
        line.quantity = units::Count::of(12);
        catalogue::Order order;
        order.quotedOn = units::Date::parse("2026-11-25").value();
        order.lines = {line};
        const auto inputs = book.priceBook({}).value();
        layout::FitMemo fits;
        const words::SheetWords sheetWords;
        const auto result = words::resultOf(order, inputs, order.quotedOn, fits, sheetWords);
        if (!result) return base::fail(result.error());
        const auto quote = book.issueNew(order, inputs, *result, order.quotedOn);
        if (!quote) return base::fail(quote.error());
        return book.setStage(quote->id, db::Stage::Agreed);
    };
    ASSERT_TRUE(m_session->change(sell));
    open<designs::DesignsPage>();
    static_cast<designs::DesignsPage*>(m_page.get())->open(planned.id);
    test::handleQueued();
    const auto* label = m_page->findChild<QLabel*>(QStringLiteral("designPaidOff"));
    ASSERT_NE(label, nullptr);
    EXPECT_EQ(label->text(), QStringLiteral("12 of 100 pieces sold; 0.78 of 6.50 paid for the set of templates."));
    type("designPlanned", "11");
    EXPECT_EQ(field("designPlanned")->text(), "11");
    EXPECT_EQ(m_session->design(planned.id)->plannedPieces, units::Count::of(100));
    const auto problems = m_page->findChildren<QLabel*>();
    EXPECT_TRUE(std::any_of(problems.begin(), problems.end(), [](const auto* shown) {
        return shown->text().contains(QStringLiteral("11 planned pieces are fewer than the 12 that are sold already"));
    }));
    type("designPlanned", "12");
    EXPECT_EQ(m_session->design(planned.id)->plannedPieces, units::Count::of(12));
}

TEST_F(Places, whatIsGivenAwayHasNoMargin) {
    open<shop::ShopPage>();
    type("ladderRate0", "-100");
    EXPECT_EQ(m_session->shop().rules.ladder.front().markUp, units::Rate::fromPercent(-100));
    type("ladderRate0", "-101");
    EXPECT_EQ(m_session->shop().rules.ladder.front().markUp, units::Rate::fromPercent(-100));
    EXPECT_EQ(field("ladderRate0")->text(), "-101");
}

TEST_F(Places, aQuoteHoldsAsLongAsARecordCanKeep) {
    open<shop::ShopPage>();
    type("validDays", "36500");
    EXPECT_EQ(m_session->shop().rules.validDays, 36'500);
    type("validDays", "36501");
    EXPECT_EQ(m_session->shop().rules.validDays, 36'500);
}

/// At 1366 × 768 with the usual text nothing lies beyond the right edge.
TEST_F(Places, noneScrollsSideways) {
    const auto beyond = [this] {
        int widest = 0;
        for (auto* area : m_page->findChildren<QScrollArea*>())
            if (area->isVisible()) widest = std::max(widest, area->horizontalScrollBar()->maximum());
        return widest;
    };
    open<shop::ShopPage>();
    EXPECT_EQ(beyond(), 0) << "Shop";
    open<designs::DesignsPage>();
    EXPECT_EQ(beyond(), 0) << "Designs";
    open<supplies::SuppliesPage>();
    EXPECT_EQ(beyond(), 0) << "Supplies";
}

TEST_F(Places, everyInputHasAName) {
    open<designs::DesignsPage>();
    expectNames();
    open<supplies::SuppliesPage>();
    expectNames();
    open<shop::ShopPage>();
    expectNames();
}

TEST(StoneListModel, behavesAsAModel) {
    desk::StoneListModel model;
    const QAbstractItemModelTester tester(&model, QAbstractItemModelTester::FailureReportingMode::Fatal);
    model.setRows({{{}, "Jet", "stone", {Qt::black}}, {{}, "Aqua", "stone", {}}});
    model.setRows({{{}, "Jet", "stone", {}}});
    EXPECT_EQ(model.rowCount(), 1);
    model.setRows({});
    EXPECT_EQ(model.rowCount(), 0);
}

TEST(PriceText, writesTheFurtherPricesBehindTheFirst) {
    const desk::Formatter formatter(QLocale(QLocale::English, QLocale::UnitedStates), {});
    const auto step = [](std::int64_t from, std::int64_t micros) {
        return catalogue::PriceBreak{units::Count::of(from), units::Money::fromMicros(micros)};
    };
    EXPECT_EQ(supplies::writePrices({step(1, 9'990'000)}, formatter), "9.99");
    EXPECT_EQ(supplies::writePrices({step(1, 1'240'000), step(2, 1'200'000), step(10, 1'100'000)}, formatter),
              "1.24; from 2 packs 1.20; from 10 packs 1.10");
}

// 23 Lanterns at 7.20 are 165.60, 24 at 6.80 163.20: both prices stand in the cost sheet's tests of the demo. The
// picture is read out, follows the ladder, and without cliffs says so.
TEST_F(Places, shopDrawsTheLadderOfADesign) {
    open<shop::ShopPage>();
    auto* picture = m_page->findChild<QWidget*>(QStringLiteral("ladderPicture"));
    const auto said = [&](const char* name) { return m_page->findChild<QLabel*>(QLatin1String(name))->text(); };
    type("ladderDesign", "Lantern");
    EXPECT_TRUE(said("ladderCliffs").startsWith("23 come to more than 24, which are 163.20."))
        << said("ladderCliffs").toStdString();
    picture->setFocus();
    QTest::keyClick(picture, Qt::Key_Home);
    for (int i = 0; i < 22; ++i) QTest::keyClick(picture, Qt::Key_Right);
    EXPECT_EQ(said("ladderPoint"), "23 pieces: 7.20 each, 165.60 in all; 24 come to less, 163.20");
    EXPECT_EQ(picture->accessibleDescription(), said("ladderPoint"));
    QTest::keyClick(picture, Qt::Key_PageUp);
    EXPECT_TRUE(said("ladderPoint").startsWith("35 pieces:")) << said("ladderPoint").toStdString();
    auto shop = m_session->shop();
    shop.rules.ladder = {{units::Count::of(1), units::Rate::fromPercent(65)}};
    ASSERT_TRUE(m_session->change([&](db::Book& book) { return book.save(shop); }));
    test::handleQueued();
    EXPECT_EQ(said("ladderCliffs"), "More pieces always come to as much or more.");
    QTest::keyClick(picture, Qt::Key_End);
    EXPECT_TRUE(said("ladderPoint").startsWith("12 pieces:")) << said("ladderPoint").toStdString();
}

} // namespace

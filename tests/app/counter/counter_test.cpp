// SPDX-License-Identifier: MIT
// The Counter driven as a person does it: by keys, off screen, on a fresh demo book.
#include "app/desk/field_box.h"
#include "app/desk/fonts.h"
#include "app/paper/preview_dialog.h"
#include "tests/app/demo_window.h"

#include <QAbstractScrollArea>
#include <QAccessible>
#include <QCheckBox>
#include <QFile>
#include <QListView>
#include <QPushButton>

#include <cmath>

using namespace sp;

namespace {

class Counter : public test::DemoWindow {};

TEST_F(Counter, goesFromEmptyToAGivenQuoteAndItsPdfByKeysAlone) {
    EXPECT_EQ(focused(), "design");
    EXPECT_EQ(text("toPay"), "—");
    orderLantern();
    EXPECT_EQ(text("toPay"), "175.03");
    press(Qt::Key_Return, Qt::ControlModifier);
    EXPECT_TRUE(m_window->presenter().isIssued());
    press(Qt::Key_P, Qt::ControlModifier);
    EXPECT_LE(m_keys, 25) << "keys from start to the sheet";
    auto* preview = m_window->findChild<paper::PreviewDialog*>();
    ASSERT_NE(preview, nullptr);
    const auto pdf = m_folder.path() / "quote.pdf";
    preview->savePdf(QString::fromStdString(pdf.string()));
    QFile file(QString::fromStdString(pdf.string()));
    ASSERT_TRUE(file.open(QIODevice::ReadOnly));
    EXPECT_TRUE(file.read(5).startsWith("%PDF-"));
    preview->close();

    const auto number = m_window->presenter().quote().number;
    const auto id = m_window->presenter().quote().id;
    reopen();
    ASSERT_TRUE(m_window->presenter().open(id));
    EXPECT_EQ(m_window->presenter().quote().number, number);
    EXPECT_EQ(text("toPay"), "175.03");
}

TEST_F(Counter, saysWhatIsNotInThePriceAndGoesToWhatMendsIt) {
    orderLantern();
    press(Qt::Key_F9);
    auto* said = find<QLabel>("leftOut");
    EXPECT_FALSE(said->isVisible()) << "the demo leaves nothing out: " << said->text().toStdString();
    auto shop = m_window->session().shop();
    shop.usualTape = {};
    shop.rates.labourPerHour = {};
    ASSERT_TRUE(m_window->session().change([&](db::Book& book) { return book.save(shop); }));
    EXPECT_EQ(said->text(), "Not in the price: <a href=\"0\">No tape is chosen</a> · "
                            "<a href=\"1\">Labour is 0.00 an hour</a>");
    EXPECT_TRUE(said->isVisible());
    Q_EMIT said->linkActivated(QStringLiteral("1"));
    test::handleQueued();
    EXPECT_EQ(focused(), "labour");
    auto* meant = find<QCheckBox>("noLabour");
    EXPECT_FALSE(meant->isChecked());
    meant->click();
    EXPECT_TRUE(m_window->session().shop().meantAsNothing.labour);
    m_window->goTo(program::PlaceId::Counter);
    press(Qt::Key_F9);
    EXPECT_EQ(said->text(), "Not in the price: <a href=\"0\">No tape is chosen</a>");
    Q_EMIT said->linkActivated(QStringLiteral("0"));
    test::handleQueued();
    EXPECT_EQ(focused(), "usualTape");
}

TEST_F(Counter, goesToThePacksOfAMaterialThatCostsNothing) {
    orderLantern();
    auto& session = m_window->session();
    for (auto pack : session.packs()) {
        if (!pack.usual || session.material(pack.material)->name != "Jet SS10") continue;
        pack.prices = {{units::Count::of(1), {}}};
        ASSERT_TRUE(session.change([&](db::Book& book) { return book.save(pack); }));
        break;
    }
    press(Qt::Key_F9);
    auto* said = find<QLabel>("leftOut");
    EXPECT_EQ(said->text(), "Not in the price: <a href=\"0\">Jet SS10 is 0.00</a>");
    Q_EMIT said->linkActivated(QStringLiteral("0"));
    test::handleQueued();
    EXPECT_EQ(field("materialName")->text(), "Jet SS10");
    EXPECT_EQ(focused(), "packPrices0");
}

// Without any price there is none of the order; the sentence leads to the packs, of a material without packs to the
// button that adds one.
TEST_F(Counter, goesToThePacksOfAMaterialWithoutAPrice) {
    orderLantern();
    auto& session = m_window->session();
    for (const auto& pack : std::vector(session.packs())) {
        if (session.material(pack.material)->name != "Jet SS10") continue;
        ASSERT_TRUE(session.change([&](db::Book& book) { return book.removePack(pack.id); }));
    }
    const QString link = "<a href=\"0\">Jet SS10 has no price; add a pack with a price to it in Supplies.</a>";
    EXPECT_EQ(text("whyNoPrice"), link);
    press(Qt::Key_F9);
    EXPECT_EQ(text("footing"), link);
    Q_EMIT find<QLabel>("whyNoPrice")->linkActivated(QStringLiteral("0"));
    test::handleQueued();
    EXPECT_EQ(field("materialName")->text(), "Jet SS10");
    EXPECT_EQ(focused(), "addPack");
}

// 20.00 with 20 % of tax inside are 16.67 without: 20 ÷ 1.2 = 16.667. The rate is invented.
TEST_F(Counter, saysATypedPriceWithAndWithoutTaxForAnExemptCustomer) {
    orderLantern();
    press(Qt::Key_F9);
    auto& session = m_window->session();
    auto shop = session.shop();
    shop.rules.tax.rate = units::Rate::fromPercent(20);
    shop.rules.tax.inclusive = true;
    ASSERT_TRUE(session.change([&](db::Book& book) { return book.save(shop); }));
    field("askInstead")->setFocus();
    type("20.00");
    press(Qt::Key_Return);
    const auto note = [&] { return dynamic_cast<desk::FieldBox*>(field("askInstead")->parentWidget())->note(); };
    EXPECT_EQ(text("toPay"), "480.00");
    EXPECT_EQ(note(), "");
    field("customer")->setFocus();
    type("lark");
    press(Qt::Key_Return);
    ASSERT_TRUE(find<QCheckBox>("exempt")->isChecked());
    EXPECT_EQ(field("askInstead")->text(), "20.00");
    EXPECT_EQ(note(), "16.67 without tax");
    EXPECT_EQ(text("toPay"), "400.08");
}

TEST_F(Counter, pricesAtEveryKey) {
    type("lant");
    press(Qt::Key_Return);
    type("2");
    const auto two = text("toPay");
    type("4");
    EXPECT_NE(text("toPay"), two);
    EXPECT_EQ(text("toPay"), "175.03");
}

TEST_F(Counter, blanksThePriceWhileAnEntryCannotBeRead) {
    orderLantern();
    field("pieces")->setFocus();
    type("12x");
    EXPECT_EQ(text("toPay"), "—");
    EXPECT_EQ(field("pieces")->text(), "12x");
    EXPECT_FALSE(text("whyNoPrice").isEmpty());
    EXPECT_FALSE(find<QPushButton>("give")->isEnabled());
    EXPECT_FALSE(find<QPushButton>("print")->isEnabled());
    press(Qt::Key_Tab);
    EXPECT_EQ(field("pieces")->text(), "12x") << "what was typed stays";
    field("pieces")->setFocus();
    press(Qt::Key_Return, Qt::ControlModifier);
    EXPECT_FALSE(m_window->presenter().isIssued());
    field("pieces")->selectAll();
    type("24");
    EXPECT_EQ(text("toPay"), "175.03");
}

struct BadEntry {
    const char* field;
    const char* typed;
};

TEST_F(Counter, everyBadEntryBlanksThePriceAndStays) {
    orderLantern();
    for (const BadEntry& row :
         {BadEntry{"pieces", "0"}, BadEntry{"pieces", "-3"}, BadEntry{"pieces", "2.5"}, BadEntry{"pieces", ""},
          BadEntry{"width", "3mm*2mm"}, BadEntry{"width", "1/0"}, BadEntry{"height", "twelve"},
          BadEntry{"height", "90 km"}, BadEntry{"stone0", "0"}, BadEntry{"stone1", "many"},
          BadEntry{"wantedBy", "someday"}, BadEntry{"discount", "120 %"}, BadEntry{"discount", "lots"}}) {
        auto* entry = field(row.field);
        const auto before = entry->text();
        entry->setFocus();
        entry->selectAll();
        if (*row.typed)
            type(row.typed);
        else
            press(Qt::Key_Delete);
        EXPECT_EQ(text("toPay"), "—") << row.field << ": " << row.typed;
        EXPECT_EQ(entry->text(), row.typed);
        entry->selectAll();
        if (before.isEmpty())
            press(Qt::Key_Delete);
        else
            type(before.toUtf8().constData());
        EXPECT_EQ(text("toPay"), "175.03") << row.field << " back to " << before.toStdString();
    }
}

// Two lines of one design share its set; of another width they are two, and the line says so.
TEST_F(Counter, saysWhetherALineIsMadeWithTheSetOfAnother) {
    for (int i = 0; i < 2; ++i) {
        field("design")->setFocus();
        type("crest");
        press(Qt::Key_Return);
    }
    ASSERT_EQ(m_window->presenter().current(), 1);
    EXPECT_TRUE(text("benchNote").startsWith("Made with the set of line 1.")) << text("benchNote").toStdString();
    field("width")->setFocus();
    field("width")->selectAll();
    type("6");
    press(Qt::Key_Tab);
    EXPECT_TRUE(text("benchNote").startsWith("A set of its own: its size, stones or plan are not those of line 1."))
        << text("benchNote").toStdString();
    m_window->presenter().select(0);
    EXPECT_FALSE(text("benchNote").contains("set of")) << text("benchNote").toStdString();
}

TEST_F(Counter, aBadEntryStaysWithItsLineAndBlanksThePrice) {
    orderLantern();
    field("pieces")->setFocus();
    type("12 dozne");
    field("design")->setFocus();
    type("boat");
    press(Qt::Key_Return);
    ASSERT_EQ(m_window->presenter().current(), 1);
    EXPECT_EQ(text("toPay"), "—");
    EXPECT_TRUE(text("whyNoPrice").startsWith("Line 1, Lantern: ")) << text("whyNoPrice").toStdString();
    EXPECT_FALSE(find<QPushButton>("give")->isEnabled());
    const auto* list = find<QListView>("lines");
    EXPECT_EQ(list->model()->index(0, 0).data().toString(), "— × Lantern");
    m_window->presenter().select(0);
    EXPECT_EQ(field("pieces")->text(), "12 dozne") << "what was typed stays";
    field("pieces")->setFocus();
    field("pieces")->selectAll();
    type("24");
    EXPECT_NE(text("toPay"), "—") << text("whyNoPrice").toStdString();
}

TEST_F(Counter, aBadEntryGoesWithItsLine) {
    orderLantern();
    field("design")->setFocus();
    type("boat");
    press(Qt::Key_Return);
    field("width")->setFocus();
    type("wide");
    field("design")->setFocus();
    type("crest");
    press(Qt::Key_Return);
    m_window->presenter().select(0);
    m_window->presenter().removeLine(); // the boat moves up, and its entry with it
    EXPECT_EQ(text("toPay"), "—");
    EXPECT_EQ(field("width")->text(), "wide");
    m_window->presenter().removeLine();
    EXPECT_NE(text("toPay"), "—") << text("whyNoPrice").toStdString();
}

TEST_F(Counter, aBadCountStaysWithItsStone) {
    orderLantern();
    const auto good = field("stone0")->text();
    field("stone1")->setFocus();
    field("stone1")->selectAll();
    type("many");
    m_window->presenter().removeStone(0);
    test::handleQueued(); // the row goes
    EXPECT_EQ(text("toPay"), "—");
    EXPECT_EQ(field("stone0")->text(), "many");
    field("stone0")->setFocus();
    field("stone0")->selectAll();
    type(good.toUtf8().constData());
    EXPECT_NE(text("toPay"), "—") << text("whyNoPrice").toStdString();
}

TEST_F(Counter, nobodysExemptionStandsForANewCustomer) {
    orderLantern();
    field("customer")->setFocus();
    type("lark");
    press(Qt::Key_Return);
    EXPECT_EQ(text("toPay"), "163.20");
    field("customer")->setFocus();
    field("customer")->selectAll();
    type("Zed");
    EXPECT_EQ(text("toPay"), "175.03") << "from the first key on";
    press(Qt::Key_Tab);
    EXPECT_EQ(text("toPay"), "175.03") << text("whyNoPrice").toStdString();
    EXPECT_FALSE(find<QCheckBox>("exempt")->isChecked());
    EXPECT_EQ(field("customer")->text(), "Zed");
    EXPECT_EQ(m_window->presenter().customer()->name, "Zed");
}

TEST_F(Counter, aDiscountOverAllOfItIsRefusedAndTheRestIsKept) {
    orderLantern();
    field("discount")->setFocus();
    type("150%");
    EXPECT_EQ(text("toPay"), "—");
    field("pieces")->setFocus();
    field("pieces")->selectAll();
    type("20");
    press(Qt::Key_Tab);
    EXPECT_EQ(field("discount")->text(), "150%");
    reopen();
    EXPECT_EQ(field("pieces")->text(), "20");
}

TEST_F(Counter, marksTheEntryThatIsOfNoUseToTheOrder) {
    orderLantern();
    const auto note = [&](const char* name) {
        return dynamic_cast<desk::FieldBox*>(field(name)->parentWidget())->note().toStdString();
    };
    field("discount")->setFocus();
    type("5000");
    EXPECT_EQ(text("toPay"), "—");
    EXPECT_NE(note("discount").find("more than the order"), std::string::npos) << note("discount");
    field("discount")->selectAll();
    type("5");
    EXPECT_EQ(note("discount"), "");
    field("wantedBy")->setFocus();
    type("2020-01-01");
    EXPECT_NE(note("wantedBy").find("before the day of the quote"), std::string::npos) << note("wantedBy");
    field("pieces")->setFocus();
    field("pieces")->selectAll();
    press(Qt::Key_Delete);
    EXPECT_EQ(text("whyNoPrice"), "Pieces: This is still empty.");
}

TEST_F(Counter, aPieceLargerThanItsSheetHasNoPrice) {
    orderLantern();
    field("width")->setFocus();
    type("30 in");
    EXPECT_EQ(text("toPay"), "—");
    EXPECT_TRUE(text("whyNoPrice").contains("9 1/2") || text("whyNoPrice").contains("sheet"))
        << text("whyNoPrice").toStdString();
}

TEST_F(Counter, readsUnitsAndArithmetic) {
    orderLantern();
    for (const char* same : {"88.9 mm", "3.5\"", "8.89cm", "7/2", "(1+2.5)", "3 1/2 in"}) {
        field("width")->setFocus();
        field("width")->selectAll();
        type(same);
        EXPECT_EQ(text("toPay"), "175.03") << same;
    }
}

TEST_F(Counter, undoesAndRedoesWhatWasTyped) {
    orderLantern();
    field("pieces")->setFocus();
    type("12");
    press(Qt::Key_Tab);
    const auto twelve = text("toPay");
    EXPECT_NE(twelve, "175.03");
    press(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(text("toPay"), "175.03");
    EXPECT_EQ(field("pieces")->text(), "24");
    press(Qt::Key_Z, Qt::ControlModifier | Qt::ShiftModifier);
    EXPECT_EQ(text("toPay"), twelve);
    EXPECT_EQ(field("pieces")->text(), "12");
}

TEST_F(Counter, keepsTheDraftWithoutAnySave) {
    orderLantern();
    reopen();
    EXPECT_EQ(text("toPay"), "175.03");
    EXPECT_EQ(field("pieces")->text(), "24");
}

TEST_F(Counter, showsNoCostUntilTheSlipIsTurned) {
    orderLantern();
    for (const char* secret : {"costEach", "markUp", "margin", "perHour", "costTree", "askInstead"})
        EXPECT_FALSE(find<>(secret)->isVisible()) << secret;
    press(Qt::Key_F9);
    for (const char* secret : {"costEach", "markUp", "margin", "perHour", "costTree", "askInstead"})
        EXPECT_TRUE(find<>(secret)->isVisible()) << secret;
    EXPECT_EQ(text("costEach"), "4.11");
    press(Qt::Key_F9);
    EXPECT_FALSE(find<>("costEach")->isVisible());
}

TEST_F(Counter, answersATypedPriceAndWarns) {
    orderLantern();
    press(Qt::Key_F9);
    field("askInstead")->setFocus();
    type("4.00");
    EXPECT_FALSE(text("footing").isEmpty());
    EXPECT_TRUE(text("margin").startsWith("-")) << text("margin").toStdString();
    field("askInstead")->selectAll();
    type("1.00");
    EXPECT_TRUE(text("footing").contains("floor"));
    field("askInstead")->selectAll();
    press(Qt::Key_Delete);
    EXPECT_TRUE(text("footing").isEmpty());
    EXPECT_EQ(text("toPay"), "175.03");
}

// 24 at 6.80 cost 98.58; half off leaves 81.60, which does not pay: 16.98 is lost, 20.8 % of the price.
TEST_F(Counter, warnsWhereADiscountTakesMoreThanIsEarned) {
    orderLantern();
    press(Qt::Key_F9);
    EXPECT_TRUE(text("footing").isEmpty());
    field("discount")->setFocus();
    type("50 %");
    EXPECT_TRUE(text("leaves").contains("-16.98")) << text("leaves").toStdString();
    EXPECT_TRUE(text("leaves").contains("-81.60")) << text("leaves").toStdString();
    EXPECT_EQ(text("margin"), "-20.8 %");
    EXPECT_TRUE(text("perHour").startsWith("8.25")) << text("perHour").toStdString(); // 18.00 − 16.98 ÷ 1.742 h
    EXPECT_TRUE(text("footing").startsWith("Below what it costs")) << text("footing").toStdString();
    EXPECT_TRUE(text("wholeOrder").contains("-16.98")) << text("wholeOrder").toStdString();
    EXPECT_FALSE(find<>("orderFooting")->isVisible()) << "of one line it is said above";
    field("discount")->selectAll();
    type("70 %"); // 51.12
    EXPECT_TRUE(text("footing").contains("floor")) << text("footing").toStdString();
    EXPECT_TRUE(text("perHour").startsWith("-")) << text("perHour").toStdString();
}

// 24 at 8.00 are 192.00 and 13.92 of tax. The demo asks for a deposit, so the card takes 2.9 % of 205.92 and twice
// 0.30: 6.57, 0.27 a piece.
TEST_F(Counter, saysWhatTheCardTakesOnTheOwnersSideAlone) {
    auto shop = m_window->session().shop();
    shop.rules.cardFee.charged = true;
    ASSERT_TRUE(m_window->session().change([&](db::Book& book) { return book.save(shop); }));
    orderLantern();
    EXPECT_FALSE(find<>("cardFeeTaken")->isVisible());
    press(Qt::Key_F9);
    field("askInstead")->setFocus();
    type("8.00");
    EXPECT_EQ(text("cardFeeTaken"), "Of the price the card takes 0.27 a piece, 6.57 on the line.");
    EXPECT_TRUE(find<>("cardFeeTaken")->isVisible());
    shop = m_window->session().shop();
    shop.rules.cardFee.charged = false;
    ASSERT_TRUE(m_window->session().change([&](db::Book& book) { return book.save(shop); }));
    EXPECT_FALSE(find<>("cardFeeTaken")->isVisible());
}

// 7.25 % of what the Lanterns cost, which the shop bears where it says so.
TEST_F(Counter, saysWhatTaxTheShopBearsOnWhatItGivesAway) {
    auto shop = m_window->session().shop();
    shop.rules.tax.onGifts = catalogue::TaxOnGifts::OnCost;
    ASSERT_TRUE(m_window->session().change([&](db::Book& book) { return book.save(shop); }));
    orderLantern();
    press(Qt::Key_F9);
    EXPECT_FALSE(find<>("ownTax")->isVisible());
    find<QCheckBox>("lineAtNoCharge")->click();
    test::handleQueued();
    const auto* line = m_window->presenter().pricedLine();
    ASSERT_NE(line, nullptr);
    const double cents = static_cast<double>(line->cost.total.micros()) * 0.0725 / 10'000;
    EXPECT_EQ(
        text("ownTax"),
        QStringLiteral("Of the line’s cost %1 is tax on what is given away.").arg(std::round(cents) / 100, 0, 'f', 2));
    EXPECT_TRUE(find<>("ownTax")->isVisible());
}

// 23 at 7.20 are 165.60, 24 at 6.80 are 163.20.
TEST_F(Counter, offersMorePiecesWhereTheyCostLess) {
    orderLantern();
    press(Qt::Key_F9);
    EXPECT_FALSE(find<>("moreForLess")->isVisible());
    field("pieces")->setFocus();
    field("pieces")->selectAll();
    type("23");
    EXPECT_TRUE(find<>("moreForLess")->isVisible());
    EXPECT_EQ(text("moreForLess"), "24 cost less than 23, 163.20 instead of 165.60: offer 24.");
}

TEST_F(Counter, takesAOneOffWithTypedSizeAndStones) {
    type("Odd fox");
    press(Qt::Key_Down); // no design of that name: the row that offers a one-off
    press(Qt::Key_Return);
    ASSERT_TRUE(m_window->presenter().hasLine());
    EXPECT_EQ(m_window->presenter().line().title, "Odd fox");
    EXPECT_EQ(text("toPay"), "—");
    field("pieces")->setFocus();
    type("3");
    field("width")->setFocus();
    type("4");
    field("height")->setFocus();
    type("3");
    field("addColour")->setFocus();
    type("jet");
    press(Qt::Key_Return);
    EXPECT_EQ(focused(), "stone0");
    type("120");
    EXPECT_NE(text("toPay"), "—") << text("whyNoPrice").toStdString();
}

TEST_F(Counter, setsASecondDesignOnThePieceAndTakesItOffAgain) {
    orderLantern();
    const auto one = text("toPay");
    find<desk::TypedField>("addPlace")->setFocus(Qt::TabFocusReason);
    type("crest");
    press(Qt::Key_Down);
    press(Qt::Key_Return);
    EXPECT_EQ(focused(), "where");
    type("Back");
    const auto& line = m_window->presenter().line();
    ASSERT_EQ(line.places.size(), 2U);
    EXPECT_EQ(line.places[1].place, "Back");
    EXPECT_EQ(line.title, "Lantern");
    EXPECT_EQ(find<QPushButton>("placesTab1")->accessibleName(), "Back: Studio crest");
    EXPECT_NE(text("toPay"), one);
    EXPECT_NE(text("toPay"), "—");
    find<desk::TypedField>("width")->setFocus(Qt::TabFocusReason);
    type("wide");
    EXPECT_EQ(text("toPay"), "—");
    find<QPushButton>("placesTab0")->click();
    EXPECT_EQ(find<desk::TypedField>("width")->text(), "3 1/2") << "the bad entry stays with its place";
    EXPECT_EQ(text("toPay"), "—");
    m_window->presenter().selectPlace(1);
    EXPECT_EQ(find<desk::TypedField>("width")->text(), "wide");
    find<QPushButton>("placesRemove")->click();
    EXPECT_EQ(m_window->presenter().line().places.size(), 1U);
    EXPECT_EQ(text("toPay"), one);
}

TEST_F(Counter, offersAnotherChoiceByOneKeyAndLooksAtEither) {
    orderLantern();
    const auto first = text("toPay");
    EXPECT_FALSE(find<QAbstractButton>("choice1")->isVisible());
    press(Qt::Key_D, Qt::ControlModifier);
    EXPECT_EQ(text("toPay"), first) << "the same to begin with";
    field("pieces")->setFocus();
    type("36");
    const auto second = text("toPay");
    EXPECT_NE(second, first);
    auto* one = find<QAbstractButton>("choice1");
    auto* two = find<QAbstractButton>("choice2");
    EXPECT_TRUE(one->isVisible());
    EXPECT_TRUE(two->isChecked());
    EXPECT_EQ(one->accessibleName(), "Choice 1, 24 pieces, 6.80 each, To pay " + first);
    EXPECT_TRUE(two->accessibleName().endsWith("To pay " + second)) << two->accessibleName().toStdString();
    one->click();
    EXPECT_EQ(text("toPay"), first);
    EXPECT_EQ(field("pieces")->text(), "24");
    EXPECT_EQ(find<QPushButton>("choicesTab1")->accessibleName(), "2 36 pieces");
    find<QPushButton>("choicesTab1")->click();
    EXPECT_EQ(text("toPay"), second);
    press(Qt::Key_Return, Qt::ControlModifier);
    ASSERT_TRUE(m_window->presenter().isIssued());
    EXPECT_EQ(text("toPay"), second);
    find<QAbstractButton>("choice1")->click();
    EXPECT_EQ(text("toPay"), first) << "what was given can be looked at, too";
    EXPECT_EQ(field("pieces")->text(), "24");
}

TEST_F(Counter, ordersAgainWhatWasTakenAlone) {
    orderLantern();
    const auto first = text("toPay");
    press(Qt::Key_D, Qt::ControlModifier);
    field("pieces")->setFocus();
    type("36");
    press(Qt::Key_Return, Qt::ControlModifier);
    const auto id = m_window->presenter().quote().id;
    auto& session = m_window->presenter().session();
    ASSERT_TRUE(session.change([&](db::Book& book) { return book.takeChoice(id, 0); }));
    ASSERT_TRUE(m_window->presenter().open(id));
    EXPECT_EQ(text("toPay"), first) << "it is shown as it was taken";
    find<QPushButton>("give")->click();
    EXPECT_FALSE(m_window->presenter().isIssued());
    EXPECT_EQ(m_window->presenter().choices(), 1);
    EXPECT_EQ(text("toPay"), first);
}

TEST_F(Counter, aBadEntryOfAnotherChoiceKeepsTheQuoteFromBeingGiven) {
    orderLantern();
    const auto first = text("toPay");
    press(Qt::Key_D, Qt::ControlModifier);
    field("pieces")->setFocus();
    type("many");
    EXPECT_EQ(text("toPay"), "—");
    find<QPushButton>("choicesTab0")->click();
    EXPECT_EQ(text("toPay"), first) << "this one has its price";
    EXPECT_TRUE(find<QAbstractButton>("choice2")->accessibleName().endsWith("—"));
    EXPECT_FALSE(find<QPushButton>("give")->isEnabled());
    press(Qt::Key_Return, Qt::ControlModifier);
    EXPECT_FALSE(m_window->presenter().isIssued());
    find<QPushButton>("choicesTab1")->click();
    EXPECT_EQ(field("pieces")->text(), "many") << "what was typed stays";
    find<QPushButton>("choicesRemove")->click();
    EXPECT_EQ(m_window->presenter().choices(), 1);
    EXPECT_EQ(text("toPay"), first);
    EXPECT_TRUE(find<QPushButton>("give")->isEnabled());
}

TEST_F(Counter, offersAtMostFourChoices) {
    press(Qt::Key_D, Qt::ControlModifier);
    EXPECT_EQ(m_window->presenter().choices(), 1) << "of nothing there is no choice";
    orderLantern();
    for (int i = 0; i < 5; ++i) press(Qt::Key_D, Qt::ControlModifier);
    EXPECT_EQ(m_window->presenter().choices(), 4);
    EXPECT_FALSE(find<QPushButton>("addChoice")->isVisible());
    press(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(m_window->presenter().choices(), 3);
}

TEST_F(Counter, chargesWhatHasNoStones) {
    orderLantern();
    find<QPushButton>("addCharge")->click();
    EXPECT_EQ(focused(), "title");
    EXPECT_EQ(text("toPay"), "—") << "without a price";
    type("Postage");
    find<desk::TypedField>("chargeEach")->setFocus(Qt::TabFocusReason);
    type("6.50");
    // 163.20 of lanterns and 6.50: 169.70, and 7.25 % of it, 12.30325.
    EXPECT_EQ(text("toPay"), "182.00");
    EXPECT_FALSE(find<desk::TypedField>("width")->isVisible());
    EXPECT_TRUE(m_window->presenter().line().isCharge());
}

TEST_F(Counter, findsACustomerAndItsExemption) {
    orderLantern();
    field("customer")->setFocus();
    type("lark");
    press(Qt::Key_Return);
    EXPECT_TRUE(find<QCheckBox>("exempt")->isChecked());
    EXPECT_EQ(text("toPay"), "163.20");
}

TEST_F(Counter, aLongTaxLineDoesNotWidenTheSlip) {
    m_window->resize(1366, 768);
    orderLantern();
    const int before = find<>("give")->parentWidget()->width();
    field("customer")->setFocus();
    type("lark");
    press(Qt::Key_Return);
    EXPECT_EQ(find<>("give")->parentWidget()->width(), before);
}

/// The left of what differs in two pictures of a size.
int leftOfChange(const QImage& one, const QImage& other) {
    for (int x = 0; x < one.width(); ++x)
        for (int y = 0; y < one.height(); ++y)
            if (one.pixel(x, y) != other.pixel(x, y)) return x;
    return one.width();
}

// The name begins where the number has ended, however long that is.
TEST_F(Counter, manyPiecesDoNotOverprintTheNameOnTheSlip) {
    auto* slip = find<QAbstractScrollArea>("slipLines");
    orderLantern();
    for (const char* pieces : {"24", "1000", "100000"}) {
        field("pieces")->setFocus();
        field("pieces")->selectAll();
        type(pieces);
        ASSERT_NE(text("toPay"), "—") << text("whyNoPrice").toStdString();
        const auto named = slip->viewport()->grab().toImage();
        m_window->presenter().editLine([](catalogue::OrderLine& line) { line.title = "."; });
        const int begins = leftOfChange(named, slip->viewport()->grab().toImage());
        m_window->presenter().editLine([](catalogue::OrderLine& line) { line.title = "Lantern"; });
        const QFontMetrics strong(desk::textFont(desk::TextSize::Body, desk::Weight::Strong));
        const int ends = desk::scaled(24) + strong.horizontalAdvance(QLocale().toString(QByteArray(pieces).toInt()));
        EXPECT_GE(begins, ends + 4) << pieces;
    }
}

TEST_F(Counter, aGivenQuoteCannotBeChanged) {
    orderLantern();
    press(Qt::Key_Return, Qt::ControlModifier);
    ASSERT_TRUE(m_window->presenter().isIssued());
    EXPECT_FALSE(field("pieces")->isEnabled());
    m_window->presenter().editLine([](catalogue::OrderLine& line) { line.quantity = units::Count::of(1); });
    EXPECT_EQ(text("toPay"), "175.03");
}

TEST_F(Counter, everyInputHasANameForScreenReaders) {
    orderLantern();
    press(Qt::Key_F9);
    for (auto* widget : m_window->findChildren<QWidget*>()) {
        if (!widget->isVisible() || widget->focusPolicy() == Qt::NoFocus || !widget->isEnabled()) continue;
        if (QString::fromLatin1(widget->metaObject()->className()).startsWith(QLatin1String("QScroll"))) continue;
        auto* accessible = QAccessible::queryAccessibleInterface(widget);
        ASSERT_NE(accessible, nullptr);
        EXPECT_FALSE(accessible->text(QAccessible::Name).isEmpty())
            << widget->metaObject()->className() << ' ' << widget->objectName().toStdString();
    }
}

TEST_F(Counter, mnemonicsAreUnique) {
    orderLantern();
    std::map<QString, QString> seen;
    for (auto* label : m_window->counterPage().findChildren<QLabel*>()) {
        const auto mnemonic = QKeySequence::mnemonic(label->text()).toString();
        if (mnemonic.isEmpty() || !label->isVisible() || !label->buddy()) continue;
        EXPECT_TRUE(seen.emplace(mnemonic, label->text()).second)
            << label->text().toStdString() << " and " << seen[mnemonic].toStdString();
    }
    for (auto* button : m_window->counterPage().findChildren<QAbstractButton*>()) {
        const auto mnemonic = QKeySequence::mnemonic(button->text()).toString();
        if (mnemonic.isEmpty() || !button->isVisible()) continue;
        EXPECT_TRUE(seen.emplace(mnemonic, button->text()).second)
            << button->text().toStdString() << " and " << seen[mnemonic].toStdString();
    }
}

// The figures: tests/app/buying/buying_test.cpp. Of a design without kits nothing is said.
TEST_F(Counter, saysHowAKitDoesBesideBulkOnTheBack) {
    orderLantern();
    EXPECT_FALSE(find<>("kitsBesideBulk")->isVisible()) << "the customer may look";
    press(Qt::Key_F9);
    ASSERT_TRUE(test::waitFor([this] { return find<>("kitsBesideBulk")->isVisible(); }));
    EXPECT_EQ(text("kitsBesideBulk"),
              QString::fromUtf8("Lantern starter kit: 6 pieces for sure; Aquamarine SS10 runs out first. Each of 6, "
                                "shipping in: kit 9.89, bulk 13.80. Cheaper from the kit: 1–6, 8–13. Cheaper in bulk: "
                                "7, from 14 on."));
    press(Qt::Key_F9);
    EXPECT_FALSE(find<>("kitsBesideBulk")->isVisible());
}

} // namespace

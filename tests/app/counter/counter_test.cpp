// SPDX-License-Identifier: MIT
// The Counter driven as a person does it: by keys, off screen, on a fresh demo book.
#include "app/artwork/design_pictures.h"
#include "app/counter/line_pictures.h"
#include "app/desk/choice_field.h"
#include "app/desk/field_box.h"
#include "app/desk/fonts.h"
#include "app/paper/preview_dialog.h"
#include "tests/app/demo_window.h"

#include <QAbstractScrollArea>
#include <QAccessible>
#include <QCheckBox>
#include <QFile>

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

TEST_F(Counter, showsWhatADesignLooksLikeWhereItIsNamed) {
    orderLantern();
    const QSize room(30, 30);
    for (const auto& choice : find<desk::ChoiceField>("design")->choices()) {
        ASSERT_TRUE(choice.picture);
        EXPECT_FALSE(choice.picture(room, Qt::white, 1).isNull()) << choice.text.toStdString();
    }
    artwork::DesignPictures pictures(m_window->session());
    const auto ofLine = counter::linePictures(m_window->presenter(), pictures);
    EXPECT_FALSE(ofLine(0, room, Qt::white, 1).isNull());
    EXPECT_TRUE(ofLine(1, room, Qt::white, 1).isNull()) << "there is one line";
    m_window->presenter().editLine([](catalogue::OrderLine& line) { line.first().design = {}; });
    EXPECT_TRUE(ofLine(0, room, Qt::white, 1).isNull()) << "a one-off has no drawing";
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

TEST_F(Counter, showsTheDesignAsTheBookHasItNow) {
    orderLantern();
    auto& session = m_window->session();
    auto& presenter = m_window->presenter();
    ASSERT_NE(presenter.place(), nullptr);
    const auto design = presenter.place()->design;
    auto* picture = find("linePicture");
    EXPECT_FALSE(picture->isHidden());
    ASSERT_TRUE(session.change([&](db::Book& book) { return book.removeArtwork(design); }));
    EXPECT_TRUE(picture->isHidden());
    ASSERT_TRUE(session.undo());
    EXPECT_FALSE(picture->isHidden());
}

TEST_F(Counter, saysOfThePictureWhatIsSo) {
    orderLantern();
    auto& presenter = m_window->presenter();
    auto* picture = find("linePicture");
    auto* note = find<QLabel>("pictureOfOtherCounts");
    EXPECT_TRUE(note->isHidden());
    EXPECT_TRUE(picture->accessibleDescription().endsWith(", 3 1/2 in wide, 2 3/4 in high"))
        << picture->accessibleDescription().toStdString();
    presenter.editPlace([](catalogue::Placement& place) { place.width = place.width + place.width; });
    EXPECT_FALSE(picture->accessibleDescription().contains("wide")) << "it is not drawn as wide as that";
    presenter.editPlace([](catalogue::Placement& place) {
        place.stones.front().count = units::Count::of(place.stones.front().count.value() + 1);
    });
    EXPECT_FALSE(note->isHidden());
    EXPECT_EQ(note->text(), "The picture is of other counts than this line has.");
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
    EXPECT_EQ(focused(), "packPrice0");
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

// SPDX-License-Identifier: MIT
// Who an order is for, typed at the Counter as most customers walk in: new.
#include "app/desk/choice_field.h"
#include "tests/app/demo_window.h"

#include <QCheckBox>
#include <QClipboard>
#include <QDialog>
#include <QGuiApplication>
#include <QPushButton>

#include <algorithm>

using namespace sp;

namespace {

class CustomerAtTheCounter : public test::DemoWindow {
  protected:
    void typeCustomer(const char* name) {
        press(Qt::Key_M, Qt::AltModifier);
        ASSERT_EQ(focused(), "customer");
        type(name);
    }
    std::string customer() {
        const auto* known = m_window->presenter().customer();
        return known ? known->name : "";
    }
    bool isInBook(const std::string& name) {
        const auto& all = m_window->session().customers();
        return std::any_of(all.begin(), all.end(), [&](const auto& one) { return one.name == name; });
    }
};

TEST_F(CustomerAtTheCounter, isMadeByEnterOrTab) {
    for (const auto& [key, name] : {std::pair(Qt::Key_Return, "Odette Quill"), std::pair(Qt::Key_Tab, "Bram Quill")}) {
        press(Qt::Key_N, Qt::ControlModifier);
        orderLantern();
        typeCustomer(name);
        press(key);
        EXPECT_EQ(customer(), name);
        EXPECT_TRUE(isInBook(name));
        EXPECT_EQ(field("customer")->text().toStdString(), name);
        EXPECT_EQ(text("toPay"), "175.03");
        EXPECT_EQ(focused(), "reach") << "how to reach them is next";
        EXPECT_TRUE(text("newCustomer").startsWith("New, kept from now on."));
    }
}

TEST_F(CustomerAtTheCounter, isMadeWhenTheFieldIsLeftAnyOtherWay) {
    orderLantern();
    typeCustomer("Odette Quill");
    find<>("pieces")->setFocus(Qt::MouseFocusReason);
    EXPECT_EQ(customer(), "Odette Quill");
}

TEST_F(CustomerAtTheCounter, neverHidesThePriceWhileTyped) {
    orderLantern();
    press(Qt::Key_M, Qt::AltModifier);
    for (const QChar letter : QStringLiteral("Larkspur")) {
        type(QString(letter).toUtf8().constData());
        EXPECT_EQ(text("toPay"), "175.03") << "nobody's exemption counts yet";
        EXPECT_TRUE(find<QPushButton>("give")->isEnabled());
    }
    press(Qt::Key_Return);
    EXPECT_EQ(text("toPay"), "163.20") << "a known exemption moves it";
    press(Qt::Key_M, Qt::AltModifier);
    type("Z");
    EXPECT_EQ(text("toPay"), "175.03") << "and goes with the one who has it";
    EXPECT_FALSE(find<QCheckBox>("exempt")->isChecked());
}

TEST_F(CustomerAtTheCounter, typedCountsWhenTheQuoteIsGiven) {
    orderLantern();
    typeCustomer("Odette Quill");
    press(Qt::Key_Return, Qt::ControlModifier);
    ASSERT_TRUE(m_window->presenter().isIssued());
    EXPECT_EQ(m_window->presenter().quote().frozen->customer->name, "Odette Quill");
}

TEST_F(CustomerAtTheCounter, erasedIsNoLongerOnTheQuoteThatIsShown) {
    orderLantern();
    typeCustomer("Odette Quill");
    press(Qt::Key_Return, Qt::ControlModifier);
    const auto& shown = m_window->presenter();
    ASSERT_TRUE(shown.isIssued());
    ASSERT_EQ(shown.quote().result->sheet.customer.name, "Odette Quill");
    const auto customer = shown.quote().frozen->customer->id;
    auto& session = m_window->session();
    ASSERT_TRUE(
        session.change([&](db::Book& book) { return book.setStage(shown.quote().id, catalogue::Stage::Declined); }));
    ASSERT_TRUE(session.attempt([&](db::Book& book) { return book.eraseCustomer(customer); }));
    EXPECT_FALSE(shown.quote().frozen->customer.has_value());
    EXPECT_TRUE(shown.quote().result->sheet.customer.isErased);
    EXPECT_EQ(shown.customer(), nullptr);
    EXPECT_EQ(field("customer")->text().toStdString().find("Odette"), std::string::npos);
}

TEST_F(CustomerAtTheCounter, leftHalfTypedIsNobodyAndStays) {
    orderLantern();
    typeCustomer("lark");
    find<>("pieces")->setFocus(Qt::MouseFocusReason);
    EXPECT_EQ(field("customer")->text(), "lark");
    EXPECT_EQ(customer(), "");
    EXPECT_EQ(text("toPay"), "175.03");
    press(Qt::Key_D, Qt::ControlModifier); // loads all fields anew
    EXPECT_EQ(field("customer")->text(), "lark");
    press(Qt::Key_Return, Qt::ControlModifier);
    EXPECT_FALSE(m_window->presenter().isIssued()) << "it would be given to nobody";
    EXPECT_TRUE(m_window->counterPage().messages().sentence().contains("“lark” is nobody yet"))
        << m_window->counterPage().messages().sentence().toStdString();
}

TEST_F(CustomerAtTheCounter, isTakenBackByOneUndo) {
    orderLantern();
    typeCustomer("Odete Quill");
    press(Qt::Key_Return);
    ASSERT_TRUE(isInBook("Odete Quill"));
    press(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(customer(), "");
    EXPECT_FALSE(isInBook("Odete Quill"));
    EXPECT_EQ(field("customer")->text(), "");
    EXPECT_EQ(field("pieces")->text(), "24") << "nothing else is undone";
    press(Qt::Key_Z, Qt::ControlModifier | Qt::ShiftModifier);
    EXPECT_EQ(customer(), "Odete Quill");
}

TEST_F(CustomerAtTheCounter, isReachedByWhatIsTypedBesideAndFoundByIt) {
    orderLantern();
    typeCustomer("Odette Quill");
    press(Qt::Key_Return);
    type("555 0148, quill@example.org");
    press(Qt::Key_Return);
    const auto* known = m_window->presenter().customer();
    ASSERT_NE(known, nullptr);
    EXPECT_EQ(known->telephone, "555 0148");
    EXPECT_EQ(known->mail, "quill@example.org");
    for (const char* typed : {"555 01", "55501", "quill@", "odet"}) {
        press(Qt::Key_N, Qt::ControlModifier);
        typeCustomer(typed);
        press(Qt::Key_Return);
        EXPECT_EQ(customer(), "Odette Quill") << typed;
        EXPECT_EQ(field("reach")->text(), "555 0148, quill@example.org");
    }
}

TEST_F(CustomerAtTheCounter, calledByANumberOrAnAddressHasItAsThat) {
    typeCustomer("555 0199");
    press(Qt::Key_Return);
    EXPECT_EQ(m_window->presenter().customer()->telephone, "555 0199");
    press(Qt::Key_N, Qt::ControlModifier);
    typeCustomer("crow@example.org");
    press(Qt::Key_Return);
    EXPECT_EQ(m_window->presenter().customer()->mail, "crow@example.org");
}

TEST_F(CustomerAtTheCounter, likeAnotherIsPointedOutAndMadeOne) {
    catalogue::Customer venner;
    venner.name = "Marisol Venner";
    venner.certificate = catalogue::Certificate{"14-2201", "Ohio", *units::Date::parse("2026-01-01"), {}};
    ASSERT_TRUE(m_window->session().change([&](db::Book& book) { return book.save(venner); }));
    orderLantern();
    typeCustomer("Marisol Venn");
    press(Qt::Key_Return);
    EXPECT_EQ(customer(), "Marisol Venn") << "a name of its own, though another begins so";
    EXPECT_EQ(text("newCustomer"), "New, kept from now on. Or <a href=\"0\">Marisol Venner</a>?");
    EXPECT_EQ(text("toPay"), "175.03");
    Q_EMIT find<QLabel>("newCustomer")->linkActivated(QStringLiteral("0"));
    test::handleQueued();
    EXPECT_EQ(customer(), "Marisol Venner");
    EXPECT_EQ(field("customer")->text(), "Marisol Venner");
    EXPECT_FALSE(isInBook("Marisol Venn"));
    EXPECT_EQ(text("toPay"), "163.20") << "whose exemption is known";
    EXPECT_FALSE(find<>("newCustomer")->isVisible());
}

TEST_F(CustomerAtTheCounter, ofAnyNameAtAllIsKeptOrRefusedInOneSentence) {
    orderLantern();
    auto* typed = find<desk::ChoiceField>("customer");
    const auto enter = [&](const QString& name) {
        press(Qt::Key_M, Qt::AltModifier);
        QGuiApplication::clipboard()->setText(name);
        typed->paste();
        press(Qt::Key_Return);
    };
    for (const auto& name : {QStringLiteral("\u05D0\u05D5\u05D3\u05D8"), QString::fromUtf8("\xF0\x9F\x8C\x9F Bo")}) {
        enter(name);
        EXPECT_EQ(customer(), name.toStdString());
        EXPECT_EQ(text("toPay"), "175.03");
    }
    const QString endless(300, QLatin1Char('m'));
    enter(endless);
    EXPECT_EQ(typed->text(), endless) << "what was typed stays";
    EXPECT_EQ(customer(), "");
    EXPECT_EQ(text("toPay"), "175.03");
    EXPECT_FALSE(typed->shownProblem().isEmpty());
    press(Qt::Key_Return, Qt::ControlModifier);
    EXPECT_FALSE(m_window->presenter().isIssued());
}

TEST_F(CustomerAtTheCounter, isMergedAtCustomersToo) {
    catalogue::Customer twin;
    twin.name = "Larkspur Studio";
    twin.telephone = "555 0100";
    ASSERT_TRUE(m_window->session().change([&](db::Book& book) { return book.save(twin); }));
    m_window->goTo(program::PlaceId::Customers);
    find<>("findCustomer")->setFocus();
    type("larkspur stu");
    ASSERT_EQ(field("customerName")->text(), "Larkspur Studio");
    EXPECT_EQ(field("customerTelephone")->text(), "555 0100");
    find<>("sameCustomer")->setFocus();
    type("larkspur l");
    press(Qt::Key_Return);
    EXPECT_FALSE(isInBook("Larkspur Studio"));
    EXPECT_EQ(field("customerName")->text(), "Larkspur Lane Dance Studio");
    EXPECT_EQ(field("customerTelephone")->text(), "555 0100") << "taken over";
}

// A walk-in with a new name of six letters and a day of three: from an empty order to a given quote.
TEST_F(CustomerAtTheCounter, aWalkInTakesNoMoreThan25Keys) {
    m_keys = 0;
    type("lan");
    press(Qt::Key_Return);
    type("24");
    press(Qt::Key_M, Qt::AltModifier);
    type("Odetta");
    press(Qt::Key_Return);
    press(Qt::Key_B, Qt::AltModifier);
    type("fri");
    press(Qt::Key_Return, Qt::ControlModifier);
    press(Qt::Key_P, Qt::ControlModifier);
    EXPECT_LE(m_keys, 25);
    ASSERT_TRUE(m_window->presenter().isIssued());
    const auto& quote = m_window->presenter().quote();
    EXPECT_EQ(quote.frozen->customer->name, "Odetta");
    EXPECT_TRUE(quote.order.wantedBy.has_value());
    EXPECT_EQ(quote.order.lines.front().quantity, units::Count::of(24));
    EXPECT_NE(m_window->findChild<QDialog*>(QStringLiteral("preview")), nullptr);
}

} // namespace

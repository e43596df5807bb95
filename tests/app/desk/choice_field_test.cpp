// SPDX-License-Identifier: MIT
#include "app/desk/choice_field.h"
#include "app/desk/field_box.h"
#include "app/desk/value_fields.h"
#include "core/base/id.h"
#include "tests/app/desk/desk_fixture.h"

#include <QSignalSpy>
#include <QVBoxLayout>

namespace sp::desk::test {

namespace {

struct DesignForm {
    QWidget window;
    ChoiceField* field;
    CountField* next;

    DesignForm() {
        auto* column = new QVBoxLayout(&window);
        field = new ChoiceField(formatterOf("en_US"));
        field->setChoices({{1, qs("Lantern"), {}, {}}, {2, qs("Blue lark"), {}, {}}, {3, qs("Élan"), {}, {}}});
        next = new CountField(formatterOf("en_US"));
        column->addWidget(new FieldBox(qs("&Design"), field));
        column->addWidget(new FieldBox(qs("&Pieces"), next));
        enter(window, *field);
    }
};

QStringList textsOf(const std::vector<Choice>& choices) {
    QStringList texts;
    for (const Choice& choice : choices) texts << choice.text;
    return texts;
}

} // namespace

TEST(ChoiceField, putsTheBestMatchFirst) {
    const DesignForm form;
    EXPECT_EQ(textsOf(matching(form.field->choices(), qs("LA"))),
              QStringList({qs("Lantern"), qs("Blue lark"), qs("Élan")}));
    EXPECT_EQ(textsOf(matching(form.field->choices(), qs("elan"))), QStringList({qs("Élan")}));
    EXPECT_EQ(matching(form.field->choices(), {}).size(), 3U);
}

TEST(ChoiceField, takesTheMarkedRowWithEnterAndWithTab) {
    for (const auto key : {Qt::Key_Return, Qt::Key_Tab}) {
        DesignForm form;
        const QSignalSpy chosen(form.field, &ChoiceField::chosen);
        QTest::keyClicks(form.field, qs("lan"));
        EXPECT_TRUE(form.field->isOpen());
        QTest::keyClick(form.field, key);
        EXPECT_EQ(form.field->text(), qs("Lantern"));
        EXPECT_EQ(form.field->current(), QVariant(1));
        EXPECT_EQ(chosen.count(), 1);
        EXPECT_FALSE(form.field->isOpen());
        EXPECT_TRUE(form.next->hasFocus()) << "the key goes on its way";
    }
}

TEST(ChoiceField, movesDownTheList) {
    DesignForm form;
    QTest::keyClicks(form.field, qs("la"));
    QTest::keyClick(form.field, Qt::Key_Down);
    QTest::keyClick(form.field, Qt::Key_Return);
    EXPECT_EQ(form.field->current(), QVariant(2));
}

TEST(ChoiceField, closesOnEscapeAndKeepsTheText) {
    DesignForm form;
    QTest::keyClicks(form.field, qs("la"));
    QTest::keyClick(form.field, Qt::Key_Escape);
    EXPECT_FALSE(form.field->isOpen());
    EXPECT_EQ(form.field->text(), qs("la"));
}

TEST(ChoiceField, keepsTextThatNamesNothingAndSaysSo) {
    DesignForm form;
    QTest::keyClicks(form.field, qs("zzz"));
    QTest::keyClick(form.field, Qt::Key_Tab);
    EXPECT_EQ(form.field->text(), qs("zzz"));
    EXPECT_FALSE(form.field->current().isValid());
    EXPECT_NE(form.field->shownProblem(), QString());
}

TEST(ChoiceField, offersToAddANewName) {
    DesignForm form;
    form.field->setNewWording(qs("Add “%1”…"));
    const QSignalSpy added(form.field, &ChoiceField::typedNew);
    QTest::keyClicks(form.field, qs("Odette"));
    QTest::keyClick(form.field, Qt::Key_Down);
    QTest::keyClick(form.field, Qt::Key_Return);
    ASSERT_EQ(added.count(), 1);
    EXPECT_EQ(added.front().front().toString(), qs("Odette"));
}

TEST(ChoiceField, saysWhenItWasEmptied) {
    DesignForm form;
    form.field->setEmptyAllowed(true);
    form.field->setCurrent(1);
    const QSignalSpy chosen(form.field, &ChoiceField::chosen);
    form.field->selectAll();
    QTest::keyClick(form.field, Qt::Key_Delete);
    QTest::keyClick(form.field, Qt::Key_Tab);
    ASSERT_EQ(chosen.count(), 1);
    EXPECT_FALSE(chosen.front().front().isValid());
}

TEST(ChoiceField, takesTheBooksOwnKeys) {
    base::Id::Bytes bytes{};
    bytes.at(15) = 7;
    const QVariant id = QVariant::fromValue(base::Id::fromBytes(bytes));
    ChoiceField field(formatterOf("en_US"));
    field.setChoices({{QVariant::fromValue(base::Id()), qs("Jet"), {}, {}}, {id, qs("Topaz"), {}, {}}});
    field.setCurrent(id);
    EXPECT_EQ(field.text(), qs("Topaz"));
    EXPECT_EQ(field.current().value<base::Id>(), base::Id::fromBytes(bytes));
}

} // namespace sp::desk::test

// SPDX-License-Identifier: MIT
#include "app/desk/field_box.h"
#include "app/desk/long_text.h"
#include "app/desk/value_fields.h"
#include "app/desk/word_field.h"
#include "tests/app/desk/desk_fixture.h"

#include <QAccessible>
#include <QClipboard>
#include <QGuiApplication>
#include <QSignalSpy>
#include <QVBoxLayout>

#include <vector>

namespace sp::desk::test {

namespace {

/// A length field in its box with a neighbour to go to.
struct WidthForm {
    QWidget window;
    LengthField* field;
    FieldBox* box;
    CountField* next;

    explicit WidthForm(const Formatter& formatter = formatterOf("en_US")) {
        auto* column = new QVBoxLayout(&window);
        field = new LengthField(formatter);
        box = new FieldBox(qs("&Width"), field);
        next = new CountField(formatter);
        column->addWidget(box);
        column->addWidget(new FieldBox(qs("&Pieces"), next));
        enter(window, *field);
    }
};

} // namespace

struct EchoRow {
    const char* name;
    const char* typed;
    const char* echo;
};
void PrintTo(const EchoRow& row, std::ostream* out) { *out << row.name; }

class LengthEcho : public testing::TestWithParam<EchoRow> {};

// 1 in = 25.4 mm exactly (international yard and pound agreement of 1959).
TEST_P(LengthEcho, saysHowItWasReadWhenThatIsNotPlain) {
    LengthField field(formatterOf("en_US", units::LengthUnit::Millimetre));
    field.setRaw(qs(GetParam().typed));
    EXPECT_EQ(field.problem(), QString());
    EXPECT_EQ(field.echo(), qs(GetParam().echo));
}
INSTANTIATE_TEST_SUITE_P(Rows, LengthEcho,
                         testing::Values(EchoRow{"inches", "3 1/2 in", "= 88.9 mm"},
                                         EchoRow{"sum", "2*40mm + 8.9 mm", "= 88.9 mm"}, EchoRow{"bare", "88.9", ""},
                                         EchoRow{"ownUnit", "88.9 mm", ""}, EchoRow{"ownUnitTight", "88.9mm", ""}),
                         [](const auto& row) { return std::string(row.param.name); });

TEST(TypedField, altAndALetterThatIsNobodysTypesNothing) {
    QWidget window;
    WordField field(formatterOf("en_US"), {}, &window);
    LongText text(&window);
    enter(window, field);
    field.setRaw(qs("Lantern"));
    field.selectAll();
    QTest::keyClick(&field, Qt::Key_R, Qt::AltModifier);
    EXPECT_EQ(field.text(), qs("Lantern"));
    QTest::keyClick(&field, 'r');
    EXPECT_EQ(field.text(), qs("r"));
    text.setText(qs("Odette"));
    text.setFocus();
    QTest::keyClick(&text, Qt::Key_I, Qt::AltModifier);
    EXPECT_EQ(text.toPlainText(), qs("Odette"));
}

// Cells of a table and lines of a text come with tabs and line breaks; no record takes those.
TEST(TypedField, makesPastedTabsAndLineBreaksSpaces) {
    QWidget window;
    WordField field(formatterOf("en_US"), {}, &window);
    enter(window, field);
    const QSignalSpy edited(&field, &TypedField::edited);
    QGuiApplication::clipboard()->setText(qs("Name\tX\r\nand\vmore\u2028here"));
    field.paste();
    EXPECT_EQ(field.text(), qs("Name X and more here"));
    EXPECT_EQ(field.words(), "Name X and more here");
    EXPECT_EQ(field.cursorPosition(), field.text().size());
    EXPECT_EQ(edited.count(), 1);
    field.setCursorPosition(4);
    QGuiApplication::clipboard()->setText(qs("\ta"));
    field.paste();
    EXPECT_EQ(field.text(), qs("Name a X and more here"));
    EXPECT_EQ(field.cursorPosition(), 6);
}

TEST(LengthField, readsFractionsOfAnInch) {
    LengthField field(formatterOf("en_US"));
    field.setRaw(qs("3 1/2"));
    ASSERT_TRUE(field.value());
    EXPECT_EQ(*field.value(), units::Length::fromInch64ths(3 * 64 + 32));
    EXPECT_EQ(field.echo(), QString());
}

TEST(LengthField, keepsTheTextThatAlreadyReadsAsTheValue) {
    LengthField field(formatterOf("en_US"));
    field.setRaw(qs("88.9 mm"));
    field.setValue(units::Length::fromMicrometres(88'900));
    EXPECT_EQ(field.text(), qs("88.9 mm"));
    field.setValue(units::Length::fromInch64ths(64));
    EXPECT_EQ(field.text(), qs("1"));
}

TEST(TypedField, complainsOnlyOnceThePersonLeftAndThenAtEachKey) {
    WidthForm form;
    QTest::keyClicks(form.field, qs("3mm*2mm"));
    EXPECT_NE(form.field->problem(), QString());
    EXPECT_EQ(form.box->note(), QString());

    QTest::keyClick(form.field, Qt::Key_Tab);
    EXPECT_EQ(form.field->text(), qs("3mm*2mm")) << "a bad entry stays";
    EXPECT_EQ(form.box->note(), form.field->problem());
    EXPECT_EQ(form.field->accessibleDescription(), form.field->problem());
    EXPECT_FALSE(form.field->value());

    form.field->setFocus(Qt::TabFocusReason);
    QTest::keyClicks(form.field, qs("6"));
    EXPECT_EQ(form.box->note(), QString()) << "good again at the first good key";
}

TEST(TypedField, emitsEditedAtEachKeyAndCommittedOnceItIsDone) {
    WidthForm form;
    const QSignalSpy edited(form.field, &TypedField::edited);
    const QSignalSpy committed(form.field, &TypedField::committed);
    QTest::keyClicks(form.field, qs("12"));
    EXPECT_EQ(edited.count(), 2);
    EXPECT_EQ(committed.count(), 0);
    QTest::keyClick(form.field, Qt::Key_Return);
    EXPECT_EQ(committed.count(), 1) << "Enter commits, and losing the focus then has nothing new";
    EXPECT_TRUE(form.next->hasFocus());
}

TEST(TypedField, saysNothingNewWhenNothingWasTyped) {
    WidthForm form;
    const QSignalSpy committed(form.field, &TypedField::committed);
    QTest::keyClick(form.field, Qt::Key_Tab);
    EXPECT_EQ(committed.count(), 0);
    EXPECT_EQ(form.box->note(), QString()) << "passing an empty field is no mistake yet";
    form.field->showError();
    EXPECT_NE(form.box->note(), QString());
}

TEST(TypedField, selectsAllWhenItGetsTheFocus) {
    WidthForm form;
    form.next->setRaw(qs("24"));
    form.next->setFocus(Qt::TabFocusReason);
    EXPECT_EQ(form.next->selectedText(), qs("24"));
}

TEST(TypedField, typesTheLocalesMarkFromTheKeypad) {
    WidthForm form(formatterOf("de_DE", units::LengthUnit::Millimetre));
    QTest::keyClicks(form.field, qs("88"));
    QTest::keyClick(form.field, Qt::Key_Period, Qt::KeypadModifier);
    QTest::keyClicks(form.field, qs("9"));
    EXPECT_EQ(form.field->text(), qs("88,9"));
    ASSERT_TRUE(form.field->value());
    EXPECT_EQ(*form.field->value(), units::Length::fromMicrometres(88'900));
}

TEST(TypedField, leavesUndoToThePage) {
    WidthForm form;
    QTest::keyClicks(form.field, qs("12"));
    QTest::keyClick(form.field, Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(form.field->text(), qs("12"));
}

TEST(TypedField, showsThePagesOwnComplaintUntilTheNextKey) {
    WidthForm form;
    QTest::keyClicks(form.field, qs("1"));
    form.field->setOuterProblem(qs("This is wider than the sheet; choose another."));
    EXPECT_EQ(form.box->note(), qs("This is wider than the sheet; choose another."));
    QTest::keyClicks(form.field, qs("2"));
    EXPECT_EQ(form.box->note(), QString());
}

TEST(FieldBox, namesItsFieldByItsLabel) {
    WidthForm form;
    QAccessibleInterface* spoken = QAccessible::queryAccessibleInterface(form.field);
    ASSERT_NE(spoken, nullptr);
    EXPECT_EQ(spoken->text(QAccessible::Name), qs("Width"));
}

// A page makes its fields first and lays them out in boxes afterwards.
TEST(FieldBox, isNoStopOnTheWayFromFieldToField) {
    QWidget window;
    auto* column = new QVBoxLayout(&window);
    std::vector<LengthField*> fields;
    for (int i = 0; i < 3; ++i) fields.push_back(new LengthField(formatterOf("en_US"), &window));
    for (auto* field : fields) column->addWidget(new FieldBox(qs("Side"), field, &window));
    enter(window, *fields[0]);
    for (const int next : {1, 2, 0, 1}) {
        QTest::keyClick(QApplication::focusWidget(), Qt::Key_Tab);
        EXPECT_TRUE(fields[static_cast<std::size_t>(next)]->hasFocus()) << next;
    }
    for (const int before : {0, 2, 1}) {
        QTest::keyClick(QApplication::focusWidget(), Qt::Key_Backtab);
        EXPECT_TRUE(fields[static_cast<std::size_t>(before)]->hasFocus()) << before;
    }
}

TEST(FieldBox, takesNoRoomForANoteThatIsNotThere) {
    WidthForm form;
    const int quiet = form.box->sizeHint().height();
    form.box->setRemark(qs("per month"));
    EXPECT_GT(form.box->sizeHint().height(), quiet);
    form.box->setRemark({});
    EXPECT_EQ(form.box->sizeHint().height(), quiet);
}

TEST(CountField, countsAGrossAs144) { // common practice, no source
    CountField field(formatterOf("en_US"));
    field.setRaw(qs("10 gross"));
    ASSERT_TRUE(field.value());
    EXPECT_EQ(*field.value(), units::Count::of(1'440));
    EXPECT_EQ(field.echo(), qs("= 1,440"));
}

TEST(CountField, keepsToItsRange) {
    CountField field(formatterOf("en_US"));
    field.setRange(units::Count::of(1), units::Count::of(500));
    field.setRaw(qs("0"));
    EXPECT_EQ(field.value().error().code, base::Code::OutOfRange);
    EXPECT_EQ(field.problem(), qs("This must be from 1 to 500."));
    field.setRaw(qs("501"));
    EXPECT_EQ(field.problem(), qs("This must be from 1 to 500."));
    field.setRaw(qs("500"));
    EXPECT_EQ(field.problem(), QString());
}

TEST(ValueField, tellsBlankFromWrong) {
    MoneyField field(formatterOf("en_US"));
    EXPECT_EQ(field.value().error().code, base::Code::Missing);
    EXPECT_EQ(field.optionalValue().value(), std::nullopt);
    field.setRaw(qs("six"));
    EXPECT_EQ(field.value().error().code, base::Code::Invalid);
    EXPECT_FALSE(field.optionalValue());
}

TEST(MoneyField, reckonsExactly) {
    MoneyField field(formatterOf("en_US"));
    field.setRaw(qs("24*0.29"));
    ASSERT_TRUE(field.value());
    EXPECT_EQ(*field.value(), units::Money::fromMicros(6'960'000)); // 24 x 0.29 by hand
    EXPECT_EQ(field.echo(), qs("= 6.96"));
}

TEST(RateField, showsWhatItWasSetTo) {
    RateField field(formatterOf("de_DE"));
    field.setValue(units::Rate::fromPpm(88'750));
    EXPECT_EQ(field.text(), qs("8,875"));
    EXPECT_EQ(*field.value(), units::Rate::fromPpm(88'750));
}

TEST(DurationField, takesABareNumberAsMinutesAndSaysSo) {
    DurationField field(formatterOf("en_US"));
    field.setRaw(qs("90"));
    EXPECT_EQ(*field.value(), units::Duration::fromMinutes(90));
    EXPECT_EQ(field.echo(), qs("= 1 h 30 min"));
}

// F = 9 C / 5 + 32 (NIST SP 811, table B.8; from memory): 160 C is 320 F.
TEST(TemperatureField, takesTheOtherScale) {
    TemperatureField field(formatterOf("en_US"));
    field.setRaw(qs("160 C"));
    EXPECT_EQ(*field.value(), units::Temperature::fromMillifahrenheit(320'000));
    EXPECT_EQ(field.echo(), qs("= 320 °F"));
}

TEST(DateField, writesWhatItReads) {
    for (const char* locale : {"en_US", "en_GB", "de_DE", "fr_FR", "nl_NL"}) {
        DateField field(formatterOf(locale), someWednesday());
        for (int ahead = 0; ahead < 400; ahead += 13) {
            const units::Date day = someWednesday().plusDays(ahead);
            field.setRaw({});
            field.setValue(day);
            ASSERT_TRUE(field.value()) << locale << ' ' << field.text().toStdString();
            EXPECT_EQ(*field.value(), day) << locale << ' ' << field.text().toStdString();
        }
    }
}

} // namespace sp::desk::test

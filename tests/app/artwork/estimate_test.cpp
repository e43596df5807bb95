// SPDX-License-Identifier: MIT
// Estimating stones in the window, by keys, off screen, on a fresh demo book.
#include "app/artwork/estimate_page.h"
#include "app/artwork/letter_outlines.h"
#include "app/artwork/made_design.h"
#include "app/words/proof_sheet.h"
#include "tests/app/artwork/drop_window.h"

#include <QAccessible>
#include <QCheckBox>
#include <QLabel>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QRadioButton>

using namespace sp;

namespace {

constexpr auto kEstimateFont = "DejaVu Sans";
constexpr auto kBar = R"(<svg width="60mm" height="20mm" viewBox="0 0 60 20"><path d="M0,0H60V20H0Z"/></svg>)";

class Estimates : public test::DropWindow {
  protected:
    /// Opens the view by its shortcut, with a font that is surely there.
    void open() {
        QTest::keyClick(m_window.get(), Qt::Key_I, Qt::ControlModifier | Qt::ShiftModifier);
        ASSERT_TRUE(estimatePage().isVisible());
        find<desk::ChoiceField>("estimateFont")->setCurrent(QString::fromLatin1(kEstimateFont));
    }
    artwork::EstimatePage& estimatePage() { return *m_window->findChild<artwork::EstimatePage*>(); }
    artwork::EstimatePresenter& asked() { return estimatePage().presenter(); }
    QPlainTextEdit& text() { return *find<QPlainTextEdit>("estimateText"); }
    QString summary() { return find<QLabel>("estimateSummary")->text(); }
    QString heading() { return find<QLabel>("estimateCount")->text(); }
    const artwork::Estimate* answered() {
        EXPECT_TRUE(test::waitFor([this] { return !asked().isBusy(); }));
        return asked().estimate();
    }
    void type(const char* field, const char* words) {
        auto* edit = find<QLineEdit>(field);
        edit->setFocus();
        edit->selectAll();
        QTest::keyClicks(edit, QString::fromUtf8(words));
        QTest::keyClick(edit, Qt::Key_Return);
    }
    base::Result<artwork::Estimate> ofCore(const std::string& words, std::int64_t heightNm, std::int64_t pitchNm,
                                           artwork::StoneStyle style) {
        const auto shapes = artwork::outlinesOf({words, kEstimateFont, units::Length::fromNanometres(heightNm)});
        if (!shapes) return base::fail(shapes.error());
        return artwork::estimateStones(
            *shapes, {*asked().diameterOf(asked().usualStone()), units::Length::fromNanometres(pitchNm), {}, style},
            words);
    }
};

TEST_F(Estimates, typedTextGivesTheCountOfCoreAndItsPicture) {
    open();
    QTest::keyClicks(&text(), QStringLiteral("GO"));
    QTest::keyClick(&text(), Qt::Key_Return);
    QTest::keyClicks(&text(), QStringLiteral("TEAM"));
    ASSERT_NE(answered(), nullptr) << asked().problem().toStdString();
    // 2 in high, an eighth from stone to stone, as the fields say when nobody typed in them.
    const auto core = ofCore("GO\nTEAM", 50'800'000, 3'175'000, artwork::StoneStyle::Fill);
    ASSERT_TRUE(core) << describe(core.error());
    EXPECT_EQ(asked().estimate()->count, core->count);
    EXPECT_TRUE(heading().contains(QString::number(core->count.value()))) << heading().toStdString();
    EXPECT_TRUE(summary().contains(QString::number(core->least.value()))) << summary().toStdString();
    EXPECT_TRUE(summary().contains(QString::number(core->most.value()))) << summary().toStdString();
    EXPECT_TRUE(summary().contains(QStringLiteral("estimate"))) << summary().toStdString();
    const auto& view = estimatePage().view();
    EXPECT_EQ(view.picture().stones.size(), static_cast<std::size_t>(core->count.value()));
    EXPECT_TRUE(view.accessibleDescription().contains(heading()));

    QTest::keyClick(find<QRadioButton>("estimateOutline"), Qt::Key_Space);
    type("estimatePitch", "4mm");
    ASSERT_NE(answered(), nullptr);
    const auto along = ofCore("GO\nTEAM", 50'800'000, 4'000'000, artwork::StoneStyle::Outline);
    ASSERT_TRUE(along);
    EXPECT_EQ(asked().estimate()->count, along->count);
}

TEST_F(Estimates, aBadEntryBlanksTheResultAndStays) {
    open();
    QTest::keyClicks(&text(), QStringLiteral("GO"));
    ASSERT_NE(answered(), nullptr);
    for (const char* bad : {"0", "two", ""}) {
        auto* height = find<desk::LengthField>("estimateHeight");
        height->setFocus();
        height->selectAll();
        QTest::keyClick(height, Qt::Key_Delete);
        QTest::keyClicks(height, QString::fromLatin1(bad));
        EXPECT_EQ(asked().estimate(), nullptr) << bad;
        EXPECT_FALSE(asked().isBusy()) << bad;
        EXPECT_TRUE(estimatePage().view().picture().stones.empty()) << bad;
        EXPECT_EQ(summary(), QStringLiteral("There is no estimate until the height is right.")) << bad;
        EXPECT_FALSE(find<QPushButton>("estimatePrice")->isEnabled());
        EXPECT_FALSE(find<QPushButton>("estimateMake")->isEnabled());
        QTest::keyClick(height, Qt::Key_Return);
        EXPECT_EQ(height->text(), QString::fromLatin1(bad));
        EXPECT_FALSE(height->shownProblem().isEmpty() && *bad != '\0') << bad;
    }
    type("estimateHeight", "2");
    EXPECT_NE(answered(), nullptr);

    type("estimatePitch", "1mm"); // the stone is 2.8 mm across
    EXPECT_EQ(answered(), nullptr);
    EXPECT_TRUE(find<desk::LengthField>("estimatePitch")->shownProblem().contains(QStringLiteral("2.80 mm across")));
    type("estimatePitch", "");
    find<QLineEdit>("estimatePitch")->clear();
    type("estimatePitch", "3.5mm");
    EXPECT_NE(answered(), nullptr);
    EXPECT_TRUE(find<desk::LengthField>("estimatePitch")->shownProblem().isEmpty());
}

TEST_F(Estimates, nonsenseIsAnsweredInOneSentence) {
    open();
    struct Row {
        const char* name;
        QString words;
        const char* says;
    };
    for (const Row& row :
         {Row{"blank", QStringLiteral(" \n\t "), "Type what"}, Row{"lacking", QStringLiteral("A日B"), "日"},
          Row{"long", QString(10'000, QLatin1Char('a')), "2,000 letters"},
          Row{"involved", QString(1'900, QLatin1Char('g')), "part of it"}}) {
        text().setPlainText(row.words);
        EXPECT_EQ(answered(), nullptr) << row.name;
        EXPECT_TRUE(summary().contains(QLatin1String(row.says)) || summary().contains(QString::fromUtf8(row.says)))
            << row.name << ": " << summary().toStdString();
        EXPECT_LT(summary().size(), 200) << row.name;
        EXPECT_TRUE(estimatePage().view().picture().stones.empty()) << row.name;
    }
}

TEST_F(Estimates, isPricedByKeysAloneAndUndone) {
    const auto designs = m_window->session().designs();
    open();
    EXPECT_TRUE(text().hasFocus());
    QTest::keyClicks(&text(), QStringLiteral("Owl"));
    // From field to field with Tab alone, as far as the button that prices it.
    QStringList met;
    for (int i = 0; i < 30 && !find<QPushButton>("estimatePrice")->hasFocus(); ++i) {
        auto* at = QApplication::focusWidget();
        ASSERT_NE(at, nullptr);
        met << at->objectName();
        ASSERT_TRUE(answered() != nullptr) << asked().problem().toStdString();
        if (at->objectName() == QLatin1String("estimateStone")) {
            QTest::keyClicks(at, QStringLiteral("jet"));
            QTest::keyClick(at, Qt::Key_Return); // which goes on
            continue;
        }
        QTest::keyClick(at, Qt::Key_Tab);
    }
    ASSERT_TRUE(find<QPushButton>("estimatePrice")->hasFocus()) << met.join(QLatin1Char(' ')).toStdString();
    for (const char* field : {"estimateFont", "estimateHeight", "estimateStone", "estimatePitch", "estimateEdge",
                              "estimateFill", "estimateName"})
        EXPECT_TRUE(met.contains(QLatin1String(field))) << field << " in " << met.join(QLatin1Char(' ')).toStdString();
    ASSERT_NE(answered(), nullptr);
    const auto count = asked().estimate()->count;
    QTest::keyClick(find<QPushButton>("estimatePrice"), Qt::Key_Space);

    EXPECT_FALSE(estimatePage().isVisible());
    const auto& line = m_window->presenter().line();
    EXPECT_EQ(line.title, "Owl");
    ASSERT_EQ(line.first().stones.size(), 1U);
    EXPECT_EQ(line.first().stones[0].count, count);
    EXPECT_EQ(line.first().stones[0].material, stone("Jet SS10")->id);
    EXPECT_TRUE(m_window->presenter().priced());
    const auto note = find<QLabel>("benchNote")->text();
    EXPECT_TRUE(note.startsWith(QStringLiteral("Its stones are estimated, not counted."))) << note.toStdString();
    const auto kept = m_window->session().artwork(line.first().design);
    ASSERT_TRUE(kept.has_value());
    EXPECT_EQ(kept->thumbnail.compare(1, 3, "PNG"), 0);

    // The order's draft is one step, the design with its drawing another.
    m_window->session().undo();
    m_window->session().undo();
    EXPECT_EQ(m_window->session().designs(), designs);
}

TEST_F(Estimates, aDesignIsMadeWithoutAnOrder) {
    open();
    text().setPlainText(QStringLiteral("Otter"));
    ASSERT_NE(answered(), nullptr);
    const auto lines = m_window->presenter().order().lines.size();
    QTest::keyClick(find<QPushButton>("estimateMake"), Qt::Key_Space);
    EXPECT_FALSE(estimatePage().isVisible());
    EXPECT_EQ(m_window->presenter().order().lines.size(), lines);
    EXPECT_EQ(find<QLineEdit>("designName")->text(), QStringLiteral("Otter"));
    EXPECT_TRUE(find<QLineEdit>("designNote")->text().startsWith(QStringLiteral("Estimated")));
    const auto designs = m_window->session().designs().size();
    // The same again is offered under a free name.
    open();
    ASSERT_NE(answered(), nullptr);
    EXPECT_EQ(find<QLineEdit>("estimateName")->text(), QStringLiteral("Otter 2"));
    QTest::keyClick(&text(), Qt::Key_Escape);
    EXPECT_FALSE(estimatePage().isVisible());
    EXPECT_EQ(m_window->session().designs().size(), designs);
}

TEST_F(Estimates, aFileWithoutStonesIsOfferedToBeEstimated) {
    drop(write("bar.svg", kBar));
    EXPECT_FALSE(page().isVisible());
    QPushButton* offer = nullptr;
    for (auto* button : m_window->counterPage().messages().findChildren<QPushButton*>())
        if (button->text() == artwork::ArtworkPage::estimateWord()) offer = button;
    ASSERT_NE(offer, nullptr);
    QTest::keyClick(offer, Qt::Key_Space);
    ASSERT_TRUE(estimatePage().isVisible());
    ASSERT_TRUE(test::waitFor([this] { return asked().file() != nullptr && !asked().isBusy(); }));
    ASSERT_NE(asked().estimate(), nullptr) << summary().toStdString();
    EXPECT_NEAR(asked().estimate()->box.width(), 60, 0.01);
    EXPECT_EQ(find<QLineEdit>("estimateName")->text(), QStringLiteral("bar"));
    // Nothing to estimate either: no offer.
    QTest::keyClick(&estimatePage(), Qt::Key_Escape);
    drop(write("words.svg", "<svg width='9mm' viewBox='0 0 9 9'><text>hi</text></svg>"));
    for (auto* button : m_window->counterPage().messages().findChildren<QPushButton*>())
        EXPECT_FALSE(button->isVisible() && button->text() == artwork::ArtworkPage::estimateWord());
}

TEST_F(Estimates, aFileOfTwoColoursTakesAStoneForEach) {
    open();
    letGo(write("bar.svg", kBar));
    ASSERT_TRUE(test::waitFor([this] { return asked().file() && asked().estimate(); }));
    EXPECT_FALSE(find<QCheckBox>("estimateByColour")->isVisible()) << "it has one colour";
    letGo(write("bars.svg", R"(<svg width="60mm" height="50mm" viewBox="0 0 60 50"><path fill="red" d="M0,0H60V20H0Z"/>
<path fill="blue" d="M0,30H60V50H0Z"/></svg>)"));
    ASSERT_TRUE(test::waitFor([this] { return asked().file()->name == "bars.svg" && asked().estimate(); }));
    auto* each = find<QCheckBox>("estimateByColour");
    ASSERT_TRUE(each->isVisible());
    EXPECT_TRUE(find<>("estimateStone")->isVisible());
    QTest::keyClick(each, Qt::Key_Space);
    ASSERT_NE(answered(), nullptr) << asked().problem().toStdString();
    EXPECT_FALSE(find<>("estimateStone")->isVisible()) << "each has its own";
    EXPECT_FALSE(find<>("estimatePitch")->isVisible());
    type("colourStone0", "Siam");
    type("colourStone1", "Sapphire");
    ASSERT_NE(answered(), nullptr) << asked().problem().toStdString();
    const auto red = asked().tallyOf("#ff0000");
    ASSERT_TRUE(red);
    EXPECT_TRUE(find<QLabel>("colourTally0")->text().contains(QString::number(red->count.value())))
        << find<QLabel>("colourTally0")->text().toStdString();
    EXPECT_EQ(asked().estimate()->count, red->count + asked().tallyOf("#0000ff")->count);
    // A stone nobody has is said, and no figure of before stays.
    type("colourStone0", "no such stone");
    EXPECT_EQ(answered(), nullptr);
    EXPECT_EQ(summary(), QStringLiteral("There is no estimate until the stone of each colour is right."));
    QTest::keyClick(each, Qt::Key_Space);
    ASSERT_NE(answered(), nullptr);
    EXPECT_TRUE(find<>("estimateStone")->isVisible());
}

TEST_F(Estimates, aFileIsChosenOrDroppedAndTakesAHeight) {
    open();
    QTest::keyClick(find<QRadioButton>("estimateShape"), Qt::Key_Space);
    EXPECT_EQ(summary(), QStringLiteral("Choose a file with the shape to set with stones."));
    m_prompter.file = write("bar.svg", kBar);
    QTest::keyClick(find<QPushButton>("estimateChooseFile"), Qt::Key_Space);
    ASSERT_TRUE(test::waitFor([this] { return asked().estimate() != nullptr; }));
    type("estimateShapeHeight", "40mm");
    ASSERT_NE(answered(), nullptr);
    EXPECT_NEAR(asked().estimate()->box.width(), 120, 0.01);
    // Another one let go over the window while this is looked at, as large as it was drawn.
    letGo(write("block.svg", R"(<svg width="30mm" height="30mm" viewBox="0 0 30 30"><path d="M0,0H30V30H0Z"/></svg>)"));
    ASSERT_TRUE(test::waitFor([this] { return asked().file()->name == "block.svg" && asked().estimate(); }));
    EXPECT_TRUE(estimatePage().isVisible());
    EXPECT_NEAR(asked().estimate()->box.width(), 30, 0.01);
    QTest::keyClick(find<QPushButton>("estimatePrice"), Qt::Key_Space);
    const auto kept = m_window->session().artwork(m_window->presenter().line().first().design);
    ASSERT_TRUE(kept.has_value());
    EXPECT_EQ(kept->fileName, "block.svg");
    EXPECT_TRUE(words::isEstimated(*kept));
}

TEST_F(Estimates, isNoLongerOneOnceTheCutFileIsCounted) {
    open();
    text().setPlainText(QStringLiteral("O"));
    ASSERT_NE(answered(), nullptr);
    QTest::keyClick(find<QPushButton>("estimatePrice"), Qt::Key_Space);
    const auto design = m_window->presenter().line().first().design;
    drop(write("o.svg", R"(<svg width="9mm" viewBox="0 0 9 9"><circle cx="4" cy="4" r="1.4"/></svg>)"));
    ASSERT_TRUE(page().isVisible());
    EXPECT_TRUE(find<QLabel>("differences")->text().contains(QStringLiteral("no longer estimated")));
    QTest::keyClick(find<QPushButton>("useOpen"), Qt::Key_Space);
    EXPECT_EQ(m_window->session().design(design)->note, "");
    EXPECT_FALSE(words::isEstimated(*m_window->session().artwork(design)));
}

TEST_F(Estimates, everyEntryHasANameForWhoCannotSeeIt) {
    open();
    int entries = 0;
    for (auto* widget : estimatePage().findChildren<QWidget*>()) {
        if (widget->focusPolicy() == Qt::NoFocus || !widget->isVisible()) continue;
        auto* spoken = QAccessible::queryAccessibleInterface(widget);
        ASSERT_NE(spoken, nullptr);
        EXPECT_FALSE(widget->objectName().isEmpty()) << widget->metaObject()->className();
        EXPECT_FALSE(spoken->text(QAccessible::Name).isEmpty()) << widget->objectName().toStdString();
        ++entries;
    }
    EXPECT_GT(entries, 12);
}

} // namespace

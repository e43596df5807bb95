// SPDX-License-Identifier: MIT
// Counting a cut file in the window, by drop and keys, off screen, on a fresh demo book.
#include "app/artwork/letter_outlines.h"
#include "app/artwork/stone_grid.h"
#include "app/verbs/verbs.h"
#include "core/artwork/estimate.h"
#include "core/artwork/nearest_stone.h"
#include "tests/app/artwork/drop_window.h"
#include "tests/app/screen_reader.h"
#include "tests/support/described.h"
#include "tests/support/nine_forms.h"
#include "tests/support/seed.h"

#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QRadioButton>

#include <ostream>
#include <random>
#include <set>

using namespace sp;
using program::PlaceId;

namespace {

/// 6 aquamarine-like and 3 near-black holes for SS10 (2.8 mm), a frame around them, one hole drawn twice.
constexpr auto kPlate = R"(<svg width="60mm" height="40mm" viewBox="0 0 60 40"><g id="front" fill="#50c0d0">
<circle cx="10" cy="10" r="1.4"/><circle cx="20" cy="10" r="1.4"/><circle cx="30" cy="10" r="1.4"/>
<circle cx="10" cy="20" r="1.4"/><circle cx="20" cy="20" r="1.4"/><circle cx="30" cy="20" r="1.4"/>
<circle cx="30" cy="20" r="1.4"/></g><g fill="#202020"><circle cx="10" cy="30" r="1.4"/>
<circle cx="20" cy="30" r="1.4"/><circle cx="50" cy="30" r="1.4"/></g>
<rect x="1" y="1" width="58" height="38" fill="none" stroke="red"/></svg>)";

class CutFiles : public test::DropWindow {};

TEST_F(CutFiles, aDropIsCountedShownAndGoesOnTheSlipWithItsPrice) {
    drop(write("plate.svg", kPlate));
    ASSERT_TRUE(page().isVisible());
    EXPECT_EQ(presenter().counted().stones.size(), 9U);
    ASSERT_EQ(presenter().rows().size(), 2U);
    EXPECT_EQ(presenter().rows()[0].material, stone("Aquamarine SS10")->id);
    EXPECT_EQ(presenter().rows()[1].material, stone("Jet SS10")->id);
    EXPECT_EQ(presenter().counted().duplicates, 1U);
    EXPECT_EQ(presenter().leftOut().size(), 1U);

    QTest::keyClick(find<QPushButton>("useNew"), Qt::Key_Space);
    EXPECT_FALSE(page().isVisible());
    const auto& line = m_window->presenter().line();
    EXPECT_EQ(line.title, "plate");
    EXPECT_EQ(line.first().width.nanometres(), 42'926'000);  // 50 - 10 + 2.8 mm, to the next hundredth of an inch
    EXPECT_EQ(line.first().height.nanometres(), 22'860'000); // 30 - 10 + 2.8 mm
    ASSERT_EQ(line.first().stones.size(), 2U);
    EXPECT_EQ(line.first().stones[0].count.value(), 6);
    EXPECT_EQ(line.first().stones[1].count.value(), 3);
    EXPECT_TRUE(m_window->presenter().priced());

    const auto kept = m_window->session().artwork(line.first().design);
    ASSERT_TRUE(kept.has_value());
    EXPECT_EQ(kept->fileName, "plate.svg");
    EXPECT_EQ(kept->file, kPlate);
    EXPECT_EQ(kept->unit.nanometres(), 1'000'000);
    EXPECT_NE(kept->counts.find(R"("count":6)"), std::string::npos) << kept->counts;
    EXPECT_EQ(kept->thumbnail.compare(1, 3, "PNG"), 0);

    // The order's draft is one step, the design another.
    const auto designs = m_window->session().designs().size();
    m_window->session().undo();
    m_window->session().undo();
    EXPECT_EQ(m_window->session().designs().size(), designs - 1);
}

TEST_F(CutFiles, aRowAndAStoneCanBeGivenAnotherStone) {
    drop(write("plate.svg", kPlate));
    presenter().assign(1, stone("Amber SS10")->id);
    auto& view = page().view();
    view.setFocus();
    QTest::keyClick(&view, Qt::Key_PageDown);
    ASSERT_EQ(presenter().selected(), 0);
    EXPECT_TRUE(find<QLabel>("selectedStone")
                    ->text()
                    .startsWith(QStringLiteral("2.80 mm across · SS10 · like Aquamarine · layer front")))
        << find<QLabel>("selectedStone")->text().toStdString();
    EXPECT_TRUE(find<QLabel>("pictureNote")->text().startsWith("2.80 mm across"));
    presenter().assignStone(0, stone("Rose SS10")->id);
    const auto design = presenter().applied({});
    ASSERT_EQ(design.stones.size(), 3U);
    EXPECT_EQ(design.stones[0].count.value(), 5);
    // The rows say what the slip will say, and undo takes it back here before it touches the book.
    EXPECT_EQ(presenter().stonesOfRows(), (std::vector<std::int64_t>{5, 3}));
    EXPECT_EQ(find<QLabel>("setOneByOne")->text(), "Set one by one: 1 Rose SS10");
    QTest::keyClick(&view, Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(presenter().stonesOfRows(), (std::vector<std::int64_t>{6, 3}));
    EXPECT_FALSE(find<QLabel>("setOneByOne")->isVisible());
    QTest::keyClick(&view, Qt::Key_Z, Qt::ControlModifier);
    EXPECT_NE(presenter().rows()[1].material, stone("Amber SS10")->id);
    for (int times = 0; times < 2; ++times) QTest::keyClick(&view, Qt::Key_Z, Qt::ControlModifier | Qt::ShiftModifier);
    EXPECT_EQ(presenter().rows()[1].material, stone("Amber SS10")->id);
    EXPECT_EQ(presenter().stonesOfRows()[0], 5);
    presenter().assign(0, {}); // left out: the rose one stays, it was picked by itself
    EXPECT_EQ(presenter().stonesUsed().value(), 4);
    EXPECT_TRUE(presenter().whyNot().isEmpty());
    drop(write("other.svg", kPlate));
    EXPECT_TRUE(find<QLabel>("pictureNote")->text().startsWith("Drag")) << "it spoke of the file before";
}

TEST_F(CutFiles, aNameThatIsTakenIsSaidAtTheNameAndOnlyThere) {
    drop(write("plate.svg", kPlate));
    const auto designs = m_window->session().designs().size();
    auto* name = find<desk::WordField>("artworkName");
    name->setFocus();
    name->selectAll();
    QTest::keyClicks(name, QStringLiteral("Lantern"));
    find<QPushButton>("useNew")->click();
    EXPECT_EQ(m_window->session().designs().size(), designs);
    EXPECT_TRUE(name->problem().contains(QStringLiteral("Lantern"))) << name->problem().toStdString();
    EXPECT_EQ(name->text(), "Lantern");
    EXPECT_EQ(m_window->messages().sentence(), QString());
    EXPECT_EQ(page().messages().sentence(), QString());
    name->selectAll();
    QTest::keyClicks(name, QStringLiteral("Plate"));
    find<QPushButton>("useNew")->click();
    EXPECT_EQ(m_window->session().designs().size(), designs + 1);
}

TEST_F(CutFiles, aStoneChosenForAColourIsRememberedForTheNextFile) {
    drop(write("plate.svg", kPlate));
    presenter().assign(0, stone("Amber SS10")->id);
    QTest::keyClick(find<QPushButton>("useNew"), Qt::Key_Space);
    ASSERT_EQ(m_window->session().colourMaterials().size(), 1U);
    // Another window on the same book knows nothing but what the book remembers.
    artwork::ArtworkPresenter later(m_window->session());
    later.open(write("next.svg", kPlate));
    ASSERT_TRUE(test::waitFor([&] { return later.hasFile(); }));
    EXPECT_EQ(later.rows()[0].material, stone("Amber SS10")->id);
    EXPECT_EQ(later.rows()[1].material, stone("Jet SS10")->id);
}

TEST_F(CutFiles, anOpenDesignShowsWhatWouldChangeBeforeItDoes) {
    m_window->goTo(PlaceId::Designs);
    test::handleQueued();
    const auto before = m_window->session().designs().front();
    m_prompter.file = write("plate.svg", kPlate);
    QTest::keyClick(find<QPushButton>("countCutFile"), Qt::Key_Space);
    ASSERT_TRUE(test::waitFor([this] { return page().isVisible(); }));
    const auto words = find<QLabel>("differences")->text();
    EXPECT_TRUE(words.contains(QStringLiteral("would change"))) << words.toStdString();
    EXPECT_TRUE(words.contains(QStringLiteral("each"))) << words.toStdString();
    EXPECT_EQ(m_window->session().design(before.id)->stones, before.stones);
    QTest::keyClick(find<QPushButton>("useOpen"), Qt::Key_Space);
    EXPECT_NE(m_window->session().design(before.id)->stones, before.stones);
    EXPECT_EQ(m_window->session().design(before.id)->name, before.name);
    m_window->session().undo();
    EXPECT_EQ(*m_window->session().design(before.id), before);
}

// No code of a colour is told: not beside its stones, not in a warning, not in what undo would take back.
TEST_F(CutFiles, aColourIsToldByTheStoneThatItIsLike) {
    drop(write("plate.svg", kPlate));
    for (const auto* label : page().findChildren<QLabel*>())
        EXPECT_FALSE(label->text().contains(QLatin1Char('#'))) << label->text().toStdString();
    EXPECT_EQ(artwork::colourWords("#0f52ba"), "like Sapphire");
    EXPECT_EQ(artwork::colourWords("#000"), "like Jet");
    EXPECT_EQ(artwork::colourWords("gold"), "gold");
    EXPECT_EQ(artwork::colourWords("no colour of CSS"), "no colour of CSS");
}

TEST_F(CutFiles, aFileWithoutUnitAsksOnceHowLongItsUnitIs) {
    drop(write("bare.svg", R"(<svg><circle cx="20" cy="20" r="5.2913"/><circle cx="60" cy="20" r="5.2913"/></svg>)"));
    EXPECT_TRUE(presenter().asksScale());
    EXPECT_FALSE(presenter().whyNot().isEmpty());
    EXPECT_FALSE(find<QPushButton>("useNew")->isEnabled());
    auto* likeliest = find<QRadioButton>("scale0");
    EXPECT_TRUE(likeliest->text().startsWith(QStringLiteral("96 dpi: 2 stones"))) << likeliest->text().toStdString();
    QTest::keyClick(likeliest, Qt::Key_Space);
    EXPECT_FALSE(presenter().asksScale());
    EXPECT_TRUE(find<QPushButton>("useNew")->isEnabled());
}

TEST_F(CutFiles, aHoleAllowanceSizesTheStonesAnew) {
    drop(write("holes.svg", R"(<svg width="9mm" viewBox="0 0 9 9"><circle cx="4" cy="4" r="1.55"/></svg>)"));
    EXPECT_FALSE(presenter().whyNot().isEmpty()); // 3.1 mm is SS12, and the demo shop has none
    auto* allowance = find<QLineEdit>("holeAllowance");
    allowance->setFocus();
    QTest::keyClicks(allowance, QStringLiteral("0.3mm"));
    QTest::keyClick(allowance, Qt::Key_Return);
    ASSERT_EQ(presenter().rows().size(), 1U);
    ASSERT_TRUE(presenter().rows()[0].size);
    EXPECT_EQ(artwork::publishedStoneSizes()[*presenter().rows()[0].size].name, "SS10");
    EXPECT_TRUE(presenter().whyNot().isEmpty());
}

struct Bad {
    const char* name;
    std::string bytes;
    const char* says;
};

TEST_F(CutFiles, whatCannotBeCountedIsSaidInOneSentenceAndChangesNothing) {
    const auto designs = m_window->session().designs();
    const std::vector<Bad> cases{
        {"empty.svg", "", "empty"},
        {"gift.svg", "PK\3\4....", "zip"},
        {"photo.svg", "<svg width='9mm' viewBox='0 0 9 9'><image href='x.png'/></svg>", "no "},
        {"words.svg", "<svg width='9mm' viewBox='0 0 9 9'><text>hi</text></svg>", "text"},
        {"square.svg", "<svg width='9mm' viewBox='0 0 9 9'><rect width='3' height='4'/></svg>", "no "},
        {"far.svg", "<svg width='1mm' viewBox='0 0 1 1'><circle r='1.4'/><circle cx='1100000' r='1.4'/></svg>",
         "check the scale"}};
    for (const auto& bad : cases) {
        drop(write(bad.name, bad.bytes));
        EXPECT_FALSE(page().isVisible()) << bad.name;
        EXPECT_TRUE(counterSays().contains(QLatin1String(bad.name))) << bad.name << ": " << counterSays().toStdString();
        EXPECT_TRUE(counterSays().contains(QLatin1String(bad.says), Qt::CaseInsensitive))
            << counterSays().toStdString();
        EXPECT_EQ(m_window->session().designs(), designs);
    }
}

TEST_F(CutFiles, escapeLeavesEverythingAsItWas) {
    const auto designs = m_window->session().designs();
    drop(write("plate.svg", kPlate));
    QTest::keyClick(&page().view(), Qt::Key_Escape);
    EXPECT_FALSE(page().isVisible());
    EXPECT_EQ(m_window->session().designs(), designs);
}

// What was assigned is saved only when it is used: who goes elsewhere is told, and comes back to it.
TEST_F(CutFiles, leavingForAnotherPlaceKeepsWhatWasAssignedAndSaysSo) {
    drop(write("plate.svg", kPlate));
    m_window->goTo(PlaceId::Jobs);
    EXPECT_EQ(m_window->messages().sentence(), "") << "nothing was assigned";
    m_window->goTo(PlaceId::Counter);
    drop(write("plate.svg", kPlate));
    presenter().assign(1, stone("Rose SS10")->id);
    m_window->goTo(PlaceId::Jobs);
    EXPECT_FALSE(page().isVisible());
    EXPECT_EQ(m_window->messages().sentence(), "“plate.svg” is counted and in no design yet.");
    QTest::keyClick(m_window->messages().findChild<QPushButton*>(QStringLiteral("messageAction")), Qt::Key_Space);
    test::handleQueued();
    ASSERT_TRUE(page().isVisible());
    EXPECT_EQ(m_window->messages().sentence(), "");
    EXPECT_EQ(presenter().rows()[1].material, stone("Rose SS10")->id);
    QTest::keyClick(find<QPushButton>("useNew"), Qt::Key_Space);
    test::handleQueued();
    EXPECT_EQ(m_window->presenter().line().title, "plate") << "it was counted at the Counter";
    EXPECT_EQ(m_window->messages().sentence(), "") << "it is in a design now";
}

// Crimson is #dc143c in CSS; Rose is the nearest SS10 of the demo's shop and quite another colour.
TEST_F(CutFiles, aColourThatLooksDifferentIsSaid) {
    drop(write("crest.svg", R"(<svg width="60mm" height="40mm" viewBox="0 0 60 40">
<g fill="crimson"><circle cx="10" cy="10" r="1.4"/><circle cx="20" cy="10" r="1.4"/></g>
<g fill="#202020"><circle cx="10" cy="20" r="1.4"/></g></svg>)"));
    ASSERT_EQ(presenter().rows().size(), 2U);
    EXPECT_EQ(presenter().rows()[0].material, stone("Rose SS10")->id);
    EXPECT_TRUE(find<>("rowFar0")->isVisible());
    EXPECT_FALSE(find<>("rowFar1")->isVisible());
    EXPECT_TRUE(text("whyNot").contains(QStringLiteral("Rose SS10"))) << text("whyNot").toStdString();
}

TEST_F(CutFiles, thePickedStoneIsAnnounced) {
    drop(write("plate.svg", kPlate));
    QStringList heard;
    const test::ScreenReader reader([&](QAccessible::Event event, const QString&, const QObject& teller) {
        if (event == QAccessible::DescriptionChanged && &teller == &page().view())
            heard << page().view().accessibleDescription();
    });
    QTest::keyClick(&page().view(), Qt::Key_PageDown);
    ASSERT_EQ(heard.size(), 1);
    EXPECT_TRUE(heard[0].startsWith(QStringLiteral("Stone 1 of 9: 2.80 mm across"))) << heard[0].toStdString();
    EXPECT_TRUE(heard[0].endsWith(QStringLiteral("Aquamarine SS10"))) << heard[0].toStdString();
}

TEST_F(CutFiles, thePictureZoomsMovesAndPicks) {
    drop(write("plate.svg", kPlate));
    auto& view = page().view();
    const double fitted = view.pixelsPerMm();
    QTest::keyClick(&view, Qt::Key_Plus);
    EXPECT_GT(view.pixelsPerMm(), fitted);
    const auto before = view.toScreen({0, 0});
    QTest::keyClick(&view, Qt::Key_Right);
    EXPECT_LT(view.toScreen({0, 0}).x(), before.x());
    QTest::keyClick(&view, Qt::Key_Home);
    EXPECT_EQ(view.pixelsPerMm(), fitted);
    for (const int wanted : {0, 4, 8}) {
        const auto& centre = view.picture().stones[static_cast<std::size_t>(wanted)].centre;
        QTest::mouseClick(&view, Qt::LeftButton, Qt::NoModifier, view.toScreen(centre).toPoint());
        EXPECT_EQ(presenter().selected(), wanted);
    }
}

// The grid leaves out no stone that a plain look at all of them finds.
TEST(StoneGrid, findsWhatAPlainSearchFinds) {
    std::mt19937_64 random(test::printedSeed());
    std::uniform_real_distribution<double> place(-40, 90), size(1, 6);
    std::vector<artwork::Picture::SetStone> stones;
    for (int i = 0; i < 500; ++i) stones.push_back({{place(random), place(random)}, size(random)});
    const artwork::StoneGrid grid(stones);
    for (int round = 0; round < 200; ++round) {
        artwork::Box part;
        part.add(artwork::Point{place(random), place(random)});
        part.add(artwork::Point{place(random), place(random)});
        std::set<int> met;
        grid.visit(part, [&](int index) { EXPECT_TRUE(met.insert(index).second); });
        for (int i = 0; i < 500; ++i) {
            const auto& stone = stones[static_cast<std::size_t>(i)];
            const double r = stone.diameter / 2;
            const bool reaches = stone.centre.x + r >= part.left && stone.centre.x - r <= part.right &&
                                 stone.centre.y + r >= part.top && stone.centre.y - r <= part.bottom;
            EXPECT_TRUE(!reaches || met.count(i) == 1) << i;
        }
    }
}

// check: L*a*b* of the sRGB primaries and white under D65, as published in many tables of CIE 1976 (from memory, to
// the first decimal).
TEST(NearestStone, worksInTheCiesColours) {
    struct Row {
        std::uint32_t rgb;
        double lightness, a, b;
    };
    for (const Row& row : {Row{0xFF0000, 53.2, 80.1, 67.2}, Row{0x00FF00, 87.7, -86.2, 83.2},
                           Row{0x0000FF, 32.3, 79.2, -107.9}, Row{0xFFFFFF, 100, 0, 0}, Row{0, 0, 0, 0}}) {
        const auto lab = artwork::labOf(row.rgb);
        EXPECT_NEAR(lab.lightness, row.lightness, 0.1) << std::hex << row.rgb;
        EXPECT_NEAR(lab.a, row.a, 0.15) << std::hex << row.rgb;
        EXPECT_NEAR(lab.b, row.b, 0.15) << std::hex << row.rgb;
    }
}

verbs::Outcome estimate(std::vector<std::string> words) {
    words.insert(words.begin(), "estimate");
    for (const char* word : {"--stone", "SS10", "--pitch", "3.2mm", "--style", "fill", "--json"})
        words.emplace_back(word);
    test::HeldClock clock;
    return verbs::run(words, {clock.environment(), {}, artwork::outlinesOf});
}

constexpr auto kFont = "DejaVu Sans";

// check: DejaVu Sans 2.37 draws its capital I as one upright bar (fonts-dejavu-core; the font's own em of 2048 units:
// bar 201 wide, capitals 1493 high), so 50 mm of height make it 6.73 mm wide.
TEST(Lettering, hasTheFontsOwnMeasures) {
    const auto shapes = artwork::outlinesOf({"I", kFont, units::Length::fromNanometres(50'000'000)});
    ASSERT_TRUE(shapes) << describe(shapes.error());
    artwork::Box box;
    for (const auto& ring : shapes->front().rings)
        for (const auto& corner : ring) box.add(corner);
    EXPECT_NEAR(box.height(), 50, 0.1);
    EXPECT_NEAR(box.width(), 50.0 * 201 / 1493, 0.1);
}

// A mark that says how the letter before it is to look leaves nothing itself, and no font need have it.
TEST(Lettering, passesOverVariationSelectors) {
    const auto height = units::Length::fromNanometres(50'000'000);
    const auto plain = artwork::outlinesOf({"IO", kFont, height});
    const auto marked = artwork::outlinesOf({"I\uFE0FO", kFont, height});
    ASSERT_TRUE(plain);
    ASSERT_TRUE(marked) << describe(marked.error());
    EXPECT_EQ(marked->front().rings, plain->front().rings);
}

TEST(Lettering, isEstimatedByTheVerb) {
    const auto one = estimate({"--text", "GO", "--font", kFont, "--height", "50mm"});
    ASSERT_EQ(one.exit, 0) << one.err;
    EXPECT_NE(one.out.find("\"estimate\": true"), std::string::npos);
    const auto count = [](const verbs::Outcome& outcome) {
        return std::stoi(outcome.out.substr(outcome.out.find("\"count\": ") + 9));
    };
    const auto two = estimate({"--text", "GO\nGO", "--font", "dejavu sans", "--height", "50mm"});
    ASSERT_EQ(two.exit, 0) << two.err;
    EXPECT_NEAR(count(two), 2 * count(one), 0.1 * count(two)); // the rows fall a little otherwise
    const auto inset = estimate({"--text", "GO", "--font", kFont, "--height", "50mm", "--inset", "1mm"});
    ASSERT_EQ(inset.exit, 0) << inset.err;
    EXPECT_LT(count(inset), count(one));
}

// 155 in rows alone, 177 along the outline: what a filling must at least hold.
TEST(Lettering, isFilledWithNoFewerThanItsOutline) {
    const auto height = units::Length::fromNanometres(50'800'000);
    const auto shapes = artwork::outlinesOf({"GO", kFont, height});
    ASSERT_TRUE(shapes) << describe(shapes.error());
    const auto count = [&](artwork::StoneStyle style) {
        const auto estimate = artwork::estimateStones(
            *shapes, {units::Length::fromMicrometres(2800), units::Length::fromMicrometres(3100), {}, style}, "GO");
        EXPECT_TRUE(estimate) << describe(estimate.error());
        return estimate ? estimate->count.value() : 0;
    };
    EXPECT_GE(count(artwork::StoneStyle::Outline), 170);
    EXPECT_GE(count(artwork::StoneStyle::Fill), count(artwork::StoneStyle::Outline));
}

TEST(Lettering, refusesByName) {
    const auto font = estimate({"--text", "GO", "--font", "Nowhere Grotesk", "--height", "50mm"});
    EXPECT_EQ(font.exit, 1);
    EXPECT_NE(font.err.find("Nowhere Grotesk"), std::string::npos);
    const auto letters =
        estimate({"--text", "A日", "--font", kFont, "--height", "50mm"}); // no box for a letter it lacks
    EXPECT_EQ(letters.exit, 1);
    EXPECT_NE(letters.err.find("日"), std::string::npos) << letters.err;
    EXPECT_EQ(estimate({"--text", "   ", "--font", kFont, "--height", "50mm"}).exit, 1);
    EXPECT_EQ(estimate({"--text", "GO", "--font", kFont, "--height", "0mm"}).exit, 1);
    EXPECT_EQ(estimate({"--text", "GO", "--height", "5mm"}).exit, 1);
    EXPECT_EQ(estimate({"--text", "GO", "plate.svg"}).exit, 2);
    EXPECT_EQ(estimate({}).exit, 2);
}

} // namespace

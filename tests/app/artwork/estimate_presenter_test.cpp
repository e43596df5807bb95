// SPDX-License-Identifier: MIT
// What an estimate decides, without a window: whose answer is shown, what is refused, what a design keeps of it.
#include "app/artwork/estimate_presenter.h"
#include "app/artwork/made_design.h"
#include "app/demo/demo_book.h"
#include "app/words/proof_sheet.h"
#include "app/words/words.h"
#include "core/artwork/artwork_file.h"
#include "core/artwork/estimate_by_colour.h"
#include "tests/support/held_clock.h"
#include "tests/support/temp_folder.h"
#include "tests/support/wait_for.h"

#include <QSemaphore>
#include <QSignalSpy>
#include <QTest>
#include <gtest/gtest.h>

#include <cmath>
#include <fstream>
#include <map>

using namespace sp;

namespace {

using artwork::EstimateInputs;
using artwork::EstimatePresenter;
using artwork::Shape;

units::Length mm(double millimetres) { return units::Length::fromNanometres(std::llround(millimetres * 1e6)); }

/// Lettering without a font: a bar as many millimetres wide as the text has letters, ten times over, and as high as
/// asked. The text "wait" keeps its thread until it is let go.
class Bars {
  public:
    artwork::OutlineMaker maker() {
        return [this](const artwork::LetteringOrder& order) -> base::Result<std::vector<Shape>> {
            if (order.text == "wait") {
                m_begun.release();
                m_letGo.acquire();
            }
            const double width = 10 * static_cast<double>(order.text.size());
            const double height = order.height.millimetres();
            return std::vector<Shape>{{{{{0, 0}, {width, 0}, {width, height}, {0, height}}}, false}};
        };
    }
    void untilBegun() { m_begun.acquire(); }
    void letGo() { m_letGo.release(); }

  private:
    QSemaphore m_begun;
    QSemaphore m_letGo;
};

class Estimating : public testing::Test {
  protected:
    Estimating()
        : m_session(*demo::createDemoBook(m_folder.path() / "demo.jobbook", m_clock.environment()))
        , m_presenter(m_session, m_bars.maker()) {}

    EstimateInputs inputs(const char* text) {
        EstimateInputs inputs;
        inputs.text = QString::fromUtf8(text);
        inputs.font = QStringLiteral("any");
        inputs.height = mm(20);
        inputs.stone = m_presenter.usualStone();
        inputs.pitch = mm(3.2);
        return inputs;
    }
    const artwork::Estimate* answered() {
        EXPECT_TRUE(test::waitFor([this] { return !m_presenter.isBusy(); }));
        return m_presenter.estimate();
    }
    QString write(const char* name, const std::string& text) {
        const auto file = m_folder.path() / name;
        std::ofstream(file, std::ios::binary) << text;
        return QString::fromStdString(file.string());
    }
    bool read(const QString& file) {
        QSignalSpy done(&m_presenter, &EstimatePresenter::fileRead);
        QSignalSpy refused(&m_presenter, &EstimatePresenter::fileRefused);
        m_presenter.readFile(file);
        EXPECT_TRUE(test::waitFor([&] { return done.count() + refused.count() > 0; }));
        if (refused.count() > 0) m_refusal = refused.front().front().toString();
        return done.count() > 0;
    }

    test::HeldClock m_clock;
    test::TempFolder m_folder;
    Bars m_bars;
    session::BookSession m_session;
    EstimatePresenter m_presenter;
    QString m_refusal;
};

TEST_F(Estimating, neverShowsTheAnswerOfEarlierEntries) {
    std::vector<double> widths; // of every estimate there was
    QObject::connect(&m_presenter, &EstimatePresenter::changed, &m_presenter, [&] {
        if (m_presenter.estimate()) widths.push_back(m_presenter.estimate()->box.width());
    });
    m_presenter.ask(inputs("wait"));
    m_bars.untilBegun();
    m_presenter.ask(inputs("dropped"));
    m_presenter.ask(inputs("ab"));
    EXPECT_EQ(m_presenter.estimate(), nullptr);
    EXPECT_TRUE(m_presenter.problem().isEmpty());
    m_bars.letGo();
    ASSERT_NE(answered(), nullptr);
    ASSERT_EQ(widths.size(), 1U);
    EXPECT_NEAR(widths.front(), 20, 0.01);
}

TEST_F(Estimating, nothingArrivesOnceTheEntriesAreNoLongerRight) {
    m_presenter.ask(inputs("ab"));
    ASSERT_NE(answered(), nullptr);
    m_presenter.ask(inputs("wait"));
    EXPECT_EQ(m_presenter.estimate(), nullptr);
    m_bars.untilBegun();
    const auto sentence = QStringLiteral("There is no estimate until the height is right.");
    m_presenter.blank(sentence);
    EXPECT_EQ(m_presenter.estimate(), nullptr);
    EXPECT_EQ(m_presenter.problem(), sentence);
    std::vector<double> widths;
    QObject::connect(&m_presenter, &EstimatePresenter::changed, &m_presenter, [&] {
        if (m_presenter.estimate()) widths.push_back(m_presenter.estimate()->box.width());
    });
    m_bars.letGo();
    // Asked in the same thread after the one nobody wants any more, and so answered after it.
    m_presenter.ask(inputs("abc"));
    ASSERT_NE(answered(), nullptr);
    ASSERT_EQ(widths.size(), 1U);
    EXPECT_NEAR(widths.front(), 30, 0.01);
}

TEST_F(Estimating, saysInOneSentenceWhatIsWanted) {
    struct Row {
        const char* name;
        EstimateInputs asked;
        const char* says;
    };
    auto noText = inputs("  \n ");
    auto noFont = inputs("ab");
    noFont.font.clear();
    auto noStone = inputs("ab");
    noStone.stone = {};
    auto noFile = inputs("ab");
    noFile.isFile = true;
    auto tightPitch = inputs("ab");
    tightPitch.pitch = mm(1);
    auto thin = inputs("ab");
    thin.height = mm(2);
    auto vast = inputs("ab");
    vast.text = QString(1900, QLatin1Char('a'));
    vast.height = mm(1000);
    for (const Row& row : {Row{"noText", noText, "Type what"}, Row{"noFont", noFont, "Choose a font"},
                           Row{"noStone", noStone, "Choose a stone"}, Row{"noFile", noFile, "Choose a file"},
                           Row{"tightPitch", tightPitch, "pitch"}, Row{"thin", thin, "wide enough"},
                           Row{"vast", vast, "estimate a part of it"}}) {
        m_presenter.ask(row.asked);
        EXPECT_EQ(answered(), nullptr) << row.name;
        const auto sentence = m_presenter.problem();
        EXPECT_TRUE(sentence.contains(QLatin1String(row.says))) << row.name << ": " << sentence.toStdString();
        EXPECT_LT(sentence.size(), 200) << row.name;
        EXPECT_FALSE(m_presenter.makeDesign(QStringLiteral("x"), {}));
    }
}

TEST_F(Estimating, theUsualPitchLeavesAWallAndIsAMarkOfTheShopsRule) {
    const auto stone = m_presenter.usualStone();
    const auto diameter = m_presenter.diameterOf(stone);
    ASSERT_TRUE(diameter);
    const auto inches = m_presenter.usualPitch(stone);
    ASSERT_TRUE(inches);
    EXPECT_EQ(inches->nanometres() % 396'875, 0);
    auto shop = m_session.shop();
    shop.lengthUnit = units::LengthUnit::Millimetre;
    ASSERT_TRUE(m_session.change([&](db::Book& book) { return book.save(shop); }));
    const auto metric = m_presenter.usualPitch(stone);
    ASSERT_TRUE(metric);
    EXPECT_EQ(metric->nanometres() % 100'000, 0);
    for (const auto pitch : {*inches, *metric}) {
        EXPECT_GT(pitch, *diameter + mm(0.15));
        EXPECT_LT(pitch, *diameter + mm(0.65));
    }
    EXPECT_FALSE(m_presenter.usualPitch(base::Id{}));
}

/// Two bars, red and blue, the red one with a white window in it.
constexpr auto kTwoBars = R"(<svg width="60mm" height="50mm" viewBox="0 0 60 50"><path fill="red" d="M0,0H60V20H0Z"/>
<path fill="white" d="M20,5H40V15H20Z"/><path fill="blue" d="M0,30H60V50H0Z"/></svg>)";

TEST_F(Estimating, eachColourIsSetInAStoneOfItsOwn) {
    ASSERT_TRUE(read(write("bars.svg", kTwoBars)));
    ASSERT_EQ(m_presenter.colours(), (std::vector<std::string>{"#ff0000", "#ffffff", "#0000ff"}));
    EXPECT_TRUE(m_presenter.likelyStone("#ffffff").isNone()) << "the paper, where there are other colours";
    const auto idOf = [&](const char* name) {
        for (const auto& material : m_session.materials())
            if (material.name == name) return material.id;
        return base::Id{};
    };
    const auto red = idOf("Siam SS16");
    const auto blue = idOf("Sapphire SS6");
    auto asked = inputs("");
    asked.isFile = true;
    asked.height.reset();
    asked.colours = {{"#ff0000", red}, {"#ffffff", {}}, {"#0000ff", blue}};
    m_presenter.ask(asked);
    ASSERT_NE(answered(), nullptr) << m_presenter.problem().toStdString();

    const auto requestOf = [&](const base::Id& stone) {
        return artwork::EstimateRequest{
            *m_presenter.diameterOf(stone), *m_presenter.usualPitch(stone), {}, artwork::StoneStyle::Fill, {}};
    };
    const artwork::ColourRequest requests[] = {
        {"#ff0000", requestOf(red)}, {"#ffffff", std::nullopt}, {"#0000ff", requestOf(blue)}};
    const auto core = artwork::estimateByColour(m_presenter.file()->drawing, 1, requests, true, "bars.svg");
    ASSERT_TRUE(core.has_value());
    std::map<std::string, units::Count> counts;
    for (const auto& one : *core)
        if (!one.isFree) counts[one.colour] = one.estimate.count;
    ASSERT_EQ(counts.size(), 2U);
    ASSERT_GT(counts["#ff0000"].value(), 20);
    EXPECT_EQ(m_presenter.tallyOf("#ff0000")->count, counts["#ff0000"]);
    EXPECT_EQ(m_presenter.tallyOf("#0000ff")->count, counts["#0000ff"]);
    EXPECT_FALSE(m_presenter.tallyOf("#ffffff")) << "left free";
    const auto* whole = m_presenter.estimate();
    EXPECT_EQ(whole->count, counts["#ff0000"] + counts["#0000ff"]);
    EXPECT_NEAR(whole->box.height(), 50, 0.01);
    EXPECT_FALSE(whole->range.empty());
    EXPECT_EQ(m_presenter.picture().stones.size(), static_cast<std::size_t>(whole->count.value()));

    const auto least = QString::number(whole->least.value());
    const auto made = m_presenter.makeDesign(QStringLiteral("Bars"), {});
    ASSERT_TRUE(made.has_value());
    const auto* design = m_session.design(*made);
    ASSERT_EQ(design->stones.size(), 2U);
    EXPECT_EQ(design->stones[0], (catalogue::StoneCount{red, counts["#ff0000"]}));
    EXPECT_EQ(design->stones[1], (catalogue::StoneCount{blue, counts["#0000ff"]}));
    EXPECT_TRUE(QString::fromStdString(design->note).contains(least)) << design->note;
}

TEST_F(Estimating, twoColoursInOneStoneAreOneOfTheDesigns) {
    ASSERT_TRUE(read(write("bars.svg", kTwoBars)));
    auto asked = inputs("");
    asked.isFile = true;
    asked.height.reset();
    asked.colours = {{"#ff0000", asked.stone}, {"#ffffff", {}}, {"#0000ff", asked.stone}};
    m_presenter.ask(asked);
    ASSERT_NE(answered(), nullptr);
    const auto count = m_presenter.estimate()->count;
    const auto made = m_presenter.makeDesign(QStringLiteral("Bars"), {});
    ASSERT_TRUE(made.has_value());
    EXPECT_EQ(m_session.design(*made)->stones, (std::vector<catalogue::StoneCount>{{asked.stone, count}}));
    for (auto& one : asked.colours) one.stone = {};
    m_presenter.ask(asked);
    EXPECT_EQ(answered(), nullptr);
    EXPECT_FALSE(m_presenter.problem().isEmpty()) << "nothing is left to set";
}

TEST_F(Estimating, aFileIsTakenAsDrawnOrAsHighAsTyped) {
    ASSERT_TRUE(read(
        write("bar.svg", R"(<svg width="60mm" height="20mm" viewBox="0 0 60 20"><path d="M0,0H60V20H0Z"/></svg>)")));
    EXPECT_EQ(m_presenter.drawnHeight(), mm(20));
    auto asked = inputs("");
    asked.isFile = true;
    asked.height.reset();
    m_presenter.ask(asked);
    ASSERT_NE(answered(), nullptr);
    EXPECT_NEAR(m_presenter.estimate()->box.width(), 60, 0.01);
    const auto bar = std::vector<Shape>{{{{{0, 0}, {60, 0}, {60, 20}, {0, 20}}}, false}};
    const auto core = artwork::estimateStones(
        bar, {*m_presenter.diameterOf(asked.stone), mm(3.2), {}, artwork::StoneStyle::Fill}, "bar");
    EXPECT_EQ(m_presenter.estimate()->count, core->count);
    asked.height = mm(40);
    m_presenter.ask(asked);
    ASSERT_NE(answered(), nullptr);
    EXPECT_NEAR(m_presenter.estimate()->box.width(), 120, 0.01);
    EXPECT_EQ(m_presenter.freeName(), QStringLiteral("bar"));
}

TEST_F(Estimating, aFileWithoutUnitMustBeToldItsHeight) {
    ASSERT_TRUE(read(write("bare.svg", R"(<svg><path d="M0,0H60V20H0Z"/></svg>)")));
    EXPECT_FALSE(m_presenter.drawnHeight());
    auto asked = inputs("");
    asked.isFile = true;
    asked.height.reset();
    m_presenter.ask(asked);
    EXPECT_EQ(m_presenter.problem(),
              QStringLiteral("bare.svg does not say how large it is; type how high it shall be."));
    asked.height = mm(20);
    m_presenter.ask(asked);
    ASSERT_NE(answered(), nullptr);
    EXPECT_NEAR(m_presenter.estimate()->box.width(), 60, 0.01);
}

TEST_F(Estimating, aFileThatCannotBeReadLeavesTheOneBefore) {
    ASSERT_TRUE(read(write("bar.svg", R"(<svg width="60mm" viewBox="0 0 60 20"><path d="M0,0H60V20H0Z"/></svg>)")));
    EXPECT_FALSE(
        read(write("line.svg", R"(<svg width="60mm" viewBox="0 0 60 20"><path fill="none" d="M0,0H60"/></svg>)")));
    EXPECT_TRUE(m_refusal.contains(QLatin1String("no closed or filled shape"))) << m_refusal.toStdString();
    EXPECT_FALSE(read(QStringLiteral("/nowhere/at/all.svg")));
    EXPECT_EQ(m_presenter.file()->name, "bar.svg");
}

TEST_F(Estimating, aDesignKeepsWhatItWasEstimatedFrom) {
    m_presenter.ask(inputs("abcd"));
    ASSERT_NE(answered(), nullptr);
    const auto estimate = *m_presenter.estimate();
    const auto before = m_session.designs();
    const auto made = m_presenter.makeDesign(QStringLiteral(" Bars "), QByteArray("picture"));
    ASSERT_TRUE(made) << describe(made.error());
    const auto* design = m_session.design(*made);
    ASSERT_NE(design, nullptr);
    EXPECT_EQ(design->name, "Bars");
    ASSERT_EQ(design->stones.size(), 1U);
    EXPECT_EQ(design->stones[0].count, estimate.count);
    EXPECT_GE(design->width, mm(40));
    EXPECT_LT(design->width, mm(40.3));
    EXPECT_TRUE(artwork::isEstimateNote(design->note)) << design->note;
    EXPECT_NE(design->note.find(std::to_string(estimate.least.value())), std::string::npos) << design->note;
    const auto drawing = m_session.artwork(*made);
    ASSERT_TRUE(drawing);
    EXPECT_TRUE(words::isEstimated(*drawing));
    EXPECT_EQ(drawing->thumbnail, "picture");
    // What is kept gives the same estimate again.
    const auto again = artwork::readArtwork(drawing->file, drawing->fileName);
    ASSERT_TRUE(again);
    const auto shapes = artwork::shapesOf(*again, *again->millimetresPerUnit);
    const auto core = artwork::estimateStones(
        shapes, {*m_presenter.diameterOf(m_presenter.usualStone()), mm(3.2), {}, artwork::StoneStyle::Fill}, "kept");
    ASSERT_TRUE(core);
    EXPECT_EQ(core->count, estimate.count);
    // One step takes design and drawing back.
    m_session.undo();
    EXPECT_EQ(m_session.designs(), before);
    m_session.redo();
    EXPECT_TRUE(m_session.artwork(*made).has_value());
}

TEST_F(Estimating, anOutlineInAnotherStoneIsAStoneOfTheDesign) {
    auto asked = inputs("abcd");
    asked.style = artwork::StoneStyle::Both;
    for (const auto& material : m_session.materials())
        if (m_presenter.diameterOf(material.id) &&
            m_presenter.diameterOf(material.id) != m_presenter.diameterOf(asked.stone))
            asked.outlineStone = material.id;
    ASSERT_FALSE(asked.outlineStone.isNone());
    m_presenter.ask(asked);
    ASSERT_NE(answered(), nullptr);
    const auto estimate = *m_presenter.estimate();
    ASSERT_GT(estimate.outline.count.value(), 0);
    const auto picture = m_presenter.picture();
    ASSERT_EQ(picture.stones.size(), static_cast<std::size_t>(estimate.count.value()));
    EXPECT_EQ(picture.stones.front().diameter, m_presenter.diameterOf(asked.outlineStone)->millimetres());
    EXPECT_EQ(picture.stones.back().diameter, m_presenter.diameterOf(asked.stone)->millimetres());
    const auto made = m_presenter.makeDesign(QStringLiteral("Two stones"), QByteArray("picture"));
    ASSERT_TRUE(made) << describe(made.error());
    EXPECT_EQ(m_session.design(*made)->stones,
              (std::vector<catalogue::StoneCount>{{asked.stone, estimate.filling().count},
                                                  {asked.outlineStone, estimate.outline.count}}));
}

TEST_F(Estimating, aNameThatIsTakenIsRefusedInWords) {
    m_presenter.ask(inputs("abcd"));
    ASSERT_NE(answered(), nullptr);
    const auto designs = m_session.designs();
    const auto made = m_presenter.makeDesign(QString::fromStdString(designs.front().name), {});
    ASSERT_FALSE(made);
    EXPECT_NE(words::text(made.error()).find(designs.front().name), std::string::npos) << describe(made.error());
    EXPECT_EQ(m_session.designs(), designs);
}

// Overlapping rings of both kinds of filling, one with a hole.
TEST(ShapeFile, anOutlineWrittenAsSvgReadsBackTheSame) {
    const std::vector<Shape> shapes{
        {{{{-3, 2}, {17.25, 2}, {17.25, 12.125}, {-3, 12}}, {{0, 4}, {9, 4}, {9, 8}, {0, 8}}}, true},
        {{{{5, 5}, {40, 6}, {30, 25.0625}}}, false}};
    const auto drawing = artwork::readArtwork(artwork::svgOf(shapes), "shapes.svg");
    ASSERT_TRUE(drawing) << describe(drawing.error());
    ASSERT_TRUE(drawing->millimetresPerUnit);
    EXPECT_NEAR(*drawing->millimetresPerUnit, 1, 1e-9);
    const auto back = artwork::shapesOf(*drawing, *drawing->millimetresPerUnit);
    ASSERT_EQ(back.size(), shapes.size());
    for (std::size_t i = 0; i < shapes.size(); ++i) {
        EXPECT_EQ(back[i].evenOdd, shapes[i].evenOdd);
        ASSERT_EQ(back[i].rings.size(), shapes[i].rings.size());
        for (std::size_t ring = 0; ring < shapes[i].rings.size(); ++ring) {
            ASSERT_EQ(back[i].rings[ring].size(), shapes[i].rings[ring].size());
            // Places count from the corner of the page, shapes from wherever they were.
            for (std::size_t corner = 0; corner < shapes[i].rings[ring].size(); ++corner) {
                const auto step = back[i].rings[ring][corner] - back[0].rings[0][0];
                const auto wanted = shapes[i].rings[ring][corner] - shapes[0].rings[0][0];
                EXPECT_NEAR(artwork::distance(step, wanted), 0, 1e-4);
            }
        }
    }
}

} // namespace

// SPDX-License-Identifier: MIT
#include "app/supplies/kit_words.h"
#include "app/supplies/supplies_page.h"
#include "tests/app/supplies/supplies_fixture.h"

#include <QListView>
#include <QMenu>

using namespace sp;

namespace {

class KitCardTest : public test::SuppliesTest {
  protected:
    void openKit(const char* name) {
        show(std::make_unique<supplies::SuppliesPage>(*m_session, *m_formatter));
        auto* list = m_page->findChild<QListView*>(QStringLiteral("supplies"));
        for (int row = 0; row < list->model()->rowCount(); ++row)
            if (list->model()->index(row, 0).data().toString() == QLatin1String(name))
                list->setCurrentIndex(list->model()->index(row, 0));
        test::handleQueued();
    }
    const catalogue::Kit& kit(const std::string& name) {
        for (const auto& known : m_session->kits())
            if (known.name == name) return known;
        ADD_FAILURE() << name;
        return m_session->kits().front();
    }
};

TEST_F(KitCardTest, saysWhatTheKitMakes) {
    openKit("Lantern starter kit");
    // 1440 short of 1 % is 1425; less 2 % loss 1397 = 6 x 212 + 125, and seven would take 1484 of 1425.
    EXPECT_EQ(said("kitMakes"), "Makes 6 for sure; Aquamarine SS10 runs out first.");
    const auto more = said("kitMore");
    EXPECT_NE(more.find("That is 4.15 USD a piece."), std::string::npos) << more;
    EXPECT_NE(more.find("Left over: 125 Aquamarine SS10 (0.87)"), std::string::npos) << more;
    EXPECT_NE(more.find("at bulk prices."), std::string::npos) << more;
    EXPECT_NE(more.find("One more gross of Aquamarine SS10 would add one piece."), std::string::npos) << more;
}

TEST_F(KitCardTest, savesEveryFieldWhenItIsLeft) {
    openKit("Lantern starter kit");
    type("kitPrice", "26.10");
    type("kitWithTemplates", "");
    type("kitShortCount", "0");
    type("kitTools", " tweezers ,, felt pad");
    type("kitCount0", "20 gross");
    type("kitName", "Lantern kit, large");
    const auto& saved = kit("Lantern kit, large");
    EXPECT_EQ(saved.price, units::Money::fromMicros(26'100'000));
    EXPECT_EQ(saved.priceWithTemplates, std::nullopt);
    EXPECT_TRUE(saved.shortCount.isZero());
    EXPECT_EQ(saved.tools, (std::vector<std::string>{"tweezers", "felt pad"}));
    EXPECT_EQ(saved.items[0].count, units::Count::of(2880));
    EXPECT_NE(said("kitMakes").find("runs out first."), std::string::npos);
    type("kitCount0", "0");
    EXPECT_EQ(kit("Lantern kit, large").items[0].count, units::Count::of(2880));
}

TEST_F(KitCardTest, makesANewKitAndTakesItOutAgain) {
    show(std::make_unique<supplies::SuppliesPage>(*m_session, *m_formatter));
    auto* add = m_page->findChild<QPushButton*>(QStringLiteral("newSupply"));
    for (auto* action : add->menu()->actions())
        if (action->text().startsWith(QLatin1String("Ki&t"))) action->trigger();
    test::handleQueued();
    ASSERT_EQ(m_session->kits().size(), 3U);
    EXPECT_EQ(said("kitMakes"), "Choose the design it is for; then what it makes stands here.");
    click("addKitItem");
    click("addKitItem");
    const auto& made = kit("New kit");
    ASSERT_EQ(made.items.size(), 2U);
    EXPECT_NE(made.items[0].material, made.items[1].material);
    click("removeSupply");
    EXPECT_EQ(m_session->kits().size(), 2U);
    m_session->undo();
    EXPECT_EQ(m_session->kits().size(), 3U);
}

TEST(KitWords, sayAChanceAsOneDoes) {
    EXPECT_EQ(supplies::chanceInWords(0.8).toStdString(), "four times in five");
    EXPECT_EQ(supplies::chanceInWords(0.52).toStdString(), "every other time");
    EXPECT_EQ(supplies::chanceInWords(0.99).toStdString(), "nearly always");
}

TEST(KitWords, sayTheOddsAndWhatIsMissing) {
    const desk::Formatter formatter(QLocale(QLocale::English, QLocale::UnitedStates), {});
    supply::YieldAnswer answer;
    answer.pieces = units::Count::of(7);
    answer.limiting = {"Jet SS10"};
    answer.sure = units::Count::of(6);
    answer.odds = {{units::Count::of(5), 1.0},
                   {units::Count::of(6), 0.9999},
                   {units::Count::of(7), 0.79},
                   {units::Count::of(8), 0.01}};
    EXPECT_EQ(supplies::yieldInWords(answer, formatter).first().toStdString(),
              "Makes 6 for sure, 7 four times in five; Jet SS10 runs out first.");
    EXPECT_EQ(supplies::yieldInWords(answer, formatter).last().toStdString(), "Nothing is left over.");
    answer.pieces = {};
    answer.odds = {{units::Count::of(0), 1.0}};
    answer.limiting = {"tape", "backing"};
    EXPECT_EQ(supplies::yieldInWords(answer, formatter).first().toStdString(),
              "No piece comes out of it: tape and backing is missing or too little.");
}

} // namespace

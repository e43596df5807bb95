// SPDX-License-Identifier: MIT
#include "app/supplies/price_list_dialog.h"
#include "tests/app/supplies/supplies_fixture.h"

#include <QProgressBar>
#include <QTimer>

using namespace sp;

namespace {

class PriceListDialogTest : public test::SuppliesTest {
  protected:
    void open(const std::string& list) {
        const auto file = m_folder / "list.csv";
        test::writeBytes(file, list);
        auto dialog = std::make_unique<supplies::PriceListDialog>(*m_session, *m_formatter, supplier(),
                                                                  *units::Date::parse("2026-11-25"));
        m_dialog = dialog.get();
        show(std::move(dialog));
        m_dialog->load(QString::fromStdString(file.string()));
        settle();
    }
    void settle() {
        ASSERT_TRUE(test::waitFor([this] { return !m_dialog->isBusy(); }));
        test::handleQueued();
    }
    base::Id supplier() {
        for (const auto& known : m_session->suppliers())
            if (known.name == "Kestrel Row Stones") return known.id;
        return {};
    }
    QComboBox* column(int number) { return m_page->findChild<QComboBox*>(QStringLiteral("listColumn%1").arg(number)); }
    /// What the columns are taken for, from the left.
    std::string meanings() {
        std::string text;
        for (int i = 0; column(i) != nullptr; ++i) text += (i > 0 ? ", " : "") + column(i)->currentText().toStdString();
        return text;
    }
    void choose(int number, const char* meaning) {
        auto* combo = column(number);
        combo->setCurrentIndex(combo->findText(QString::fromUtf8(meaning)));
        Q_EMIT combo->activated(combo->currentIndex());
        settle();
    }
    void tick(const char* name) {
        auto* box = m_page->findChild<QCheckBox*>(QLatin1String(name));
        ASSERT_NE(box, nullptr);
        box->click();
        settle();
    }
    QTableView* rows() { return m_page->findChild<QTableView*>(QStringLiteral("listRows")); }
    std::string cell(int row, int column) {
        return rows()->model()->index(row, column).data().toString().toStdString();
    }
    /// Says that the row is the material of that name.
    void match(int row, const char* name) {
        rows()->setCurrentIndex(rows()->model()->index(row, 0));
        auto* field = m_page->findChild<desk::ChoiceField*>(QStringLiteral("listMatch"));
        field->setFocus();
        field->selectAll();
        QTest::keyClicks(field, QLatin1String(name));
        QTest::keyClick(field, Qt::Key_Return);
        settle();
    }
    catalogue::Material material(const std::string& name) {
        for (const auto& known : m_session->materials())
            if (known.name == name) return known;
        return {};
    }
    std::vector<catalogue::Pack> packsOf(const std::string& name) {
        std::vector<catalogue::Pack> own;
        for (const auto& pack : m_session->packs())
            if (pack.material == material(name).id && pack.supplier == supplier()) own.push_back(pack);
        return own;
    }
    units::Money jetPrice() {
        for (const auto& pack : m_session->packs())
            if (pack.usual && m_session->material(pack.material)->name == "Jet SS10") return pack.prices.front().each;
        return {};
    }
    const std::string m_list =
        "item,holds,price\nJet SS10,1440,7.20\nAmber SS10,1440,8.90\nRose SS10,1 great gross,11.90\n"
        "Moonglow,1440,3\n";
    supplies::PriceListDialog* m_dialog = nullptr;
};

TEST_F(PriceListDialogTest, showsWhatChangesAndTakesItOverAsOneStep) {
    open(m_list);
    EXPECT_EQ(meanings(), "What is sold, How many, Pack’s price");
    EXPECT_EQ(said("listSum"), "Packs that change: 2; as they were: 1. Rows that cannot be taken: 1.");
    ASSERT_EQ(rows()->model()->rowCount(), 3);
    EXPECT_EQ(cell(0, 0), "5");
    EXPECT_EQ(cell(0, 1), "Moonglow");
    EXPECT_EQ(cell(0, 2), "There is no material of this name in the book; say what the row is, or add the material.");
    EXPECT_EQ(cell(1, 2), "Jet SS10");
    EXPECT_EQ(cell(2, 5), "new pack");
    const auto packs = m_session->packs();
    click("takeList");
    EXPECT_EQ(m_dialog->result(), QDialog::Accepted);
    EXPECT_EQ(jetPrice(), units::Money::fromMicros(7'200'000));
    EXPECT_EQ(m_session->packs().size(), packs.size() + 1);
    EXPECT_EQ(m_session->undoText().toStdString(), "price list of Kestrel Row Stones");
    m_session->undo();
    EXPECT_EQ(m_session->packs(), packs);
    EXPECT_TRUE(m_session->priceListColumns().empty());
}

// Heads and packs as suppliers write them: common practice, no source.
TEST_F(PriceListDialogTest, takesAUsualListAndMakesTheStonesThatAreMissing) {
    open("Item No;Description;Size;Colour;Pack;Price\n"
         "KR-1010;Hot-fix stone;SS10;Jet;10 gross;7.20\n"
         "KR-1011;Hot-fix stone;ss 10;AMBER;bag of 10 gross;8.90\n"
         "KR-1012;Hot-fix stone;10ss;Light sapphire AB;pkt 100;1.15\n"
         "KR-1013;Hot-fix stone;SS16;Light sapphire AB;1 gross;2.40\n"
         "KR-1014;Hot-fix stone;SS6;Jet;dozen;0.40\n");
    EXPECT_EQ(meanings(), "Item number, What is sold, Size, Colour, Pack, Pack’s price");
    const auto* make = m_page->findChild<QCheckBox*>(QStringLiteral("listMake"));
    ASSERT_TRUE(make->isVisible());
    const auto materials = m_session->materials();
    const auto packs = m_session->packs();
    tick("listMake");
    EXPECT_EQ(said("listSum"), "Packs that change: 4; as they were: 1. Rows that cannot be taken: 0.");
    EXPECT_EQ(cell(1, 2), "new: Light sapphire AB SS10");
    click("takeList");
    EXPECT_EQ(jetPrice(), units::Money::fromMicros(7'200'000));
    const auto stone = material("Light sapphire AB SS10");
    EXPECT_EQ(stone.kind, catalogue::MaterialKind::Stone);
    EXPECT_EQ(stone.stone.colour, "Light sapphire AB");
    EXPECT_EQ(stone.stone.size, "SS10");
    EXPECT_EQ(stone.stone.rgb, material("Light sapphire AB SS16").stone.rgb);
    const auto bags = packsOf("Light sapphire AB SS10");
    ASSERT_EQ(bags.size(), 1U);
    EXPECT_EQ(bags[0].name, "pkt 100");
    EXPECT_EQ(bags[0].amount, units::Count::of(100));
    EXPECT_EQ(bags[0].item, "KR-1012");
    m_session->undo();
    EXPECT_EQ(m_session->materials(), materials);
    EXPECT_EQ(m_session->packs(), packs);
}

TEST_F(PriceListDialogTest, remembersByItsNumberWhatARowIs) {
    open("Item No;Description;Pack;Price\nA-77;Night black, small;10 gross;7.35\n");
    EXPECT_EQ(said("listSum"), "Packs that change: 0; as they were: 0. Rows that cannot be taken: 1.");
    match(0, "Jet SS10");
    EXPECT_EQ(said("listSum"), "Packs that change: 1; as they were: 0. Rows that cannot be taken: 0.");
    EXPECT_EQ(cell(0, 2), "Jet SS10");
    click("takeList");
    EXPECT_EQ(jetPrice(), units::Money::fromMicros(7'350'000));
    open("Item No;Description;Pack;Price\nA-77;Deep black, new name;10 gross;7.55\n");
    EXPECT_EQ(said("listSum"), "Packs that change: 1; as they were: 0. Rows that cannot be taken: 0.");
    click("takeList");
    EXPECT_EQ(jetPrice(), units::Money::fromMicros(7'550'000));
}

TEST_F(PriceListDialogTest, remembersTheColumnsOfTheSupplier) {
    open("alpha,beta,gamma,delta\nJet SS10,1440,7.20,9.10\n");
    choose(3, "Pack’s price");
    EXPECT_EQ(meanings(), "What is sold, not used, not used, Pack’s price");
    choose(1, "How many");
    click("takeList");
    open("delta,gamma,beta,alpha\n7.50,1,1440,Jet SS10\n");
    EXPECT_EQ(meanings(), "Pack’s price, not used, How many, What is sold");
    EXPECT_EQ(said("listSum"), "Packs that change: 1; as they were: 0. Rows that cannot be taken: 0.");
}

TEST_F(PriceListDialogTest, canBeStoppedWhileItReadsALongList) {
    std::string list = "Item No;Description;Size;Colour;Pack;Price\n";
    for (int i = 0; i < 100'000; ++i)
        list += std::to_string(i) + ";Hot-fix;SS10;Tint " + std::to_string(i) + ";gross;7\n";
    const auto file = m_folder / "long.csv";
    test::writeBytes(file, list);
    open(m_list);
    m_dialog->findChild<QTimer*>(QStringLiteral("longEnough"))->setInterval(0);
    m_dialog->load(QString::fromStdString(file.string()));
    EXPECT_TRUE(m_dialog->isBusy()) << "the window does not wait for it";
    const auto* stop = m_page->findChild<QPushButton*>(QStringLiteral("stopList"));
    EXPECT_FALSE(stop->isVisible());
    ASSERT_TRUE(test::waitFor([&] { return stop->isVisible(); }));
    click("stopList");
    EXPECT_FALSE(m_dialog->isBusy());
    EXPECT_FALSE(stop->isVisible());
    EXPECT_EQ(said("listSum"), "Reading “long.csv” was stopped; choose it again, or another file.");
    EXPECT_FALSE(m_page->findChild<QPushButton*>(QStringLiteral("takeList"))->isEnabled());
}

class LongPriceList : public PriceListDialogTest {
  protected:
    /// 1,501 stones that the book has not, each with its pack: more than is saved at once.
    void openLong() {
        std::string list = "Item No;Description;Size;Colour;Pack;Price\n";
        for (int i = 0; i < 1'501; ++i)
            list += std::to_string(i) + ";Hot-fix;SS10;Tint " + std::to_string(i) + ";gross;7\n";
        open(list);
        EXPECT_EQ(said("listSum"), "Packs that change: 0; as they were: 0. Rows that cannot be taken: 1,501.");
        tick("listMake");
        m_before = m_session->materials();
        m_page->findChild<QPushButton*>(QStringLiteral("takeList"))->click();
    }
    std::size_t made() const { return m_session->materials().size() - m_before.size(); }

    std::vector<catalogue::Material> m_before;
};

TEST_F(LongPriceList, isSavedPartByPartWithProgress) {
    openLong();
    EXPECT_TRUE(m_dialog->isBusy()) << "the window is heard between the parts";
    auto* progress = m_page->findChild<QProgressBar*>();
    EXPECT_TRUE(progress->isVisible());
    EXPECT_EQ(progress->maximum(), 3'002);
    EXPECT_GT(progress->value(), 0);
    EXPECT_LT(progress->value(), 3'002);
    EXPECT_FALSE(rows()->isEnabled());
    ASSERT_TRUE(test::waitFor([this] { return !m_dialog->isVisible(); }));
    EXPECT_EQ(made(), 1'501U);
    EXPECT_EQ(packsOf("Tint 1500 SS10").size(), 1U);
    EXPECT_EQ(packsOf("Tint 0 SS10").front().item, "0");
    EXPECT_EQ(material("Tint 7 SS10").stone.loss, catalogue::kUsualStoneLoss);
    int steps = 0;
    while (made() > 0 && m_session->undo()) ++steps;
    EXPECT_EQ(steps, 7) << "3,002 in parts of 500";
    EXPECT_EQ(m_session->materials(), m_before);
}

TEST_F(LongPriceList, saysHowFarItCameWhenItIsStopped) {
    openLong();
    QTest::keyClick(m_dialog, Qt::Key_Escape);
    EXPECT_TRUE(m_dialog->isVisible());
    settle();
    EXPECT_EQ(said("listSum"),
              "Stopped: of 3,002 stones and packs 500 are in the book; undo takes them back part by part.");
    EXPECT_EQ(made(), 500U);
    EXPECT_TRUE(rows()->isEnabled());
    EXPECT_FALSE(m_page->findChild<QPushButton*>(QStringLiteral("takeList"))->isEnabled());
    m_session->undo();
    EXPECT_EQ(m_session->materials(), m_before);
    m_dialog->reject();
    EXPECT_FALSE(m_dialog->isVisible());
}

// As spreadsheets save "Unicode text" and as older ones save CSV.
TEST_F(PriceListDialogTest, readsForeignEncodings) {
    std::string wide = "\xFF\xFE";
    for (const char c : std::string("Name\tPrice\nJet SS10\t7.20\n")) wide += {c, '\0'};
    open(wide);
    EXPECT_EQ(meanings(), "What is sold, Pack’s price");
    open("Name;Gr\xF6\xDF"
         "e;Farbe;Inhalt;Price\nKristall;SS10;Caf\xE9;1440;\x80 7,20\n");
    EXPECT_EQ(column(1)->accessibleName().toStdString(), "What column “Größe” says");
}

TEST_F(PriceListDialogTest, saysWhyAFileCannotBeRead) {
    open("a,b\n\"c,d");
    EXPECT_EQ(said("listSum"),
              "The quote that opens in line 2 of “list.csv” is never closed; save the list as CSV again.");
    EXPECT_FALSE(m_page->findChild<QPushButton*>(QStringLiteral("takeList"))->isEnabled());
    open("a,b\n");
    EXPECT_EQ(said("listSum"), "“list.csv” holds no rows below its headings; choose another file.");
}

} // namespace

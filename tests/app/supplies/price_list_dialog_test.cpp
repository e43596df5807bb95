// SPDX-License-Identifier: MIT
#include "app/supplies/price_list_dialog.h"
#include "tests/app/supplies/supplies_fixture.h"

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
    }
    base::Id supplier() {
        for (const auto& known : m_session->suppliers())
            if (known.name == "Kestrel Row Stones") return known.id;
        return {};
    }
    void choose(const char* name, const char* heading) {
        auto* combo = m_page->findChild<QComboBox*>(QLatin1String(name));
        combo->setCurrentIndex(combo->findText(QLatin1String(heading)));
        Q_EMIT combo->activated(combo->currentIndex());
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
    EXPECT_EQ(said("listSum"), "Choose the column that says what is sold.");
    choose("listMaterial", "item");
    choose("listAmount", "holds");
    choose("listPrice", "price");
    EXPECT_EQ(said("listSum"), "Packs that change: 2; as they were: 1. Rows that cannot be taken: 1.");
    EXPECT_EQ(
        said("listTroubles"),
        "Line 5, “Moonglow”: There is no material of this name in the book; add it, or give it the name it has in "
        "the list.");
    const auto* table = m_page->findChild<QTableView*>(QStringLiteral("listChanges"));
    const auto* shown = table->model();
    ASSERT_EQ(shown->rowCount(), 2);
    EXPECT_EQ(shown->index(0, 0).data().toString().toStdString(), "Jet SS10");
    EXPECT_EQ(shown->index(1, 3).data().toString().toStdString(), "new pack");
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

TEST_F(PriceListDialogTest, remembersTheColumnsOfTheSupplier) {
    open(m_list);
    choose("listMaterial", "item");
    choose("listAmount", "holds");
    choose("listPrice", "price");
    click("takeList");
    open("price,holds,item\n7.50,1440,Jet SS10\n");
    EXPECT_EQ(said("listSum"), "Packs that change: 1; as they were: 0. Rows that cannot be taken: 0.");
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

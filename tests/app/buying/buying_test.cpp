// SPDX-License-Identifier: MIT
// Buying driven by keys, off screen, on a fresh demo book.
#include "app/buying/buying_page.h"
#include "app/buying/plan_rows.h"
#include "app/buying/shopping_list.h"
#include "app/demo/demo_book.h"
#include "app/desk/theme.h"
#include "app/paper/preview_dialog.h"
#include "tests/support/held_clock.h"
#include "tests/support/temp_folder.h"
#include "tests/support/wait_for.h"

#include <QAccessible>
#include <QApplication>
#include <QCheckBox>
#include <QFile>
#include <QLabel>
#include <QScrollArea>
#include <QScrollBar>
#include <QSettings>
#include <QStandardPaths>
#include <QTest>
#include <gtest/gtest.h>

using namespace sp;
using supply::Strategy;

namespace {

/// Saves where it was told to.
class PathPrompter : public desk::Prompter {
  public:
    std::optional<QString> fileToSave(const FileQuestion&) override { return path; }
    std::optional<QString> fileToOpen(const FileQuestion&) override { return std::nullopt; }
    std::optional<QString> folderToUse(const FileQuestion&) override { return std::nullopt; }

    QString path;
};

class Buying : public testing::Test {
  protected:
    Buying() {
        QStandardPaths::setTestModeEnabled(true);
        // Settings of its own: other tests run beside this one.
        QSettings::setPath(QSettings::NativeFormat, QSettings::UserScope,
                           QString::fromStdString(m_folder.path().string()));
        QLocale::setDefault(QLocale(QLocale::English, QLocale::UnitedStates));
        auto book = demo::createDemoBook(m_folder / "demo.jobbook", m_clock.environment());
        EXPECT_TRUE(book.has_value());
        m_session = std::make_unique<session::BookSession>(std::move(*book));
        m_formatter = std::make_unique<desk::Formatter>(QLocale(), m_session->shop());
        m_page = std::make_unique<buying::BuyingPage>(
            *m_session, [this] { return m_order; }, *m_formatter, m_prompter);
        m_page->resize(1274, 768);
        m_page->show();
        QApplication::setActiveWindow(m_page.get());
        settle();
    }

    buying::BuyingPresenter& presenter() { return m_page->presenter(); }
    bool settle() {
        return test::waitFor([this] { return !presenter().isWorking(); });
    }
    template<class T = QLabel>
    T* find(const char* name) {
        auto* found = m_page->findChild<T*>(QLatin1String(name));
        EXPECT_NE(found, nullptr) << name;
        return found;
    }
    QString text(const char* name) { return find<QLabel>(name)->text(); }
    void key(Qt::Key key) { QTest::keyClick(QApplication::focusWidget(), key); }
    void choose(const char* design, const char* pieces) {
        m_page->focusStart();
        find<QLineEdit>("buyDesign")->selectAll();
        QTest::keyClicks(QApplication::focusWidget(), QString::fromUtf8(design));
        key(Qt::Key_Return);
        find<QLineEdit>("buyPieces")->setFocus();
        find<QLineEdit>("buyPieces")->selectAll();
        QTest::keyClicks(QApplication::focusWidget(), QString::fromUtf8(pieces));
    }

    test::HeldClock m_clock;
    test::TempFolder m_folder;
    desk::Theme m_theme{*qApp, desk::Scheme::Light};
    PathPrompter m_prompter;
    std::vector<catalogue::OrderLine> m_order;
    std::unique_ptr<session::BookSession> m_session;
    std::unique_ptr<desk::Formatter> m_formatter;
    std::unique_ptr<buying::BuyingPage> m_page;
};

TEST_F(Buying, plansForADesignAndANumberByKeys) {
    choose("Lantern", "24");
    ASSERT_TRUE(settle());
    // By hand: of 24 pieces 0.74 are expected to be spoiled, so that one spare is made: 25 x 212 / 0.98 = 5,408.2, less
    // 1,980 on the shelf: 3,429 Aquamarine. Two bags of ten gross at 9.99 and four of one gross at 1.39 with 7.50
    // shipping. The 2,450 Jet, sheets, bags and cards lie on the shelf.
    EXPECT_EQ(text("bulkCost"), "33.04");
    EXPECT_EQ(text("bulkEach"), "1.38 a piece");
    const auto& plans = presenter().answer()->plans;
    ASSERT_TRUE(plans.of(Strategy::Mix).plan.has_value());
    EXPECT_LE(plans.of(Strategy::Mix).plan->cost, plans.of(Strategy::Bulk).plan->cost);
    // One way, and only one, says that it is the cheapest, in words.
    int marks = 0;
    for (const char* mark : {"kitsMark", "bulkMark", "mixMark"})
        marks += text(mark) == QString::fromUtf8("✓ cheapest") ? 1 : 0;
    EXPECT_EQ(marks, 1);
}

// By hand: a kit's 1,425 good Aquamarine are 6 × 212 and what is lost, seven would take 1,484. Bags and cards, 6.20 and
// 18.75, come with either: kits (24.90 + 9.50 + 24.95) ÷ 6 = 9.89; bulk 9.99 + 4.55 + 7.50 of stones, 14.50 + 11.80 of
// sheets and 9.50 shipping beside them ÷ 6 = 13.80. Where they cross: tests/app/demo/demo_kits_test.cpp.
TEST_F(Buying, showsEachKitBesideBulk) {
    choose("Lantern", "24");
    ASSERT_TRUE(test::waitFor([this] { return presenter().kits() != nullptr; }));
    EXPECT_TRUE(find<QWidget>("kitPanel")->isVisible());
    EXPECT_EQ(text("kitPieces"), "6 pieces for sure; Aquamarine SS10 runs out first.");
    EXPECT_EQ(text("kitEach"), "9.89");
    EXPECT_EQ(text("kitBulkEach"), "13.80");
    EXPECT_EQ(text("kitCheaper"), "kit");
    EXPECT_EQ(text("kitRuns"), QString::fromUtf8("Cheaper from the kit: 1–6, 8–13. Cheaper in bulk: 7, from 14 on."));
    // 990 less 1 % are 980 Crystal, of which each is lost with 2 %: three pieces take 954 of them (0.9370, summed term
    // by term; shown down to a tenth of a percent).
    choose("Heron", "24");
    EXPECT_EQ(presenter().kits(), nullptr) << "nothing of the question before stays";
    ASSERT_TRUE(test::waitFor([this] { return presenter().kits() != nullptr; }));
    EXPECT_EQ(text("kitPieces"),
              "2 pieces for sure, 3 with odds of 93.6 %; Crystal SS10 and Sapphire SS6 run out first.");
    choose("Paper boat", "24");
    ASSERT_TRUE(test::waitFor([this] { return presenter().kits() != nullptr; }));
    EXPECT_FALSE(find<QWidget>("kitPanel")->isVisible()) << "no kit is for it";
}

TEST_F(Buying, namesAPackWithoutAPriceUntilNothingIsMeant) {
    choose("Paper boat", "24");
    ASSERT_TRUE(settle());
    EXPECT_FALSE(find<QLabel>("unpricedPacks")->isVisible());
    for (auto pack : m_session->packs()) {
        if (m_session->material(pack.material)->name != "Siam SS16" || !pack.usual) continue;
        pack.prices = {{units::Count::of(1), {}}};
        ASSERT_TRUE(m_session->change([&](db::Book& book) { return book.save(pack); }));
        break;
    }
    ASSERT_TRUE(settle());
    EXPECT_EQ(text("unpricedPacks"),
              "Left out, because no price is given: <a href=\"0\">bag of 10 gross, Siam SS16</a>");
    base::Id asked;
    QObject::connect(m_page.get(), &buying::BuyingPage::priceAsked, m_page.get(),
                     [&](const base::Id& material) { asked = material; });
    Q_EMIT find<QLabel>("unpricedPacks")->linkActivated(QStringLiteral("0"));
    auto siam = *m_session->material(asked);
    EXPECT_EQ(siam.name, "Siam SS16");
    siam.meantAsNothing = true;
    ASSERT_TRUE(m_session->change([&](db::Book& book) { return book.save(siam); }));
    ASSERT_TRUE(settle());
    EXPECT_FALSE(find<QLabel>("unpricedPacks")->isVisible());
}

TEST_F(Buying, putsOnTheShelfWhatWasBoughtAtWhatItCost) {
    choose("Lantern", "24");
    ASSERT_TRUE(settle());
    const auto aqua = [this] {
        for (const auto& material : m_session->materials())
            if (material.name == "Aquamarine SS10") return material;
        return catalogue::Material{};
    };
    const auto before = m_session->shelf().at(aqua().id);
    auto material = aqua();
    material.basis = catalogue::PriceBasis::ShelfAverage; // its cost follows what was bought
    ASSERT_TRUE(m_session->change([&](db::Book& book) { return book.save(material); }));
    const auto worth = [&] { return m_session->prices({}).find(material.id)->price->each(); };
    ASSERT_TRUE(settle());
    // By hand, see above: 2 x 1,440 and 4 x 144 Aquamarine come to 33.04 with the shipping.
    find<QPushButton>("bulkTakeIn")->click();
    ASSERT_TRUE(settle());
    EXPECT_EQ(m_session->shelf().at(aqua().id), before + 3456);
    EXPECT_TRUE(presenter().answer()->plans.isOnShelf) << "nothing more has to be bought";
    EXPECT_FALSE(find<QPushButton>("bulkTakeIn")->isVisible());
    // Nothing was ever paid for what lay there before: the average is that of what came in.
    const auto paid = units::Money::fromExact(worth() * units::Fraction::of(3456));
    EXPECT_NEAR(static_cast<double>(paid.micros()), 33.04e6, 1);
    m_session->undo();
    EXPECT_EQ(m_session->shelf().at(aqua().id), before) << "one step of undo";
}

TEST_F(Buying, showsNoFigureForWhatIsNoLongerTyped) {
    choose("Lantern", "24");
    ASSERT_TRUE(settle());
    ASSERT_EQ(text("bulkCost"), "33.04");
    QTest::keyClicks(QApplication::focusWidget(), "0");
    EXPECT_EQ(text("bulkCost"), "—"); // before any answer could come
    EXPECT_EQ(text("bulkProof"), "Working…");
    EXPECT_FALSE(find<QPushButton>("shoppingList")->isEnabled());
    ASSERT_TRUE(settle());
    EXPECT_EQ(presenter().answer()->job.pieces(), 240);
    QTest::keyClicks(QApplication::focusWidget(), "x");
    EXPECT_EQ(text("bulkCost"), "—");
    EXPECT_EQ(text("bulkProof"), "Say how many pieces are to be made.");
}

TEST_F(Buying, dropsAnAnswerThatComesLate) {
    // Each key asks; the answer that is shown is the one for all of them, whatever came back on the way.
    choose("Lantern", "1");
    QTest::keyClicks(QApplication::focusWidget(), "2");
    QTest::keyClicks(QApplication::focusWidget(), "5");
    std::vector<std::int64_t> seen;
    QObject::connect(&presenter(), &buying::BuyingPresenter::changed, m_page.get(), [&] {
        if (presenter().answer()) seen.push_back(presenter().answer()->job.pieces());
    });
    ASSERT_TRUE(settle());
    EXPECT_EQ(seen, std::vector<std::int64_t>{125});
}

TEST_F(Buying, theShelfCanBeLeftAside) {
    choose("Lantern", "24");
    ASSERT_TRUE(settle());
    const auto with = presenter().answer()->plans.of(Strategy::Bulk).plan->cost;
    find<QCheckBox>("buyShelf")->setFocus();
    key(Qt::Key_Space);
    ASSERT_TRUE(settle());
    EXPECT_LT(with, presenter().answer()->plans.of(Strategy::Bulk).plan->cost);
}

TEST_F(Buying, figuresOpenByEnter) {
    choose("Lantern", "24");
    ASSERT_TRUE(settle());
    find<QWidget>("bulkCost")->setFocus();
    key(Qt::Key_Return);
    auto* tree = find<QTreeView>("bulkTree");
    EXPECT_TRUE(tree->hasFocus());
    const auto outlined = [tree] {
        const QColor edge = tree->viewport()->grab().toImage().pixelColor(tree->viewport()->width() / 2, 1);
        return edge == desk::colour(desk::Role::Jewel);
    };
    tree->setCurrentIndex({});
    EXPECT_TRUE(outlined()) << "where no row is gone to";
    tree->setCurrentIndex(tree->model()->index(0, 0));
    EXPECT_TRUE(outlined()) << "the first row";
    // The rows of an order add up to it: 19.98 and 5.56 for packs, 7.50 shipping.
    const auto order = tree->model()->index(0, 0);
    EXPECT_EQ(order.data().toString(), "Kestrel Row Stones");
    EXPECT_EQ(order.siblingAtColumn(1).data().toString(), "33.04");
    EXPECT_TRUE(tree->isExpanded(order));
    QStringList parts;
    for (int row = 0; row < tree->model()->rowCount(order); ++row)
        parts << tree->model()->index(row, 1, order).data().toString();
    parts.sort();
    EXPECT_EQ(parts, QStringList({QStringLiteral("19.98"), QStringLiteral("5.56"), QStringLiteral("7.50")}));
}

TEST_F(Buying, readsTheStaircaseByArrowsAndAsATable) {
    choose("Lantern", "24");
    ASSERT_TRUE(settle());
    ASSERT_TRUE(test::waitFor([this] { return presenter().curve() && presenter().curve()->points.size() >= 30; }));
    auto* picture = find<buying::CostCurvePicture>("stairs");
    picture->setFocus();
    EXPECT_EQ(picture->marked(), 24);
    key(Qt::Key_Right);
    EXPECT_EQ(picture->marked(), 25);
    EXPECT_TRUE(picture->accessibleDescription().startsWith("25 pieces, each:"))
        << picture->accessibleDescription().toStdString();
    EXPECT_EQ(text("stairPoint"), picture->accessibleDescription());
    key(Qt::Key_T);
    auto* table = find<QTableView>("stairFigures");
    EXPECT_TRUE(table->isVisible());
    EXPECT_EQ(table->model()->headerData(0, Qt::Horizontal).toString(), "Pieces");
    EXPECT_EQ(table->model()->index(23, 2).data().toString(), "1.38");
    EXPECT_EQ(table->currentIndex().row(), 24); // 25 pieces, as marked
    EXPECT_TRUE(table->viewport()->rect().contains(table->visualRect(table->currentIndex())));
    // Half below the edge of its page: the page scrolls to the row that the keys go to.
    auto* page = m_page->findChild<QScrollArea*>();
    ASSERT_NE(page, nullptr);
    m_page->resize(m_page->width(), 420);
    test::handleQueued();
    page->verticalScrollBar()->setValue(0);
    key(Qt::Key_Down);
    const auto row = table->visualRect(table->currentIndex());
    EXPECT_TRUE(page->viewport()->rect().contains(table->viewport()->mapTo(page, row.center())));
    key(Qt::Key_T);
    EXPECT_TRUE(picture->isVisible());
}

TEST_F(Buying, buysForTheOrderAtTheCounter) {
    m_page->showOrder();
    EXPECT_EQ(text("mixProof"), "There is no order at the Counter: put a design on it there.");
    for (const auto& design : m_session->designs())
        if (design.name == "Lantern")
            m_order = {supply::lineOf(design, m_session->materials(), 24),
                       supply::lineOf(design, m_session->materials(), 24)};
    presenter().ask();
    ASSERT_TRUE(settle());
    EXPECT_EQ(presenter().answer()->job.pieces(), 48);
    EXPECT_FALSE(find<QWidget>("stairs")->isVisible()); // a curve is one design's
}

TEST_F(Buying, writesTheListForSpreadsheetsAndForPaper) {
    choose("Lantern", "24");
    ASSERT_TRUE(settle());
    m_prompter.path = QString::fromStdString((m_folder / "list.csv").string());
    find<QPushButton>("listCsv")->click();
    QFile csv(m_prompter.path);
    ASSERT_TRUE(csv.open(QIODevice::ReadOnly));
    EXPECT_EQ(csv.readAll().toStdString(), buying::shoppingCsv(*presenter().answer()));
    ASSERT_TRUE(test::waitFor([this] { return presenter().isCurveComplete(); }));
    for (const char* button : {"shoppingList", "printStairs"}) {
        find<QPushButton>(button)->click();
        auto* preview = m_page->findChild<paper::PreviewDialog*>();
        ASSERT_NE(preview, nullptr) << button;
        QFile pdf(QString::fromStdString((m_folder / (std::string(button) + ".pdf")).string()));
        preview->savePdf(pdf.fileName());
        ASSERT_TRUE(pdf.open(QIODevice::ReadOnly)) << button;
        EXPECT_TRUE(pdf.read(5).startsWith("%PDF-"));
        delete preview;
    }
}

TEST_F(Buying, aFormulaInASuppliersNameStaysWords) {
    supply::Job job;
    job.offers = {{"p", "=1+1", "@bag", false, std::nullopt}};
    supply::PurchasePlan plan;
    plan.packs = {{"p", "+Kestrel", units::Count::of(1), units::Money::fromMicros(1'500'000)}};
    plan.orders = {{"+Kestrel", units::Money::fromMicros(1'500'000), units::Money()}};
    buying::Answer answer{job, {}};
    answer.plans.strategies[static_cast<std::size_t>(Strategy::Mix)].plan = plan;
    EXPECT_EQ(buying::shoppingCsv(answer), "Supplier,Pack,Material,Packs,Each,Goods\r\n"
                                           "'+Kestrel,'@bag,'=1+1,1,1.50,1.50\r\n"
                                           "'+Kestrel,Shipping,,,,0.00\r\n");
}

TEST_F(Buying, everythingReachableHasAName) {
    for (auto* widget : m_page->findChildren<QWidget*>()) {
        if (!widget->isVisible() || widget->focusPolicy() == Qt::NoFocus || !widget->isEnabled()) continue;
        auto* accessible = QAccessible::queryAccessibleInterface(widget);
        ASSERT_NE(accessible, nullptr);
        EXPECT_FALSE(accessible->text(QAccessible::Name).isEmpty())
            << widget->metaObject()->className() << ' ' << widget->objectName().toStdString();
    }
}

} // namespace

// SPDX-License-Identifier: MIT
// The Jobs place driven by keys, off screen, on a fresh demo book with a few quotes in it.
#include "app/demo/demo_book.h"
#include "app/desk/message_bar.h"
#include "app/desk/theme.h"
#include "app/jobs/jobs_page.h"
#include "app/jobs/payment_dialog.h"
#include "app/plans/plan_dialog.h"
#include "app/words/names.h"
#include "app/words/quote_sheet.h"
#include "app/words/sheet_words.h"
#include "app/words/words.h"
#include "core/pricing/price_order.h"
#include "db/messages.h"
#include "tests/support/held_clock.h"
#include "tests/support/quote_result.h"
#include "tests/support/temp_folder.h"
#include "tests/support/wait_for.h"

#include <QAbstractButton>
#include <QAbstractItemModelTester>
#include <QAccessible>
#include <QApplication>
#include <QLabel>
#include <QPushButton>
#include <QSignalSpy>
#include <QTest>
#include <gtest/gtest.h>

#include <set>

namespace sp::jobs::test {

namespace {

class Jobs : public testing::Test {
  protected:
    Jobs() {
        QLocale::setDefault(QLocale(QLocale::English, QLocale::UnitedStates));
        auto book = demo::createDemoBook(m_folder / "demo.jobbook", m_clock.environment());
        EXPECT_TRUE(book.has_value());
        m_session = std::make_unique<session::BookSession>(std::move(*book));
        m_formatter = std::make_unique<desk::Formatter>(QLocale(), m_session->shop());
    }

    /// A draft of which only the customer is known.
    base::Result<std::int64_t> begin(db::Book& book) {
        auto quote = book.startQuote();
        if (!quote) return base::fail(quote.error());
        quote->order.customer = m_session->customers().front().id;
        return book.saveDraft(*quote);
    }
    /// What an order comes to at today's prices.
    units::Money today(const catalogue::Order& order) {
        const auto priced = pricing::priceOrder(order, m_session->prices(order.customer), m_session->fits());
        EXPECT_TRUE(priced.has_value());
        return priced ? priced->total : units::Money{};
    }
    db::Quote draft(const char* design, const char* customer) {
        return *m_session->keepDraft([&](db::Book& book) -> base::Result<db::Quote> {
            auto quote = *book.startQuote();
            for (const auto& known : m_session->customers())
                if (known.name == customer) quote.order.customer = known.id;
            for (const auto& known : m_session->designs()) {
                if (known.name != design) continue;
                auto& line = quote.order.lines.emplace_back();
                line.title = known.name;
                line.first().width = known.width;
                line.first().height = known.height;
                line.first().stones = known.stones;
                line.baseMaterial = known.usualBase;
                line.quantity = units::Count::of(24);
            }
            EXPECT_FALSE(quote.order.lines.empty()) << design;
            quote.version = *book.saveDraft(quote);
            return quote;
        });
    }
    db::Quote give(const char* design, const char* customer) {
        const auto quote = draft(design, customer);
        const auto prices = m_session->prices(quote.order.customer);
        const auto priced = pricing::priceOrder(quote.order, prices, m_session->fits());
        EXPECT_TRUE(priced.has_value());
        return *m_session->change([&](db::Book& book) {
            return book.issue(quote, prices, sp::test::resultOf(priced->total), quote.order.quotedOn.plusDays(30));
        });
    }
    void open() {
        m_watch = std::make_unique<TodayWatch>(*m_session);
        m_page = std::make_unique<JobsPage>(*m_session, *m_watch, *m_formatter);
        m_page->resize(1274, 768);
        m_page->show();
        QApplication::setActiveWindow(m_page.get());
        m_page->focusStart();
        sp::test::handleQueued();
    }
    template<class T>
    T* part(const char* name) {
        auto* found = m_page->findChild<T*>(QLatin1String(name));
        EXPECT_NE(found, nullptr) << name;
        return found;
    }
    QString cell(int row, JobsTableModel::Column column) {
        return part<QTableView>("jobs")->model()->index(row, column).data().toString();
    }
    int rows() { return part<QTableView>("jobs")->model()->rowCount(); }
    void typeInto(const char* name, const char* text) {
        auto* field = part<QLineEdit>(name);
        field->setFocus();
        field->selectAll();
        QTest::keyClicks(field, QString::fromUtf8(text));
    }
    db::Stage stageOf(const base::Id& id) {
        return m_session->read([&](db::Book& book) { return book.quote(id); })->stage;
    }

    sp::test::HeldClock m_clock;
    sp::test::TempFolder m_folder;
    desk::Theme m_theme{*qApp, desk::Scheme::Light};
    std::unique_ptr<session::BookSession> m_session;
    std::unique_ptr<desk::Formatter> m_formatter;
    std::unique_ptr<TodayWatch> m_watch;
    std::unique_ptr<JobsPage> m_page;
};

} // namespace

TEST_F(Jobs, areDraftsThatComeToWhatTheirChoicesDo) {
    auto typed = draft("Lantern", "Juniper Hill Swim Club");
    catalogue::addChoice(typed.order);
    typed.order.lines.front().quantity = units::Count::of(48);
    ASSERT_TRUE(m_session->keepDraft([&](db::Book& book) { return book.saveDraft(typed); }));
    open();
    const auto least = m_formatter->money(today(catalogue::withChoice(typed.order, 0)));
    const auto most = m_formatter->money(today(catalogue::withChoice(typed.order, 1)));
    EXPECT_EQ(cell(0, JobsTableModel::Total), least + " to " + most);
}

TEST_F(Jobs, areNoDraftsInWhichNothingIsEnteredYet) {
    draft("Lantern", "Juniper Hill Swim Club");
    auto named = *m_session->keepDraft([](db::Book& book) { return book.startQuote(); });
    named.order.customer = m_session->customers().front().id;
    ASSERT_TRUE(m_session->keepDraft([&](db::Book& book) { return book.saveDraft(named); }));
    ASSERT_TRUE(m_session->keepDraft([](db::Book& book) { return book.startQuote(); }));
    open();
    ASSERT_EQ(rows(), 2) << "the empty one is no row, the one with a customer is";
    EXPECT_EQ(cell(0, JobsTableModel::Total), QString::fromUtf8("—")) << "nothing is ordered yet";
}

TEST_F(Jobs, areListedNewestFirstWithWhatTheCustomerPays) {
    const auto lantern = give("Lantern", "Juniper Hill Swim Club");
    const auto heron = draft("Heron", "Wren and Daughter, florists");
    open();
    ASSERT_EQ(rows(), 2);
    EXPECT_EQ(cell(0, JobsTableModel::Number), "draft");
    EXPECT_EQ(cell(0, JobsTableModel::Title), "Heron");
    EXPECT_EQ(cell(0, JobsTableModel::Stage), "Enquiry");
    EXPECT_EQ(cell(0, JobsTableModel::Total), m_formatter->money(today(heron.order))) << "what it comes to today";
    EXPECT_EQ(cell(1, JobsTableModel::Number).toStdString(), lantern.number);
    EXPECT_EQ(cell(1, JobsTableModel::Customer), "Juniper Hill Swim Club");
    EXPECT_EQ(cell(1, JobsTableModel::Total), m_formatter->money(*lantern.sealedTotal));
}

TEST_F(Jobs, areFoundByNumberCustomerAndTitle) {
    const auto lantern = give("Lantern", "Juniper Hill Swim Club");
    give("Heron", "Wren and Daughter, florists");
    open();
    const std::pair<const char*, const char*> cases[] = {
        {"juniper", "Lantern"}, {"HERON", "Heron"}, {lantern.number.c_str(), "Lantern"}};
    for (const auto& [typed, title] : cases) {
        m_page->focusFind();
        ASSERT_TRUE(part<QLineEdit>("findJob")->hasFocus());
        part<QLineEdit>("findJob")->selectAll();
        QTest::keyClicks(part<QLineEdit>("findJob"), QLatin1String(typed));
        ASSERT_EQ(rows(), 1) << typed;
        EXPECT_EQ(cell(0, JobsTableModel::Title), title) << typed;
        EXPECT_EQ(part<QLabel>("jobTitle")->text(), title) << typed;
    }
    typeInto("findJob", "nobody of that name");
    EXPECT_EQ(rows(), 0);
    EXPECT_FALSE(part<QLabel>("jobTitle")->isVisible());
    part<QLineEdit>("findJob")->clear();
    EXPECT_EQ(rows(), 2);
}

TEST_F(Jobs, severalAreCutFromTheSameSheets) {
    const auto heron = give("Heron", "Wren and Daughter, florists");
    const auto lantern = give("Lantern", "Juniper Hill Swim Club");
    draft("Paper boat", "Juniper Hill Swim Club");
    draft("Paper boat", "Juniper Hill Swim Club");
    open();
    ASSERT_EQ(rows(), 4);
    auto* table = part<QTableView>("jobs");
    EXPECT_EQ(part<QPushButton>("jobPlan")->text(), "Sheet &plan");
    for (int more = 0; more < 3; ++more) QTest::keyClick(table, Qt::Key_Down, Qt::ShiftModifier);
    EXPECT_EQ(part<QPushButton>("jobPlan")->text(), "Sheet &plan of 4");
    part<QPushButton>("jobPlan")->click();
    auto* plan = m_page->findChild<plans::PlanDialog*>();
    ASSERT_NE(plan, nullptr);
    ASSERT_TRUE(sp::test::waitFor([&] { return !plan->planner().isBusy(); }));
    // Each piece says whose it is, and pieces of two jobs lie on one sheet.
    std::set<std::string> whose;
    bool isShared = false;
    for (const auto& answer : plan->planner().answers()) {
        for (const auto& piece : answer.list.pieces) whose.insert(piece.name.substr(0, piece.name.find(',')));
        ASSERT_TRUE(answer.plan.has_value());
        for (const auto& sheet : answer.plan->sheets) {
            std::set<std::string> here;
            for (const auto& place : sheet.places) {
                const auto& name = answer.list.pieces[place.piece].name;
                here.insert(name.substr(0, name.find(',')));
            }
            isShared = isShared || here.size() > 1;
        }
    }
    EXPECT_EQ(whose, (std::set<std::string>{heron.number, lantern.number, "Draft for Juniper Hill Swim Club",
                                            "Draft for Juniper Hill Swim Club (2)"}));
    EXPECT_TRUE(isShared);
}

// The way to Jobs may be Ctrl+Shift+F: what the program chooses does not hang on the keys that are still down.
TEST_F(Jobs, theFirstIsChosenWhateverKeyIsDown) {
    give("Heron", "Wren and Daughter, florists");
    give("Lantern", "Juniper Hill Swim Club");
    for (const auto& held : {Qt::KeyboardModifiers(Qt::ShiftModifier), Qt::KeyboardModifiers(Qt::ControlModifier),
                             Qt::ControlModifier | Qt::ShiftModifier}) {
        QWidget elsewhere;
        QTest::keyPress(&elsewhere, Qt::Key_F, held);
        ASSERT_EQ(QGuiApplication::keyboardModifiers(), held);
        open();
        auto* table = part<QTableView>("jobs");
        ASSERT_EQ(table->selectionModel()->selectedRows().size(), 1);
        EXPECT_EQ(table->selectionModel()->selectedRows().front().row(), 0);
        m_session->change([this](db::Book& book) { return begin(book); }); // it moves down, and stays chosen alone
        ASSERT_EQ(table->selectionModel()->selectedRows().size(), 1);
        EXPECT_EQ(table->selectionModel()->selectedRows().front().row(), 1);
        QTest::keyRelease(&elsewhere, Qt::Key_F, Qt::NoModifier);
    }
}

TEST_F(Jobs, areCutFromWhatTheQuoteHasWhereItWasRemovedFromSupplies) {
    const auto quote = give("Lantern", "Juniper Hill Swim Club");
    const auto base = quote.order.lines[0].baseMaterial;
    const auto name = quote.frozen->find(base)->material.name;
    const auto done = m_session->change([&](db::Book& book) -> base::Done {
        const auto kits = *book.kits();
        for (const auto& kit : kits)
            if (auto ok = book.removeKit(kit.id); !ok) return ok;
        const auto designs = *book.designs();
        for (const auto& design : designs)
            if (auto ok = book.removeDesign(design.id); !ok) return ok;
        return book.removeMaterial(base);
    });
    ASSERT_TRUE(done) << describe(done.error());
    ASSERT_EQ(m_session->material(base), nullptr);
    open();
    part<QPushButton>("jobPlan")->click();
    auto* plan = m_page->findChild<plans::PlanDialog*>();
    ASSERT_NE(plan, nullptr);
    ASSERT_TRUE(sp::test::waitFor([&] { return !plan->planner().isBusy(); }));
    const auto& answers = plan->planner().answers();
    ASSERT_FALSE(answers.empty());
    EXPECT_EQ(answers.back().list.material, quote.frozen->find(base)->material);
    EXPECT_TRUE(answers.back().plan.has_value());
    EXPECT_EQ(plan->findChild<QLabel*>(QStringLiteral("planNote"))->text().toStdString(),
              "No longer in Supplies, so laid as the quote has it: " + name + ".");
}

TEST_F(Jobs, openAtTheCounterByEnterAndDoubleClick) {
    const auto lantern = give("Lantern", "Juniper Hill Swim Club");
    const auto heron = give("Heron", "Juniper Hill Swim Club");
    open();
    QSignalSpy opened(m_page.get(), &JobsPage::openAsked);
    auto* table = part<QTableView>("jobs");
    ASSERT_TRUE(table->hasFocus());
    QTest::keyClick(table, Qt::Key_Return);
    ASSERT_EQ(opened.count(), 1);
    EXPECT_EQ(opened[0][0].value<base::Id>(), heron.id);
    const auto second = table->visualRect(table->model()->index(1, 2)).center();
    QTest::mouseClick(table->viewport(), Qt::LeftButton, {}, second);
    QTest::mouseDClick(table->viewport(), Qt::LeftButton, {}, second);
    ASSERT_EQ(opened.count(), 2);
    EXPECT_EQ(opened[1][0].value<base::Id>(), lantern.id);
}

TEST_F(Jobs, moveOnByTypingTheStage) {
    const auto lantern = give("Lantern", "Juniper Hill Swim Club");
    open();
    typeInto("jobStage", "mak");
    QTest::keyClick(part<QLineEdit>("jobStage"), Qt::Key_Return);
    EXPECT_EQ(stageOf(lantern.id), db::Stage::InProduction);
    EXPECT_EQ(cell(0, JobsTableModel::Stage), "Making");
    m_session->undo();
    EXPECT_EQ(stageOf(lantern.id), db::Stage::Quoted);
    EXPECT_EQ(cell(0, JobsTableModel::Stage), "Quoted");
    EXPECT_EQ(part<QLineEdit>("jobStage")->text(), "Quoted");
}

TEST_F(Jobs, sayWhatTheShelfLackedForOneThatIsReady) {
    auto shop = m_session->shop();
    shop.usedWhen = catalogue::UsedWhen::Ready;
    ASSERT_TRUE(m_session->change([&](db::Book& book) { return book.save(shop); }));
    for (const auto& material : std::vector(m_session->materials()))
        ASSERT_TRUE(m_session->change([&](db::Book& book) { return book.countShelf(material.id, 0, ""); }));
    const auto lantern = give("Lantern", "Juniper Hill Swim Club");
    open();
    typeInto("jobStage", "Ready");
    QTest::keyClick(part<QLineEdit>("jobStage"), Qt::Key_Tab);
    EXPECT_EQ(stageOf(lantern.id), db::Stage::Ready);
    auto* bar = part<desk::MessageBar>("jobsShelf");
    EXPECT_TRUE(bar->sentence().contains(QStringLiteral("book what was used besides")))
        << bar->sentence().toStdString();
    EXPECT_EQ(m_session->undoText(), QStringLiteral("stage of %1").arg(QString::fromStdString(lantern.number)));
    m_session->undo();
    EXPECT_EQ(stageOf(lantern.id), db::Stage::Quoted);
    EXPECT_EQ(bar->sentence(), QString());
}

TEST_F(Jobs, keepAStageThatIsNoneAndSaveNothing) {
    const auto lantern = give("Lantern", "Juniper Hill Swim Club");
    open();
    typeInto("jobStage", "shipped");
    QTest::keyClick(part<QLineEdit>("jobStage"), Qt::Key_Tab);
    EXPECT_EQ(part<QLineEdit>("jobStage")->text(), "shipped");
    EXPECT_FALSE(part<QLineEdit>("jobStage")->accessibleDescription().isEmpty());
    EXPECT_EQ(stageOf(lantern.id), db::Stage::Quoted);
    give("Heron", "Juniper Hill Swim Club"); // another change of the book leaves the entry alone
    EXPECT_EQ(part<QLineEdit>("jobStage")->text(), "shipped");
}

TEST_F(Jobs, offerADraftOnlyWhatADraftCanBe) {
    const auto heron = draft("Heron", "Juniper Hill Swim Club");
    give("Lantern", "Juniper Hill Swim Club");
    JobsPresenter presenter(*m_session);
    EXPECT_EQ(presenter.stages().front(), db::Stage::Quoted);
    EXPECT_EQ(presenter.stages().size(), 6U);
    presenter.select(1);
    EXPECT_EQ(presenter.stages(), (std::vector{db::Stage::Enquiry, db::Stage::Declined}));
    EXPECT_FALSE(presenter.setStage(db::Stage::Declined).has_value());
    EXPECT_EQ(stageOf(heron.id), db::Stage::Declined);
    const auto refused = presenter.setStage(db::Stage::Ready);
    ASSERT_TRUE(refused.has_value());
    EXPECT_EQ(refused->code, base::Code::Invalid);
    EXPECT_EQ(stageOf(heron.id), db::Stage::Declined);
}

TEST_F(Jobs, keepTheirPlaceWhenTheListGrows) {
    const auto lantern = give("Lantern", "Juniper Hill Swim Club");
    open();
    give("Heron", "Juniper Hill Swim Club");
    ASSERT_EQ(rows(), 2);
    EXPECT_EQ(part<QTableView>("jobs")->currentIndex().row(), 1);
    EXPECT_EQ(part<QLabel>("jobTitle")->text(), "Lantern");
}

TEST_F(Jobs, areReadOnWhenTheEndIsLookedAt) {
    constexpr int kMany = 2 * static_cast<int>(kFirstJobs) + 50;
    m_session->change([&](db::Book& book) {
        return book.batch(base::say(db::Note::NewQuote), [&]() -> base::Done {
            for (int i = 0; i < kMany; ++i)
                if (auto started = begin(book); !started) return base::fail(started.error());
            return {};
        });
    });
    open();
    EXPECT_EQ(rows(), kFirstJobs);
    auto* table = part<QTableView>("jobs");
    table->selectRow(7);
    ASSERT_TRUE(sp::test::waitFor([&] {
        table->scrollToBottom();
        return rows() == kMany;
    })) << rows();
    EXPECT_EQ(table->currentIndex().row(), 7);
    EXPECT_FALSE(part<QLabel>("jobsNote")->text().isEmpty());
}

TEST_F(Jobs, sayWhatHasChangedSinceAQuoteWasGiven) {
    const auto lantern = give("Lantern", "Juniper Hill Swim Club");
    auto shop = m_session->shop();
    shop.rates.labourPerHour += units::Money::fromMicros(5'000'000);
    m_session->change([&](db::Book& book) { return book.save(shop); });
    layout::FitMemo fits;
    const auto now = pricing::priceOrder(lantern.order, m_session->prices(lantern.order.customer), fits)->total;
    ASSERT_GT(now, *lantern.sealedTotal);
    open();
    part<QPushButton>("jobChanges")->click();
    EXPECT_EQ(part<QLabel>("totalThen")->text(), m_formatter->money(*lantern.sealedTotal));
    EXPECT_EQ(part<QLabel>("totalNow")->text(), m_formatter->money(now));
    EXPECT_EQ(part<QLabel>("totalDifference")->text(), "+" + m_formatter->money(now - *lantern.sealedTotal));
    JobsPresenter presenter(*m_session);
    const auto compared = presenter.changesSince({});
    ASSERT_TRUE(compared.has_value());
    ASSERT_EQ(compared->causes.size(), 1U);
    EXPECT_EQ(words::sentence(compared->causes[0].what), "Labour an hour");
    EXPECT_EQ(m_session->read([&](db::Book& book) { return book.quote(lantern.id); })->sealedTotal,
              lantern.sealedTotal);
}

TEST_F(Jobs, areOrderedAgain) {
    const auto lantern = give("Lantern", "Juniper Hill Swim Club");
    open();
    QSignalSpy asked(m_page.get(), &JobsPage::repeatAsked);
    QTest::keyClick(m_page.get(), Qt::Key_G, Qt::AltModifier); // a button's key shows it pressed before it acts
    ASSERT_TRUE(sp::test::waitFor([&] { return asked.count() == 1; }));
    EXPECT_EQ(asked[0][0].value<base::Id>(), lantern.id);
    draft("Heron", "Juniper Hill Swim Club");
    part<QTableView>("jobs")->selectRow(0);
    EXPECT_FALSE(part<QPushButton>("jobAgain")->isVisible()) << "of a draft there is nothing yet to do once more";
}

TEST_F(Jobs, aDraftHasNothingToCompare) {
    draft("Heron", "Juniper Hill Swim Club");
    open();
    EXPECT_FALSE(part<QPushButton>("jobChanges")->isVisible());
    JobsPresenter presenter(*m_session);
    EXPECT_FALSE(presenter.changesSince({}).has_value());
}

TEST_F(Jobs, goesByTheChoiceThatTheCustomerTakes) {
    auto quote = draft("Lantern", "Juniper Hill Swim Club");
    catalogue::addChoice(quote.order);
    quote.order.lines[0].quantity = units::Count::of(36);
    quote.version = *m_session->keepDraft([&](db::Book& book) { return book.saveDraft(quote); });
    const auto prices = m_session->prices(quote.order.customer);
    const auto words = words::SheetWords();
    const auto result =
        words::resultOf(quote.order, prices, quote.order.quotedOn.plusDays(30), m_session->fits(), words);
    ASSERT_TRUE(result.has_value());
    const auto issued = *m_session->change(
        [&](db::Book& book) { return book.issue(quote, prices, *result, quote.order.quotedOn.plusDays(30)); });
    const auto first = m_formatter->money(result->others[0].total);
    const auto second = m_formatter->money(result->priced.total);
    open();
    EXPECT_EQ(cell(0, JobsTableModel::Total), first + " to " + second);
    EXPECT_TRUE(part<QLineEdit>("jobChoice")->isVisible());
    typeInto("jobStage", "agreed");
    QTest::keyClick(part<QLineEdit>("jobStage"), Qt::Key_Return);
    EXPECT_FALSE(part<QLineEdit>("jobStage")->accessibleDescription().isEmpty()) << "which one is not said yet";
    EXPECT_EQ(stageOf(issued.id), db::Stage::Quoted);
    typeInto("jobChoice", "Choice 1");
    QTest::keyClick(part<QLineEdit>("jobChoice"), Qt::Key_Return);
    EXPECT_EQ(cell(0, JobsTableModel::Total), first);
    typeInto("jobStage", "agreed");
    QTest::keyClick(part<QLineEdit>("jobStage"), Qt::Key_Return);
    EXPECT_EQ(stageOf(issued.id), db::Stage::Agreed);
    EXPECT_EQ(m_session->read([&](db::Book& book) { return book.quote(issued.id); })->order.lines[0].quantity.value(),
              24);
}

TEST_F(Jobs, takesTheDepositAndThenTheRest) {
    const auto lantern = give("Lantern", "Juniper Hill Swim Club");
    open();
    const auto total = *m_session->read([&](db::Book& book) { return book.quote(lantern.id); })->sealedTotal;
    part<QPushButton>("jobMoney")->click();
    sp::test::handleQueued();
    auto* dialog = m_page->window()->findChild<PaymentDialog*>();
    ASSERT_NE(dialog, nullptr);
    auto* amount = dialog->findChild<QLineEdit*>("paymentAmount");
    EXPECT_TRUE(amount->hasFocus());
    EXPECT_EQ(amount->text(), m_formatter->money(total)) << "without a deposit all of it is asked";
    amount->selectAll();
    QTest::keyClicks(amount, "50");
    dialog->findChild<QPushButton*>("takePayment")->click();
    const auto left = total - units::Money::fromMicros(50'000'000);
    EXPECT_EQ(amount->text(), m_formatter->money(left)) << "the rest";
    EXPECT_EQ(dialog->findChild<desk::FigureLabel*>("accountLeft")->text(), m_formatter->money(left));
    EXPECT_EQ(cell(0, JobsTableModel::Left), m_formatter->money(left));

    amount->selectAll();
    QTest::keyClicks(amount, "1000");
    auto* take = dialog->findChild<QPushButton*>("takePayment");
    const auto change = units::Money::fromMicros(1'000'000'000) - left;
    EXPECT_TRUE(take->text().contains(m_formatter->money(change))) << take->text().toStdString();
    EXPECT_TRUE(dialog->findChild<QPushButton*>("keepCredit")->isVisible());
    take->click(); // and change is given
    EXPECT_EQ(cell(0, JobsTableModel::Left), "paid");
    EXPECT_EQ(m_session->read([&](db::Book& book) { return book.account(lantern.id); })->left, units::Money{});

    dialog->findChild<QAbstractItemView*>("paymentList")
        ->setCurrentIndex(dialog->findChild<QAbstractItemView*>("paymentList")->model()->index(0, 0));
    dialog->findChild<QPushButton*>("takeBackPayment")->click();
    EXPECT_EQ(cell(0, JobsTableModel::Left), "50.00");
    EXPECT_EQ(m_session->read([&](db::Book& book) { return book.payments(lantern.id); })->size(), 4U)
        << "the change is a row, too";
    EXPECT_TRUE(take->isEnabled()) << "there is something to pay again";
    take->click();
    EXPECT_EQ(cell(0, JobsTableModel::Left), "paid");
    amount->selectAll();
    QTest::keyClicks(amount, "10");
    EXPECT_FALSE(take->isEnabled()) << "all of it would be change";
    dialog->findChild<QPushButton*>("giveBack")->click();
    EXPECT_EQ(cell(0, JobsTableModel::Left), "10.00");
    EXPECT_TRUE(take->isEnabled());
    dialog->close();
    JobsPresenter presenter(*m_session);
    EXPECT_FALSE(presenter.setStage(db::Stage::Declined).has_value());
    EXPECT_TRUE(cell(0, JobsTableModel::Left).endsWith(" paid")) << "nothing is owed for what was let go";
}

TEST_F(Jobs, isAgreedAndItsDepositTakenInFewKeys) {
    const auto lantern = give("Lantern", "Juniper Hill Swim Club");
    open();
    int keys = 0;
    const auto press = [&](QWidget* where, Qt::Key key, Qt::KeyboardModifiers with = Qt::NoModifier) {
        QTest::keyClick(where, key, with);
        sp::test::handleQueued();
        ++keys;
    };
    const auto dialogOf = [&] { return m_page->window()->findChild<PaymentDialog*>(); };
    press(m_page.get(), Qt::Key_N, Qt::AltModifier); // a button's key shows it pressed before it acts
    ASSERT_TRUE(sp::test::waitFor([&] { return stageOf(lantern.id) == db::Stage::Agreed; }));
    press(m_page.get(), Qt::Key_M, Qt::AltModifier);
    ASSERT_TRUE(sp::test::waitFor([&] { return dialogOf() != nullptr; }));
    auto* dialog = dialogOf();
    press(dialog, Qt::Key_Return);
    EXPECT_TRUE(sp::test::waitFor([&] { return cell(0, JobsTableModel::Left) == "paid"; }));
    press(dialog, Qt::Key_Escape);
    EXPECT_LE(keys, 8);
    for (const auto stage : {db::Stage::InProduction, db::Stage::Ready, db::Stage::Collected}) {
        part<QPushButton>("jobNext")->click();
        EXPECT_EQ(stageOf(lantern.id), stage);
    }
    EXPECT_FALSE(part<QPushButton>("jobNext")->isVisible());
}

TEST_F(Jobs, isCollectedAndPaidInFewKeys) {
    const auto lantern = give("Lantern", "Juniper Hill Swim Club");
    for (const auto stage : {db::Stage::Agreed, db::Stage::InProduction, db::Stage::Ready})
        ASSERT_TRUE(m_session->change([&](db::Book& book) { return book.setStage(lantern.id, stage); }));
    open();
    int keys = 0;
    const auto press = [&](QWidget* where, Qt::Key key, Qt::KeyboardModifiers with = Qt::NoModifier) {
        QTest::keyClick(where, key, with);
        sp::test::handleQueued();
        ++keys;
    };
    press(m_page.get(), Qt::Key_N, Qt::AltModifier);
    ASSERT_TRUE(sp::test::waitFor([&] { return stageOf(lantern.id) == db::Stage::Collected; }));
    press(m_page.get(), Qt::Key_M, Qt::AltModifier);
    ASSERT_TRUE(sp::test::waitFor([&] { return m_page->window()->findChild<PaymentDialog*>() != nullptr; }));
    auto* dialog = m_page->window()->findChild<PaymentDialog*>();
    press(dialog, Qt::Key_Return);
    EXPECT_TRUE(sp::test::waitFor([&] { return cell(0, JobsTableModel::Left) == "paid"; }));
    press(dialog, Qt::Key_Escape);
    EXPECT_LE(keys, 6);
}

TEST_F(Jobs, asksWhatMoreThanIsLeftIs) {
    const auto lantern = give("Lantern", "Juniper Hill Swim Club");
    const auto coin = units::Money::fromMicros(50'000);
    ASSERT_TRUE(m_session->change([&](db::Book& book) {
        auto shop = m_session->shop();
        shop.smallestCoin = coin;
        return book.save(shop);
    }));
    open();
    const auto total = m_session->read([&](db::Book& book) { return book.account(lantern.id); })->total;
    const auto due = pricing::countedOut(total, coin);
    ASSERT_NE(due, total) << "the demo's lantern ends in a cent that is no coin";
    part<QPushButton>("jobMoney")->click();
    sp::test::handleQueued();
    auto* dialog = m_page->window()->findChild<PaymentDialog*>();
    ASSERT_NE(dialog, nullptr);
    auto* amount = dialog->findChild<QLineEdit*>("paymentAmount");
    auto* kind = dialog->findChild<desk::ChoiceField*>("paymentKind");
    auto* take = dialog->findChild<QPushButton*>("takePayment");
    const auto choose = [&](const char* way) {
        kind->setFocus();
        kind->selectAll();
        QTest::keyClicks(kind, QString::fromUtf8(way));
        QTest::keyClick(kind, Qt::Key_Return);
        sp::test::handleQueued();
    };
    EXPECT_EQ(amount->text(), m_formatter->money(due)) << "as it is counted out";
    EXPECT_TRUE(take->text().contains(m_formatter->money(total))) << take->text().toStdString();
    choose("Card");
    EXPECT_EQ(amount->text(), m_formatter->money(total)) << "a card pays to the cent";
    amount->setFocus();
    amount->selectAll();
    QTest::keyClicks(amount, "500");
    EXPECT_FALSE(take->text().contains(m_formatter->money(total)));
    take->click(); // there is no change of a card
    EXPECT_FALSE(dialog->findChild<desk::ProblemNote*>("paymentProblem")->text().isEmpty());
    EXPECT_EQ(amount->text(), "500") << "what was typed stays";
    choose("Cash");
    EXPECT_EQ(amount->text(), "500");
    const auto change = units::Money::fromMicros(500'000'000) - due;
    EXPECT_TRUE(take->text().contains(m_formatter->money(change))) << take->text().toStdString();
    take->click();
    const auto payments = *m_session->read([&](db::Book& book) { return book.payments(lantern.id); });
    ASSERT_EQ(payments.size(), 3U) << "the money, the change, the rounding";
    EXPECT_EQ(payments[1].amount, -change);
    EXPECT_EQ(payments[2].amount, total - due);
    EXPECT_EQ(cell(0, JobsTableModel::Left), "paid");
    EXPECT_EQ(dialog->findChild<QAbstractItemView*>("paymentList")->model()->rowCount(), 3);
    ASSERT_TRUE(m_session->undo()) << "one step";
    EXPECT_EQ(m_session->read([&](db::Book& book) { return book.account(lantern.id); })->left, total);
    dialog->close();
}

TEST_F(Jobs, offersTheShopsOwnWaysToPay) {
    give("Lantern", "Juniper Hill Swim Club");
    ASSERT_TRUE(m_session->change([&](db::Book& book) {
        auto shop = m_session->shop();
        shop.waysToPay = {{"Voucher", false}, {"Stall till", true}};
        return book.save(shop);
    }));
    open();
    part<QPushButton>("jobMoney")->click();
    sp::test::handleQueued();
    auto* dialog = m_page->window()->findChild<PaymentDialog*>();
    auto* kind = dialog->findChild<desk::ChoiceField*>("paymentKind");
    EXPECT_EQ(kind->text(), "Voucher");
    auto* amount = dialog->findChild<QLineEdit*>("paymentAmount");
    amount->selectAll();
    QTest::keyClicks(amount, "500");
    auto* take = dialog->findChild<QPushButton*>("takePayment");
    const auto ofVoucher = take->text();
    kind->setCurrent(kind->choices().at(1).id);
    Q_EMIT kind->chosen(kind->choices().at(1).id);
    EXPECT_NE(take->text(), ofVoucher) << "change is given of the stall's till";
    dialog->close();
}

TEST_F(Jobs, saysWhyAPaymentCannotBe) {
    give("Lantern", "Juniper Hill Swim Club");
    open();
    part<QPushButton>("jobMoney")->click();
    sp::test::handleQueued();
    auto* dialog = m_page->window()->findChild<PaymentDialog*>();
    auto* amount = dialog->findChild<QLineEdit*>("paymentAmount");
    const auto said = [&] { return dialog->findChild<desk::ProblemNote*>("paymentProblem")->text(); };
    amount->selectAll();
    QTest::keyClicks(amount, "0");
    dialog->findChild<QPushButton*>("takePayment")->click();
    EXPECT_EQ(said(), "A payment of nothing is none; type how much it is.");
    EXPECT_EQ(amount->text(), "0") << "what was typed stays";
    EXPECT_FALSE(dialog->findChild<QPushButton*>("giveBack")->isEnabled()) << "nothing was paid";
    dialog->findChild<QPushButton*>("takeBackPayment")->isEnabled();
    dialog->close();
}

TEST_F(Jobs, anEmptyBookSendsToTheCounter) {
    open();
    QSignalSpy asked(m_page.get(), &JobsPage::counterAsked);
    for (auto* button : m_page->findChildren<QAbstractButton*>(QStringLiteral("emptyAction")))
        if (button->isVisible()) button->click();
    EXPECT_EQ(asked.count(), 1);
    EXPECT_FALSE(part<QTableView>("jobs")->isVisible());
}

TEST_F(Jobs, everyInputHasANameAndAKeyOfItsOwn) {
    give("Lantern", "Juniper Hill Swim Club");
    open();
    for (auto* widget : m_page->findChildren<QWidget*>()) {
        if (!widget->isVisible() || widget->focusPolicy() == Qt::NoFocus) continue;
        EXPECT_FALSE(QAccessible::queryAccessibleInterface(widget)->text(QAccessible::Name).isEmpty())
            << widget->metaObject()->className();
        EXPECT_FALSE(widget->objectName().isEmpty()) << widget->metaObject()->className();
    }
    std::multiset<QString> keys;
    for (auto* label : m_page->findChildren<QLabel*>())
        if (label->buddy()) keys.insert(QKeySequence::mnemonic(label->text()).toString());
    for (auto* button : m_page->findChildren<QAbstractButton*>())
        if (const auto key = QKeySequence::mnemonic(button->text()); !key.isEmpty()) keys.insert(key.toString());
    EXPECT_EQ(keys.size(), 13U);
    for (const auto& key : keys) EXPECT_EQ(keys.count(key), 1U) << key.toStdString();
    EXPECT_EQ(keys.count(QString()), 0U) << "a label without a key";
}

TEST_F(Jobs, theTableBehavesAsAModel) {
    JobsTableModel model(*m_formatter);
    const QAbstractItemModelTester tester(&model, QAbstractItemModelTester::FailureReportingMode::Fatal);
    give("Lantern", "Juniper Hill Swim Club");
    draft("Heron", "Wren and Daughter, florists");
    const auto two = *m_session->read([](db::Book& book) { return book.quotes({}, 10); });
    const QSignalSpy resets(&model, &QAbstractItemModel::modelReset);
    model.setRows(two);
    model.setRows(two);
    EXPECT_EQ(resets.count(), 1);
    EXPECT_EQ(model.rowCount(), 2);
    EXPECT_LT(model.index(0, JobsTableModel::Total).data(JobsTableModel::SortRole).toLongLong(),
              model.index(1, JobsTableModel::Total).data(JobsTableModel::SortRole).toLongLong());
    EXPECT_EQ(model.headerData(JobsTableModel::Total, Qt::Horizontal, Qt::DisplayRole), "To pay");
    model.setRows({});
    EXPECT_EQ(model.rowCount(), 0);
    model.setRows({two[0]}, true);
    EXPECT_TRUE(model.canFetchMore({}));
    model.setRows(two);
    EXPECT_EQ(model.rowCount(), 2);
    EXPECT_FALSE(model.canFetchMore({}));
}

TEST(StageWord, everyStageHasItsOwn) {
    std::set<QString> words;
    for (int stage = 0; stage <= static_cast<int>(db::Stage::Declined); ++stage)
        words.insert(words::nameOf(static_cast<db::Stage>(stage)));
    EXPECT_EQ(words.size(), 7U);
    EXPECT_EQ(words.count(QString()), 0U);
}

} // namespace sp::jobs::test

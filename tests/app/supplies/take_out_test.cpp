// SPDX-License-Identifier: MIT
// What goes out of the shelf in Supplies is booked for a job at work, and what is odd about its figures is said.
#include "app/demo/demo_orders.h"
#include "app/desk/choice_field.h"
#include "app/supplies/supplies_page.h"
#include "tests/app/supplies/supplies_fixture.h"

#include <QComboBox>

#include <algorithm>

using namespace sp;

namespace {

class TakeOut : public test::SuppliesTest {
  protected:
    TakeOut() {
        auto book = demo::createBusyDemo(m_folder / "busy.jobbook", m_clock.environment());
        EXPECT_TRUE(book.has_value());
        m_session = std::make_unique<session::BookSession>(std::move(*book));
        show(std::make_unique<supplies::SuppliesPage>(*m_session, *m_formatter));
    }
    std::vector<db::QuoteSummary> jobsAt(db::Stage stage) {
        db::Wanted wanted;
        wanted.stage = stage;
        return m_session->read([&](db::Book& book) { return book.find(wanted); })->jobs;
    }
    db::records::StockMove lastMove() {
        const auto id = m_session->materials().front().id;
        return m_session->read([&](db::Book& book) { return book.movesOf(id); })->back();
    }
    desk::ChoiceField& jobField() { return *m_page->findChild<desk::ChoiceField*>(QStringLiteral("outForJob")); }
    void takeUsed(const char* many, const std::string& job) {
        type("outForJob", job.c_str());
        type("shelfAmount", many);
        click("takeOut");
    }
};

TEST_F(TakeOut, isBookedForTheJobThatWasChosen) {
    const auto making = jobsAt(db::Stage::InProduction);
    ASSERT_FALSE(making.empty());
    const auto id = m_session->materials().front().id;
    ASSERT_TRUE(m_session->change([&](db::Book& book) { return book.countShelf(id, 500, ""); }));
    takeUsed("40", making.front().number);
    EXPECT_EQ(lastMove().amount, -40);
    EXPECT_EQ(lastMove().kind, db::records::MoveKind::Used);
    EXPECT_EQ(lastMove().job, making.front().id);
    EXPECT_EQ(m_page->findChild<desk::ChoiceField*>(QStringLiteral("outForJob"))->text(), QString());
    type("shelfAmount", "3");
    click("takeOut");
    EXPECT_EQ(lastMove().amount, -3);
    EXPECT_FALSE(lastMove().job.has_value()) << "for nobody, unless it is said";
}

TEST_F(TakeOut, forAJobThatIsNoneBooksNothing) {
    const auto id = m_session->materials().front().id;
    ASSERT_TRUE(m_session->change([&](db::Book& book) { return book.countShelf(id, 500, ""); }));
    const auto before = lastMove().id;
    takeUsed("40", "no such job");
    EXPECT_EQ(lastMove().id, before);
    EXPECT_EQ(m_page->findChild<desk::ChoiceField*>(QStringLiteral("outForJob"))->text(), "no such job");
}

TEST_F(TakeOut, countsInWhatComesBackFromTheJobThatWasChosen) {
    const auto making = jobsAt(db::Stage::InProduction);
    ASSERT_FALSE(making.empty());
    const auto id = m_session->materials().front().id;
    ASSERT_TRUE(m_session->change([&](db::Book& book) { return book.countShelf(id, 500, ""); }));
    takeUsed("40", making.front().number);
    type("outForJob", making.front().number.c_str());
    type("shelfAmount", "15");
    click("countIn");
    EXPECT_EQ(lastMove().amount, 15);
    EXPECT_EQ(lastMove().kind, db::records::MoveKind::Returned);
    EXPECT_EQ(lastMove().job, making.front().id);
    EXPECT_EQ(jobField().text(), QString());
    const auto before = lastMove().id;
    type("outForJob", making.front().number.c_str());
    type("shelfCost", "3");
    type("shelfAmount", "15");
    click("countIn");
    EXPECT_EQ(lastMove().id, before) << "what comes back was paid for already";
}

TEST_F(TakeOut, offersAJobThatWasLetGoWhileSomethingIsBookedForIt) {
    const auto agreed = jobsAt(db::Stage::Agreed);
    ASSERT_FALSE(agreed.empty());
    const auto id = m_session->materials().front().id;
    const auto job = agreed.front().id;
    const auto isOffered = [&] {
        const auto& choices = jobField().choices();
        return std::any_of(choices.begin(), choices.end(),
                           [&](const desk::Choice& choice) { return choice.id == QVariant::fromValue(job); });
    };
    ASSERT_TRUE(m_session->change([&](db::Book& book) { return book.countShelf(id, 500, ""); }));
    ASSERT_TRUE(m_session->change([&](db::Book& book) {
        return book.moveStock({{}, id, -40, {}, "", {}, db::records::MoveKind::Used, job});
    }));
    ASSERT_TRUE(m_session->change([&](db::Book& book) { return book.setStage(job, db::Stage::Declined); }));
    test::handleQueued();
    EXPECT_TRUE(isOffered());
    type("outForJob", agreed.front().number.c_str());
    type("shelfAmount", "40");
    click("countIn");
    EXPECT_EQ(lastMove().job, job);
    EXPECT_FALSE(isOffered()) << "nothing is booked for it any more";
}

TEST_F(TakeOut, takesAJobOnceItsWholeNameIsTyped) {
    const auto making = jobsAt(db::Stage::InProduction);
    ASSERT_FALSE(making.empty());
    const auto id = m_session->materials().front().id;
    ASSERT_TRUE(m_session->change([&](db::Book& book) { return book.countShelf(id, 500, ""); }));
    const auto before = lastMove().id;
    const auto number = QString::fromStdString(making.front().number);
    type("shelfAmount", "40");
    jobField().setTyped(number.chopped(1));
    click("takeOut");
    EXPECT_EQ(lastMove().id, before) << "a part of it is no job";
    jobField().setTyped(number);
    click("takeOut");
    EXPECT_EQ(lastMove().amount, -40);
    EXPECT_EQ(lastMove().job, making.front().id);
}

TEST_F(TakeOut, aCountHasNothingToDoWithTheJob) {
    const auto id = m_session->materials().front().id;
    ASSERT_TRUE(m_session->change([&](db::Book& book) { return book.countShelf(id, 500, ""); }));
    type("shelfAmount", "480");
    jobField().setTyped(QStringLiteral("no such job"));
    click("countShelf");
    EXPECT_EQ(lastMove().amount, -20);
    EXPECT_EQ(jobField().text(), QStringLiteral("no such job"));
}

TEST_F(TakeOut, whatGoesBackToASupplierIsForNoJob) {
    const auto making = jobsAt(db::Stage::InProduction);
    ASSERT_FALSE(making.empty());
    jobField().setTyped(QString::fromStdString(making.front().number));
    auto* outAs = m_page->findChild<QComboBox*>(QStringLiteral("outAs"));
    ASSERT_NE(outAs, nullptr);
    outAs->setCurrentIndex(outAs->findData(static_cast<int>(db::records::MoveKind::Returned)));
    EXPECT_FALSE(jobField().isEnabled());
    EXPECT_EQ(jobField().text(), QString());
    outAs->setCurrentIndex(outAs->findData(static_cast<int>(db::records::MoveKind::Used)));
    EXPECT_TRUE(jobField().isEnabled());
}

TEST_F(TakeOut, saysThatAShopThatBooksByHandKeepsItPromised) {
    const auto set = [this](catalogue::UsedWhen when) {
        auto shop = m_session->shop();
        shop.usedWhen = when;
        ASSERT_TRUE(m_session->change([&](db::Book& book) { return book.save(shop); }));
        test::handleQueued();
    };
    set(catalogue::UsedWhen::ByHand);
    ASSERT_NE(said("onHand").find("promised"), std::string::npos) << said("onHand");
    EXPECT_NE(said("shelfRemarks").find("You book by hand"), std::string::npos) << said("shelfRemarks");
    set(catalogue::UsedWhen::Ready);
    EXPECT_EQ(said("shelfRemarks"), "");
}

} // namespace

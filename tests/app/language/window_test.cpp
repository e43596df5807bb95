// SPDX-License-Identifier: MIT
// Everything the window shows, in a language of accents a third longer than English, at its usual size: what still has
// a letter of ASCII was not translated, unless it is the shop's own word, and what does not fit is cut.
#include "app/artwork/estimate_page.h"
#include "app/main/book_trouble.h"
#include "app/main/launcher.h"
#include "app/plans/plan_dialog.h"
#include "app/supplies/price_list_dialog.h"
#include "tests/app/artwork/drop_window.h"
#include "tests/app/language/onlooker.h"
#include "tests/support/found_texts.h"
#include "tests/support/pseudo_language.h"
#include "tests/support/wait_for.h"

#include <QAbstractButton>
#include <QAction>
#include <QDialog>
#include <QMessageBox>
#include <QPlainTextEdit>
#include <QTableView>

#include <gmock/gmock.h>

#include <utility>

using namespace sp;
using program::PlaceId;

namespace {

/// Installed before the window is made.
struct Spoken {
    test::PseudoLanguage language;
};

class InAnotherLanguage : private Spoken, public test::DropWindow {
  protected:
    InAnotherLanguage() {
        m_window->resize(1280, 800);
        m_onlooker.knowBook(m_window->session());
    }
    void TearDown() override {
        EXPECT_EQ(m_onlooker.count(), 0U) << m_onlooker.found();
        if (!test::foundTexts().empty()) {
            EXPECT_THAT(test::notFound(language.asked()), testing::IsEmpty()) << "no translation would hold these";
        }
    }

    void lookEverywhere(const QString& where) {
        test::handleQueued();
        // What undo takes back is still named by db, in English.
        m_onlooker.know(m_window->session().undoText().toStdString());
        m_onlooker.lookAtAll(*m_window, where);
        EXPECT_LE(m_window->minimumSizeHint().width(), 1280) << where.toStdString();
        EXPECT_LE(m_window->minimumSizeHint().height(), 800) << where.toStdString();
    }

    void pull(const char* source) {
        const auto text = test::PseudoLanguage::accented(QString::fromUtf8(source));
        for (auto* action : m_window->findChildren<QAction*>())
            if (action->text() == text) return action->trigger();
        FAIL() << "the menu has no " << source;
    }
    void click(const char* name) {
        find<QAbstractButton>(name)->click();
        test::handleQueued();
    }
    void enter(const char* name, const char* text) {
        auto* to = field(name);
        to->setFocus();
        to->selectAll();
        QTest::keyClicks(to, QString::fromUtf8(text));
        QTest::keyClick(to, Qt::Key_Return);
        test::handleQueued();
    }
    QDialog* dialog() {
        for (auto* one : m_window->findChildren<QDialog*>())
            if (one->isVisible()) return one;
        return nullptr;
    }
    void lookAtDialog(const QString& where) {
        test::handleQueued();
        auto* shown = dialog();
        ASSERT_NE(shown, nullptr) << where.toStdString();
        m_onlooker.lookAtAll(*shown, where);
        shown->close();
        test::handleQueued();
    }

    /// What the last question for a file said; nothing was asked since the one before: a failure.
    void lookAtQuestion(const QString& where) {
        const auto asked = std::exchange(m_prompter.asked, std::nullopt);
        ASSERT_TRUE(asked.has_value()) << where.toStdString();
        for (const auto& text : {asked->title, asked->name, asked->kinds}) m_onlooker.look(where, text);
    }

    bool estimateIsThere() {
        return test::waitFor([this] { return !m_window->findChild<artwork::EstimatePage*>()->presenter().isBusy(); });
    }

    test::Onlooker m_onlooker;
};

TEST_F(InAnotherLanguage, everyPlace) {
    lookEverywhere(QStringLiteral("Counter"));
    orderLantern();
    lookEverywhere(QStringLiteral("Counter, ordered"));
    for (int place = 1; place < test::kPlaceCount; ++place) {
        m_window->goTo(static_cast<PlaceId>(place));
        lookEverywhere(QStringLiteral("Place %1").arg(place));
    }
}

TEST_F(InAnotherLanguage, theFirstSteps) {
    m_window->goTo(PlaceId::FirstSteps);
    for (int step = 1; step <= 7; ++step) {
        click(QStringLiteral("firstStep%1").arg(step).toLatin1().constData());
        lookEverywhere(QStringLiteral("Step %1").arg(step));
    }
    click("firstStep6");
    enter("firstDesignWidth", "3");
    click("firstNext");
    lookEverywhere(QStringLiteral("A design without a name"));
}

TEST_F(InAnotherLanguage, theSlipTurnedOverAndTheQuoteGiven) {
    orderLantern();
    press(Qt::Key_F9);
    EXPECT_TRUE(test::waitFor([this] { return !find<QAbstractButton>("buy")->text().isEmpty(); }));
    lookEverywhere(QStringLiteral("The owner's side"));
    enter("askInstead", "0.10");
    lookEverywhere(QStringLiteral("Below the floor"));
    enter("askInstead", "");
    enter("wantedBy", "+2");
    enter("discount", "10 %");
    press(Qt::Key_F9);
    lookEverywhere(QStringLiteral("With rush and discount"));
    enter("customer", "Juniper");
    press(Qt::Key_Return, Qt::ControlModifier);
    lookEverywhere(QStringLiteral("Given"));
    m_window->goTo(PlaceId::Jobs);
    lookEverywhere(QStringLiteral("Jobs with a quote"));
    click("jobChanges");
    lookAtDialog(QStringLiteral("What has changed"));
}

TEST_F(InAnotherLanguage, entriesThatCannotBeRead) {
    orderLantern();
    for (const auto& [name, typed] :
         {std::pair{"pieces", "0"}, std::pair{"pieces", "two"}, std::pair{"width", "9 bananas"},
          std::pair{"height", "1/0 in"}, std::pair{"wantedBy", "someday"}, std::pair{"discount", "120 %"},
          std::pair{"stone0", "Mauve"}, std::pair{"onto", "Nowhere"}, std::pair{"customer", "Nobody"}}) {
        m_onlooker.know(typed);
        enter(name, typed);
        lookEverywhere(QStringLiteral("%1: %2").arg(QLatin1String(name), QLatin1String(typed)));
    }
    m_window->goTo(PlaceId::Shop);
    test::handleQueued();
    m_onlooker.know("25 dollars");
    enter("labour", "25 dollars");
    lookEverywhere(QStringLiteral("Shop, unread"));
    m_window->goTo(PlaceId::Counter);
    lookEverywhere(QStringLiteral("Counter, with an entry unread elsewhere"));
}

TEST_F(InAnotherLanguage, whatTheBookMenuAnswers) {
    orderLantern();
    pull("C&heck this book");
    lookEverywhere(QStringLiteral("Being checked"));
    EXPECT_TRUE(test::waitFor([this] { return !m_window->care().isBusy(); }));
    lookEverywhere(QStringLiteral("Checked"));
    m_onlooker.know(m_window->care().keeper().folder().string());
    pull("Back&ups…");
    lookAtDialog(QStringLiteral("Backups"));
    const auto undo = m_window->session().undoText();
    m_onlooker.know(undo.toStdString());
    press(Qt::Key_Z, Qt::ControlModifier);
    lookEverywhere(QStringLiteral("Undone"));
    press(Qt::Key_Z, Qt::ControlModifier | Qt::ShiftModifier);
    lookEverywhere(QStringLiteral("Redone"));
    pull("F&ind a quote…");
    lookEverywhere(QStringLiteral("Finding a quote"));
    enter("findJob", "qqq");
    m_onlooker.know("qqq");
    lookEverywhere(QStringLiteral("No quote found"));
    pull("&Keys and help");
    lookAtDialog(QStringLiteral("Keys and help"));
    pull("About Stonepenn&y");
    // What it stands on, and its licences.
    m_onlooker.know("Qt SQLite fmt pugixml JSON MIT LGPL");
    lookAtDialog(QStringLiteral("About"));
}

TEST_F(InAnotherLanguage, cutFiles) {
    const auto lettering = write("crest.svg", R"(<svg width="60mm" height="20mm" viewBox="0 0 60 20">
        <g id="front" fill="#1f3a93"><circle cx="10" cy="10" r="1.4"/><circle cx="20" cy="10" r="1.4"/>
        <circle cx="20" cy="10" r="1.4"/><circle cx="30" cy="10" r="4.5"/></g>
        <g fill="#ff0000"><circle cx="40" cy="10" r="1.4"/></g><rect width="2" height="3"/></svg>)");
    m_onlooker.know("crest svg front shape plate text");
    drop(lettering);
    lookEverywhere(QStringLiteral("Counted"));
    EXPECT_TRUE(page().isVisible());
    press(Qt::Key_Escape);
    drop(write("shape.svg", R"(<svg width="60mm" height="20mm" viewBox="0 0 60 20"><path d="M0,0H60V20H0Z"/></svg>)"));
    lookEverywhere(QStringLiteral("A shape without stones"));
    drop(write("text.svg", "no drawing"));
    lookEverywhere(QStringLiteral("No drawing"));
    drop(write("plate.svg", R"(<svg><circle r="5.2913"/></svg>)"));
    lookEverywhere(QStringLiteral("No scale"));
}

TEST_F(InAnotherLanguage, estimates) {
    press(Qt::Key_I, Qt::ControlModifier | Qt::ShiftModifier);
    lookEverywhere(QStringLiteral("Estimate"));
    m_onlooker.know("GO TEAM");
    auto* text = find<QPlainTextEdit>("estimateText");
    auto* font = find<desk::ChoiceField>("estimateFont");
    m_onlooker.know("DejaVu Sans");
    font->setCurrent(QStringLiteral("DejaVu Sans"));
    for (const auto* typed : {"GO TEAM", "—"}) {
        text->setPlainText(QString::fromUtf8(typed));
        EXPECT_TRUE(estimateIsThere());
        lookEverywhere(QStringLiteral("Estimate of %1").arg(QString::fromUtf8(typed)));
    }
    enter("estimatePitch", "1 mm");
    EXPECT_TRUE(estimateIsThere());
    lookEverywhere(QStringLiteral("Estimate, too tight"));
}

TEST_F(InAnotherLanguage, dialogs) {
    orderLantern();
    m_window->goTo(PlaceId::Designs);
    test::handleQueued();
    click("designPlan");
    EXPECT_TRUE(test::waitFor([this] {
        const auto* shown = qobject_cast<plans::PlanDialog*>(dialog());
        return shown && !shown->planner().isBusy();
    }));
    lookAtDialog(QStringLiteral("Sheet plan"));
    m_window->goTo(PlaceId::Counter);
    pull("&Print or save the sheet…");
    lookAtDialog(QStringLiteral("The quote sheet"));
    m_window->goTo(PlaceId::Supplies);
    test::handleQueued();
    auto* list = find<QAbstractItemView>("supplies");
    const auto* model = list->model();
    for (int row = 0; row < model->rowCount(); ++row) {
        list->setCurrentIndex(model->index(row, 0));
        lookEverywhere(QStringLiteral("Supplies, %1").arg(model->index(row, 0).data().toString()));
    }
}

TEST_F(InAnotherLanguage, whichFileIsAsked) {
    m_onlooker.know("jobbook svg svgz dxf plt csv demo");
    orderLantern();
    pull("&Save a copy of this book…");
    lookAtQuestion(QStringLiteral("Saving a copy"));
    m_prompter.target = QString::fromStdString((m_folder.path() / "plain.jobbook").string());
    m_onlooker.know(m_prompter.target->toStdString());
    pull("&Save a copy of this book…");
    EXPECT_TRUE(test::waitFor([this] { return !m_window->care().isBusy(); }));
    lookEverywhere(QStringLiteral("A copy saved"));
    m_prompter.target.reset();
    pull("&Count a cut file…");
    lookAtQuestion(QStringLiteral("Counting a cut file"));
    press(Qt::Key_I, Qt::ControlModifier | Qt::ShiftModifier);
    click("estimateChooseFile");
    lookAtQuestion(QStringLiteral("Estimating from a shape"));
    m_window->goTo(PlaceId::Buying);
    EXPECT_TRUE(test::waitFor([this] { return find<QAbstractButton>("listCsv")->isEnabled(); }));
    click("listCsv");
    lookAtQuestion(QStringLiteral("Saving the shopping list"));
}

/// The first window over a book of somebody's own, and the questions that lead to it.
TEST_F(InAnotherLanguage, aFirstBook) {
    m_onlooker.know("jobbook bare");
    program::Launcher launcher(m_theme, m_prompter);
    const auto missing = m_folder.path() / "Mastodon.jobbook";
    m_onlooker.know("Mastodon " + missing.string());
    launcher.start(program::openFirstBook(QString::fromStdString(missing.string())));
    ASSERT_NE(launcher.trouble(), nullptr);
    m_onlooker.lookAtAll(*launcher.trouble(), QStringLiteral("A missing book"));
    launcher.start({db::Book::create(m_folder.path() / "bare.jobbook", m_clock.environment()), {}});
    ASSERT_NE(launcher.window(), nullptr);
    Q_EMIT launcher.window()->openBookAsked(QString());
    test::handleQueued();
    lookAtQuestion(QStringLiteral("Opening a book"));
    m_prompter.target = QString::fromStdString((m_folder.path() / "mine.jobbook").string());
    Q_EMIT launcher.window()->newBookAsked();
    test::handleQueued();
    lookAtQuestion(QStringLiteral("Starting a book"));
    m_onlooker.know("mine");
    auto& window = *launcher.window();
    ASSERT_TRUE(test::waitFor([&] { return window.findChild<QWidget*>(QStringLiteral("design")); }));
    window.resize(1280, 800);
    for (int place = 0; place < test::kPlaceCount; ++place) {
        window.goTo(static_cast<PlaceId>(place));
        test::handleQueued();
        m_onlooker.knowBook(window.session());
        m_onlooker.lookAtAll(window, QStringLiteral("A first book, place %1").arg(place));
    }
}

TEST_F(InAnotherLanguage, aPriceList) {
    auto& session = m_window->session();
    base::Id supplier;
    for (const auto& known : session.suppliers())
        if (known.name == "Kestrel Row Stones") supplier = known.id;
    const desk::Formatter formatter(QLocale(), session.shop());
    supplies::PriceListDialog dialog(session, formatter, supplier, *units::Date::parse("2026-11-25"));
    dialog.show();
    m_onlooker.lookAtAll(dialog, QStringLiteral("Price list"));
    m_onlooker.know("item no holds price list csv Moonglow");
    const auto load = [&](const QString& file) {
        dialog.load(file);
        ASSERT_TRUE(test::waitFor([&] { return !dialog.isBusy(); }));
        test::handleQueued();
    };
    m_onlooker.know("great gross KR SS Topaz");
    load(write("list.csv",
               "item no,item,holds,price\nKR-1,Jet SS10,1440,7.20\nKR-2,Amber SS10,1440,8.90\nKR-3,Rose SS10,1 great "
               "gross,11.90\nKR-4,Rose SS10,500,11.90\nKR-5,Moonglow,1440,3\nKR-6,Topaz SS10,1440,3\n"));
    auto* rows = dialog.findChild<QTableView*>(QStringLiteral("listRows"));
    ASSERT_NE(rows, nullptr);
    for (int row = 0; row < rows->model()->rowCount(); ++row) {
        rows->setCurrentIndex(rows->model()->index(row, 0));
        test::handleQueued();
        m_onlooker.lookAtAll(dialog, QStringLiteral("Price list, row %1").arg(row));
    }
    auto* make = dialog.findChild<QCheckBox*>(QStringLiteral("listMake"));
    ASSERT_NE(make, nullptr);
    make->click();
    ASSERT_TRUE(test::waitFor([&] { return !dialog.isBusy(); }));
    test::handleQueued();
    m_onlooker.lookAtAll(dialog, QStringLiteral("Price list read"));
    load(write("bad.csv", "a,b\n\"c,d"));
    m_onlooker.know("bad csv");
    m_onlooker.lookAtAll(dialog, QStringLiteral("Price list that cannot be read"));
}

} // namespace

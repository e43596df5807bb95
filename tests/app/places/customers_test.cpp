// SPDX-License-Identifier: MIT
// The Customers place driven by keys, off screen, on a fresh demo book.
#include "app/customers/customers_page.h"
#include "app/demo/demo_book.h"
#include "app/desk/theme.h"
#include "db/book/written_file.h"
#include "tests/support/held_clock.h"
#include "tests/support/temp_folder.h"
#include "tests/support/wait_for.h"

#include <QApplication>
#include <QBuffer>
#include <QDialog>
#include <QLabel>
#include <QLineEdit>
#include <QPixmap>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QTableView>
#include <QTest>
#include <QToolButton>
#include <gtest/gtest.h>

#include <algorithm>
#include <fstream>
#include <iterator>

using namespace sp;

namespace {

struct GivenFile : desk::Prompter {
    std::optional<QString> fileToSave(const FileQuestion&) override { return path; }
    std::optional<QString> fileToOpen(const FileQuestion&) override { return path; }
    std::optional<QString> folderToUse(const FileQuestion&) override { return path; }
    std::optional<QString> path;
};

class Customers : public testing::Test {
  protected:
    Customers() {
        QLocale::setDefault(QLocale(QLocale::English, QLocale::UnitedStates));
        auto book = demo::createDemoBook(m_folder / "demo.jobbook", m_clock.environment());
        EXPECT_TRUE(book.has_value());
        m_session = std::make_unique<session::BookSession>(std::move(*book));
        m_formatter = std::make_unique<desk::Formatter>(QLocale(), m_session->shop());
        m_places.root = m_folder / "backups";
        m_page = std::make_unique<customers::CustomersPage>(
            *m_session, *m_formatter, m_prompter, [this] { return m_places; }, writers());
        m_page->resize(1274, 768);
        m_page->show();
        QApplication::setActiveWindow(m_page.get());
        test::handleQueued();
    }

    /// Papers as a line of text each: how they look is tested with the papers.
    static customers::PaperWriters writers() {
        return {[](db::Book&, const db::Quote& quote, const std::string& path, db::IfThere ifThere) {
                    return db::writeFile(path, quote.number, ifThere);
                },
                [](const db::IssuedBill& bill, const std::string& path, db::IfThere ifThere) {
                    return db::writeFile(path, bill.number, ifThere);
                }};
    }

    const catalogue::Customer* named(const std::string& name) {
        for (const auto& one : m_session->customers())
            if (one.name == name) return &one;
        return nullptr;
    }
    void open(const std::string& name) {
        ASSERT_NE(named(name), nullptr) << name;
        m_page->open(named(name)->id);
        test::handleQueued();
    }
    template<class Widget>
    Widget* in(QWidget& where, const char* name) {
        auto* found = where.findChild<Widget*>(QLatin1String(name));
        EXPECT_NE(found, nullptr) << name;
        return found;
    }
    void type(const char* name, const char* text) {
        auto* target = in<QLineEdit>(*m_page, name);
        target->setFocus();
        target->selectAll();
        QTest::keyClicks(target, QString::fromUtf8(text));
        QTest::keyClick(target, Qt::Key_Return);
        test::handleQueued();
    }
    void add(const std::string& name) {
        catalogue::Customer made;
        made.name = name;
        ASSERT_TRUE(m_session->change([&](db::Book& book) { return book.save(made); }));
    }
    QDialog* askedToErase() {
        in<QPushButton>(*m_page, "eraseCustomer")->click();
        test::handleQueued();
        return m_page->findChild<QDialog*>(QStringLiteral("eraseCustomerQuestion"));
    }
    static bool says(const QDialog& dialog, const QString& words) {
        const auto labels = dialog.findChildren<QLabel*>();
        return std::ranges::any_of(labels, [&](const QLabel* label) { return label->text().contains(words); });
    }
    std::string said(const char* name) { return in<QLabel>(*m_page, name)->text().toStdString(); }
    /// Presses a button of the page, then one of the dialog that opens.
    void answer(const char* button, const char* inDialog) {
        in<QPushButton>(*m_page, button)->click();
        test::handleQueued();
        QWidget* dialog = nullptr;
        for (auto* widget : QApplication::topLevelWidgets())
            if (qobject_cast<QDialog*>(widget) != nullptr && widget->isVisible()) dialog = widget;
        if (dialog == nullptr)
            for (auto* widget : m_page->findChildren<QDialog*>()) dialog = widget;
        ASSERT_NE(dialog, nullptr);
        in<QPushButton>(*dialog, inDialog)->click();
        test::handleQueued();
    }

    test::HeldClock m_clock;
    test::TempFolder m_folder;
    GivenFile m_prompter;
    db::BackupPlaces m_places;
    desk::Theme m_theme{*qApp, desk::Scheme::Light};
    std::unique_ptr<session::BookSession> m_session;
    std::unique_ptr<desk::Formatter> m_formatter;
    std::unique_ptr<customers::CustomersPage> m_page;
};

TEST_F(Customers, aCertificateIsOnFileOnceItIsWhole) {
    const char* name = "Juniper Hill Swim Club";
    open(name);
    type("certificateNumber", "77-01");
    type("certificatePlace", "Westmark");
    EXPECT_FALSE(named(name)->certificate.has_value()) << "half a certificate";
    type("certificateIssued", "2026-02-01");
    ASSERT_TRUE(named(name)->certificate.has_value());
    EXPECT_EQ(named(name)->certificate->number, "77-01");
    EXPECT_EQ(named(name)->certificate->issuedOn.iso(), "2026-02-01");
    EXPECT_FALSE(named(name)->certificate->expiresOn.has_value());
    EXPECT_FALSE(in<QLabel>(*m_page, "certificateEnds")->isVisible());
    const auto soon = m_session->today().plusDays(7);
    type("certificateExpires", soon.iso().c_str());
    ASSERT_EQ(named(name)->certificate->expiresOn, soon);
    EXPECT_TRUE(in<QLabel>(*m_page, "certificateEnds")->isVisible());
}

TEST_F(Customers, furtherCertificatesAreOnFileOnceTheyAreWhole) {
    const char* name = "Juniper Hill Swim Club";
    open(name);
    const auto others = [&] { return named(name)->otherCertificates; };
    in<QPushButton>(*m_page, "certificateAdd")->click();
    test::handleQueued();
    type("certificateNumber0", "77-02");
    type("certificatePlace0", "Eastmark");
    EXPECT_TRUE(others().empty()) << "half a certificate";
    add("Ada Quince"); // all is shown anew
    test::handleQueued();
    EXPECT_EQ(in<QLineEdit>(*m_page, "certificateNumber0")->text(), "77-02") << "what is half typed stays";
    type("certificateIssued0", "2026-02-01");
    ASSERT_EQ(others().size(), 1U);
    EXPECT_EQ(others()[0].place, "Eastmark");
    const auto soon = m_session->today().plusDays(7);
    type("certificateExpires0", "2025-02-01");
    EXPECT_FALSE(others()[0].expiresOn) << "before it was issued";
    type("certificateExpires0", soon.iso().c_str());
    EXPECT_EQ(others()[0].expiresOn, soon);
    EXPECT_TRUE(in<QLabel>(*m_page, "certificateEnds")->isVisible());
    EXPECT_TRUE(in<QLabel>(*m_page, "certificateEnds")->text().contains(QStringLiteral("Eastmark")));
    type("certificateNumber0", "");
    EXPECT_EQ(others()[0].number, "77-02") << "on file as it was, while it is half typed";
    open("Ada Quince");
    open(name);
    EXPECT_EQ(in<QLineEdit>(*m_page, "certificateNumber0")->text(), "77-02");
    ASSERT_TRUE(m_session->undo());
    EXPECT_FALSE(others()[0].expiresOn);
}

TEST_F(Customers, whatIsHalfTypedTakesNothingBackThatCameInBesides) {
    const char* name = "Juniper Hill Swim Club";
    open(name);
    const auto others = [&] { return named(name)->otherCertificates; };
    const auto day = *units::Date::parse("2026-02-01");
    const auto save = [&](auto&& change) {
        auto customer = *named(name);
        change(customer.otherCertificates);
        ASSERT_TRUE(m_session->change([&](db::Book& book) { return book.save(customer); }));
        test::handleQueued();
    };
    save([&](auto& all) { all = {{"77-01", "Westmark", day, {}}, {"77-02", "Eastmark", day, {}}}; });
    in<QPushButton>(*m_page, "certificateAdd")->click();
    test::handleQueued();
    type("certificateNumber2", "77-03");
    save([&](auto& all) { // by another window, by a file that was read, by undo
        all.erase(all.begin());
        all.push_back({"77-09", "Northmark", day, {}});
    });
    type("certificatePlace2", "Southmark");
    type("certificateIssued2", "2026-02-01");
    std::vector<std::string> numbers;
    for (const auto& one : others()) numbers.push_back(one.number);
    EXPECT_EQ(numbers, (std::vector<std::string>{"77-02", "77-03", "77-09"}));
    EXPECT_EQ(in<QLineEdit>(*m_page, "certificateNumber2")->text(), "77-09") << "all are shown again";
}

TEST_F(Customers, ofTwoEqualCertificatesOneIsTakenOut) {
    const char* name = "Juniper Hill Swim Club";
    const catalogue::Certificate twice{"77-02", "Eastmark", *units::Date::parse("2026-02-01"), {}};
    auto customer = *named(name);
    customer.otherCertificates = {twice, twice};
    ASSERT_TRUE(m_session->change([&](db::Book& book) { return book.save(customer); }));
    open(name);
    QToolButton* remove = nullptr;
    for (auto* button : m_page->findChildren<QToolButton*>())
        if (button->accessibleName() == "Take further certificate 2 out") remove = button;
    ASSERT_NE(remove, nullptr);
    in<QLineEdit>(*m_page, "certificateNumber0")->setFocus();
    in<QLineEdit>(*m_page, "certificateNumber0")->selectAll();
    QTest::keyClicks(in<QLineEdit>(*m_page, "certificateNumber0"), "77-05");
    QTest::mouseClick(remove, Qt::LeftButton);
    test::handleQueued();
    const auto left = named(name)->otherCertificates;
    ASSERT_EQ(left.size(), 1U);
    EXPECT_EQ(left[0].number, "77-05") << "what was being typed is kept";
}

TEST_F(Customers, allOfOneIsWrittenIntoAFolderOnce) {
    const char* name = "Juniper Hill Swim Club";
    open(name);
    auto* write = in<QPushButton>(*m_page, "exportCustomer");
    write->click();
    EXPECT_FALSE(std::filesystem::exists(m_folder / name)) << "no folder was chosen";
    m_prompter.path = QString::fromStdString(m_folder.path().string());
    write->click();
    std::ifstream file(m_folder / name / "customer.json", std::ios::binary);
    const std::string json{std::istreambuf_iterator<char>(file), {}};
    EXPECT_NE(json.find(name), std::string::npos);
    type("customerTelephone", "555 0177");
    write->click(); // what is there is not written over
    std::ifstream again(m_folder / name / "customer.json", std::ios::binary);
    EXPECT_EQ(json, (std::string{std::istreambuf_iterator<char>(again), {}}));
}

TEST_F(Customers, theFolderIsNoOtherPlaceWhateverTheyAreCalled) {
    add("../Ada / Quince");
    open("../Ada / Quince");
    m_prompter.path = QString::fromStdString((m_folder / "out").string());
    std::filesystem::create_directory(m_folder / "out");
    in<QPushButton>(*m_page, "exportCustomer")->click();
    EXPECT_TRUE(std::filesystem::exists(m_folder / "out" / "-Ada - Quince" / "customer.json"));
}

TEST_F(Customers, theirJobsHaveThePicturesOfTheDesigns) {
    const char* name = "Juniper Hill Swim Club";
    const auto design = m_session->designs().front();
    QPixmap pixmap(40, 20);
    pixmap.fill(Qt::black);
    QByteArray png;
    QBuffer out(&png);
    ASSERT_TRUE(pixmap.save(&out, "PNG"));
    ASSERT_TRUE(m_session->change([&](db::Book& book) {
        catalogue::DesignArtwork artwork;
        artwork.design = design.id;
        artwork.fileName = "drawing.svg";
        artwork.file = "<svg/>";
        artwork.thumbnail = png.toStdString();
        artwork.unit = units::Length::fromInch64ths(1);
        return book.save(artwork);
    }));
    open(name);
    const auto pictures = [&] {
        int count = 0;
        for (const auto* label : in<QWidget>(*m_page, "customerPictures")->findChildren<QLabel*>())
            if (!label->pixmap(Qt::ReturnByValue).isNull()) ++count;
        return count;
    };
    const auto before = pictures();
    ASSERT_TRUE(m_session->change([&](db::Book& book) {
        auto quote = book.startQuote().value();
        quote.order.customer = named(name)->id;
        quote.order.lines = {catalogue::lineOf(design), catalogue::lineOf(design)};
        return book.saveDraft(quote);
    }));
    test::handleQueued();
    EXPECT_EQ(pictures(), before + 1) << "once, whatever number of lines";
    EXPECT_TRUE(in<QWidget>(*m_page, "customerPictures")->isVisible());
}

TEST_F(Customers, whatIsTypedIsKept) {
    open("Juniper Hill Swim Club");
    auto* language = in<QComboBox>(*m_page, "customerLanguage");
    language->setCurrentIndex(language->findData(QStringLiteral("en")));
    Q_EMIT language->activated(language->currentIndex());
    type("customerTelephone", "555 0177");
    EXPECT_EQ(named("Juniper Hill Swim Club")->language, "en");
    EXPECT_EQ(named("Juniper Hill Swim Club")->telephone, "555 0177");
    const std::string tooLong(300, 'x');
    type("customerName", tooLong.c_str());
    for (const auto& one : m_session->customers()) EXPECT_LE(one.name.size(), 200U);
}

TEST_F(Customers, aJobIsOpenedFromItsRow) {
    base::Id asked;
    QObject::connect(m_page.get(), &customers::CustomersPage::openAsked, m_page.get(),
                     [&](const base::Id& job) { asked = job; });
    base::Id job;
    ASSERT_TRUE(m_session->change([&](db::Book& book) {
        auto quote = book.startQuote().value();
        quote.order.customer = named("Juniper Hill Swim Club")->id;
        job = quote.id;
        return book.saveDraft(quote);
    }));
    open("Juniper Hill Swim Club");
    auto* table = in<QTableView>(*m_page, "customerJobs");
    ASSERT_EQ(table->model()->rowCount(), 1);
    table->setCurrentIndex(table->model()->index(0, 0));
    Q_EMIT table->activated(table->currentIndex());
    EXPECT_EQ(asked, job);
    EXPECT_EQ(said("customerSums"), "Owes nothing.");
}

TEST_F(Customers, isErasedOnceThatIsMeant) {
    catalogue::Customer made;
    made.name = "Ottoline Quillfeather";
    made.note = "asks for Jet";
    ASSERT_TRUE(m_session->change([&](db::Book& book) { return book.save(made); }));
    open("Ottoline Quillfeather");
    answer("eraseCustomer", "keepCustomer");
    EXPECT_NE(named("Ottoline Quillfeather"), nullptr);
    answer("eraseCustomer", "eraseForGood");
    EXPECT_EQ(named("Ottoline Quillfeather"), nullptr);
    std::ifstream file(m_folder / "demo.jobbook", std::ios::binary);
    const std::string bytes{std::istreambuf_iterator<char>(file), {}};
    EXPECT_EQ(bytes.find("Quillfeather"), std::string::npos);
    EXPECT_EQ(bytes.find("asks for Jet"), std::string::npos);
}

TEST_F(Customers, isErasedWhoWasAskedAboutWhoeverIsOpen) {
    add("Ottoline Quillfeather");
    add("Ada Quince");
    open("Ottoline Quillfeather");
    auto* dialog = askedToErase();
    ASSERT_NE(dialog, nullptr);
    open("Ada Quince");
    in<QPushButton>(*dialog, "eraseForGood")->click();
    test::handleQueued();
    EXPECT_EQ(named("Ottoline Quillfeather"), nullptr);
    ASSERT_NE(named("Ada Quince"), nullptr);
    EXPECT_EQ(m_page->currentCustomer(), named("Ada Quince")->id) << "who is open stays so";
}

TEST_F(Customers, copiesInTheSecondPlaceAreNamedOrThatItIsAway) {
    add("Ottoline Quillfeather");
    open("Ottoline Quillfeather");
    m_places.second = m_folder / "stick";
    auto* dialog = askedToErase();
    ASSERT_NE(dialog, nullptr);
    EXPECT_TRUE(says(*dialog, QString::fromStdString((m_folder / "stick").string())));
    EXPECT_TRUE(says(*dialog, QStringLiteral("is not there now")));
    EXPECT_EQ(dialog->findChild<QTableView*>(QStringLiteral("copiesLeft")), nullptr);
    dialog->close();
    test::handleQueued();
    QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
    const auto mark = m_session->mark();
    ASSERT_TRUE(mark);
    const auto folder = db::backupFolder(m_places.second, "demo", *mark);
    std::filesystem::create_directories(folder);
    const auto now = std::chrono::floor<std::chrono::seconds>(m_clock.now);
    std::ofstream(folder / db::backupName("demo", *mark, now)) << "a copy";
    dialog = askedToErase();
    ASSERT_NE(dialog, nullptr);
    EXPECT_FALSE(says(*dialog, QStringLiteral("is not there now")));
    const auto* copies = in<QTableView>(*dialog, "copiesLeft");
    ASSERT_EQ(copies->model()->rowCount(), 1);
    EXPECT_TRUE(copies->model()->index(0, 0).data().toString().endsWith(QStringLiteral("in the second place")));
    EXPECT_EQ(copies->accessibleName(), dialog->windowTitle());
}

TEST_F(Customers, anAddressThatIsRefusedIsSaidAndStays) {
    const char* name = "Juniper Hill Swim Club";
    open(name);
    const auto before = named(name)->contact;
    auto* address = in<QPlainTextEdit>(*m_page, "customerContact");
    auto* refused = in<QLabel>(*m_page, "customerLinesRefused");
    const auto enter = [&](const QString& lines) {
        address->setFocus();
        address->setPlainText(lines);
        in<QLineEdit>(*m_page, "customerName")->setFocus();
        test::handleQueued();
    };
    const QString tooLong(20'100, QLatin1Char('x')); // the table of fields takes 20,000
    enter(tooLong);
    EXPECT_EQ(named(name)->contact, before);
    EXPECT_TRUE(refused->isVisible());
    EXPECT_FALSE(refused->text().isEmpty());
    EXPECT_EQ(address->toPlainText(), tooLong);
    add("Ada Quince"); // all is shown anew
    test::handleQueued();
    EXPECT_EQ(address->toPlainText(), tooLong);
    enter(QStringLiteral("4 Mill Lane"));
    EXPECT_EQ(named(name)->contact, "4 Mill Lane");
    EXPECT_FALSE(refused->isVisible());
}

TEST_F(Customers, areReadFromAFileOnceThatIsMeant) {
    const auto path = m_folder / "people.vcf";
    std::ofstream(path)
        << "BEGIN:VCARD\r\nVERSION:4.0\r\nFN:Ada Quince\r\nTEL:555 0101\r\nEND:VCARD\r\n"
           "BEGIN:VCARD\r\nVERSION:4.0\r\nFN:\xD7\x90\xD7\x93\xD7\x94 \xF0\x9F\x92\x8E\r\nEND:VCARD\r\n";
    m_prompter.path = QString::fromStdString(path.string());
    answer("readCustomers", "leaveContacts");
    EXPECT_EQ(named("Ada Quince"), nullptr);
    answer("readCustomers", "takeContacts");
    ASSERT_NE(named("Ada Quince"), nullptr);
    EXPECT_EQ(named("Ada Quince")->telephone, "555 0101");
    EXPECT_TRUE(m_session->undo());
    EXPECT_EQ(named("Ada Quince"), nullptr) << "one step takes all of them back";
}

TEST_F(Customers, whatIsWrittenIsReadAgain) {
    const auto path = m_folder / "people.csv";
    m_prompter.path = QString::fromStdString(path.string());
    in<QPushButton>(*m_page, "writeCustomers")->click();
    std::ifstream file(path, std::ios::binary);
    const std::string bytes{std::istreambuf_iterator<char>(file), {}};
    const auto read = catalogue::readContactTable(bytes);
    ASSERT_TRUE(read);
    auto there = m_session->customers();
    for (auto& one : there) one.id = {};
    EXPECT_EQ(*read, there);
}

} // namespace

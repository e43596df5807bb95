// SPDX-License-Identifier: MIT
#pragma once

#include "app/demo/demo_book.h"
#include "app/desk/theme.h"
#include "app/session/book_session.h"
#include "tests/support/held_clock.h"
#include "tests/support/temp_folder.h"
#include "tests/support/wait_for.h"

#include <QApplication>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QTest>
#include <gtest/gtest.h>

namespace sp::test {

/// A fresh demo book, off screen, in American English.
class SuppliesTest : public testing::Test {
  protected:
    SuppliesTest() {
        QLocale::setDefault(QLocale(QLocale::English, QLocale::UnitedStates));
        auto book = demo::createDemoBook(m_folder / "demo.jobbook", m_clock.environment());
        EXPECT_TRUE(book.has_value());
        m_session = std::make_unique<session::BookSession>(std::move(*book));
        m_formatter = std::make_unique<desk::Formatter>(QLocale(), m_session->shop());
    }
    void show(std::unique_ptr<QWidget> page) {
        m_page = std::move(page);
        m_page->resize(1274, 900);
        m_page->show();
        QApplication::setActiveWindow(m_page.get());
        test::handleQueued();
    }
    /// Types over what is there and goes on with Enter.
    void type(const char* name, const char* text) {
        auto* target = m_page->findChild<QLineEdit*>(QLatin1String(name));
        ASSERT_NE(target, nullptr) << name;
        target->setFocus();
        target->selectAll();
        QTest::keyClick(target, Qt::Key_Delete);
        QTest::keyClicks(target, QString::fromUtf8(text));
        QTest::keyClick(target, Qt::Key_Return);
        test::handleQueued();
    }
    void click(const char* name) {
        auto* button = m_page->findChild<QPushButton*>(QLatin1String(name));
        ASSERT_NE(button, nullptr) << name;
        button->click();
        test::handleQueued();
    }
    std::string said(const char* name) {
        const auto* label = m_page->findChild<QLabel*>(QLatin1String(name));
        return label == nullptr ? std::string("no label") : label->text().toStdString();
    }

    HeldClock m_clock;
    TempFolder m_folder;
    desk::Theme m_theme{*qApp, desk::Scheme::Light};
    std::unique_ptr<session::BookSession> m_session;
    std::unique_ptr<desk::Formatter> m_formatter;
    std::unique_ptr<QWidget> m_page;
};

} // namespace sp::test

// SPDX-License-Identifier: MIT
#pragma once

#include "app/counter/counter_page.h"
#include "app/demo/demo_book.h"
#include "app/desk/theme.h"
#include "app/main/main_window.h"
#include "tests/support/held_clock.h"
#include "tests/support/temp_folder.h"
#include "tests/support/wait_for.h"

#include <QApplication>
#include <QLabel>
#include <QLineEdit>
#include <QSettings>
#include <QStandardPaths>
#include <QTest>
#include <gtest/gtest.h>

namespace sp::test {

inline constexpr int kPlaceCount = static_cast<int>(program::PlaceId::FirstSteps) + 1;

/// Answers which file, and nothing else; keeps what it was asked last.
class FileAnswer : public desk::Prompter {
  public:
    std::optional<QString> fileToSave(const FileQuestion& question) override {
        asked = question;
        return target;
    }
    std::optional<QString> fileToOpen(const FileQuestion& question) override {
        asked = question;
        return file;
    }
    std::optional<QString> folderToUse(const FileQuestion& question) override {
        asked = question;
        return chosenFolder;
    }

    std::optional<QString> file;   ///< to open
    std::optional<QString> target; ///< to save
    std::optional<QString> chosenFolder;
    std::optional<FileQuestion> asked;
};

/// The window on a fresh demo book, off screen, driven by keys into whatever has the focus.
class DemoWindow : public testing::Test {
  protected:
    DemoWindow() {
        QStandardPaths::setTestModeEnabled(true);
        // Settings of its own: other tests run beside this one.
        QSettings::setPath(QSettings::NativeFormat, QSettings::UserScope,
                           QString::fromStdString(m_folder.path().string()));
        QLocale::setDefault(QLocale(QLocale::English, QLocale::UnitedStates));
        open(demo::createDemoBook(bookFile(), m_clock.environment()));
    }

    std::filesystem::path bookFile() const { return m_folder.path() / "demo.jobbook"; }

    void open(base::Result<std::unique_ptr<db::Book>> book) {
        ASSERT_TRUE(book.has_value()) << (book ? "" : describe(book.error()));
        m_window = std::make_unique<program::MainWindow>(std::move(*book), m_theme, m_prompter);
        m_window->show();
        m_window->resize(1366, 768); // side by side, whatever the size of the screen there is
        QApplication::setActiveWindow(m_window.get());
        ASSERT_TRUE(test::waitFor([this] { return m_window->findChild<QWidget*>(QStringLiteral("design")); }));
        test::handleQueued();
    }

    void reopen() {
        m_window->close();
        m_window.reset();
        open(db::Book::open(bookFile(), m_clock.environment()));
    }

    void type(const char* text) {
        for (const QChar c : QString::fromUtf8(text)) {
            ++m_keys;
            QTest::keyClicks(QApplication::focusWidget(), QString(c));
        }
    }
    void press(Qt::Key key, Qt::KeyboardModifiers modifiers = Qt::NoModifier) {
        ++m_keys;
        auto* target = QApplication::focusWidget() ? QApplication::focusWidget() : m_window.get();
        QTest::keyClick(target, key, modifiers);
        test::handleQueued();
    }

    template<class T = QWidget>
    T* find(const char* name) {
        auto* found = m_window->findChild<T*>(QLatin1String(name));
        EXPECT_NE(found, nullptr) << name;
        return found;
    }
    QString text(const char* name) { return find<QLabel>(name)->text(); }
    QLineEdit* field(const char* name) { return find<QLineEdit>(name); }
    std::string focused() {
        return QApplication::focusWidget() ? QApplication::focusWidget()->objectName().toStdString() : "nothing";
    }

    void orderLantern() {
        type("lant");
        press(Qt::Key_Return);
        type("24");
        press(Qt::Key_Return);
    }

    HeldClock m_clock;
    TempFolder m_folder;
    desk::Theme m_theme{*qApp, desk::Scheme::Light};
    FileAnswer m_prompter;
    std::unique_ptr<program::MainWindow> m_window;
    int m_keys = 0; ///< pressed so far
};

} // namespace sp::test

// SPDX-License-Identifier: MIT
#pragma once

#include "app/artwork/artwork_page.h"
#include "app/counter/counter_page.h"
#include "app/demo/demo_book.h"
#include "app/desk/theme.h"
#include "app/main/main_window.h"
#include "tests/support/temp_folder.h"

#include <QApplication>
#include <QDropEvent>
#include <QMimeData>
#include <QSettings>
#include <QStandardPaths>
#include <QTest>
#include <QUrl>
#include <gtest/gtest.h>

#include <fstream>

namespace sp::test {

/// Answers which file, and nothing else.
class FileAnswer : public desk::Prompter {
  public:
    std::optional<QString> fileToSave(const FileQuestion&) override { return std::nullopt; }
    std::optional<QString> fileToOpen(const FileQuestion&) override { return file; }
    bool agrees(const QString&, const QString&, const QString&, const QString&) override { return false; }
    std::optional<QString> lineOfText(const QString&, const QString&, const QString&) override { return std::nullopt; }

    std::optional<QString> file;
};

/// The window on a fresh demo book, off screen.
class DemoWindow : public testing::Test {
  protected:
    DemoWindow() {
        QStandardPaths::setTestModeEnabled(true);
        QSettings().clear();
        QLocale::setDefault(QLocale(QLocale::English, QLocale::UnitedStates));
        auto book = demo::createDemoBook(m_folder.path() / "demo.jobbook", db::systemSurroundings());
        EXPECT_TRUE(book.has_value());
        m_window = std::make_unique<program::MainWindow>(std::move(*book), m_theme, m_prompter);
        m_window->show();
        QApplication::setActiveWindow(m_window.get());
        QTest::qWait(1);
    }

    QString write(const char* name, const std::string& text) {
        const auto file = m_folder.path() / name;
        std::ofstream(file, std::ios::binary) << text;
        return QString::fromStdString(file.string());
    }

    /// A file let go over the window; it is read beside the screen.
    void letGo(const QString& file) {
        QMimeData data;
        data.setUrls({QUrl::fromLocalFile(file)});
        QDragEnterEvent enter(QPoint(300, 300), Qt::CopyAction, &data, Qt::LeftButton, Qt::NoModifier);
        QApplication::sendEvent(m_window.get(), &enter);
        EXPECT_TRUE(enter.isAccepted());
        QDropEvent event(QPointF(300, 300), Qt::CopyAction, &data, Qt::LeftButton, Qt::NoModifier);
        QApplication::sendEvent(m_window.get(), &event);
    }

    void drop(const QString& file) {
        letGo(file);
        // Until the reader has answered, one way or the other.
        ASSERT_TRUE(QTest::qWaitFor([this] {
            auto* page = m_window->findChild<artwork::ArtworkPage*>();
            return page && !page->presenter().isReading();
        }));
    }

    artwork::ArtworkPage& page() { return *m_window->findChild<artwork::ArtworkPage*>(); }
    artwork::ArtworkPresenter& presenter() { return page().presenter(); }

    template<class T = QWidget>
    T* find(const char* name) {
        auto* found = m_window->findChild<T*>(QLatin1String(name));
        EXPECT_NE(found, nullptr) << name;
        return found;
    }
    QString counterSays() { return m_window->counterPage().messages().sentence(); }

    const catalogue::Material* stone(const char* name) {
        for (const auto& material : m_window->session().materials())
            if (material.name == name) return &material;
        return nullptr;
    }

    TempFolder m_folder;
    desk::Theme m_theme{*qApp, desk::Scheme::Light};
    FileAnswer m_prompter;
    std::unique_ptr<program::MainWindow> m_window;
};

} // namespace sp::test

// SPDX-License-Identifier: MIT
#pragma once

#include "app/artwork/artwork_page.h"
#include "tests/app/demo_window.h"

#include <QDropEvent>
#include <QMimeData>
#include <QUrl>

#include <fstream>

namespace sp::test {

/// The demo window with files dropped on it.
class DropWindow : public DemoWindow {
  protected:
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
        ASSERT_TRUE(test::waitFor([this] {
            auto* page = m_window->findChild<artwork::ArtworkPage*>();
            return page && !page->presenter().isReading();
        }));
    }

    artwork::ArtworkPage& page() { return *m_window->findChild<artwork::ArtworkPage*>(); }
    artwork::ArtworkPresenter& presenter() { return page().presenter(); }

    QString counterSays() { return m_window->counterPage().messages().sentence(); }

    const catalogue::Material* stone(const char* name) {
        for (const auto& material : m_window->session().materials())
            if (material.name == name) return &material;
        return nullptr;
    }
};

} // namespace sp::test

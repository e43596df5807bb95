// SPDX-License-Identifier: MIT
#pragma once

#include <QPointer>
#include <QString>
#include <QWidget>

#include <optional>

namespace sp::desk {

/// The questions that need an answer before work goes on. Passed in, so that tests can answer; the one place besides
/// main where an event loop nests.
class Prompter {
  public:
    Prompter() = default;
    Prompter(const Prompter&) = delete;
    Prompter& operator=(const Prompter&) = delete;
    virtual ~Prompter() = default;

    struct FileQuestion {
        QString title;  ///< "Save the quote sheet"
        QString folder; ///< where to start; may be empty
        QString name;   ///< the name to offer; may be empty
        QString kinds;  ///< Qt's filter text: "PDF (*.pdf)"
        QString suffix; ///< put behind a name without one, no dot
    };
    /// Asks for a file to write; over an existing one only when the person agreed. Nothing: they went back.
    virtual std::optional<QString> fileToSave(const FileQuestion& question) = 0;
    /// Asks for an existing file.
    virtual std::optional<QString> fileToOpen(const FileQuestion& question) = 0;
    /// Asks for an existing folder; of the question only title and folder count.
    virtual std::optional<QString> folderToUse(const FileQuestion& question) = 0;
};

/// Asks the person, over the window given.
class DialogPrompter : public Prompter {
  public:
    explicit DialogPrompter(QWidget* window = nullptr);

    std::optional<QString> fileToSave(const FileQuestion& question) override;
    std::optional<QString> fileToOpen(const FileQuestion& question) override;
    std::optional<QString> folderToUse(const FileQuestion& question) override;

  private:
    QPointer<QWidget> m_window;
};

} // namespace sp::desk

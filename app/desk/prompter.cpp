// SPDX-License-Identifier: MIT
#include "app/desk/prompter.h"

#include <QDir>
#include <QFileDialog>

namespace sp::desk {

namespace {

std::optional<QString> askForFile(QWidget* window, const Prompter::FileQuestion& question, QFileDialog::AcceptMode mode,
                                  QFileDialog::FileMode what) {
    QFileDialog dialog(window, question.title, question.folder, question.kinds);
    dialog.setAcceptMode(mode);
    dialog.setFileMode(what);
    dialog.setDefaultSuffix(question.suffix);
    if (!question.name.isEmpty()) dialog.selectFile(question.name);
    if (dialog.exec() != QDialog::Accepted || dialog.selectedFiles().isEmpty()) return std::nullopt;
    return dialog.selectedFiles().constFirst();
}

} // namespace

DialogPrompter::DialogPrompter(QWidget* window)
    : m_window(window) {}

std::optional<QString> DialogPrompter::fileToSave(const FileQuestion& question) {
    return askForFile(m_window, question, QFileDialog::AcceptSave, QFileDialog::AnyFile);
}

std::optional<QString> DialogPrompter::fileToOpen(const FileQuestion& question) {
    return askForFile(m_window, question, QFileDialog::AcceptOpen, QFileDialog::ExistingFile);
}

std::optional<QString> DialogPrompter::folderToUse(const FileQuestion& question) {
    return askForFile(m_window, question, QFileDialog::AcceptOpen, QFileDialog::Directory);
}

} // namespace sp::desk

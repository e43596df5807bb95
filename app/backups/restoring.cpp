// SPDX-License-Identifier: MIT
#include "app/backups/restoring.h"

#include "db/book/backups.h"

#include <QCoreApplication>

#include <algorithm>
#include <string>
#include <unistd.h>

namespace sp::backups {

namespace fs = std::filesystem;

namespace {

bool isThere(const fs::path& path) {
    std::error_code ignored;
    return fs::exists(fs::symlink_status(path, ignored));
}

bool takesFiles(const fs::path& folder) { return ::access(folder.c_str(), W_OK | X_OK) == 0; }

} // namespace

fs::path restoreTarget(const fs::path& book, const fs::path& elsewhere, QDate today) {
    const bool isBeside = takesFiles(book.parent_path());
    if (isBeside && !isThere(book)) return book;
    const auto folder = isBeside ? book.parent_path() : elsewhere;
    const auto name = QCoreApplication::translate("App", "%1 restored %2")
                          .arg(QString::fromStdString(book.stem().string()), today.toString(Qt::ISODate))
                          .toStdString();
    return freeIn(folder, name);
}

fs::path freeIn(const fs::path& folder, const std::string& name) {
    for (int n = 1;; ++n) {
        const auto number = n == 1 ? std::string() : " (" + std::to_string(n) + ")";
        auto path = folder / (name + number + ".jobbook");
        if (!isThere(path)) return path;
    }
}

bool isBackup(const fs::path& file, const fs::path& root) {
    std::error_code error;
    const auto path = fs::weakly_canonical(file, error);
    const auto above = fs::weakly_canonical(root, error);
    const auto met = std::mismatch(above.begin(), above.end(), path.begin(), path.end());
    return !above.empty() && met.first == above.end();
}

} // namespace sp::backups

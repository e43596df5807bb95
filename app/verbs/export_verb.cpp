// SPDX-License-Identifier: MIT
#include "app/verbs/book_schema.h"
#include "app/verbs/verb_kit.h"
#include "db/book/written_file.h"

#include <algorithm>
#include <filesystem>

namespace sp::verbs {

Outcome exportVerb(const Arguments& arguments, const Helpers& helpers) {
    auto book = openBook(arguments, helpers);
    if (!book) return refused(book.error());
    const std::string folder = arguments.of("--dir");
    if (const auto done = (*book)->exportTo(folder); !done) return refused(done.error());
    const auto schema = std::filesystem::path(folder) / "book.schema.json";
    if (const auto done = db::writeFile(schema, bookSchema().dump(2) + "\n", db::IfThere::Refuse); !done)
        return refused(done.error());
    std::vector<std::string> files;
    for (const auto& entry : std::filesystem::directory_iterator(folder))
        if (entry.is_regular_file()) files.push_back(entry.path().filename().string());
    std::ranges::sort(files);
    const auto tables = std::ranges::count_if(files, [](const auto& file) { return file.ends_with(".csv"); });
    return answer(arguments, {{"folder", folder}, {"files", files}},
                  line(QT_TRANSLATE_NOOP("App", "Everything in the book is in “%1”: %2 tables, and book.json. It names "
                                                "customers and prices; keep it as you keep the book."),
                       folder, tables));
}

} // namespace sp::verbs

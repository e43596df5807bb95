// SPDX-License-Identifier: MIT
#include "tests/house/house_rules.h"

#include <algorithm>
#include <array>
#include <cctype>
#include <fstream>
#include <functional>
#include <optional>
#include <string_view>

namespace sp::tests::house {

namespace fs = std::filesystem;

namespace {

constexpr std::array kTopLevel{"CMakeLists.txt", "DEVELOPERS.md", "README.md", "app", "core", "db",
                               "packaging",      "resources",     "tests"};
constexpr std::array<std::string_view, 13> kRoomsOfCore{"base",   "units",      "catalogue", "artwork", "layout",
                                                        "needs",  "planning",   "costing",   "pricing", "quoting",
                                                        "supply", "scheduling", "figures"};

struct Line {
    std::string file; // from the root, with /
    std::size_t number = 0;
    std::string text;
};

bool isLeftOut(std::string_view name) {
    return name.starts_with('.') || name == "build" || name.starts_with("build-") || name == "compile_commands.json" ||
           name.ends_with(".jobbook") || name.ends_with(".jobbook-journal");
}

std::vector<fs::path> filesUnder(const fs::path& root, const fs::path& folder) {
    std::vector<fs::path> files;
    if (!fs::exists(root / folder)) return files;
    for (const auto& entry : fs::directory_iterator(root / folder)) {
        const auto path = folder / entry.path().filename();
        if (isLeftOut(entry.path().filename().string())) continue;
        if (entry.is_directory()) {
            const auto below = filesUnder(root, path);
            files.insert(files.end(), below.begin(), below.end());
        } else if (entry.is_regular_file()) {
            files.push_back(path);
        }
    }
    std::sort(files.begin(), files.end());
    return files;
}

std::vector<std::string> linesOf(const fs::path& path) {
    std::ifstream stream(path);
    std::vector<std::string> lines;
    for (std::string line; std::getline(stream, line);) lines.push_back(line);
    return lines;
}

bool isCpp(const fs::path& path) { return path.extension() == ".h" || path.extension() == ".cpp"; }

bool isCMake(const fs::path& path) { return path.filename() == "CMakeLists.txt" || path.extension() == ".cmake"; }

void forEachLine(const fs::path& root, const fs::path& folder, const std::function<bool(const fs::path&)>& wanted,
                 const std::function<void(const Line&)>& visit) {
    for (const auto& file : filesUnder(root, folder)) {
        if (!wanted(file)) continue;
        std::size_t number = 0;
        for (auto& text : linesOf(root / file)) visit(Line{file.generic_string(), ++number, std::move(text)});
    }
}

std::string breach(const Line& line, const std::string& what) {
    return line.file + ':' + std::to_string(line.number) + ' ' + what;
}

/// What stands between the quotes or angle brackets, as in `#  include <QString>`.
std::optional<std::string> included(std::string_view text) {
    const auto skipBlanks = [&text] { text.remove_prefix(std::min(text.find_first_not_of(" \t"), text.size())); };
    skipBlanks();
    if (!text.starts_with('#')) return std::nullopt;
    text.remove_prefix(1);
    skipBlanks();
    if (!text.starts_with("include")) return std::nullopt;
    const auto from = text.find_first_of("<\"");
    const auto to = text.find_last_of(">\"");
    if (from == std::string_view::npos || to <= from) return std::nullopt;
    return std::string(text.substr(from + 1, to - from - 1));
}

bool isQt(std::string_view header) {
    return header.size() > 1 && header[0] == 'Q' &&
           (std::isupper(static_cast<unsigned char>(header[1])) != 0 || header.starts_with("Qt"));
}

bool isSqlite(std::string_view header) { return header.starts_with("sqlite3"); }

bool isWordPart(char c) { return std::isalnum(static_cast<unsigned char>(c)) != 0; }

bool hasWord(std::string_view text, std::string_view word) {
    for (auto at = text.find(word); at != std::string_view::npos; at = text.find(word, at + 1)) {
        const auto end = at + word.size();
        if ((at == 0 || !isWordPart(text[at - 1])) && (end == text.size() || !isWordPart(text[end]))) return true;
    }
    return false;
}

/// Six or eight hex digits after a #, or three that are a whole string ("#fff"; a bare #123 is a number of
/// something).
bool hasHexColour(std::string_view text) {
    for (auto at = text.find('#'); at != std::string_view::npos; at = text.find('#', at + 1)) {
        auto end = at + 1;
        while (end < text.size() && std::isxdigit(static_cast<unsigned char>(text[end])) != 0) ++end;
        const auto digits = end - at - 1;
        const bool ends = end == text.size() || !isWordPart(text[end]);
        const bool quoted = at > 0 && text[at - 1] == '"' && end < text.size() && text[end] == '"';
        if (ends && (digits == 6 || digits == 8 || (digits == 3 && quoted))) return true;
    }
    return false;
}

bool hasNumberedColour(std::string_view text) {
    for (const std::string_view maker : {"QColor(", "QColor{", "qRgb(", "qRgba(", "fromRgb("}) {
        const auto at = text.find(maker);
        if (at != std::string_view::npos && at + maker.size() < text.size() &&
            std::isdigit(static_cast<unsigned char>(text[at + maker.size()])) != 0)
            return true;
    }
    return false;
}

std::string_view withoutComment(std::string_view text) { return text.substr(0, text.find("//")); }

/// One of Qt's own colours, such as the one called black.
bool hasNamedColour(std::string_view text) {
    const std::string prefix = "Qt::";
    for (const std::string_view name :
         {"black", "white", "red", "green", "blue", "cyan", "magenta", "yellow", "gray", "lightGray", "darkRed",
          "darkGreen", "darkBlue", "darkCyan", "darkMagenta", "darkYellow", "darkGray"})
        if (hasWord(withoutComment(text), prefix + std::string(name))) return true;
    return false;
}

/// The text literals of a line of code, as they are written.
std::vector<std::string> literalsIn(std::string_view code) {
    std::vector<std::string> literals;
    bool isInside = false;
    for (std::size_t i = 0; i < code.size(); ++i) {
        if (!isInside && code.substr(i, 3) == "'\"'") {
            i += 2;
        } else if (code[i] == '"') {
            isInside = !isInside;
            if (isInside) literals.emplace_back();
        } else if (isInside) {
            literals.back() += code[i];
            if (code[i] == '\\' && i + 1 < code.size()) literals.back() += code[++i];
        }
    }
    return literals;
}

/// A word in the middle of a sentence, with the marks that may stand after it: "missing;", “file”.
bool isPlainWord(std::string_view word, bool mayBeCapital) {
    const auto letters = word.substr(0, word.find_first_not_of("abcdefghijklmnopqrstuvwxyz'", mayBeCapital ? 1 : 0));
    const bool begins = !letters.empty() && std::isalpha(static_cast<unsigned char>(letters.front())) != 0;
    return begins && letters.size() > 1 && word.substr(letters.size()).find_first_not_of(",;:.!?)”") == word.npos;
}

/// Two words on end, or one with the blank before a name; not the words of SQL nor the names of columns.
bool isEnglish(std::string_view literal) {
    for (const std::string_view sql : {"SELECT", "INSERT", "UPDATE", "DELETE", "PRAGMA", "CREATE", "FROM", "WHERE",
                                       "AND", "ORDER", "VALUES", "SAVEPOINT", "RELEASE", "ROLLBACK", "_"})
        if (sql == "_" ? literal.find(sql) != literal.npos : hasWord(literal, sql)) return false;
    std::string_view before;
    for (std::size_t at = 0; at <= literal.size();) {
        const auto end = std::min(literal.find(' ', at), literal.size());
        const auto word = literal.substr(at, end - at);
        if (isPlainWord(before, true) && (isPlainWord(word, false) || (word.empty() && at == literal.size())))
            return true;
        before = word;
        at = end + 1;
    }
    return false;
}

/// "core/units/money.h" → "units"; nothing for what is not in core.
std::optional<std::string> roomOfCore(std::string_view path) {
    constexpr std::string_view core = "core/";
    if (!path.starts_with(core)) return std::nullopt;
    path.remove_prefix(core.size());
    return std::string(path.substr(0, path.find('/')));
}

std::size_t heightInCore(std::string_view room) {
    return static_cast<std::size_t>(std::find(kRoomsOfCore.begin(), kRoomsOfCore.end(), room) - kRoomsOfCore.begin());
}

} // namespace

Breaches topLevel(const fs::path& root) {
    Breaches breaches;
    for (const auto* name : kTopLevel) {
        if (!fs::exists(root / name)) breaches.push_back(std::string(name) + " is missing");
    }
    for (const auto& entry : fs::directory_iterator(root)) {
        const auto name = entry.path().filename().string();
        if (!isLeftOut(name) && std::find(kTopLevel.begin(), kTopLevel.end(), name) == kTopLevel.end())
            breaches.push_back(name + " does not belong at the top level");
    }
    std::sort(breaches.begin(), breaches.end());
    return breaches;
}

Breaches coreStandsAlone(const fs::path& root) {
    Breaches breaches;
    forEachLine(root, "core", isCpp, [&](const Line& line) {
        const auto header = included(line.text);
        if (header && (isQt(*header) || isSqlite(*header))) breaches.push_back(breach(line, "includes " + *header));
    });
    forEachLine(root, "core", isCMake, [&](const Line& line) {
        const auto code = std::string_view(line.text).substr(0, line.text.find('#'));
        for (const std::string_view library : {"Qt5", "Qt6", "Qt", "SQLite3", "SQLite", "sqlite3"}) {
            if (!hasWord(code, library)) continue;
            breaches.push_back(breach(line, "names " + std::string(library)));
            return;
        }
    });
    return breaches;
}

Breaches sqliteStaysInItsRoom(const fs::path& root) {
    Breaches breaches;
    for (const auto* folder : {"app", "core", "db", "tests"}) {
        forEachLine(root, folder, isCpp, [&](const Line& line) {
            const auto header = included(line.text);
            if (header && isSqlite(*header) && !line.file.starts_with("db/sqlite/") &&
                !line.file.starts_with("tests/db/") && !line.file.starts_with("tests/bench/"))
                breaches.push_back(breach(line, "includes " + *header));
        });
    }
    return breaches;
}

Breaches arrowsPointDown(const fs::path& root) {
    Breaches breaches;
    for (const std::string folder : {"core", "db"}) {
        forEachLine(root, folder, isCpp, [&](const Line& line) {
            const auto header = included(line.text);
            if (!header) return;
            if (header->starts_with("app/") || header->starts_with("tests/") ||
                (folder == "core" && header->starts_with("db/")))
                breaches.push_back(breach(line, "includes " + *header));
            const auto from = roomOfCore(line.file);
            const auto to = roomOfCore(*header);
            if (from && to && heightInCore(*to) > heightInCore(*from))
                breaches.push_back(breach(line, "includes " + *header + ", a room above its own"));
        });
    }
    for (const auto& file : filesUnder(root, "core")) {
        const auto room = roomOfCore(file.generic_string());
        if (isCpp(file) && room && heightInCore(*room) == kRoomsOfCore.size())
            breaches.push_back(file.generic_string() + " is in no known room of core");
    }
    std::sort(breaches.begin(), breaches.end());
    return breaches;
}

Breaches coloursLiveInThePalette(const fs::path& root) {
    Breaches breaches;
    forEachLine(root, "app", isCpp, [&](const Line& line) {
        if (line.file == "app/desk/palette.cpp" || line.file.ends_with("stone_painter.cpp")) return;
        if (line.file == "app/demo/demo_shapes.cpp") return; // inks of drawings, none of the screen
        if (hasHexColour(line.text) || hasNumberedColour(line.text) || hasNamedColour(line.text))
            breaches.push_back(breach(line, "names a colour"));
    });
    return breaches;
}

Breaches figuresAreMadeInCore(const fs::path& root) {
    constexpr std::array<std::string_view, 7> kFree{
        "app/buying/cost_curve_picture.cpp", // heights of a curve
        "app/shop/ladder_picture.cpp",       // heights of a curve
        "app/counter/slip_back.cpp",         // widths of a bar
        "app/figures/earned_delegate.cpp",   // widths of a bar
        "app/jobs/jobs_table_model.cpp",     // a number to sort by
        "app/shop/shop_page.cpp",            // a step of rounding, typed as an amount and kept in minor units
        "app/verbs/json_words.cpp"};         // a length as decimals
    Breaches breaches;
    forEachLine(root, "app", isCpp, [&](const Line& line) {
        if (std::find(kFree.begin(), kFree.end(), line.file) != kFree.end()) return;
        const auto code = std::string_view(line.text).substr(0, line.text.find("//"));
        for (const std::string_view maker : {"Fraction", "fromExact", "micros()"}) {
            if (code.find(maker) == std::string_view::npos) continue;
            breaches.push_back(breach(line, "makes a figure with " + std::string(maker)));
            return;
        }
    });
    return breaches;
}

Breaches questionsGoThroughThePrompter(const fs::path& root) {
    Breaches breaches;
    forEachLine(root, "app", isCpp, [&](const Line& line) {
        if (line.file == "app/desk/prompter.cpp" || line.file == "app/main/main.cpp") return;
        const auto code = withoutComment(line.text);
        for (const std::string_view loop : {".exec()", ">exec()", "QEventLoop"})
            if (code.find(loop) != std::string_view::npos) breaches.push_back(breach(line, "runs a loop of events"));
    });
    return breaches;
}

Breaches looksComeFromTheStyle(const fs::path& root) {
    Breaches breaches;
    forEachLine(root, "app", isCpp, [&](const Line& line) {
        if (withoutComment(line.text).find("setStyleSheet") != std::string_view::npos)
            breaches.push_back(breach(line, "sets a style sheet"));
    });
    return breaches;
}

Breaches wordsStandInApp(const fs::path& root) {
    struct Free {
        std::string_view file;
        std::string_view literal;
        std::string_view why;
    };
    constexpr std::array kFree{
        Free{"core/artwork/scale.cpp", "mm per unit", "what a file's unit is called, kept with its drawing"},
        Free{"core/base/error.cpp", "", "codes, for logs and answers in JSON"},
        Free{"core/base/ensure.h", "", "a promise of our own code that does not hold"},
        Free{"core/base/overflow.h", "", "caught at the doors of core, which say it by a fault"},
        Free{"core/catalogue/bench.h", "set up", "a step, for logs and answers in JSON"},
        Free{"core/catalogue/fields/order_tables.cpp", "says where the price comes from", "why it is in no price"},
        Free{"core/catalogue/shop.h", "Sales tax", "the shop's own word, to be typed over"},
        Free{"core/units/read_text.cpp", "", "units that a person may type"},
        Free{"db/records/kinds.cpp", "", "what records of earlier versions say in English, to be read as codes"},
        Free{"db/book/backups.cpp", " jobs ", "a part of a file's name, by which a backup is found"},
        Free{"db/book/opening.cpp", "missing from index ", "what SQLite says of an index"},
        Free{"db/book/opening.cpp", "wrong # of entries in index ", "what SQLite says of an index"},
        Free{"db/book/opening.cpp", "non-unique entry in index ", "what SQLite says of an index"},
        Free{"db/book/backups.cpp", " before version ", "the name of a file, by which a backup is found"},
        Free{"db/book/older_book.cpp", "{} before version {}{}{}", "the name of a file, by which a backup is found"},
    };
    Breaches breaches;
    for (const auto* folder : {"core", "db"}) {
        forEachLine(root, folder, isCpp, [&](const Line& line) {
            const auto code = withoutComment(line.text);
            // What a fault is told of and why a field has no price are for programmers and tests.
            for (const std::string_view free : {"#include", "ensure(", "Fault::", "unpriced(", "notEntered("})
                if (code.find(free) != std::string_view::npos) return;
            for (const auto& literal : literalsIn(code)) {
                const bool isFree = std::any_of(kFree.begin(), kFree.end(), [&](const Free& row) {
                    return row.file == line.file && (row.literal.empty() || row.literal == literal);
                });
                if (isEnglish(literal) && !isFree)
                    breaches.push_back(breach(line, "has words of its own: \"" + literal + '"'));
            }
        });
    }
    return breaches;
}

Breaches testsWaitForConditions(const fs::path& root) {
    // Put together here, or this file would breach its own rule.
    const std::array<std::string, 5> sleeps{std::string("qW") + "ait(", std::string("qS") + "leep(",
                                            std::string("sleep") + "_for(", std::string("sleep") + "_until(",
                                            std::string("ms") + "leep("};
    Breaches breaches;
    forEachLine(root, "tests", isCpp, [&](const Line& line) {
        for (const auto& sleep : sleeps)
            if (line.text.find(sleep) != std::string::npos) breaches.push_back(breach(line, "sleeps"));
    });
    return breaches;
}

Breaches everySourceNamesItsLicence(const fs::path& root) {
    Breaches breaches;
    for (const auto& file : filesUnder(root, "")) {
        const auto lines = linesOf(root / file);
        const auto isLine = [&lines](std::size_t index, std::string_view text) {
            return index < lines.size() && lines[index] == text;
        };
        const bool isScript = !lines.empty() && lines[0].starts_with("#!");
        if (isCpp(file) && !isLine(0, "// SPDX-License-Identifier: MIT"))
            breaches.push_back(file.generic_string() + ":1 does not begin with the SPDX line");
        if (isScript && !isLine(1, "# SPDX-License-Identifier: MIT"))
            breaches.push_back(file.generic_string() + ":2 is not the SPDX line");
    }
    return breaches;
}

Breaches nothingIsPutOff(const fs::path& root) {
    // Put together here, or this file would breach its own rule.
    const std::array<std::string, 3> marks{std::string("TO") + "DO", std::string("FIX") + "ME",
                                           std::string("X") + "XX"};
    const auto off = std::string("DISABLED") + '_';
    const auto isText = [](const fs::path& path) {
        return isCpp(path) || isCMake(path) || path.extension() == ".md" || path.extension() == ".sql" ||
               path.extension() == ".sh" || path.extension() == ".py" || path.extension().empty();
    };
    Breaches breaches;
    forEachLine(root, "", isText, [&](const Line& line) {
        for (const auto& mark : marks) {
            if (hasWord(line.text, mark)) breaches.push_back(breach(line, "says " + mark));
        }
        if (line.text.find(off) != std::string::npos) breaches.push_back(breach(line, "switches a test off"));
    });
    return breaches;
}

} // namespace sp::tests::house

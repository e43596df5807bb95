// SPDX-License-Identifier: MIT
#pragma once

#include <filesystem>
#include <string>
#include <vector>

/// The rules of the house that no compiler checks, read off the text of a source tree. Each answers one
/// sentence a breach, sorted, beginning with the path as seen from `root` (and the line, where there is one);
/// none when the rule is kept. Build folders, dot folders and what .gitignore leaves out are not looked at;
/// an #include counts in any spelling. Throws std::filesystem::filesystem_error
/// when the tree cannot be read.
namespace sp::tests::house {

using Breaches = std::vector<std::string>;

/// The top level holds exactly what DEVELOPERS.md says, and dot files.
Breaches topLevel(const std::filesystem::path& root);

/// `core` includes and links neither Qt nor SQLite.
Breaches coreStandsAlone(const std::filesystem::path& root);

/// Only `db/sqlite` (and the tests of db, and benchmarks, which play another program) include sqlite3.
Breaches sqliteStaysInItsRoom(const std::filesystem::path& root);

/// Includes go app → db → core, and inside core only downwards: base, units, catalogue, artwork, layout,
/// needs, planning, costing, pricing, quoting, supply. A room of core that is not in that list is a breach too.
Breaches arrowsPointDown(const std::filesystem::path& root);

/// No colour is written in `app` as #rgb, #rrggbb, QColor(number, …) or by one of Qt's names outside
/// app/desk/palette.cpp and the painters of stones (files called …stone_painter.cpp), whose colours are what a stone
/// looks like, not what the desk looks like.
Breaches coloursLiveInThePalette(const std::filesystem::path& root);

/// No loop of events runs inside another in `app`: main has one, and the prompter while it asks.
Breaches questionsGoThroughThePrompter(const std::filesystem::path& root);

/// No style sheet in `app`.
Breaches looksComeFromTheStyle(const std::filesystem::path& root);

/// No sentence stands in `core` or `db`, which answer in codes and values: no text of two plain words on end but what
/// the program promises itself, what a fault is told of, SQL, and a short list of others, each with its reason.
Breaches wordsStandInApp(const std::filesystem::path& root);

/// No test sleeps: it waits for a condition (tests/support/wait_for.h).
Breaches testsWaitForConditions(const std::filesystem::path& root);

/// No figure is made in `app`: no Fraction, no amount from an exact figure (fromExact), and no micro-units taken out of
/// an amount (.micros()) but where a length on the screen, or text, is made of it.
Breaches figuresAreMadeInCore(const std::filesystem::path& root);

/// C++ begins with the SPDX line, scripts have it in their second line.
Breaches everySourceNamesItsLicence(const std::filesystem::path& root);

/// No word that marks work put off, and no test switched off.
Breaches nothingIsPutOff(const std::filesystem::path& root);

} // namespace sp::tests::house

// SPDX-License-Identifier: MIT
#pragma once

#include "db/book/book.h"
#include "tests/support/held_clock.h"
#include "tests/support/weak_disk.h"

#include <filesystem>
#include <functional>
#include <memory>
#include <string>
#include <vector>

// What a shop does with its book, step by step, to be done on disks that fail.
namespace sp::test {

/// What a step made and a later one needs.
struct SeatNotes {
    base::Id stone, tape, customer, other, payment, invoice;
    catalogue::Design design;
    db::Quote quote;
};

/// A seat with a book.
struct Seat : SeatNotes {
    explicit Seat(std::filesystem::path where)
        : folder(std::move(where)) {}

    base::Done open();
    void stock();

    std::filesystem::path folder;
    std::filesystem::path file = folder / "Stone Bench.jobbook";
    HeldClock clock;
    std::unique_ptr<db::Book> book;
};

/// One command. Where it was refused it has changed nothing, and can be given again.
struct SeatStep {
    std::string name;
    std::function<base::Done(Seat&)> run;
};

struct DiskSession {
    std::string name;
    std::function<void(Seat&)> prepare; ///< on a good disk; the book is closed then
    std::vector<SeatStep> steps;        ///< the first opens or makes the book, the last closes it
    bool isLong = false;                ///< megabytes are written, or much is done by opening it
};

void PrintTo(const DiskSession& session, std::ostream* out);

std::vector<DiskSession> diskSessions();

/// Everything that a book's bytes hold: each row of each table, sorted, and the version. Bytes that are no database
/// give what SQLite says of them.
std::string contentsOf(const std::string& bytes);
/// How many rows each table has, and the version.
std::string shapeOf(const std::string& bytes);

/// A plain writer, for controls: four transactions with this setting, and `afterEach` once one was acknowledged.
void writePlainly(const std::filesystem::path& file, const std::string& pragma, const std::function<void()>& afterEach);
/// Opens a file with the plain library, so that what a journal holds is rolled back.
void rollBackPlainly(const std::filesystem::path& file);

} // namespace sp::test

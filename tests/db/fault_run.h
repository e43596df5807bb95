// SPDX-License-Identifier: MIT
#pragma once

#include "tests/db/disk_sessions.h"
#include "tests/support/temp_folder.h"

#include <cstddef>
#include <functional>
#include <string>
#include <vector>

namespace sp::test {

/// Something that goes wrong once a session is under way, and is put right as soon as a command says so.
struct Trouble {
    std::function<void()> begin;
    std::function<void()> end;
};

/// A session run again and again from the same start, each time in another trouble. What must hold each time: a command
/// either does all it is asked, or is refused in one sentence that does not blame the book and has changed nothing; the
/// book holds together then; the same command, given again, is done; and in the end every book has as many rows of
/// everything as without the trouble.
class FaultRun {
  public:
    explicit FaultRun(const DiskSession& session);

    const std::filesystem::path& folder() const { return m_folder.path(); }
    /// Nothing when all of it held, else what did not.
    std::string wrongIn(const Trouble& trouble);
    /// Commands that were refused so far.
    std::size_t refusals() const { return m_refusals; }

  private:
    using Shapes = std::map<std::string, std::string>;

    void start(Seat& seat);
    Shapes shapesNow() const;
    std::string wrongAfter(const base::Error& refusal, bool* isHeld) const;
    std::string wrongWithRepeat(Seat& seat, std::size_t step, const base::Error& refusal);

    const DiskSession& m_session;
    TempFolder m_folder;
    Files m_start;
    SeatNotes m_notes;
    std::vector<Shapes> m_shapes; ///< after each step
    std::size_t m_refusals = 0;
};

} // namespace sp::test

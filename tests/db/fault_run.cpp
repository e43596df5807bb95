// SPDX-License-Identifier: MIT
#include "tests/db/fault_run.h"

#include "app/words/words.h"
#include "core/base/ensure.h"
#include "db/messages.h"
#include "tests/support/described.h"

#include <fmt/format.h>

#include <sstream>

namespace sp::test {

namespace {

/// What says so by itself: whoever is told looks, and goes on from there.
bool isDoneAllTheSame(const base::Error& refusal) {
    return refusal.fault == idOf(db::Fault::MayBeDone) || refusal.fault == idOf(db::Fault::ErasedNotTidied);
}

/// The lines of one text that are not the other's.
std::string differences(const std::string& wanted, const std::string& found) {
    std::istringstream left(wanted);
    std::istringstream right(found);
    std::string all;
    std::string line;
    for (std::string other; std::getline(right, other);)
        if (std::getline(left, line) && line != other) all += "; " + other + " instead of " + line;
    return all;
}

} // namespace

FaultRun::FaultRun(const DiskSession& session)
    : m_session(session) {
    {
        Seat seat(folder());
        session.prepare(seat);
        m_notes = seat;
    }
    m_start = filesIn(folder());
    Seat seat(folder());
    start(seat);
    const WatchedDisk disk(folder());
    for (const auto& step : session.steps) {
        base::ensure(step.run(seat).has_value(), "a good disk takes it");
        m_shapes.push_back(shapesNow());
    }
}

void FaultRun::start(Seat& seat) {
    putFiles(folder(), m_start);
    static_cast<SeatNotes&>(seat) = m_notes;
}

FaultRun::Shapes FaultRun::shapesNow() const {
    Shapes shapes;
    // Of copies from before a migration there is one for each time that it was begun.
    for (const auto& [name, bytes] : filesIn(folder()))
        if (name.ends_with(".jobbook") && name[0] != '.' && name.find(" before version ") == std::string::npos)
            shapes[name] = shapeOf(bytes);
    return shapes;
}

std::string FaultRun::wrongIn(const Trouble& trouble) {
    Seat seat(folder());
    start(seat);
    trouble.begin();
    std::string wrong;
    std::string before;
    for (std::size_t step = 0; step < m_session.steps.size() && wrong.empty(); ++step) {
        const auto done = m_session.steps[step].run(seat);
        if (done) continue;
        trouble.end();
        ++m_refusals;
        bool isHeld = false;
        wrong = wrongAfter(done.error(), &isHeld);
        if (wrong.empty()) wrong = wrongWithRepeat(seat, step, done.error());
        if (wrong.empty() && isHeld) wrong = wrongAfter(done.error(), nullptr);
        if (!wrong.empty())
            wrong = fmt::format("{}\"{}\" was refused, {}: {}", before, m_session.steps[step].name,
                                described(done.error()), wrong);
        before += fmt::format("\"{}\" was refused, {}; ", m_session.steps[step].name, described(done.error()));
        if (isDoneAllTheSame(done.error())) return wrong;
    }
    trouble.end();
    seat.book.reset();
    if (wrong.empty() && shapesNow() != m_shapes.back()) {
        wrong = before + "in the end not every book holds what it should";
        for (const auto& [name, shape] : shapesNow()) wrong += "\n" + name + differences(m_shapes.back()[name], shape);
    }
    return wrong;
}

/// Where even taking back was refused, the book is in use until the next command takes it back: `isHeld` then says so.
std::string FaultRun::wrongAfter(const base::Error& refusal, bool* isHeld) const {
    const auto sentence = words::text(refusal);
    if (sentence.empty() || sentence.find('%') != std::string::npos) return "it has no sentence";
    using base::Code;
    if (refusal.code == Code::Damaged || refusal.code == Code::Foreign || refusal.code == Code::Invalid)
        return "it blames the book: " + sentence;
    for (const auto& [name, bytes] : filesIn(folder())) {
        if (!name.ends_with(".jobbook") || name[0] == '.') continue;
        const auto report = db::Book::check(folder() / name);
        if (!report && isHeld && report.error().fault == idOf(db::Fault::UsedElsewhere)) {
            *isHeld = true;
            continue;
        }
        if (!report) return name + " cannot be checked: " + described(report.error());
        if (!report->damage.empty()) return name + " is damaged: " + described(report->damage).front();
    }
    return {};
}

std::string FaultRun::wrongWithRepeat(Seat& seat, std::size_t step, const base::Error& refusal) {
    if (isDoneAllTheSame(refusal)) {
        seat.book.reset();
        const auto now = shapesNow();
        const bool isDone = now == m_shapes[step];
        // A disk that could not be asked leaves it open.
        const bool mayBeUndone = refusal.fault == idOf(db::Fault::MayBeDone) && step > 0 && now == m_shapes[step - 1];
        return isDone || mayBeUndone ? "" : "what may be done is neither done nor as it was";
    }
    const auto again = m_session.steps[step].run(seat);
    return again ? "" : "again it was refused: " + described(again.error());
}

} // namespace sp::test

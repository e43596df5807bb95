// SPDX-License-Identifier: MIT
#pragma once

#include "core/catalogue/stage.h"
#include "core/units/date.h"

#include <cstdint>
#include <optional>
#include <vector>

namespace sp::catalogue {

/// What of a job asks for somebody's attention, the most pressing first.
enum class Reminder {
    Wanted,         ///< it is wanted today or was before, and is not ready
    DepositMissing, ///< it is agreed or being made, and its deposit is not all there
    Lapsing,        ///< its quote ends within kLapsesSoon days, without an answer
    NotCollected,   ///< it has been ready since before today
    Owed            ///< it was collected and is not paid
};

inline constexpr std::int64_t kLapsesSoon = 3;
/// A certificate of exemption is spoken of so many days before it ends.
inline constexpr std::int64_t kCertificateEndsSoon = 30;

/// What is looked at for it.
struct JobState {
    Stage stage = Stage::Enquiry;
    std::optional<units::Date> wantedBy = {};
    std::optional<units::Date> lastDay = {}; ///< of its quote
    units::Date stageSince = {};
    bool isDepositMissing = false;
    bool isOwed = false; ///< anything of its total is left to pay

    friend bool operator==(const JobState&, const JobState&) = default;
};

/// In the order of Reminder; nothing for most jobs.
std::vector<Reminder> remindersOf(const JobState& job, units::Date today);

} // namespace sp::catalogue

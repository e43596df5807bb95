// SPDX-License-Identifier: MIT
#pragma once

#include "core/units/date.h"

#include <cstdint>
#include <optional>
#include <vector>

namespace sp::catalogue {

/// Where a job stands. Money is apart from it. A draft is an Enquiry or Declined; a given quote is any but an Enquiry.
enum class Stage { Enquiry, Quoted, Agreed, InProduction, Ready, Collected, Declined };

/// The stages that a job of this stage can move to by hand, the usual one first. It comes to Quoted from an Enquiry
/// only by giving its quote. A step back corrects a slip; what was collected is not let go any more.
std::vector<Stage> stagesAfter(Stage stage, bool isGiven);

/// The usual next step; none where there is no other than back, and of an enquiry, which is given.
std::optional<Stage> nextStage(Stage stage);

/// Whether a job in that stage goes by what the customer agreed to.
bool isAgreedTo(Stage stage);

/// Whether a quote is past its last day without an answer. Derived, never written.
bool isLapsed(Stage stage, const std::optional<units::Date>& lastDay, units::Date today);

} // namespace sp::catalogue

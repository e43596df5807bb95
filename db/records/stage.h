// SPDX-License-Identifier: MIT
#pragma once

namespace sp::db {

/// Where a quote stands. Money is tracked apart from it. A draft is an Enquiry or LetGo; a given quote is any other.
enum class Stage { Enquiry, Quoted, Agreed, InProduction, Ready, Collected, Declined };

} // namespace sp::db

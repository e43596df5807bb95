// SPDX-License-Identifier: MIT
#pragma once

namespace sp::catalogue {

/// What is issued for a job, numbered and sealed.
enum class PaperKind {
    Quote,
    Invoice,
    Receipt, ///< for a payment
    Credit   ///< a credit note: what is taken back of an invoice
};

} // namespace sp::catalogue

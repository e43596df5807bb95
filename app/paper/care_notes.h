// SPDX-License-Identifier: MIT
#pragma once

#include <QString>

namespace sp::paper {

// They warn and point to those who decide; they give no advice in law or tax.

/// Care and safety notes that a new shop starts out with, one to a line, in the reader's language.
QString careNotes();
/// The least of it, on every slip.
QString slipCaution();
/// On every cutting plan.
QString bladeCaution();

} // namespace sp::paper

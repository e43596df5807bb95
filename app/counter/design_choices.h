// SPDX-License-Identifier: MIT
#pragma once

#include "app/desk/choice_field.h"
#include "app/format/formatter.h"
#include "app/session/book_session.h"

#include <vector>

namespace sp::counter {

/// The designs of the book to choose from, each with its size and colours.
std::vector<desk::Choice> designChoices(session::BookSession& session, const desk::Formatter& formatter);

} // namespace sp::counter

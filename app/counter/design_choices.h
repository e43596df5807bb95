// SPDX-License-Identifier: MIT
#pragma once

#include "app/artwork/design_pictures.h"
#include "app/desk/choice_field.h"
#include "app/format/formatter.h"
#include "app/session/book_session.h"

#include <vector>

namespace sp::counter {

/// The designs of the book to choose from, each with its size, and what it looks like or its colours. `pictures` must
/// outlive the choices.
std::vector<desk::Choice> designChoices(session::BookSession& session, const desk::Formatter& formatter,
                                        artwork::DesignPictures& pictures);

} // namespace sp::counter

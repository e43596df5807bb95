// SPDX-License-Identifier: MIT
#pragma once

#include "core/artwork/messages.h"
#include "core/base/messages.h"
#include "core/catalogue/fields/messages.h"
#include "core/catalogue/messages.h"
#include "core/costing/messages.h"
#include "core/layout/messages.h"
#include "core/needs/messages.h"
#include "core/planning/messages.h"
#include "core/pricing/messages.h"
#include "core/scheduling/messages.h"
#include "core/supply/messages.h"
#include "core/units/messages.h"
#include "db/messages.h"
#include "db/records/stage.h"

#include <QCoreApplication>

namespace sp::words {

/// The English of a sentence: %1, %2 … stand for its values, %n for the first whole number among them.
struct Source {
    const char* text = nullptr;
    const char* one = nullptr; ///< for a %n of 1, where no translation says it
};

Source sourceOf(base::Fault fault);
Source sourceOf(base::Note note);
Source sourceOf(units::Fault fault);
Source sourceOf(units::Note note);
Source sourceOf(artwork::Fault fault);
Source sourceOf(artwork::Note note);
Source sourceOf(layout::Fault fault);
Source sourceOf(catalogue::MaterialKind kind);
Source sourceOf(catalogue::fields::Fault fault);
Source sourceOf(catalogue::fields::Note note);
Source sourceOf(catalogue::fields::Term term);
Source sourceOf(catalogue::fields::Cause cause);
Source sourceOf(needs::Fault fault);
Source sourceOf(needs::Note note);
Source sourceOf(planning::Fault fault);
Source sourceOf(planning::Note note);
Source sourceOf(costing::Fault fault);
Source sourceOf(pricing::Fault fault);
Source sourceOf(pricing::Note note);
Source sourceOf(supply::Fault fault);
Source sourceOf(supply::Note note);
Source sourceOf(scheduling::Fault fault);
Source sourceOf(db::Fault fault);
Source sourceOf(db::Note note);
Source sourceOf(db::Stage stage);

/// The English of any message of core and db, and the translation context it stands in, which is its room's name.
Source sourceOf(const base::MessageId& id);
const char* contextOf(base::Room room);

} // namespace sp::words

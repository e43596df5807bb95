// SPDX-License-Identifier: MIT
#pragma once

#include "core/pricing/account.h"

#include <QStringList>

namespace sp::words {

/// The ways of paying that are offered, cash first; a shop may type others.
QStringList waysToPay();

/// Whether `kind` is cash, which has change and a smallest coin: as the reader's language calls it, or English; letter
/// case apart.
pricing::Tender tenderOf(const QString& kind);

/// What a row of the ledger is beside its note: "change", "rounded to the coin", "taken back"; empty of money that was
/// received or given back.
QString roleOf(const catalogue::Payment& payment);

} // namespace sp::words

// SPDX-License-Identifier: MIT
#pragma once

#include "db/book/bench_queue.h"

#include <QString>

#include <functional>

namespace sp::words {

/// What can be promised of an order: "Holds, ready by Wed 9 Dec.", or the first day that does and which jobs would be
/// late otherwise, by number and title and without their customers: whoever is at the counter may read it. A second
/// sentence where something is short of which nobody knows when it comes. `wantedBy` as it was asked with, `written`
/// how a day is written.
QString promiseSentence(const db::BenchQueue& queue, const db::BenchAnswer& answer,
                        const std::optional<units::Date>& wantedBy, const std::function<QString(units::Date)>& written);

} // namespace sp::words

// SPDX-License-Identifier: MIT
#pragma once

#include <QString>

#include <algorithm>

namespace sp::session {

/// `wanted`, with a number after it when something in one of the lists has that name already, letter case ignored.
template<class... Lists>
QString freeName(const QString& wanted, const Lists&... lists) {
    const auto taken = [&](const QString& name) {
        const auto same = [&](const auto& thing) {
            return QString::fromStdString(thing.name).compare(name, Qt::CaseInsensitive) == 0;
        };
        return (std::any_of(lists.begin(), lists.end(), same) || ...);
    };
    auto name = wanted;
    for (int n = 2; taken(name); ++n) name = QStringLiteral("%1 %2").arg(wanted).arg(n);
    return name;
}

} // namespace sp::session

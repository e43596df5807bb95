// SPDX-License-Identifier: MIT
#include "app/words/promise_words.h"

#include "app/words/names.h"
#include "app/words/words.h"

namespace sp::words {

QString promiseSentence(const db::BenchQueue& queue, const scheduling::Promise& promise,
                        const std::optional<units::Date>& wantedBy,
                        const std::function<QString(units::Date)>& written) {
    const auto day = written(promise.first);
    if (!wantedBy) return QCoreApplication::translate("Promise", "Could be ready by %1.").arg(day);
    if (promise.isHeld) return QCoreApplication::translate("Promise", "Holds, ready by %1.").arg(day);
    if (promise.delayed.empty())
        return QCoreApplication::translate("Promise", "Not by then; %1 is the first day that holds.").arg(day);
    const auto& first = queue.entries[promise.delayed.front().job].job;
    const auto job = QStringLiteral("%1 %2").arg(QString::fromStdString(first.number), titleOf(first));
    const auto others = static_cast<std::int64_t>(promise.delayed.size()) - 1;
    if (others == 0)
        return QCoreApplication::translate("Promise", "%1 is the first day that holds; sooner, %2 would be late.")
            .arg(day, job);
    return counted(
               "Promise",
               QT_TRANSLATE_N_NOOP("Promise", "%1 is the first day that holds; sooner, %2 and %n more would be late."),
               "%1 is the first day that holds; sooner, %2 and one more would be late.", others)
        .arg(day, job);
}

} // namespace sp::words

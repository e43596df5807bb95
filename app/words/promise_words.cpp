// SPDX-License-Identifier: MIT
#include "app/words/promise_words.h"

#include "app/words/names.h"
#include "app/words/words.h"

namespace sp::words {

namespace {

QString whatHolds(const db::BenchQueue& queue, const scheduling::Promise& promise,
                  const std::optional<units::Date>& wantedBy, const QString& day) {
    if (!wantedBy) return QCoreApplication::translate("Promise", "Can be promised for %1.").arg(day);
    if (promise.isHeld) return QCoreApplication::translate("Promise", "Holds, ready by %1.").arg(day);
    if (promise.first < *wantedBy)
        return QCoreApplication::translate("Promise", "Holds if it is put in for %1, before others.").arg(day);
    if (promise.delayed.empty())
        return QCoreApplication::translate("Promise", "Not by then; %1 is the first day that holds.").arg(day);
    const auto& first = queue.entries[promise.delayed.front().job].job;
    const auto job = QStringLiteral("%1 %2").arg(QString::fromStdString(first.number), titleOf(first));
    const auto others = static_cast<std::int64_t>(promise.delayed.size()) - 1;
    if (others == 0)
        return QCoreApplication::translate("Promise", "%1 is the first day that holds; sooner, %2 would be later.")
            .arg(day, job);
    return counted(
               "Promise",
               QT_TRANSLATE_N_NOOP("Promise", "%1 is the first day that holds; sooner, %2 and %n more would be later."),
               "%1 is the first day that holds; sooner, %2 and one more would be later.", others)
        .arg(day, job);
}

} // namespace

QString promiseSentence(const db::BenchQueue& queue, const db::BenchAnswer& answer,
                        const std::optional<units::Date>& wantedBy,
                        const std::function<QString(units::Date)>& written) {
    const auto sentence = whatHolds(queue, answer.promise, wantedBy, written(answer.promise.first));
    if (!answer.isShort) return sentence;
    return QCoreApplication::translate("Promise",
                                       "%1 Not all of it is on the shelf, and when the rest comes is not known.")
        .arg(sentence);
}

} // namespace sp::words

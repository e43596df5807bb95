// SPDX-License-Identifier: MIT
#include "app/words/shelf_words.h"

#include "app/words/words.h"

namespace sp::words {

QString shelfSentence(const db::OnShelf& there, const std::function<QString(std::int64_t)>& written) {
    const auto onHand = written(there.onHand);
    if (there.promised == 0) return QCoreApplication::translate("Shelf", "%1 on the shelf").arg(onHand);
    const auto promised = written(there.promised);
    if (there.free() < 0)
        return QCoreApplication::translate("Shelf", "%1 on the shelf, %2 promised, %3 lacking")
            .arg(onHand, promised, written(-there.free()));
    return QCoreApplication::translate("Shelf", "%1 on the shelf, %2 promised, %3 free")
        .arg(onHand, promised, written(there.free()));
}

QString shelfInShort(const db::OnShelf& there, const std::function<QString(std::int64_t)>& written) {
    const auto onHand = written(there.onHand);
    if (there.promised == 0) return QCoreApplication::translate("Shelf", "%1 on the shelf").arg(onHand);
    return there.free() < 0
               ? QCoreApplication::translate("Shelf", "%1 on the shelf, %2 lacking").arg(onHand, written(-there.free()))
               : QCoreApplication::translate("Shelf", "%1 on the shelf, %2 free").arg(onHand, written(there.free()));
}

QStringList lackSentences(const db::ShelfUse& use, const std::function<QString(const base::Id&)>& nameOf,
                          const std::function<QString(std::int64_t)>& written) {
    if (use.whyNone)
        return {QCoreApplication::translate("Shelf", "Nothing was taken off the shelf, for what the job takes is not "
                                                     "known: %1")
                    .arg(sentence(*use.whyNone))};
    QStringList sentences;
    for (const auto& lack : use.lacks)
        sentences +=
            (use.lacksLater
                 ? QCoreApplication::translate("Shelf", "The shelf has %1 of “%2” too few; what of it is there "
                                                        "when the job is ready is taken then.")
                 : QCoreApplication::translate("Shelf", "The shelf has %1 of “%2” too few; count it, and book "
                                                        "what was used besides."))
                .arg(written(lack.count), nameOf(lack.material));
    for (const auto& more : use.beyond)
        sentences += QCoreApplication::translate("Shelf", "For this job %1 of “%2” more were taken than it takes now; "
                                                          "what of it is still there, count it in for this job in "
                                                          "Supplies.")
                         .arg(written(more.count), nameOf(more.material));
    for (const auto& kept : use.stays)
        sentences +=
            QCoreApplication::translate("Shelf", "%1 of “%2” stay booked for this job; count in for it what is "
                                                 "still there.")
                .arg(written(kept.count), nameOf(kept.material));
    return sentences;
}

} // namespace sp::words

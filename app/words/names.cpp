// SPDX-License-Identifier: MIT
#include "app/words/names.h"

#include "app/words/sources.h"

namespace sp::words {

using catalogue::MaterialKind;
using catalogue::Step;

Source sourceOf(MaterialKind kind) {
    switch (kind) {
    case MaterialKind::Stone: return {QT_TRANSLATE_NOOP("Names", "stone")};
    case MaterialKind::Tape: return {QT_TRANSLATE_NOOP("Names", "tape")};
    case MaterialKind::Template: return {QT_TRANSLATE_NOOP("Names", "template")};
    case MaterialKind::Backing: return {QT_TRANSLATE_NOOP("Names", "backing")};
    case MaterialKind::Blank: return {QT_TRANSLATE_NOOP("Names", "blank")};
    case MaterialKind::Packing: return {QT_TRANSLATE_NOOP("Names", "packing")};
    }
    return {};
}

QString nameOf(MaterialKind kind) { return QCoreApplication::translate("Names", sourceOf(kind).text); }

QString nameOf(Step step) {
    switch (step) {
    case Step::Art: return QCoreApplication::translate("Names", "art");
    case Step::Cut: return QCoreApplication::translate("Names", "cut");
    case Step::Weed: return QCoreApplication::translate("Names", "weed");
    case Step::SetUp: return QCoreApplication::translate("Names", "set up");
    case Step::Brush: return QCoreApplication::translate("Names", "brush");
    case Step::Lift: return QCoreApplication::translate("Names", "lift");
    case Step::Press: return QCoreApplication::translate("Names", "press");
    case Step::Trim: return QCoreApplication::translate("Names", "trim");
    case Step::Pack: return QCoreApplication::translate("Names", "pack");
    }
    return {};
}

QString titleOf(const db::QuoteSummary& quote) {
    const QString first = quote.firstTitle.empty() && quote.lines > 0 ? QCoreApplication::translate("Names", "Untitled")
                                                                      : QString::fromStdString(quote.firstTitle);
    if (quote.lines < 2) return first;
    return QCoreApplication::translate("Names", "%1 and %2 more").arg(first, QString::number(quote.lines - 1));
}

} // namespace sp::words

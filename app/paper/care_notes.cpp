// SPDX-License-Identifier: MIT
#include "app/paper/care_notes.h"

#include "app/words/sheet_words.h"
#include "app/words/shown.h"

#include <QCoreApplication>
#include <QStringList>

namespace sp::paper {

QString careNotes() {
    const QStringList notes{
        QCoreApplication::translate(
            "CareNotes",
            "Freshly pressed work is hot: let it cool before you touch it.\n"
            "Wash garments inside out and cold, dry them without heat, keep the iron off the stones.\n"
            "Not for children under three: stones are small parts that can be swallowed.\n"
            "Stones may hold lead: for anything a child will wear ask for the maker's certificate and check the local "
            "rules.\n"
            "On a vehicle keep the glass clear where you drive: rules differ by place, and where it goes is yours to "
            "decide."),
        words::shown(words::SheetWords().taxCaution()),
        QCoreApplication::translate("CareNotes",
                                    "Local rules, the makers' data and licensed practice come before these notes.")};
    return notes.join(QLatin1Char('\n'));
}

QString slipCaution() {
    return QCoreApplication::translate("CareNotes", "Not for children under three. Keep glass clear where you drive; "
                                                    "check local rules. Fresh press work is hot.");
}

QString bladeCaution() {
    return QCoreApplication::translate("CareNotes",
                                       "Blades cut: retract the blade before loading, and keep fingers off its path.");
}

} // namespace sp::paper

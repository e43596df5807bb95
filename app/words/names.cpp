// SPDX-License-Identifier: MIT
#include "app/words/names.h"

#include "app/words/sources.h"
#include "app/words/words.h"

namespace sp::words {

using catalogue::MaterialKind;
using catalogue::Step;
using db::Stage;

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

QString nameOf(catalogue::StoneColour colour) {
    using enum catalogue::StoneColour;
    switch (colour) {
    case Crystal: return QCoreApplication::translate("Names", "Crystal");
    case Pearl: return QCoreApplication::translate("Names", "Pearl");
    case Silver: return QCoreApplication::translate("Names", "Silver");
    case BlackDiamond: return QCoreApplication::translate("Names", "Black diamond");
    case Hematite: return QCoreApplication::translate("Names", "Hematite");
    case Jet: return QCoreApplication::translate("Names", "Jet");
    case Rose: return QCoreApplication::translate("Names", "Rose");
    case LightRose: return QCoreApplication::translate("Names", "Light rose");
    case Fuchsia: return QCoreApplication::translate("Names", "Fuchsia");
    case Coral: return QCoreApplication::translate("Names", "Coral");
    case Red: return QCoreApplication::translate("Names", "Red");
    case Siam: return QCoreApplication::translate("Names", "Siam");
    case Orange: return QCoreApplication::translate("Names", "Orange");
    case Amber: return QCoreApplication::translate("Names", "Amber");
    case Topaz: return QCoreApplication::translate("Names", "Topaz");
    case Citrine: return QCoreApplication::translate("Names", "Citrine");
    case Peridot: return QCoreApplication::translate("Names", "Peridot");
    case Emerald: return QCoreApplication::translate("Names", "Emerald");
    case Turquoise: return QCoreApplication::translate("Names", "Turquoise");
    case Aquamarine: return QCoreApplication::translate("Names", "Aquamarine");
    case LightSapphire: return QCoreApplication::translate("Names", "Light sapphire");
    case Sapphire: return QCoreApplication::translate("Names", "Sapphire");
    case Lilac: return QCoreApplication::translate("Names", "Lilac");
    case Amethyst: return QCoreApplication::translate("Names", "Amethyst");
    case Brown: return QCoreApplication::translate("Names", "Brown");
    }
    return {};
}

QString titleOf(const db::QuoteSummary& quote) {
    const QString first = quote.firstTitle.empty() && quote.lines > 0 ? QCoreApplication::translate("Names", "Untitled")
                                                                      : QString::fromStdString(quote.firstTitle);
    if (quote.lines < 2) return first;
    return QCoreApplication::translate("Names", "%1 and %2 more").arg(first, QString::number(quote.lines - 1));
}

Source sourceOf(Stage stage) {
    switch (stage) {
    case Stage::Enquiry: return {QT_TRANSLATE_NOOP("Stage", "Enquiry")};
    case Stage::Quoted: return {QT_TRANSLATE_NOOP("Stage", "Quoted")};
    case Stage::Agreed: return {QT_TRANSLATE_NOOP("Stage", "Agreed")};
    case Stage::InProduction: return {QT_TRANSLATE_NOOP("Stage", "Making")};
    case Stage::Ready: return {QT_TRANSLATE_NOOP("Stage", "Ready")};
    case Stage::Collected: return {QT_TRANSLATE_NOOP("Stage", "Collected")};
    case Stage::Declined: return {QT_TRANSLATE_NOOP("Stage", "Let go")};
    }
    return {};
}

QString nameOf(Stage stage) { return QCoreApplication::translate("Stage", sourceOf(stage).text); }

QString counted(Thing thing, std::int64_t number, const QString& written) {
    const auto words = [&]() -> Source {
        switch (thing) {
        case Thing::Piece: return {QT_TRANSLATE_N_NOOP("Counts", "%1 pieces"), "%1 piece"};
        case Thing::Stone: return {QT_TRANSLATE_N_NOOP("Counts", "%1 stones"), "%1 stone"};
        case Thing::Sheet: return {QT_TRANSLATE_N_NOOP("Counts", "%1 sheets"), "%1 sheet"};
        case Thing::Lift: return {QT_TRANSLATE_N_NOOP("Counts", "%1 lifts"), "%1 lift"};
        case Thing::Template: return {QT_TRANSLATE_N_NOOP("Counts", "%1 templates"), "%1 template"};
        case Thing::Cycle: return {QT_TRANSLATE_N_NOOP("Counts", "%1 cycles"), "%1 cycle"};
        case Thing::TestPress: return {QT_TRANSLATE_N_NOOP("Counts", "%1 tests"), "%1 test"};
        case Thing::Kit: return {QT_TRANSLATE_N_NOOP("Counts", "%1 kits"), "%1 kit"};
        case Thing::Pack: return {QT_TRANSLATE_N_NOOP("Counts", "%1 packs"), "%1 pack"};
        }
        return {};
    }();
    return counted("Counts", words.text, words.one, number).arg(written);
}

} // namespace sp::words

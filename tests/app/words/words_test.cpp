// SPDX-License-Identifier: MIT
#include "app/words/words.h"

#include "app/words/sources.h"
#include "core/artwork/artwork_file.h"
#include "core/artwork/count.h"
#include "core/layout/fit.h"
#include "core/layout/roll.h"
#include "core/supply/price_list_csv.h"
#include "core/units/text.h"

#include <QRegularExpression>
#include <QTranslator>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <map>
#include <set>
#include <string>
#include <vector>

namespace {

using namespace sp;
using base::Message;
using words::text;

template<class One, class Rows>
void addAll(const Rows& rows, std::vector<base::MessageId>& out) {
    for (std::size_t i = 0; i < std::size(rows); ++i) out.push_back(idOf(static_cast<One>(i)));
}

std::vector<base::MessageId> everyMessage() {
    std::vector<base::MessageId> all;
    addAll<base::Fault>(base::kFaults, all);
    addAll<base::Note>(base::kNotes, all);
    addAll<units::Fault>(units::kFaults, all);
    addAll<units::Note>(units::kNotes, all);
    addAll<artwork::Fault>(artwork::kFaults, all);
    addAll<artwork::Note>(artwork::kNotes, all);
    addAll<layout::Fault>(layout::kFaults, all);
    addAll<needs::Fault>(needs::kFaults, all);
    addAll<needs::Note>(needs::kNotes, all);
    addAll<planning::Fault>(planning::kFaults, all);
    addAll<planning::Note>(planning::kNotes, all);
    addAll<costing::Fault>(costing::kFaults, all);
    addAll<catalogue::fields::Fault>(catalogue::fields::kFaults, all);
    addAll<catalogue::fields::Note>(catalogue::fields::kNotes, all);
    addAll<catalogue::fields::Term>(catalogue::fields::kTerms, all);
    addAll<pricing::Fault>(pricing::kFaults, all);
    addAll<pricing::Note>(pricing::kNotes, all);
    addAll<supply::Fault>(supply::kFaults, all);
    addAll<supply::Note>(supply::kNotes, all);
    addAll<scheduling::Fault>(scheduling::kFaults, all);
    addAll<db::Fault>(db::kFaults, all);
    addAll<db::Note>(db::kNotes, all);
    return all;
}

std::string nameOf(const base::MessageId& id) {
    return std::string(words::contextOf(id.room)) + (id.isNote ? ".Note." : ".Fault.") + std::string(id.name);
}

/// Six values, so that every place is filled: a count first, then text that shows where it stands.
std::vector<base::Value> someValues(std::int64_t count) {
    return {base::asValue(count), base::asValue("<2>"), base::asValue("<3>"), base::asValue("<4>")};
}

TEST(Words, everyFaultIsOneSentenceAndSaysNothingOfTheProgram) {
    const QRegularExpression place(QStringLiteral("%[0-9n]"));
    std::map<std::string, std::string> seen;
    for (const auto& id : everyMessage()) {
        const auto source = words::sourceOf(id);
        ASSERT_NE(source.text, nullptr) << nameOf(id);
        for (const std::int64_t count : {1, 2}) {
            const std::string said = text(Message{id, someValues(count)});
            EXPECT_FALSE(QString::fromStdString(said).contains(place)) << nameOf(id) << ": " << said;
            EXPECT_EQ(said.find("  "), std::string::npos) << nameOf(id) << ": " << said;
            if (id.name.size() > 8) { EXPECT_EQ(said.find(id.name), std::string::npos) << nameOf(id) << ": " << said; }
            // Met by programs alone; two sentences, the second by a note; nothing to do but what the sentence says.
            const base::MessageId plain[] = {idOf(base::Fault::NotAKey),
                                             idOf(artwork::Fault::NoStones),
                                             idOf(supply::Fault::SupplierSumsTooLarge),
                                             idOf(supply::Fault::KitsOutOfRange),
                                             idOf(needs::Fault::SizeOutOfRange),
                                             idOf(planning::Fault::NothingToCut),
                                             idOf(db::Fault::StructureDamaged),
                                             idOf(db::Fault::NotCopiedWhole),
                                             idOf(db::Fault::ValueDamaged),
                                             idOf(db::Fault::HalfACertificate),
                                             idOf(db::Fault::OpenHere),
                                             idOf(db::Fault::NoDrawing),
                                             idOf(db::Fault::ResultSealed),
                                             idOf(db::Fault::CopyInAction),
                                             idOf(db::Fault::NothingToUndo),
                                             idOf(db::Fault::NothingToRedo)};
            if (id.isNote || std::find(std::begin(plain), std::end(plain), id) != std::end(plain)) continue;
            EXPECT_EQ(said.back(), '.') << nameOf(id) << ": " << said;
            EXPECT_EQ(said.find(". "), std::string::npos) << "more than one sentence: " << nameOf(id) << ": " << said;
            EXPECT_TRUE(said.find(';') != std::string::npos || said.find(": ") != std::string::npos ||
                        said.find(" must ") != std::string::npos || said.starts_with("Choose") ||
                        said.starts_with("A currency"))
                << "says what to do: " << nameOf(id) << ": " << said;
        }
        const auto [at, isNew] = seen.emplace(words::contextOf(id.room) + std::string(source.text), nameOf(id));
        EXPECT_TRUE(isNew) << nameOf(id) << " has the words of " << at->second;
    }
}

TEST(Words, countsOfOneHaveWordsOfTheirOwn) {
    for (const auto& id : everyMessage()) {
        const auto source = words::sourceOf(id);
        const bool hasNumber = QString::fromUtf8(source.text).contains(QLatin1String("%n"));
        const bool isName = id.room == base::Room::Artwork && id.isNote; // what was left out, beside its number
        EXPECT_TRUE(source.one == nullptr ? !hasNumber : hasNumber || isName) << nameOf(id);
    }
    using enum artwork::Note;
    EXPECT_EQ(text(base::say(GradientsStandFor, 1)), "1 gradient stands for the colour of its middle.");
    EXPECT_EQ(text(base::say(GradientsStandFor, 12)), "12 gradients stand for the colours of their middle.");
    EXPECT_EQ(text(base::say(NarrowPieces, 1, 5, "name.svg")),
              "1 of 5 separate pieces of name.svg is narrower than a stone and holds none; take a smaller stone or a "
              "larger size.");
}

// Every kind of value, as it stood in the sentences when core made them itself.
TEST(Words, fillEveryKindOfValueIntoItsPlace) {
    const auto mm = [](std::int64_t value) { return units::Length::fromNanometres(value * 1'000'000); };
    EXPECT_EQ(text(layout::lengthForPieces(mm(305), {mm(400), mm(310)}, {}, 1).error()),
              "A piece of 400 x 310 mm (15.748 x 12.205 in) does not fit the usable width of the roll, 305 mm "
              "(12.008 in), either way round; make the piece smaller or choose a larger roll.");
    EXPECT_EQ(text(units::parseMoney("2000000000", units::Currency()).error()),
              "“2000000000” is out of range; type an amount of at most 1,000,000,000 either way.");
    EXPECT_EQ(text(units::parseRate("100 %%", {}).error()), "“100 %%” has a unit too many, “%”; remove it.");
    EXPECT_EQ(text(supply::readPriceTable("a,b\n\"c,d", "list.csv").error()),
              "The quote that opens in line 2 of “list.csv” is never closed; save the list as CSV again.");
    EXPECT_EQ(text(base::makeError(pricing::Fault::WantedBeforeQuoted, "wanted by", *units::Date::parse("2026-11-24"),
                                   *units::Date::parse("2026-11-25"))),
              "The day it is wanted, 2026-11-24, lies before the day of the quote, 2026-11-25; type a later one.");
    EXPECT_EQ(text(base::about("Backing", base::makeError(layout::Fault::GapNegative, "gap"))),
              "Backing: The gap cannot be less than zero; enter 0 for none.");
}

TEST(Words, countWhatWasLeftOut) {
    const auto said = [](artwork::Note note, std::size_t count) {
        return text(artwork::leftOutBecause(base::say(note), count));
    };
    EXPECT_EQ(said(artwork::Note::Ellipse, 528), "ellipses");
    EXPECT_EQ(said(artwork::Note::Ellipse, 1), "ellipse");
    EXPECT_EQ(text(base::say(artwork::Note::Ellipse)), "ellipse");
    EXPECT_EQ(said(artwork::Note::TooSmall, 2), "too small");
    EXPECT_EQ(text(artwork::leftOutBecause(base::say(artwork::Note::UnknownElement, "blob"), 2)),
              "unknown elements blob");
    EXPECT_EQ(text(artwork::leftOutBecause(base::say(artwork::Note::EntityNotRead, "HATCH"), 2)), "HATCH not read");
}

TEST(Words, writeNumbersWithoutPowersOfTen) {
    const auto said = [](double most) {
        return text(base::say(artwork::Note::SaveAtTrueSize, base::Real{0.00001234}, base::Real{most}, base::Real{1.5},
                              base::Real{12}));
    };
    EXPECT_THAT(said(2e9), testing::HasSubstr("0.0000123 to 2,000,000,000 mm across"));
    EXPECT_THAT(said(1234), testing::HasSubstr("to 1,230 mm"));
    EXPECT_THAT(said(2.857), testing::HasSubstr("to 2.86 mm"));
    EXPECT_THAT(said(0), testing::HasSubstr("to 0 mm"));
}

TEST(Words, tellWhatAFileWithoutStonesHas) {
    const auto said = [](std::string svg) {
        const auto drawing = artwork::readArtwork(std::move(svg), "gift.svg");
        return text(drawing ? artwork::countStones(*drawing, {}, "gift.svg").error() : drawing.error());
    };
    EXPECT_EQ(said("<svg/>"), "gift.svg has no discs of a stone's size; it has no outlines at all. Draw its stones as "
                              "circles, or estimate from its shape instead.");
    EXPECT_EQ(said("<svg><circle r='0.1'/><circle cx='5' r='0.2'/><blob/><image href='a.png'/></svg>"),
              "gift.svg has no discs of a stone's size; what it has: 1 bitmap, 2 too small, 1 unknown element blob. A "
              "bitmap cannot be counted; place stones over it as circles.");
    EXPECT_EQ(said("<svg><circle r='0.1'/><circle cx='5' r='0.2'/></svg>"),
              "gift.svg has no discs of a stone's size; what it has: 2 too small. Its discs are 0.2 to 0.4 mm across, "
              "stones 1.5 to 12 mm; save it at its true size, or estimate from its shape instead.");
    EXPECT_EQ(said("PK\3\4"), "gift.svg is a zip file, whatever its name says; unpack it and drop the drawing inside.");
}

/// Longer, accented, in brackets, places kept.
class Pseudo : public QTranslator {
  public:
    bool isEmpty() const override { return false; }
    QString translate(const char*, const char* source, const char*, int) const override {
        return QStringLiteral("[Ŝ %1 ~~]").arg(QString::fromUtf8(source));
    }
};

TEST(Words, areTranslatedWhole) {
    int arguments = 0;
    const QCoreApplication application(arguments, nullptr);
    Pseudo pseudo;
    ASSERT_TRUE(QCoreApplication::installTranslator(&pseudo));
    for (const auto& id : everyMessage()) {
        const std::string said = text(Message{id, someValues(1)});
        EXPECT_TRUE(said.starts_with("[Ŝ ") && said.ends_with(" ~~]")) << nameOf(id) << ": " << said;
    }
    QCoreApplication::removeTranslator(&pseudo);
}

} // namespace

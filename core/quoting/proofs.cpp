// SPDX-License-Identifier: MIT
#include "core/quoting/proofs.h"

#include "core/needs/line_check.h"
#include "core/quoting/letters.h"
#include "core/quoting/line_words.h"
#include "core/units/measured.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <map>
#include <optional>
#include <utility>

namespace sp::quoting {

namespace {

constexpr std::string_view kDigits = "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-_";
constexpr double kStepsPerMillimetre = 20;
constexpr int kBitsOfDigit = 5; ///< the sixth says that more follow
constexpr std::uint32_t kMore = 1U << kBitsOfDigit;
constexpr int kMostBits = 30;
constexpr double kFarthest = 10'000; ///< mm; no design is as large
constexpr double kSameSize = 0.6;    ///< mm; a size is rounded up from the drawing, to a hundredth of an inch

void putNumber(std::string& text, std::int64_t number) {
    auto rest = static_cast<std::uint32_t>(number < 0 ? -2 * number - 1 : 2 * number);
    for (; rest >= kMore; rest >>= kBitsOfDigit) text += kDigits[kMore | (rest % kMore)];
    text += kDigits[rest];
}

std::optional<std::int64_t> takeNumber(std::string_view& text) {
    std::uint32_t number = 0;
    for (int shift = 0; shift < kMostBits && !text.empty(); shift += kBitsOfDigit) {
        const auto digit = kDigits.find(text.front());
        if (digit == std::string_view::npos) return std::nullopt;
        text.remove_prefix(1);
        number |= static_cast<std::uint32_t>(digit % kMore) << shift;
        if (digit >= kMore) continue;
        const auto half = static_cast<std::int64_t>(number / 2);
        return number % 2 == 0 ? half : -half - 1;
    }
    return std::nullopt;
}

std::int64_t stepsOf(double millimetres) {
    return std::llround(std::clamp(millimetres, -kFarthest, kFarthest) * kStepsPerMillimetre);
}

artwork::Box boxOf(const std::vector<artwork::LaidStone>& stones) {
    artwork::Box box;
    for (const auto& stone : stones) box.add(stone.centre, stone.diameter / 2);
    return box;
}

class ProofWriter {
  public:
    ProofWriter(const catalogue::Order& order, const catalogue::PriceBook& book,
                const std::function<DesignLook(const base::Id&)>& lookOf, const SheetWords& words)
        : m_order(order)
        , m_book(book)
        , m_lookOf(lookOf)
        , m_words(words) {}

    std::vector<SheetProof> write() {
        const auto choices = catalogue::choicesOf(m_order);
        for (std::size_t number = 0; number < choices.size(); ++number)
            for (const auto& line : choices[number].lines) {
                std::size_t firstLetter = 0;
                for (const auto& place : line.places) {
                    if (!place.design.isNone()) addPlace(line, place, firstLetter, number);
                    firstLetter += place.stones.size();
                }
            }
        std::vector<SheetProof> proofs;
        for (auto& made : m_made) {
            if (made.choices.size() < choices.size()) nameChoices(made);
            for (const auto& title : made.titles) made.proof.title += (made.proof.title.empty() ? "" : ", ") + title;
            proofs.push_back(std::move(made.proof));
        }
        if (!m_leftOut.empty()) proofs.push_back(ofThoseLeftOut());
        return proofs;
    }

  private:
    struct Made {
        catalogue::Placement place;
        std::size_t firstLetter = 0;
        std::vector<std::size_t> choices;
        std::vector<std::string> titles; ///< where it goes on the lines that share it
        SheetProof proof;
    };

    /// Nobody agrees to what is not shown without being told.
    SheetProof ofThoseLeftOut() const {
        constexpr std::size_t kNamed = 40;
        SheetProof proof;
        for (std::size_t i = 0; i < std::min(m_leftOut.size(), kNamed); ++i)
            proof.title += (i == 0 ? "" : ", ") + m_leftOut[i];
        if (m_leftOut.size() > kNamed) proof.title += ", …";
        proof.note = m_words.proofLeftOut();
        return proof;
    }

    static std::string titleOf(const catalogue::OrderLine& line, const catalogue::Placement& place) {
        const auto& title = needs::titleOf(line, place);
        return place.place.empty() ? title : fmt::format("{}: {}", place.place, title);
    }

    static void note(std::vector<std::string>& titles, const std::string& title) {
        if (std::ranges::find(titles, title) == titles.end()) titles.push_back(title);
    }

    void nameChoices(Made& made) const {
        for (const auto number : made.choices)
            made.proof.choices +=
                (made.proof.choices.empty() ? "" : ", ") +
                m_words.choice(units::formatCount(units::Count::of(static_cast<std::int64_t>(number) + 1), m_numbers));
    }

    void addPlace(const catalogue::OrderLine& line, const catalogue::Placement& place, std::size_t firstLetter,
                  std::size_t choice) {
        const auto isSame = [&](const Made& made) {
            return made.place.design == place.design && made.place.width == place.width &&
                   made.place.height == place.height && made.place.stones == place.stones &&
                   made.firstLetter == firstLetter;
        };
        if (const auto known = std::ranges::find_if(m_made, isSame); known != m_made.end()) {
            if (known->choices.back() != choice) known->choices.push_back(choice);
            return note(known->titles, titleOf(line, place));
        }
        const auto& look = knownLook(place.design);
        if (look.stones.empty()) return;
        if (m_made.size() == kMaxProofs || m_stones + look.stones.size() > kMaxProofStones)
            return note(m_leftOut, titleOf(line, place));
        m_stones += look.stones.size();
        m_made.push_back({place, firstLetter, {choice}, {titleOf(line, place)}, proofOf(place, firstLetter, look)});
    }

    const DesignLook& knownLook(const base::Id& design) {
        const auto known = m_looks.find(design);
        return known != m_looks.end() ? known->second : m_looks.emplace(design, m_lookOf(design)).first->second;
    }

    std::string lengthOf(double millimetres) const {
        const auto length = units::Length::fromMicrometres(std::llround(millimetres * 1000));
        return units::measuredLength(length, m_book.shop.lengthUnit, m_numbers) + " " +
               std::string(units::nameOf(m_book.shop.lengthUnit));
    }

    SheetProof proofOf(const catalogue::Placement& place, std::size_t firstLetter, const DesignLook& look) const {
        SheetProof proof;
        const auto box = boxOf(look.stones);
        const auto isAbout = [](units::Length typed, double drawn) {
            return std::abs(typed.millimetres() - drawn) <= kSameSize;
        };
        const bool isTrue = isAbout(place.width, box.width()) && isAbout(place.height, box.height());
        proof.width = lengthOf(isTrue ? place.width.millimetres() : box.width());
        proof.height = lengthOf(isTrue ? place.height.millimetres() : box.height());
        const bool hasCounts = addStones(proof, place, firstLetter, look, box);
        if (!hasCounts) proof.note = m_words.proofOfOtherCounts();
        if (!isTrue) proof.note += (proof.note.empty() ? "" : " ") + m_words.proofOfAnotherSize();
        return proof;
    }

    /// What a place takes of each stone, each once.
    static std::vector<catalogue::StoneCount> takenOf(const catalogue::Placement& place) {
        std::vector<catalogue::StoneCount> taken;
        for (const auto& stone : place.stones) {
            const auto known = std::ranges::find(taken, stone.material, &catalogue::StoneCount::material);
            if (known == taken.end())
                taken.push_back(stone);
            else
                known->count = units::Count::of(known->count.value() + stone.count.value());
        }
        return mostFirst(std::move(taken));
    }

    std::string sizeOf(const base::Id& material) const {
        const auto* found = m_book.find(material);
        return found ? found->material.stone.size : std::string();
    }

    /// Which row of the picture a stone of the line is: its own, or that of a stone of the same size and count that the
    /// line has none of, for a colour that was changed by hand. The number of rows: none.
    std::size_t rowFor(const catalogue::StoneCount& stone, const std::vector<catalogue::StoneCount>& taken,
                       const DesignLook& look, const std::vector<std::vector<artwork::LaidStone>>& rows) const {
        const auto own = std::ranges::find(look.materials, stone.material);
        if (own != look.materials.end()) return static_cast<std::size_t>(own - look.materials.begin());
        for (std::size_t row = 0; row < rows.size(); ++row) {
            const bool isTaken =
                std::ranges::find(taken, look.materials[row], &catalogue::StoneCount::material) != taken.end();
            const bool isAlike = static_cast<std::int64_t>(rows[row].size()) == stone.count.value() &&
                                 sizeOf(look.materials[row]) == sizeOf(stone.material);
            if (!isTaken && isAlike) return row;
        }
        return rows.size();
    }

    /// The rows of the picture in the order of the line's letters; whether the line takes just those stones.
    bool addStones(SheetProof& proof, const catalogue::Placement& place, std::size_t firstLetter,
                   const DesignLook& look, const artwork::Box& box) const {
        std::vector<std::vector<artwork::LaidStone>> rows(look.materials.size());
        for (const auto& stone : look.stones) rows.at(stone.material).push_back(stone);
        auto letter = firstLetter;
        bool isSame = true;
        const auto taken = takenOf(place);
        for (const auto& stone : taken) {
            const auto row = rowFor(stone, taken, look, rows);
            const bool isShown = row < rows.size() && !rows[row].empty();
            isSame = isSame && isShown && static_cast<std::int64_t>(rows[row].size()) == stone.count.value();
            if (isShown) proof.stones.push_back(rowOf(stone.material, letter, std::exchange(rows[row], {}), box));
            ++letter;
        }
        for (std::size_t row = 0; row < rows.size(); ++row)
            if (!rows[row].empty()) {
                proof.stones.push_back(rowOf(look.materials[row], letter++, rows[row], box));
                isSame = false;
            }
        return isSame;
    }

    ProofStone rowOf(const base::Id& id, std::size_t letter, const std::vector<artwork::LaidStone>& stones,
                     const artwork::Box& box) const {
        ProofStone row;
        row.letter = letterOf(letter);
        if (const auto* found = m_book.find(id)) {
            row.name = found->material.name;
            row.rgb = found->material.stone.rgb;
        }
        row.count = units::formatCount(units::Count::of(static_cast<std::int64_t>(stones.size())), m_numbers);
        double across = 0;
        std::vector<artwork::Point> places;
        for (const auto& stone : stones) {
            across += stone.diameter;
            places.push_back({stone.centre.x - box.left, stone.centre.y - box.top});
        }
        row.across = units::Length::fromMicrometres(std::llround(1000 * across / static_cast<double>(stones.size())));
        row.places = packed(places);
        return row;
    }

    const catalogue::Order& m_order;
    const catalogue::PriceBook& m_book;
    const std::function<DesignLook(const base::Id&)>& m_lookOf;
    const SheetWords& m_words;
    units::NumberStyle m_numbers = m_words.numbers();
    std::map<base::Id, DesignLook> m_looks;
    std::vector<Made> m_made;
    std::vector<std::string> m_leftOut; ///< the titles of those beyond the limits
    std::size_t m_stones = 0;
};

} // namespace

std::vector<SheetProof> proofsOf(const catalogue::Order& order, const catalogue::PriceBook& book,
                                 const std::function<DesignLook(const base::Id& design)>& lookOf,
                                 const SheetWords& words) {
    return ProofWriter(order, book, lookOf, words).write();
}

std::string packed(const std::vector<artwork::Point>& places) {
    std::string text;
    std::int64_t x = 0;
    std::int64_t y = 0;
    for (const auto& place : places) {
        const auto nextX = stepsOf(place.x);
        const auto nextY = stepsOf(place.y);
        putNumber(text, nextX - x);
        putNumber(text, nextY - y);
        x = nextX;
        y = nextY;
    }
    return text;
}

std::vector<artwork::Point> unpacked(std::string_view places) {
    std::vector<artwork::Point> points;
    std::int64_t x = 0;
    std::int64_t y = 0;
    while (!places.empty()) {
        const auto right = takeNumber(places);
        const auto down = right ? takeNumber(places) : std::nullopt;
        if (!down) break;
        x += *right;
        y += *down;
        points.push_back({static_cast<double>(x) / kStepsPerMillimetre, static_cast<double>(y) / kStepsPerMillimetre});
    }
    return points;
}

} // namespace sp::quoting

// SPDX-License-Identifier: MIT
// Promises P7 and P8: a damaged file never crashes the program, and damage to what was given is always reported.
#include "tests/db/bench_book.h"
#include "tests/support/seed.h"

#include <random>

namespace {

using namespace sp;
using test::BookTest;

class DamageTest : public BookTest {
  protected:
    void SetUp() override {
        BookTest::SetUp();
        stock();
        for (int i = 0; i < 6; ++i) numbers.push_back(given().number);
        draft();
        ASSERT_TRUE(book->moveStock(tape, 12, units::Money::fromMicros(50'000'000), "delivery"));
        for (const auto& number : numbers) sealed.push_back(book->quoteNumbered(number).value());
        materials = book->materials().value();
        book.reset();
        good = test::bytesOf(file);
        damaged = folder / "damaged.jobbook";
    }

    /// Opens the damaged file and reads all there is. What was given reads as it was, or is refused.
    enum class Outcome { Refused, SomeRefused, AllRight, Altered };
    Outcome readAll() {
        auto opened = db::Book::open(damaged, clock.surroundings());
        refusal.clear();
        if (!opened) {
            refusal = opened.error().detail;
            return Outcome::Refused;
        }
        auto& held = **opened;
        const auto look = [&](const auto& result) {
            if (!result) refusal = result.error().detail;
        };
        look(held.shop());
        look(held.bench());
        look(held.materials());
        look(held.packs());
        look(held.suppliers());
        look(held.designs());
        look(held.customers());
        look(held.shelf());
        look(held.priceBook({}));
        look(held.quotes("lantern", 50));
        look(held.lastDraft());
        for (const auto& was : sealed) {
            const auto is = held.quoteNumbered(was.number);
            look(is);
            if (is && (is->order != was.order || is->frozen != was.frozen || is->sealedTotal != was.sealedTotal))
                return Outcome::Altered;
        }
        return refusal.empty() ? Outcome::AllRight : Outcome::SomeRefused;
    }
    bool isReported() const {
        const auto report = db::Book::check(damaged);
        return !report || !report->damage.empty();
    }

    std::vector<std::string> numbers;
    std::vector<db::Quote> sealed;
    std::vector<catalogue::Material> materials;
    std::string good;
    std::string refusal; ///< the last sentence that reading met
    std::filesystem::path damaged;
};

TEST_F(DamageTest, refusesABookCutOffAnywhere) {
    for (std::size_t length = 0; length < good.size(); length += 512) {
        test::writeBytes(damaged, std::string_view(good).substr(0, length));
        ASSERT_EQ(readAll(), Outcome::Refused) << "cut to " << length << " bytes";
        ASSERT_TRUE(isReported()) << "cut to " << length << " bytes";
    }
}

TEST_F(DamageTest, neverShowsAGivenQuoteOtherThanItWasAndReportsWhatIsLost) {
    std::mt19937_64 random(test::printedSeed());
    const int flips = test::roundsOr("STONEPENNY_FLIPS", 1'000);
    int refused = 0;
    int partly = 0;
    int reported = 0;
    int unseen = 0;
    for (int i = 0; i < flips; ++i) {
        const auto bit = std::uniform_int_distribution<std::size_t>(0, good.size() * 8 - 1)(random);
        std::string bytes = good;
        bytes[bit / 8] = static_cast<char>(bytes[bit / 8] ^ (1 << (bit % 8)));
        test::writeBytes(damaged, bytes);
        const auto outcome = readAll();
        ASSERT_NE(outcome, Outcome::Altered) << "bit " << bit;
        // Opening may have rewritten nothing; check the flipped bytes themselves.
        test::writeBytes(damaged, bytes);
        const bool isSeen = isReported();
        ASSERT_TRUE(isSeen || outcome == Outcome::AllRight) << "bit " << bit << ": " << refusal;
        refused += outcome == Outcome::Refused ? 1 : 0;
        partly += outcome == Outcome::SomeRefused ? 1 : 0;
        reported += isSeen && outcome == Outcome::AllRight ? 1 : 0;
        unseen += isSeen ? 0 : 1;
    }
    std::cout << flips << " flips: " << refused << " refused at opening, " << partly << " when read, " << reported
              << " by check alone, " << unseen << " in free space or old records\n";
}

} // namespace

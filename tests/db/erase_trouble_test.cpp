// SPDX-License-Identifier: MIT
// A person is taken out while the disk fails at any of its writes, or the program is killed at any instant.
#include "tests/db/erase_bench.h"
#include "tests/db/other_call.h"
#include "tests/support/child.h"
#include "tests/support/seed.h"

#include <cerrno>
#include <random>
#include <set>
#include <unistd.h>

namespace {

using namespace sp;
using test::Child;
using test::EraseTest;
using test::isAnywhereIn;
using test::OtherCall;
using test::valueOf;
using test::whyNot;

class EraseTrouble : public EraseTest {
  protected:
    static std::string markOf(int i) { return "Quill" + std::string(1, static_cast<char>('a' + i)) + "x"; }
    /// People with a job each that is done.
    std::vector<base::Id> people(int count) {
        std::vector<base::Id> ids;
        for (int i = 0; i < count; ++i) {
            const auto id = person(markOf(i));
            auto renamed = *valueOf(book->customer(id));
            renamed.telephone = "555 " + markOf(i) + " again";
            EXPECT_TRUE(book->save(renamed)); // the log holds what it was before
            done(id);
            ids.push_back(id);
        }
        return ids;
    }
};

int g_writesLeft = 0; ///< before the disk fails; below nothing: it has failed

bool isFailing() {
    if (g_writesLeft-- > 0) return false;
    errno = EIO;
    return true;
}
ssize_t writeOrNot(int file, const void* bytes, std::size_t count) {
    return isFailing() ? -1 : ::write(file, bytes, count);
}
ssize_t writeAtOrNot(int file, const void* bytes, std::size_t count, off64_t at) {
    return isFailing() ? -1 : ::pwrite64(file, bytes, count, at);
}

/// The disk takes no more after so many writes, for as long as this lives.
class FailingAfter {
  public:
    explicit FailingAfter(int writes) { g_writesLeft = writes; }
    bool hasFailed() const { return g_writesLeft < 0; }

  private:
    OtherCall m_write{"write", &writeOrNot};
    OtherCall m_narrow{"pwrite", &writeAtOrNot};
    OtherCall m_wide{"pwrite64", &writeAtOrNot};
};

// From the first write on to where all of them succeed: the person is there whole, or gone; and then all traces of them
// are gone by the next erasing at the latest, as is promised (Book::eraseCustomer).
TEST_F(EraseTrouble, leavesThePersonWholeOrGoneWhereverTheDiskFails) {
    stock();
    const auto ids = people(2);
    const auto before = stays();
    book.reset();
    const auto good = test::bytesIn(file);
    int refused = 0;
    int untidied = 0;
    bool isDone = false;
    // Each of the first writes, then some of them; with STONEPENNY_ERASE_WRITES=1 each of them all.
    const bool isEach = test::roundsOr("STONEPENNY_ERASE_WRITES", 0) != 0;
    for (int writes = 0; !isDone; writes += isEach ? 1 : 1 + writes / 4) {
        std::ofstream(file, std::ios::binary | std::ios::trunc) << good;
        std::filesystem::remove(file.string() + "-journal");
        reopen();
        const auto there = valueOf(book->customer(ids[0]));
        base::Done erased;
        {
            const FailingAfter disk(writes);
            erased = book->eraseCustomer(ids[0]);
            isDone = !disk.hasFailed();
        }
        const auto isGone = !valueOf(book->customer(ids[0]));
        if (erased) {
            EXPECT_TRUE(isDone) << "after " << writes << " writes";
            expectErased(markOf(0));
        } else if (faultOf(erased) == idOf(db::Fault::ErasedNotTidied)) {
            ++untidied;
            EXPECT_TRUE(isGone) << "after " << writes << " writes";
        } else {
            ++refused;
            EXPECT_EQ(valueOf(book->customer(ids[0])), there) << "after " << writes << " writes";
            EXPECT_TRUE(isAnywhereIn(folder.path(), markOf(0)));
        }
        reopen();
        EXPECT_EQ(stays(), before) << "after " << writes << " writes";
        expectSound();
        EXPECT_EQ(!valueOf(book->customer(ids[0])), isGone) << "after " << writes << " writes";
        if (!isGone) { ASSERT_EQ(whyNot(book->eraseCustomer(ids[0])), "") << "after " << writes << " writes"; }
        ASSERT_EQ(whyNot(book->eraseCustomer(ids[1])), "") << "after " << writes << " writes";
        for (int i = 0; i < 2; ++i) expectErased(markOf(i));
        EXPECT_EQ(stays(), before) << "after " << writes << " writes";
        book.reset();
        if (HasFailure()) FAIL();
    }
    std::cout << refused << " refused, " << untidied << " erased and not tidied\n";
    EXPECT_GT(refused, 0);
    EXPECT_GT(untidied, 0);
}

TEST_F(EraseTrouble, aKillAtAnyInstantLeavesThePersonWholeOrGone) {
    stock();
    constexpr int kPeople = 8;
    const auto ids = people(kPeople);
    const auto before = stays();
    book.reset();
    const auto good = test::bytesIn(file);
    std::mt19937_64 random(test::printedSeed());
    const int cycles = test::roundsOr("STONEPENNY_ERASE_KILLS", 5);
    int acknowledged = 0;
    int whole = 0;
    int gone = 0;
    for (int cycle = 0; cycle < cycles; ++cycle) {
        std::ofstream(file, std::ios::binary | std::ios::trunc) << good;
        std::filesystem::remove(file.string() + "-journal");
        std::set<std::string> said;
        {
            Child child({BOOK_CHILD, "erase", file.string()});
            ASSERT_EQ(child.line(), "begins");
            for (auto& line :
                 child.killAfter(std::chrono::microseconds(std::uniform_int_distribution<int>(200, 250'000)(random))))
                said.insert(std::move(line));
        }
        for (const auto& name : said) {
            if (!name.starts_with("Ottoline ")) continue; // the child came to the customer of the sample
            expectErased(name.substr(9)); // as the disk is now, its journal too
        }
        acknowledged += static_cast<int>(said.size());
        reopen();
        EXPECT_EQ(stays(), before) << "cycle " << cycle;
        expectSound();
        for (int i = 0; i < kPeople; ++i) {
            const auto found = valueOf(book->customer(ids[static_cast<std::size_t>(i)]));
            if (said.contains("Ottoline " + markOf(i))) { EXPECT_FALSE(found) << markOf(i); }
            if (!found) {
                ++gone;
                expectErased(markOf(i)); // what was left to do is done by opening the book
                continue;
            }
            ++whole;
            EXPECT_EQ(found->telephone, "555 " + markOf(i) + " again");
            EXPECT_TRUE(found->certificate);
        }
        bool isTidied = false;
        for (const auto& id : ids) {
            if (!valueOf(book->customer(id))) continue;
            ASSERT_EQ(whyNot(book->eraseCustomer(id)), "");
            isTidied = true;
        }
        if (isTidied)
            for (int i = 0; i < kPeople; ++i) expectErased(markOf(i));
        book.reset();
        if (HasFailure()) FAIL() << "cycle " << cycle;
    }
    std::cout << cycles << " kills, " << acknowledged << " erasings acknowledged; " << whole << " people whole, "
              << gone << " gone, no bytes of them left\n";
}

} // namespace

// SPDX-License-Identifier: MIT
#pragma once

#include "core/layout/fit_memo.h"
#include "core/quoting/sheet_content.h"
#include "db/book/book.h"
#include "tests/support/held_clock.h"

#include <map>
#include <memory>
#include <random>
#include <string>
#include <utility>
#include <vector>

namespace sp::test {

/// What one thing that happened in the shop left behind, for whoever counts along.
struct Happened {
    std::string what;                     ///< "paid", "revised" …
    bool isRefused = false;               ///< the book would not, and nothing was changed
    std::optional<base::Id> job = {};     ///< that it was about
    units::Money money = {};              ///< received less given back by it, as a drawer would be counted
    units::Money rounded = {};            ///< what cash could not be paid to by it
    std::vector<std::string> papers = {}; ///< numbers of what was given or issued
};

/// A shop at work, made up from a seed: the same seed brings the same things about in the same order, as far as the
/// book answers alike. Names, prices and designs are invented. The book is one of demo::createDemoBook, or one that
/// another ShopYear has worked in. Everything that does not come out as it should throws.
class ShopYear {
  public:
    ShopYear(db::Book& book, HeldClock& clock, std::uint64_t seed);

    /// Customers, for a new book.
    void open(int customers);
    /// One thing that a day brings: a quote, a payment, a paper, a change of mind, a slip taken back.
    Happened act();
    /// So many jobs of `lines` lines each, carried as far as each comes; in few transactions, for a large book.
    void fill(int jobs, int lines);

    /// What act() does, each by itself.
    Happened give(int lines);
    Happened move();
    Happened letGo();
    Happened pay();
    Happened giveBack();
    Happened takeBack();
    Happened revise();
    Happened repeat();
    Happened invoice();
    Happened receipt();
    Happened credit();
    Happened meet();
    Happened rename();
    Happened erase();
    Happened slip();
    void passTime();

    const std::vector<base::Id>& jobs() const { return m_jobs; }

  private:
    struct Kind;
    std::int64_t any(std::int64_t from, std::int64_t to);
    template<class T>
    const T& anyOf(const std::vector<T>& list) {
        return list[static_cast<std::size_t>(any(0, static_cast<std::int64_t>(list.size()) - 1))];
    }
    /// A job of late, most often; none in an empty book.
    std::optional<db::Quote> someJob();
    catalogue::OrderLine line();
    catalogue::Order order(int lines);
    base::Result<db::Quote> issue(const catalogue::Order& order, const db::Quote* revised);
    Happened given(std::string what, const base::Result<db::Quote>& quote);
    Happened paid(std::string what, catalogue::Payment payment, const pricing::Account& account,
                  pricing::Beyond beyond);
    static std::pair<units::Money, units::Money> handedOver(units::Money amount, const pricing::Account& account,
                                                            units::Money coin, pricing::Beyond beyond);
    catalogue::Customer customer();
    void carry(const db::Quote& quote);

    db::Book& m_book;
    HeldClock& m_clock;
    std::mt19937_64 m_random;
    std::vector<catalogue::Design> m_designs;
    std::vector<base::Id> m_customers;
    std::vector<base::Id> m_jobs;
    std::map<base::Id, catalogue::PriceBook> m_prices; ///< while a large book is filled
    bool m_isFilling = false;
    layout::FitMemo m_fits;
    std::unique_ptr<quoting::SheetWords> m_words;
};

/// What a paper says, without whom it is for: that can be taken out.
quoting::SheetContent saidOf(quoting::SheetContent sheet);
/// The sheets of these quotes and bills as they are in the book now, by number.
std::map<std::string, quoting::SheetContent> sheetsOf(db::Book& book, const std::vector<std::string>& numbers);

} // namespace sp::test

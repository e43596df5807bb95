// SPDX-License-Identifier: MIT
// A shop at work in a book, until it is killed: year_child FILE SEED. Says what happened once it is on disk.
#include "tests/support/shop_year.h"

#include <exception>
#include <iostream>

int main(int count, char** words) {
    using namespace sp;
    if (count < 3) return 2;
    try {
        test::HeldClock clock;
        auto book = db::Book::open(words[1], clock.environment());
        if (!book) return 2;
        test::ShopYear year(**book, clock, std::stoull(words[2]));
        for (;;) {
            const auto happened = year.act();
            // The first word says what kind of line it is, as the test reads it.
            std::cout << "done " << happened.what << std::endl;
            if (happened.job && !(happened.money.isZero() && happened.rounded.isZero()))
                std::cout << "money " << happened.job->text() << ' ' << happened.money.micros() << ' '
                          << happened.rounded.micros() << std::endl;
            for (const auto& number : happened.papers) std::cout << "paper " << number << std::endl;
        }
    } catch (const std::exception& trouble) {
        std::cout << "! " << trouble.what() << std::endl;
        return 1;
    }
}

// SPDX-License-Identifier: MIT
#pragma once

#include "core/figures/answers.h"
#include "core/figures/earned.h"
#include "db/book/book.h"

#include <string>
#include <unordered_map>
#include <vector>

// What jobs brought in and took, for the shop's figures.
namespace sp::db {

/// The lines of the jobs that were handed over in some days, by the day and the number.
struct EarnedJobs {
    std::vector<figures::EarnedLine> lines;
    std::vector<std::string> leftOut; ///< numbers of those of which their cost is not known any more
};

/// Reads jobs as they were sealed, and remembers those that it has read: they do not change until something is
/// invoiced, credited or revised. Who a job is for may be called otherwise any time and is read each time. What a job
/// was sold for is its invoices less what was credited, without the tax that is printed on them, else what was agreed,
/// without tax; its lines share that as their prices do. Cost is the sealed one. Own work and hours at the bench are
/// those that pricing the sealed inputs by their rules gives; where that does not reach what was sealed, they are not
/// known; and where the sealed figures do not tell what each line was sold for and took, the job is left out.
class EarnedReader {
  public:
    /// Handed over from `from` to `to`, both counted. Errors: the book's.
    base::Result<EarnedJobs> earned(Book& book, units::Date from, units::Date to);
    /// The lines of what was quoted in these days, of the choice taken or else the one that is looked at. Charges and
    /// gifts are left out. Errors: the book's.
    base::Result<std::vector<figures::OfferedLine>> offered(Book& book, units::Date from, units::Date to);

  private:
    struct Known {
        std::string number;
        std::optional<std::int64_t> choice;
        std::optional<units::Money> total;
        std::int64_t papers = 0;                ///< an invoice or a credit note changes what it was sold for
        std::vector<figures::EarnedLine> lines; ///< without whom they are for
        base::Id customer;                      ///< as on the quote; none for nobody named
        bool isLeftOut = false;
    };

    base::Result<Known> read(Book& book, const HandedOver& handed);

    std::unordered_map<base::Id, Known> m_known;
    layout::FitMemo m_fits;
};

} // namespace sp::db

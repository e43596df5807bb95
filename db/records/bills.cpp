// SPDX-License-Identifier: MIT
#include "db/records/bills.h"

namespace sp::catalogue::fields {

template<>
const Object& objectOf<pricing::BillPart>() {
    using T = pricing::BillPart;
    static const Object object{"BillPart",
                               {
                                   field<&T::name>("name", Term::NameOfTheTax, kLine),
                                   field<&T::rate>("rate_ppm", Term::TaxRate, kShare),
                                   field<&T::net>("net_micros", Term::Amount, kEitherAmount),
                                   field<&T::tax>("tax_micros", Term::Tax, kEitherAmount),
                               }};
    return object;
}

template<>
const Object& objectOf<db::records::BillResult>() {
    using T = db::records::BillResult;
    static const Object object{"BillResult",
                               {
                                   field<&T::day>("day", Term::Day),
                                   field<&T::parts>("parts", Term::Tax, Length{100}),
                                   field<&T::taxIncluded>("tax_is_included", Term::TaxInThePrice),
                                   field<&T::comesTo>("comes_to_micros", Term::Total, kEitherAmount),
                                   field<&T::paid>("paid_micros", Term::Amount, kEitherAmount),
                                   field<&T::invoice>("invoice", Term::Key, Key::Needed),
                                   field<&T::payment>("payment", Term::Key, Key::Needed),
                                   field<&T::paper>("paper", Term::Paper),
                                   field<&T::sheet>("sheet", Term::Note),
                               }};
    return object;
}

} // namespace sp::catalogue::fields

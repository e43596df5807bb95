// SPDX-License-Identifier: MIT
// What the window tells of an order that is like one of before: one made once more, and a revision.
#include "app/counter/counter_page.h"
#include "app/jobs/changes_dialog.h"
#include "app/jobs/difference_dialog.h"
#include "app/main/main_window.h"
#include "app/words/difference_words.h"
#include "app/words/words.h"
#include "db/book/given_prices.h"

namespace sp::program {

/// An order like one of before: what it comes to beside that, and why, on request.
void MainWindow::tellRepeated(const db::Quote& given) {
    auto compared =
        db::pricesOfRepeat(given, m_presenter.order(), m_presenter.prices(), m_session.fits(), m_formatter.style());
    const auto number = QString::fromStdString(given.number);
    QString said;
    if (!compared) {
        said = tr("What quote %1 ordered cannot be priced today. %2").arg(number, words::sentence(compared.error()));
    } else {
        const auto more = compared->difference();
        const auto amount = m_formatter.money(more.isNegative() ? -more : more);
        said = more.isZero()       ? tr("As in quote %1, and it comes to the same today.").arg(number)
               : more.isNegative() ? tr("As in quote %1; today it comes to %2 less.").arg(number, amount)
                                   : tr("As in quote %1; today it comes to %2 more.").arg(number, amount);
    }
    const auto showWhy = [this, compared = std::move(compared), name = given.number] {
        auto* dialog = new jobs::ChangesDialog(name, jobs::ChangesDialog::With::Repeat, compared, m_formatter, this);
        dialog->setAttribute(Qt::WA_DeleteOnClose);
        dialog->open();
    };
    m_messages->tell(desk::Tone::Jewel, said, tr("Why"), showWhy);
    m_messages->staysUntil(&m_presenter, &counter::CounterPresenter::orderShown);
}

/// From another place; what cannot be revised is shown as it is, and said why.
void MainWindow::revise(const base::Id& quote) {
    goTo(PlaceId::Counter);
    if (m_presenter.open(quote)) counter()->revise();
}

void MainWindow::showDifference(bool asksToGive) {
    const auto* given = m_presenter.revised();
    if (!given) return;
    const auto billing = m_session.read([&](db::Book& book) { return book.billing(given->id); });
    const auto number = QString::fromStdString(given->number);
    jobs::DifferenceShown shown{number, {}, {}, m_presenter.differenceToday(), asksToGive};
    if (billing && !billing->openInvoices.empty()) shown.note = words::invoicedNote(number);
    auto* dialog = new jobs::DifferenceDialog(shown, m_presenter.difference(m_formatter.style()), m_formatter, this);
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    connect(dialog, &QDialog::accepted, this, [this] { counter()->giveNow(); });
    dialog->open();
}

} // namespace sp::program

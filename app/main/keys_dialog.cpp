// SPDX-License-Identifier: MIT
#include "app/main/keys_dialog.h"

#include "app/desk/fonts.h"

#include <QDialogButtonBox>
#include <QTextBrowser>
#include <QVBoxLayout>

namespace sp::program {

namespace {

QString table(const std::vector<KeyWords>& rows) {
    QString html = QStringLiteral("<table cellpadding=\"3\">");
    for (const auto& row : rows)
        html += QStringLiteral("<tr><td><b>%1</b></td><td>%2</td></tr>")
                    .arg(row.key.toHtmlEscaped(), row.words.toHtmlEscaped());
    return html + QStringLiteral("</table>");
}

} // namespace

KeysDialog::KeysDialog(const std::vector<KeyWords>& keys, const std::vector<KeyWords>& formulas, QWidget* parent)
    : QDialog(parent) {
    setObjectName(QStringLiteral("keys"));
    setWindowTitle(tr("Keys and help"));
    const std::vector<KeyWords> places = {
        {tr("Counter"), tr("One order while the customer waits: who, what, how many; the price moves as you type.")},
        {tr("Designs"), tr("What you set: its size, its stones by colour, and whether its templates are on the wall.")},
        {tr("Supplies"), tr("What you buy, in which packs and at what price, and what lies on the shelf.")},
        {tr("Buying"), tr("The cheapest way to buy what a design or the order takes: kits, bulk packs, or both.")},
        {tr("Jobs"), tr("Every order by its stage, what was paid for it, and what has changed since it was given.")},
        {tr("Bench"),
         tr("What is to be made, in its order: when each job is ready, which is late, and its bench sheet.")},
        {tr("Customers"),
         tr("Who orders: how one reaches them, their certificate, what they ordered and what they owe.")},
        {tr("Figures"),
         tr("What a month earned: income, cost and what an hour at the bench brought; where it came from.")},
        {tr("Shop"), tr("What you decide once: letterhead, rates, mark-up, tax, the bench.")},
        {tr("Set up"), tr("The first steps of a new shop, and what a price still lacks; Ctrl+Enter goes on to the next "
                          "step.")}};
    const std::vector<KeyWords> everywhere = {
        {tr("Enter"), tr("takes what is typed or marked, and goes on to the next field")},
        {tr("Tab"), tr("goes on, and takes what is marked in a list, or a new customer’s name")},
        {tr("Down"), tr("opens the list of a field, and goes on in it")},
        {tr("Esc"), tr("closes a list or a window")},
        {tr("Alt and a letter"), tr("goes to the field or button whose word has that letter underlined")},
        {tr("Ctrl and a number"), tr("goes to a place: 1 is the Counter")}};
    auto* text = new QTextBrowser(this);
    text->setObjectName(QStringLiteral("keysText"));
    text->setAccessibleName(windowTitle());
    text->setFont(desk::textFont(desk::TextSize::Body));
    text->setHtml(QStringLiteral("<h3>%1</h3>%2<h3>%3</h3>%4<h3>%5</h3>%6<h3>%7</h3><p>%8</p>%9")
                      .arg(tr("The places"), table(places), tr("Keys of the Book menu"), table(keys),
                           tr("Keys in every place"), table(everywhere), tr("How a price is made"),
                           formulas.empty()
                               ? tr("How a figure of the cost sheet is made stands at the figure: turn the "
                                    "slip over and open its row.")
                               : tr("For 24 pieces, with the prices of this book, each figure of the job "
                                    "is made so. The same stands at the figure: turn the slip over and "
                                    "open its row."),
                           table(formulas)));
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Close, this);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    auto* column = new QVBoxLayout(this);
    column->addWidget(text);
    column->addWidget(buttons);
    resize(desk::withinScreen(*this, {desk::scaled(680), desk::scaled(560)}));
}

} // namespace sp::program

#include "moc_keys_dialog.cpp"

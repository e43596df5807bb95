// SPDX-License-Identifier: MIT
#include "app/counter/order_panel.h"

#include "app/counter/choice_bar.h"
#include "app/counter/design_choices.h"
#include "app/counter/order_list.h"
#include "app/counter/typed_entries.h"
#include "app/desk/bench_style.h"
#include "app/desk/card.h"
#include "app/desk/choices.h"
#include "app/desk/field_binding.h"
#include "app/desk/field_box.h"
#include "app/desk/word_field.h"
#include "app/words/promise_words.h"
#include "app/words/words.h"
#include "core/catalogue/fields/tables.h"

#include <QHBoxLayout>
#include <QItemSelectionModel>
#include <QVBoxLayout>

namespace sp::counter {

using Owner = CounterPresenter::Owner;

namespace {

using desk::Role;
using desk::TextSize;

QVariant variantOf(const base::Id& id) { return QVariant::fromValue(id); }

/// "5 %" or "2.50": a share or an amount. Empty: none.
base::Result<catalogue::Discount> parseDiscount(const QString& text, const desk::Formatter& formatter) {
    catalogue::Discount discount;
    const auto typed = text.trimmed();
    if (typed.isEmpty()) return discount;
    if (typed.contains(QLatin1Char('%'))) {
        const auto share = units::parseRate(typed.toStdString(), formatter.style());
        if (!share) return base::fail(share.error());
        if (share->isNegative() || *share > units::Rate::fromPercent(100))
            return words::fail(base::Code::OutOfRange, "discount",
                               QT_TRANSLATE_NOOP("App", "A discount is from 0 to 100 %; type another."));
        discount.share = *share;
    } else {
        const auto amount = units::parseMoney(typed.toStdString(), formatter.currency(), formatter.style());
        if (!amount) return base::fail(amount.error());
        if (amount->isNegative())
            return words::fail(base::Code::OutOfRange, "discount",
                               QT_TRANSLATE_NOOP("App", "A discount is 0 or more; type it without a minus."));
        discount.amount = *amount;
    }
    return discount;
}

QString written(const catalogue::Discount& discount, const desk::Formatter& formatter) {
    if (discount.share) return formatter.rateNumber(*discount.share) + QStringLiteral(" %");
    return discount.amount ? formatter.money(*discount.amount) : QString();
}

} // namespace

OrderPanel::OrderPanel(CounterPresenter& presenter, const desk::Formatter& formatter, artwork::DesignPictures& pictures,
                       QWidget* parent)
    : QWidget(parent)
    , m_presenter(presenter)
    , m_promise(presenter)
    , m_pictures(pictures)
    , m_formatter(formatter) {
    build();
    connectAll();
    loadChoices();
    loadOrder();
}

QWidget* OrderPanel::buildTop() {
    auto* top = new QWidget(this);
    auto* rows = new QVBoxLayout(top);
    rows->setContentsMargins(0, 0, 0, 0);
    rows->setSpacing(8);
    m_customer = new desk::ChoiceField(m_formatter, this);
    m_customer->setObjectName(QStringLiteral("customer"));
    m_customer->setEmptyAllowed(true);
    m_customer->setNewWording(tr("Add “%1” as a customer"));
    m_customer->setTakesNew(true);
    m_customer->setUnknownWording(tr("“%1” is nobody yet; choose somebody, or press Enter to add the name."));
    m_reach = new desk::WordField(m_formatter, {}, this);
    m_reach->setObjectName(QStringLiteral("reach"));
    m_reach->setEmptyAllowed(true);
    m_isNew = new desk::TextLabel({}, TextSize::Small, Role::Muted, desk::Weight::Plain, this);
    m_isNew->setObjectName(QStringLiteral("newCustomer"));
    m_isNew->setTextFormat(Qt::RichText);
    m_isNew->setWordWrap(true);
    m_wantedBy = new desk::DateField(m_formatter, m_presenter.order().quotedOn, this);
    m_wantedBy->setObjectName(QStringLiteral("wantedBy"));
    m_wantedBy->setEmptyAllowed(true);
    m_discount = new desk::WordField(m_formatter, {}, this);
    m_discount->setObjectName(QStringLiteral("discount"));
    m_discount->setEmptyAllowed(true);
    m_exempt = new QCheckBox(tr("Ta&x exempt"), this);
    m_exempt->setObjectName(QStringLiteral("exempt"));
    using catalogue::Discount;
    using catalogue::Order;
    using catalogue::fields::fieldOf;
    desk::standsFor(*m_customer, fieldOf<&Order::customer>());
    desk::standsFor(*m_reach, fieldOf<&catalogue::Customer::telephone>());
    desk::standsFor(*m_reach, fieldOf<&catalogue::Customer::mail>());
    desk::standsFor(*m_wantedBy, fieldOf<&Order::wantedBy>());
    desk::standsFor(*m_discount, fieldOf<&Discount::share>());
    desk::standsFor(*m_discount, fieldOf<&Discount::amount>());
    desk::standsFor(*m_exempt, fieldOf<&Order::asksExemption>());
    m_atNoCharge = new QCheckBox(tr("All at no charge"), this);
    m_atNoCharge->setObjectName(QStringLiteral("orderAtNoCharge"));
    m_atNoCharge->setToolTip(tr("Done again, a sample, a gift: no price, its cost counts in the figures"));
    desk::standsFor(*m_atNoCharge, fieldOf<&Order::atNoCharge>());
    auto* who = new QHBoxLayout;
    who->setSpacing(8);
    who->addWidget(new desk::FieldBox(tr("Custo&mer"), m_customer, this), 3, Qt::AlignTop);
    who->addWidget(new desk::FieldBox(tr("Phone or mail"), m_reach, this), 2, Qt::AlignTop);
    auto* customer = new QVBoxLayout;
    customer->setSpacing(2);
    customer->addLayout(who);
    customer->addWidget(m_isNew);
    rows->addLayout(customer);
    m_wantedBox = new desk::FieldBox(tr("Wanted &by"), m_wantedBy, this);
    auto* terms = new QHBoxLayout;
    terms->setSpacing(8);
    terms->addWidget(m_wantedBox, 3, Qt::AlignTop);
    terms->addWidget(new desk::FieldBox(tr("Dis&count"), m_discount, this), 2, Qt::AlignTop);
    m_promised = new desk::TextLabel({}, TextSize::Small, Role::Muted, desk::Weight::Plain, this);
    m_promised->setObjectName(QStringLiteral("promised"));
    m_promised->setTextFormat(Qt::RichText);
    m_promised->setWordWrap(true);
    auto* wanted = new QVBoxLayout;
    wanted->setSpacing(2);
    wanted->addLayout(terms);
    wanted->addWidget(m_promised);
    rows->addLayout(wanted);
    auto* ticks = new QHBoxLayout;
    ticks->addWidget(m_exempt);
    ticks->addStretch(1);
    ticks->addWidget(m_atNoCharge);
    rows->addLayout(ticks);
    return top;
}

void OrderPanel::build() {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(12);
    column->addWidget(desk::pageTitle(tr("Order"), this));
    column->addWidget(buildTop());
    column->addWidget(new ChoiceBar(m_presenter, m_formatter, this));
    m_design = new desk::ChoiceField(m_formatter, this);
    m_design->setObjectName(QStringLiteral("design"));
    desk::standsFor(*m_design, catalogue::fields::fieldOf<&catalogue::Placement::design>());
    m_design->setEmptyAllowed(true);
    m_design->setEnterMovesOn(false); // a chosen design leads to its pieces
    m_design->setPlaceholderText(tr("Type part of a design’s name"));
    m_design->setNewWording(tr("“%1” as a one-off"));
    auto* adding = new QHBoxLayout;
    adding->setSpacing(8);
    adding->addWidget(new desk::FieldBox(tr("&Add to the order"), m_design, this), 1);
    m_addCharge = new QPushButton(tr("Charge"), this);
    m_addCharge->setObjectName(QStringLiteral("addCharge"));
    m_addCharge->setAccessibleName(tr("Add a charge without stones"));
    m_addCharge->setToolTip(tr("Postage, art, a repair, a plain tee: a line without stones"));
    desk::makeQuiet(*m_addCharge);
    adding->addWidget(new desk::BesideFields(m_addCharge, this), 0, Qt::AlignTop);
    column->addLayout(adding);
    m_list = new OrderList(linePictures(m_presenter, m_pictures), this);
    m_list->setObjectName(QStringLiteral("lines"));
    m_model = new OrderListModel(m_presenter, m_formatter, this);
    m_list->setModel(m_model);
    m_list->setMinimumHeight(desk::scaled(150));
    column->addWidget(m_list, 1);
    m_saved = new desk::TextLabel({}, TextSize::Small, Role::Good, desk::Weight::Plain, this);
    m_saved->setObjectName(QStringLiteral("saved"));
    m_saved->setWordWrap(true);
    column->addWidget(m_saved);
}

void OrderPanel::connectAll() {
    connect(&m_pictures, &artwork::DesignPictures::changed, this, [this] { m_list->viewport()->update(); });
    connect(m_customer, &desk::ChoiceField::chosen, this,
            [this](const QVariant& id) { m_presenter.setCustomer(id.isValid() ? id.value<base::Id>() : base::Id{}); });
    connect(m_customer, &desk::TypedField::edited, this,
            [this] { m_presenter.setTypedCustomer(m_customer->text().trimmed()); });
    connect(m_customer, &desk::ChoiceField::typedNew, this,
            [this](const QString& name) { m_customer->setOuterProblem(m_presenter.addCustomer(name)); });
    desk::saveWhenGood(*m_reach, [this] { return m_presenter.setReach(m_reach->text()); });
    connect(m_isNew, &QLabel::linkActivated, this, [this] {
        if (const auto* like = m_presenter.likeOfNew()) m_presenter.mergeCustomer(base::Id(like->id));
    });
    connect(m_promised, &QLabel::linkActivated, this, &OrderPanel::hoursAsked);
    connect(&m_promise, &BenchPromise::told, this, &OrderPanel::showPromise);
    connect(m_wantedBy, &desk::TypedField::edited, this, [this] {
        const auto day = m_wantedBy->optionalValue();
        noteEntry(m_presenter, Owner::Order, *m_wantedBy);
        if (day) m_presenter.setWantedBy(*day);
    });
    connect(m_discount, &desk::TypedField::edited, this, &OrderPanel::discountTyped);
    for (desk::TypedField* field :
         {static_cast<desk::TypedField*>(m_wantedBy), static_cast<desk::TypedField*>(m_discount)})
        connect(field, &desk::TypedField::committed, &m_presenter, &CounterPresenter::saveDraft);
    connect(m_atNoCharge, &QCheckBox::clicked, &m_presenter, &CounterPresenter::setAtNoCharge);
    connect(m_exempt, &QCheckBox::clicked, &m_presenter, &CounterPresenter::setAsksExemption);
    connect(m_design, &desk::ChoiceField::chosen, this, [this](const QVariant& id) {
        if (!id.isValid()) return;
        const auto design = id.value<base::Id>(); // the field forgets what `id` refers to
        m_design->setCurrent({});
        m_presenter.addDesign(design);
        Q_EMIT lineEntered();
    });
    connect(m_design, &desk::ChoiceField::typedNew, this, [this](QString title) {
        m_design->setCurrent({});
        m_presenter.addOneOff(title);
        Q_EMIT lineEntered();
    });
    connect(m_addCharge, &QPushButton::clicked, this, [this] {
        m_presenter.addCharge(tr("Charge", "the name of a line until it has another"));
        Q_EMIT lineEntered();
    });
    connect(m_list->selectionModel(), &QItemSelectionModel::currentChanged, this, [this](const QModelIndex& index) {
        if (index.isValid() && index.row() != m_presenter.current()) m_presenter.select(index.row());
    });
    connect(m_list, &OrderList::removeAsked, &m_presenter, &CounterPresenter::removeLine);
    connect(m_list, &OrderList::entered, this, &OrderPanel::lineEntered);
    connect(&m_presenter, &CounterPresenter::changed, this, &OrderPanel::refresh);
    connect(&m_presenter, &CounterPresenter::orderShown, this, &OrderPanel::loadOrder);
    connect(&m_presenter.session(), &session::BookSession::changed, this, [this] {
        loadChoices();
        if (!m_reach->isDirty()) m_reach->setRaw(m_presenter.reach());
        showNew();
    });
}

base::Result<catalogue::Discount> OrderPanel::readDiscount() {
    auto discount = parseDiscount(m_discount->text(), m_formatter);
    m_discount->setOuterProblem(discount ? QString() : words::sentence(discount.error()));
    return discount;
}

void OrderPanel::discountTyped() {
    const auto discount = readDiscount();
    noteEntry(m_presenter, Owner::Choice, *m_discount);
    if (discount) m_presenter.setDiscount(*discount);
}

void OrderPanel::loadChoices() {
    auto& session = m_presenter.session();
    std::vector<desk::Choice> customers;
    for (const auto& customer : session.customers()) customers.push_back(desk::choiceOf(customer));
    m_customer->setChoices(std::move(customers));
    m_design->setChoices(designChoices(session, m_formatter, m_pictures));
}

void OrderPanel::loadOrder() {
    const auto& order = m_presenter.order();
    const auto* customer = m_presenter.customer();
    m_customer->setCurrent(customer ? variantOf(customer->id) : QVariant());
    if (const auto& typed = m_presenter.typedCustomer(); !typed.isEmpty()) {
        m_customer->setTyped(typed);
        m_customer->showError();
    }
    m_reach->setRaw(m_presenter.reach());
    m_wantedBy->setOptionalValue(order.wantedBy);
    m_wantedBy->setToday(order.quotedOn);
    m_discount->setOuterProblem({});
    m_discount->setRaw(written(order.discount, m_formatter));
    restoreUnread(*this, m_presenter, Owner::Order);
    restoreUnread(*this, m_presenter, Owner::Choice);
    readDiscount();
    m_exempt->setChecked(order.asksExemption);
    m_atNoCharge->setChecked(order.atNoCharge);
    const bool open = m_presenter.canChange();
    for (QWidget* input :
         {static_cast<QWidget*>(m_customer), static_cast<QWidget*>(m_wantedBy), static_cast<QWidget*>(m_discount),
          static_cast<QWidget*>(m_exempt), static_cast<QWidget*>(m_atNoCharge), static_cast<QWidget*>(m_design),
          static_cast<QWidget*>(m_addCharge)})
        input->setEnabled(open);
    m_reach->setEnabled(open && customer);
    showNew();
    showPromise();
    refresh();
}

/// That a customer was made of what was typed, and who it may have been meant for.
void OrderPanel::showNew() {
    const auto* like = m_presenter.likeOfNew();
    m_isNew->setVisible(m_presenter.isNewCustomer());
    m_isNew->setTextInteractionFlags(like ? Qt::LinksAccessibleByMouse | Qt::LinksAccessibleByKeyboard
                                          : Qt::NoTextInteraction);
    m_isNew->setText(like ? tr("New, kept from now on. Or <a href=\"0\">%1</a>?")
                                .arg(QString::fromStdString(like->name).toHtmlEscaped())
                          : tr("New, kept from now on."));
}

void OrderPanel::finishCustomer() { m_customer->finish(); }

QString OrderPanel::whyNoCustomer() const {
    return tr("%1: %2").arg(m_customer->accessibleName(), m_customer->problem());
}

/// What the bench can promise, right under the field; none of it names a customer, who may look at the screen.
void OrderPanel::showPromise() {
    QString text;
    QStringList details;
    auto role = Role::Muted;
    if (const auto& promise = m_promise.promise()) {
        const auto& wanted = m_presenter.order().wantedBy;
        const auto written = [this](units::Date day) { return m_formatter.dateWithDay(day); };
        text = words::promiseSentence(m_promise.queue(), *promise, wanted, written).toHtmlEscaped();
        if (wanted && !promise->promise.isHeld) role = Role::Warn;
        if (wanted && promise->promise.isHeld && !promise->isShort) role = Role::Good;
        details << tr("Reckoned from tomorrow on.");
        if (const auto& day = promise->suppliesBy)
            details << tr("What is missing for it can be here by %1, bought today.").arg(written(*day));
        if (const auto& priced = m_presenter.priced(); priced && !priced->deposit.isZero())
            details << tr("Reckoned as if its deposit came today.");
    } else if (m_promise.isWithoutHours()) {
        text = tr("No day is promised until Shop knows the <a href=\"0\">bench hours</a>.");
    } else if (const auto& why = m_promise.whyNot()) {
        text = words::sentence(*why).toHtmlEscaped();
        role = Role::Warn;
    }
    m_promised->setRole(role);
    m_promised->setText(text);
    m_promised->setToolTip(details.join(QLatin1Char('\n')));
    m_promised->setTextInteractionFlags(m_promise.isWithoutHours()
                                            ? Qt::LinksAccessibleByMouse | Qt::LinksAccessibleByKeyboard
                                            : Qt::NoTextInteraction);
    m_promised->setVisible(!text.isEmpty());
}

void OrderPanel::refresh() {
    m_model->refresh();
    const int current = m_presenter.current();
    if (current >= 0 && m_list->currentIndex().row() != current) m_list->setCurrentIndex(m_model->index(current));
    m_exempt->setChecked(m_presenter.order().asksExemption);
    m_atNoCharge->setChecked(m_presenter.order().atNoCharge);
    // The entry can be read but is not valid for this order.
    m_wantedBy->setOuterProblem(m_presenter.whyNot("wanted by"));
    readDiscount();
    if (const auto why = m_presenter.whyNot("discount"); !why.isEmpty()) m_discount->setOuterProblem(why);
    const auto& priced = m_presenter.priced();
    const bool rush = priced && !priced->rush.isZero();
    m_wantedBox->setRemark(rush ? tr("rush, %1").arg(m_formatter.rate(priced->rushRate)) : QString());
}

void OrderPanel::focusDesign() { m_design->setFocus(Qt::OtherFocusReason); }

void OrderPanel::setSaveNote(const QString& note, bool trouble) {
    m_saved->setRole(trouble ? Role::Warn : Role::Good);
    m_saved->setText(note);
}

} // namespace sp::counter

#include "moc_order_panel.cpp"

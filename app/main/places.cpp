// SPDX-License-Identifier: MIT
#include "app/main/places.h"

#include "app/backups/backup_keeper.h"
#include "app/bench/bench_page.h"
#include "app/buying/buying_page.h"
#include "app/counter/counter_page.h"
#include "app/customers/customers_page.h"
#include "app/designs/designs_page.h"
#include "app/figures/figures_page.h"
#include "app/first_hour/first_hour_page.h"
#include "app/jobs/jobs_page.h"
#include "app/main/sheet_writer.h"
#include "app/shop/shop_page.h"
#include "app/supplies/supplies_page.h"
#include "core/catalogue/fields/tables.h"

#include <QCoreApplication>

namespace sp::program {

namespace {

using counter::CounterPage;
using designs::DesignsPage;
using jobs::JobsPage;

template<class Page>
std::function<void(QWidget&)> to(void (Page::*focus)()) {
    return [focus](QWidget& page) { (static_cast<Page&>(page).*focus)(); };
}

/// A place that needs nothing from the window.
template<class Page>
QWidget* makePage(const PlaceContext& context, QWidget* parent) {
    return new Page(context.session, context.formatter, parent);
}

QWidget* makeCounter(const PlaceContext& context, QWidget* parent) {
    auto* page = new CounterPage(context.counter, context.formatter, parent);
    QObject::connect(page, &CounterPage::buyingAsked, page, context.buyForOrder);
    QObject::connect(page, &CounterPage::mendAsked, page, context.mend);
    QObject::connect(page, &CounterPage::differenceAsked, page, context.showDifference);
    return page;
}

QWidget* makeDesigns(const PlaceContext& context, QWidget* parent) {
    auto* page = new DesignsPage(context.session, context.formatter, parent);
    QObject::connect(page, &DesignsPage::cutFileAsked, page, context.askForCutFile);
    QObject::connect(page, &DesignsPage::estimateAsked, page, context.estimate);
    return page;
}

QWidget* makeBuying(const PlaceContext& context, QWidget* parent) {
    auto* counter = &context.counter;
    auto* page = new buying::BuyingPage(
        context.session, [counter] { return counter->order().lines; }, context.formatter, context.prompter, parent);
    QObject::connect(page, &buying::BuyingPage::designsAsked, page, [goTo = context.goTo] { goTo(PlaceId::Designs); });
    QObject::connect(page, &buying::BuyingPage::priceAsked, page, [mend = context.mend](const base::Id& material) {
        mend({{}, &catalogue::fields::fieldOf<&catalogue::PriceBreak::each>(), material});
    });
    return page;
}

QWidget* makeJobs(const PlaceContext& context, QWidget* parent) {
    auto* page = new JobsPage(context.session, context.today, context.formatter, parent);
    QObject::connect(page, &JobsPage::openAsked, page, context.openQuote);
    QObject::connect(page, &JobsPage::repeatAsked, page, context.repeatQuote);
    QObject::connect(page, &JobsPage::reviseAsked, page, context.reviseQuote);
    QObject::connect(page, &JobsPage::counterAsked, page, [goTo = context.goTo] { goTo(PlaceId::Counter); });
    QObject::connect(page, &JobsPage::certificateAsked, page, [goTo = context.goTo] { goTo(PlaceId::Customers); });
    return page;
}

QWidget* makeBench(const PlaceContext& context, QWidget* parent) {
    using bench::BenchPage;
    auto* page = new BenchPage(context.session, context.formatter, parent);
    QObject::connect(page, &BenchPage::openAsked, page, context.openQuote);
    QObject::connect(page, &BenchPage::jobsAsked, page, [goTo = context.goTo] { goTo(PlaceId::Jobs); });
    QObject::connect(page, &BenchPage::hoursAsked, page, [mend = context.mend] {
        mend({{}, &catalogue::fields::fieldOf<&catalogue::BenchWeek::monday>(), {}});
    });
    return page;
}

QWidget* makeCustomers(const PlaceContext& context, QWidget* parent) {
    auto* page = new customers::CustomersPage(context.session, context.formatter, context.prompter,
                                              &backups::backupPlaces, {writeSheet, writeBill}, parent);
    QObject::connect(page, &customers::CustomersPage::openAsked, page, context.openQuote);
    return page;
}

QWidget* makeFigures(const PlaceContext& context, QWidget* parent) {
    using figures::FiguresPage;
    auto* page = new FiguresPage(context.session, context.formatter, parent);
    QObject::connect(page, &FiguresPage::openAsked, page, context.openQuote);
    QObject::connect(page, &FiguresPage::jobsAsked, page, [goTo = context.goTo] { goTo(PlaceId::Jobs); });
    return page;
}

QWidget* makeFirstSteps(const PlaceContext& context, QWidget* parent) {
    using first_hour::FirstHourPage;
    auto* page = new FirstHourPage(context.firstHour, context.formatter, parent);
    QObject::connect(page, &FirstHourPage::mendAsked, page, context.mend);
    QObject::connect(page, &FirstHourPage::cutFileAsked, page, context.askForCutFile);
    QObject::connect(page, &FirstHourPage::priceListAsked, page, context.readPriceList);
    QObject::connect(page, &FirstHourPage::orderAsked, page, context.putOnOrder);
    QObject::connect(page, &FirstHourPage::putAway, page, context.endFirstSteps);
    return page;
}

} // namespace

std::vector<Place> placesOf(const PlaceContext& context) {
    using desk::Icon;
    const auto with = [&context](QWidget* (*make)(const PlaceContext&, QWidget*)) {
        return [context, make](QWidget* parent) { return make(context, parent); };
    };
    return {
        {PlaceId::Counter, Icon::Counter, QCoreApplication::translate("places", "Counter"),
         QStringLiteral("placeCounter"), false, with(makeCounter), to(&CounterPage::focusStart)},
        {PlaceId::Designs, Icon::Designs, QCoreApplication::translate("places", "Designs"),
         QStringLiteral("placeDesigns"), true, with(makeDesigns), to(&DesignsPage::focusFind)},
        {PlaceId::Supplies, Icon::Supplies, QCoreApplication::translate("places", "Supplies"),
         QStringLiteral("placeSupplies"), true, with(makePage<supplies::SuppliesPage>),
         to(&supplies::SuppliesPage::focusFind)},
        {PlaceId::Buying, Icon::Buying, QCoreApplication::translate("places", "Buying"), QStringLiteral("placeBuying"),
         false, with(makeBuying), to(&buying::BuyingPage::focusStart)},
        {PlaceId::Jobs, Icon::Jobs, QCoreApplication::translate("places", "Jobs"), QStringLiteral("placeJobs"), false,
         with(makeJobs), to(&JobsPage::focusFind)},
        {PlaceId::Bench, Icon::Bench, QCoreApplication::translate("places", "Bench"), QStringLiteral("placeBench"),
         false, with(makeBench), to(&bench::BenchPage::focusStart)},
        {PlaceId::Customers, Icon::Customers, QCoreApplication::translate("places", "Customers"),
         QStringLiteral("placeCustomers"), true, with(makeCustomers), to(&customers::CustomersPage::focusFind)},
        {PlaceId::Figures, Icon::Figures, QCoreApplication::translate("places", "Figures"),
         QStringLiteral("placeFigures"), false, with(makeFigures), to(&figures::FiguresPage::focusStart)},
        {PlaceId::Shop, Icon::Shop, QCoreApplication::translate("places", "Shop"), QStringLiteral("placeShop"), true,
         with(makePage<shop::ShopPage>), to(&shop::ShopPage::focusFind)},
        {PlaceId::FirstSteps, Icon::FirstSteps, QCoreApplication::translate("places", "Set up"),
         QStringLiteral("placeFirstSteps"), true, with(makeFirstSteps), to(&first_hour::FirstHourPage::focusStart)},
    };
}

} // namespace sp::program

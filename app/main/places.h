// SPDX-License-Identifier: MIT
#pragma once

#include "app/counter/counter_presenter.h"
#include "app/desk/icons.h"
#include "app/desk/prompter.h"
#include "app/first_hour/first_hour_presenter.h"
#include "app/format/formatter.h"
#include "app/jobs/today_watch.h"
#include "app/session/book_session.h"
#include "core/pricing/left_out.h"

#include <QWidget>

#include <functional>
#include <vector>

namespace sp::program {

/// In the order of the rail. The last is there while a new shop is set up.
enum class PlaceId { Counter, Designs, Supplies, Buying, Jobs, Bench, Customers, Figures, Shop, FirstSteps };

/// What places use, and what they ask the window to do. All of it outlives them.
struct PlaceContext {
    session::BookSession& session;
    counter::CounterPresenter& counter;
    first_hour::FirstHourPresenter& firstHour;
    jobs::TodayWatch& today;
    const desk::Formatter& formatter;
    desk::Prompter& prompter;
    std::function<void(PlaceId)> goTo;
    std::function<void()> buyForOrder;
    std::function<void(const pricing::LeftOut&)> mend;
    std::function<void()> askForCutFile;
    std::function<void()> estimate;
    std::function<void(const base::Id&)> openQuote;
    std::function<void(const base::Id&)> repeatQuote;
    std::function<void(const base::Id&)> reviseQuote;
    std::function<void(bool)> showDifference;        ///< of the revision at the Counter; whether to give it there
    std::function<void(const base::Id&)> putOnOrder; ///< a design; with none the Counter as it is
    std::function<void()> readPriceList;
    std::function<void()> endFirstSteps;
};

struct Place {
    PlaceId id;
    desk::Icon icon;
    QString word;       ///< its name, on the rail and in sentences
    QString objectName; ///< of its button
    bool canHoldUnread; ///< its entries affect prices at the Counter, so an unreadable one is warned of
    std::function<QWidget*(QWidget* parent)> make;
    std::function<void(QWidget& page)> focusFind; ///< Ctrl+F: moves the focus to its search field
    QWidget* page = nullptr;                      ///< created on the first visit
};

/// A row for each place.
std::vector<Place> placesOf(const PlaceContext& context);

} // namespace sp::program

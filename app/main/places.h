// SPDX-License-Identifier: MIT
#pragma once

#include "app/counter/counter_presenter.h"
#include "app/desk/icons.h"
#include "app/desk/prompter.h"
#include "app/format/formatter.h"
#include "app/session/book_session.h"

#include <QWidget>

#include <functional>
#include <vector>

namespace sp::program {

/// In the order of the rail.
enum class PlaceId { Counter, Designs, Supplies, Buying, Jobs, Shop };

/// What the places borrow, and what they ask of the window. All of it outlives them.
struct PlaceContext {
    session::BookSession& session;
    counter::CounterPresenter& counter;
    const desk::Formatter& formatter;
    desk::Prompter& prompter;
    std::function<void(PlaceId)> goTo;
    std::function<void()> buyForOrder;
    std::function<void()> askForCutFile;
    std::function<void()> estimate;
    std::function<void(const base::Id&)> openQuote;
};

struct Place {
    PlaceId id;
    desk::Icon icon;
    QString word;       ///< on the rail, and where the place is spoken of
    QString objectName; ///< of its button
    bool canHoldUnread; ///< prices at the Counter go by what is entered there, also while it cannot be read
    std::function<QWidget*(QWidget* parent)> make;
    std::function<void(QWidget& page)> focusFind; ///< Ctrl+F: to what one looks for something with
    QWidget* page = nullptr;                      ///< made when the place is first visited
};

/// A row for each place.
std::vector<Place> placesOf(const PlaceContext& context);

} // namespace sp::program

// SPDX-License-Identifier: MIT
#pragma once

#include "app/artwork/design_pictures.h"
#include "app/counter/counter_presenter.h"

#include <functional>

namespace sp::counter {

/// What a line of the order looks like, painted into that room (device-independent pixels) on a ground of that colour:
/// its first design that has a drawing of just the stones that the line takes. `line` is its number, from 0. Null where
/// there is nothing to show.
using LinePicture = std::function<QPixmap(int line, QSize room, const QColor& ground, double devicePixelRatio)>;

/// Of the order that the presenter shows. Both must outlive what is returned.
LinePicture linePictures(const CounterPresenter& presenter, artwork::DesignPictures& pictures);

} // namespace sp::counter

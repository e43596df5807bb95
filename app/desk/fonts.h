// SPDX-License-Identifier: MIT
#pragma once

#include <QFont>
#include <QSize>
#include <QStringList>

class QWidget;

namespace sp::desk {

/// The sizes of text there are, in pixels at a zoom of 100 %.
enum class TextSize { Small = 12, Body = 14, Title = 22, Total = 40 };
enum class Weight { Plain, Strong };

/// Text zoom in percent, 80 to 200; anything else is brought to the nearer end. Sets the application's font, so every
/// widget gets its font change and lays itself out again.
void setZoom(int percent);
int zoom();
/// The next step up or down of 80, 90, 100, 110, 125, 150, 175, 200; the ends stay.
int zoomLarger(int percent);
int zoomSmaller(int percent);

/// The family that comes with the program: Inter cut down to what we write, with digits of one width. Empty where it
/// could not be made when the program was built (resources/fonts). Needs a QGuiApplication.
const QString& ownFamily();
/// The families for lettering that must not depend on the desktop, best first: our own, Inter, Noto Sans, DejaVu Sans.
QStringList textFamilies();

/// The font of a size at the zoom in force: our own family, else Inter, else the system's.
QFont textFont(TextSize size, Weight weight = Weight::Plain);

/// Pixels that grow with the text: `px` at 100 %.
int scaled(int px);

/// A size for a window that leaves room for its frame on the screen it is on.
QSize withinScreen(const QWidget& window, QSize wanted);

} // namespace sp::desk

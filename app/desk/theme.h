// SPDX-License-Identifier: MIT
#pragma once

#include "app/desk/palette.h"

#include <QApplication>
#include <QObject>

#include <optional>

namespace sp::desk {

/// What the system shows, or one of our own. Kept as a number at the seat.
enum class Scheme { System, Light, Dark, LightContrast, DarkContrast };

/// Dresses the application: BenchStyle, palette and font. Made once, right after the QApplication, which must outlive
/// it. Follows the system's light or dark while the scheme is System; a high-contrast system wins over every scheme.
class Theme : public QObject {
    Q_OBJECT

  public:
    /// Finding the fonts of the machine takes time: Later leaves them to whoever makes the first words (setZoom).
    enum class Fonts { Now, Later };

    explicit Theme(QApplication& app, Scheme scheme = Scheme::System, Fonts fonts = Fonts::Now);

    Scheme scheme() const { return m_scheme; }
    void setScheme(Scheme scheme);

    bool eventFilter(QObject* watched, QEvent* event) override;

  Q_SIGNALS:
    /// After palette and look changed; widgets get their PaletteChange besides.
    void changed();

  private:
    void follow();

    QApplication& m_app;
    Scheme m_scheme;
    bool m_dressing = false;
};

/// The look of a scheme; none where the system decides.
std::optional<Look> lookOf(Scheme scheme);
/// What a system palette asks for: dark when its window is darker than its text, Contrast when window and base are
/// pure black or white and text the opposite.
Look lookOf(const QPalette& system);

} // namespace sp::desk

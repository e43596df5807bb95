// SPDX-License-Identifier: MIT
#include "app/desk/theme.h"

#include "app/desk/bench_style.h"
#include "app/desk/fonts.h"
#include "app/desk/wheel_guard.h"

#include <QEvent>
#include <QMetaObject>

namespace sp::desk {

Look lookOf(const QPalette& system) {
    const QColor window = system.color(QPalette::Window);
    const QColor base = system.color(QPalette::Base);
    const QColor text = system.color(QPalette::WindowText);
    const bool extreme = window.lightness() == 0 || window.lightness() == 255;
    if (extreme && window == base && contrast(window, text) > 20) return Look::Contrast;
    return window.lightness() < text.lightness() ? Look::Dark : Look::Light;
}

std::optional<Look> lookOf(Scheme scheme) {
    switch (scheme) {
    case Scheme::System: return std::nullopt;
    case Scheme::Light: return Look::Light;
    case Scheme::Dark: return Look::Dark;
    case Scheme::LightContrast: return Look::LightContrast;
    case Scheme::DarkContrast: return Look::DarkContrast;
    }
    return std::nullopt; // a number that a later program kept
}

Theme::Theme(QApplication& app, Scheme scheme, Fonts fonts)
    : QObject(&app)
    , m_app(app)
    , m_scheme(scheme) {
    QApplication::setStyle(new BenchStyle);
    app.installEventFilter(new WheelGuard(this));
    app.installEventFilter(this);
    if (fonts == Fonts::Now) setZoom(zoom());
    follow();
}

void Theme::setScheme(Scheme scheme) {
    m_scheme = scheme;
    follow();
}

void Theme::follow() {
    m_dressing = true;
    QApplication::setPalette(QPalette()); // lets the system's own show through, to be judged
    const Look system = lookOf(QGuiApplication::palette());
    Look look = system;
    if (system != Look::Contrast) look = lookOf(m_scheme).value_or(system);
    m_app.setProperty("benchLook", static_cast<int>(look));
    if (look != Look::Contrast) QApplication::setPalette(paletteFor(look));
    m_dressing = false;
    Q_EMIT changed();
}

bool Theme::eventFilter(QObject* watched, QEvent* event) {
    const bool system = event->type() == QEvent::ThemeChange ||
                        (event->type() == QEvent::ApplicationPaletteChange && watched == &m_app);
    if (system && !m_dressing) {
        m_dressing = true; // one turn for the many windows that hear of it
        QMetaObject::invokeMethod(this, &Theme::follow, Qt::QueuedConnection);
    }
    return QObject::eventFilter(watched, event);
}

} // namespace sp::desk

#include "moc_theme.cpp"

// SPDX-License-Identifier: MIT
#include "tests/app/language/onlooker.h"

#include "app/session/book_session.h"

#include <QAbstractButton>
#include <QAbstractItemView>
#include <QComboBox>
#include <QGroupBox>
#include <QHeaderView>
#include <QLabel>
#include <QLineEdit>
#include <QLocale>
#include <QMenu>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QRegularExpression>
#include <QScrollArea>
#include <QScrollBar>
#include <QTabBar>
#include <QTableView>

#include <algorithm>

namespace sp::test {

namespace {

/// The whole is a tool tip where it does not fit.
bool isToldByToolTip(const QWidget& widget, const QString& text) { return widget.toolTip().contains(text); }

/// Why a text does not fit its widget; empty where it does.
QString cutWhy(const QWidget& widget, const QString& text, QSize needed) {
    const QSize has = widget.size();
    if (text.isEmpty() || isToldByToolTip(widget, text)) return {};
    if (needed.width() > has.width() + 1)
        return QStringLiteral("needs a width of %1, has %2").arg(needed.width()).arg(has.width());
    if (needed.height() > has.height() + 1)
        return QStringLiteral("needs a height of %1, has %2").arg(needed.height()).arg(has.height());
    return {};
}

/// Those at the right edge of what is in it.
QString furthest(const QScrollArea& area) {
    const int edge = area.widget()->width() - area.widget()->contentsMargins().right();
    QStringList names{QLatin1String(area.widget()->metaObject()->className())};
    for (const auto* one : area.widget()->findChildren<QWidget*>())
        if (one->isVisible() && one->mapTo(area.widget(), QPoint(one->width(), 0)).x() > edge - 40)
            names << one->objectName();
    return names.join(QLatin1Char(' '));
}

QSize neededBy(const QLabel& label) {
    if (!label.wordWrap()) return label.sizeHint();
    return {0, label.heightForWidth(label.width())};
}

} // namespace

Onlooker::Onlooker() {
    // Days and months are the system's words; units, trade terms and names of formats are alike everywhere.
    const QLocale us(QLocale::English, QLocale::UnitedStates);
    for (const auto format : {QLocale::ShortFormat, QLocale::LongFormat})
        for (int i = 1; i <= 12; ++i) know(us.monthName(i, format).toStdString());
    for (int i = 1; i <= 7; ++i) know(us.dayName(i, QLocale::ShortFormat).toStdString());
    know("in mm cm SS AM PM min Ctrl Alt Stonepenny demo jobbook SVG svg DXF PLT CSV PDF JSON px pt dpi XL Inter");
}

void Onlooker::know(const std::string& text) {
    static const QRegularExpression word(QStringLiteral("[A-Za-z]+"));
    for (auto found = word.globalMatch(QString::fromStdString(text)); found.hasNext();)
        m_known.insert(found.next().captured());
}

void Onlooker::knowBook(session::BookSession& session) {
    for (const auto& one : session.materials()) know(one.name + " " + one.stone.colour + " " + one.stone.size);
    for (const auto& one : session.designs()) know(one.name + " " + one.note);
    for (const auto& one : session.suppliers()) know(one.name);
    for (const auto& one : session.kits()) {
        know(one.name);
        for (const auto& tool : one.tools) know(tool);
    }
    for (const auto& one : session.customers()) know(one.name + " " + one.contact);
    for (const auto& pack : session.packs()) know(pack.name);
    const auto& shop = session.shop();
    for (const auto& span : shop.closedDays) know(span.why);
    const auto& head = shop.letterhead;
    know(head.name + " " + head.lines + " " + head.terms + " " + head.care + " " + shop.rules.tax.name);
    for (const auto& rate : shop.rules.tax.others) know(rate.name);
    for (const auto& row : shop.rules.places) know(row.place);
    know(shop.currency.code());
}

/// What of a text no translator has seen.
QString Onlooker::untranslated(const QString& text) const {
    static const QRegularExpression tag(QStringLiteral("<[^ >][^>]*>"));
    static const QRegularExpression colour(QStringLiteral("#[0-9a-f]{6}|\\b[0-9A-F]{6}\\b"));
    static const QRegularExpression word(QStringLiteral("[A-Za-z]{2,}"));
    QString plain = text;
    plain.remove(tag);
    plain.remove(colour);
    QStringList words;
    for (auto found = word.globalMatch(plain); found.hasNext();)
        if (const auto one = found.next().captured(); !m_known.contains(one)) words << one;
    return words.join(QLatin1Char(' '));
}

void Onlooker::look(const QString& where, const QString& text) {
    if (const auto left = untranslated(text); !left.isEmpty())
        m_found.insert(QStringLiteral("%1: \"%2\" in \"%3\"").arg(where, left, text.left(160)));
}

void Onlooker::lookAt(const QWidget& widget, const QString& where) {
    const QString at =
        QStringLiteral("%1/%2 %3").arg(where, QLatin1String(widget.metaObject()->className()), widget.objectName());
    look(at + QStringLiteral(" title"), widget.windowTitle());
    look(at + QStringLiteral(" tool tip"), widget.toolTip());
    look(at + QStringLiteral(" name"), widget.accessibleName());
    look(at + QStringLiteral(" description"), widget.accessibleDescription());
    if (const auto* label = qobject_cast<const QLabel*>(&widget)) look(at, label->text());
    if (const auto* button = qobject_cast<const QAbstractButton*>(&widget)) look(at, button->text());
    if (const auto* group = qobject_cast<const QGroupBox*>(&widget)) look(at, group->title());
    if (const auto* line = qobject_cast<const QLineEdit*>(&widget)) {
        look(at + QStringLiteral(" placeholder"), line->placeholderText());
        look(at, line->text());
    }
    if (const auto* combo = qobject_cast<const QComboBox*>(&widget))
        for (int i = 0; i < combo->count(); ++i) look(at, combo->itemText(i));
    if (const auto* tabs = qobject_cast<const QTabBar*>(&widget))
        for (int i = 0; i < tabs->count(); ++i) look(at, tabs->tabText(i));
    if (const auto* view = qobject_cast<const QAbstractItemView*>(&widget); view && view->model())
        lookIn(*view->model(), {}, at);
    if (const auto* menu = qobject_cast<const QMenu*>(&widget))
        for (const auto* action : menu->actions()) look(at, action->text().section(QLatin1Char('\t'), 0, 0));
    if (widget.isVisible()) measure(widget, at);
}

void Onlooker::measure(const QWidget& widget, const QString& at) {
    QString text;
    QSize needed;
    if (const auto* label = qobject_cast<const QLabel*>(&widget)) {
        text = label->text();
        needed = neededBy(*label);
    } else if (const auto* button = qobject_cast<const QAbstractButton*>(&widget)) {
        text = button->text();
        needed = button->sizeHint();
    } else if (const auto* combo = qobject_cast<const QComboBox*>(&widget)) {
        constexpr int kArrow = 24;
        text = combo->currentText();
        needed = {combo->fontMetrics().horizontalAdvance(text) + kArrow, 0};
    } else if (const auto* line = qobject_cast<const QLineEdit*>(&widget)) {
        text = line->text().isEmpty() ? line->placeholderText() : QString();
        needed = {line->fontMetrics().horizontalAdvance(text) + 2, 0};
    } else if (const auto* head = qobject_cast<const QHeaderView*>(&widget); head && head->model()) {
        for (int i = 0; i < head->count(); ++i) {
            const auto title = head->model()->headerData(i, head->orientation()).toString();
            if (!head->isSectionHidden(i) && !title.isEmpty() && head->sectionSizeHint(i) > head->sectionSize(i) + 1)
                m_found.insert(QStringLiteral("%1: the heading \"%2\" is cut").arg(at, title));
        }
        return;
    }
    if (const auto why = cutWhy(widget, text, needed); !why.isEmpty())
        m_found.insert(QStringLiteral("%1: \"%2\" is cut: %3").arg(at, text.left(80), why));
}

void Onlooker::lookIn(const QAbstractItemModel& model, const QModelIndex& parent, const QString& at) {
    for (int column = 0; column < model.columnCount(parent); ++column)
        look(at + QStringLiteral(" heading"), model.headerData(column, Qt::Horizontal).toString());
    for (int row = 0; row < std::min(model.rowCount(parent), 200); ++row)
        for (int column = 0; column < model.columnCount(parent); ++column) {
            const auto cell = model.index(row, column, parent);
            for (const int role : {int(Qt::DisplayRole), int(Qt::ToolTipRole), int(Qt::AccessibleTextRole),
                                   int(Qt::AccessibleDescriptionRole)})
                look(at, cell.data(role).toString());
            if (column == 0 && model.hasChildren(cell)) lookIn(model, cell, at);
        }
}

void Onlooker::lookAtAll(const QWidget& window, const QString& where) {
    lookAt(window, where);
    for (const auto* widget : window.findChildren<QWidget*>())
        if (widget->isVisible() || qobject_cast<const QMenu*>(widget)) lookAt(*widget, where);
}

void Onlooker::measureAll(const QWidget& window, const QString& where) {
    for (const auto* widget : window.findChildren<QWidget*>())
        if (widget->isVisible() && widget->window() == window.window())
            measure(*widget, QStringLiteral("%1/%2 %3")
                                 .arg(where, QLatin1String(widget->metaObject()->className()), widget->objectName()));
}

void Onlooker::lookForHidden(const QWidget& window, const QString& where) {
    for (const auto* area : window.findChildren<QScrollArea*>())
        if (const int hidden = area->isVisible() ? area->horizontalScrollBar()->maximum() : 0; hidden > 0)
            m_found.insert(
                QStringLiteral("%1: %2 px are hidden to the right of %3").arg(where).arg(hidden).arg(furthest(*area)));
}

std::string Onlooker::found() const {
    return QStringList(m_found.begin(), m_found.end()).join(QLatin1Char('\n')).toStdString();
}

} // namespace sp::test

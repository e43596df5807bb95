// SPDX-License-Identifier: MIT
// Every place of the window in a language of accents: what still has a letter of ASCII was not translated, unless it
// is the shop's own word.
#include "tests/app/demo_window.h"
#include "tests/support/pseudo_language.h"

#include <QAbstractButton>
#include <QAbstractItemView>
#include <QAccessible>
#include <QComboBox>
#include <QGroupBox>
#include <QMenu>
#include <QRegularExpression>
#include <QTabBar>

#include <set>

using namespace sp;

namespace {

/// Installed before the window is made.
struct Spoken {
    test::PseudoLanguage language;
};

class InAnotherLanguage : private Spoken, public test::DemoWindow {
  protected:
    InAnotherLanguage() { collectData(); }

    /// Words of the book, of the system (days and months, file names) and of trades and units that no language turns.
    void collectData() {
        auto& session = m_window->session();
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
        const auto& head = shop.letterhead;
        know(head.name + " " + head.lines + " " + head.terms + " " + head.care + " " + shop.rules.tax.name);
        know(shop.currency.code());
        const QLocale us(QLocale::English, QLocale::UnitedStates);
        for (int i = 1; i <= 12; ++i) know(us.monthName(i, QLocale::ShortFormat).toStdString());
        for (int i = 1; i <= 7; ++i) know(us.dayName(i, QLocale::ShortFormat).toStdString());
        for (const char* word : {"in", "mm", "cm", "SS", "AM", "PM", "min", "Ctrl", "Stonepenny", "demo", "jobbook",
                                 "SVG", "DXF", "CSV", "PDF", "px", "pt"})
            know(word);
    }
    void know(const std::string& text) {
        static const QRegularExpression word(QStringLiteral("[A-Za-z]+"));
        for (auto found = word.globalMatch(QString::fromStdString(text)); found.hasNext();)
            m_known.insert(found.next().captured());
    }

    /// What of a text no translator has seen.
    QString untranslated(const QString& text) const {
        static const QRegularExpression tag(QStringLiteral("<[^ >][^>]*>"));
        static const QRegularExpression word(QStringLiteral("[A-Za-z]{2,}"));
        QString plain = text;
        plain.remove(tag);
        QStringList words;
        for (auto found = word.globalMatch(plain); found.hasNext();)
            if (const auto one = found.next().captured(); !m_known.contains(one)) words << one;
        return words.join(QLatin1Char(' '));
    }

    void look(const QString& where, const QString& text) {
        if (const auto left = untranslated(text); !left.isEmpty())
            m_found.insert(QStringLiteral("%1: \"%2\" in \"%3\"").arg(where, left, text.left(120)));
    }

    void lookAt(const QWidget& widget, const QString& where) {
        const QString at =
            QStringLiteral("%1/%2 %3").arg(where, QLatin1String(widget.metaObject()->className()), widget.objectName());
        look(at + QStringLiteral(" tool tip"), widget.toolTip());
        look(at + QStringLiteral(" name"), widget.accessibleName());
        look(at + QStringLiteral(" description"), widget.accessibleDescription());
        if (const auto* label = qobject_cast<const QLabel*>(&widget)) look(at, label->text());
        if (const auto* button = qobject_cast<const QAbstractButton*>(&widget)) look(at, button->text());
        if (const auto* group = qobject_cast<const QGroupBox*>(&widget)) look(at, group->title());
        if (const auto* line = qobject_cast<const QLineEdit*>(&widget))
            look(at + QStringLiteral(" placeholder"), line->placeholderText());
        if (const auto* combo = qobject_cast<const QComboBox*>(&widget))
            for (int i = 0; i < combo->count(); ++i) look(at, combo->itemText(i));
        if (const auto* tabs = qobject_cast<const QTabBar*>(&widget))
            for (int i = 0; i < tabs->count(); ++i) look(at, tabs->tabText(i));
        if (const auto* view = qobject_cast<const QAbstractItemView*>(&widget); view && view->model())
            lookIn(*view->model(), {}, at);
        if (const auto* menu = qobject_cast<const QMenu*>(&widget))
            for (const auto* action : menu->actions()) look(at, action->text().section(QLatin1Char('\t'), 0, 0));
    }

    void lookIn(const QAbstractItemModel& model, const QModelIndex& parent, const QString& at) {
        for (int column = 0; column < model.columnCount(parent); ++column)
            look(at + QStringLiteral(" heading"), model.headerData(column, Qt::Horizontal).toString());
        for (int row = 0; row < std::min(model.rowCount(parent), 200); ++row)
            for (int column = 0; column < model.columnCount(parent); ++column) {
                const auto cell = model.index(row, column, parent);
                for (const int role : {int(Qt::DisplayRole), int(Qt::ToolTipRole), int(Qt::AccessibleTextRole)})
                    look(at, cell.data(role).toString());
                if (column == 0 && model.hasChildren(cell)) lookIn(model, cell, at);
            }
    }

    void lookEverywhere(const QString& where) {
        test::handleQueued();
        lookAt(*m_window, where);
        for (const auto* widget : m_window->findChildren<QWidget*>())
            if (widget->isVisible() || qobject_cast<const QMenu*>(widget)) lookAt(*widget, where);
    }

    QString found() const { return QStringList(m_found.begin(), m_found.end()).join(QLatin1Char('\n')); }

    std::set<QString> m_known;
    std::set<QString> m_found;
};

TEST_F(InAnotherLanguage, noPlaceShowsAWordThatNoTranslatorHasSeen) {
    lookEverywhere(QStringLiteral("Counter"));
    orderLantern();
    lookEverywhere(QStringLiteral("Counter, ordered"));
    for (int place = 1; place < 6; ++place) {
        m_window->goTo(static_cast<program::PlaceId>(place));
        test::handleQueued();
        lookEverywhere(QStringLiteral("Place %1").arg(place));
    }
    EXPECT_TRUE(m_found.empty()) << m_found.size() << " texts go past the translators:\n" << found().toStdString();
}

} // namespace

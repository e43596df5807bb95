// SPDX-License-Identifier: MIT
#pragma once

#include "app/desk/typed_field.h"

#include <QColor>
#include <QPixmap>
#include <QVariant>

#include <functional>
#include <vector>

namespace sp::desk {

class ChoicePopup;

/// One thing to choose from.
struct Choice {
    QVariant id; ///< what chosen() says; any type with ==, a base::Id by QVariant::fromValue
    QString text;
    QString detail;             ///< muted, at the right
    std::vector<QColor> stones; ///< shown as cut stones before the text
    QStringList alsoFoundBy{};  ///< other words for it, not shown
    /// What it looks like, painted into that room (device-independent pixels) on a ground of that colour; stands in the
    /// place of the stones. Null where there is nothing to show.
    std::function<QPixmap(QSize room, const QColor& ground, double devicePixelRatio)> picture{};
};

/// The choices that match, best first: text that begins so, then a word that does, then text that holds it somewhere;
/// case and accents do not matter; in each group the given order. Blank text matches all. Other words for a choice
/// count as its text does.
std::vector<Choice> matching(const std::vector<Choice>& choices, const QString& typed);

/// Finds one of many by typing part of its name. The list opens under the field while typing, on a click or with
/// Down; Up and Down move in it, Enter or Tab takes the marked row (Tab then goes on), Escape closes it and keeps the
/// text. Text that names nothing stays, with its sentence. With setNewWording a last row offers to add it; with
/// setTakesNew Enter and Tab take that row wherever the text is a name of its own.
class ChoiceField : public TypedField {
    Q_OBJECT

  public:
    explicit ChoiceField(const Formatter& formatter, QWidget* parent = nullptr);
    ~ChoiceField() override;

    /// Replaces the choices; a current one that is still there stays.
    void setChoices(std::vector<Choice> choices);
    const std::vector<Choice>& choices() const { return m_choices; }

    /// The id chosen; invalid when nothing is, or the text names nothing.
    QVariant current() const { return m_current; }
    /// Chooses without emitting; an id that is not there clears the field.
    void setCurrent(const QVariant& id);
    /// Puts a text in as if a person had typed it and chosen nothing yet; emits nothing.
    void setTyped(const QString& text);

    /// The last row's words with %1 for what was typed ("Add “%1”…"); empty: no such row.
    void setNewWording(const QString& wording);
    /// New names are as usual as those that there are. Default: no.
    void setTakesNew(bool takes) { m_takesNew = takes; }
    /// Takes what is typed as Enter does; the focus stays.
    void finish();
    /// The sentence about text that names nothing, %1 for the text.
    void setUnknownWording(const QString& wording);

    bool isOpen() const;
    void openList();
    void closeList();

  Q_SIGNALS:
    /// A person chose; an invalid id when they emptied the field.
    void chosen(const QVariant& id);
    /// A person took the last row, or left a new name.
    void typedNew(const QString& text);

  protected:
    Parsed read(const QString& text) const override;
    QString blankProblem() const override;
    void keyPressEvent(QKeyEvent* event) override;
    bool event(QEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void paintEvent(QPaintEvent* event) override;
    bool eventFilter(QObject* watched, QEvent* event) override;

  private:
    void typed();
    void fill(const QString& filter);
    void take(int row);
    bool takeMarked();
    void settle();
    void choose(const Choice& choice);
    bool isRatherNew() const;
    const Choice* named(const QString& text) const;

    std::vector<Choice> m_choices;
    QVariant m_current;
    QString m_newWording;
    QString m_unknownWording;
    ChoicePopup* m_popup;
    bool m_typedSince = false;
    bool m_takesNew = false;
};

} // namespace sp::desk

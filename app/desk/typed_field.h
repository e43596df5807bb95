// SPDX-License-Identifier: MIT
#pragma once

#include "app/format/formatter.h"

#include <QLineEdit>

namespace sp::desk {

/// A field in which a person types. The text stays as typed, good or bad: nothing is ever put in its place while it
/// has the focus, and a bad entry is never reverted. What is wrong (or how an expression was read) is one sentence,
/// which FieldBox shows below. While a person is still typing a wrong entry is not complained about; once they left
/// it or pressed Enter it is, and from then on the complaint follows each key until the entry is good. It is one line:
/// a tab or line break that is pasted becomes a space.
///
/// Keys: Enter commits and goes to the next field; the keypad's decimal key types the locale's mark; undo and redo go
/// to the page, and so does Alt with a letter, which types nothing where it belongs to nobody. The whole text is
/// selected when the field gets the focus. The wheel does nothing.
class TypedField : public QLineEdit {
    Q_OBJECT

  public:
    const Formatter& formatter() const { return m_formatter; }

    /// Puts text in as if the page had typed it (a draft reopened); not an edit, so nothing is emitted.
    void setRaw(const QString& text);

    /// Whether a person is at it: half typed, or typed and not good. A page that loads anew leaves such a field alone.
    bool isDirty() const;
    /// What was typed may be written over: the page shows another thing.
    void discardEdit();

    /// Nothing typed is fine. Default: no.
    void setEmptyAllowed(bool allowed);
    bool isBlank() const { return text().trimmed().isEmpty(); }

    /// What is wrong with the text now, one sentence; empty when it is good.
    QString problem() const;
    /// The problem when it is time to show it, else empty.
    QString shownProblem() const;
    /// Shows a problem now, before the person left the field (on an attempt to finish).
    void showError();
    /// How the text was read when that is not plain to see ("= 88.9 mm"), else empty.
    QString echo() const;
    /// A complaint of the page's own about a good entry ("wanted before today"); empty takes it back.
    void setOuterProblem(const QString& sentence);

    /// Shown muted behind the number at the right edge ("in"), unless the text names a unit itself.
    void setUnitText(const QString& unit);
    const QString& unitText() const { return m_unit; }

    /// Undo and redo work inside the field instead of being left to the page. Default: no.
    /// Enter goes to the next field after it committed. Default: yes.
    void setEnterMovesOn(bool moves) { m_enterMovesOn = moves; }

  Q_SIGNALS:
    /// The person changed the text; at each key.
    void edited();
    /// The person is done with a changed text: Enter, or the focus left.
    void committed();
    /// problem, echo or whether they are shown may have changed.
    void statusChanged();

  protected:
    TypedField(const Formatter& formatter, QWidget* parent);

    struct Parsed {
        QString problem; ///< empty: good
        QString echo;
    };
    /// Reads text that is not blank.
    virtual Parsed read(const QString& text) const = 0;
    /// What to say when it is blank and must not be.
    virtual QString blankProblem() const;
    /// Reads again after something that read() depends on has changed.
    void readAgain();
    /// Emits committed() when there is something new.
    void commit();
    void noteTyped();

    bool event(QEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void paintEvent(QPaintEvent* event) override;
    void changeEvent(QEvent* event) override;

  private:
    void selectWhole();
    void layUnit();
    void paintEllipsis(QPainter& painter) const; ///< where a text goes on that is not all in sight

    Formatter m_formatter;
    QString m_unit;
    bool m_showsUnit = false;
    QString m_outerProblem;
    QString m_committedText;
    bool m_emptyAllowed = false;
    bool m_enterMovesOn = true;
    bool m_complains = false;
    bool m_selectOnRelease = false;
};

/// The first field shown inside `within` whose entry is complained about; null when there is none.
TypedField* firstWrong(const QWidget& within);
/// letGo() of all the fields inside `within`.
void discardAllEdits(const QWidget& within);

/// Whenever an entry is done and good it is saved; what `save` answers is why it was refused, and shown with the field.
template<class Save>
void saveWhenGood(TypedField& field, Save save) {
    QObject::connect(&field, &TypedField::committed, &field, [&field, save] {
        if (field.problem().isEmpty()) field.setOuterProblem(save()); // a bad entry stays as typed, with its sentence
    });
}

} // namespace sp::desk

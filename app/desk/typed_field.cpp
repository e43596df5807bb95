// SPDX-License-Identifier: MIT
#include "app/desk/typed_field.h"

#include "app/desk/bench_style.h"
#include "app/desk/palette.h"

#include <QFocusEvent>
#include <QKeyEvent>
#include <QPainter>

#include <algorithm>

namespace sp::desk {

namespace {

/// The style's own room around the text of a line edit.
constexpr int kPadding = 10;

/// Whether a text says itself in what unit it is meant.
bool namesUnit(const QString& text) {
    return std::any_of(text.begin(), text.end(), [](QChar c) {
        return c.isLetter() || c == QLatin1Char('"') || c == QLatin1Char('\'') || c == QLatin1Char('%');
    });
}

/// Tabs and line breaks, as they come with what is pasted, made spaces.
QString inOneLine(QString text) {
    text.replace(QLatin1String("\r\n"), QLatin1String(" "));
    for (QChar& c : text)
        if (c.category() == QChar::Other_Control || c == QChar::LineSeparator || c == QChar::ParagraphSeparator)
            c = QLatin1Char(' ');
    return text;
}

bool isUndoOrRedo(const QKeyEvent* key) { return key->matches(QKeySequence::Undo) || key->matches(QKeySequence::Redo); }

} // namespace

TypedField::TypedField(const Formatter& formatter, QWidget* parent)
    : QLineEdit(parent)
    , m_formatter(formatter) {
    setAcceptDrops(false); // a file dropped on a field is meant for the window
    connect(this, &QLineEdit::textEdited, this, [this] { noteTyped(); });
    connect(this, &QLineEdit::textChanged, this, [this] {
        if (!m_unit.isEmpty()) layUnit();
    });
}

void TypedField::noteTyped() {
    if (const auto line = inOneLine(text()); line != text()) {
        const auto before = inOneLine(text().left(cursorPosition())).size();
        setText(line);
        setCursorPosition(static_cast<int>(before));
    }
    m_outerProblem.clear();
    if (problem().isEmpty()) m_complains = false;
    readAgain();
    Q_EMIT edited();
}

void TypedField::setRaw(const QString& text) {
    m_outerProblem.clear();
    m_committedText = text;
    if (text != this->text()) setText(text);
    if (!hasFocus()) setCursorPosition(0);
    m_complains = !isBlank() && !problem().isEmpty();
    readAgain();
}

bool TypedField::isDirty() const { return (hasFocus() && text() != m_committedText) || !shownProblem().isEmpty(); }

void TypedField::discardEdit() {
    m_outerProblem.clear();
    m_complains = false;
    m_committedText = text();
}

TypedField* firstWrong(const QWidget& within) {
    for (auto* field : within.findChildren<TypedField*>())
        if (field->isVisibleTo(&within) && !field->shownProblem().isEmpty()) return field;
    return nullptr;
}

void discardAllEdits(const QWidget& within) {
    for (auto* field : within.findChildren<TypedField*>()) field->discardEdit();
}

void TypedField::setEmptyAllowed(bool allowed) {
    m_emptyAllowed = allowed;
    readAgain();
}

QString TypedField::problem() const {
    if (!m_outerProblem.isEmpty()) return m_outerProblem;
    if (isBlank()) return m_emptyAllowed ? QString() : blankProblem();
    return read(text()).problem;
}

QString TypedField::shownProblem() const { return m_complains || !m_outerProblem.isEmpty() ? problem() : QString(); }

void TypedField::showError() {
    m_complains = true;
    readAgain();
}

QString TypedField::echo() const { return isBlank() ? QString() : read(text()).echo; }

void TypedField::setOuterProblem(const QString& sentence) {
    if (sentence == m_outerProblem) return;
    m_outerProblem = sentence;
    readAgain();
}

QString TypedField::blankProblem() const { return tr("This is still empty."); }

void TypedField::readAgain() {
    markWrong(*this, !shownProblem().isEmpty());
    Q_EMIT statusChanged();
}

void TypedField::commit() {
    const QString before = shownProblem();
    const bool changed = text() != m_committedText;
    if (changed || !isBlank()) m_complains = !problem().isEmpty();
    if (before != shownProblem()) readAgain();
    if (!changed) return;
    m_committedText = text();
    Q_EMIT committed();
}

void TypedField::setUnitText(const QString& unit) {
    m_unit = unit;
    layUnit();
    update();
}

void TypedField::layUnit() {
    m_showsUnit = !m_unit.isEmpty() && !namesUnit(text());
    auto margins = textMargins();
    margins.setRight(m_showsUnit ? fontMetrics().horizontalAdvance(m_unit) + 8 : 0);
    setTextMargins(margins);
}

bool TypedField::event(QEvent* event) {
    if (event->type() == QEvent::ShortcutOverride) {
        const auto* key = static_cast<QKeyEvent*>(event);
        if (isUndoOrRedo(key)) {
            event->ignore();
            return true;
        }
    }
    return QLineEdit::event(event);
}

void TypedField::keyPressEvent(QKeyEvent* event) {
    const bool decimalKey = event->modifiers().testFlag(Qt::KeypadModifier) &&
                            (event->key() == Qt::Key_Period || event->key() == Qt::Key_Comma);
    if (decimalKey) {
        QKeyEvent mark(QEvent::KeyPress, event->key(), Qt::NoModifier,
                       QString::fromUcs4(&m_formatter.style().decimalMark, 1));
        return QLineEdit::keyPressEvent(&mark);
    }
    if (isUndoOrRedo(event) || event->modifiers() == Qt::AltModifier) return event->ignore();
    if (event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter) {
        if (event->modifiers().testFlag(Qt::ControlModifier)) return event->ignore();
        commit();
        if (m_enterMovesOn)
            focusNextPrevChild(true);
        else
            selectWhole();
        return event->accept();
    }
    QLineEdit::keyPressEvent(event);
}

void TypedField::selectWhole() {
    const int length = static_cast<int>(text().size());
    setSelection(length, -length); // backwards: the beginning of a long text stays in sight
}

void TypedField::focusInEvent(QFocusEvent* event) {
    QLineEdit::focusInEvent(event);
    m_selectOnRelease = event->reason() == Qt::MouseFocusReason;
    const bool back = event->reason() == Qt::ActiveWindowFocusReason || event->reason() == Qt::PopupFocusReason;
    if (!m_selectOnRelease && !back) selectWhole();
}

void TypedField::focusOutEvent(QFocusEvent* event) {
    QLineEdit::focusOutEvent(event);
    if (event->reason() == Qt::PopupFocusReason) return;
    if (event->reason() != Qt::ActiveWindowFocusReason)
        setCursorPosition(0); // the beginning of a long text is in sight
    commit();
}

void TypedField::mouseReleaseEvent(QMouseEvent* event) {
    QLineEdit::mouseReleaseEvent(event);
    if (m_selectOnRelease && !hasSelectedText()) selectWhole();
    m_selectOnRelease = false;
}

void TypedField::paintEvent(QPaintEvent* event) {
    QLineEdit::paintEvent(event);
    QPainter painter(this);
    painter.setPen(colour(Role::Muted));
    if (m_showsUnit) painter.drawText(rect().adjusted(0, 0, -kPadding, 0), Qt::AlignRight | Qt::AlignVCenter, m_unit);
    paintEllipsis(painter);
}

void TypedField::paintEllipsis(QPainter& painter) const {
    const QRect room = rect().adjusted(kPadding, 3, -kPadding - textMargins().right(), -3);
    if (hasFocus() || fontMetrics().horizontalAdvance(text()) <= room.width()) return;
    const auto dots = QStringLiteral("…");
    QRect end = room;
    end.setLeft(room.right() - fontMetrics().horizontalAdvance(dots));
    painter.fillRect(end.adjusted(0, 0, 4, 0), palette().color(QPalette::Base)); // and what shows of the last letter
    painter.drawText(end, Qt::AlignLeft | Qt::AlignVCenter, dots);
}

void TypedField::changeEvent(QEvent* event) {
    QLineEdit::changeEvent(event);
    if (event->type() == QEvent::FontChange && !m_unit.isEmpty()) layUnit();
}

} // namespace sp::desk

#include "moc_typed_field.cpp"

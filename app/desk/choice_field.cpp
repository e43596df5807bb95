// SPDX-License-Identifier: MIT
#include "app/desk/choice_field.h"

#include "app/desk/bench_style.h"
#include "app/desk/choice_popup.h"
#include "app/desk/palette.h"
#include "app/format/likeness.h"

#include <QFocusEvent>
#include <QKeyEvent>
#include <QPainter>

#include <algorithm>
#include <array>

namespace sp::desk {

namespace {

// Where new names are usual: from how many letters on one that another begins with is taken as whole, and how many more
// that other one may have.
constexpr qsizetype kWholeName = 6;
constexpr qsizetype kMissingLetters = 2;

/// 0 the best; 3: does not match.
std::size_t rankOf(const QString& choice, const QString& typed) {
    if (choice.startsWith(typed)) return 0;
    if (choice.contains(QLatin1Char(' ') + typed)) return 1;
    return choice.contains(typed) ? 2 : 3;
}

} // namespace

std::vector<Choice> matching(const std::vector<Choice>& choices, const QString& typed) {
    const QString wanted = folded(typed);
    if (wanted.isEmpty()) return choices;
    std::array<std::vector<Choice>, 4> groups;
    for (const Choice& choice : choices) {
        auto rank = rankOf(folded(choice.text), wanted);
        for (const auto& other : choice.alsoFoundBy) rank = std::min(rank, rankOf(folded(other), wanted));
        groups.at(rank).push_back(choice);
    }
    std::vector<Choice> best;
    for (std::size_t rank = 0; rank < 3; ++rank)
        best.insert(best.end(), groups.at(rank).begin(), groups.at(rank).end());
    return best;
}

ChoiceField::ChoiceField(const Formatter& formatter, QWidget* parent)
    : TypedField(formatter, parent)
    , m_unknownWording(tr("Nothing is called “%1”; choose from the list."))
    , m_popup(new ChoicePopup(this)) {
    setTextMargins(0, 0, 20, 0);
    connect(this, &TypedField::edited, this, &ChoiceField::typed);
    connect(m_popup, &ChoicePopup::taken, this, &ChoiceField::take);
}

ChoiceField::~ChoiceField() = default;

void ChoiceField::setChoices(std::vector<Choice> choices) {
    m_choices = std::move(choices);
    const bool stays = std::any_of(m_choices.begin(), m_choices.end(),
                                   [this](const Choice& choice) { return choice.id == m_current; });
    if (!stays)
        m_current = QVariant();
    else if (!m_typedSince)
        setCurrent(m_current);
    if (isOpen()) fill(text());
    readAgain();
}

void ChoiceField::setCurrent(const QVariant& id) {
    const auto at = std::find_if(m_choices.begin(), m_choices.end(),
                                 [&](const Choice& choice) { return id.isValid() && choice.id == id; });
    m_typedSince = false;
    m_current = at == m_choices.end() ? QVariant() : at->id;
    setRaw(at == m_choices.end() ? QString() : at->text);
}

void ChoiceField::setTyped(const QString& text) {
    m_typedSince = true;
    m_current = QVariant();
    setRaw(text);
}

void ChoiceField::setNewWording(const QString& wording) { m_newWording = wording; }

void ChoiceField::setUnknownWording(const QString& wording) {
    m_unknownWording = wording;
    readAgain();
}

bool ChoiceField::isOpen() const { return m_popup->isVisible(); }

const Choice* ChoiceField::named(const QString& text) const {
    const QString wanted = folded(text);
    const auto at = std::find_if(m_choices.begin(), m_choices.end(),
                                 [&](const Choice& choice) { return folded(choice.text) == wanted; });
    return at == m_choices.end() ? nullptr : &*at;
}

TypedField::Parsed ChoiceField::read(const QString& text) const {
    if (m_current.isValid() || named(text)) return {};
    return {m_unknownWording.arg(text.trimmed()), {}};
}

QString ChoiceField::blankProblem() const { return tr("Choose one; type part of its name."); }

void ChoiceField::fill(const QString& filter) {
    const auto rows = matching(m_choices, filter);
    const bool offersNew = !m_newWording.isEmpty() && !filter.trimmed().isEmpty() && !named(filter);
    m_popup->fill(rows, offersNew ? m_newWording.arg(filter.trimmed()) : QString());
    if (m_popup->rowCount() == 0) return closeList();
    m_popup->showUnder(*this);
}

void ChoiceField::openList() {
    fill({});
    for (std::size_t i = 0; i < m_choices.size(); ++i)
        if (m_current.isValid() && m_choices[i].id == m_current) m_popup->mark(static_cast<int>(i));
    window()->installEventFilter(this);
}

void ChoiceField::closeList() { m_popup->hide(); }

void ChoiceField::typed() {
    m_typedSince = true;
    m_current = QVariant();
    if (isBlank()) return closeList();
    fill(text());
    window()->installEventFilter(this);
    // The best match is marked, so that Enter or Tab takes it; a new name is only taken on purpose, or where new ones
    // are usual.
    if (!isOpen()) return;
    if (m_takesNew && isRatherNew())
        m_popup->mark(m_popup->rowCount() - 1);
    else if (!m_popup->isAction(0))
        m_popup->mark(0);
}

/// Whether what is typed is a name of its own and no beginning of one that there is: nothing matches, or what does has
/// but a letter or two more.
bool ChoiceField::isRatherNew() const {
    const auto rows = matching(m_choices, text());
    const QString typed = folded(text());
    if (named(text())) return false;
    if (rows.empty()) return true;
    const QString best = folded(rows.front().text);
    return typed.size() >= kWholeName && best.startsWith(typed) && best.size() - typed.size() <= kMissingLetters;
}

void ChoiceField::choose(const Choice& choice) {
    const bool changed = m_typedSince || m_current != choice.id;
    m_current = choice.id;
    m_typedSince = false;
    setRaw(choice.text);
    closeList();
    if (changed) Q_EMIT chosen(m_current);
}

void ChoiceField::take(int row) {
    if (m_popup->isAction(row)) {
        const QString name = text().trimmed();
        closeList();
        Q_EMIT typedNew(name);
        return;
    }
    const auto rows = matching(m_choices, m_typedSince ? text() : QString());
    if (row >= 0 && static_cast<std::size_t>(row) < rows.size()) choose(rows[static_cast<std::size_t>(row)]);
}

bool ChoiceField::takeMarked() {
    if (!isOpen() || m_popup->marked() < 0) return false;
    take(m_popup->marked());
    return true;
}

void ChoiceField::settle() {
    closeList();
    if (!m_typedSince) return;
    if (isBlank()) {
        m_typedSince = false;
        m_current = QVariant();
        readAgain();
        Q_EMIT chosen(QVariant());
    } else if (const Choice* choice = named(text())) {
        choose(Choice(*choice));
    } else if (m_takesNew && matching(m_choices, text()).empty()) {
        Q_EMIT typedNew(text().trimmed());
    }
}

void ChoiceField::finish() {
    if (!m_typedSince || !takeMarked()) settle();
}

void ChoiceField::keyPressEvent(QKeyEvent* event) {
    switch (event->key()) {
    case Qt::Key_Down:
        if (!isOpen())
            openList();
        else
            m_popup->mark(std::min(m_popup->marked() + 1, m_popup->rowCount() - 1));
        return;
    case Qt::Key_Up:
        if (isOpen()) m_popup->mark(std::max(m_popup->marked() - 1, 0));
        return;
    case Qt::Key_Escape:
        if (!isOpen()) break;
        return closeList();
    case Qt::Key_Return:
    case Qt::Key_Enter:
        if (!takeMarked()) settle();
        break;
    default: break;
    }
    TypedField::keyPressEvent(event);
}

bool ChoiceField::event(QEvent* event) {
    if (event->type() == QEvent::KeyPress) {
        const int key = static_cast<QKeyEvent*>(event)->key();
        if (key == Qt::Key_Tab && m_typedSince) takeMarked(); // and the key goes its way
    }
    if (event->type() == QEvent::ShortcutOverride && isOpen() &&
        static_cast<QKeyEvent*>(event)->key() == Qt::Key_Escape) {
        event->accept(); // closes the list, not the dialog
        return true;
    }
    return TypedField::event(event);
}

void ChoiceField::focusOutEvent(QFocusEvent* event) {
    if (event->reason() != Qt::PopupFocusReason) settle();
    TypedField::focusOutEvent(event);
}

void ChoiceField::mousePressEvent(QMouseEvent* event) {
    TypedField::mousePressEvent(event);
    if (event->button() != Qt::LeftButton) return;
    if (isOpen())
        closeList();
    else
        openList();
}

void ChoiceField::paintEvent(QPaintEvent* event) {
    TypedField::paintEvent(event);
    QPainter painter(this);
    const QPointF tip(width() - 16, height() / 2.0 + 2.5);
    paintChevron(painter, tip, colour(Role::Muted));
}

bool ChoiceField::eventFilter(QObject* watched, QEvent* event) {
    const bool leaves = event->type() == QEvent::Move || event->type() == QEvent::Resize ||
                        event->type() == QEvent::WindowDeactivate || event->type() == QEvent::Hide;
    if (leaves && watched == window()) closeList();
    return TypedField::eventFilter(watched, event);
}

} // namespace sp::desk

#include "moc_choice_field.cpp"

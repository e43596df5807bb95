// SPDX-License-Identifier: MIT
#include "app/desk/word_field.h"

namespace sp::desk {

namespace {

constexpr int kMaxNameLength = 200;

} // namespace

WordField::WordField(const Formatter& formatter, const QString& missing, QWidget* parent)
    : TypedField(formatter, parent)
    , m_missing(missing) {
    setMaxLength(kMaxNameLength);
}

std::string WordField::words() const { return text().trimmed().toStdString(); }

TypedField::Parsed WordField::read(const QString&) const { return {}; }

QString WordField::blankProblem() const { return m_missing; }

} // namespace sp::desk

#include "moc_word_field.cpp"

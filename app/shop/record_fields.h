// SPDX-License-Identifier: MIT
#pragma once

#include "app/desk/choices.h"
#include "app/desk/field_binding.h"
#include "app/desk/long_text.h"
#include "app/desk/value_fields.h"
#include "app/desk/word_field.h"
#include "app/format/formatter.h"
#include "app/session/book_session.h"
#include "app/shop/field_card.h"

#include <QComboBox>

#include <functional>
#include <utility>
#include <vector>

namespace sp::shop {

/// Fields that show and save the members of one record of the book, the shop or the bench. Each shows its member
/// whenever load() is called, unless a person is at it, and is saved when it is left with a good entry; what the book
/// refuses is said under the field. `member` is a desk::At, so that the field takes what the table lets it hold:
///     desk::kAt<&Shop::rates, &ShopRates::labourPerHour>
template<class Record>
class RecordFields : public QObject {
  public:
    using Read = std::function<const Record&()>;
    /// Changes the record and saves it; says what the book refuses, else nothing.
    using Edit = std::function<QString(const std::function<void(Record&)>&)>;

    RecordFields(Read read, Edit edit, const desk::Formatter& formatter, QObject* parent)
        : QObject(parent)
        , m_read(std::move(read))
        , m_edit(std::move(edit))
        , m_formatter(formatter) {}

    void load() const {
        for (const auto& show : m_shows) show();
    }
    /// What else is shown whenever the record is.
    void onLoad(std::function<void()> show) { m_shows.push_back(std::move(show)); }
    const Record& record() const { return m_read(); }
    QString edit(const std::function<void(Record&)>& change) const { return m_edit(change); }

    /// A measured value: `Field` is a desk::ValueField of the member's type.
    template<class Field, class Member>
    Field* value(FieldCard* card, const QString& label, const char* name, Member member, const QString& remark = {}) {
        auto* field = new Field(m_formatter, card);
        desk::standsFor(*field, member.field());
        card->put(field, label, name, remark);
        bind(
            field, [field, member](const Record& record) { field->setValue(member(record)); },
            [member](Record& record, const auto& value) { member(record) = value; });
        return field;
    }

    /// A rate, in percent.
    template<class Member>
    desk::RateField* percent(FieldCard* card, const QString& label, const char* name, Member member,
                             const QString& remark = {}) {
        auto* field = value<desk::RateField>(card, label, name, member, remark);
        field->setUnitText(QStringLiteral("%"));
        return field;
    }

    /// A number without a unit.
    template<class Member>
    desk::CountField* number(FieldCard* card, const QString& label, const char* name, Member member,
                             const QString& remark = {}) {
        auto* field = new desk::CountField(m_formatter, card);
        desk::standsFor(*field, member.field());
        card->put(field, label, name, remark);
        bind(
            field, [field, member](const Record& record) { field->setValue(units::Count::of(member(record))); },
            [member](Record& record, units::Count value) { member(record) = value.value(); });
        return field;
    }

    /// A line of words; none are fine.
    template<class Member>
    void words(FieldCard* card, const QString& label, const char* name, Member member, int span) {
        auto* field = new desk::WordField(m_formatter, {}, card);
        field->setEmptyAllowed(true);
        desk::standsFor(*field, member.field());
        card->put(field, label, name, {}, span);
        onLoad([this, field, member] {
            if (!field->isDirty()) field->setRaw(QString::fromStdString(member(record())));
        });
        connect(field, &desk::TypedField::committed, this, [this, field, member] {
            field->setOuterProblem(m_edit([&](Record& record) { member(record) = field->words(); }));
        });
    }

    /// Several lines of words.
    template<class Member>
    void text(FieldCard* card, const QString& label, const char* name, Member member) {
        auto* field = new desk::LongText(card);
        desk::standsFor(*field, member.field());
        card->put(field, label, name, {}, 2);
        onLoad([this, field, member] {
            if (!field->hasFocus()) field->setText(QString::fromStdString(member(record())));
        });
        connect(field, &desk::LongText::committed, this, [this, field, member] {
            m_edit([&](Record& record) { member(record) = field->toPlainText().trimmed().toStdString(); });
        });
    }

    template<class Enum, class Member>
    void choice(FieldCard* card, const QString& label, const char* name,
                const std::vector<std::pair<QString, Enum>>& choices, Member member) {
        auto* field = new QComboBox(card);
        desk::standsFor(*field, member.field());
        for (const auto& [word, value] : choices) field->addItem(word, static_cast<int>(value));
        card->put(field, label, name);
        onLoad([this, field, member] { field->setCurrentIndex(field->findData(static_cast<int>(member(record())))); });
        connect(field, &QComboBox::activated, this, [this, field, member] {
            const auto value = static_cast<Enum>(field->currentData().toInt());
            m_edit([&](Record& record) { member(record) = value; });
        });
    }

    template<class Member>
    QCheckBox* tick(FieldCard* card, const QString& label, const char* name, Member member) {
        auto* field = new QCheckBox(label, card);
        desk::standsFor(*field, member.field());
        card->putTick(field, name);
        onLoad([this, field, member] { field->setChecked(member(record())); });
        connect(field, &QCheckBox::clicked, this,
                [this, member](bool on) { m_edit([&](Record& record) { member(record) = on; }); });
        return field;
    }

    /// One of the book's materials of that kind, or none.
    template<class Member>
    void material(FieldCard* card, const QString& label, const char* name, session::BookSession& session,
                  catalogue::MaterialKind kind, Member member) {
        auto* field = new desk::ChoiceField(m_formatter, card);
        field->setEmptyAllowed(true);
        desk::standsFor(*field, member.field());
        card->put(field, label, name, {}, 2);
        onLoad([this, field, &session, kind, member] {
            field->setChoices(desk::choicesOf(session.materials(), {kind}));
            const auto id = member(record());
            if (!field->isDirty()) field->setCurrent(id.isNone() ? QVariant() : QVariant::fromValue(id));
        });
        connect(field, &desk::ChoiceField::chosen, this, [this, member](const QVariant& chosen) {
            const auto id = chosen.isValid() ? chosen.value<base::Id>() : base::Id{};
            m_edit([&](Record& record) { member(record) = id; });
        });
    }

  private:
    template<class Field, class Show, class Take>
    void bind(Field* field, Show show, Take take) {
        onLoad([this, field, show] {
            if (!field->isDirty()) show(record());
        });
        connect(field, &desk::TypedField::committed, this, [this, field, take] {
            const auto value = field->value();
            if (!value) return; // it stays as typed, with its sentence
            field->setOuterProblem(m_edit([&](Record& record) { take(record, *value); }));
        });
    }

    Read m_read;
    Edit m_edit;
    const desk::Formatter& m_formatter;
    std::vector<std::function<void()>> m_shows;
};

} // namespace sp::shop

// SPDX-License-Identifier: MIT
#pragma once

#include "app/desk/typed_field.h"
#include "core/base/result.h"
#include "core/units/date.h"

#include <optional>

namespace sp::desk {

/// A TypedField that stands for a value of type T.
template<class T>
class ValueField : public TypedField {
  public:
    /// What the text says. Errors: Missing when blank; the reader's own; OutOfRange against setRange.
    base::Result<T> value() const;
    /// The same, blank being nothing at all (whatever setEmptyAllowed says).
    base::Result<std::optional<T>> optionalValue() const;

    /// Shows a value. Text that already reads as it stays as typed. Emits nothing.
    void setValue(const T& value);
    void setOptionalValue(const std::optional<T>& value);

    /// Both ends included.
    void setRange(const T& least, const T& most);
    const std::optional<T>& least() const { return m_least; }
    const std::optional<T>& most() const { return m_most; }

  protected:
    using TypedField::TypedField;

    virtual base::Result<T> parse(const std::string& text) const = 0;
    /// As setValue shows it, without the unit behind.
    virtual QString written(const T& value) const = 0;
    /// As an echo or a bound says it, with its unit.
    virtual QString named(const T& value) const = 0;
    /// The text needs no echo: its reading is plain to see.
    virtual bool isPlain(const QString& text, const T& value) const;

    Parsed read(const QString& text) const override;

  private:
    base::Result<T> parseInRange(const QString& text) const;

    std::optional<T> m_least;
    std::optional<T> m_most;
};

/// "3 1/2", "88.9 mm", "2*40mm + 8.9 mm"; a bare number is in the shop's unit.
class LengthField : public ValueField<units::Length> {
    Q_OBJECT

  public:
    explicit LengthField(const Formatter& formatter, QWidget* parent = nullptr);

  protected:
    base::Result<units::Length> parse(const std::string& text) const override;
    QString written(const units::Length& value) const override;
    QString named(const units::Length& value) const override;
};

/// "6.95", "24*0.29", "$ 6.95".
class MoneyField : public ValueField<units::Money> {
    Q_OBJECT

  public:
    explicit MoneyField(const Formatter& formatter, QWidget* parent = nullptr);

  protected:
    base::Result<units::Money> parse(const std::string& text) const override;
    QString written(const units::Money& value) const override;
    QString named(const units::Money& value) const override;
};

/// "24", "10 gross", "2*12".
class CountField : public ValueField<units::Count> {
    Q_OBJECT

  public:
    explicit CountField(const Formatter& formatter, QWidget* parent = nullptr);

  protected:
    base::Result<units::Count> parse(const std::string& text) const override;
    QString written(const units::Count& value) const override;
    QString named(const units::Count& value) const override;
};

/// "8.875", "1/3"; in percent.
class RateField : public ValueField<units::Rate> {
    Q_OBJECT

  public:
    explicit RateField(const Formatter& formatter, QWidget* parent = nullptr);

  protected:
    base::Result<units::Rate> parse(const std::string& text) const override;
    QString written(const units::Rate& value) const override;
    QString named(const units::Rate& value) const override;
};

/// "10 s", "1:30", "3 h 20 min"; a bare number is in minutes.
class DurationField : public ValueField<units::Duration> {
    Q_OBJECT

  public:
    explicit DurationField(const Formatter& formatter, QWidget* parent = nullptr);

  protected:
    base::Result<units::Duration> parse(const std::string& text) const override;
    QString written(const units::Duration& value) const override;
    QString named(const units::Duration& value) const override;
    bool isPlain(const QString& text, const units::Duration& value) const override;
};

/// "320", "160 C"; a bare number is in the shop's unit.
class TemperatureField : public ValueField<units::Temperature> {
    Q_OBJECT

  public:
    explicit TemperatureField(const Formatter& formatter, QWidget* parent = nullptr);

  protected:
    base::Result<units::Temperature> parse(const std::string& text) const override;
    QString written(const units::Temperature& value) const override;
    QString named(const units::Temperature& value) const override;
};

/// A day, read by parseDay.
class DateField : public ValueField<units::Date> {
    Q_OBJECT

  public:
    DateField(const Formatter& formatter, units::Date today, QWidget* parent = nullptr);
    /// Midnight passed.
    void setToday(units::Date today);

  protected:
    base::Result<units::Date> parse(const std::string& text) const override;
    QString written(const units::Date& value) const override;
    QString named(const units::Date& value) const override;
    bool isPlain(const QString& text, const units::Date& value) const override;

  private:
    units::Date m_today;
};

} // namespace sp::desk

// SPDX-License-Identifier: MIT
#include "app/format/parse_day.h"

#include "app/format/formatter.h"
#include "app/words/words.h"

#include <QCoreApplication>
#include <QRegularExpression>

#include <algorithm>
#include <initializer_list>
#include <optional>

namespace sp::desk {

namespace {

struct DayWords {
    Q_DECLARE_TR_FUNCTIONS(Day)
};

constexpr int kMaxDaysAhead = 36'500;

/// Whether a person typed one of these words, in English or in the language of the window.
bool isTyped(const QString& word, std::initializer_list<const char*> sources) {
    return std::any_of(sources.begin(), sources.end(), [&](const char* source) {
        return word == QLatin1String(source) || word == DayWords::tr(source).toCaseFolded();
    });
}

std::optional<QDate> fromOffset(const QString& text, QDate today) {
    static const QRegularExpression form(QStringLiteral("^\\+?\\s*(\\d{1,5})\\s*(\\p{L}*)$"),
                                         QRegularExpression::UseUnicodePropertiesOption);
    const auto match = form.match(text);
    if (!match.hasMatch()) return std::nullopt;
    const bool plus = text.startsWith(QLatin1Char('+'));
    const QString unit = match.captured(2).toCaseFolded();
    if (!plus && unit.isEmpty()) return std::nullopt; // a bare number is a slip, not a day
    const bool inWeeks = unit == QLatin1String("w") ||
                         isTyped(unit, {QT_TRANSLATE_NOOP("Day", "week"), QT_TRANSLATE_NOOP("Day", "weeks")});
    const bool inDays = unit == QLatin1String("d") ||
                        isTyped(unit, {QT_TRANSLATE_NOOP("Day", "day"), QT_TRANSLATE_NOOP("Day", "days")});
    if (!unit.isEmpty() && !inWeeks && !inDays) return std::nullopt;
    const int days = match.captured(1).toInt() * (inWeeks ? 7 : 1);
    if (days > kMaxDaysAhead) return std::nullopt;
    return today.addDays(days);
}

std::optional<QDate> fromWord(const QString& text, const QLocale& locale, QDate today) {
    const QString word = text.toCaseFolded();
    if (isTyped(word, {QT_TRANSLATE_NOOP("Day", "today")})) return today;
    if (isTyped(word, {QT_TRANSLATE_NOOP("Day", "tomorrow")})) return today.addDays(1);
    if (word.size() < 2) return std::nullopt;
    for (const auto& names : {locale, QLocale::c()}) {
        std::optional<int> found;
        for (int day = 1; day <= 7; ++day) {
            const bool begins = names.dayName(day, QLocale::LongFormat).toCaseFolded().startsWith(word) ||
                                names.dayName(day, QLocale::ShortFormat).toCaseFolded() == word;
            if (begins && found) return std::nullopt; // "t" for Tuesday and Thursday
            if (begins) found = day;
        }
        if (found) return today.addDays((*found - today.dayOfWeek() + 6) % 7 + 1);
    }
    return std::nullopt;
}

/// The forms a person of the locale writes, with a four-digit year.
QStringList formsWithYear(const QLocale& locale) {
    QString shortForm = locale.dateFormat(QLocale::ShortFormat);
    shortForm.replace(QRegularExpression(QStringLiteral("y+")), QStringLiteral("yyyy"));
    shortForm.replace(QRegularExpression(QStringLiteral("M+")), QStringLiteral("M"));
    shortForm.replace(QRegularExpression(QStringLiteral("d+")), QStringLiteral("d"));
    return {shortForm,
            QStringLiteral("d MMM yyyy"),
            QStringLiteral("d MMMM yyyy"),
            QStringLiteral("MMM d yyyy"),
            QStringLiteral("MMMM d yyyy"),
            QStringLiteral("yyyy-MM-dd")};
}

/// The same without the year, by striking it and its mark.
QString withoutYear(QString form) {
    static const QRegularExpression year(QStringLiteral("[^dM]*y+[^dM]*"));
    return form.remove(year);
}

std::optional<QDate> fromForms(const QString& text, const QLocale& locale, QDate today) {
    for (const auto& names : {locale, QLocale::c()}) {
        for (const QString& form : formsWithYear(locale)) {
            const QDate whole = names.toDate(text, form);
            if (whole.isValid() && whole.year() >= 1000) return whole;
            QString twoDigits = form;
            twoDigits.replace(QStringLiteral("yyyy"), QStringLiteral("yy"));
            const QDate brief = names.toDate(text, twoDigits);
            if (brief.isValid()) return QDate(2000 + brief.year() % 100, brief.month(), brief.day());
            // A year is put behind, so that 29 Feb is a day where the year has one.
            for (int year = today.year(); year <= today.year() + 8; ++year) {
                const QDate day =
                    names.toDate(text + QStringLiteral(" %1").arg(year), withoutYear(form) + QStringLiteral(" yyyy"));
                if (day.isValid() && day >= today) return day;
            }
        }
    }
    return std::nullopt;
}

/// "Fri 11 Dec" as we write it: the weekday is struck off and checked against the day by the caller.
QString withoutWeekday(const QString& text, const QLocale& locale, std::optional<int>& weekday) {
    const auto end = text.indexOf(QRegularExpression(QStringLiteral("[\\s,.]")));
    if (end < 2) return text;
    const QString word = text.left(end).toCaseFolded();
    for (const auto& names : {locale, QLocale::c()}) {
        for (int day = 1; day <= 7; ++day) {
            QString brief = names.dayName(day, QLocale::ShortFormat).toCaseFolded();
            brief.remove(QLatin1Char('.'));
            if (word != brief && word != names.dayName(day, QLocale::LongFormat).toCaseFolded()) continue;
            weekday = day;
            return text.mid(end).remove(QRegularExpression(QStringLiteral("^[\\s,.]+")));
        }
    }
    return text;
}

base::Result<units::Date> refused(const QString& sentence) { return words::fail(base::Code::Invalid, {}, sentence); }

} // namespace

base::Result<units::Date> parseDay(const QString& typed, const QLocale& locale, units::Date today) {
    const QDate from = toQDate(today);
    const QString text = typed.simplified();
    if (const auto day = fromOffset(text, from)) return fromQDate(*day);
    if (const auto day = fromWord(text, locale, from)) return fromQDate(*day);

    std::optional<int> weekday;
    QString rest = withoutWeekday(text, locale, weekday);
    // Our month-first forms carry a comma before the year; it says nothing.
    const bool commaIsMark = locale.dateFormat(QLocale::ShortFormat).contains(QLatin1Char(','));
    if (!commaIsMark) rest.remove(QLatin1Char(','));
    const auto day = fromForms(rest, locale, from);
    if (!day)
        return refused(DayWords::tr("“%1” is not a day; write it like %2, fri or +10.")
                           .arg(typed, QString::fromStdString(today.iso())));
    if (weekday && day->dayOfWeek() != *weekday)
        return refused(DayWords::tr("%1 is a %2; correct the day or the weekday.")
                           .arg(locale.toString(*day, QLocale::ShortFormat), locale.dayName(day->dayOfWeek())));
    return fromQDate(*day);
}

} // namespace sp::desk

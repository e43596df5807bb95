// SPDX-License-Identifier: MIT
#include "app/words/words.h"

#include "app/words/sources.h"
#include "core/units/date.h"

#include <algorithm>
#include <cmath>

namespace sp::words {

namespace {

using base::Room;

/// The one message whose words come with it.
constexpr base::MessageId kWorded{Room::App, true, 0, "Worded"};

template<class Fault, class Note>
Source either(const base::MessageId& id) {
    return id.isNote ? sourceOf(static_cast<Note>(id.number)) : sourceOf(static_cast<Fault>(id.number));
}

template<class Fault>
Source fault(const base::MessageId& id) {
    return sourceOf(static_cast<Fault>(id.number));
}

/// At most three decimals, trailing zeros dropped; what is not zero never reads as zero.
QString decimals(double value) {
    QString text = QString::number(value, 'f', 3);
    if (text == QLatin1String("0.000") && value > 0) text = QString::number(value, 'f', 6);
    while (text.endsWith(QLatin1Char('0'))) text.chop(1);
    if (text.endsWith(QLatin1Char('.'))) text.chop(1);
    return text;
}

/// A whole number of which the last digits are decimals, exact and without zeros at its end: 12'500'000 with six,
/// "12.5".
QString exactly(std::int64_t amount, int decimals) {
    const bool isNegative = amount < 0;
    const auto size = isNegative ? 0 - static_cast<std::uint64_t>(amount) : static_cast<std::uint64_t>(amount);
    QString text = QString::number(size).rightJustified(decimals + 1, QLatin1Char('0'));
    text.insert(text.size() - decimals, QLatin1Char('.'));
    while (text.endsWith(QLatin1Char('0'))) text.chop(1);
    if (text.endsWith(QLatin1Char('.'))) text.chop(1);
    return isNegative ? QLatin1Char('-') + text : text;
}

/// Three digits that mean something, never as a power of ten: "2,000,000,000", "1,230", "2.86", "0.00012".
QString threeDigits(double number) {
    constexpr int kDigits = 3;
    constexpr int kMostDecimals = 12;
    if (!std::isfinite(number) || number == 0) return QString::number(number);
    const int power = static_cast<int>(std::floor(std::log10(std::abs(number))));
    if (power >= kDigits) {
        const double unit = std::pow(10, power + 1 - kDigits);
        number = std::round(number / unit) * unit;
    }
    QString text = QString::number(number, 'f', std::clamp(kDigits - 1 - power, 0, kMostDecimals));
    if (text.contains(QLatin1Char('.'))) {
        while (text.endsWith(QLatin1Char('0'))) text.chop(1);
        if (text.endsWith(QLatin1Char('.'))) text.chop(1);
        return text;
    }
    for (qsizetype at = text.size() - 3; at > 0 && text[at - 1].isDigit(); at -= 3) text.insert(at, QLatin1Char(','));
    return text;
}

double millimetres(std::int64_t nanometres) { return static_cast<double>(nanometres) / 1e6; }
double inches(std::int64_t nanometres) { return millimetres(nanometres) / 25.4; }

struct Write {
    QString operator()(const std::string& text) const { return QString::fromStdString(text); }
    QString operator()(std::int64_t count) const { return QString::number(count); }
    QString operator()(const base::Real& real) const {
        return real.decimals < 0 ? threeDigits(real.number) : QString::number(real.number, 'f', real.decimals);
    }
    QString operator()(const base::Quantity& quantity) const {
        switch (quantity.unit) {
        case base::Quantity::Unit::Nanometres:
            return QCoreApplication::translate("Words", "%1 mm (%2 in)")
                .arg(decimals(millimetres(quantity.amount)), decimals(inches(quantity.amount)));
        case base::Quantity::Unit::Milliseconds:
            return QCoreApplication::translate("Words", "%1 s").arg(exactly(quantity.amount, 3));
        case base::Quantity::Unit::Micros: return exactly(quantity.amount, 6);
        case base::Quantity::Unit::Ppm:
            return QCoreApplication::translate("Words", "%1 %").arg(exactly(quantity.amount, 4));
        case base::Quantity::Unit::Days: break;
        }
        const std::chrono::sys_days day{std::chrono::days(quantity.amount)};
        return QString::fromStdString(units::Date::fromDays(day).iso());
    }
    QString operator()(const base::Extent& extent) const {
        return QCoreApplication::translate("Words", "%1 x %2 mm (%3 x %4 in)")
            .arg(decimals(millimetres(extent.width)), decimals(millimetres(extent.height)),
                 decimals(inches(extent.width)), decimals(inches(extent.height)));
    }
    QString operator()(const std::vector<base::Message>& messages) const {
        QStringList list;
        for (const auto& message : messages) list << sentence(message);
        return list.join(QCoreApplication::translate("Words", ", ", "between the parts of a list"));
    }
};

/// The first whole number, for the plural.
const std::int64_t* countIn(const std::vector<base::Value>& values) {
    for (const auto& value : values)
        if (const auto* count = std::get_if<std::int64_t>(&value.held)) return count;
    return nullptr;
}

/// All places at once, so that a value may hold a percent sign.
QString filled(const QString& sentence, const std::vector<base::Value>& values) {
    QString out;
    for (qsizetype i = 0; i < sentence.size(); ++i) {
        const auto place = static_cast<std::size_t>(i + 1 < sentence.size() ? sentence[i + 1].digitValue() : -1);
        if (sentence[i] == QLatin1Char('%') && place >= 1 && place <= values.size()) {
            out += std::visit(Write{}, values[place - 1].held);
            ++i;
        } else {
            out += sentence[i];
        }
    }
    return out;
}

} // namespace

Source sourceOf(const base::MessageId& id) {
    switch (id.room) {
    case Room::Base: return either<base::Fault, base::Note>(id);
    case Room::Units: return either<units::Fault, units::Note>(id);
    case Room::Artwork: return either<artwork::Fault, artwork::Note>(id);
    case Room::Layout: return fault<layout::Fault>(id);
    case Room::Kinds: return fault<catalogue::MaterialKind>(id);
    case Room::Fields: return either<catalogue::fields::Fault, catalogue::fields::Note>(id);
    case Room::Terms: return fault<catalogue::fields::Term>(id);
    case Room::Causes: return sourceOf(catalogue::fields::Cause{static_cast<catalogue::fields::Term>(id.number)});
    case Room::Needs: return either<needs::Fault, needs::Note>(id);
    case Room::Planning: return either<planning::Fault, planning::Note>(id);
    case Room::Costing: return fault<costing::Fault>(id);
    case Room::Pricing: return either<pricing::Fault, pricing::Note>(id);
    case Room::Supply: return either<supply::Fault, supply::Note>(id);
    case Room::Scheduling: return fault<scheduling::Fault>(id);
    case Room::Db: return either<db::Fault, db::Note>(id);
    case Room::None:
    case Room::App: break;
    }
    return {};
}

const char* contextOf(Room room) {
    switch (room) {
    case Room::Base: return "Base";
    case Room::Units: return "Units";
    case Room::Kinds: return "Names";
    case Room::Fields: return "Fields";
    case Room::Terms:
    case Room::Causes: return "Terms";
    case Room::Artwork: return "Artwork";
    case Room::Layout: return "Layout";
    case Room::Needs: return "Needs";
    case Room::Planning: return "Planning";
    case Room::Costing: return "Costing";
    case Room::Pricing: return "Pricing";
    case Room::Supply: return "Supply";
    case Room::Scheduling: return "Scheduling";
    case Room::Db: return "Db";
    case Room::None:
    case Room::App: break;
    }
    return "Words";
}

QString sentence(const base::Message& message) {
    if (message.id == kWorded) return std::visit(Write{}, message.values.front().held);
    if (message.id == kTold)
        return told(std::get<std::string>(message.values.front().held).c_str(),
                    {message.values.begin() + 1, message.values.end()});
    const Source source = sourceOf(message.id);
    if (source.text == nullptr) return {};
    const auto* context = contextOf(message.id.room);
    const auto* count = countIn(message.values); // a name that stands alone is of one thing
    return filled(source.one == nullptr ? QCoreApplication::translate(context, source.text)
                                        : counted(context, source.text, source.one, count == nullptr ? 1 : *count),
                  message.values);
}

QString sentence(const base::Error& error) { return sentence(error.message()); }

QString sentence(const base::Value& value) { return std::visit(Write{}, value.held); }

QString counted(const char* context, const char* many, const char* one, std::int64_t count) {
    const auto n = static_cast<int>(std::clamp<std::int64_t>(count, 0, 1'000'000'000));
    const QString words = QCoreApplication::translate(context, many, nullptr, n);
    const auto english = [n](const char* source) {
        return QString::fromUtf8(source).replace(QLatin1String("%n"), QString::number(n));
    };
    return n == 1 && words == english(many) ? english(one) : words;
}

QString told(const char* source, const std::vector<base::Value>& values) {
    return filled(QCoreApplication::translate("App", source), values);
}

std::string text(const base::Error& error) { return sentence(error).toStdString(); }
std::string text(const base::Message& message) { return sentence(message).toStdString(); }

base::Error makeError(base::Code code, std::string subject, const QString& sentence) {
    return {.code = code,
            .subject = std::move(subject),
            .fault = kWorded,
            .values = {base::asValue(sentence.toStdString())}};
}

} // namespace sp::words

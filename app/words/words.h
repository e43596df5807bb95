// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/result.h"

#include <QCoreApplication>
#include <QString>

#include <cstdint>
#include <string>
#include <utility>
#include <vector>

/// The words of what core and db have to say, one sentence for each fault and note of their lists, in the language of
/// the translators that are installed. English is in the sources; <room>_words.cpp holds a room's sentences.
namespace sp::words {

/// The sentence of an error or of a message, its values in their places. Counts are written plainly, lengths in
/// millimetres and inches, days as 2026-12-11.
QString sentence(const base::Error& error);
QString sentence(const base::Message& message);
/// A value as it stands in a sentence.
QString sentence(const base::Value& value);

/// The same in UTF-8, for verbs.
std::string text(const base::Error& error);
std::string text(const base::Message& message);

/// What app says by itself; the first value is the English.
inline constexpr base::MessageId kTold{base::Room::App, true, 1, "Told"};

/// A sentence of app's own, marked by QT_TRANSLATE_NOOP("App", …), with its values in their places.
QString told(const char* source, const std::vector<base::Value>& values);

/// A message of app's own, marked likewise; it is put into words when it is read.
template<class... Values>
base::Message say(const char* source, const Values&... values) {
    return {kTold, {base::asValue(source), base::asValue(values)...}};
}

/// A text about a number of things, marked by QT_TRANSLATE_N_NOOP(context, many): each language has as many forms as it
/// needs, English `one` for 1. %n becomes the number; %1 and so on are left to the caller.
QString counted(const char* context, const char* many, const char* one, std::int64_t count);

/// An error that app itself meets: its sentence is made where it is met, in the language of that moment.
base::Error makeError(base::Code code, std::string subject, const QString& sentence);
inline tl::unexpected<base::Error> fail(base::Code code, std::string subject, const QString& sentence) {
    return tl::unexpected<base::Error>(makeError(code, std::move(subject), sentence));
}
template<class... Values>
base::Error makeError(base::Code code, std::string subject, const char* source, const Values&... values) {
    return makeError(code, std::move(subject), told(source, {base::asValue(values)...}));
}
template<class... Values>
tl::unexpected<base::Error> fail(base::Code code, std::string subject, const char* source, const Values&... values) {
    return tl::unexpected<base::Error>(makeError(code, std::move(subject), source, values...));
}

} // namespace sp::words

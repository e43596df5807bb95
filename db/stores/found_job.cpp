// SPDX-License-Identifier: MIT
#include "db/stores/found_job.h"

#include "core/units/text.h"

#include <QString>
#include <fmt/format.h>

#include <algorithm>
#include <set>

namespace sp::db::stores {

namespace {

/// Around an amount; nobody types it.
constexpr char kSumMark = '\x1f';
constexpr std::size_t kShort = 3; ///< letters from which a word is looked for anywhere in another
constexpr std::size_t kMostNeedles = 12;

bool isPlain(std::string_view text) {
    return std::ranges::all_of(text, [](char c) { return static_cast<unsigned char>(c) < 0x80; });
}

std::string folded(std::string_view text) {
    if (isPlain(text)) {
        std::string lower(text);
        for (auto& c : lower)
            if (c >= 'A' && c <= 'Z') c = static_cast<char>(c - 'A' + 'a');
        return lower;
    }
    QString bare;
    for (const QChar c : QString::fromUtf8(text.data(), static_cast<qsizetype>(text.size()))
                             .toCaseFolded()
                             .normalized(QString::NormalizationForm_KD))
        if (c.category() != QChar::Mark_NonSpacing) bare += c.unicode() >= 0x80 && c.isPunct() ? QChar(u' ') : c;
    return bare.toStdString();
}

bool isSpace(char c) { return c == ' ' || (c >= '\t' && c <= '\r') || c == kSumMark; }
bool isDigit(char c) { return c >= '0' && c <= '9'; }
/// Of a letter beyond ASCII all bytes count as letters.
bool isLetterOrDigit(char c) { return isDigit(c) || (c >= 'a' && c <= 'z') || static_cast<unsigned char>(c) >= 0x80; }

/// The longest runs of what `belongs`.
template<class Belongs, class Take>
void runs(std::string_view text, Belongs belongs, Take take) {
    for (std::size_t at = 0; at < text.size();) {
        std::size_t end = at;
        while (end < text.size() && belongs(text[end])) ++end;
        if (end > at) take(text.substr(at, end - at));
        at = end + 1;
    }
}

void addWord(std::set<std::string, std::less<>>& words, std::string_view word) {
    words.emplace(word);
    const auto addPart = [&](std::string_view part) {
        if (part.size() < word.size()) words.emplace(part);
        if (!std::ranges::all_of(part, isDigit) || part.front() != '0') return;
        const auto first = part.find_first_not_of('0');
        if (first != part.npos) words.emplace(part.substr(first));
    };
    runs(word, isLetterOrDigit, addPart);
}

/// A telephone number is typed with and without its spaces.
void addDigits(std::set<std::string, std::less<>>& words, std::string_view line) {
    if (line.find_first_not_of("0123456789 +-()/.") != line.npos) return;
    std::string digits;
    std::ranges::copy_if(line, std::back_inserter(digits), isDigit);
    if (digits.size() > kShort) words.insert(std::move(digits));
}

std::size_t lettersIn(std::string_view text) {
    return static_cast<std::size_t>(
        std::ranges::count_if(text, [](char c) { return (static_cast<unsigned char>(c) & 0xC0) != 0x80; }));
}

/// Its digits in capitals, which no folded text has: a word of digits is not found within it.
std::string sumWord(std::string_view micros) {
    std::string word(1, kSumMark);
    for (const char digit : micros) word += static_cast<char>(digit - '0' + 'A');
    return word += kSumMark;
}

/// An amount of money, with a point or a comma before its decimals; nothing where the text is none.
std::optional<units::Money> sumIn(std::string_view text) {
    if (text.find_first_not_of("0123456789., ") != text.npos) return std::nullopt; // a number of a quote is a sum to it
    for (const char32_t mark : {U'.', U','}) {
        units::NumberStyle style;
        style.decimalMark = mark;
        style.groupMark = mark == U'.' ? U',' : U'.';
        // Any currency will do: what is asked is whether an amount is this one.
        if (const auto sum = units::parseMoney(text, units::Currency{}, style); sum && !sum->isZero()) return *sum;
    }
    return std::nullopt;
}

/// Its parts as long as each other, so that the tenth comes after the ninth.
std::string numberKey(std::string_view number) {
    std::string key;
    runs(number, isDigit, [&](std::string_view part) { key += fmt::format("{:0>9}-", part); });
    return key;
}

} // namespace

std::string wordsOf(std::string_view texts, std::string_view sums) {
    std::set<std::string, std::less<>> words;
    const auto text = folded(texts);
    runs(
        text, [](char c) { return c != '\n'; }, [&](std::string_view line) { addDigits(words, line); });
    runs(
        text, [](char c) { return !isSpace(c); }, [&](std::string_view word) { addWord(words, word); });
    runs(
        sums, [](char c) { return c != '\n'; },
        [&](std::string_view sum) {
            if (sum != "0") words.insert(sumWord(sum.starts_with('-') ? sum.substr(1) : sum));
        });
    std::string all;
    for (const auto& word : words) all += "  " + word;
    return all + "  ";
}

Needles needlesOf(std::string_view text) {
    Needles needles;
    runs(
        folded(text), [](char c) { return !isSpace(c); },
        [&](std::string_view word) {
            if (needles.words.size() == kMostNeedles) return;
            needles.words.push_back(lettersIn(word) < kShort ? fmt::format("  {}", word) : std::string(word));
        });
    if (const auto sum = sumIn(text)) needles.sum = sumWord(std::to_string(sum->micros()));
    needles.isMarksAlone = !text.empty() && needles.words.empty() && needles.sum.empty();
    return needles;
}

bool isIn(const Needles& needles, std::string_view words) {
    if (needles.isMarksAlone) return false;
    const auto holds = [&](const std::string& needle) { return words.find(needle) != words.npos; };
    return std::ranges::all_of(needles.words, holds) || (!needles.sum.empty() && holds(needles.sum));
}

FoundJob foundJob(const ListedJob& job) {
    const auto& summary = job.summary;
    auto sums = job.sums;
    for (const auto& sum : {summary.total, summary.total ? std::optional(*summary.total - summary.paid) : std::nullopt})
        if (sum) sums += fmt::format("\n{}", sum->micros());
    FoundJob found{.id = summary.id,
                   .place = job.place,
                   .words = wordsOf(job.texts, sums),
                   .number = numberKey(summary.number),
                   .customer = folded(summary.customer),
                   .what = folded(summary.firstTitle),
                   .stage = summary.stage,
                   .day = summary.quotedOn,
                   .lastDay = summary.lastDay,
                   .total = summary.total,
                   .left = summary.left()};
    return found;
}

bool isWanted(const FoundJob& job, const Wanted& wanted, const Needles& needles, units::Date today) {
    if (wanted.stage && job.stage != *wanted.stage) return false;
    if (wanted.isLapsed && !catalogue::isLapsed(job.stage, job.lastDay, today)) return false;
    if (wanted.isUnpaid && !job.left) return false;
    if ((wanted.from && job.day < *wanted.from) || (wanted.to && job.day > *wanted.to)) return false;
    return isIn(needles, job.words);
}

bool isShownBefore(const FoundJob& a, const FoundJob& b, const Wanted& wanted) {
    const auto before = [&](const auto& key) {
        const auto of = [&](const FoundJob& job) { return key(job); };
        if (of(a) == of(b)) return a.place > b.place;
        return wanted.isAscending ? of(a) < of(b) : of(b) < of(a);
    };
    switch (wanted.by) {
    case FoundBy::Started: return wanted.isAscending ? a.place < b.place : a.place > b.place;
    case FoundBy::Number: return before([](const FoundJob& job) { return job.number; });
    case FoundBy::Day: return before([](const FoundJob& job) { return job.day; });
    case FoundBy::Customer: return before([](const FoundJob& job) { return job.customer; });
    case FoundBy::What: return before([](const FoundJob& job) { return job.what; });
    case FoundBy::Stage: return before([](const FoundJob& job) { return job.stage; });
    case FoundBy::Total: return before([](const FoundJob& job) { return job.total; });
    case FoundBy::Left: return before([](const FoundJob& job) { return job.left; });
    }
    return false;
}

} // namespace sp::db::stores

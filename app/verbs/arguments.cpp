// SPDX-License-Identifier: MIT
#include "app/verbs/arguments.h"

#include "app/words/words.h"

#include <algorithm>

namespace sp::verbs {

namespace {

using base::Code;

bool contains(const std::vector<std::string_view>& names, std::string_view name) {
    return std::find(names.begin(), names.end(), name) != names.end();
}

} // namespace

base::Result<Arguments> Arguments::parse(std::span<const std::string> words, const ArgumentRules& rules) {
    Arguments out;
    bool onlyWords = false;
    for (std::size_t i = 0; i < words.size(); ++i) {
        const std::string& word = words[i];
        if (onlyWords || word.size() < 3 || word.compare(0, 2, "--") != 0) {
            if (word == "--" && !onlyWords)
                onlyWords = true;
            else
                out.m_words.push_back(word);
            continue;
        }
        const auto equals = word.find('=');
        const std::string name = word.substr(0, equals);
        std::string value;
        if (contains(rules.values, name)) {
            if (equals != std::string::npos)
                value = word.substr(equals + 1);
            else if (i + 1 < words.size())
                value = words[++i];
            if (value.empty())
                return words::fail(Code::Invalid, name, QT_TRANSLATE_NOOP("App", "%1 needs a value after it."), name);
        } else if (!contains(rules.flags, name) || equals != std::string::npos) {
            return words::fail(Code::Invalid, name, QT_TRANSLATE_NOOP("App", "%1 is not an option of this verb."),
                               word);
        }
        if (!out.m_options.emplace(name, value).second)
            return words::fail(Code::Invalid, name, QT_TRANSLATE_NOOP("App", "%1 is given twice."), name);
    }
    const std::size_t wanted = !rules.insteadOfWords.empty() && out.has(rules.insteadOfWords) ? 0 : rules.words;
    const bool isMore = rules.mayHaveMoreWords && out.m_words.size() > wanted;
    if (out.m_words.size() != wanted && !isMore)
        return words::fail(Code::Invalid, "words",
                           wanted == 1
                               ? QT_TRANSLATE_NOOP("App", "This verb takes %1 word besides its options, not %2.")
                               : QT_TRANSLATE_NOOP("App", "This verb takes %1 words besides its options, not %2."),
                           wanted, out.m_words.size());
    for (const auto option : rules.required)
        if (!out.has(option))
            return words::fail(Code::Invalid, std::string(option), QT_TRANSLATE_NOOP("App", "%1 is missing."), option);
    return out;
}

std::optional<std::string> Arguments::value(std::string_view option) const {
    const auto found = m_options.find(std::string(option));
    if (found == m_options.end()) return std::nullopt;
    return found->second;
}

} // namespace sp::verbs

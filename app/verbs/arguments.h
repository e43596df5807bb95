// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/result.h"

#include <map>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace sp::verbs {

/// What a verb may be called with.
struct ArgumentRules {
    std::vector<std::string_view> values;   ///< options that take a value: "--book"
    std::vector<std::string_view> flags;    ///< options that take none: "--json"
    std::size_t words = 0;                  ///< how many bare words it takes, exactly unless there may be more
    std::vector<std::string_view> required; ///< those of `values` that must be given
    std::string_view insteadOfWords = {};   ///< one of `values` that stands for all bare words
    bool mayHaveMoreWords = false;
};

/// The words after the verb, sorted. "--key value" and "--key=value" both work; what comes after "--" is a bare word.
class Arguments {
  public:
    /// Errors: Invalid for an option the rules do not know, one given twice, a value missing, a required option not
    /// given, too many or too few bare words.
    static base::Result<Arguments> parse(std::span<const std::string> words, const ArgumentRules& rules);

    bool has(std::string_view option) const { return m_options.count(std::string(option)) > 0; }
    std::optional<std::string> value(std::string_view option) const;
    /// Of an option that the rules require.
    const std::string& of(std::string_view option) const { return m_options.at(std::string(option)); }
    const std::vector<std::string>& words() const { return m_words; }

  private:
    std::map<std::string, std::string> m_options;
    std::vector<std::string> m_words;
};

} // namespace sp::verbs

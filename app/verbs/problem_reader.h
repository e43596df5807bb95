// SPDX-License-Identifier: MIT
#pragma once

#include "app/verbs/json_words.h"
#include "app/verbs/size_words.h"
#include "app/words/words.h"
#include "core/base/overflow.h"
#include "core/base/result.h"
#include "core/units/count.h"

#include <string>
#include <string_view>
#include <vector>

namespace sp::verbs {

/// Thrown by the readers below and caught by readProblem, nowhere else.
struct ProblemError {
    base::Error error;
};

/// Reads one JSON object of a problem file: each key once, unknown keys refused by name in done(). Numbers may be
/// JSON numbers or decimal strings; both are read exactly by their decimal text.
class ProblemObject {
  public:
    /// `path` says where the object stands ("packs[2]"); the JSON outlives the reader. Throws ProblemError unless an object.
    ProblemObject(const Json& json, std::string path);

    bool has(std::string_view key) const;
    std::string text(std::string_view key);
    units::Count count(std::string_view key);
    units::Money money(std::string_view key);
    /// A share of one: "0.1" is 10 %.
    units::Rate rate(std::string_view key);
    units::Length length(std::string_view key);
    Size size(std::string_view key);
    bool flag(std::string_view key);
    ProblemObject object(std::string_view key);
    /// Every element must be an object.
    std::vector<ProblemObject> list(std::string_view key);
    /// Every entry of an object of shares of one, by name: {"M":"0.02"}.
    std::vector<std::pair<std::string, units::Rate>> shares(std::string_view key);
    /// Refuses the first key that none of the calls above asked for.
    void done() const;

    std::string place(std::string_view key) const;

  private:
    const Json& take(std::string_view key);

    const Json* m_json;
    std::string m_path;
    std::vector<std::string> m_taken;
};

/// The exact value of a decimal text ("-12.5", "1e-3") times 10^decimals. Throws ProblemError naming `place` when it is no
/// number, has more decimals, or is beyond plus or minus 10^15 before scaling (10^18 after).
std::int64_t exactDecimal(std::string_view text, int decimals, const std::string& place);

/// Parses the text of a problem file and hands its object to `read`, turning every ProblemError into an error.
/// Errors: TooLarge beyond 16 MB; Invalid when it is not JSON; whatever `read` refuses.
template<class Read>
auto readProblem(std::string_view text, Read read) -> base::Result<decltype(read(std::declval<ProblemObject&>()))>;

/// The JSON of a problem text; throws ProblemError.
Json parsedProblem(std::string_view text);

template<class Read>
auto readProblem(std::string_view text, Read read) -> base::Result<decltype(read(std::declval<ProblemObject&>()))> {
    try {
        const Json json = parsedProblem(text);
        ProblemObject object(json, "");
        auto value = read(object);
        object.done();
        return value;
    } catch (const ProblemError& refusal) { return base::fail(refusal.error); } catch (const base::Overflow&) {
        return words::fail(
            base::Code::TooLarge, "problem",
            QT_TRANSLATE_NOOP("App",
                              "The file’s figures come to more than the program works with: make them smaller."));
    }
}

} // namespace sp::verbs

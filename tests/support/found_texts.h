// SPDX-License-Identifier: MIT
#pragma once

#include <QByteArray>
#include <QString>

#include <set>
#include <string>
#include <tuple>
#include <vector>

namespace sp::test {

/// A text as Qt's lupdate found it in the sources of app.
struct FoundText {
    std::string context;
    std::string source;
    std::string comment;
    bool isNumerus = false; ///< a translation has as many forms as its language has for numbers
};

/// All of them; none where the tree was configured without lupdate.
std::vector<FoundText> foundTexts();
/// What lupdate said meanwhile, line by line.
std::vector<std::string> saidByLupdate();

/// Of texts that were asked for (context, source, comment), those of ours that lupdate did not find: no translation
/// would ever hold them.
std::vector<std::string> notFound(const std::set<std::tuple<std::string, std::string, std::string>>& asked);

} // namespace sp::test

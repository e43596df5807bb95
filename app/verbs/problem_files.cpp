// SPDX-License-Identifier: MIT
#include "app/async/solver.h"
#include "app/verbs/problem_verbs.h"
#include "app/verbs/verb_kit.h"
#include "app/words/words.h"

#include <fstream>
#include <iostream>
#include <sstream>

namespace sp::verbs {

namespace {

base::Result<std::string> problemText(const Arguments& arguments) { return textOf(arguments.of("--problem")); }

/// The answers of these verbs are for programs; with and without --json they are the same.
Outcome written(const base::Result<Json>& answer) {
    if (!answer) return refused(answer.error());
    const std::string text = answer->dump(2, ' ', false, Json::error_handler_t::replace) + "\n";
    if (const auto why = answer->find("impossible"); why != answer->end())
        return {1, text, line(QT_TRANSLATE_NOOP("App", "There is no such purchase: %1."), why->get<std::string>())};
    return {0, text, {}};
}

} // namespace

base::Result<std::string> textOf(const std::string& file) {
    std::ostringstream text;
    if (file == "-") {
        text << std::cin.rdbuf();
        return text.str();
    }
    std::ifstream in(file, std::ios::binary);
    if (in) text << in.rdbuf();
    if (in) return text.str();
    return words::fail(base::Code::NotFound, file, QT_TRANSLATE_NOOP("App", "%1 cannot be read: check its name."),
                       file);
}

Outcome yieldVerb(const Arguments& arguments, const Helpers&) {
    const auto text = problemText(arguments);
    return text ? written(yieldAnswer(*text)) : refused(text.error());
}

Outcome buyVerb(const Arguments& arguments, const Helpers&) {
    const auto text = problemText(arguments);
    if (!text) return refused(text.error());
    constexpr int kSolverSeconds = 10;
    const auto solver = [](const std::string& programme) {
        return async::solved(programme, kSolverSeconds, [] { return false; });
    };
    return written(buyAnswer(*text, supply::PlanEffort::kUsual, solver));
}

Outcome packVerb(const Arguments& arguments, const Helpers&) {
    const auto text = problemText(arguments);
    return text ? written(packAnswer(*text)) : refused(text.error());
}

Outcome schemaVerb(const Arguments& arguments, const Helpers&) {
    const auto schema = schemaOf(arguments.words().front());
    return schema ? Outcome{0, *schema, {}} : refused(schema.error());
}

} // namespace sp::verbs

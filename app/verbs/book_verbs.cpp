// SPDX-License-Identifier: MIT
#include "app/demo/demo_orders.h"
#include "app/verbs/verb_kit.h"
#include "app/words/names.h"
#include "app/words/words.h"

#include <fmt/format.h>

namespace sp::verbs {

Outcome demoVerb(const Arguments& arguments, const Helpers& helpers) {
    const std::string& file = arguments.words().front();
    if (!file.ends_with(".jobbook"))
        return refused(words::makeError(
            base::Code::Invalid, file,
            QT_TRANSLATE_NOOP("App", "A job book's name ends in .jobbook; make “%1.jobbook” instead."), file));
    const auto book = demo::createBusyDemo(file, helpers.environment);
    if (!book) return refused(book.error());
    return answer(arguments, {{"book", file}, {"demo", true}},
                  line(QT_TRANSLATE_NOOP("App", "%1: a demo job book; every name and price in it is invented."), file));
}

Outcome designsVerb(const Arguments& arguments, const Helpers& helpers) {
    auto book = openBook(arguments, helpers);
    if (!book) return refused(book.error());
    const auto designs = (*book)->designs();
    if (!designs) return refused(designs.error());
    Json list = Json::array();
    std::string text;
    for (const auto& design : *designs) {
        std::int64_t stones = 0;
        for (const auto& stone : design.stones) stones += stone.count.value();
        list.push_back({{"name", design.name},
                        {"width_mm", decimal(design.width, units::LengthUnit::Millimetre)},
                        {"height_mm", decimal(design.height, units::LengthUnit::Millimetre)},
                        {"stones", stones},
                        {"colours", design.stones.size()},
                        {"templates_on_wall", design.templatesOnWall}});
        text += line(QT_TRANSLATE_NOOP("App", "%1 (stones: %2)"), design.name, stones);
    }
    return answer(arguments, {{"designs", std::move(list)}}, text);
}

Outcome materialsVerb(const Arguments& arguments, const Helpers& helpers) {
    auto book = openBook(arguments, helpers);
    if (!book) return refused(book.error());
    const auto materials = (*book)->materials();
    if (!materials) return refused(materials.error());
    Json list = Json::array();
    std::string text;
    for (const auto& material : *materials) {
        list.push_back({{"name", material.name}, {"kind", catalogue::nameOf(material.kind)}});
        text += fmt::format("{} ({})\n", material.name, words::nameOf(material.kind).toStdString());
    }
    return answer(arguments, {{"materials", std::move(list)}}, text);
}

Outcome quotesVerb(const Arguments& arguments, const Helpers& helpers) {
    const auto of = openQuotes(arguments, helpers);
    if (!of) return refused(of.error());
    return answerQuotes(arguments, of->quotes, of->shop, QT_TRANSLATE_NOOP("App", "No quotes yet."));
}

Outcome careCardsVerb(const Arguments& arguments, const Helpers& helpers) {
    auto book = openBook(arguments, helpers);
    if (!book) return refused(book.error());
    const auto& path = arguments.of("--pdf");
    if (const auto written = helpers.writeCareCards(**book, path, ifThere(arguments)); !written)
        return notWritten(written.error(), path);
    return answer(arguments, {{"pdf", path}}, line(QT_TRANSLATE_NOOP("App", "The care cards are in %1."), path));
}

Outcome checkVerb(const Arguments& arguments, const Helpers&) {
    const std::string& file = arguments.words().front();
    const auto report = db::Book::check(file);
    if (!report) return refused(report.error());
    Json damage = Json::array();
    for (const auto& found : report->damage) damage.push_back(words::text(found));
    const Json json{{"book", file},
                    {"sound", report->damage.empty()},
                    {"damage", damage},
                    {"quotes", report->quotes},
                    {"sealed_quotes", report->sealedQuotes},
                    {"designs", report->designs},
                    {"materials", report->materials}};
    if (report->damage.empty())
        return answer(arguments, json,
                      line(QT_TRANSLATE_NOOP("App", "%1 is sound. Designs: %2; materials: %3; quotes: %4, given and "
                                                    "unchanged: %5."),
                           file, report->designs, report->materials, report->quotes, report->sealedQuotes));
    auto outcome = answer(arguments, json, {});
    outcome.exit = 1;
    for (const auto& found : report->damage) outcome.err += words::text(found) + "\n";
    return outcome;
}

} // namespace sp::verbs

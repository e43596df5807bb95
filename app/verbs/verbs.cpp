// SPDX-License-Identifier: MIT
#include "app/verbs/verbs.h"

#include "app/verbs/verb_kit.h"
#include "app/words/quote_sheet.h"
#include "app/words/sheet_words.h"
#include "app/words/words.h"
#include "db/messages.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <chrono>
#include <exception>

namespace sp::verbs {

namespace {

/// How long opening a book may take to seal what quotes of older versions came to.
constexpr std::chrono::seconds kSealingBudget{2};

struct Verb {
    std::string_view name;
    std::string_view usage; ///< what follows the name
    ArgumentRules rules;
    Outcome (*run)(const Arguments&, const Helpers&);
    std::string_view otherUsage = {}; ///< a second way to call it, where the words have `otherOption`
    std::string_view otherOption = {};
    ArgumentRules otherRules = {};

    bool isOtherUse(std::span<const std::string> words) const {
        return !otherOption.empty() && std::any_of(words.begin(), words.end(), [this](const std::string& word) {
            return std::string_view(word).substr(0, word.find('=')) == otherOption;
        });
    }
};

constexpr std::string_view kWholeOrder = "--book B --order FILE.json|- [--json]";
const ArgumentRules& ofWholeOrder() {
    static const ArgumentRules rules{{"--book", "--order"}, {"--json"}, 0, {"--book", "--order"}};
    return rules;
}

const std::vector<Verb>& verbs() {
    static const std::vector<Verb> all{
        {"demo", "OUT.jobbook [--json]", {{}, {"--json"}, 1, {}}, demoVerb},
        {"designs", "--book B [--json]", {{"--book"}, {"--json"}, 0, {"--book"}}, designsVerb},
        {"materials", "--book B [--json]", {{"--book"}, {"--json"}, 0, {"--book"}}, materialsVerb},
        {"price",
         "--book B --design NAME --quantity N [--on MATERIAL] [--wall-templates] [--due DATE] [--customer NAME] "
         "[--json]",
         {{"--book", "--design", "--quantity", "--on", "--due", "--customer"},
          {"--wall-templates", "--json"},
          0,
          {"--book", "--design", "--quantity"}},
         priceVerb,
         kWholeOrder,
         "--order",
         ofWholeOrder()},
        {"quote",
         "--book B --design NAME --quantity N [--on MATERIAL] [--wall-templates] [--due DATE] [--customer NAME] "
         "[--json]",
         {{"--book", "--design", "--quantity", "--on", "--due", "--customer"},
          {"--wall-templates", "--json"},
          0,
          {"--book", "--design", "--quantity"}},
         quoteVerb,
         kWholeOrder,
         "--order",
         ofWholeOrder()},
        {"promise",
         "--book B --design NAME --quantity N [--on MATERIAL] [--wall-templates] [--due DATE] [--customer NAME] "
         "[--json]",
         {{"--book", "--design", "--quantity", "--on", "--due", "--customer"},
          {"--wall-templates", "--json"},
          0,
          {"--book", "--design", "--quantity"}},
         promiseVerb,
         kWholeOrder,
         "--order",
         ofWholeOrder()},
        {"quotes", "--book B [--json]", {{"--book"}, {"--json"}, 0, {"--book"}}, quotesVerb},
        {"find",
         "TEXT --book B [--stage S] [--lapsed] [--unpaid] [--from DAY] [--to DAY] [--limit N] [--json]",
         {{"--book", "--stage", "--from", "--to", "--limit"}, {"--lapsed", "--unpaid", "--json"}, 1, {"--book"}},
         findVerb},
        {"repeat",
         "--book B --quote N [--give] [--json]",
         {{"--book", "--quote"}, {"--give", "--json"}, 0, {"--book", "--quote"}},
         repeatVerb},
        {"revise",
         "--book B --quote N [--order FILE.json|-] [--give] [--json]",
         {{"--book", "--quote", "--order"}, {"--give", "--json"}, 0, {"--book", "--quote"}},
         reviseVerb},
        {"agree",
         "--book B --quote N [--choice K] [--json]",
         {{"--book", "--quote", "--choice"}, {"--json"}, 0, {"--book", "--quote"}},
         agreeVerb},
        {"start",
         "--book B --quote N [--json]",
         {{"--book", "--quote"}, {"--json"}, 0, {"--book", "--quote"}},
         startVerb},
        {"ready",
         "--book B --quote N [--json]",
         {{"--book", "--quote"}, {"--json"}, 0, {"--book", "--quote"}},
         readyVerb},
        {"collect",
         "--book B --quote N [--json]",
         {{"--book", "--quote"}, {"--json"}, 0, {"--book", "--quote"}},
         collectVerb},
        {"letgo",
         "--book B --quote N [--json]",
         {{"--book", "--quote"}, {"--json"}, 0, {"--book", "--quote"}},
         letGoVerb},
        {"pay",
         "--book B --quote N --amount M [--kind K] [--day D] [--note T] [--change|--credit] [--json]",
         {{"--book", "--quote", "--amount", "--kind", "--day", "--note"},
          {"--change", "--credit", "--json"},
          0,
          {"--book", "--quote", "--amount"}},
         payVerb},
        {"refund",
         "--book B --quote N --amount M [--kind K] [--day D] [--note T] [--json]",
         {{"--book", "--quote", "--amount", "--kind", "--day", "--note"},
          {"--json"},
          0,
          {"--book", "--quote", "--amount"}},
         refundVerb},
        {"owed", "--book B [--json]", {{"--book"}, {"--json"}, 0, {"--book"}}, owedVerb},
        {"bench", "--book B [--json]", {{"--book"}, {"--json"}, 0, {"--book"}}, benchVerb},
        {"shelf", "--book B [--json]", {{"--book"}, {"--json"}, 0, {"--book"}}, shelfVerb},
        {"count-in",
         "--book B --material NAME --counted N [--reason TEXT] [--json]",
         {{"--book", "--material", "--counted", "--reason"}, {"--json"}, 0, {"--book", "--material", "--counted"}},
         countInVerb,
         "--book B --material NAME --on-scale G --tare G --sample N --sample-weight G [--scale-step G] [--reason TEXT] "
         "[--json]",
         "--on-scale",
         {{"--book", "--material", "--on-scale", "--tare", "--sample", "--sample-weight", "--scale-step", "--reason"},
          {"--json"},
          0,
          {"--book", "--material", "--on-scale", "--tare", "--sample", "--sample-weight"}}},
        {"reorder",
         "--book B [--days N] [--service 90|95|98|99] [--order-cost M --holding P] [--json]",
         {{"--book", "--days", "--service", "--order-cost", "--holding"}, {"--json"}, 0, {"--book"}},
         reorderVerb},
        {"today", "--book B [--json]", {{"--book"}, {"--json"}, 0, {"--book"}}, todayVerb},
        {"invoice",
         "--book B --quote N [--json]",
         {{"--book", "--quote"}, {"--json"}, 0, {"--book", "--quote"}},
         invoiceVerb},
        {"receipt",
         "--book B --quote N [--json]",
         {{"--book", "--quote"}, {"--json"}, 0, {"--book", "--quote"}},
         receiptVerb},
        {"credit",
         "--book B --invoice N [--amount M] [--json]",
         {{"--book", "--invoice", "--amount"}, {"--json"}, 0, {"--book", "--invoice"}},
         creditVerb},
        {"papers",
         "--book B --quote N [--json]",
         {{"--book", "--quote"}, {"--json"}, 0, {"--book", "--quote"}},
         papersVerb},
        {"figures",
         "--book B --from DAY --to DAY [--by month|week|design|customer|quantity|blank] [--json]",
         {{"--book", "--from", "--to", "--by"}, {"--json"}, 0, {"--book", "--from", "--to"}},
         figuresVerb},
        {"tax",
         "--book B --from DAY --to DAY [--json]",
         {{"--book", "--from", "--to"}, {"--json"}, 0, {"--book", "--from", "--to"}},
         taxVerb},
        {"sheet",
         "--book B --quote N [--kind quote|invoice|receipt|credit|bench] --pdf OUT.pdf [--force] [--json]",
         {{"--book", "--quote", "--kind", "--pdf"}, {"--force", "--json"}, 0, {"--book", "--quote", "--pdf"}},
         sheetVerb},
        {"carecards",
         "--book B --pdf OUT.pdf [--force] [--json]",
         {{"--book", "--pdf"}, {"--force", "--json"}, 0, {"--book", "--pdf"}},
         careCardsVerb},
        {"pricelist",
         "FILE --book B --supplier NAME [--make-missing] [--take] [--json]",
         {{"--book", "--supplier"}, {"--make-missing", "--take", "--json"}, 1, {"--book", "--supplier"}},
         priceListVerb},
        {"fit",
         "--sheet 9x12in --piece 3.5x2.75in [--margin L] [--gap L] [--one-way] [--json]",
         {{"--sheet", "--piece", "--margin", "--gap"}, {"--one-way", "--json"}, 0, {"--sheet", "--piece"}},
         fitVerb},
        {"count",
         "FILE... [--scale MM-PER-UNIT|DPI] [--hole-allowance L] [--json]",
         {{"--scale", "--hole-allowance"}, {"--json"}, 1, {}, {}, true},
         countVerb},
        {"estimate",
         "FILE [--scale MM-PER-UNIT|DPI] | --text T --font F --height L, then --stone SS10 --pitch L "
         "--style outline|fill|both [--outline-stone SS6] [--outline-pitch L] [--inset L] "
         "[--by-colour] [--colours red=SS16@4.5mm,white=none] [--lines] [--json]",
         {{"--text", "--font", "--height", "--stone", "--pitch", "--style", "--scale", "--inset", "--outline-stone",
           "--outline-pitch", "--colours"},
          {"--by-colour", "--lines", "--json"},
          1,
          {"--stone", "--pitch", "--style"},
          "--text"},
         estimateVerb},
        {"yield", "--problem FILE [--json]", {{"--problem"}, {"--json"}, 0, {"--problem"}}, yieldVerb},
        {"buy", "--problem FILE [--json]", {{"--problem"}, {"--json"}, 0, {"--problem"}}, buyVerb},
        {"pack", "--problem FILE [--json]", {{"--problem"}, {"--json"}, 0, {"--problem"}}, packVerb},
        {"schema", "yield|buy|pack", {{}, {"--json"}, 1, {}}, schemaVerb},
        {"customers",
         "--book B [--find TEXT | --customer NAME [--dir OUT] | --import FILE [--yes] | --export FILE.csv|.vcf [--v3] "
         "[--force] | "
         "--erase NAME [--yes]] [--json]",
         {{"--book", "--find", "--customer", "--dir", "--import", "--export", "--erase"},
          {"--yes", "--v3", "--force", "--json"},
          0,
          {"--book"}},
         customersVerb},
        {"export",
         "--book B --dir OUT [--json]",
         {{"--book", "--dir"}, {"--json"}, 0, {"--book", "--dir"}},
         exportVerb},
        {"check", "BOOK [--json]", {{}, {"--json"}, 1, {}}, checkVerb},
    };
    return all;
}

const Verb* find(std::string_view name) {
    const auto found =
        std::find_if(verbs().begin(), verbs().end(), [&](const Verb& verb) { return verb.name == name; });
    return found == verbs().end() ? nullptr : &*found;
}

} // namespace

bool isVerb(std::string_view word) { return find(word) != nullptr; }

bool needsFonts(std::span<const std::string> words) {
    if (words.empty()) return false;
    if (words.front() == "sheet" || words.front() == "carecards") return true;
    const auto has = [&](const std::string& option) {
        return std::any_of(words.begin(), words.end(),
                           [&](const std::string& word) { return word == option || word.starts_with(option + "="); });
    };
    return (words.front() == "estimate" && has("--text")) || (words.front() == "customers" && has("--dir"));
}

std::string help() {
    std::string text =
        line(QT_TRANSLATE_NOOP("App", "Stonepenny: what will this order cost, and what shall the customer pay?")) +
        "\n  " + line(QT_TRANSLATE_NOOP("App", "%1   opens the app on a job book"), "stonepenny [BOOK.jobbook]") +
        "  stonepenny --version\n";
    for (const auto& verb : verbs()) {
        text += fmt::format("  stonepenny {} {}\n", verb.name, verb.usage);
        if (!verb.otherUsage.empty()) text += fmt::format("  stonepenny {} {}\n", verb.name, verb.otherUsage);
    }
    return text + "\n" +
           line(QT_TRANSLATE_NOOP("App",
                                  "Dates are YYYY-MM-DD. --json answers in JSON. Exit 0: done, 1: not possible, 2: "
                                  "wrong use."));
}

Outcome run(std::span<const std::string> words, const Helpers& helpers) {
    const Verb* verb = words.empty() ? nullptr : find(words.front());
    if (!verb) return {2, {}, line(QT_TRANSLATE_NOOP("App", "Say what to do; stonepenny --help lists the verbs."))};
    const bool isOther = verb->isOtherUse(words);
    const auto arguments = Arguments::parse(words.subspan(1), isOther ? verb->otherRules : verb->rules);
    if (!arguments)
        return {2,
                {},
                line(QT_TRANSLATE_NOOP("App", "%1 Use: %2"), words::text(arguments.error()),
                     fmt::format("stonepenny {} {}", verb->name, isOther ? verb->otherUsage : verb->usage))};
    try {
        return verb->run(*arguments, helpers);
    } catch (const std::exception& problem) {
        return {1, {}, line(QT_TRANSLATE_NOOP("App", "%1 could not be done: %2."), verb->name, problem.what())};
    }
}

Outcome refused(const base::Error& error) { return {1, {}, words::text(error) + "\n"}; }

Outcome notWritten(const base::Error& error, const std::string& path) {
    if (error.fault != idOf(db::Fault::FileExists)) return refused(error);
    return refused(words::makeError(
        base::Code::Conflict, path,
        QT_TRANSLATE_NOOP("App", "There is a file “%1” already; choose another name, or add --force to replace it."),
        path));
}

db::IfThere ifThere(const Arguments& arguments) {
    return arguments.has("--force") ? db::IfThere::Replace : db::IfThere::Refuse;
}

Outcome answer(const Arguments& arguments, const Json& json, const std::string& text) {
    return {0, arguments.has("--json") ? json.dump(2, ' ', false, Json::error_handler_t::replace) + "\n" : text, {}};
}

base::Result<std::unique_ptr<db::Book>> openBook(const Arguments& arguments, const Helpers& helpers) {
    auto book = db::Book::open(arguments.of("--book"), helpers.environment);
    if (book) words::sealOldResults(**book, kSealingBudget, words::SheetWords());
    return book;
}

base::Result<Days> daysOf(const Arguments& arguments) {
    const auto from = units::Date::parse(*arguments.value("--from"));
    if (!from) return base::fail(from.error());
    const auto to = units::Date::parse(*arguments.value("--to"));
    if (!to) return base::fail(to.error());
    if (*to < *from)
        return words::fail(base::Code::Invalid, "--to",
                           QT_TRANSLATE_NOOP("App", "--to, %1, is before --from, %2; turn the two round."), to->iso(),
                           from->iso());
    return Days{*from, *to};
}

base::Result<QuotesOfBook> openQuotes(const Arguments& arguments, const Helpers& helpers) {
    constexpr std::int64_t kAll = 1'000'000;
    auto book = openBook(arguments, helpers);
    if (!book) return base::fail(book.error());
    auto shop = (*book)->shop();
    if (!shop) return base::fail(shop.error());
    auto quotes = (*book)->quotes({}, kAll);
    if (!quotes) return base::fail(quotes.error());
    return QuotesOfBook{std::move(*book), std::move(*shop), std::move(*quotes)};
}

} // namespace sp::verbs

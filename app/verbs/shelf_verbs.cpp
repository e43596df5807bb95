// SPDX-License-Identifier: MIT
#include "app/verbs/verb_kit.h"
#include "app/words/shelf_words.h"
#include "core/supply/weighed_count.h"
#include "core/units/text.h"
#include "db/book/shelf_state.h"

#include <fmt/format.h>

#include <algorithm>

namespace sp::verbs {

namespace {

/// The material of that name, letter case of ASCII ignored as everywhere in a book.
base::Result<catalogue::Material> materialNamed(db::Book& book, const std::string& name) {
    const auto materials = book.materials();
    if (!materials) return base::fail(materials.error());
    const auto lower = [](std::string text) {
        std::ranges::transform(text, text.begin(),
                               [](char c) { return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c; });
        return text;
    };
    const auto found = std::ranges::find_if(
        *materials, [&](const catalogue::Material& one) { return lower(one.name) == lower(name); });
    if (found != materials->end()) return *found;
    return words::fail(base::Code::NotFound, "--material",
                       QT_TRANSLATE_NOOP("App", "There is no material “%1” in this book; “materials” lists them."),
                       name);
}

/// What was counted, by number or by weight.
base::Result<supply::WeighedCount> countOf(const Arguments& arguments) {
    if (!arguments.value("--on-scale")) {
        const auto counted = units::parseCount(arguments.of("--counted"));
        if (!counted) return base::fail(counted.error());
        return supply::WeighedCount{counted->value(), counted->value(), counted->value()};
    }
    supply::Weighing weighing;
    const auto sample = units::parseCount(arguments.of("--sample"));
    if (!sample) return base::fail(sample.error());
    weighing.sample = sample->value();
    const std::pair<const char*, std::int64_t*> weights[] = {{"--sample-weight", &weighing.sampleWeight},
                                                             {"--tare", &weighing.tare},
                                                             {"--on-scale", &weighing.onScale},
                                                             {"--scale-step", &weighing.step}};
    for (const auto& [option, weight] : weights) {
        const auto typed = arguments.value(option);
        if (!typed) continue;
        const auto grams = supply::parseGrams(*typed);
        if (!grams) return base::fail(grams.error());
        *weight = *grams;
    }
    return supply::countByWeight(weighing);
}

} // namespace

std::string notReckonedLines(const std::vector<std::string>& numbers) {
    std::string text;
    for (const auto& number : numbers)
        text += line(QT_TRANSLATE_NOOP("App", "What %1 takes is not known; nothing of it is promised."), number);
    return text;
}

Outcome shelfVerb(const Arguments& arguments, const Helpers& helpers) {
    auto book = openBook(arguments, helpers);
    if (!book) return refused(book.error());
    const auto materials = (*book)->materials();
    if (!materials) return refused(materials.error());
    db::BenchReader reader;
    const auto shelf = db::readShelf(**book, reader);
    if (!shelf) return refused(shelf.error());
    Json list = Json::array();
    std::string text;
    for (const auto& material : *materials) {
        const auto there = shelf->of(material.id);
        list.push_back({{"name", material.name},
                        {"kind", catalogue::nameOf(material.kind)},
                        {"on_hand", there.onHand},
                        {"promised", there.promised},
                        {"free", there.free()}});
        text += fmt::format("{}: {}\n", material.name, words::shelfSentence(there, [](std::int64_t count) {
                                                           return QString::number(count);
                                                       }).toStdString());
    }
    if (text.empty()) text = line(QT_TRANSLATE_NOOP("App", "No materials yet."));
    text += notReckonedLines(shelf->notReckoned);
    return answer(arguments, {{"materials", std::move(list)}, {"not_reckoned", shelf->notReckoned}}, text);
}

Outcome countInVerb(const Arguments& arguments, const Helpers& helpers) {
    const auto counted = countOf(arguments);
    if (!counted) return refused(counted.error());
    auto book = openBook(arguments, helpers);
    if (!book) return refused(book.error());
    const auto material = materialNamed(**book, arguments.of("--material"));
    if (!material) return refused(material.error());
    const auto booked =
        (*book)->countShelf(material->id, counted->count, arguments.value("--reason").value_or(std::string()));
    if (!booked) return refused(booked.error());
    auto text =
        *booked == 0
            ? line(QT_TRANSLATE_NOOP("App", "%1: %2 on the shelf, as the book has it."), material->name, counted->count)
            : line(QT_TRANSLATE_NOOP("App", "%1: %2 on the shelf now; the difference of %3 is booked as counted."),
                   material->name, counted->count, *booked);
    if (counted->least != counted->most)
        text += line(QT_TRANSLATE_NOOP("App", "By the steps of the scale there may be %1 to %2."), counted->least,
                     counted->most);
    return answer(arguments,
                  {{"material", material->name},
                   {"on_hand", counted->count},
                   {"least", counted->least},
                   {"most", counted->most},
                   {"difference", *booked}},
                  text);
}

} // namespace sp::verbs

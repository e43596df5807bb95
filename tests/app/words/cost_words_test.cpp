// SPDX-License-Identifier: MIT
#include "app/words/cost_words.h"

#include "core/costing/cost_line.h"
#include "tests/support/cost_cases.h"
#include "tests/support/test_data.h"

#include <gtest/gtest.h>

#include <cstdlib>
#include <fstream>
#include <functional>
#include <sstream>

namespace sp::words {

namespace {

void write(std::ostream& out, const CostTree& tree, int depth) {
    out << std::string(static_cast<std::size_t>(depth) * 2, ' ') << tree.label << ": " << tree.amount.micros() << ": "
        << tree.rule << '\n';
    for (const auto& child : tree.children) write(out, child, depth + 1);
}

std::string textOf(const sample::CostCase& made, const units::NumberStyle& style) {
    layout::FitMemo fits;
    const auto sheet = costing::costLine(made.line, made.book, fits, made.share);
    if (!sheet) return describe(sheet.error());
    std::ostringstream out;
    out << "== " << made.name << '\n';
    write(out, explain(made.line, made.book, *sheet, style), 0);
    out << "set-up " << sheet->setUp.micros() << ", floor " << sheet->outOfPocket.micros() << ", labour "
        << sheet->labour.micros() << ", cycles " << sheet->places[0].press.cycles << "\n";
    return out.str();
}

} // namespace

/// STONEPENNY_WRITE_GOLDEN=1 rewrites the file.
TEST(CostWords, everyShapeOfEveryPartReadsAsItDid) {
    std::string text;
    for (const auto& made : sample::costCases()) text += textOf(made, {});
    text += textOf(sample::costCases().front(), {U',', U'.'});
    const auto path = test::dataFile("costing/cost_sheets.txt");
    if (std::getenv("STONEPENNY_WRITE_GOLDEN") != nullptr) {
        ASSERT_TRUE(std::ofstream(path) << text);
        return;
    }
    std::ostringstream kept;
    kept << std::ifstream(path).rdbuf();
    EXPECT_EQ(text, kept.str());
}

/// For one piece and for many, in every shape: no label and no rule is empty.
TEST(CostWords, everyNodeStatesItsRule) {
    for (auto made : sample::costCases())
        for (const std::int64_t pieces : {1, 40}) {
            made.line.quantity = units::Count::of(pieces);
            made.line.sizes.clear();
            layout::FitMemo fits;
            const auto sheet = costing::costLine(made.line, made.book, fits, made.share);
            ASSERT_TRUE(sheet.has_value()) << made.name;
            const std::function<void(const CostTree&)> check = [&](const CostTree& node) {
                EXPECT_FALSE(node.label.empty()) << made.name;
                EXPECT_FALSE(node.rule.empty()) << made.name << ": " << node.label;
                EXPECT_EQ(sheet->nodes[node.node].part, node.part);
                for (const auto& child : node.children) check(child);
            };
            check(explain(made.line, made.book, *sheet));
        }
}

/// Before rules 3 the card fee was a part of the cost.
TEST(CostWords, sayTheCardFeeThatWasACost) {
    for (const auto& made : sample::costCases()) {
        if (made.rules != 2) continue;
        layout::FitMemo fits;
        const auto sheet = costing::costLine(made.line, made.book, fits, made.share, made.rules);
        ASSERT_TRUE(sheet.has_value()) << made.name;
        const auto tree = explain(made.line, made.book, *sheet);
        EXPECT_EQ(tree.children.back().label, "Card fee") << made.name;
        EXPECT_EQ(tree.children.back().rule, "(all the above + share of 0.30 fixed) ÷ (1 − 2.9 %), less all the above")
            << made.name;
    }
}

} // namespace sp::words

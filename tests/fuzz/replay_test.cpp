// SPDX-License-Identifier: MIT
//
// Replays a corpus through a fuzz entry as a plain test, so that what the fuzzer once found stays found. The
// entry breaks a promise (and ends the program) when something is wrong.
#include <gtest/gtest.h>

#include <algorithm>
#include <cstdint>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <vector>

extern const char* const kFuzzCorpus; // each entry's own folder, from CMake
extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size);

namespace {

TEST(Corpus, replaysWithoutABrokenPromise) {
    std::vector<std::filesystem::path> files;
    for (const auto& entry : std::filesystem::directory_iterator(kFuzzCorpus)) files.push_back(entry.path());
    std::sort(files.begin(), files.end());
    ASSERT_FALSE(files.empty()) << kFuzzCorpus;
    for (const auto& file : files) {
        SCOPED_TRACE(file.filename().string());
        std::ifstream in(file, std::ios::binary);
        ASSERT_TRUE(in.good());
        const std::vector<char> bytes{std::istreambuf_iterator<char>(in), {}};
        const std::vector<std::uint8_t> data(bytes.begin(), bytes.end());
        EXPECT_EQ(LLVMFuzzerTestOneInput(data.data(), data.size()), 0);
        // Cut short at every place as well: half a character, half a word, half a bracket.
        for (std::size_t size = 0; size < std::min<std::size_t>(data.size(), 400); ++size)
            EXPECT_EQ(LLVMFuzzerTestOneInput(data.data(), size), 0);
    }
}

} // namespace

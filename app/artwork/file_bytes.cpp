// SPDX-License-Identifier: MIT
#include "app/artwork/file_bytes.h"

#include "app/words/words.h"

#include <cstdint>
#include <filesystem>
#include <fstream>
#include <iterator>

namespace sp::artwork {

namespace {

constexpr std::uintmax_t kMaxFile = 64ULL * 1024 * 1024;

} // namespace

base::Result<std::string> bytesOfFile(const std::string& file) {
    std::error_code trouble;
    const auto size = std::filesystem::file_size(file, trouble);
    if (trouble)
        return words::fail(base::Code::Missing, file,
                           QT_TRANSLATE_NOOP("App", "“%1” cannot be read; check its name and folder."), file);
    if (size > kMaxFile)
        return words::fail(
            base::Code::TooLarge, file,
            QT_TRANSLATE_NOOP("App", "“%1” is larger than 64 MB; simplify the drawing and save it again."), file);
    std::ifstream in(file, std::ios::binary);
    std::string bytes((std::istreambuf_iterator<char>(in)), std::istreambuf_iterator<char>());
    if (in.bad() || bytes.size() != size)
        return words::fail(base::Code::Failed, file,
                           QT_TRANSLATE_NOOP("App", "“%1” could not be read to its end; try again."), file);
    return bytes;
}

} // namespace sp::artwork

// SPDX-License-Identifier: MIT
#include "db/book/header.h"

#include "db/migrations/migrations.h"
#include "db/refusal.h"

#include <fmt/format.h>

#include <array>
#include <cstdint>
#include <fstream>
#include <string_view>

namespace sp::db {

using base::Code;

namespace {

constexpr std::string_view kMagic{"SQLite format 3\0", 16};
constexpr std::size_t kHeaderSize = 100;
using Bytes = std::array<char, kHeaderSize>;

std::uint32_t bigEndian(const Bytes& bytes, std::size_t at) {
    std::uint32_t value = 0;
    for (std::size_t i = 0; i < 4; ++i) value = value << 8 | static_cast<std::uint8_t>(bytes[at + i]);
    return value;
}

} // namespace

Header readHeader(const std::filesystem::path& file) {
    const std::string name = file.filename().string();
    std::ifstream in(file, std::ios::binary);
    if (!in) refuse(Code::ReadOnly, file.string(), fmt::format("“{}” may not be read; ask its owner for leave.", name));
    Bytes bytes{};
    in.read(bytes.data(), static_cast<std::streamsize>(bytes.size()));
    const auto size = static_cast<std::size_t>(in.gcount());
    if (size == 0)
        refuse(Code::Foreign, file.string(), fmt::format("“{}” is empty; choose a job book or a backup of it.", name));
    const std::string_view held(bytes.data(), size);
    if (!held.starts_with(kMagic.substr(0, std::min(size, kMagic.size()))))
        refuse(Code::Foreign, file.string(), fmt::format("“{}” is not a job book; choose another file.", name));
    if (size < kHeaderSize)
        refuse(Code::Damaged, file.string(),
               fmt::format("“{}” is damaged, most of it is missing; open a backup.", name));
    if (bigEndian(bytes, 68) != static_cast<std::uint32_t>(migrations::kApplicationId))
        refuse(Code::Foreign, file.string(),
               fmt::format("“{}” is a database of another program, not a job book; choose another file.", name));
    const auto version = static_cast<std::int32_t>(bigEndian(bytes, 60));
    const auto newest = static_cast<std::int32_t>(migrations::all().size());
    if (version > newest)
        refuse(Code::TooNew, file.string(),
               fmt::format("“{}” was written by a later Stonepenny (book version {}, this one knows {}); "
                           "update Stonepenny to open it.",
                           name, version, newest));
    if (version < 1)
        refuse(Code::Damaged, file.string(), fmt::format("“{}” is damaged at its beginning; open a backup.", name));
    // 65536 does not fit two bytes and is written as 1. While a journal is there, the size is not settled yet.
    std::error_code ignored;
    const std::uint64_t shortPage = bigEndian(bytes, 16) >> 16;
    const std::uint64_t whole = (shortPage == 1 ? 65'536 : shortPage) * bigEndian(bytes, 28);
    if (!std::filesystem::exists(std::filesystem::path(file.string() + "-journal"), ignored) &&
        std::filesystem::file_size(file, ignored) < whole)
        refuse(Code::Damaged, file.string(),
               fmt::format("“{}” is damaged, the end of it is missing; open a backup.", name));
    return {.version = version, .isWal = bytes[18] == 2 || bytes[19] == 2};
}

} // namespace sp::db

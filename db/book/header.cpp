// SPDX-License-Identifier: MIT
#include "db/book/header.h"

#include "db/db_error.h"
#include "db/migrations/migrations.h"

#include <array>
#include <cstdint>
#include <fstream>
#include <string_view>

namespace sp::db {

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
    const auto refuseAs = [&](Fault fault) { throwError(fault, file.string(), name); };
    if (!in) refuseAs(Fault::NotReadable);
    Bytes bytes{};
    in.read(bytes.data(), static_cast<std::streamsize>(bytes.size()));
    const auto size = static_cast<std::size_t>(in.gcount());
    if (size == 0) refuseAs(Fault::EmptyFile);
    const std::string_view held(bytes.data(), size);
    if (!held.starts_with(kMagic.substr(0, std::min(size, kMagic.size())))) refuseAs(Fault::NoJobBook);
    if (size < kHeaderSize) refuseAs(Fault::MostIsMissing);
    if (bigEndian(bytes, 68) != static_cast<std::uint32_t>(migrations::kApplicationId)) refuseAs(Fault::OtherDatabase);
    // fileformat2.html, 1.3: versions of writing, reading and the schema that SQLite knows.
    if (bytes[18] > 2 || bytes[19] > 2 || bigEndian(bytes, 44) > 4) refuseAs(Fault::FormatUnknown);
    const auto version = static_cast<std::int32_t>(bigEndian(bytes, 60));
    const auto newest = static_cast<std::int32_t>(migrations::all().size());
    if (version > newest) throwError(Fault::BookTooNew, file.string(), name, version, newest);
    if (version < 1) refuseAs(Fault::BeginningDamaged);
    // 65536 does not fit two bytes and is written as 1. While a journal is there, the size is not settled yet.
    std::error_code ignored;
    const std::uint64_t shortPage = bigEndian(bytes, 16) >> 16;
    const std::uint64_t whole = (shortPage == 1 ? 65'536 : shortPage) * bigEndian(bytes, 28);
    if (!std::filesystem::exists(std::filesystem::path(file.string() + "-journal"), ignored) &&
        std::filesystem::file_size(file, ignored) < whole)
        refuseAs(Fault::EndIsMissing);
    return {.version = version, .isWal = bytes[18] == 2 || bytes[19] == 2};
}

} // namespace sp::db

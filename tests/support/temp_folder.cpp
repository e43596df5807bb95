// SPDX-License-Identifier: MIT
#include "tests/support/temp_folder.h"

#include "core/base/ensure.h"

#include <cstdlib>
#include <fstream>
#include <iterator>
#include <string>

namespace sp::test {

namespace fs = std::filesystem;

TempFolder::TempFolder() {
    std::string name = (fs::canonical(fs::temp_directory_path()) / "stonepenny-XXXXXX").string();
    base::ensure(::mkdtemp(name.data()) != nullptr, "tests can make folders");
    m_path = name;
}

TempFolder::~TempFolder() {
    std::error_code ignored;
    fs::remove_all(m_path, ignored);
}

std::string bytesOf(const fs::path& file) {
    std::ifstream in(file, std::ios::binary);
    return {std::istreambuf_iterator<char>(in), std::istreambuf_iterator<char>()};
}

void writeBytes(const fs::path& file, std::string_view bytes) {
    std::ofstream out(file, std::ios::binary | std::ios::trunc);
    out.write(bytes.data(), static_cast<std::streamsize>(bytes.size()));
    base::ensure(out.good(), "tests can write files");
}

} // namespace sp::test

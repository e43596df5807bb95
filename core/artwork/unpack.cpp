// SPDX-License-Identifier: MIT
#include "core/artwork/unpack.h"

#include "core/artwork/messages.h"

#include <zlib.h>

#include <algorithm>
#include <array>
#include <limits>

namespace sp::artwork {

namespace {

constexpr int kGzipAlone = 15 + 16; // the largest window, and gzip's own header
constexpr std::size_t kMillion = 1'000'000;

/// zlib's stream, ended whatever happens.
class Inflater {
  public:
    explicit Inflater(std::string_view bytes) {
        // zlib takes what it only reads by a pointer to what may change.
        m_stream.next_in = reinterpret_cast<Bytef*>(const_cast<char*>(bytes.data())); // NOLINT
        m_stream.avail_in = static_cast<uInt>(std::min<std::size_t>(bytes.size(), std::numeric_limits<uInt>::max()));
        m_isReady = inflateInit2(&m_stream, kGzipAlone) == Z_OK;
    }
    ~Inflater() {
        if (m_isReady) inflateEnd(&m_stream);
    }
    Inflater(const Inflater&) = delete;
    Inflater& operator=(const Inflater&) = delete;

    /// Adds the next bytes to `out`. Z_OK while there may be more, Z_STREAM_END after the last.
    int next(std::string& out) {
        if (!m_isReady) return Z_MEM_ERROR;
        m_stream.next_out = m_part.data();
        m_stream.avail_out = static_cast<uInt>(m_part.size());
        const int state = inflate(&m_stream, Z_NO_FLUSH);
        out.append(reinterpret_cast<const char*>(m_part.data()), m_part.size() - m_stream.avail_out);
        return state;
    }

  private:
    z_stream m_stream{};
    std::array<Bytef, 64 * 1024> m_part{};
    bool m_isReady = false;
};

} // namespace

bool isGzip(std::string_view bytes) { return bytes.starts_with("\x1f\x8b"); }

base::Result<std::string> unpackGzip(std::string_view bytes, std::size_t most, std::string_view fileName) {
    std::string out;
    Inflater inflater(bytes);
    for (;;) {
        const int state = inflater.next(out);
        if (out.size() > most)
            return base::fail(Fault::UnpacksTooLarge, std::string(fileName), fileName, most / kMillion);
        if (state == Z_STREAM_END) return out;
        if (state != Z_OK) return base::fail(Fault::GarbledPack, std::string(fileName), fileName); // also at its end
    }
}

} // namespace sp::artwork

// SPDX-License-Identifier: MIT
#pragma once

#include "core/layout/five_block.h"

#include <cstdint>
#include <unordered_map>
#include <utility>
#include <vector>

namespace sp::layout {

/// Layouts that no pinwheel gives: rectangles and Ls, each cut in every way that leaves two Ls (a rectangle
/// is an L whose arm is as wide as it is). Asked for a target, it gives up a cut as soon as the bounds of the
/// two parts do not reach it, so a target near the bound is settled quickly either way. Source: L. Lins, S.
/// Lins, R. Morabito, JORS 54 (2003) 777-789 [from memory] for the nine cuts, Birgin, Lobato and Morabito,
/// JORS 61 (2010) 306-320 for joining it to the five-block layouts; the target search is our own. At most
/// kMaxShapes shapes are remembered (about 60 MB) and `work` counts tried cuts; when either is used up the
/// answer is no. Grid (at most 255 sums), five-block layouts and work must outlive this.
class LShapes {
  public:
    static constexpr int kMaxSums = 255;
    static constexpr std::size_t kMaxShapes = 700'000;

    LShapes(const Grid& grid, FiveBlock& five, Work& work);

    /// Whether sum `width` x sum `height` was found to hold `target` pieces.
    bool reaches(int width, int height, int target);
    /// Lays the most that was found into `frame`.
    void place(int width, int height, const Frame& frame, std::vector<Spot>& spots);

  private:
    /// Indices of sums; the arm is the part above armY, no wider than armX. A rectangle has armX == width and
    /// armY == height. Kept with (width, armX) >= (height, armY), axes exchanged if need be.
    struct Shape {
        std::uint8_t width = 0, height = 0, armX = 0, armY = 0;
        bool isRectangle() const { return armX == width && armY == height; }
        std::uint32_t key() const {
            return static_cast<std::uint32_t>(width) << 24 | static_cast<std::uint32_t>(height) << 16 |
                   static_cast<std::uint32_t>(armX) << 8 | armY;
        }
    };
    /// As cut, before it is brought into the kept form: four indices in the whole's own axes.
    struct Raw {
        int width = 0, height = 0, armX = 0, armY = 0;
    };
    /// Two parts of a cut, as they are remembered; `exchanged` when that took an exchange of axes.
    struct Part {
        Shape shape;
        bool exchanged = false;
    };
    /// A part's corner in the whole and which way it grows from there.
    struct Corner {
        Tick x = 0, y = 0;
        bool leftwards = false, downwards = false;
    };
    /// Named by the way of the cut through the whole, whose missing corner is above right; see split().
    enum class Cut : std::uint8_t {
        None,
        Upright,
        Level,
        LeftThenUp,
        BottomThenRight,
        TopThenRight,
        CornerLeftDown,
        CornerLeftUp,
        CornerDownRight,
        CornerDownLeft,
        ZigZag,
        ZigZagLevel
    };
    struct Way {
        Cut cut = Cut::None;
        std::uint8_t a = 0, b = 0, c = 0;
    };
    struct Found {
        std::int32_t lower = 0; ///< pieces the cut below reaches, or the five-block layout when there is no cut
        std::int32_t upper = 0; ///< no cut reaches more
        Way way;
    };

    static Part keep(const Raw& raw);
    std::pair<Raw, Raw> split(const Shape& whole, const Way& way) const;
    std::pair<Corner, Corner> corners(const Shape& whole, const Way& way) const;
    Found* find(const Shape& shape);
    bool reaches(const Shape& shape, int target);
    bool cutL(const Shape& shape, int target);
    bool cutRectangle(const Shape& shape, int target);
    bool cutWith(const Shape& shape, int target, Cut cut, int a, int b = 0, int c = 0);
    bool share(const Shape& one, const Shape& two, int target);
    double area(const Raw& raw) const;
    int capByCover(const Shape& shape);
    void place(const Shape& shape, const Frame& frame, std::vector<Spot>& spots);

    const Grid& m_grid;
    FiveBlock& m_five;
    Work& m_work;
    double m_perArea;
    std::vector<double> m_lengths; ///< the grid's sums, for quick areas
    std::unordered_map<std::uint32_t, Found> m_found;
};

} // namespace sp::layout

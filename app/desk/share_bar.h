// SPDX-License-Identifier: MIT
#pragma once

#include <QWidget>

#include <cstdint>
#include <vector>

namespace sp::desk {

/// One part of a whole.
struct Share {
    QString label;
    std::int64_t amount = 0; ///< in any one unit; parts of zero or less are left out
    QString figure;          ///< as a screen reader and the tooltip say it ("1.94")
};

/// Parts of a whole side by side in steps of the jewel, widths in proportion. Labels stand under their parts, in
/// their order, moved aside where they are close and left out from the smallest part on where there is no room; the
/// tooltip and the accessible description say all of them.
class ShareBar : public QWidget {
    Q_OBJECT

  public:
    explicit ShareBar(QWidget* parent = nullptr);

    void setShares(std::vector<Share> shares);
    /// Default: yes.
    void setLabelled(bool labelled);

    QSize sizeHint() const override;
    QSize minimumSizeHint() const override;

  protected:
    void paintEvent(QPaintEvent* event) override;
    bool event(QEvent* event) override;

  private:
    /// The parts' left edges and widths in a bar of `width`; each at least 3 px wide.
    std::vector<QRectF> parts(double width) const;
    /// The labels shown and their left edges.
    std::vector<std::pair<double, QString>> labels(const std::vector<QRectF>& boxes) const;

    std::vector<Share> m_shares;
    bool m_labelled = true;
};

} // namespace sp::desk

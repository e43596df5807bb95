// SPDX-License-Identifier: MIT
#pragma once

#include "app/desk/flow_grid.h"
#include "db/book/customer_file.h"

#include <QWidget>

#include <vector>

namespace sp::customers {

/// The pictures kept with the designs of a customer's jobs, each over its design's name.
class CustomerPictures : public QWidget {
    Q_OBJECT

  public:
    explicit CustomerPictures(QWidget* parent = nullptr);

    /// How many there is room for.
    static constexpr std::int64_t kMost = 12;
    void show(const std::vector<db::DesignPicture>& pictures);

  private:
    void add(const db::DesignPicture& picture);

    desk::FlowGrid* m_grid;
};

} // namespace sp::customers

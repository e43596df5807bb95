// SPDX-License-Identifier: MIT
#pragma once

#include "core/catalogue/stone_colour.h"

#include <QPushButton>

#include <cstdint>

namespace sp::supplies {

/// Shows the colour that a stone is drawn in, by its stone and the nearest name. A press opens a picture of colours to
/// choose from, and from there the system's own chooser.
class ColourButton : public QPushButton {
    Q_OBJECT

  public:
    explicit ColourButton(QWidget* parent = nullptr);

    void setColour(std::uint32_t rgb);

  Q_SIGNALS:
    void chosen(quint32 rgb); ///< by a person

  protected:
    void changeEvent(QEvent* event) override;

  private:
    void openPicture();
    void openChooser();
    void dress();

    std::uint32_t m_rgb = 0;
};

} // namespace sp::supplies

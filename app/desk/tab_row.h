// SPDX-License-Identifier: MIT
#pragma once

#include <QHBoxLayout>
#include <QPushButton>
#include <QStringList>
#include <QWidget>

#include <vector>

namespace sp::desk {

/// A row of a few things of which one is looked at, with a cross that takes that one out. Arrow keys go along it. Names
/// that are too long for it are cut; read aloud and under the pointer they are whole.
class TabRow : public QWidget {
    Q_OBJECT

  public:
    /// Its tabs and its cross are called after it: "placesTab0", "placesRemove".
    explicit TabRow(QWidget* parent = nullptr);

    /// `current` is the number of the one looked at. The focus stays in the row if it was there. Where one of the names
    /// does not fit whole, `shorter` ones are shown if there are any.
    void setTabs(const QStringList& names, int current, const QStringList& shorter = {});
    /// What the cross does, "Take this place out"; empty: there is none.
    void setRemoval(const QString& words);
    /// Stands at the end of the row.
    void addAtEnd(QWidget* widget);

  Q_SIGNALS:
    void chosen(int tab);
    void removeAsked(int tab);

  protected:
    void resizeEvent(QResizeEvent* event) override;

  private:
    void cutNames();

    QStringList m_names;
    QStringList m_shorter; ///< as many, or none
    int m_current = 0;
    QHBoxLayout* m_row = nullptr;
    std::vector<QPushButton*> m_tabs;
    QPushButton* m_remove = nullptr;
};

} // namespace sp::desk

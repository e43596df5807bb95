// SPDX-License-Identifier: MIT
#pragma once

#include "app/desk/figures.h"
#include "app/desk/typed_field.h"

#include <QGridLayout>
#include <QWidget>

namespace sp::desk {

/// A label in plain words above a field, and under it one sentence while there is something to say. The label's
/// mnemonic ("&Pieces") jumps to the field, gives it its accessible name; the sentence is its accessible description
/// and takes no room when empty. The field's objectName is the caller's to set.
class FieldBox : public QWidget {
    Q_OBJECT

  public:
    /// Takes the field over. A TypedField's problem and echo show by themselves.
    FieldBox(const QString& label, QWidget* field, QWidget* parent = nullptr);

    QWidget* field() const { return m_field; }
    void setLabel(const QString& label);
    /// A standing remark for fields that say nothing of their own ("per month"); a problem or echo goes before it.
    void setRemark(const QString& sentence);
    QString note() const;

  private:
    void explain();

    TextLabel* m_label;
    QWidget* m_field;
    TextLabel* m_note;
    bool m_namesField = true; ///< not when the field came with a name of its own
    QString m_remark;
};

/// A box or button in a row of FieldBoxes: on the line of their fields, whatever stands under one of those.
class BesideFields : public QWidget {
    Q_OBJECT

  public:
    /// Takes the control over.
    explicit BesideFields(QWidget* control, QWidget* parent = nullptr);

  protected:
    void changeEvent(QEvent* event) override;

  private:
    void align();

    QWidget* m_control;
};

/// Puts a field into a grid, under its label; `name` is for tests. A remark as setRemark.
FieldBox* place(QGridLayout& grid, int row, int column, int span, const QString& label, QWidget* field,
                const char* name, const QString& remark = {});

} // namespace sp::desk

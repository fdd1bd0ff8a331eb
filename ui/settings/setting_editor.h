#pragma once

#include "core/model/setting_fields.h"

#include <QWidget>

namespace ui::settings {

/// Edits the value of one setting as text of the settings table. Saves nothing: says when there is something to save.
class SettingEditor : public QWidget {
    Q_OBJECT
public:
    using QWidget::QWidget;

    /// As text of the table; need not be right.
    virtual QString typed() const = 0;
    virtual void show(const QString& canonical) = 0;

signals:
    void typedAnew(); ///< not to be saved yet
    void done();      ///< Enter, a choice made, or the focus has left
};

/// The editor that fits the field's type. `spoken`: what a screen reader calls it.
SettingEditor* makeSettingEditor(const core::SettingField& field, const QString& spoken, QWidget* parent);

} // namespace ui::settings

#pragma once

#include "core/model/setting_fields.h"

#include <QFrame>

#include <functional>

class QLabel;
class QPushButton;

namespace ui::settings {

class SettingEditor;

/// One setting: its name in plain words, the editor, unit, what it changes, default, what may stand and whose figure
/// it is; and the way back to the default. What is refused stays typed, with the sentence beneath it.
class SettingLine : public QFrame {
    Q_OBJECT
public:
    /// Saves at once. Empty: done; else the sentence why not.
    using Save = std::function<QString(const QString& name, const QString& text)>;

    SettingLine(const core::SettingField& field, Save save, QWidget* parent);

    const core::SettingField& field() const { return m_field; }
    /// The book's value; what is typed and not saved stays.
    void show(const core::Settings& settings);
    void setWritable(bool writable);
    /// Whether every one of the words stands in its name, meaning, source or unit, without regard to case.
    bool matches(const QString& words) const;
    SettingEditor* editor() const { return m_editor; }
    QPushButton* backButton() const { return m_back; }
    QString problem() const; ///< as shown; empty: none

protected:
    void keyPressEvent(QKeyEvent* event) override;

private:
    void build();
    QString facts() const;
    void typedAnew();
    void done();
    void back();
    void take(const QString& text);
    void setProblem(const QString& sentence);
    bool pending() const { return m_typing; }

    const core::SettingField& m_field;
    Save m_save;
    QString m_name;
    QString m_default;
    QString m_now;
    bool m_typing = false; ///< something is typed that is not saved
    QLabel* m_mark;
    SettingEditor* m_editor;
    QLabel* m_beside;
    QPushButton* m_back;
    QLabel* m_problem;
};

} // namespace ui::settings

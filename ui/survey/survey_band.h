#pragma once

#include "core/model/words.h"
#include "ui/survey/arrange_tool.h"

#include <QFrame>

class QLabel;
class QLineEdit;
class QPushButton;
class QToolButton;

namespace ui::survey {

enum class ToolKind { Move, Turn, Arrange, Measure, Gate, Draw };

/// At the top of the plan while it is surveyed: what that is, the tools, and the name of the picked fixed thing.
class SurveyBand : public QFrame {
    Q_OBJECT
public:
    explicit SurveyBand(QWidget* plan);

    void setTool(ToolKind tool);
    /// nullopt: none is picked.
    void setThing(const std::optional<QString>& name, const QString& kindWord);
    QLineEdit* nameEdit() const { return m_name; }

signals:
    void toolAsked(ui::survey::ToolKind tool);
    void arrangeAsked(ui::survey::Arrangement way);
    void drawAsked(core::FixedKind kind);
    void named(const QString& name);
    void takeBackAsked();
    void doneAsked();

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;
    void showEvent(QShowEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void changeEvent(QEvent* event) override;

private:
    QToolButton* addButton(const QString& text, const QString& name, const QString& tip);
    void addTool(ToolKind tool, const QString& text, const QString& name, const QString& tip);
    void addArrange();
    void addDraw();
    void settle();

    QLabel* m_sentence;
    std::vector<QWidget*> m_row; ///< in the order they stand and are reached by Tab
    std::vector<std::pair<ToolKind, QToolButton*>> m_tools;
    QLabel* m_thing;
    QLineEdit* m_name;
    QToolButton* m_takeBack;
};

} // namespace ui::survey

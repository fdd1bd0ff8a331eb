#pragma once

#include <QWidget>

class QLabel;
class QPushButton;

namespace ui::start {

/// Lies over the drawing of a yard without hives: one sentence on what to do next, with its buttons.
class EmptyYard : public QWidget {
    Q_OBJECT
public:
    /// Keeps to the middle of `plan`.
    explicit EmptyYard(QWidget* plan);

    void setYard(const QString& name);
    QPushButton* rowButton() const { return m_row; }
    QPushButton* placeButton() const { return m_place; }

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;
    void showEvent(QShowEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;

private:
    void settle();

    QLabel* m_sentence;
    QPushButton* m_row;
    QPushButton* m_place;
};

} // namespace ui::start

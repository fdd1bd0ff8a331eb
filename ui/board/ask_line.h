#pragma once

#include <QFrame>

#include <functional>

class QLabel;
class QLineEdit;

namespace ui::board {

/// One question, answered by a line that is typed: Enter takes it, Escape leaves it. What is refused stays typed, with
/// what was expected beneath.
class AskLine : public QFrame {
    Q_OBJECT
public:
    /// What was wrong with what was typed; empty: it was taken.
    using Take = std::function<QString(const QString& typed)>;

    explicit AskLine(QWidget* parent = nullptr);
    void ask(const QString& question, const QString& start, const QString& hint, Take take);
    QLineEdit* line() const { return m_line; }
    QString problem() const;

signals:
    void closed();

protected:
    void keyPressEvent(QKeyEvent* event) override;

private:
    void accept();
    void leave();

    QLabel* m_question;
    QLineEdit* m_line;
    QLabel* m_hint;
    QString m_hintText;
    Take m_take;
};

} // namespace ui::board

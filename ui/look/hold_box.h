#pragma once

#include <QFrame>

class QLabel;

namespace ui::look {

/// A hold in words: barrier hatching and its letter at the left, title, reasons, and what would lift it.
class HoldBox : public QFrame {
    Q_OBJECT
public:
    HoldBox(const QString& letter, const QString& title, const QString& because, const QString& lift,
            QWidget* parent = nullptr);

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    QString m_letter;
};

} // namespace ui::look

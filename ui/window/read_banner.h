#pragma once

#include <QFrame>

class QLabel;
class QPushButton;

namespace ui::window {

/// Above a book that can only be read: why, and a button to try again. Hidden where there is no reason.
class ReadBanner : public QFrame {
    Q_OBJECT
public:
    explicit ReadBanner(QWidget* parent = nullptr);

    void show(const QString& why);
    QString shown() const;
    QPushButton* tryAgainButton() const { return m_again; }

signals:
    void tryAgainAsked();

private:
    QLabel* m_why;
    QPushButton* m_again;
};

} // namespace ui::window

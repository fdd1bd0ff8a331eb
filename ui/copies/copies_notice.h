#pragma once

#include <QFrame>

class QLabel;
class QPushButton;

namespace ui::copies {

/// Above the book: that a copy of it lies beside it which has more. Hidden where there is nothing to say.
class CopiesNotice : public QFrame {
    Q_OBJECT
public:
    explicit CopiesNotice(QWidget* parent = nullptr);

    void tell(const QString& sentence);
    QString said() const;
    QPushButton* lookButton() const { return m_look; }
    QPushButton* laterButton() const { return m_later; }

signals:
    void lookAsked();

private:
    QLabel* m_said;
    QPushButton* m_look;
    QPushButton* m_later;
};

} // namespace ui::copies

#pragma once

#include "ui/desk/desk.h"
#include "ui/health/sign_records.h"

#include <QFrame>

class QLabel;
class QPushButton;

namespace ui::look {
class WrappedLabel;
}

namespace ui::health {

/// Comes up as soon as a sign of foulbrood or a doubt is in the book, whichever way it came: what to do now, which
/// hives are held by it, which planned merge days it breaks. It bars nothing, and stays until it is put away.
class SignNotice : public QFrame {
    Q_OBJECT
public:
    SignNotice(desk::Desk& desk, Dialogs& dialogs, QWidget* parent = nullptr);

    QString text() const; ///< all that it says; empty: nothing
    QPushButton* healthButton() const { return m_health; }
    QPushButton* putAwayButton() const { return m_away; }
    void putAway();

signals:
    void healthAsked();

protected:
    void keyPressEvent(QKeyEvent* event) override;
    void paintEvent(QPaintEvent* event) override;

private:
    void build();
    void take(const core::edit::ChangeSet& change);
    void tell();
    void tell(const core::Snapshot& s, const std::vector<core::rules::Hold>& holds);
    void settle();

    desk::Desk& m_desk;
    Dialogs& m_dialogs;
    std::vector<SignRecord> m_records;
    QLabel* m_title;
    look::WrappedLabel* m_now;
    look::WrappedLabel* m_held;
    look::WrappedLabel* m_broken;
    QPushButton* m_health;
    QPushButton* m_away;
};

} // namespace ui::health

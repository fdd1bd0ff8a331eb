#pragma once

#include "core/exchange/kept_mapping.h"
#include "ui/desk/desk.h"
#include "ui/exchange/foreign_draft.h"

#include <QWidget>

class QComboBox;
class QLineEdit;
class QPushButton;

namespace ui::exchange {

/// Ways to read files that the book keeps: those for this header first; one is taken, kept under a name, or no longer
/// kept.
class KeptBar : public QWidget {
    Q_OBJECT
public:
    KeptBar(desk::Desk& desk, Dialogs& dialogs, ForeignDraft& draft, QWidget* parent);

    const std::vector<core::exchange::KeptMapping>& kept() const { return m_kept; }
    /// What the book has now.
    void read();
    void settle();
    QComboBox* choice() const { return m_choice; }
    QLineEdit* name() const { return m_name; }
    QPushButton* keepButton() const { return m_keep; }
    QPushButton* takeBackButton() const { return m_takeBack; }

signals:
    void changed(); ///< the draft is another
    void said(const QString& sentence, bool warns);

private:
    void take();
    void keep();
    void takeBack();

    desk::Desk& m_desk;
    Dialogs& m_dialogs;
    ForeignDraft& m_draft;
    std::vector<core::exchange::KeptMapping> m_kept;
    QComboBox* m_choice;
    QLineEdit* m_name;
    QPushButton* m_keep;
    QPushButton* m_takeBack;
};

} // namespace ui::exchange

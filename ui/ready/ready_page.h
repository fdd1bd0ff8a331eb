#pragma once

#include "core/report/sheet.h"
#include "ui/desk/while_shown.h"
#include "ui/ready/ready_rows.h"

#include <QWidget>

class QLabel;
class QPushButton;

namespace ui::board {
class BoardModel;
class RowList;
} // namespace ui::board

namespace ui::ready {

/// Get ready: what is missing for a good plan, gone through hive by hive; what comes down to one box some days ahead;
/// what to load.
class ReadyPage : public QWidget {
    Q_OBJECT
public:
    ReadyPage(desk::Desk& desk, Dialogs& dialogs, QWidget* parent = nullptr);

    board::RowList* list() const { return m_list; }
    const board::BoardModel& model() const;
    const std::vector<core::rules::ColonyMissing>& missing() const { return m_rows.missing; }
    QPushButton* walkButton() const { return m_walk; }
    QPushButton* sheetButton() const { return m_sheet; }
    QPushButton* kitButton() const { return m_kit; }
    QString summary() const;

signals:
    void visitAsked(core::ColonyId colony);
    void walkAsked();  ///< through those selected at the desk
    void sheetAsked(); ///< of the walk, on paper
    void kitAsked();

private:
    void build();
    QWidget* foot();
    QPushButton* button(const QString& text, const QString& tip, void (ReadyPage::*act)());
    void read();
    bool pressed(int key);
    void walk();
    void sheet() { emit sheetAsked(); }
    void kit() { emit kitAsked(); }

    desk::Desk& m_desk;
    ReadyRows m_rows;
    board::RowList* m_list;
    QLabel* m_where = nullptr;
    QPushButton* m_walk = nullptr;
    QPushButton* m_sheet = nullptr;
    QPushButton* m_kit = nullptr;
};

} // namespace ui::ready

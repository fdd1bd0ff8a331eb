#pragma once

#include "ui/desk/beside.h"
#include "ui/desk/while_shown.h"
#include "ui/form/form.h"
#include "ui/health/paper_rows.h"

#include <QWidget>

#include <functional>
#include <memory>

class QCheckBox;
class QComboBox;
class QPushButton;

namespace ui::board {
class RowList;
}

namespace ui::close {
class KeyFoot;
}

namespace ui::look {
class WrappedLabel;
}

namespace ui::health {

/// Samples on their way and their answers; the papers of laboratories and inspectors; holds that were lifted; who
/// stands near a foulbrood source; how kit that was kept apart ended. As the book stands today, whatever day the window
/// shows.
class SamplesPage : public QWidget {
    Q_OBJECT
public:
    enum class Shown { Samples, Results, Lifted, Near, Kit };
    using Make = std::function<std::unique_ptr<form::Form>()>;

    SamplesPage(desk::Desk& desk, Dialogs& dialogs, QWidget* parent = nullptr);

    board::RowList* list() const { return m_list; }
    QComboBox* what() const { return m_what; }
    QCheckBox* everywhere() const { return m_everywhere; }
    QPushButton* button(char key) const; ///< of the foot
    QString summary() const;             ///< what is awaited
    QString about() const;               ///< what the list is
    void show(Shown shown);
    Shown shown() const;
    bool working() const { return m_working; } ///< lifted holds are being worked out
    const std::vector<PaperRow>& rows() const { return m_rows; }

signals:
    void formAsked(const ui::health::SamplesPage::Make& make); ///< to be shown at the right
    void recordAsked(const ui::records::RecordRow& record);    ///< to be put right
    void cardAsked(core::ColonyId colony);
    void kitAsked();

private:
    void build();
    void buildFoot();
    void read();
    void show(std::vector<PaperRow> rows, const QString& about);
    void workOutLifted();
    void showLifted();
    const PaperRow* current() const;
    bool pressed(int key);
    void act(int key);
    void settle();
    bool mayWrite();
    bool fits(int key) const; ///< it can be done with the current row
    void takeSample();
    void openCurrent();
    void takeBack();

    desk::Desk& m_desk;
    Dialogs& m_dialogs;
    board::RowList* m_list;
    QComboBox* m_what;
    QCheckBox* m_everywhere;
    look::WrappedLabel* m_summary;
    look::WrappedLabel* m_about;
    close::KeyFoot* m_foot;
    std::vector<std::pair<char, QPushButton*>> m_buttons;
    PaperBook m_book;
    std::vector<PaperRow> m_rows;
    bool m_working = false;
    /// Lifted holds as they were worked out last, and of what state of the book: another yard asks for nothing new.
    struct Lifted {
        qint64 seq = -1; ///< of the last line of the history
        core::Day today;
        std::shared_ptr<const core::Snapshot> whole;
        std::vector<core::rules::LiftedHold> holds;
        int apart = 0;
    } m_lifted;
    desk::Beside m_beside;
    desk::WhileShown* m_follow;
};

} // namespace ui::health

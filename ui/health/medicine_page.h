#pragma once

#include "core/report/medicine_pages.h"
#include "ui/desk/while_shown.h"

#include <QWidget>

#include <optional>

class QCheckBox;
class QComboBox;
class QPushButton;
class QTableView;
class QTextBrowser;

namespace ui::form {
class DayEdit;
}

namespace ui::look {
class WrappedLabel;
}

namespace ui::health {

class MedicineModel;
class StripsModel;

/// The medicine book: the register of a period, yard or hive with what was corrected and what is missing, who is under
/// withdrawal, and the strips to take out. A correction is made in the treatment's form, with a reason and a name.
class MedicinePage : public QWidget {
    Q_OBJECT
public:
    MedicinePage(desk::Desk& desk, Dialogs& dialogs, QWidget* parent = nullptr);

    QTableView* table() const { return m_table; }
    QTableView* strips() const { return m_strips; }
    QString details() const; ///< of the chosen entry
    QString summary() const; ///< who is under withdrawal, or what is wrong with what was typed

signals:
    void newAsked();
    void putRightAsked(qint64 treatment);

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void build();
    QWidget* head();
    QWidget* stripsPart();
    void read();
    void fillYards();
    void ask();
    void tellWithdrawals();
    void showCurrent();
    void putRight();
    bool pressed(QObject* where, int key);
    void takeOut(bool all);
    void writePdf();
    void writeCsv();

    desk::Desk& m_desk;
    Dialogs& m_dialogs;
    std::optional<core::rules::MedicineBook> m_book;
    core::report::MedicineAbout m_about;
    form::DayEdit* m_from;
    form::DayEdit* m_until;
    QComboBox* m_yard;
    QCheckBox* m_chosenOnly;
    QPushButton* m_new;
    QPushButton* m_right;
    QPushButton* m_pdf;
    QPushButton* m_csv;
    look::WrappedLabel* m_summary;
    MedicineModel* m_model;
    QTableView* m_table;
    QTextBrowser* m_details;
    StripsModel* m_stripsModel;
    QTableView* m_strips;
    QWidget* m_stripsPart = nullptr;
    form::DayEdit* m_outOn;
    desk::WhileShown* m_follow;
};

} // namespace ui::health

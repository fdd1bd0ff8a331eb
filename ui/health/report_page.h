#pragma once

#include "core/base/progress.h"
#include "core/rules/inspection_report.h"
#include "ui/desk/beside.h"
#include "ui/desk/while_shown.h"
#include "ui/form/form.h"

#include <QTimer>
#include <QWidget>

#include <atomic>
#include <functional>
#include <memory>

class QListWidget;
class QPushButton;

namespace ui::form {
class DayEdit;
}

namespace ui::look {
class WrappedLabel;
}

namespace ui::print {
class PagesView;
}

namespace ui::health {

/// The report for an inspector: of a period and yards, as pages to look at, as a PDF and as a folder of CSV files.
/// Nothing is written into the book.
class ReportPage : public QWidget {
    Q_OBJECT
public:
    using OpenForm = std::function<void(std::unique_ptr<form::Form>)>;

    ReportPage(desk::Desk& desk, Dialogs& dialogs, OpenForm open, QWidget* parent = nullptr);

    form::DayEdit* from() const { return m_from; }
    form::DayEdit* until() const { return m_until; }
    QListWidget* yards() const { return m_yards; }
    QPushButton* pdfButton() const { return m_pdf; }
    QPushButton* csvButton() const { return m_csv; }
    QPushButton* keeperButton() const { return m_keeper; }
    print::PagesView* preview() const { return m_preview; }
    QString said() const; ///< what the report is of, or why there is none; where it was written
    /// Of a book with more colonies the report is made beside the window.
    void setAtOnce(int colonies) { m_atOnce = colonies; }

private:
    static constexpr int kAtOnce = 400;
    struct Made;
    using Maker = std::function<std::shared_ptr<const Made>(const core::edit::Session&, const core::Progress&)>;
    void build();
    void read();
    void make();
    void makeBeside(const Maker& maker);
    void take(std::shared_ptr<const Made> made);
    void showHow();
    void refuse(const QString& why);
    QStringList yardsAsked() const; ///< empty: all
    void writePdf();
    void writeFolder();

    desk::Desk& m_desk;
    Dialogs& m_dialogs;
    form::DayEdit* m_from;
    form::DayEdit* m_until;
    QListWidget* m_yards;
    QPushButton* m_pdf;
    QPushButton* m_csv;
    QPushButton* m_keeper;
    look::WrappedLabel* m_said;
    print::PagesView* m_preview;
    std::shared_ptr<const Made> m_made; ///< null: there is no report
    desk::WhileShown* m_follow;
    int m_atOnce = kAtOnce;
    std::shared_ptr<std::atomic<double>> m_share; ///< of the report that is being made
    QTimer m_look;
    desk::Beside* m_beside;
};

} // namespace ui::health

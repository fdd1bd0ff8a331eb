#pragma once

#include "core/report/page.h"

#include <QScrollArea>

#include <memory>
#include <vector>

namespace ui::print {

/// Pages one below the other, as wide as there is room, in the colours of the window. Page up and page down, Home and
/// End scroll.
class PagesView : public QScrollArea {
    Q_OBJECT
public:
    /// `name`: for screen readers.
    PagesView(const QString& name, QWidget* parent);

    void show(std::vector<core::report::Page> pages);
    void show(std::shared_ptr<const std::vector<core::report::Page>> pages);
    int pageCount() const;
    /// All that is written on them, a line each: what a screen reader has of them.
    QString text() const;

protected:
    void keyPressEvent(QKeyEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

private:
    class Sheets;
    void fit();
    QString textOf(int pages) const; ///< of the first so many

    QString m_name;
    Sheets* m_sheets;
};

} // namespace ui::print

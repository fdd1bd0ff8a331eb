#pragma once

#include "ui/print/paper_choice.h"

#include <QDialog>

#include <map>

class QButtonGroup;
class QVBoxLayout;

namespace ui::print {

/// Asks which sheet, in which language, on which paper and in what size of type; by mouse, by arrow keys or by Alt and
/// a letter. Enter goes on with what is set.
class PaperDialog : public QDialog {
    Q_OBJECT
public:
    explicit PaperDialog(const PaperChoice& usual, QWidget* parent = nullptr);

    PaperChoice choice() const;

private:
    struct Item {
        int id;
        QString text;
    };
    QButtonGroup* addGroup(QVBoxLayout* to, const QString& title, const std::vector<Item>& items, int chosen);

    QButtonGroup* m_sheet;
    QButtonGroup* m_language;
    QButtonGroup* m_paper;
    QButtonGroup* m_size;
};

} // namespace ui::print

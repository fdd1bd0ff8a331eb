#pragma once

#include "ui/exchange/foreign_draft.h"

#include <QScrollArea>

#include <vector>

class QComboBox;
class QGridLayout;
class QLineEdit;

namespace ui::exchange {

/// A line for each column of ours: what of the file gives it, in which unit, which words of the file are which of ours.
class ColumnsPanel : public QScrollArea {
    Q_OBJECT
public:
    ColumnsPanel(ForeignDraft& draft, QWidget* parent);

    /// The lines of the draft's kind, file and mapping.
    void showDraft();
    QComboBox* sourceOf(const QString& ours) const;
    QComboBox* unitOf(const QString& ours) const;  ///< nullptr where there is no choice
    QLineEdit* wordsOf(const QString& ours) const; ///< or the one value of all rows
    void focusColumn(const QString& ours);

signals:
    void changed(); ///< the draft's mapping is another

private:
    struct Line {
        QString ours;
        QComboBox* source = nullptr;
        QComboBox* unit = nullptr;
        QLineEdit* words = nullptr;
    };
    void addLine(const core::exchange::Column& column, QGridLayout& grid);
    void fillSources(Line& line);
    void fillUnits(Line& line);
    void showLine(const Line& line);
    void settle(const Line& line);
    void take(const QString& ours, bool newSource);
    const Line* lineOf(const QString& ours) const;
    QString wordsProposed(const Line& line) const;
    bool isOneValue(const Line& line) const;

    ForeignDraft& m_draft;
    std::vector<Line> m_lines;
};

} // namespace ui::exchange

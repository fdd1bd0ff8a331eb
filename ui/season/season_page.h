#pragma once

#include "ui/season/shown.h"

#include <QWidget>

#include <functional>

class QBoxLayout;
class QHBoxLayout;
class QLabel;
class QPushButton;

namespace ui {
struct Dialogs;
}
namespace ui::chart {
class ChartPanel;
}

namespace ui::season {

/// One page of the season: sentences, a chart with its table behind it, and by keys and buttons the yard or all (A),
/// the span (S, M, Y) and the next chart (C). It reads only while it is shown.
class SeasonPage : public QWidget {
    Q_OBJECT
public:
    struct Topic {
        QString title;
        std::function<Shown(SeasonDesk&)> show;
        bool spans = true; ///< it has a span to choose
    };
    SeasonPage(SeasonDesk& season, Dialogs& dialogs, Topic topic, QWidget* parent = nullptr);

    chart::ChartPanel* panel() const { return m_panel; }
    QString sentences() const;
    const Shown& shown() const { return m_shown; }
    QString where() const;

protected:
    void showEvent(QShowEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

private:
    void build();
    void buildChoices();
    void fitChoices();
    QPushButton* choice(const QString& text, const QString& tip, const QString& name, Qt::Key key,
                        const std::function<void()>& act);
    void follow();
    void settle();
    void showChoices();
    void showPart(size_t part);
    void fitSentences();

    SeasonDesk& m_season;
    Dialogs& m_dialogs;
    Topic m_topic;
    Shown m_shown;
    size_t m_part = 0;
    bool m_stale = true;
    QLabel* m_where;
    QLabel* m_sentences;
    chart::ChartPanel* m_panel;
    QWidget* m_choices; ///< yard, span and chart in one row, or below each other where that is too narrow
    QBoxLayout* m_rows = nullptr;
    QHBoxLayout* m_partRow = nullptr;
    std::vector<QPushButton*> m_partButtons;
    QPushButton *m_one = nullptr, *m_all = nullptr;
    std::vector<QPushButton*> m_spans; ///< by Span
};

} // namespace ui::season

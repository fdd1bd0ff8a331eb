#include "ui/season/season_page.h"

#include "ui/chart/chart_panel.h"
#include "ui/dialogs.h"
#include "ui/look/type.h"
#include "ui/look/words.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QShortcut>
#include <QVBoxLayout>

namespace ui::season {

SeasonPage::SeasonPage(SeasonDesk& season, Dialogs& dialogs, Topic topic, QWidget* parent)
    : QWidget(parent),
      m_season(season),
      m_dialogs(dialogs),
      m_topic(std::move(topic)),
      m_where(new QLabel(this)),
      m_sentences(new QLabel(this)),
      m_panel(new chart::ChartPanel(dialogs, this)),
      m_choices(new QWidget(this)) {
    build();
    connect(&m_season, &SeasonDesk::changed, this, &SeasonPage::follow);
    setFocusProxy(m_panel);
}

QPushButton* SeasonPage::choice(const QString& text, const QString& tip, const QString& name, Qt::Key key,
                                const std::function<void()>& act) {
    auto* made = new QPushButton(text, m_choices);
    made->setObjectName(name);
    made->setAccessibleName(text);
    made->setToolTip(tip);
    made->setCheckable(true);
    made->setProperty("plain", true);
    connect(made, &QPushButton::clicked, this, [this, act] {
        act();
        showChoices(); // clicked once more it stays as it was
    });
    if (key == Qt::Key_unknown) return made;
    auto* keys = new QShortcut(QKeySequence(key), this);
    keys->setContext(Qt::WidgetWithChildrenShortcut);
    connect(keys, &QShortcut::activated, this, act);
    return made;
}

void SeasonPage::buildChoices() {
    m_one = choice(tr("This yard"), tr("The yard chosen at the left (A)"), QStringLiteral("seasonYard"),
                   Qt::Key_unknown, [this] { m_season.setAllYards(false); });
    m_all = choice(tr("All yards"), tr("All yards, or the one chosen at the left (A)"),
                   QStringLiteral("seasonAllYards"), Qt::Key_unknown, [this] { m_season.setAllYards(true); });
    auto* turn = new QShortcut(QKeySequence(Qt::Key_A), this);
    turn->setContext(Qt::WidgetWithChildrenShortcut);
    connect(turn, &QShortcut::activated, this, [this] { m_season.setAllYards(!m_season.allYards()); });
    const auto row = [this](const std::vector<QPushButton*>& buttons) {
        auto* across = new QHBoxLayout;
        for (QPushButton* button : buttons) across->addWidget(button);
        m_rows->addLayout(across);
        return across;
    };
    m_rows = new QBoxLayout(QBoxLayout::LeftToRight, m_choices);
    m_rows->setContentsMargins(0, 0, 0, 0);
    auto* yards = row({m_one, m_all});
    yards->addStretch(1);
    m_partRow = new QHBoxLayout;
    m_partRow->setSpacing(8);
    yards->addLayout(m_partRow);
    if (m_topic.spans) {
        const auto span = [this](Span which) { return [this, which] { m_season.setSpan(which); }; };
        m_spans = {choice(tr("This season"), tr("Since the season began (S)"), QStringLiteral("seasonSpanSeason"),
                          Qt::Key_S, span(Span::Season)),
                   choice(tr("12 months"), tr("The last twelve months (M)"), QStringLiteral("seasonSpanMonths"),
                          Qt::Key_M, span(Span::TwelveMonths)),
                   choice(tr("All years"), tr("Since the first record (Y)"), QStringLiteral("seasonSpanYears"),
                          Qt::Key_Y, span(Span::AllYears))};
        row(m_spans)->addStretch(1);
    }
    m_choices->setMinimumWidth(1); // it makes do with what there is
}

/// One row where it has room.
void SeasonPage::fitChoices() {
    constexpr int kBetween = 16; // buttons, with what a style adds on showing
    int wide = 0;
    for (const auto* button : m_choices->findChildren<QPushButton*>())
        if (!button->isHidden()) wide += button->sizeHint().width() + kBetween;
    constexpr int kApart = 28; // between groups in one row
    const bool narrow = wide + kApart > width() - 40;
    m_rows->setSpacing(narrow ? 4 : kApart);
    m_rows->setDirection(narrow ? QBoxLayout::TopToBottom : QBoxLayout::LeftToRight);
}

void SeasonPage::build() {
    auto* title = new QLabel(m_topic.title, this);
    title->setFont(look::headingFont(font()));
    m_where->setObjectName(QStringLiteral("seasonWhere"));
    m_where->setProperty("quiet", true);
    m_where->setWordWrap(true);
    m_sentences->setObjectName(QStringLiteral("seasonSentences"));
    m_sentences->setWordWrap(true);
    m_sentences->setTextFormat(Qt::PlainText);
    m_sentences->setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
    m_sentences->setAccessibleName(tr("What the figures say"));
    auto* first = new QHBoxLayout;
    first->addWidget(title);
    first->addWidget(m_where, 1);
    auto* down = new QVBoxLayout(this);
    down->setContentsMargins(20, 14, 20, 14);
    down->setSpacing(8);
    down->addLayout(first);
    buildChoices();
    down->addWidget(m_choices);
    down->addWidget(m_sentences);
    down->addWidget(m_panel, 1);
    auto* next = new QShortcut(QKeySequence(Qt::Key_C), this);
    next->setContext(Qt::WidgetWithChildrenShortcut);
    connect(next, &QShortcut::activated, this, [this] {
        if (!m_shown.parts.empty()) showPart((m_part + 1) % m_shown.parts.size());
    });
}

QString SeasonPage::sentences() const { return m_sentences->text(); }

QString SeasonPage::where() const { return m_where->text(); }

void SeasonPage::follow() {
    m_stale = true;
    if (isVisible()) settle();
}

void SeasonPage::showEvent(QShowEvent* event) {
    QWidget::showEvent(event);
    settle();
}

void SeasonPage::settle() {
    if (!m_stale) return;
    m_stale = false;
    guarded(m_dialogs, [this] {
        m_shown = m_topic.show(m_season);
        m_panel->setSheet({m_season.foot()});
        m_where->setText(m_topic.spans ? tr("%1 · %2").arg(m_season.where(), m_season.spanText())
                                       : tr("%1 · %2").arg(m_season.where(), look::dayText(m_season.day())));
        if (m_topic.spans && m_season.limited())
            m_shown.sentences << tr(
                "In so large a book all yards together are shown for twelve months; choose one yard "
                "for all years.");
        showChoices();
        showPart(std::min(m_part, m_shown.parts.size() - 1));
    });
}

void SeasonPage::showChoices() {
    m_one->setChecked(!m_season.allYards());
    m_all->setChecked(m_season.allYards());
    for (size_t i = 0; i < m_spans.size(); ++i) m_spans[i]->setChecked(m_season.span() == static_cast<Span>(i));
    for (size_t i = 0; i < m_partButtons.size(); ++i) m_partButtons[i]->setChecked(i == m_part);
}

void SeasonPage::showPart(size_t part) {
    m_part = part;
    while (m_partButtons.size() < m_shown.parts.size()) {
        const size_t which = m_partButtons.size();
        m_partButtons.push_back(choice({}, tr("Another chart (C)"), QStringLiteral("seasonPart%1").arg(which),
                                       Qt::Key_unknown, [this, which] { showPart(which); }));
        m_partRow->addWidget(m_partButtons.back());
    }
    for (size_t i = 0; i < m_partButtons.size(); ++i) {
        const bool there = m_shown.parts.size() > 1 && i < m_shown.parts.size();
        m_partButtons[i]->setVisible(there);
        if (!there) continue;
        m_partButtons[i]->setText(m_shown.parts[i].name);
        m_partButtons[i]->setAccessibleName(m_shown.parts[i].name);
    }
    m_sentences->setText((m_shown.parts[part].sentences + m_shown.sentences).join(u'\n'));
    fitSentences();
    m_panel->setChart(m_shown.parts[part].chart);
    showChoices();
    fitChoices();
}

/// A wrapped label is not asked for its height.
void SeasonPage::fitSentences() {
    m_sentences->setMinimumHeight(std::max(0, m_sentences->heightForWidth(std::max(width() - 40, 200))));
}

void SeasonPage::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    fitSentences();
    fitChoices();
}

} // namespace ui::season

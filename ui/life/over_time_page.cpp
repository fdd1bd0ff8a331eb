#include "ui/life/over_time_page.h"

#include "ui/chart/chart_view.h"
#include "ui/chart/chart_window.h"
#include "ui/life/colony_charts.h"
#include "ui/life/hold_watch.h"
#include "ui/look/end_words.h"
#include "ui/look/words.h"

#include <QLabel>
#include <QScrollArea>
#include <QVBoxLayout>

namespace ui::life {

namespace {

constexpr int kRest = 250;  // milliseconds
constexpr int kHigh = 132;  // of a small chart
constexpr int kEmpty = 44;  // of one that has nothing to show
constexpr int kLevels = 18; // more for each level beyond two

int highOf(const chart::Chart& c) {
    if (chart::isEmpty(c)) return kEmpty;
    return kHigh + kLevels * std::max(0, static_cast<int>(c.levels.size()) - 2);
}

} // namespace

OverTimePage::OverTimePage(desk::Desk& desk, Dialogs& dialogs, QWidget* parent)
    : LifePage(desk, dialogs, parent),
      m_scroll(new QScrollArea(this)),
      m_reading(new QLabel(this)),
      m_watch(new HoldWatch(this)) {
    m_scroll->setWidgetResizable(true);
    m_scroll->setFrameShape(QFrame::NoFrame);
    m_scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_scroll->setFocusPolicy(Qt::NoFocus);
    m_scroll->setWidget(new QWidget);
    auto* column = new QVBoxLayout(m_scroll->widget());
    column->setContentsMargins(0, 0, 0, 0);
    for (size_t i = 0; i < kColonyCharts; ++i) column->addWidget(newChart());
    column->addStretch(1);
    m_reading->setWordWrap(true);
    m_reading->setTextFormat(Qt::PlainText);
    m_reading->setObjectName(QStringLiteral("overTimeReading"));
    m_reading->setMinimumHeight(2 * fontMetrics().lineSpacing());
    m_reading->setAlignment(Qt::AlignTop | Qt::AlignLeft);
    below()->addWidget(m_scroll, 1);
    below()->addWidget(m_reading);
    m_rest.setSingleShot(true);
    m_rest.setInterval(kRest);
    connect(&m_rest, &QTimer::timeout, this, [this] { guarded(m_dialogs, [this] { askForHolds(); }); });
    connect(m_watch, &HoldWatch::found, this, &OverTimePage::takeHolds);
}

chart::ChartView* OverTimePage::newChart() {
    auto* view = new chart::ChartView(m_scroll->widget());
    view->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    connect(view, &chart::ChartView::readingChanged, this, [this, view](const QString& reading) {
        if ((view->hasFocus() || view->underMouse()) && !reading.isEmpty())
            m_reading->setText(tr("%1, %2").arg(view->chart().title, reading));
    });
    connect(view, &chart::ChartView::openAsked, this, [this, nth = m_charts.size()] { openLarge(nth); });
    m_charts.push_back(view);
    return view;
}

QWidget* OverTimePage::keys() { return m_charts.front(); }

QString OverTimePage::reading() const { return m_reading->text(); }

void OverTimePage::fill() {
    m_watch->stop();
    m_life = colony() ? lifeOf(m_desk.session(), *colony(), m_desk.day()) : std::nullopt;
    m_scroll->setVisible(m_life.has_value());
    if (!m_life) {
        m_rest.stop();
        say({}, tr("Choose a hive to see its colony over time."));
        m_reading->clear();
        return;
    }
    sayHead(tr("holds are being worked out"));
    show(colonyCharts(*m_life));
    m_rest.start();
}

void OverTimePage::sayHead(const QString& ofHolds) {
    const core::Colony& c = m_life->colony;
    QString life = tr("Since %1").arg(look::dayText(c.since));
    if (c.ended && *c.ended <= m_desk.day()) life += QStringLiteral(", ") + look::endText(c);
    say(m_life->name, tr("%1 · %2").arg(life, ofHolds));
}

void OverTimePage::askForHolds() {
    if (!m_life) return;
    if (!isVisible()) return setColony(colony()); // again once it is shown
    const core::Colony& c = m_life->colony;
    core::Day last = m_life->last;
    if (c.ended && *c.ended <= last) last = *c.ended - 1;
    auto whole = std::make_shared<const core::Snapshot>(m_desk.session().snapshotForHolds());
    m_watch->start(std::move(whole), c.id, c.since, std::max(last, c.since));
}

void OverTimePage::takeHolds(core::ColonyId colony, const std::vector<core::rules::HoldSpan>& spans, int apart) {
    if (!m_life || m_life->colony.id != colony) return;
    m_life->holds = spans;
    sayHead(tr("holds looked up every %1 days").arg(apart));
    show(colonyCharts(*m_life));
}

void OverTimePage::show(const std::vector<chart::Chart>& charts) {
    m_reading->setText(tr("Arrow keys or the mouse read the figures; Enter or a click opens a chart large."));
    for (size_t i = 0; i < charts.size(); ++i) {
        m_charts[i]->setLowest(highOf(charts[i]));
        m_charts[i]->setChart(charts[i]); // says what is read where it has the keys
    }
}

chart::ChartWindow* OverTimePage::openLarge(size_t nth) {
    chart::Chart large = m_charts[nth]->chart();
    large.title = tr("%1: %2").arg(m_life->name, large.title);
    const chart::Sheet sheet{tr("%1 · %2").arg(m_desk.session().bookTitle(), look::dayText(m_desk.day()))};
    return chart::showLarge(large, sheet, m_charts[nth]->stop(), m_dialogs, this);
}

} // namespace ui::life

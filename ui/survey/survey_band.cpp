#include "ui/survey/survey_band.h"

#include "ui/plan/scene.h"

#include <QEvent>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QMenu>
#include <QToolButton>

#include <algorithm>

namespace ui::survey {

namespace {
constexpr int kGap = 6;
constexpr int kInside = 10;
constexpr int kNorth = 76; // the north arrow's
} // namespace

SurveyBand::SurveyBand(QWidget* plan) : QFrame(plan), m_sentence(new QLabel(this)) {
    setObjectName(QStringLiteral("surveyBand"));
    setAutoFillBackground(true);
    setFrameShape(QFrame::StyledPanel);
    setAccessibleName(tr("Survey"));
    m_sentence->setText(tr("<b>Survey:</b> you correct the drawing; no hive is carried."));
    m_sentence->setTextFormat(Qt::RichText);
    m_row.push_back(m_sentence);
    addTool(ToolKind::Move, tr("&Move"), QStringLiteral("surveyMove"),
            tr("Put stands and fixed things where they really are"));
    addTool(ToolKind::Turn, tr("&Turn"), QStringLiteral("surveyTurn"), tr("Say where entrances really look"));
    addArrange();
    addTool(ToolKind::Measure, tr("Meas&ure"), QStringLiteral("surveyMeasure"), tr("How far two points are apart"));
    addTool(ToolKind::Gate, tr("&Gate"), QStringLiteral("surveyGate"), tr("Where one comes in"));
    addDraw();
    QToolButton* done = addButton(tr("Do&ne"), QStringLiteral("surveyDone"), tr("Back to the hand that carries hives"));
    connect(done, &QToolButton::clicked, this, &SurveyBand::doneAsked);
    m_thing = new QLabel(this);
    m_row.push_back(m_thing);
    m_name = new QLineEdit(this);
    m_name->setObjectName(QStringLiteral("surveyName"));
    m_name->setMaxLength(60);
    m_name->setAccessibleName(tr("Name of the fixed thing"));
    connect(m_name, &QLineEdit::returnPressed, this, [this] { emit named(m_name->text()); });
    m_row.push_back(m_name);
    m_takeBack = addButton(tr("Take bac&k"), QStringLiteral("surveyTakeBack"), tr("It goes from the drawing (Delete)"));
    connect(m_takeBack, &QToolButton::clicked, this, &SurveyBand::takeBackAsked);
    QWidget::setTabOrder(plan, m_row[1]);
    for (size_t i = 1; i + 1 < m_row.size(); ++i) QWidget::setTabOrder(m_row[i], m_row[i + 1]);
    plan->installEventFilter(this);
    setThing({}, {});
    hide();
}

QToolButton* SurveyBand::addButton(const QString& text, const QString& name, const QString& tip) {
    auto* button = new QToolButton(this);
    button->setText(text);
    button->setObjectName(name);
    button->setToolTip(tip);
    button->setAccessibleName(QString(text).remove(u'&'));
    button->setAccessibleDescription(tip);
    button->setFocusPolicy(Qt::StrongFocus);
    m_row.push_back(button);
    return button;
}

void SurveyBand::addTool(ToolKind tool, const QString& text, const QString& name, const QString& tip) {
    QToolButton* button = addButton(text, name, tip);
    button->setCheckable(true);
    connect(button, &QToolButton::clicked, this, [this, tool] { emit toolAsked(tool); });
    m_tools.emplace_back(tool, button);
}

void SurveyBand::addArrange() {
    QToolButton* button = addButton(tr("&Align"), QStringLiteral("surveyAlign"), tr("Put the selected stands in line"));
    button->setCheckable(true);
    button->setPopupMode(QToolButton::InstantPopup);
    auto* menu = new QMenu(button);
    const std::pair<Arrangement, QString> ways[] = {
        {Arrangement::WestEast, tr("On a line &west to east")},
        {Arrangement::NorthSouth, tr("On a line &north to south")},
        {Arrangement::TheirLine, tr("On the line of the &first and the last")},
        {Arrangement::Evenly, tr("&Evenly between the first and the last")},
        {Arrangement::Rows, tr("Into straight &rows")},
    };
    for (const auto& [way, text] : ways)
        connect(menu->addAction(text), &QAction::triggered, this, [this, to = way] { emit arrangeAsked(to); });
    button->setMenu(menu);
    connect(menu, &QMenu::aboutToHide, this, [button] { button->setChecked(false); });
    m_tools.emplace_back(ToolKind::Arrange, button);
}

void SurveyBand::addDraw() {
    QToolButton* button =
        addButton(tr("&Draw"), QStringLiteral("surveyDraw"), tr("A fence, hedge, shed, water, track or tree"));
    button->setCheckable(true);
    button->setPopupMode(QToolButton::InstantPopup);
    auto* menu = new QMenu(button);
    for (const auto kind : {core::FixedKind::Hedge, core::FixedKind::Fence, core::FixedKind::Track,
                            core::FixedKind::Water, core::FixedKind::Shed, core::FixedKind::Tree})
        connect(menu->addAction(plan::fixedWord(kind)), &QAction::triggered, this,
                [this, kind] { emit drawAsked(kind); });
    button->setMenu(menu);
    m_tools.emplace_back(ToolKind::Draw, button);
}

void SurveyBand::setTool(ToolKind tool) {
    for (const auto& [kind, button] : m_tools) button->setChecked(kind == tool);
}

void SurveyBand::setThing(const std::optional<QString>& name, const QString& kindWord) {
    const bool shown = name.has_value();
    m_thing->setText(tr("Name of the %1:").arg(kindWord));
    if (shown && !m_name->hasFocus()) m_name->setText(*name);
    m_name->setPlaceholderText(kindWord);
    for (QWidget* w :
         {static_cast<QWidget*>(m_thing), static_cast<QWidget*>(m_name), static_cast<QWidget*>(m_takeBack)})
        w->setVisible(shown);
    settle();
}

/// From left to right, in as many lines as are needed; the north arrow stays in view.
void SurveyBand::settle() {
    const QWidget* plan = parentWidget();
    const int wide = std::max(160, plan->width() - kNorth - 8);
    int x = kInside;
    int y = kInside - 3;
    int high = 0;
    int right = 0;
    for (QWidget* w : m_row) {
        if (w->isHidden()) continue;
        QSize size = w->sizeHint();
        if (w == m_name) size.setWidth(std::min(size.width(), fontMetrics().averageCharWidth() * 22));
        size.setHeight(std::max(size.height(), m_tools.front().second->sizeHint().height()));
        const bool breaks = x > kInside && x + size.width() > wide - kInside;
        if (breaks || w == m_thing) {
            x = kInside;
            y += high + kGap;
            high = 0;
        }
        size.setWidth(std::min(size.width(), wide - 2 * kInside));
        w->setGeometry(QRect(QPoint(x, y), size));
        x += size.width() + kGap;
        high = std::max(high, size.height());
        right = std::max(right, x);
    }
    setGeometry(8, 8, std::min(wide, right + kInside - kGap), y + high + kInside - 3);
}

bool SurveyBand::eventFilter(QObject* watched, QEvent* event) {
    if (watched == parentWidget() && event->type() == QEvent::Resize) settle();
    return QFrame::eventFilter(watched, event);
}

void SurveyBand::showEvent(QShowEvent* event) {
    QFrame::showEvent(event);
    settle();
    raise();
}

void SurveyBand::changeEvent(QEvent* event) {
    if (event->type() == QEvent::FontChange || event->type() == QEvent::StyleChange) settle();
    QFrame::changeEvent(event);
}

void SurveyBand::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Escape && m_name->hasFocus()) return parentWidget()->setFocus(Qt::OtherFocusReason);
    if (event->key() == Qt::Key_Escape) return emit doneAsked();
    auto* button = qobject_cast<QToolButton*>(focusWidget());
    const bool enter = event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter;
    if (enter && button) return button->menu() ? button->showMenu() : button->click();
    event->accept(); // nothing of it is the plan's
}

} // namespace ui::survey

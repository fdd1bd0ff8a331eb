#include "ui/window/top_bar.h"

#include <QButtonGroup>
#include <QEvent>
#include <QHBoxLayout>
#include <QMenuBar>
#include <QPushButton>

namespace ui::window {

namespace {

constexpr std::pair<Place, const char*> kPlaces[] = {
    {Place::YardPlan, QT_TRANSLATE_NOOP("ui::window::TopBar", "Yard plan")},
    {Place::Colonies, QT_TRANSLATE_NOOP("ui::window::TopBar", "Colonies")},
    {Place::Visits, QT_TRANSLATE_NOOP("ui::window::TopBar", "Visits")},
    {Place::MergeDay, QT_TRANSLATE_NOOP("ui::window::TopBar", "Merge day")},
    {Place::Health, QT_TRANSLATE_NOOP("ui::window::TopBar", "Health")},
    {Place::Season, QT_TRANSLATE_NOOP("ui::window::TopBar", "Season")}};

constexpr const char* kThere = "there"; // a place of this window

} // namespace

TopBar::TopBar(QWidget* parent)
    : QWidget(parent), m_menus(new QMenuBar(this)), m_places(new QButtonGroup(this)), m_undo(new QPushButton(this)) {
    auto* all = new QHBoxLayout(this);
    all->setContentsMargins(8, 0, 12, 0);
    all->setSpacing(0);
    m_menus->setNativeMenuBar(false);
    m_menus->setSizePolicy(QSizePolicy::Maximum, QSizePolicy::Preferred);
    all->addWidget(m_menus);
    all->addSpacing(14);
    for (const auto& [place, title] : kPlaces) {
        const QString name = tr(title);
        auto* button = new QPushButton(name, this);
        button->setProperty("place", true);
        button->setCheckable(true);
        button->setAccessibleName(tr("Place: %1").arg(name));
        button->hide();
        m_places->addButton(button, static_cast<int>(place));
        all->addWidget(button);
    }
    connect(m_places, &QButtonGroup::idClicked, this, [this](int id) { emit placeAsked(static_cast<Place>(id)); });
    all->addStretch(1);
    m_undo->setProperty("plain", true);
    m_undo->setObjectName(QStringLiteral("undoButton"));
    m_undo->setSizePolicy(QSizePolicy::Maximum, QSizePolicy::Preferred);
    connect(m_undo, &QPushButton::clicked, this, &TopBar::undoAsked);
    all->addWidget(m_undo);
    setUndo({});
    sizePlaces();
}

/// Room for the bold name of the place that is open, so that nothing moves when it changes.
void TopBar::sizePlaces() {
    QFont bold = font();
    bold.setBold(true);
    for (QAbstractButton* b : m_places->buttons())
        b->setMinimumWidth(QFontMetrics(bold).horizontalAdvance(b->text()) + 34);
}

void TopBar::changeEvent(QEvent* event) {
    QWidget::changeEvent(event);
    if (event->type() != QEvent::FontChange) return;
    sizePlaces();
    elide();
}

void TopBar::addPlace(Place place) {
    QAbstractButton* button = m_places->button(static_cast<int>(place));
    button->setProperty(kThere, true);
    button->setVisible(m_placesShown);
}

void TopBar::setPlacesShown(bool shown) {
    m_placesShown = shown;
    for (QAbstractButton* b : m_places->buttons()) b->setVisible(shown && b->property(kThere).toBool());
}

void TopBar::setPlace(Place place) { m_places->button(static_cast<int>(place))->setChecked(true); }

void TopBar::setUndo(const QString& text) {
    m_undoText = text.isEmpty() ? QString() : tr("Undo: %1 · saved").arg(text);
    m_undo->setVisible(!text.isEmpty());
    m_undo->setAccessibleName(m_undoText.isEmpty() ? tr("Nothing to undo") : m_undoText);
    m_undo->setToolTip(m_undoText);
    elide();
}

QString TopBar::undoShown() const { return m_undoText; }

void TopBar::elide() {
    const int room = std::max(width() / 2 - 40, 120);
    m_undo->setText(m_undo->fontMetrics().elidedText(m_undoText, Qt::ElideRight, room));
}

void TopBar::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    elide();
}

} // namespace ui::window

#include "ui/card/colony_card.h"

#include "ui/look/hold_box.h"
#include "ui/look/type.h"

#include <QGridLayout>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

namespace ui::card {

namespace {

QLabel* labelOf(const QString& text, QWidget* parent, const char* property = nullptr) {
    auto* label = new QLabel(text, parent);
    label->setWordWrap(true);
    label->setTextInteractionFlags(Qt::TextSelectableByMouse);
    if (property) label->setProperty(property, true);
    return label;
}

} // namespace

ColonyCard::ColonyCard(QWidget* parent) : QScrollArea(parent) {
    setWidgetResizable(true);
    setFrameShape(QFrame::NoFrame);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setFocusPolicy(Qt::TabFocus);
    setAccessibleName(tr("Colony card"));
    show(std::nullopt);
}

void ColonyCard::setVisitAllowed(bool allowed) { m_visitAllowed = allowed; }

void ColonyCard::show(const std::optional<CardContent>& content) {
    auto* page = new QWidget;
    auto* all = new QVBoxLayout(page);
    all->setContentsMargins(20, 14, 20, 16);
    all->setSpacing(8);
    if (content) {
        addHeading(all, *content);
        addHolds(all, *content);
        addFacts(all, *content);
        addVisits(all, *content);
    } else {
        all->addWidget(labelOf(tr("Choose a hive on the plan, or walk through them with Tab, to see its colony here."),
                               page, "quiet"));
    }
    all->addStretch(1);
    setWidget(page);
}

void ColonyCard::addHeading(QVBoxLayout* all, const CardContent& c) {
    QWidget* page = all->parentWidget();
    if (m_backShown) {
        auto* back = new QPushButton(tr("← Merge day"), page);
        back->setProperty("plain", true);
        connect(back, &QPushButton::clicked, this, &ColonyCard::backAsked);
        all->addWidget(back, 0, Qt::AlignLeft);
    }
    auto* line = new QHBoxLayout;
    QLabel* title = labelOf(c.label, page);
    title->setFont(look::headingFont(font()));
    line->addWidget(title, 1);
    auto* visit = new QPushButton(tr("Log a visit…"), page);
    visit->setObjectName(QStringLiteral("logVisit"));
    visit->setEnabled(m_visitAllowed);
    connect(visit, &QPushButton::clicked, this, &ColonyCard::visitAsked);
    line->addWidget(visit);
    all->addLayout(line);
    all->addWidget(labelOf(c.place, page, "quiet"));
    auto* side = new ElevationView(page);
    side->setSide(c.side);
    all->addWidget(side);
}

void ColonyCard::addHolds(QVBoxLayout* all, const CardContent& c) {
    QWidget* page = all->parentWidget();
    for (const HoldText& h : c.holds) all->addWidget(new look::HoldBox(h.letter, h.title, h.because, h.lift, page));
    if (!c.holds.empty())
        all->addWidget(labelOf(tr("Held: it is in no union, shake-out or divide. It may be fed, looked at, and stay "
                                  "where it is. Inspectors and local apiary law decide; the program only advises."),
                               page, "quiet"));
    for (const QString& caution : c.cautions) all->addWidget(labelOf(QStringLiteral("△ ") + caution, page, "warns"));
}

void ColonyCard::addFacts(QVBoxLayout* all, const CardContent& c) {
    QWidget* page = all->parentWidget();
    auto* grid = new QGridLayout;
    grid->setHorizontalSpacing(12);
    grid->setVerticalSpacing(3);
    grid->setColumnStretch(1, 1);
    int row = 0;
    for (const auto& [name, value] : c.facts) {
        grid->addWidget(labelOf(name, page, "quiet"), row, 0, Qt::AlignTop);
        grid->addWidget(labelOf(value, page), row, 1);
        ++row;
    }
    all->addLayout(grid);
}

void ColonyCard::addVisits(QVBoxLayout* all, const CardContent& c) {
    QWidget* page = all->parentWidget();
    QLabel* title = labelOf(tr("Last visits"), page);
    QFont bold = title->font();
    bold.setBold(true);
    title->setFont(bold);
    all->addWidget(title);
    if (c.visits.empty()) all->addWidget(labelOf(tr("None on record."), page, "quiet"));
    auto* grid = new QGridLayout;
    grid->setHorizontalSpacing(12);
    grid->setVerticalSpacing(5);
    grid->setColumnStretch(1, 1);
    int row = 0;
    for (const auto& [day, text] : c.visits) {
        QLabel* when = labelOf(day, page, "quiet");
        when->setWordWrap(false);
        grid->addWidget(when, row, 0, Qt::AlignTop);
        grid->addWidget(labelOf(text, page), row, 1);
        ++row;
    }
    all->addLayout(grid);
}

} // namespace ui::card

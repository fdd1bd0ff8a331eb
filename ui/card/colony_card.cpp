#include "ui/card/colony_card.h"

#include "ui/look/hold_box.h"
#include "ui/look/type.h"
#include "ui/records/record_list.h"

#include <QGridLayout>
#include <QLabel>
#include <QListView>
#include <QMenu>
#include <QPushButton>
#include <QVBoxLayout>

#include <algorithm>

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

ColonyCard::ColonyCard(QWidget* parent) : QScrollArea(parent), m_records(new records::RecordList(this)) {
    m_records->hide();
    setWidgetResizable(true);
    setFrameShape(QFrame::NoFrame);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setFocusPolicy(Qt::TabFocus);
    setAccessibleName(tr("Colony card"));
    show(std::nullopt);
}

void ColonyCard::setWritable(bool writable) {
    m_writable = writable;
    m_records->setWritable(writable);
}

void ColonyCard::show(const std::optional<CardContent>& content) {
    const bool keys = m_records->list()->hasFocus();
    m_records->setParent(this); // out of the page that goes
    m_records->setVisible(content.has_value());
    auto* page = new QWidget;
    auto* all = new QVBoxLayout(page);
    all->setContentsMargins(20, 14, 20, 16);
    all->setSpacing(8);
    if (content) {
        addHeading(all, *content);
        addButtons(all, *content);
        all->addWidget(labelOf(content->place, page, "quiet"));
        addSide(all, *content);
        addHolds(all, *content);
        addFacts(all, *content);
        addWhys(all, *content);
        all->addWidget(m_records, 1);
    } else {
        all->addWidget(labelOf(tr("Choose a hive on the plan, or walk through them with Tab, to see its colony here."),
                               page, "quiet"));
    }
    if (!content) all->addStretch(1);
    setWidget(page);
    if (keys && content) m_records->list()->setFocus(Qt::OtherFocusReason);
}

void ColonyCard::addHeading(QVBoxLayout* all, const CardContent& c) {
    QWidget* page = all->parentWidget();
    if (m_backShown) {
        auto* back = new QPushButton(tr("← Merge day"), page);
        back->setProperty("plain", true);
        connect(back, &QPushButton::clicked, this, &ColonyCard::backAsked);
        all->addWidget(back, 0, Qt::AlignLeft);
    }
    QLabel* title = labelOf(c.label, page);
    title->setFont(look::headingFont(font()));
    all->addWidget(title);
    if (!c.ended.isEmpty()) all->addWidget(labelOf(c.ended, page, "warns"));
}

void ColonyCard::addButtons(QVBoxLayout* all, const CardContent& c) {
    QWidget* page = all->parentWidget();
    auto* line = new QHBoxLayout;
    if (c.ended.isEmpty()) {
        auto* visit = new QPushButton(tr("Log a visit…"), page);
        visit->setObjectName(QStringLiteral("logVisit"));
        connect(visit, &QPushButton::clicked, this, &ColonyCard::visitAsked);
        line->addWidget(visit);
    } else {
        auto* anew = new QPushButton(tr("New colony here…"), page);
        anew->setObjectName(QStringLiteral("newColony"));
        anew->setToolTip(tr("A new colony on the stand where this one stood"));
        connect(anew, &QPushButton::clicked, this, [this] { emit recordAsked(records::NewRecord::NewColony); });
        line->addWidget(anew);
    }
    auto* other = new QPushButton(tr("Record"), page);
    other->setObjectName(QStringLiteral("newRecord"));
    other->setAccessibleName(tr("Another record of this colony"));
    auto* menu = new QMenu(other);
    for (const records::NewRecordWords& w : records::newRecordWords()) {
        if (std::ranges::find(c.barred, w.what) != c.barred.end()) continue;
        QAction* action = menu->addAction(w.text);
        connect(action, &QAction::triggered, this, [this, what = w.what] { emit recordAsked(what); });
    }
    other->setMenu(menu);
    line->addWidget(other);
    line->addStretch(1);
    for (int i = 0; i < line->count(); ++i)
        if (QWidget* button = line->itemAt(i)->widget()) button->setEnabled(m_writable);
    all->addLayout(line);
}

void ColonyCard::addSide(QVBoxLayout* all, const CardContent& c) {
    if (!c.side) return;
    auto* side = new ElevationView(all->parentWidget());
    side->setSide(*c.side);
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
    addFigures(grid, page, c);
    all->addLayout(grid);
}

void ColonyCard::addFigures(QGridLayout* grid, QWidget* page, const CardContent& c) {
    int row = grid->rowCount();
    for (const CardFigure& figure : c.figures) {
        QLabel* name = labelOf(figure.name, page, "quiet");
        QLabel* value = labelOf(figure.text, page, "quiet");
        for (QLabel* label : {name, value}) label->setToolTip(figure.source);
        value->setAccessibleDescription(figure.source);
        grid->addWidget(name, row, 0, Qt::AlignTop);
        grid->addWidget(value, row, 1);
        ++row;
    }
}

void ColonyCard::addWhys(QVBoxLayout* all, const CardContent& c) {
    if (c.whys.empty()) return;
    auto* list = new WhyList(c.whys, m_rulesShown, all->parentWidget());
    connect(list, &WhyList::unfoldAsked, this, [this](bool unfolded) { m_rulesShown = unfolded; });
    all->addWidget(list);
}

} // namespace ui::card

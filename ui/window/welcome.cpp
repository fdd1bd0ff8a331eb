#include "ui/window/welcome.h"

#include "ui/look/type.h"

#include <QFileInfo>
#include <QKeyEvent>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

namespace ui::window {

Welcome::Welcome(QWidget* parent) : QWidget(parent) {
    auto* across = new QHBoxLayout(this);
    across->addStretch(2);
    auto* middle = new QWidget(this);
    middle->setFixedWidth(460);
    m_column = new QVBoxLayout(middle);
    m_column->setSpacing(10);
    across->addWidget(middle);
    across->addStretch(3);
}

/// Enter presses the button that has the keys, as Space does.
void Welcome::keyPressEvent(QKeyEvent* event) {
    auto* button = qobject_cast<QPushButton*>(focusWidget());
    const bool enter = event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter;
    enter&& button ? button->click() : QWidget::keyPressEvent(event);
}

void Welcome::clear() {
    while (QLayoutItem* item = m_column->takeAt(0)) {
        delete item->widget();
        delete item;
    }
    m_column->addStretch(2);
}

void Welcome::addTitle(const QString& text, const QString& sentence) {
    auto* title = new QLabel(text, this);
    title->setFont(look::headingFont(look::headingFont(font())));
    m_column->addWidget(title);
    auto* next = new QLabel(sentence, this);
    next->setWordWrap(true);
    m_column->addWidget(next);
}

QPushButton* Welcome::addButton(const QString& text, bool primary) {
    auto* button = new QPushButton(text, this);
    button->setProperty(primary ? "primary" : "other", true);
    m_column->addWidget(button, 0, Qt::AlignLeft);
    return button;
}

void Welcome::setDemoOffered() {
    m_demoOffered = true;
    if (m_start) showStart(m_recent);
}

void Welcome::showStart(const QStringList& recent) {
    clear();
    m_start = true;
    m_recent = recent;
    addTitle(tr("Yardwright"), tr("A book of your yards: where every hive stands, what was seen at every visit, and "
                                  "what to unite before winter. Make a book to begin, or open one."));
    QPushButton* make = addButton(tr("&New book…"), true);
    connect(make, &QPushButton::clicked, this, &Welcome::makeAsked);
    make->setFocus(Qt::OtherFocusReason);
    connect(addButton(tr("&Open a book…"), false), &QPushButton::clicked, this, &Welcome::openAsked);
    if (m_demoOffered) {
        QPushButton* demo = addButton(tr("&Look around in an invented book…"), false);
        demo->setObjectName(QStringLiteral("inventedBook"));
        demo->setToolTip(tr("Five yards and two seasons that nobody kept, to try everything on"));
        connect(demo, &QPushButton::clicked, this, &Welcome::demoAsked);
    }
    if (!recent.isEmpty()) {
        auto* label = new QLabel(tr("Opened before"), this);
        label->setProperty("quiet", true);
        m_column->addSpacing(10);
        m_column->addWidget(label);
    }
    for (const QString& path : recent) {
        QPushButton* button = addButton(QFileInfo(path).completeBaseName(), false);
        button->setProperty("plain", true);
        button->setToolTip(path);
        connect(button, &QPushButton::clicked, this, [this, path] { emit recentAsked(path); });
    }
    m_column->addStretch(3);
}

void Welcome::showEmptyBook(const QString& title) {
    clear();
    m_start = false;
    addTitle(title,
             tr("This book has no yard yet. Name your first yard; then its hives are set up on a drawing of it."));
    QPushButton* yard = addButton(tr("&Name your first yard…"), true);
    yard->setObjectName(QStringLiteral("nameFirstYard"));
    connect(yard, &QPushButton::clicked, this, &Welcome::yardAsked);
    yard->setFocus(Qt::OtherFocusReason);
    m_column->addSpacing(18);
    auto* lists = new QLabel(tr("Are your lists on file already? Put yards.csv, colonies.csv and visits.csv (one row a "
                                "hive or a visit) into one folder and read them in; it can be undone."),
                             this);
    lists->setWordWrap(true);
    lists->setProperty("quiet", true);
    m_column->addWidget(lists);
    connect(addButton(tr("&Import CSV files…"), false), &QPushButton::clicked, this, &Welcome::importAsked);
    m_column->addStretch(3);
}

} // namespace ui::window

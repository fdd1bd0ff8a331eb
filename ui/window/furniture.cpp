#include "ui/window/furniture.h"

#include "ui/look/text_size.h"
#include "ui/table/hive_table.h"
#include "ui/window/commands.h"
#include "ui/window/main_window.h"
#include "ui/window/work_page.h"

#include <QAction>
#include <QCryptographicHash>
#include <QEvent>
#include <QSettings>
#include <QSplitter>

namespace ui::window {

namespace {

/// A merge day that was looked at longer ago than this is last season's: the book opens in the present.
constexpr int kMergeDayForDays = 30;

QString bookGroup(const QString& path) {
    const QByteArray name = QCryptographicHash::hash(path.toUtf8(), QCryptographicHash::Sha1).toHex().left(16);
    return QStringLiteral("books/") + QString::fromLatin1(name);
}

std::optional<core::Day> dayIn(const QVariant& value) {
    const QDate date = QDate::fromString(value.toString(), Qt::ISODate);
    return date.isValid() ? std::optional(core::dayOf(date)) : std::nullopt;
}

QString isoOf(core::Day day) { return core::toDate(day).toString(Qt::ISODate); }

} // namespace

Furniture::Furniture(MainWindow& window) : QObject(&window), m_window(window) {
    putBack();
    window.installEventFilter(this);
    connect(&window, &MainWindow::bookOpened, this, &Furniture::putBackBook);
    connect(&window, &MainWindow::bookLeaving, this, &Furniture::leave);
    connect(&window, &MainWindow::placeChanged, this, &Furniture::keepBook);
    connect(&window, &MainWindow::textSizeChanged, this, &Furniture::keep);
}

void Furniture::putBack() {
    const QSettings settings;
    look::setTextPercent(settings.value(QStringLiteral("text/percent"), look::kUsualText).toInt());
    m_window.restoreGeometry(settings.value(QStringLiteral("window/geometry")).toByteArray());
    m_window.commands()->table->setChecked(settings.value(QStringLiteral("table/shown")).toBool());
}

void Furniture::putBackBook() {
    QSettings settings;
    WorkPage& page = *m_window.page();
    page.across()->restoreState(settings.value(QStringLiteral("window/across")).toByteArray());
    page.down()->restoreState(settings.value(QStringLiteral("window/down")).toByteArray());
    page.table()->putBackColumns(settings.value(QStringLiteral("table/columns")).toByteArray());
    page.setTableShown(m_window.commands()->table->isChecked());
    settings.beginGroup(bookGroup(m_window.desk()->session().path()));
    if (const qint64 yard = settings.value(QStringLiteral("yard")).toLongLong(); yard > 0)
        if (m_window.desk()->reading().find(core::YardId{yard})) m_window.desk()->setYard(core::YardId{yard});
    const auto seen = dayIn(settings.value(QStringLiteral("seen")));
    const core::Day today = m_window.desk()->today();
    const bool fresh = seen && today - *seen >= 0 && today - *seen <= kMergeDayForDays;
    if (fresh) page.setMergeDay(dayIn(settings.value(QStringLiteral("mergeDay"))));
    if (fresh && settings.value(QStringLiteral("place")).toInt() == static_cast<int>(Place::MergeDay))
        m_window.setPlace(Place::MergeDay);
    m_bookPutBack = true;
}

void Furniture::leave() {
    keep();
    m_bookPutBack = false;
}

void Furniture::keep() const {
    QSettings settings;
    settings.setValue(QStringLiteral("text/percent"), look::textPercent());
    settings.setValue(QStringLiteral("window/geometry"), m_window.saveGeometry());
    settings.setValue(QStringLiteral("table/shown"), m_window.commands()->table->isChecked());
    if (!m_window.page()) return;
    const WorkPage& page = *m_window.page();
    settings.setValue(QStringLiteral("window/across"), page.across()->saveState());
    settings.setValue(QStringLiteral("window/down"), page.down()->saveState());
    if (const QByteArray columns = page.table()->columns(); !columns.isEmpty())
        settings.setValue(QStringLiteral("table/columns"), columns);
    keepBook();
}

void Furniture::keepBook() const {
    if (!m_window.page() || !m_bookPutBack) return;
    const desk::Desk& desk = *m_window.desk();
    QSettings settings;
    settings.beginGroup(bookGroup(desk.session().path()));
    settings.setValue(QStringLiteral("yard"), desk.yard() ? desk.yard()->value : 0);
    settings.setValue(QStringLiteral("place"), static_cast<int>(m_window.page()->place()));
    settings.setValue(QStringLiteral("seen"), isoOf(desk.today()));
    const auto day = m_window.page()->mergeDay();
    settings.setValue(QStringLiteral("mergeDay"), day ? isoOf(*day) : QString());
}

bool Furniture::eventFilter(QObject* watched, QEvent* event) {
    if (watched == &m_window && event->type() == QEvent::Close) keep();
    return QObject::eventFilter(watched, event);
}

} // namespace ui::window

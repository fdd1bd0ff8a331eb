#include "ui/window/remembered.h"

#include <QDir>
#include <QTimer>

#include <utility>

namespace ui::window {

namespace {
constexpr int kLooksApartMs = 5'000;
} // namespace

Remembered::Remembered(QObject* parent) : QObject(parent) {
    auto* timer = new QTimer(this);
    connect(timer, &QTimer::timeout, this, &Remembered::look);
    timer->start(kLooksApartMs);
}

void Remembered::look() {
    m_settings.sync();
    const bool fails = m_settings.status() == QSettings::AccessError;
    if (fails && !std::exchange(m_said, true))
        emit failed(tr("What the program remembers on this machine (recent books, sizes, columns, names) cannot be "
                       "written to %1: it is forgotten when the program is closed. The book is not touched by it.")
                        .arg(QDir::toNativeSeparators(m_settings.fileName())));
}

} // namespace ui::window

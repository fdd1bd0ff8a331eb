#include "core/exchange/fault.h"

#include "core/base/error.h"

#include <algorithm>
#include <utility>

namespace core::exchange {

QString Fault::text() const { return QStringLiteral("%1:%2: %3: %4").arg(file, QString::number(line), column, what); }

QString namelessColumn(size_t at) { return Say::tr("column %1").arg(at + 1); }

void Faults::add(Fault fault) {
    if (m_count++ >= kMostFaults) return;
    fault.column = oneLine(std::move(fault.column));
    fault.what = oneLine(std::move(fault.what));
    m_kept.push_back(std::move(fault));
}

void Faults::addAll(const Faults& others, const std::function<QString(const QString&)>& named) {
    std::vector<Fault> byLine = others.m_kept;
    std::ranges::stable_sort(byLine, {}, &Fault::line);
    for (Fault& fault : byLine) {
        fault.column = named(fault.column);
        add(std::move(fault));
    }
    m_count += others.m_count - static_cast<qint64>(others.m_kept.size());
}

QStringList Faults::lines() const {
    QStringList out;
    for (const Fault& fault : m_kept) out << fault.text();
    const qint64 rest = m_count - static_cast<qint64>(m_kept.size());
    if (rest > 0)
        out << Say::tr("and %n more fault(s) of this import", nullptr, static_cast<int>(qMin<qint64>(rest, INT_MAX)));
    return out;
}

} // namespace core::exchange

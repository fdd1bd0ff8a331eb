#include "ui/health/sign_words.h"

#include "ui/health/health_words.h"
#include "ui/look/words.h"

#include <map>

namespace ui::health {

using core::ColonyIx;
using core::Sign;

namespace {

constexpr qsizetype kNamed = 6; // of more the rest is counted

QString headOf(const SignRecord& record) {
    if (record.what == Sign::BroodDoubt) return Health::tr("Brood in doubt: %1.");
    if (record.what == Sign::Efb)
        return record.found ? Health::tr("European foulbrood found: %1.") : Health::tr("European foulbrood seen: %1.");
    return record.found ? Health::tr("American foulbrood found: %1.") : Health::tr("American foulbrood suspected: %1.");
}

QString whereAndWhen(const core::Snapshot& s, const SignRecord& record) {
    const QString day = look::dayText(record.day);
    for (qint32 i = 0; i < static_cast<qint32>(s.colonies.size()); ++i) {
        if (s.colony({i}).id != record.colony) continue;
        const core::SnapStay* stay = s.placeOf({i});
        const QString& name = s.colony({i}).shown;
        return stay ? Health::tr("%1 in %2 on %3").arg(name, s.yard(stay->yard).name, day)
                    : Health::tr("%1 on %2").arg(name, day);
    }
    return day;
}

} // namespace

QStringList signTitles(const core::Snapshot& s, const std::vector<SignRecord>& records) {
    QStringList heads;
    std::map<QString, QStringList> named;
    for (const SignRecord& record : records) {
        const QString head = headOf(record);
        if (!heads.contains(head)) heads << head;
        named[head] << whereAndWhen(s, record);
    }
    for (QString& head : heads) {
        QStringList names = named[head];
        names.removeDuplicates();
        QString text = names.mid(0, kNamed).join(QStringLiteral("; "));
        if (names.size() > kNamed) text += Health::tr(" and %1 more").arg(names.size() - kNamed);
        head = head.arg(text);
    }
    return heads;
}

QString heldByText(const core::Snapshot& s, std::span<const ColonyIx> held) {
    const QString day = look::dayText(s.on);
    if (held.empty()) return Health::tr("No hive is held by it on %1.").arg(day);
    std::map<qint32, int> here, hives;
    for (const ColonyIx colony : held)
        if (const core::SnapStay* stay = s.placeOf(colony)) ++here[stay->yard.value];
    for (size_t i = 0; i < s.livingCount(); ++i)
        if (const core::SnapStay* stay = s.placeOf({static_cast<qint32>(i)})) ++hives[stay->yard.value];
    QStringList yards;
    for (const auto& [yard, count] : here)
        yards << Health::tr("%1 of %2 in %3").arg(count).arg(hives[yard]).arg(s.yard({yard}).name);
    const QString count = held.size() == 1 ? Health::tr("1 hive is held by it on %1").arg(day)
                                           : Health::tr("%1 hives are held by it on %2").arg(held.size()).arg(day);
    return Health::tr("%1: %2. They are in no union, shake-out or divide; only a record lifts that.")
        .arg(count, yards.join(QStringLiteral(", ")));
}

} // namespace ui::health

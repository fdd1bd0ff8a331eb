#include "ui/settings/setting_judge.h"

#include "ui/settings/setting_groups.h"

#include <QCoreApplication>
#include <QLocale>

namespace ui::settings {

namespace {

struct Judged {
    Q_DECLARE_TR_FUNCTIONS(Settings)
};

template <class T> bool keeps(const core::SettingField& field) {
    return std::holds_alternative<T core::Settings::*>(field.slot);
}

core::Millionths millionthsOf(const core::SettingField& field, const core::Settings& settings) {
    return settings.*std::get<core::Millionths core::Settings::*>(field.slot);
}

/// A whole number on the lax side of a hold's default.
bool laxer(const core::SettingField& field, const QString& typed) {
    bool whole = false;
    const qlonglong value = typed.trimmed().toLongLong(&whole);
    if (!field.onlyStricter || !whole) return false;
    const qlonglong start = core::slotText(core::Settings{}, field).toLongLong();
    return start == field.least ? value < field.least : value > field.most;
}

} // namespace

std::optional<QString> refusal(const core::SettingField& field, const QString& typed) {
    core::Settings trial;
    if (core::readSlot(trial, field, typed)) return std::nullopt;
    if (laxer(field, typed))
        return Judged::tr("Only stricter: a hold is never made laxer by a setting. Expected %1.").arg(rangeWords(field));
    if (keeps<int>(field)) return Judged::tr("Expected a whole number, %1.").arg(rangeWords(field));
    if (keeps<core::Quarters>(field)) return Judged::tr("Expected frames by quarters, %1.").arg(rangeWords(field));
    if (keeps<core::Millionths>(field)) return Judged::tr("Expected a number, %1.").arg(rangeWords(field));
    if (keeps<core::ValueTable>(field)) return Judged::tr("Expected 13 whole numbers from 0 to 1000.");
    return Judged::tr("Expected %1.").arg(rangeWords(field));
}

QString rangeWords(const core::SettingField& field) {
    if (keeps<core::MonthDay>(field)) return Judged::tr("a day of the year");
    if (keeps<core::ValueTable>(field)) return Judged::tr("each 0 to 1000");
    QStringList choices;
    for (const QString& word : core::choiceWords(field)) choices << choiceText(QString::fromUtf8(field.name), word);
    if (!choices.isEmpty()) return choices.join(Judged::tr("; or "));
    if (keeps<core::Quarters>(field))
        return Judged::tr("%1 to %2")
            .arg(core::framesText({static_cast<qint32>(field.least)}),
                 core::framesText({static_cast<qint32>(field.most)}));
    if (keeps<core::Millionths>(field))
        return Judged::tr("%1 to %2").arg(core::decimalText(field.least, 6), core::decimalText(field.most, 6));
    return Judged::tr("%1 to %2").arg(field.least).arg(field.most);
}

QString valueWords(const core::SettingField& field, const QString& canonical) {
    if (keeps<core::MonthDay>(field)) {
        const QDate day(2024, canonical.left(2).toInt(), canonical.mid(3).toInt());
        return QLocale().toString(day, QStringLiteral("d MMMM"));
    }
    return core::choiceWords(field).isEmpty() ? canonical : choiceText(QString::fromUtf8(field.name), canonical);
}

QString besideWords(const core::SettingField& field, const core::Settings& settings) {
    if (!keeps<core::Millionths>(field)) return {};
    const QLatin1StringView unit(field.unit);
    const core::ShownUnits shown = settings.shown();
    const qint64 value = millionthsOf(field, settings).value;
    if (unit == QLatin1StringView("kg") && shown.weight != core::WeightUnit::Kilograms)
        return QStringLiteral("= %1 %2").arg(core::decimalText(core::weightTenths(value, shown.weight), 1),
                                             core::unitSign(shown.weight));
    if (unit == QLatin1StringView("m") && shown.length != core::LengthUnit::Metres)
        return QStringLiteral("= %1 %2").arg(core::decimalText(core::lengthTenths(value / 1000, shown.length), 1),
                                             core::unitSign(shown.length));
    return {};
}

bool isAssumption(const core::SettingField& field) {
    return QString::fromUtf8(field.source).startsWith(QLatin1StringView("assumption"));
}

} // namespace ui::settings

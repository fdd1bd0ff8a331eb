#include "ui/bulk/common.h"

#include "ui/form/typed.h"
#include "ui/look/words.h"

namespace ui::bulk {

namespace {
constexpr qsizetype kMostSeen = 4;
} // namespace

Common commonOf(const QStringList& values, const std::function<QString(const QString&)>& shown) {
    Common out;
    if (values.isEmpty()) return out;
    QStringList seen;
    for (const QString& value : values) {
        const QString said = value.isEmpty() ? look::dash() : shown ? shown(value) : value;
        if (!seen.contains(said)) seen << said;
        if (seen.size() > kMostSeen) break;
    }
    out.mixed = seen.size() > 1;
    if (!out.mixed) {
        out.value = values.front();
        return out;
    }
    out.seen = seen.mid(0, kMostSeen).join(QStringLiteral(", "));
    if (seen.size() > kMostSeen) out.seen += QStringLiteral(" …");
    return out;
}

QString mixedText(const Common& common) { return Bulk::tr("mixed values: %1").arg(common.seen); }

bool saysNothing(const QString& typed) {
    const QString text = typed.trimmed();
    return text == QLatin1StringView("-") || text == QChar(0x2013) || text == QChar(0x2014);
}

std::optional<QString> written(const form::Values& values, const QString& key, const Common& common, form::Kind kind) {
    const QString now = form::typed(values, key);
    if (saysNothing(now)) return !common.mixed && common.value.isEmpty() ? std::nullopt : std::optional(QString());
    if (common.mixed) {
        const bool stays = now == kMixed || (now.isEmpty() && kind != form::Kind::Choice);
        return stays ? std::nullopt : std::optional(now);
    }
    return now == common.value.trimmed() ? std::nullopt : std::optional(now);
}

form::Field mixedField(form::Field field, const Common& common) {
    if (!common.mixed) return field;
    const bool narrow = field.kind == form::Kind::Whole || field.kind == form::Kind::Day;
    field.hint = narrow ? Bulk::tr("mixed values") : mixedText(common);
    field.note = [text = mixedText(common), key = field.key, narrow](const form::Values& values) {
        return narrow || !form::typed(values, key).isEmpty() ? text : QString(); // else it stands in the field
    };
    return field;
}

form::Field mixedChoice(form::Field field, const Common& common) {
    if (common.mixed) field.options.insert(field.options.begin(), {kMixed, mixedText(common)});
    return field;
}

QString startOf(const form::Field& field, const Common& common) {
    if (!common.mixed) return common.value;
    return field.kind == form::Kind::Choice ? kMixed : QString();
}

} // namespace ui::bulk

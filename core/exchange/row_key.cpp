#include "core/exchange/row_key.h"

namespace core::exchange {

namespace {

constexpr int kExactDigits = 17;

QString cellKey(const Value& value) {
    if (const auto* whole = std::get_if<qint64>(&value)) return u'i' + QString::number(*whole) + u'|';
    if (const auto* real = std::get_if<double>(&value)) return u'r' + QString::number(*real, 'g', kExactDigits) + u'|';
    if (const auto* text = std::get_if<QString>(&value)) return u't' + QString::number(text->size()) + u':' + *text;
    return QStringLiteral("-");
}

} // namespace

QString rowKey(const Row& row) {
    QString key;
    for (const Value& value : row) key += cellKey(value);
    return key;
}

} // namespace core::exchange

#include "core/store/raw_record.h"

#include "core/store/raw_pages.h"

#include <QStringDecoder>

#include <cstring>

namespace core::store {

namespace {

/// Bytes that a value of this serial type takes; -1: there is no such type.
qint64 bytesOf(qint64 type) {
    constexpr qint64 kFixed[] = {0, 1, 2, 3, 4, 6, 8, 8, 0, 0};
    if (type < 0 || type == 10 || type == 11) return -1;
    return type < 10 ? kFixed[type] : (type - 12) / 2;
}

bool isText(const QByteArray& bytes) {
    if (bytes.contains('\0')) return false;
    QStringDecoder decoder(QStringDecoder::Utf8, QStringConverter::Flag::Stateless);
    [[maybe_unused]] const QString text = decoder(bytes);
    return !decoder.hasError();
}

RawValue integerOf(const QByteArray& record, qsizetype at, qint64 type) {
    RawValue value;
    value.kind = RawValue::Kind::Integer;
    if (type >= 8) {
        value.integer = type - 8;
        return value;
    }
    const auto size = static_cast<int>(bytesOf(type));
    quint64 bits = bigEndian(record, at, size);
    if (size < 8 && (bits >> (size * 8 - 1) & 1)) bits |= ~quint64(0) << (size * 8);
    value.integer = static_cast<qint64>(bits);
    return value;
}

std::optional<RawValue> valueAt(const QByteArray& record, qsizetype at, qint64 type) {
    RawValue value;
    if (type == 0) return value;
    if (type < 7 || type == 8 || type == 9) return integerOf(record, at, type);
    if (type == 7) {
        const quint64 bits = bigEndian(record, at, 8);
        memcpy(&value.real, &bits, sizeof bits);
        value.kind = RawValue::Kind::Real;
        return value;
    }
    value.bytes = record.mid(at, bytesOf(type));
    value.kind = type % 2 ? RawValue::Kind::Text : RawValue::Kind::Blob;
    if (value.kind == RawValue::Kind::Text && !isText(value.bytes)) return std::nullopt;
    return value;
}

/// As a STRICT table would have stored it.
bool fits(RawValue& value, const RawColumn& column) {
    using Kind = RawValue::Kind;
    using Type = RawColumn::Type;
    const Type type = column.type;
    switch (value.kind) {
    case Kind::Null:
        return !column.needed;
    case Kind::Integer:
        if (type == Type::Real) {
            value.real = static_cast<double>(value.integer);
            value.kind = Kind::Real;
        }
        return type == Type::Integer || type == Type::Real;
    case Kind::Real:
        return type == Type::Real;
    case Kind::Text:
        return type == Type::Text;
    case Kind::Blob:
        return type == Type::Blob;
    }
    return false;
}

} // namespace

std::optional<std::vector<RawValue>> rawRecord(const QByteArray& record, const RecordShape& shape) {
    const auto head = rawNumber(record, 0);
    if (!head || head->value < head->size || head->value > record.size()) return std::nullopt;
    std::vector<RawValue> values;
    qsizetype body = head->value;
    size_t column = 0;
    for (qsizetype at = head->size; at < head->value; ++column) {
        const auto type = rawNumber(record, at);
        if (!type || bytesOf(type->value) < 0 || column >= shape.columns.size()) return std::nullopt;
        at += type->size;
        const qint64 size = bytesOf(type->value);
        if (at > head->value || size > record.size() - body) return std::nullopt;
        auto value = valueAt(record, body, type->value);
        body += size;
        const bool id = column == 0 && shape.idFirst; // the row's key: stands there alone
        if (!value || (id ? value->kind != RawValue::Kind::Null : !fits(*value, shape.columns[column])))
            return std::nullopt;
        if (!id) values.push_back(*std::move(value));
    }
    if (body != record.size() || column < shape.least) return std::nullopt;
    values.resize(shape.columns.size() - (shape.idFirst ? 1 : 0));
    return values;
}

} // namespace core::store

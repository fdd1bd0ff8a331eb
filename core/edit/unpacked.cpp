#include "core/edit/unpacked.h"

#include <QtEndian>

#include <zlib.h>

namespace core::edit {

namespace {

constexpr qsizetype kHead = 4; ///< the size, as qCompress() writes it before the packed bytes

} // namespace

std::optional<QByteArray> unpacked(const QByteArray& packed, qint64 most) {
    if (packed.size() < kHead) return std::nullopt;
    const qint64 size = qFromBigEndian<quint32>(packed.constData());
    if (size > most) return std::nullopt;
    if (packed.size() == kHead) return size == 0 ? std::optional(QByteArray()) : std::nullopt;
    QByteArray bytes(static_cast<qsizetype>(size), Qt::Uninitialized);
    auto got = static_cast<uLongf>(size);
    const int code = uncompress(reinterpret_cast<Bytef*>(bytes.data()), &got,
                                reinterpret_cast<const Bytef*>(packed.constData()) + kHead,
                                static_cast<uLong>(packed.size() - kHead));
    if (code != Z_OK || got != static_cast<uLongf>(size)) return std::nullopt;
    return bytes;
}

} // namespace core::edit

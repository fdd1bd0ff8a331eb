#pragma once

#include "core/model/rows.h"

#include <QDateTime>
#include <QString>

#include <optional>

namespace core {

/// One line of the history that altered an entry of the medicine book, removed it or put it back.
struct MedicineChange {
    TreatmentId treatment;
    qint64 seq = 0;                  ///< of the line
    QDateTime at;                    ///< UTC
    QString by;                      ///< empty: not recorded
    QString reason;                  ///< of a correction; empty: not recorded
    std::optional<Treatment> before; ///< not set: it was put back
    std::optional<Treatment> after;  ///< not set: it was removed
    friend bool operator==(const MedicineChange&, const MedicineChange&) = default;
};

} // namespace core

#pragma once

#include "core/base/day.h"
#include "core/base/id.h"

#include <QHash>
#include <QString>

#include <optional>
#include <string>
#include <string_view>
#include <unordered_map>
#include <vector>

namespace core::exchange {

/// A label without regard to case, as a small number.
struct LabelId {
    qint32 value = -1;
    friend auto operator<=>(LabelId, LabelId) = default;
};

/// A colony as a cell names it: LABEL or LABEL@SINCE.
struct ColonyRef {
    LabelId label;
    std::optional<Day> since;
};

/// Why a text is no label; empty where it is one: trimmed, 1 to 60 characters, no control characters.
QString labelTrouble(const QString& trimmed);

/// The labels of colonies, each kept once; references are read once for each spelling.
class NamePool {
public:
    /// The label `shown` is the spelling that sentences use until another is given to name().
    LabelId intern(const QString& label);
    const QString& shown(LabelId id) const { return m_shown[static_cast<size_t>(id.value)]; }
    size_t size() const { return m_shown.size(); }

    struct Read {
        ColonyRef ref;
        QString trouble; ///< not empty: the cell names no colony
    };
    /// `cell`: UTF-8 as in the file. The reference stays valid until the next call.
    const Read& read(std::string_view cell);

private:
    struct Hash {
        using is_transparent = void;
        size_t operator()(std::string_view s) const { return std::hash<std::string_view>{}(s); }
    };
    Read parse(std::string_view cell);

    std::vector<QString> m_shown;
    QHash<QString, qint32> m_byFolded;
    Read m_long; ///< of a cell too long to be kept
    std::unordered_map<std::string, Read, Hash, std::equal_to<>> m_read;
};

} // namespace core::exchange

#include "core/model/kit_words.h"

namespace core::kit {

QStringList states() { return {kUsable, kToClean, kQuarantined, kBurned, kSterilised}; }

bool keepsColony(const QString& state) { return state == kQuarantined || state == kBurned || state == kSterilised; }

QStringList commonParts() {
    return {kFloor, kLid,      kInnerCover, QStringLiteral("feeder"), QStringLiteral("entrance reducer"),
            kStrap, kQueenCage};
}

} // namespace core::kit

#include "app/colony_names.h"

#include "core/base/error.h"

#include <vector>

namespace app {

using core::Error;

core::ColonyIx colonyCalled(const core::Snapshot& s, const QString& name) {
    const auto found = s.colonyNamed(name);
    if (!found)
        throw Error(Error::Kind::BadData,
                    QStringLiteral("“%1” is no colony of this book on %2.").arg(name, core::isoText(s.on)));
    const core::SnapColony& c = s.colony(*found);
    if (!c.living())
        throw Error(Error::Kind::BadData,
                    QStringLiteral("%1 ended on %2 (%3).").arg(name, core::isoText(*c.ended), core::word(c.end)));
    return *found;
}

core::rules::ColonyPair pairCalled(const core::Snapshot& s, const QString& option, const QString& text) {
    std::vector<std::pair<QString, QString>> fits;
    for (qsizetype plus = text.indexOf(u'+'); plus >= 0; plus = text.indexOf(u'+', plus + 1))
        if (s.colonyNamed(QStringView(text).left(plus)) && s.colonyNamed(QStringView(text).mid(plus + 1)))
            fits.emplace_back(text.left(plus), text.mid(plus + 1));
    if (fits.empty())
        throw Error(Error::Kind::BadData,
                    QStringLiteral(
                        "--%1 “%2” does not name two colonies of this book; two labels with + between were expected.")
                        .arg(option, text));
    if (fits.size() > 1)
        throw Error(
            Error::Kind::BadData,
            QStringLiteral("--%1 “%2” can be read as more than one pair; write LABEL@SINCE.").arg(option, text));
    return {colonyCalled(s, fits.front().first), colonyCalled(s, fits.front().second)};
}

core::YardIx yardCalled(const core::Snapshot& s, const QString& name) {
    const auto found = s.yardNamed(name.trimmed());
    if (!found) throw Error(Error::Kind::BadData, QStringLiteral("“%1” is no yard of this book.").arg(name));
    return *found;
}

} // namespace app

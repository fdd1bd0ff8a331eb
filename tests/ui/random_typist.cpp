#include "tests/ui/random_typist.h"

namespace tests {

QString RandomTypist::frames() {
    if (chance(4)) return QStringLiteral("99");
    return QString::number(below(41) / 4.0);
}

QString RandomTypist::text(const ui::form::Field& field, const QStringList& labels) {
    using ui::form::Kind;
    static const QStringList kWords{QStringLiteral("drawn comb"), QStringLiteral("windy"), QStringLiteral("Q7"),
                                    QStringLiteral("L 12/26")};
    if (chance(3)) return QStringLiteral("?");
    switch (field.kind) {
    case Kind::Colony:
        return oneOf(labels);
    case Kind::Choice:
    case Kind::Yard:
        return field.options.empty()
                   ? QString()
                   : field.options[static_cast<size_t>(below(static_cast<int>(field.options.size())))].value;
    case Kind::Day:
        return core::isoText(day());
    case Kind::Whole:
        return QString::number(1 + below(12));
    case Kind::Decimal:
        return QString::number(below(200) / 10.0);
    case Kind::Tick:
        return chance(50) ? ui::form::kTicked : QString();
    case Kind::Text:
    case Kind::LongText:
        break;
    }
    return oneOf(kWords);
}

} // namespace tests

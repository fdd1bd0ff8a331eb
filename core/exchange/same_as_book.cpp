#include "core/exchange/same_as_book.h"

namespace core::exchange {

bool sameAsBook(Ledger& ledger, Origin at, const QString& name, const std::vector<Field>& fields) {
    const auto shown = [](const QString& value) { return value.isEmpty() ? Say::tr("blank") : u'“' + value + u'”'; };
    for (const Field& field : fields) {
        if (field.given == field.stored) continue;
        ledger.fault(at, field.column,
                     Say::tr("%1 where the book has %2 for “%3”, expected the same")
                         .arg(shown(field.given), shown(field.stored), name));
        return false;
    }
    return true;
}

void faultTwice(Ledger& ledger, Origin at, const char* column, const QString& name, Origin before) {
    ledger.fault(at, column, Say::tr("“%1” stands in %2 too, expected it once").arg(name, ledger.place(before)));
}

} // namespace core::exchange

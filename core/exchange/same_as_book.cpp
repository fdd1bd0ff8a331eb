#include "core/exchange/same_as_book.h"

#include "core/model/words.h"

#include <algorithm>
#include <cstring>

namespace core::exchange {

namespace {

QString shownValue(const QString& value) { return value.isEmpty() ? Say::tr("blank") : u'“' + value + u'”'; }

/// A sign that holds a colony, and that the book does not have: never left out.
bool isNewDoubt(const Field& field) {
    if (std::strcmp(field.column, "signs") != 0) return false;
    const QStringList stored = field.stored.split(u' ');
    return std::ranges::any_of(field.given.split(u' '), [&](const QString& sign) {
        const auto known = fromWord<Sign>(sign);
        return known && (known == Sign::Afb || known == Sign::Efb || known == Sign::BroodDoubt) &&
               !stored.contains(sign);
    });
}

void keepDifference(Ledger& ledger, Origin at, const QString& name, const Field& field) {
    auto& kept = ledger.report.differences;
    if (kept.size() >= ImportReport::kMostDifferences) return;
    kept.push_back({ledger.drafts.files[static_cast<size_t>(at.file)], at.line,
                    ledger.drafts.shownColumn(at.file, QString::fromLatin1(field.column)), name, field.given,
                    field.stored});
}

} // namespace

bool sameAsBook(Ledger& ledger, Origin at, const QString& name, const std::vector<Field>& fields) {
    const Field* first = nullptr;
    const Field* doubt = nullptr;
    for (const Field& field : fields) {
        if (field.given == field.stored) continue;
        keepDifference(ledger, at, name, field);
        if (!first) first = &field;
        if (isNewDoubt(field)) doubt = &field;
    }
    if (!first) return true;
    ++ledger.report.otherwise;
    if (ledger.leaveOut && !doubt) return false;
    const Field& field = doubt && ledger.leaveOut ? *doubt : *first;
    ledger.fault(at, field.column,
                 Say::tr("%1 where the book has %2 for “%3”, expected the same")
                     .arg(shownValue(field.given), shownValue(field.stored), name));
    return false;
}

void faultTwice(Ledger& ledger, Origin at, const char* column, const QString& name, Origin before) {
    ledger.fault(at, column, Say::tr("“%1” stands in %2 too, expected it once").arg(name, ledger.place(before)));
}

} // namespace core::exchange

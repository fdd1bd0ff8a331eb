#pragma once

#include <QString>
#include <QStringView>

namespace core {

/// Unicode simple case folding, code point by code point: labels and names match on this.
QString folded(QStringView text);

/// < 0, 0, > 0. Run by run: runs of ASCII digits by value and before other runs, other runs folded, then the exact
/// text; "A2" before "A10". 0 only for equal texts.
int naturalCompare(QStringView a, QStringView b);

/// The same of texts already folded, without the last step: 0 where only case or leading zeros differ. For long lists.
int naturalCompareFolded(QStringView a, QStringView b);

struct NaturalLess {
    bool operator()(const QString& a, const QString& b) const { return naturalCompare(a, b) < 0; }
};

} // namespace core

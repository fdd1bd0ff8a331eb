#include "ui/board/pair_typed.h"

#include "ui/board/boards.h"
namespace ui::board {

namespace {

bool parts(QChar c) { return c == u'+' || c == u',' || c == u';' || c == u'&' || c.isSpace(); }

} // namespace

PairTyped pairTyped(const desk::Reading& reading, const QString& typed) {
    PairTyped out;
    const QString text = typed.trimmed();
    QString unknown;
    for (qsizetype i = 1; i + 1 < text.size(); ++i) {
        if (!parts(text[i])) continue;
        const QString left = text.left(i).trimmed();
        QString right = text.mid(i + 1).trimmed();
        if (right.startsWith(u'+') && !reading.snapshot.livingNamed(right)) right = right.mid(1).trimmed();
        const auto a = reading.snapshot.livingNamed(left), b = reading.snapshot.livingNamed(right);
        if (a && b && *a != *b) return {*a, *b, {}};
        if (a && b) out.problem = Boards::tr("That is %1 twice: name two colonies.").arg(left);
        if (unknown.isEmpty() && (a || b)) unknown = a ? right : left;
    }
    if (!out.problem.isEmpty()) return out;
    out.problem = unknown.isEmpty() ? Boards::tr("“%1” are no two colonies: type two labels, as in K2 + K7.").arg(text)
                                    : Boards::tr("No living colony is called %1.").arg(unknown);
    return out;
}

} // namespace ui::board

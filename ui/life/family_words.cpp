#include "ui/life/family_words.h"

#include "ui/look/end_words.h"
#include "ui/look/words.h"

#include <QCoreApplication>
#include <QStringList>

namespace ui::life {

namespace {

struct KinWords {
    Q_DECLARE_TR_FUNCTIONS(ui::life::KinWords)
};

QString tieText(const Family& f, const KinTie& t, size_t row) {
    const QString day = look::dayText(t.day);
    const QString& other = f.kin[t.from == row ? t.into : t.from].name;
    switch (t.how) {
    case core::LineageHow::United:
        return t.from == row ? KinWords::tr("united into %1 on %2").arg(other, day)
                             : KinWords::tr("%1 united into it on %2").arg(other, day);
    case core::LineageHow::ShakenOut:
        return t.from == row ? KinWords::tr("shaken out before %1 on %2").arg(other, day)
                             : KinWords::tr("%1 shaken out before it on %2").arg(other, day);
    case core::LineageHow::Divided:
        break;
    }
    return t.from == row ? KinWords::tr("%1 divided from it on %2").arg(other, day)
                         : KinWords::tr("divided from %1 on %2").arg(other, day);
}

QString year(core::Day day) { return QString::number(core::toDate(day).year()); }

} // namespace

QString yearsText(const Kin& kin) {
    if (!kin.ended) return KinWords::tr("since %1").arg(year(kin.since));
    const QString years = year(kin.since) == year(*kin.ended)
                              ? year(kin.since)
                              : KinWords::tr("%1–%2").arg(year(kin.since), year(*kin.ended));
    return kin.end ? KinWords::tr("%1, %2").arg(years, look::endWord(*kin.end)) : years;
}

QString kinText(const Family& family, size_t row) {
    const Kin& kin = family.kin[row];
    QStringList parts;
    if (!kin.ended)
        parts << KinWords::tr("%1, since %2").arg(kin.name, look::dayText(kin.since));
    else
        parts << KinWords::tr("%1, %2 to %3, %4")
                     .arg(kin.name, look::dayText(kin.since), look::dayText(*kin.ended),
                          kin.end ? look::endWord(*kin.end) : QString());
    for (const KinTie& t : family.ties)
        if (t.from == row || t.into == row) parts << tieText(family, t, row);
    return parts.join(QStringLiteral("; "));
}

QString familyLine(const Family& family) {
    if (family.kin.size() < 2)
        return KinWords::tr("It came from no other colony that is in the book, and went into none.");
    QString line =
        KinWords::tr("Each line is a colony from its first day to its last; each stroke carries bees from one to "
                     "another: divided (thin), united (bold), shaken out (dotted).");
    if (family.left > 0) line += u' ' + KinWords::tr("%n more, farther off, not drawn.", nullptr, family.left);
    return line;
}

} // namespace ui::life

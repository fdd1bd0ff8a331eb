#include "ui/entry/entry_columns.h"

#include <QCoreApplication>
#include <QSettings>

#include <algorithm>

namespace ui::entry {

using core::TallyColumn;

namespace {

struct Heads {
    Q_DECLARE_TR_FUNCTIONS(ui::entry::Heads)
};

struct Head {
    const char* key; ///< among what this machine remembers
    const char* head;
    const char* spoken;
    int digits;
};

/// By column.
constexpr Head kHeads[] = {
    {"bees_top", QT_TRANSLATE_NOOP("ui::entry::Heads", "above"),
     QT_TRANSLATE_NOOP("ui::entry::Heads", "frames of bees in the lower or only box, seen from above"), 9},
    {"bees_bottom", QT_TRANSLATE_NOOP("ui::entry::Heads", "below"),
     QT_TRANSLATE_NOOP("ui::entry::Heads", "frames of bees in the lower or only box, seen from below"), 9},
    {"upper_bees_top", QT_TRANSLATE_NOOP("ui::entry::Heads", "2: above"),
     QT_TRANSLATE_NOOP("ui::entry::Heads", "frames of bees in the upper box, seen from above"), 9},
    {"upper_bees_bottom", QT_TRANSLATE_NOOP("ui::entry::Heads", "2: below"),
     QT_TRANSLATE_NOOP("ui::entry::Heads", "frames of bees in the upper box, seen from below"), 9},
    {"queen", QT_TRANSLATE_NOOP("ui::entry::Heads", "queen"),
     QT_TRANSLATE_NOOP("ui::entry::Heads", "queen, by a letter: s seen, e eggs, v virgin, d drone-layer, n none, "
                                           "l laying workers, u looked for, not known"),
     6},
    {"brood", QT_TRANSLATE_NOOP("ui::entry::Heads", "brood"), QT_TRANSLATE_NOOP("ui::entry::Heads", "brood frames"), 6},
    {"checked", QT_TRANSLATE_NOOP("ui::entry::Heads", "check"),
     QT_TRANSLATE_NOOP("ui::entry::Heads", "brood frames examined for disease"), 6},
    {"signs", QT_TRANSLATE_NOOP("ui::entry::Heads", "signs"),
     QT_TRANSLATE_NOOP("ui::entry::Heads", "signs, by letters: a American, e European foulbrood, d brood in doubt, "
                                           "c chalkbrood, s sacbrood, n nosema, w deformed wings"),
     7},
    {"stores", QT_TRANSLATE_NOOP("ui::entry::Heads", "stores"),
     QT_TRANSLATE_NOOP("ui::entry::Heads", "frames of stores"), 9},
    {"upper_stores", QT_TRANSLATE_NOOP("ui::entry::Heads", "2: stores"),
     QT_TRANSLATE_NOOP("ui::entry::Heads", "frames of stores in the upper box"), 9},
    {"supers", QT_TRANSLATE_NOOP("ui::entry::Heads", "supers"),
     QT_TRANSLATE_NOOP("ui::entry::Heads", "honey boxes on the hive"), 6},
    {"weight", nullptr, QT_TRANSLATE_NOOP("ui::entry::Heads", "weight of the whole hive"), 9},
    {"mites", QT_TRANSLATE_NOOP("ui::entry::Heads", "mites"), QT_TRANSLATE_NOOP("ui::entry::Heads", "mites counted"),
     7},
    {"sample", QT_TRANSLATE_NOOP("ui::entry::Heads", "in bees"),
     QT_TRANSLATE_NOOP("ui::entry::Heads", "bees in the sample"), 7},
    {"boxes", QT_TRANSLATE_NOOP("ui::entry::Heads", "boxes"),
     QT_TRANSLATE_NOOP("ui::entry::Heads", "brood boxes from that day on, 1 or 2"), 6},
    {"note", QT_TRANSLATE_NOOP("ui::entry::Heads", "note"), QT_TRANSLATE_NOOP("ui::entry::Heads", "note"), 24}};

const Head& of(TallyColumn column) { return kHeads[static_cast<size_t>(column)]; }

QString keyFor(const QString& bookId) { return QStringLiteral("entry/columns/") + bookId; }

} // namespace

QString headOf(TallyColumn column, core::WeightUnit unit) {
    return column == TallyColumn::Weight ? core::unitSign(unit) : Heads::tr(of(column).head);
}

QString spokenOf(TallyColumn column, core::WeightUnit unit) {
    const QString spoken = Heads::tr(of(column).spoken);
    return column == TallyColumn::Weight ? Heads::tr("%1, %2").arg(spoken, core::unitSign(unit)) : spoken;
}

int digitsOf(TallyColumn column) { return of(column).digits; }

std::vector<TallyColumn> columnsToBegin(const std::vector<core::Visit>& visits, bool twoBoxes) {
    const auto used = core::columnsUsed(visits);
    std::vector<TallyColumn> usual{TallyColumn::BeesTop, TallyColumn::Queen, TallyColumn::Brood, TallyColumn::Checked,
                                   TallyColumn::Note};
    if (used.empty()) usual.insert(usual.end(), {TallyColumn::BeesBottom, TallyColumn::Weight});
    if (twoBoxes) usual.push_back(TallyColumn::UpperTop);
    std::vector<TallyColumn> out;
    for (const TallyColumn column : core::kTallyOrder)
        if (std::ranges::count(used, column) + std::ranges::count(usual, column) > 0) out.push_back(column);
    return out;
}

std::vector<TallyColumn> chosenColumns(const QString& bookId) {
    const QStringList keys = QSettings().value(keyFor(bookId)).toStringList();
    std::vector<TallyColumn> out;
    for (const TallyColumn column : core::kTallyOrder)
        if (keys.contains(QLatin1StringView(of(column).key))) out.push_back(column);
    return out;
}

void rememberColumns(const QString& bookId, const std::vector<TallyColumn>& columns) {
    QStringList keys;
    for (const TallyColumn column : columns) keys << QString::fromLatin1(of(column).key);
    QSettings().setValue(keyFor(bookId), keys);
}

void forgetColumns(const QString& bookId) { QSettings().remove(keyFor(bookId)); }

} // namespace ui::entry

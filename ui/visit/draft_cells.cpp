#include "ui/visit/draft_cells.h"

namespace ui::visit {

namespace {

std::optional<int> boxesOf(QStringView text) {
    if (text == u"1" || text == u"2") return text == u"1" ? 1 : 2;
    return std::nullopt;
}

/// "cw", "c w" or "c;w"; nullopt where a letter is no sign's.
std::optional<core::Signs> signsOf(QStringView text) {
    core::Signs signs;
    for (const QChar c : text) {
        if (c.isSpace() || c == u';' || c == u',') continue;
        const auto sign = core::signOfLetter(c);
        if (!sign) return std::nullopt;
        signs.add(*sign);
    }
    return signs;
}

QString lettersOf(core::Signs signs) {
    QString out;
    for (size_t i = 0; i < core::wordsOf<core::Sign>().size(); ++i)
        if (const auto sign = static_cast<core::Sign>(i); signs.has(sign)) out += core::tallyLetter(sign);
    return out;
}

} // namespace

Field fieldOf(core::TallyColumn column) {
    using core::TallyColumn;
    switch (column) {
    case TallyColumn::BeesTop:
        return Field::BeesTop;
    case TallyColumn::BeesBottom:
        return Field::BeesBottom;
    case TallyColumn::UpperTop:
        return Field::UpperTop;
    case TallyColumn::UpperBottom:
        return Field::UpperBottom;
    case TallyColumn::Queen:
        return Field::Queen;
    case TallyColumn::Brood:
        return Field::Brood;
    case TallyColumn::Checked:
        return Field::Checked;
    case TallyColumn::Signs:
        return Field::Signs;
    case TallyColumn::Stores:
        return Field::Stores;
    case TallyColumn::UpperStores:
        return Field::UpperStores;
    case TallyColumn::Supers:
        return Field::Supers;
    case TallyColumn::Weight:
        return Field::Gross;
    case TallyColumn::Mites:
        return Field::Mites;
    case TallyColumn::Sample:
        return Field::Sample;
    case TallyColumn::Boxes:
        return Field::Boxes;
    case TallyColumn::Note:
        break;
    }
    return Field::Note;
}

QString typedIn(const VisitDraft& d, Field field) {
    if (static_cast<size_t>(field) < kFields) return d[field];
    if (const auto it = d.unread.find(field); it != d.unread.end()) return it->second;
    switch (field) {
    case Field::Day:
        return core::isoText(d.day);
    case Field::Boxes:
        return d.boxes ? QString::number(*d.boxes) : QString();
    case Field::Queen:
        return d.queen ? QString(core::tallyLetter(*d.queen)) : QString();
    default:
        return lettersOf(d.signs);
    }
}

void typeInto(VisitDraft& d, Field field, const QString& typed) {
    if (static_cast<size_t>(field) < kFields) {
        d[field] = typed;
        return;
    }
    const QString text = typed.trimmed();
    bool read = true;
    if (field == Field::Day) {
        const auto day = core::parseIsoDay(text);
        if ((read = day.has_value())) d.day = *day;
    } else if (field == Field::Boxes) {
        d.boxes = boxesOf(text);
        read = d.boxes || text.isEmpty();
    } else if (field == Field::Queen) {
        d.queen = text.size() == 1 ? core::queenOfLetter(text[0]) : std::nullopt;
        read = d.queen || text.isEmpty();
    } else {
        const auto signs = signsOf(text);
        d.signs = signs.value_or(core::Signs{});
        read = signs.has_value();
    }
    if (read)
        d.unread.erase(field);
    else
        d.unread[field] = typed;
}

} // namespace ui::visit

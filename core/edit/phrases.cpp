#include "core/edit/phrases.h"

#include "core/base/natural_order.h"
#include "core/edit/edit_checks.h"
#include "core/edit/row_change.h"

#include <algorithm>

namespace core::edit {

namespace {

constexpr qsizetype kLongestBrief = 12;
constexpr qsizetype kLongestSentence = 500;

Phrase needPhrase(const EditContext& c, PhraseId id) {
    auto phrase = c.find<Phrase>(id.value);
    if (!phrase) refuse(Edits::tr("That quick sentence is no longer in the book."));
    return *std::move(phrase);
}

/// Trimmed and in range; no other has its brief word.
Phrase checkedPhrase(const EditContext& c, const Phrase& typed) {
    Phrase p = typed;
    p.brief = checkedName(typed.brief, Edits::tr("Brief word"));
    if (p.brief.toUcs4().size() > kLongestBrief || std::ranges::any_of(p.brief, [](QChar ch) { return ch.isSpace(); }))
        refuse(Edits::tr("Brief word: expected one word of at most %1 characters, found “%2”.")
                   .arg(kLongestBrief)
                   .arg(p.brief));
    p.sentence = typed.sentence.simplified();
    const auto length = p.sentence.toUcs4().size();
    if (length < 1 || length > kLongestSentence)
        refuse(Edits::tr("Sentence: expected 1 to %1 characters, found %2.").arg(kLongestSentence).arg(length));
    c.each<Phrase>([&](const Phrase& other) {
        if (other.id != p.id && folded(other.brief) == folded(p.brief))
            refuse(Edits::tr("%1 stands for another sentence already: “%2”").arg(other.brief, other.sentence));
    });
    return p;
}

} // namespace

ChangeSet addPhrase(const EditContext& c, const QString& brief, const QString& sentence) {
    const Phrase phrase = checkedPhrase(c, {PhraseId{c.nextId(Table::Phrase)}, brief, sentence});
    return {
        Edits::tr("Added the quick sentence %1: “%2”").arg(phrase.brief, phrase.sentence), {added(phrase)}, {}, {}, {}};
}

ChangeSet changePhrase(const EditContext& c, const Phrase& typed) {
    const Phrase old = needPhrase(c, typed.id);
    const Phrase now = checkedPhrase(c, typed);
    if (now == old) return {};
    return {
        Edits::tr("Changed the quick sentence %1: “%2”").arg(now.brief, now.sentence), {changed(old, now)}, {}, {}, {}};
}

ChangeSet takeBackPhrase(const EditContext& c, PhraseId id) {
    const Phrase phrase = needPhrase(c, id);
    return {Edits::tr("Took the quick sentence %1 from the book").arg(phrase.brief), {deleted(phrase)}, {}, {}, {}};
}

} // namespace core::edit

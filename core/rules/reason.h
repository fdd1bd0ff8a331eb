#pragma once

#include "core/model/snapshot.h"
#include "core/rules/hold_gifts.h"

#include <QString>
#include <QStringList>

#include <utility>
#include <variant>
#include <vector>

// Why a rule found what it found: the rule by its number, what it saw, and the limits that decided, as data. Windows,
// paper and tests read these; nobody looks for them in a text.

namespace core::rules {

/// One thing that was seen, by name: "counted" → a day, "host" → a colony. A plain number is what its name says.
struct Fact {
    using Value = std::variant<qint64, ColonyIx, YardIx, Day, Quarters, Decagrams, Gift, QString>;
    const char* name = "";
    Value value;
};

struct Reason {
    const char* rule = "";                ///< "4.7.9": as core/rules/README.md numbers them
    std::vector<Fact> facts = {};         ///< the most telling first
    std::vector<const char*> limits = {}; ///< by name, see limits.h; each once
    bool southern = false;                ///< days of the year move by six months

    Reason& fact(const char* name, const Fact::Value& value);
    /// Names a limit, once.
    Reason& limit(const char* name);
    /// Takes in what another found, limits once.
    Reason& add(const Reason& other);
    bool names(const char* limit) const;
    /// The first fact of that name and type; nullptr where there is none.
    template <class T> const T* find(const char* name) const;
};

/// A sentence as its pattern ("%1 …") and what stands in it, so that paper can say it in another language too.
struct Sentence {
    const char* pattern = "";
    QStringList args = {};
};
using Sentences = std::vector<Sentence>;
/// All at once: a label with a "%1" of its own stays as it is.
QString filled(const QString& pattern, const QStringList& args);
QString textOf(const Sentences& sentences);

/// "2026-08-05", "3.25 frames", "K4": for people, in the units shown.
QString factText(const Snapshot& s, const Fact& fact);
/// What the fact is called: "counted", "last contact".
QString factName(const Fact& fact);

bool sameName(const char* a, const char* b);

template <class T> const T* Reason::find(const char* name) const {
    for (const Fact& f : facts)
        if (sameName(f.name, name))
            if (const T* value = std::get_if<T>(&f.value)) return value;
    return nullptr;
}

} // namespace core::rules

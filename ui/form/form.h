#pragma once

#include "core/edit/session.h"

#include <QString>
#include <QStringList>

#include <functional>
#include <map>
#include <optional>
#include <vector>

namespace ui::form {

/// What was typed, by field key; nothing in it need be right. A field that is not in it is empty. A tick is kTicked or
/// empty; a choice is the value of one of its options.
using Values = std::map<QString, QString>;
inline const QString kTicked = QStringLiteral("yes");

enum class Kind { Text, LongText, Whole, Decimal, Day, Choice, Colony, Yard, Tick };

/// One of a choice (or yard), or something that completes what is typed (of a text or colony).
struct Option {
    QString value;
    QString text = {}; ///< as shown; empty: the value
};

struct Field {
    QString key;
    Kind kind = Kind::Text;
    QString label = {};                              ///< with its mnemonic
    QString spoken = {};                             ///< what a screen reader says
    QString heading = {};                            ///< a group begins with this field
    QString hint = {};                               ///< shown in the empty field
    std::vector<Option> options = {};                ///< of Choice, Yard, Colony; of Text: suggestions
    std::function<bool(const Values&)> shown = {};   ///< not set: always
    std::function<QString(const Values&)> note = {}; ///< a quiet line beneath: what the typed text means
};

/// Something that keeps the values from being saved.
struct Problem {
    QString field; ///< its key; empty: of the whole
    QString text;
    bool missing = false; ///< only not filled in (to the end) yet: said once the field was left or saving was tried
    friend bool operator==(const Problem&, const Problem&) = default;
};

/// A record as it is typed: fields, what is wrong with their values, and the edit that saves them. Knows no widgets.
/// Each may read the book when asked; where that throws, the panel shows the sentence.
class Form {
public:
    virtual ~Form();

    virtual QString title() const = 0;
    virtual QString saveText() const = 0;            ///< of the button, with its mnemonic
    virtual QString what() const { return title(); } ///< what a correction is asked for
    virtual QString hint() const;                    ///< at its foot: what the keys do
    virtual std::vector<Field> fields() const = 0;
    virtual Values start() const = 0;
    /// All at once; of fields that are not shown none. Empty: the values can be saved.
    virtual std::vector<Problem> problems(const Values& values) const = 0;
    /// Possible but odd, a sentence each ("12 frames after 3 last week"): asked about once.
    virtual QStringList odd(const Values& values) const;
    /// Only of values without problems.
    virtual core::edit::Edit edit(const Values& values) const = 0;
    /// The record that is being changed is no longer what it was when the form began: one sentence.
    virtual std::optional<QString> meanwhile() const;
};

} // namespace ui::form

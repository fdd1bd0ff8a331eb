#pragma once

#include "ui/form/form.h"

#include <QCoreApplication>
#include <QStringList>

#include <functional>
#include <optional>

namespace ui::bulk {

/// Translation context of the forms for several.
struct Bulk {
    Q_DECLARE_TR_FUNCTIONS(Bulk)
};

/// What several records have in one field, as typed text.
struct Common {
    QString value; ///< that of all, where they agree
    bool mixed = false;
    QString seen; ///< where they do not: "3, 3.25, — …"
};
/// `shown`: how a value is said; not given: as it is. An empty one is said as a dash.
Common commonOf(const QStringList& values, const std::function<QString(const QString&)>& shown = {});

/// "mixed values: 3, 3.25": stands in the empty field, or first in a choice.
QString mixedText(const Common& common);
/// The value of a choice that leaves mixed values as they are.
inline const QString kMixed = QStringLiteral("mixed");
/// Typed to say that nothing is recorded.
bool saysNothing(const QString& typed);

/// What is written of a field: not set: it stays as it is; empty: not recorded. Mixed text is left empty to stay, a
/// mixed choice stands at kMixed.
std::optional<QString> written(const form::Values& values, const QString& key, const Common& common,
                               form::Kind kind = form::Kind::Text);

/// A field of text with its common value, or mixed values shown as such.
form::Field mixedField(form::Field field, const Common& common);
/// The same of a choice: one that leaves mixed values as they are comes first.
form::Field mixedChoice(form::Field field, const Common& common);
/// What the field begins with.
QString startOf(const form::Field& field, const Common& common);

} // namespace ui::bulk

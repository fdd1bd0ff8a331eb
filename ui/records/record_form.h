#pragma once

#include "core/base/error.h"
#include "core/edit/edit_context.h"
#include "core/edit/session.h"
#include "ui/form/form.h"
#include "ui/form/judge.h"

#include <QCoreApplication>

#include <optional>

namespace ui::records {

/// Translation context of the records' forms.
struct Records {
    Q_DECLARE_TR_FUNCTIONS(Records)
};

/// A form of one record. What its edit would refuse is said as it is typed, once the fields themselves are right.
class RecordForm : public form::Form {
public:
    std::vector<form::Problem> problems(const form::Values& values) const final;

protected:
    explicit RecordForm(const core::edit::Session& book) : m_book(book) {}

    const core::edit::Session& book() const { return m_book; }
    core::Day today() const { return m_book.clock().today(); }
    /// What is wrong with the fields themselves.
    virtual void judge(form::Judge& judge, const form::Values& values) const = 0;
    /// The edit reads few rows: it may be tried with each keystroke.
    virtual bool quick() const { return true; }

    /// The colony that a field names on that day; says what is wrong with the name.
    std::optional<core::Colony> judgeColony(form::Judge& judge, const form::Values& values, const QString& key,
                                            core::Day on) const;
    /// The colony that a field names; of values without problems.
    core::ColonyId colonyOf(const form::Values& values, const QString& key, core::Day on) const;
    std::optional<core::YardId> yardOf(const form::Values& values, const QString& key) const;
    QString nameOf(core::ColonyId colony, core::Day on) const;

    // Fields that several forms have.
    static form::Field dayField(const QString& spoken);
    form::Field byField(const QString& label, const QString& spoken) const; ///< the book's people are offered
    static form::Field noteField();
    form::Field colonyField(const QString& key, const QString& label, const QString& spoken) const;

private:
    /// It is the beginning of some colony's name.
    bool begins(const QString& name) const;

    const core::edit::Session& m_book;
    mutable std::vector<form::Option> m_names; ///< of all colonies, once a field asks for one
};

/// What became of a record that a form changes, since it was read as `was`: one sentence.
template <class T> std::optional<QString> movedSince(const core::edit::Session& book, const T& was) {
    std::optional<T> now;
    book.read([&](const core::edit::EditContext& c) { now = c.find<T>(was.id.value); });
    if (!now) return Records::tr("This record was taken back meanwhile; what is typed here cannot be saved over it.");
    if (*now == was) return std::nullopt;
    return Records::tr(
        "This record was changed meanwhile. What is typed here stays; saving writes it over that change.");
}

/// A choice among the values of an enum: their words of the files, shown in our words.
template <class E> std::vector<form::Option> choices(QString (*shown)(E)) {
    std::vector<form::Option> out;
    for (size_t i = 0; i < core::wordsOf<E>().size(); ++i)
        out.push_back({core::word(static_cast<E>(i)), shown(static_cast<E>(i))});
    return out;
}
template <class E> E chosenOf(const form::Values& values, const QString& key) {
    const auto it = values.find(key);
    return it == values.end() ? E{} : core::fromWord<E>(it->second).value_or(E{});
}

// Keys of fields that several forms have.
inline const QString kDay = QStringLiteral("day");
inline const QString kBy = QStringLiteral("by");
inline const QString kNote = QStringLiteral("note");
inline const QString kColony = QStringLiteral("colony");
inline const QString kYard = QStringLiteral("yard");

} // namespace ui::records

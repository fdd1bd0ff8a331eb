#include "ui/close/close_forms.h"

#include "ui/form/judge.h"
#include "ui/form/typed.h"

namespace ui::close {

using core::LineageHow;
using core::StripOutcome;
using form::Values;

namespace {

const QString kWhat = QStringLiteral("how");
const QString kMoved = QStringLiteral("moved");
const QString kInto = QStringLiteral("into");
const QString kWhy = QStringLiteral("why");

form::Option option(LineageHow how) {
    return {core::word(how), how == LineageHow::United ? WriteBack::tr("united") : WriteBack::tr("shaken out")};
}

std::optional<LineageHow> howOf(const Values& values) { return core::fromWord<LineageHow>(form::typed(values, kWhat)); }

class NotDoneForm : public StripForm {
public:
    NotDoneForm(const core::edit::Session& book, const Line& line, const core::edit::StripClose& strip)
        : StripForm(book, strip, WriteBack::tr("%1: not done").arg(line.title())), m_why(line.note) {}

    std::vector<form::Field> fields() const override {
        form::Field why{.key = kWhy,
                        .label = WriteBack::tr("&Why"),
                        .spoken = WriteBack::tr("Why it was not done"),
                        .hint = WriteBack::tr("may stay empty")};
        for (const QString& reason :
             {WriteBack::tr("wind or rain"), WriteBack::tr("no time left"), WriteBack::tr("queen not found"),
              WriteBack::tr("stronger than counted"), WriteBack::tr("brood looked doubtful"),
              WriteBack::tr("stand or hive not as drawn")})
            why.options.push_back({reason, {}});
        return {why};
    }
    Values start() const override { return {{kWhy, m_why}}; }
    Drafted drafted(const Values& values) const override {
        Drafted d{strip()};
        d.strip.outcome = StripOutcome::NotDone;
        d.strip.note = form::typed(values, kWhy);
        d.strip.instead.reset();
        return d;
    }

protected:
    void judge(form::Judge&, const Values&) const override {}

private:
    QString m_why;
};

class ChangedForm : public StripForm {
public:
    ChangedForm(const core::edit::Session& book, const Line& line, const core::edit::StripClose& strip)
        : StripForm(book, strip, WriteBack::tr("%1: what was done instead").arg(line.title())), m_note(line.note) {}

    std::vector<form::Field> fields() const override {
        std::vector<form::Field> out{{.key = records::kNote,
                                      .label = WriteBack::tr("&Instead"),
                                      .spoken = WriteBack::tr("What was done instead"),
                                      .hint = WriteBack::tr("in a few words")},
                                     {.key = kWhat,
                                      .kind = form::Kind::Choice,
                                      .label = WriteBack::tr("&Bees"),
                                      .spoken = WriteBack::tr("What was done with the bees"),
                                      .options = {{QString(), WriteBack::tr("stayed apart")},
                                                  option(LineageHow::United),
                                                  option(LineageHow::ShakenOut)}}};
        for (form::Field& field : pairFields([](const Values& v) { return howOf(v).has_value(); }))
            out.push_back(std::move(field));
        return out;
    }
    Values start() const override {
        Values v{{records::kNote, m_note}, {kMoved, nameOf(strip().moved, strip().day)}};
        if (const auto& x = strip().instead) {
            v[kWhat] = core::word(x->how);
            v[kMoved] = nameOf(x->moved, strip().day);
            v[kInto] = nameOf(x->host, strip().day);
        }
        return v;
    }
    Drafted drafted(const Values& values) const override {
        Drafted d{strip()};
        d.strip.outcome = StripOutcome::Changed;
        d.strip.note = form::typed(values, records::kNote);
        d.strip.instead.reset();
        if (const auto how = howOf(values)) d.strip.instead = pairOf(values, *how);
        return d;
    }

protected:
    void judge(form::Judge& judge, const Values& values) const override {
        judge.need(records::kNote, WriteBack::tr("What was done instead? A few words."));
        if (howOf(values)) judgePair(judge, values);
        const core::edit::DoneInstead same{strip().how, strip().moved, strip().host};
        if (judge.fine() && howOf(values) && pairOf(values, *howOf(values)) == same)
            judge.add(kInto, WriteBack::tr("That is the strip itself: it was done."));
    }

private:
    QString m_note;
};

class OffSheetForm : public StripForm {
public:
    OffSheetForm(const core::edit::Session& book, const core::edit::StripClose& strip)
        : StripForm(book, strip, WriteBack::tr("Done, but not on the sheet")) {}

    std::vector<form::Field> fields() const override {
        std::vector<form::Field> out = pairFields({});
        out.push_back({.key = kWhat,
                       .kind = form::Kind::Choice,
                       .label = WriteBack::tr("&How"),
                       .spoken = WriteBack::tr("United or shaken out"),
                       .options = {option(LineageHow::United), option(LineageHow::ShakenOut)}});
        out.push_back(noteField());
        return out;
    }
    Values start() const override { return {}; }
    Drafted drafted(const Values& values) const override {
        Drafted d{strip()};
        const auto pair = pairOf(values, howOf(values).value_or(LineageHow::United));
        d.strip.how = pair.how;
        d.strip.moved = pair.moved;
        d.strip.host = pair.host;
        d.strip.outcome = StripOutcome::Done;
        d.strip.note = form::typed(values, records::kNote);
        return d;
    }

protected:
    void judge(form::Judge& judge, const Values& values) const override { judgePair(judge, values); }
};

} // namespace

core::edit::Edit editOf(const Drafted& d) {
    return [d](const core::edit::EditContext& c) {
        return d.asFact ? core::edit::closeStripAsFact(c, d.strip) : core::edit::closeStrip(c, d.strip);
    };
}

core::edit::Edit StripForm::edit(const Values& values) const { return editOf(drafted(values)); }

QString StripForm::saveText() const { return WriteBack::tr("&Note it"); }

QString StripForm::hint() const { return WriteBack::tr("Enter notes it and goes on, Escape leaves."); }

std::vector<form::Field> StripForm::pairFields(std::function<bool(const Values&)> shown) const {
    std::vector<form::Field> out{
        colonyField(kMoved, WriteBack::tr("&Carried"), WriteBack::tr("The colony that was carried or shaken out")),
        colonyField(kInto, WriteBack::tr("In&to"), WriteBack::tr("The colony that took its bees"))};
    for (form::Field& field : out) field.shown = shown;
    return out;
}

void StripForm::judgePair(form::Judge& judge, const Values& values) const {
    const auto moved = judgeColony(judge, values, kMoved, m_strip.day);
    const auto into = judgeColony(judge, values, kInto, m_strip.day);
    if (moved && into && moved->id == into->id) judge.add(kInto, WriteBack::tr("Another colony takes its bees."));
}

core::edit::DoneInstead StripForm::pairOf(const Values& values, LineageHow how) const {
    return {how, colonyOf(values, kMoved, m_strip.day), colonyOf(values, kInto, m_strip.day)};
}

std::unique_ptr<StripForm> notDoneForm(const core::edit::Session& book, const Line& line,
                                       const core::edit::StripClose& strip) {
    return std::make_unique<NotDoneForm>(book, line, strip);
}

std::unique_ptr<StripForm> changedForm(const core::edit::Session& book, const Line& line,
                                       const core::edit::StripClose& strip) {
    return std::make_unique<ChangedForm>(book, line, strip);
}

std::unique_ptr<StripForm> offSheetForm(const core::edit::Session& book, const core::edit::StripClose& strip) {
    return std::make_unique<OffSheetForm>(book, strip);
}

} // namespace ui::close

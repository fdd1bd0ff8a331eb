#include "ui/form/book_options.h"

#include "core/base/natural_order.h"
#include "core/edit/edit_context.h"
#include "ui/look/end_words.h"

#include <algorithm>
#include <map>

namespace ui::form {

namespace {

struct Named {
    core::Colony colony;
    QString name;
    QString folded; ///< of the name
};

QString withSince(const core::Colony& c) { return c.label + u'@' + core::isoText(c.since); }

/// The latest of a label has it alone.
std::vector<Named> namedColonies(const core::edit::Session& session) {
    std::vector<Named> all;
    session.read([&](const core::edit::EditContext& c) {
        c.each<core::Colony>([&](core::Colony colony) { all.push_back({std::move(colony), {}, {}}); });
    });
    std::map<QString, core::Day> latest;
    for (const Named& n : all) {
        auto [it, fresh] = latest.try_emplace(core::folded(n.colony.label), n.colony.since);
        it->second = std::max(it->second, n.colony.since);
    }
    for (Named& n : all) {
        n.name = latest.at(core::folded(n.colony.label)) == n.colony.since ? n.colony.label : withSince(n.colony);
        n.folded = core::folded(n.name);
    }
    std::ranges::sort(all, [](const Named& a, const Named& b) {
        const int order = core::naturalCompareFolded(a.folded, b.folded);
        return order != 0 ? order < 0 : a.name < b.name;
    });
    return all;
}

} // namespace

std::vector<Option> colonyOptions(const core::edit::Session& session) {
    std::vector<Option> out;
    for (const Named& n : namedColonies(session)) {
        Option option{n.name, {}};
        if (n.colony.ended) option.text = n.name + QStringLiteral(" – ") + look::endText(n.colony);
        out.push_back(std::move(option));
    }
    return out;
}

std::vector<Option> yardOptions(const core::edit::Session& session) {
    std::vector<Option> out;
    for (const core::Yard& yard : session.yards()) out.push_back({yard.name, {}});
    return out;
}

std::vector<Option> boxOptions(const core::edit::Session& session) {
    std::vector<Option> out;
    for (const core::BoxKind& kind : session.boxKinds()) out.push_back({kind.name, {}});
    return out;
}

std::optional<core::Colony> colonyNamed(const core::edit::Session& session, const QString& name, core::Day on) {
    std::optional<core::Colony> found;
    session.read([&](const core::edit::EditContext& c) { found = c.colonyNamed(name.trimmed(), on); });
    return found;
}

QString nameOn(const core::edit::Session& session, const core::Colony& colony, core::Day on) {
    const auto named = colonyNamed(session, colony.label, on);
    return named && named->id == colony.id ? colony.label : withSince(colony);
}

} // namespace ui::form

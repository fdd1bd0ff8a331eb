#include "core/report/worksheet_part.h"

#include <QRegularExpression>

#include <algorithm>
#include <map>
#include <memory>

// Held colonies: first on the paper. Colonies held by the same kinds that the same records would lift share an entry,
// so that a yard held as a whole stays short.

namespace core::report {

using rules::Hold;
using rules::HoldKind;

namespace {

constexpr QChar kOwn{0x1}; // stands for the colony's own label
constexpr double kBarrier = 6;
constexpr double kLettersLeft = kBarrier + 3;
constexpr double kMostPiece = 85; // mm that the lines of one piece, and the end of an entry, can take

/// The text with the colony's own label taken out, so that texts of several colonies can be compared.
QString withoutName(const QString& text, const QString& label) {
    const QRegularExpression own(QStringLiteral("(?<![\\w@-])") + QRegularExpression::escape(label) +
                                     QStringLiteral("(?![\\w@-])"),
                                 QRegularExpression::UseUnicodePropertiesOption);
    QString out = text;
    return out.replace(own, QString(kOwn));
}

struct HeldColony {
    ColonyIx colony;
    std::vector<const Hold*> holds;
};

struct Group {
    std::vector<HeldColony> colonies;
};

std::vector<HeldColony> heldHere(const SheetInput& in) {
    std::vector<HeldColony> out;
    for (const Hold& h : in.plan.holds) {
        if (!in.here(h.colony)) continue;
        if (out.empty() || out.back().colony != h.colony) out.push_back({h.colony, {}});
        out.back().holds.push_back(&h);
    }
    return out;
}

/// Graver kinds first; colonies in one group share kinds and what would lift them.
std::vector<Group> groupsOf(const SheetInput& in) {
    std::map<QString, Group> groups;
    for (const HeldColony& held : heldHere(in)) {
        QString key;
        for (const Hold* h : held.holds)
            key += QString::number(static_cast<int>(h->kind)) + withoutName(h->lift, in.name(held.colony)) + u'\n';
        groups[key].colonies.push_back(held);
    }
    std::vector<Group> out;
    for (auto& [key, group] : groups) out.push_back(std::move(group));
    return out;
}

/// One line of an entry, before it is set.
struct Line {
    QString text;
    Type type;
    QString lead;
    double gap = 0; ///< above it
};

class EntryWriter {
public:
    EntryWriter(const SheetInput& in, const Group& group) : m_in(in), m_group(group) {}

    std::vector<Line> lines() {
        QStringList names;
        for (const HeldColony& c : m_group.colonies) names << m_in.name(c.colony);
        m_lines.push_back({names.join(QStringLiteral(",  ")), kLabel, {}, 0});
        for (size_t kind = 0; kind < m_group.colonies.front().holds.size(); ++kind) addKind(kind);
        m_lines.push_back(
            {mayStill(m_in, m_group.colonies.front().holds), kText, m_in.say("What may still be done:"), 0.8});
        return std::move(m_lines);
    }

    QString letters() const {
        QString out;
        for (const Hold* h : m_group.colonies.front().holds) out += rules::holdLetter(h->kind);
        return out;
    }

private:
    const Hold& hold(size_t colony, size_t kind) const { return *m_group.colonies[colony].holds[kind]; }
    QString name(size_t colony) const { return m_in.name(m_group.colonies[colony].colony); }

    void addKind(size_t kind) {
        m_lines.push_back({{}, kLarge, m_in.say.holdTitle(hold(0, kind).kind), 0.6});
        std::map<QString, std::vector<size_t>> reasons;
        std::vector<QString> order;
        for (size_t i = 0; i < m_group.colonies.size(); ++i) {
            const QString text = withoutName(hold(i, kind).told, name(i));
            if (!reasons.contains(text)) order.push_back(text);
            reasons[text].push_back(i);
        }
        for (const QString& text : order) addReason(kind, text, reasons[text], order.size() > 1);
        m_lines.push_back(
            {shared(hold(0, kind).lift, withoutName(hold(0, kind).lift, name(0)), m_group.colonies.size()),
             kText,
             {},
             0});
    }

    void addReason(size_t kind, const QString& text, const std::vector<size_t>& whose, bool named) {
        QStringList names;
        for (const size_t i : whose) names << name(i);
        const QString lead = named ? names.join(QStringLiteral(", ")) + u':' : QString();
        m_lines.push_back({shared(hold(whose.front(), kind).told, text, whose.size()), kText, lead, 0});
    }

    /// Of one colony its own text, of several the text with "each" for their labels.
    QString shared(const QString& own, QString text, size_t colonies) const {
        if (colonies == 1) return own;
        const QString each = QStringLiteral("each"); // within an English sentence, whatever the paper's language
        for (qsizetype at = text.indexOf(kOwn); at >= 0; at = text.indexOf(kOwn)) {
            const bool begins = at == 0 || (at > 1 && text.at(at - 2) == u'.');
            text.replace(at, 1, begins ? each.at(0).toUpper() + each.mid(1) : each);
        }
        return text;
    }

    const SheetInput& m_in;
    const Group& m_group;
    std::vector<Line> m_lines;
};

void paintLetters(BlockPen& pen, const QString& letters) {
    const double side = 6;
    for (qsizetype i = 0; i < letters.size(); ++i) {
        const double y = 2.2 + static_cast<double>(i) * (side + 1);
        pen.fill({kLettersLeft, y, side, side}, Ink::Black);
        pen.line(kLettersLeft + side / 2, y + (side - lineHeight(12)) / 2, letters.mid(i, 1), {12, true, Ink::White},
                 Align::Centre);
    }
}

void close(BlockPen& pen, Block& block, double width, double bottom) {
    block.height = bottom + 2;
    HatchMark hatch;
    hatch.polygon = {{0, 0}, {kBarrier, 0}, {kBarrier, block.height}, {0, block.height}};
    hatch.spacing = 2.4;
    hatch.lineWidth = 0.7;
    pen.add(hatch);
    pen.stroke({kBarrier, 0}, {kBarrier, block.height}, 0.3);
    pen.frame({0, 0, width, block.height}, 0.9);
}

/// Long texts in pieces, so that a page may end between them.
std::vector<Line> inPieces(const SheetInput& in, const std::vector<Line>& lines, double width) {
    constexpr qsizetype kMost = 12;
    std::vector<Line> out;
    for (const Line& l : lines) {
        const QStringList parts = wrapped(in.measure, l.text, l.type, width, width);
        if (parts.size() <= kMost) {
            out.push_back(l);
            continue;
        }
        for (qsizetype i = 0; i < parts.size(); i += kMost)
            out.push_back({parts.mid(i, kMost).join(u' '), l.type, i == 0 ? l.lead : QString(), i == 0 ? l.gap : 0});
    }
    return out;
}

void addEntry(const SheetInput& in, const Group& group, std::vector<Block>& out) {
    EntryWriter entry(in, group);
    const double left = kLettersLeft + 9;
    const double width = in.width - left - 3;
    const std::vector<Line> lines = inPieces(in, entry.lines(), width);
    auto block = std::make_unique<Block>();
    auto pen = std::make_unique<BlockPen>(in.measure, *block);
    paintLetters(*pen, entry.letters());
    double least = 2 + static_cast<double>(entry.letters().size()) * 7; // beside the letters
    double y = 1.6;
    for (const Line& l : lines) {
        if (y > in.height - kMostPiece && &l != &lines.back()) {
            close(*pen, *block, in.width, std::max(y, least));
            out.push_back(std::move(*block));
            block = std::make_unique<Block>();
            pen = std::make_unique<BlockPen>(in.measure, *block);
            y = 1.6;
            least = 0;
        }
        y = pen->paragraph(left, y + l.gap, width, l.text, l.type, l.lead);
    }
    close(*pen, *block, in.width, std::max(y, least));
    out.push_back(std::move(*block));
}

} // namespace

bool staysClosed(const std::vector<const Hold*>& holds) {
    return std::any_of(holds.begin(), holds.end(), [](const Hold* h) {
        return h->kind == HoldKind::AfbConfirmed || h->kind == HoldKind::AfbSuspected;
    });
}

QString mayStill(const SheetInput& in, const std::vector<const Hold*>& holds) {
    if (staysClosed(holds))
        return in.say("it stays closed where it stands; only the inspector says what more. It is not fed.");
    if (std::any_of(holds.begin(), holds.end(), [](const Hold* h) { return h->kind == HoldKind::Order; }))
        return in.say("it stays where it stands; look at it or feed it only as far as the order allows.");
    return in.say("it may be looked at, fed, and stay where it stands; its combs, boxes and tools go to no other.");
}

Section heldSection(const SheetInput& in) {
    Section section;
    section.heading = in.say("Do not unite these, and take nothing from them");
    for (const Group& group : groupsOf(in)) addEntry(in, group, section.blocks);
    if (!section.blocks.empty() && in.say.language() == Language::Spanish)
        section.note = in.say("The reasons below are kept in the book in English.");
    return section;
}

} // namespace core::report

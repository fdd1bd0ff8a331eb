#pragma once

#include "ui/desk/desk.h"
#include "ui/visit/drafts.h"

namespace ui::visit {
class VisitForm;
}

namespace ui::entry {

/// What one visit takes over from the one typed before it.
struct Carried {
    core::Day day;
    QString by;
    QString weather; ///< words that begin the note
    friend bool operator==(const Carried&, const Carried&) = default;
};

/// The half-typed visits of the open book, shared by the form at the right and the grid: what is typed in one shows in
/// the other and is kept beside the book with each key.
class EntryDesk : public QObject {
    Q_OBJECT
public:
    EntryDesk(desk::Desk& desk, visit::VisitForm& form, QObject* parent);

    const visit::Drafts& drafts() const { return m_drafts; }
    /// As Drafts::type and drop; where it cannot be kept that is said, and what is typed stands.
    void type(core::ColonyId colony, core::VisitId was, const visit::VisitDraft& draft, const visit::VisitDraft& bare);
    void drop(core::ColonyId colony, core::VisitId was);
    /// As Drafts::catchUp.
    void catchUp() { m_drafts.catchUp(); }

    /// What a new visit begins with: as carried from the one before, or of the day shown, by who writes.
    visit::VisitDraft fresh() const;
    void carry(const std::optional<Carried>& carried) { m_carried = carried; }
    const std::optional<Carried>& carried() const { return m_carried; }
    /// What is half typed stands in a list that is shown: a form may turn to another hive and nothing is lost.
    bool typingIsShown() const { return m_carried.has_value(); }

    /// The form was begun: it goes on from what is half typed of that visit.
    void begun();
    /// The form's visit is in the book.
    void saved(const core::Visit& visit, core::VisitId was);

signals:
    void changed(core::ColonyId colony, core::VisitId was);
    void visitSaved(core::ColonyId colony); ///< a new one, by the form

private:
    void readOnce();
    void freeTyping();
    bool inBook(const visit::HalfTyped& half) const;
    void tell(const QString& unread) const;
    void typed(const visit::VisitDraft& draft);
    void follow(core::ColonyId colony, core::VisitId was);
    void left();
    core::VisitId formsVisit() const;

    desk::Desk& m_desk;
    visit::VisitForm& m_form;
    visit::Drafts m_drafts;
    std::optional<Carried> m_carried;
    bool m_read = false;
};

} // namespace ui::entry

#include "ui/form/form.h"

#include <QCoreApplication>

namespace ui::form {

namespace {
struct Forms {
    Q_DECLARE_TR_FUNCTIONS(Forms)
};
} // namespace

QString Form::hint() const {
    return Forms::tr("Tab goes on, Enter saves, Escape leaves. What is not known stays empty.");
}

Form::~Form() = default;

QStringList Form::odd(const Values&) const { return {}; }

std::optional<QString> Form::meanwhile() const { return std::nullopt; }

} // namespace ui::form

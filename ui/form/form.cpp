#include "ui/form/form.h"

namespace ui::form {

Form::~Form() = default;

QStringList Form::odd(const Values&) const { return {}; }

std::optional<QString> Form::meanwhile() const { return std::nullopt; }

} // namespace ui::form

#include "core/base/error.h"

#include <utility>

namespace core {

Error::Error(Kind kind, QString userMessage, QString detail)
    : m_kind(kind), m_user(std::move(userMessage)), m_detail(std::move(detail)), m_utf8(m_user.toUtf8()) {}

} // namespace core

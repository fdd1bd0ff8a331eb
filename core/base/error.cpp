#include "core/base/error.h"

#include <utility>

namespace core {

QString oneLine(QString text) {
    for (QChar& c : text)
        if (c.category() == QChar::Other_Control || c.category() == QChar::Separator_Line ||
            c.category() == QChar::Separator_Paragraph)
            c = u' ';
    return text;
}

Error::Error(Kind kind, QString userMessage, QString detail)
    : m_kind(kind), m_user(oneLine(std::move(userMessage))), m_detail(std::move(detail)), m_utf8(m_user.toUtf8()) {}

} // namespace core
